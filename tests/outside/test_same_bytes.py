"""The same case gives the same bytes, wherever and however it is built.

After the Reproducible Builds project's list of what makes outputs differ (time, time zone, locale, working folder, order,
parallelism), without a standard: the content of a guide depends on its case and on nothing of the machine.
"""

import hashlib
import os

import pytest

import program
from content import read


# One language of each script and direction.
LANGUAGES = ("en", "ar", "ru", "zh-Hans", "hi", "ur")


def build(out, environment=None, cwd=None, threads=None, cases=program.EXAMPLES) -> dict[str, str]:
    """Names and hashes of all files of one build: guides, records and page pictures."""
    out.mkdir()
    arguments = ["--threads", threads] if threads else []
    env = {**os.environ, **(environment or {})}
    program.run(
        "build", *cases, "--language", ",".join(LANGUAGES), "--pictures", "--out", out, *arguments, env=env, cwd=cwd,
    )
    return {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in sorted(out.iterdir())}


@pytest.fixture(scope="module")
def usual(tmp_path_factory) -> dict[str, str]:
    return build(tmp_path_factory.mktemp("bytes") / "usual")


def test_a_build_has_all_its_files(usual):
    """What is compared is worth comparing: a guide, a record and pictures for each case and language, no two guides equal."""
    guides = [name for name in usual if name.endswith(".pdf")]
    assert len(guides) == len(program.EXAMPLES) * len(LANGUAGES)
    for guide in guides:
        stem = guide.removesuffix(".pdf")
        assert f"record-{stem.removeprefix('guide-')}.json" in usual and f"{stem}-page-1.png" in usual
    assert len({usual[name] for name in guides}) == len(guides)


@pytest.mark.parametrize(
    "environment",
    [
        {},
        # Half a day ahead of and behind UTC: the date differs, whatever the hour.
        {"TZ": "Pacific/Kiritimati"},
        {"TZ": "Etc/GMT+12"},
        {"LANG": "ar_EG.UTF-8", "LC_ALL": "ar_EG.UTF-8"},
        {"LANG": "C", "LC_ALL": "C"},
        {"SOURCE_DATE_EPOCH": "0", "HOME": "/nonexistent", "COLUMNS": "20", "NO_COLOR": "1"},
    ],
    ids=lambda environment: "-".join(f"{key}={value}" for key, value in environment.items()).replace("/", ".") or "again",
)
def test_the_surroundings_change_no_byte(usual, environment, tmp_path):
    assert build(tmp_path / "out", environment) == usual


@pytest.mark.parametrize("threads", [1, 2, 7])
def test_the_number_of_threads_changes_no_byte(usual, threads, tmp_path):
    assert build(tmp_path / "out", threads=threads) == usual


def test_the_working_folder_and_the_order_change_no_byte(usual, tmp_path):
    elsewhere = tmp_path / "another place"
    elsewhere.mkdir()
    assert build(tmp_path / "out", cwd=elsewhere, cases=program.EXAMPLES[::-1]) == usual


def test_a_copy_of_the_case_under_another_name_changes_no_byte(usual, tmp_path):
    copies = []
    for number, example in enumerate(program.EXAMPLES):
        copies.append(tmp_path / f"copy {number}.yaml")
        copies[-1].write_bytes(example.read_bytes())
    assert build(tmp_path / "out", cases=copies) == usual


def test_another_date_changes_the_guide(usual, tmp_path):
    """The other way round: what the case says does change the bytes."""
    case = next(example for example in program.EXAMPLES if "reference" in read(example).get("person", {}))
    text = case.read_text(encoding="utf-8")
    review = str(read(case)["review"])
    copy = tmp_path / case.name
    copy.write_text(text.replace(f"review: {review}", f"review: {review[:-2]}{int(review[-2:]) - 1:02}"), encoding="utf-8")
    changed = build(tmp_path / "out", cases=[copy])
    guides = [name for name in changed if name.endswith(".pdf")]
    assert guides and all(changed[name] != usual[name] for name in guides)
