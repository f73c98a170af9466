"""Guides built once a session, for every example, language, print size and paper; and plans of random cases."""

import dataclasses
import functools
import json
from pathlib import Path

import pikepdf
import pytest
from playwright.sync_api import sync_playwright

import pdfua_report
import planned as planning
import program
import structure
from content import folder, read

SIZES = ("standard", "large", "giant")
# Every size on A4, and US Letter once.
SETTINGS = [(size, "a4") for size in SIZES] + [("standard", "letter")]


@dataclasses.dataclass(frozen=True)
class Guide:
    """One built guide."""

    example: Path
    language: str
    size: str
    paper: str
    path: Path

    @property
    def case(self) -> dict:
        return read(self.example)

    @property
    def hands(self) -> list[dict]:
        """What the case says of each hand, one for each part of the guide; both share what is not the hand's own."""
        own = ("condition", "finger", "protocol", "other_conditions", "orthosis", "angles", "begun", "findings", "overrides")
        case = self.case
        other = case.pop("other_hand", None)
        if other is None:
            return [case]
        shared = {key: value for key, value in case.items() if key not in own}
        return [case, {**shared, **other, "hand": "left" if case["hand"] == "right" else "right"}]

    @property
    def printed(self) -> str:
        """The print size: what is asked for, and never smaller than the person's factors want."""
        wanted = [folder("factors")[factor].get("print", "standard") for factor in self.case.get("factors", [])]
        return max([self.size, *wanted], key=SIZES.index)

    @functools.cached_property
    def pdf(self) -> pikepdf.Pdf:
        return pikepdf.open(self.path)

    @functools.cached_property
    def tree(self) -> structure.Element:
        return structure.tree(self.pdf)


def pytest_configure(config):
    try:
        program.binary()
        program.browser()
        for name in ("qpdf", "pdffonts", "pdftoppm", "pdftotext", "strace", "tesseract"):
            program.tool(name)
    except program.Missing as missing:
        raise pytest.UsageError(str(missing)) from missing


def pytest_generate_tests(metafunc):
    languages = [tag for tag in program.languages() if not (tag in program.UNLETTERED and getattr(metafunc.function, "by_letters", False))]
    if "guide" in metafunc.fixturenames:
        keys = [
            (example.stem, language, size, paper)
            for example in [*program.EXAMPLES, WITH_LINK] for language in languages for size, paper in SETTINGS
            if program.is_read(example.stem, language, size, paper)
        ]
        metafunc.parametrize("guide", keys, ids=["-".join(key) for key in keys], indirect=True)
    keys = [
        (example.stem, language, "standard", "a4") for example in program.EXAMPLES for language in languages
        if program.is_read(example.stem, language)
    ]
    if "standard_guide" in metafunc.fixturenames:
        metafunc.parametrize("standard_guide", keys, ids=["-".join(key[:2]) for key in keys], indirect=True)
    if "hand" in metafunc.fixturenames:
        hands = {example.stem: range(1 + ("other_hand" in read(example))) for example in program.EXAMPLES}
        keys = [(*key[:2], size, "a4", hand) for key in keys for size in SIZES if program.is_read(*key[:2], size) for hand in hands[key[0]]]
        metafunc.parametrize("hand", keys, ids=["-".join([*key[:3], *(["other"] if key[4] else [])]) for key in keys], indirect=True)


# No example has a link, so one more case does: its links are what the checks of annotations are about.
WITH_LINK = Path("right-thumb-with-link.yaml")


@pytest.fixture(scope="session")
def cases(tmp_path_factory) -> list[Path]:
    """The examples, and one of them with a link in the therapist's note."""
    linked = tmp_path_factory.mktemp("cases") / WITH_LINK.name
    text = (program.ROOT / "examples" / "right-thumb.yaml").read_text(encoding="utf-8")
    assert "note: |\n" in text, "the example has no note to put a link into"
    text = text.replace("HR-2041", "HR-2042").replace("note: |\n", "note: |\n  Read [our page](https://clinic.example/thumb) too.\n\n")
    linked.write_text(text, encoding="utf-8")
    return [*program.EXAMPLES, linked]


@pytest.fixture(scope="session")
def guides(cases, tmp_path_factory) -> dict[tuple, Guide]:
    built = {}
    for size, paper in SETTINGS:
        out = tmp_path_factory.mktemp(f"{size}-{paper}")
        for tag in program.languages():
            some = [case for case in cases if program.is_read(case.stem, tag, size, paper)]
            if not some:
                continue
            done = program.run(
                "build", *some, "--language", tag, "--print", size, "--paper", paper, "--out", out, "--format", "json",
            )
            results = json.loads(done.stdout)
            assert len(results) == len(some)
            for case, result in zip(some, results):
                assert Path(result["case"]) == case
                pdf = next(Path(name) for name in result["files"] if name.endswith(".pdf"))
                built[case.stem, tag, size, paper] = Guide(case, tag, size, paper, pdf)
    assert len({guide.path for guide in built.values()}) == len(built), "two guides have one name"
    return built


@pytest.fixture
def guide(request, guides) -> Guide:
    return guides[request.param]


@pytest.fixture
def standard_guide(request, guides) -> Guide:
    return guides[request.param]


@pytest.fixture
def hand(request, guides) -> tuple[Guide, int]:
    """A guide, and which of its parts is looked at: 0, or 1 for the other hand."""
    *key, number = request.param
    return guides[tuple(key)], number


@pytest.fixture(scope="session")
def browser():
    """One for all: a second cannot be started while one is open."""
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=program.browser())
        yield browser
        browser.close()


@pytest.fixture(scope="session")
def pdfua_reports(guides) -> dict[Path, dict]:
    return pdfua_report.check([guide.path for guide in guides.values()])


def pytest_terminal_summary(terminalreporter):
    """A rule that did not run is said aloud, so that nobody takes its silence for a pass."""
    for rule, files in sorted(pdfua_report.not_run.items()):
        terminalreporter.write_line(f"pdfua: rule {rule} did not run on {len(files)} files; {pdfua_report.INSTEAD.get(rule, 'nothing stands in for it')}")


@pytest.fixture(scope="session")
def pairs(tmp_path_factory) -> list[tuple[str, str, str | None, int]]:
    """Every condition with every orthosis that fits it, the finger, and how many of its later phases it fits too."""
    return planning.fitting_pairs(tmp_path_factory.mktemp("pairs"))


@pytest.fixture(scope="session")
def answers(pairs, tmp_path_factory) -> list[tuple]:
    """Random cases with what the program makes of each."""
    return planning.answer_random_cases(pairs, tmp_path_factory.mktemp("random"))


@pytest.fixture(scope="session")
def planned(answers) -> list[planning.Planned]:
    return [planning.Planned(case, plan) for case, answer in answers if (plan := planning.plan_of(answer))]
