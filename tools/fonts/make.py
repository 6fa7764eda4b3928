"""Makes the fonts of the drawings and sheets, and the table of their letters' widths.

    npm pack @fontsource/atkinson-hyperlegible@5.3.0 && tar xzf fontsource-atkinson-hyperlegible-5.3.0.tgz
    python -m venv .venv && .venv/bin/pip install -r tools/fonts/requirements.txt
    .venv/bin/python tools/fonts/make.py package

Source: the font Atkinson Hyperlegible, version 1.006, Copyright 2020 Braille Institute of America, Inc., under the SIL
Open Font License 1.1. The npm package carries it in two parts, Latin and extended Latin, for pages. This script joins
the parts of each upright weight, leaves out what only old screens use (hinting), draws eight signs that the font lacks and
our workings need (≈ ≤ ≥ √ ← → ′ ″) from its own glyphs and stroke, and writes

    crates/figures/fonts/AtkinsonHyperlegible-{Regular,Bold}.ttf     for PDF
    crates/figures/fonts/AtkinsonHyperlegible-{Regular,Bold}.woff2   for pages
    crates/figures/fonts/OFL.txt                                     the licence
    crates/figures/src/type_widths.rs                                advance widths

The licence names no reserved font name, so the changed font may keep its name; the changes are told in its version.
The same package and pinned tools give the same bytes.
"""

import sys
import tempfile
from pathlib import Path

from fontTools.merge import Merger
from fontTools.pens.boundsPen import BoundsPen
from fontTools.pens.transformPen import TransformPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont

ROOT = Path(__file__).resolve().parents[2]
FONTS = ROOT / "crates/figures/fonts"
WIDTHS = ROOT / "crates/figures/src/type_widths.rs"
WEIGHTS = [("Regular", 400), ("Bold", 700)]
# Seconds since 1904 of 2020-01-01: one date for all runs, so that the bytes do not differ from run to run.
MODIFIED = 3660681600


def subset(font, characters):
    """Keeps these characters, kerning and accents; drops hinting and glyph names."""
    options = Options()
    options.hinting = False
    options.layout_features = ["kern", "mark", "mkmk", "ccmp", "locl"]
    options.name_IDs = [0, 1, 2, 3, 4, 5, 6, 13, 14]
    options.notdef_outline = True
    options.glyph_names = True
    options.drop_tables += ["gasp", "DSIG"]
    subsetter = Subsetter(options)
    subsetter.populate(unicodes=characters)
    subsetter.subset(font)


def joined(package, weight):
    """One font of the two parts."""
    files = package / "files"
    latin = TTFont(files / f"atkinson-hyperlegible-latin-{weight}-normal.woff2")
    extended = TTFont(files / f"atkinson-hyperlegible-latin-ext-{weight}-normal.woff2")
    in_latin = set(latin.getBestCmap())
    subset(latin, in_latin)
    subset(extended, set(extended.getBestCmap()) - in_latin)
    with tempfile.TemporaryDirectory() as folder:
        parts = []
        for name, font in (("latin", latin), ("extended", extended)):
            # The extended part's kerning is between its own letters only; the accents' anchors clash when joined.
            if name == "extended":
                for table in ("GPOS", "GSUB", "GDEF"):
                    if table in font:
                        del font[table]
            font.flavor = None
            path = Path(folder) / f"{name}.ttf"
            font.save(path)
            parts.append(str(path))
        return Merger().merge(parts)


def add_sign(font, character, name, advance, draw):
    """Adds a glyph drawn by `draw(pen)`."""
    pen = TTGlyphPen(font.getGlyphSet())
    draw(pen)
    glyph = pen.glyph()
    font.setGlyphOrder(font.getGlyphOrder() + [name])
    font["glyf"][name] = glyph
    glyph.recalcBounds(font["glyf"])
    font["hmtx"][name] = (advance, getattr(glyph, "xMin", 0))
    for table in font["cmap"].tables:
        if table.isUnicode():
            table.cmap[character] = name


def polygon(pen, points):
    pen.moveTo(points[0])
    for point in points[1:]:
        pen.lineTo(point)
    pen.closePath()


def bounds(font, name):
    pen = BoundsPen(font.getGlyphSet())
    font.getGlyphSet()[name].draw(pen)
    return pen.bounds


def add_signs(font):
    """The signs the font lacks, with its own stroke: that of its minus sign."""
    cmap = font.getBestCmap()
    glyphs = font.getGlyphSet()
    left, bottom, right, top = bounds(font, cmap[0x2212])
    stroke, advance = top - bottom, font["hmtx"][cmap[0x2212]][0]
    middle = (top + bottom) / 2

    def shifted(pen, character, rise):
        glyphs[cmap[character]].draw(TransformPen(pen, (1, 0, 0, 1, 0, rise)))

    def almost(pen):
        for rise in (-stroke * 1.15, stroke * 1.15):
            shifted(pen, ord("~"), rise)

    def compared(character):
        def draw(pen):
            shifted(pen, character, stroke * 0.9)
            base = bounds(font, cmap[character])[1] - stroke * 0.15
            one, _, other, _ = bounds(font, cmap[character])
            polygon(pen, [(one, base - stroke), (one, base), (other, base), (other, base - stroke)])
        return draw

    def arrow(sense):
        def draw(pen):
            half, head = stroke / 2, (right - left) * 0.42
            tip, tail = (right, left) if sense > 0 else (left, right)
            reach, slant = tip - sense * head, stroke * 0.62
            points = [
                (tail, middle - half), (tip - sense * slant * 1.3, middle - half),
                (reach, middle - head + half), (reach + sense * slant, middle - head - half + slant * 0.55),
                (tip + sense * slant * 0.4, middle),
                (reach + sense * slant, middle + head + half - slant * 0.55), (reach, middle + head - half),
                (tip - sense * slant * 1.3, middle + half), (tail, middle + half),
            ]
            polygon(pen, [(round(x), round(y)) for x, y in (points if sense < 0 else points[::-1])])
        return draw

    def root(pen):
        # A short up-stroke, a long down-stroke, a long up-stroke.
        polygon(pen, [(round(x), round(y)) for x, y in [
            (20, 330), (60, 330 + stroke * 1.05), (150 + stroke * 0.4, 400), (240 + stroke * 0.3, 190),
            (430, 760), (430 + stroke * 1.12, 760), (250 + stroke * 0.6, -20), (250 - stroke * 0.35, -20),
            (120 + stroke * 0.1, 355),
        ]])

    def primes(count):
        def draw(pen):
            for number in range(count):
                x = 60 + number * stroke * 2.1
                polygon(pen, [(round(a), round(b)) for a, b in [
                    (x, 430), (x + stroke * 0.55, 668), (x + stroke * 1.65, 668), (x + stroke * 0.75, 430),
                ]])
        return draw

    angle = font["hmtx"][cmap[ord("<")]][0]
    add_sign(font, 0x2248, "approxequal", font["hmtx"][cmap[ord("~")]][0], almost)
    add_sign(font, 0x2264, "lessequal", angle, compared(ord("<")))
    add_sign(font, 0x2265, "greaterequal", angle, compared(ord(">")))
    add_sign(font, 0x221A, "radical", round(430 + stroke * 1.12 + 30), root)
    add_sign(font, 0x2190, "arrowleft", advance + 60, arrow(-1))
    add_sign(font, 0x2192, "arrowright", advance + 60, arrow(1))
    add_sign(font, 0x2032, "minute", round(120 + stroke * 1.65), primes(1))
    add_sign(font, 0x2033, "second", round(120 + stroke * 3.75), primes(2))


def finish(font, style):
    for record in font["name"].names:
        if record.nameID == 5:
            record.string = "Version 1.006; Latin and extended Latin joined, hinting left out, eight signs added"
    font["head"].modified = font["head"].created = MODIFIED
    font.recalcTimestamp = False
    name = FONTS / f"AtkinsonHyperlegible-{style}"
    font["post"].formatType = 3.0
    font.flavor = None
    font.save(name.with_suffix(".ttf"))
    font.flavor = "woff2"
    font.save(name.with_suffix(".woff2"))


def table(fonts):
    """The Rust file with the widths, in thousandths of the type size."""
    maps = [font.getBestCmap() for font in fonts]
    assert set(maps[0]) == set(maps[1]), "both weights have the same characters"
    assert all(font["head"].unitsPerEm == 1000 for font in fonts)
    highest, lowest = 0, 0
    for font, cmap in zip(fonts, maps):
        for character, name in cmap.items():
            if character > 0x17F and character != 0x2032:
                continue
            box = bounds(font, name)
            if box:
                highest, lowest = max(highest, box[3]), min(lowest, box[1])
    lines = [
        "//! Generated by `tools/fonts/make.py` from the fonts in `crates/figures/fonts`; a test holds it to them.",
        "//!",
        "//! Widths are advances in thousandths of the type size, without kerning.",
        "",
        "/// How far the highest letter of Latin and extended Latin A rises above the line, in thousandths: from the font.",
        f"pub(crate) const HIGHEST: u16 = {round(highest)};",
        "/// How far the lowest hangs below it: from the font.",
        f"pub(crate) const LOWEST: u16 = {round(-lowest)};",
        "",
        "/// Character, width in Regular, width in Bold: from the fonts. By character.",
        "#[rustfmt::skip]",
        f"pub(crate) const WIDTHS: [(char, u16, u16); {len(maps[0])}] = [",
    ]
    for character in sorted(maps[0]):
        widths = [font["hmtx"][cmap[character]][0] for font, cmap in zip(fonts, maps)]
        lines.append(f"    ('\\u{{{character:04x}}}', {widths[0]}, {widths[1]}),")
    lines += ["];", ""]
    return "\n".join(lines)


def main():
    package = Path(sys.argv[1])
    FONTS.mkdir(parents=True, exist_ok=True)
    fonts = []
    for style, weight in WEIGHTS:
        font = joined(package, weight)
        add_signs(font)
        finish(font, style)
        fonts.append(font)
    (FONTS / "OFL.txt").write_bytes((package / "LICENSE").read_bytes())
    WIDTHS.write_text(table(fonts))


main()
