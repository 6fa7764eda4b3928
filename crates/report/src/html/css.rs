//! How the page looks, out of the sizes that the PDF has too.

use figures::fonts;

use crate::layout::{
    ANSWER_GAP, HEADING_GAP, NUMBER_LINE, PICTURE_HEIGHT, SIGN, SMALL_GAP, TAG_HEIGHT, TAG_NUMBER,
    TAG_PADDING, TITLE_GAP, TITLE_SHARE,
};
use crate::sheet::{Lie, Sheet};
use crate::style::{
    ACT, FOOT, GAP, GUTTER, HAND_ROW, HEADING, INK, LARGE, LINE, MARGIN, QUIET, RULE, SMALL, TAG, TAG_WORD,
    TEXT, TITLE, UNIT,
};

/// Writes the style of a sheet.
pub fn write(out: &mut String, sheet: &Sheet) {
    let paper = sheet.paper.name();
    // The paper of most pages; one that lies otherwise names its own.
    out.push_str(&format!("@page{{size:{paper};margin:{MARGIN}mm}}\n"));
    if sheet.pages.iter().any(|page| page.lie == Lie::OnItsSide) {
        out.push_str(&format!(
            "@page side{{size:{paper} landscape;margin:{MARGIN}mm}}\n.on-its-side{{page:side}}\n"
        ));
    }
    let scaled = |points: f64| format!("calc({points}pt*var(--scale))");
    let mm = |millimetres: f64| format!("calc({millimetres}mm*var(--scale))");
    let (text, small, middling) = (scaled(TEXT), scaled(SMALL), scaled(SMALL + 0.5));
    let rules = [
        format!(
            "body{{margin:0;background:#fff;color:{INK};font-family:'{}',Verdana,sans-serif;line-height:{LINE}}}",
            fonts::FAMILY
        ),
        format!(".page{{font-size:{text};position:relative;box-sizing:border-box;break-after:page}}"),
        ".page:last-child{break-after:auto}".into(),
        ".columns{display:grid}".into(),
        format!(".c2{{grid-template-columns:1fr 1fr;column-gap:{GUTTER}mm}}"),
        ".column{min-width:0}".into(),
        format!(".column>*{{margin:0 0 {} 0}}", mm(GAP)),
        format!(".column>h2{{margin-bottom:{}}}.column>.small{{margin-bottom:{}}}", mm(HEADING_GAP), mm(SMALL_GAP)),
        "p,h1,h2,ol,ul,dl,td,th,li{overflow-wrap:anywhere}".into(),
        format!("img.picture{{display:block;height:{};max-width:100%;object-fit:contain;object-position:left}}", mm(PICTURE_HEIGHT)),
        "svg{display:block;width:100%;height:auto;break-inside:avoid}".into(),
        format!(".title{{display:flex;justify-content:space-between;gap:{TITLE_GAP}mm;border-bottom:.7mm solid {INK};padding-bottom:{}}}", mm(1.3)),
        format!(".title>div:first-child{{flex:{TITLE_SHARE:.4} 1 0;min-width:0}}.title>div:last-child{{flex:{:.4} 1 0;min-width:0;text-align:right}}", 1.0 - TITLE_SHARE),
        format!("h1{{font-size:{};line-height:{LINE};margin:0}}", scaled(TITLE)),
        format!("h2{{font-size:{};line-height:{LINE};break-after:avoid}}", scaled(HEADING)),
        format!(".title p{{margin:0}}.title>div:last-child,.small,.foot{{font-size:{small}}}"),
        format!(".small,.foot{{color:{QUIET}}}"),
        format!(".answers{{display:grid;grid-auto-flow:column;grid-auto-columns:1fr;column-gap:{ANSWER_GAP}mm}}"),
        format!(".answers{{border-bottom:.3mm solid {RULE};padding-bottom:{}}}", mm(1.5)),
        format!(".answers .above{{font-size:{small};font-weight:700}}.answers .below{{font-size:{small}}}.answers p{{margin:0}}"),
        format!(".answers .number{{font-size:calc(var(--size)*var(--scale));font-weight:700;line-height:{NUMBER_LINE}}}.answers .unit{{font-size:{};font-weight:400}}", scaled(UNIT)),
        format!(".stop{{border:1mm solid {ACT};padding:{} {};font-weight:700;color:{ACT};break-inside:avoid}}.stop p{{margin:0}}", mm(1.6), mm(2.5)),
        format!("ol{{padding:0 0 0 {};list-style:decimal}}ol li{{margin-bottom:{}}}", mm(7.0), mm(0.9)),
        format!(".sign{{display:inline-block;min-width:{SIGN}em;font-weight:700}}"),
        format!(".act .sign,.act b{{color:{ACT}}}"),
        ".facts{display:grid;column-gap:4mm}.facts.a2,.large.a2{grid-template-columns:1fr 1fr}.facts.a1,.large.a1{grid-template-columns:1fr}.large.a3{grid-template-columns:1fr 1fr 1fr}".into(),
        format!(".facts>div{{display:grid;grid-template-columns:31% 69%;border-bottom:.3mm solid {RULE};padding:{} 0}}", mm(0.8)),
        format!(".facts dt{{font-size:{small};color:{QUIET};padding-right:2mm}}dd{{margin:0}}"),
        format!(".large{{display:grid;column-gap:5mm}}.large>div{{border-bottom:.3mm solid {RULE};padding:{} 0}}.large dt{{font-size:{text}}}.large dd{{font-size:{};font-weight:700;line-height:1.2}}", mm(1.2), scaled(LARGE)),
        format!("table{{border-collapse:collapse;width:100%;table-layout:fixed;font-size:{middling}}}th,td{{text-align:left;vertical-align:top;border-bottom:.3mm solid {RULE};padding:{} 1.2mm}}thead{{display:table-header-group}}tr{{break-inside:avoid}}", mm(0.6)),
        ".wide{position:relative}caption,.heard{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}".into(),
        format!("table.write tbody td{{height:{};border:.3mm solid {INK};padding:0 1.2mm;vertical-align:middle}}table.write thead>tr>*{{border:.3mm solid {INK}}}", mm(HAND_ROW)),
        format!(".care{{border:.6mm solid {INK};padding:{} {};font-size:{middling};break-inside:avoid}}", mm(1.8), mm(3.0)),
        format!("ul.notes{{padding:0 0 0 {};font-size:{middling}}}ul.notes li{{margin-bottom:{}}}", mm(4.5), mm(0.6)),
        "ul.ticks,div.blanks{display:grid;column-gap:5mm;list-style:none;padding:0}.k2{grid-template-columns:1fr 1fr}.k3{grid-template-columns:1fr 1fr 1fr}.k4{grid-template-columns:repeat(4,1fr)}".into(),
        format!("ul.ticks li{{display:flex;gap:2mm;align-items:flex-start;margin-bottom:{}}}ul.ticks i{{flex:none;box-sizing:border-box;width:{};height:{};border:.4mm solid {INK}}}", mm(1.5), mm(4.2), mm(4.2)),
        format!("div.blanks>div{{display:flex;align-items:flex-end;gap:1.5mm;height:{}}}div.blanks i{{flex:1;min-width:12mm;border-bottom:.4mm solid {INK}}}div.blanks span{{line-height:1.1;max-width:75%}}", mm(HAND_ROW + 1.0)),
        format!("pre{{font:inherit;font-size:{middling};white-space:pre-line;overflow-wrap:anywhere;padding-left:3mm;border-left:.6mm solid {RULE}}}"),
        format!(".cut{{border-top:.3mm dashed {INK};font-size:{small};text-align:center;padding-top:{}}}", mm(1.0)),
        ".tags{display:grid;grid-template-columns:1fr 1fr}".into(),
        format!(".tag{{box-sizing:border-box;height:{}mm;overflow:hidden;border:.3mm dashed {INK};padding:{TAG_PADDING}mm;display:grid;grid-template-columns:{TAG_NUMBER}mm 1fr;column-gap:{TAG_PADDING}mm;break-inside:avoid}}", TAG_HEIGHT),
        format!(".tag .number{{font-size:{TAG}pt;font-weight:700;line-height:1}}.tag .hole{{width:7mm;height:7mm;border:.4mm solid {INK};border-radius:50%}}.tag p{{margin:0 0 1mm;white-space:pre-line}}"),
        format!(".tag{{font-size:{text}}}.tag .wrong{{font-size:{};font-weight:700;line-height:1.15;color:{ACT}}}", scaled(TAG_WORD)),
        // On paper a page fills the paper, its foot at the bottom; on a screen it is as long as it is.
        format!("@media print{{.page.one{{height:calc(var(--high) - .5mm)}}.page.one .foot{{position:absolute;bottom:0;left:0;right:0;margin:0;height:{FOOT}mm;display:flex;align-items:flex-end}}.page.many .foot{{margin:2mm 0 0}}}}"),
        // Letters of drawings are as large as on paper: two columns stand one below the other, narrow screens scroll them.
        "@media screen{.page{max-width:202mm;margin:0 auto;padding:6mm;--scale:1.12!important}.on-its-side{max-width:265mm}.c2{grid-template-columns:1fr}.tag{height:auto;--scale:1.12!important}.drawing,.wide{overflow-x:auto}.drawing svg{min-width:190mm}.wide table{min-width:170mm}}".into(),
        "@media screen and (max-width:640px){.page{padding:16px}.answers,.facts.a2,.large.a2,.large.a3,.k2,.k3,.k4,.tags,.tag{grid-template-columns:1fr;grid-auto-flow:row}.answers{row-gap:12px}.title{display:block}.title>div:last-child{text-align:left}}".into(),
    ];
    for rule in rules {
        out.push_str(&rule);
        out.push('\n');
    }
}
