"""Five hundred hostile strings on paper: each that is taken is read from the PDF as it was typed.

`hostile.json` is made by rule in `tests/suite/hostile/strings.rs`, which puts each into every field.
"""

import json
import unicodedata

import program
import readers

PLACES = ("name", "address", "hours", "telephone", "emergency")


def case(values: dict[str, str]) -> dict:
    return {
        "palmleaf": 1, "hand": "right", "condition": "de-quervain", "orthosis": "forearm-thumb-spica",
        "fitted": "2027-03-01", "review": "2027-03-29", "language": "en", "clinic": values,
    }


def squeezed(text: str) -> str:
    """Without white space and hyphens, which a line may end with, and in one normal form (UAX 15)."""
    kept = "".join(c for c in unicodedata.normalize("NFKC", text) if not c.isspace() and c not in "-\u00ad\u2010")
    return "".join(c for c in kept if unicodedata.category(c) != "Cf")


def test_what_is_taken_stands_on_paper_as_it_was_typed(tmp_path):
    strings = json.loads((program.ROOT / "tests" / "outside" / "hostile.json").read_text(encoding="utf-8"))
    assert len(strings) == 500
    files = {}
    for number, string in enumerate(strings):
        files[number] = tmp_path / f"{number}.yaml"
        files[number].write_text(json.dumps(case({"name": string})), encoding="utf-8")
    report = json.loads(program.run("check", *files.values(), "--format", "json", check=False).stdout)
    taken = [strings[number] for number, row in enumerate(report) if not row["findings"]]
    assert 150 < len(taken) < 400
    # A letter that no font has is refused when it is set; which, the program itself says by name.
    cases, drawn = [], []
    latin = [text for text in taken if all(ord(c) < 0x250 or c in "\u2028\u2029" for c in text)]
    for start in range(0, len(latin), len(PLACES)):
        values = dict(zip(PLACES, latin[start:start + len(PLACES)]))
        cases.append(tmp_path / f"paper-{start}.yaml")
        cases[-1].write_text(json.dumps(case(values)), encoding="utf-8")
        drawn.append(values)
    out = tmp_path / "out"
    report = json.loads(program.run("build", *cases, "--name-by-case", "--format", "json", "--out", out, check=False).stdout)
    seen = 0
    for row, values in zip(report, drawn):
        if not row["files"]:
            assert {finding["code"] for finding in row["findings"]} == {"typeset/no-glyph"}, row
            continue
        text = squeezed(readers.page_text(next(path for path in row["files"] if path.endswith(".pdf")), 1))
        for place, value in values.items():
            assert squeezed(value) in text, f"{place}: {value!r}"
            seen += 1
    assert seen > 100, seen
