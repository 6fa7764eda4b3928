"""Checks `check-values/check-values.tsv`: a second, independent implementation of every row.

    python tools/check_values.py           prints each row with what comes out
    python tools/check_values.py --check   prints only what is wrong, and exits 1 if anything is

For each row: the answer follows from the givens; what the source printed lies within the tolerance of it;
a misprint does not; and the figure that the expected text calls exact agrees too.
"""

import argparse
import re
import sys
from fractions import Fraction
from pathlib import Path

from calculations import CALCULATIONS, Givens
from quantities import parse_unit, split_quantity

TABLE = Path(__file__).resolve().parents[1] / "check-values" / "check-values.tsv"
COLUMNS = (
    "id flag topic description inputs expected tolerance source calc given answer printed within not_equal note"
).split()
# Rows taken from the collection of published values; a lost row must not pass unseen.
ROW_COUNT = 154
# Answers are written with twelve significant digits.
ANSWER_RELATIVE = 1e-11
# Room for binary rounding where a printed value lies exactly on the tolerance.
SLACK = 1e-12


def read_rows(path):
    """Return the table's rows as dictionaries; tabs part the cells and nothing is quoted."""
    header, *lines = path.read_text(encoding="utf-8").splitlines()
    if header.split("\t") != COLUMNS:
        raise ValueError(f"the columns of {path.name} are not {' '.join(COLUMNS)}")
    rows = []
    for number, line in enumerate(lines, start=2):
        cells = line.split("\t")
        if len(cells) != len(COLUMNS):
            raise ValueError(f"line {number} has {len(cells)} cells, not {len(COLUMNS)}")
        rows.append(dict(zip(COLUMNS, cells)))
    return rows


def number_in(text, unit):
    """Return the number of a quantity text, which must be in `unit`."""
    number, its_unit = split_quantity(text)
    if its_unit != unit:
        raise ValueError(f"{text!r} is not in {unit!r}")
    return float(number)


def computed(row):
    """Return what follows from the row's givens, as a number in the answer's unit."""
    givens = Givens(row["given"])
    value, kind = CALCULATIONS[row["calc"]](givens)
    if givens.unused:
        raise ValueError(f"unused givens: {', '.join(sorted(givens.unused))}")
    answer_kind, factor = parse_unit(split_quantity(row["answer"])[1])
    if kind != answer_kind:
        raise ValueError(f"the calculation gives {kind}, the answer is {answer_kind}")
    if isinstance(value, Fraction):
        return float(value / factor)
    return value / float(factor)


def text_exact(row):
    """Return the figure that the expected text calls exact or correct, if it names one."""
    found = re.search(r"(?:exact|correct) ([0-9.]*[0-9])", row["expected"])
    return float(found[1]) if found else None


def complaints(row):
    """Return what is wrong with one row, as sentences."""
    if row["calc"] == "not_usable":
        return [] if row["note"] else ["not usable, and no reason given"]
    unit = split_quantity(row["answer"])[1]
    answer, within = number_in(row["answer"], unit), float(row["within"])
    found, value = [], computed(row)
    if abs(value - answer) > ANSWER_RELATIVE * abs(answer):
        found.append(f"answer {answer!r}, but {value!r} comes out")
    if row["printed"] and abs(number_in(row["printed"], unit) - value) > within + SLACK:
        found.append(f"printed {row['printed']}, further than {within} from {value!r}")
    if row["not_equal"] and abs(number_in(row["not_equal"], unit) - value) <= within:
        found.append(f"the misprint {row['not_equal']} comes out: {value!r}")
    exact = text_exact(row)
    if exact is not None and abs(exact - value) > max(within, 1e-5 * abs(value)):
        found.append(f"the text says exactly {exact!r}, but {value!r} comes out")
    return found + flag_complaints(row)


def flag_complaints(row):
    """Return what is wrong between a row's flag and its cells."""
    if row["flag"] == "P" and not row["printed"] and row["note"]:
        return []  # The note says what the source printed instead of a value.
    wants = {"P": (True, False), "F": (False, False), "X": (False, True), "M": (False, False)}
    has = (bool(row["printed"]), bool(row["not_equal"]))
    return [] if has == wants[row["flag"]] else [f"flag {row['flag']} does not fit printed and not_equal"]


def guarded(row):
    """Return the row's complaints, a row that cannot be read included."""
    try:
        return complaints(row)
    except (KeyError, ValueError, ZeroDivisionError) as error:
        return [f"cannot be read: {error!r}"]


def table_complaints(rows):
    """Return what is wrong with the table as a whole."""
    found = []
    if len(rows) != ROW_COUNT:
        found.append(f"{len(rows)} rows, not {ROW_COUNT}")
    if len({row["id"] for row in rows}) != len(rows):
        found.append("an id stands twice")
    unused = set(CALCULATIONS) - {row["calc"] for row in rows}
    if unused:
        found.append(f"no row for {', '.join(sorted(unused))}")
    return found


def show(row):
    """Return one line that shows a row and what comes out."""
    if row["calc"] == "not_usable":
        return f"{row['id']}\tnot usable: {row['note']}"
    return f"{row['id']}\t{row['calc']}({row['given']})\t{computed(row)!r}\t{row['answer']}"


def main():
    """Check the table; return the exit status."""
    parser = argparse.ArgumentParser(description="check the published check values")
    parser.add_argument("--check", action="store_true", help="print only what is wrong")
    arguments = parser.parse_args()
    rows = read_rows(TABLE)
    wrong = table_complaints(rows)
    for row in rows:
        found = [f"{row['id']}: {sentence}" for sentence in guarded(row)]
        if not arguments.check and not found:
            print(show(row))
        wrong += found
    for sentence in wrong:
        print(sentence, file=sys.stderr)
    print(f"{len(rows)} rows, {len(wrong)} complaints", file=sys.stderr)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
