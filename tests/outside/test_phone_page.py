"""The page for a telephone in a browser: WCAG 2.2 AA by axe-core, reflow (1.4.10), text spacing (1.4.12), focus (2.4.7).

Nothing on the page runs or is fetched, so the rules of axe are put in from outside, past the page's own policy.
"""

import json
from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe

import program

WIDTHS = (320, 390, 1280)
SCHEMES = ("light", "dark")
# These at every width, in light and dark; the others once.
THOROUGH = ("both-hands", "right-thumb")
RULES = {"runOnly": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]}
# Success criterion 1.4.12, as it is written.
SPACED = "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }"
# What is wider than the page, and tiles of the hand with a word that reaches out of them.
WIDER = """() => {
    const wide = document.documentElement.clientWidth;
    const inside = one => one.closest('.heard, .store, svg') && one.tagName !== 'svg';
    const cut = [...document.querySelectorAll('.face, .face-words, .tile, .disc')].filter(one => one.scrollWidth > one.clientWidth + 1);
    if (cut.length) return cut.map(one => one.outerHTML.slice(0, 160));
    return [...document.body.querySelectorAll('*')].filter(one => !inside(one)).filter(one => {
        const box = one.getBoundingClientRect();
        return box.width > 1 && (box.right > wide + 1 || box.left < -1);
    }).map(one => one.outerHTML.slice(0, 160));
}"""


def settings() -> list[tuple]:
    every = [(name, tag, width, scheme) for name in THOROUGH for tag in ("en", "ar") for width in WIDTHS for scheme in SCHEMES]
    others = [example.stem for example in program.EXAMPLES if example.stem not in THOROUGH]
    rest = [tag for tag in program.languages() if tag not in program.THOROUGH]
    every += [(THOROUGH[0], tag, 320, "light") for tag in rest]
    return every + [(name, tag, 390, "light") for name in others for tag in ("en", "ar")] + [(name, "es", 320, "dark") for name in others]


@pytest.fixture(scope="session")
def pages(tmp_path_factory) -> dict[tuple[str, str], Path]:
    """The page of every example in every language."""
    tags = program.languages()
    out = tmp_path_factory.mktemp("phone")
    done = program.run("build", *program.EXAMPLES, "--sheets", "phone", "--language", ",".join(tags), "--out", out, "--format", "json")
    built = {}
    for (example, tag), result in zip([(example, tag) for example in program.EXAMPLES for tag in tags], json.loads(done.stdout)):
        assert Path(result["case"]) == example
        built[example.stem, tag] = next(Path(name) for name in result["files"] if name.endswith(".html"))
    return built


class Opened:
    """A page in a window, with what it asked for and complained of."""

    def __init__(self, browser, path, width, scheme="light", bypass_csp=False):
        self.context = browser.new_context(
            viewport={"width": width, "height": 800}, color_scheme=scheme, bypass_csp=bypass_csp,
        )
        self.page = self.context.new_page()
        self.asked, self.complaints = [], []
        self.page.on("request", lambda request: self.asked.append(request.url))
        self.page.on("console", lambda message: self.complaints.append(message.text))
        self.page.goto(path.as_uri())

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.context.close()


@pytest.mark.parametrize("setting", settings(), ids=lambda setting: "-".join(map(str, setting)))
def test_axe_finds_nothing_and_nothing_is_wider_than_the_screen(setting, pages, browser):
    name, tag, width, scheme = setting
    with Opened(browser, pages[name, tag], width, scheme, bypass_csp=True) as opened:
        assert opened.page.evaluate("document.documentElement.scrollWidth") <= width
        assert opened.page.evaluate(WIDER) == []
        found = Axe().run(opened.page, options=RULES).response["violations"]
        assert [(rule["id"], [node["html"][:160] for node in rule["nodes"][:3]]) for rule in found] == []


@pytest.mark.parametrize("key", [(name, tag) for name in THOROUGH for tag in ("en", "es", "ar")], ids="-".join)
def test_words_set_wider_still_fit(key, pages, browser):
    with Opened(browser, pages[key], 320, bypass_csp=True) as opened:
        opened.page.add_style_tag(content=SPACED)
        assert opened.page.evaluate("document.documentElement.scrollWidth") <= 320
        assert opened.page.evaluate(WIDER) == []


@pytest.mark.parametrize("key", [(name, tag) for name in THOROUGH for tag in ("en", "es", "ar")], ids="-".join)
def test_words_twice_as_large_still_fit(key, pages, browser):
    with Opened(browser, pages[key], 640, bypass_csp=True) as opened:
        opened.page.add_style_tag(content=":root { font-size: 225% !important }")
        assert opened.page.evaluate("document.documentElement.scrollWidth") <= 640


def test_nothing_is_fetched_and_nothing_complains(pages, browser):
    for path in pages.values():
        with Opened(browser, path, 390) as opened:
            assert opened.asked == [path.as_uri()]
            assert opened.complaints == []


def test_every_link_shows_its_focus_and_is_large_enough(pages, browser):
    for key in [(name, tag) for name in THOROUGH for tag in ("en", "ar")]:
        with Opened(browser, pages[key], 320) as opened:
            links = opened.page.locator("a")
            assert links.count() > 5
            for number in range(links.count()):
                opened.page.keyboard.press("Tab")
                style = opened.page.evaluate(
                    "() => { const one = document.activeElement, style = getComputedStyle(one), box = one.getBoundingClientRect();"
                    " return [one.tagName, style.outlineStyle, parseFloat(style.outlineWidth), box.width, box.height] }"
                )
                tag, outline, thick, width, height = style
                assert tag == "A" and outline == "solid" and thick >= 2, (key, number, style)
                assert width >= 24 and height >= 24, (key, number, style)


def test_left_lies_left_of_right_in_every_script(pages, browser):
    for (name, tag), path in pages.items():
        with Opened(browser, path, 390) as opened:
            left = opened.page.locator(".face.left").first.bounding_box()
            right = opened.page.locator(".face.right").first.bounding_box()
            assert left["x"] + left["width"] <= right["x"], (name, tag)


def test_a_printed_page_is_black_on_white_without_the_list_of_sections(pages, browser):
    with Opened(browser, pages["right-thumb", "en"], 1280, scheme="dark") as opened:
        opened.page.emulate_media(media="print")
        assert not opened.page.locator("nav").is_visible()
        ground = opened.page.evaluate("getComputedStyle(document.body).backgroundColor")
        assert ground == "rgb(255, 255, 255)"
        assert opened.page.pdf(format="A4").startswith(b"%PDF")
