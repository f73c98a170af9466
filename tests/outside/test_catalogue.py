"""The catalogue of a shelf in a browser: WCAG 2.2 AA by axe-core, search in every language, choices, keyboard, no network.

It picks the languages that exist: where there is a Chinese one, a real search in it is made.
"""

import json
import re
import statistics
import unicodedata
from datetime import datetime

import pytest
from axe_playwright_python.sync_playwright import Axe

import program
from test_phone_page import RULES, SPACED

WIDTHS = (320, 390, 1280)
SHELF = """\
title: Handouts of the North Quay Hand Clinic
print: [standard, large]
review_every: 6 months
conditions: [carpal-tunnel, {condition: trigger-finger, finger: ring}]
cases:
  - {name: thumb-by-day, case: case.yaml, sheets: [phone]}
reviewed:
  conditions/carpal-tunnel: {date: 2027-01-18, by: hand therapist}
  cases/thumb-by-day: {date: 2027-03-01, by: hand therapist}
"""
# How many handouts the large catalogue has, and how long a search in it may take, milliseconds.
MANY, QUICK = 5000, 250


@pytest.fixture(scope="session")
def shelf(tmp_path_factory):
    folder = tmp_path_factory.mktemp("shelf")
    (folder / "shelf.yaml").write_text(SHELF, encoding="utf-8")
    case = (program.ROOT / "examples" / "right-thumb.yaml").read_text(encoding="utf-8")
    (folder / "case.yaml").write_text(case, encoding="utf-8")
    made = json.loads(program.run("shelf", folder, "--format", "json", "--today", "2027-05-01").stdout)
    # Two conditions in two sizes and one page for a telephone, in each language.
    assert len(made["made"]) == 5 * len(program.languages())
    return folder / "handouts"


# What is not hidden. The browser lays out only what is on the screen, so its own word for visible says less.
OPEN = "one => !one.closest('[hidden]')"


class Opened:
    """The catalogue in a window, on a day, with what it asked for and complained of."""

    def __init__(self, browser, path, width=1280, scheme="light", day="2027-07-20", scripts=True, bypass_csp=False):
        self.context = browser.new_context(
            viewport={"width": width, "height": 900}, color_scheme=scheme, java_script_enabled=scripts, bypass_csp=bypass_csp,
        )
        self.page = self.context.new_page()
        self.asked, self.complaints = [], []
        self.page.on("request", lambda request: self.asked.append(request.url))
        self.page.on("console", lambda message: self.complaints.append(message.text))
        self.page.on("pageerror", lambda error: self.complaints.append(str(error)))
        if scripts:
            self.page.clock.set_fixed_time(datetime.fromisoformat(f"{day}T12:00:00"))
        self.page.goto(path.as_uri())

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.context.close()

    def search(self, text):
        self.page.fill("#q", text)
        return self.shown()

    def shown(self):
        """The English names of the items that are to be seen."""
        return self.page.locator(".item h3").evaluate_all(f"all => all.filter({OPEN}).map(one => one.firstChild.textContent)")

    def lines(self):
        """How many handouts are to be seen."""
        return self.page.locator(".item li").evaluate_all(f"all => all.filter({OPEN}).length")

    def choose(self, name, value):
        self.page.select_option(f"#{name}", value)
        return self.shown()


@pytest.fixture
def opened(browser, shelf):
    with Opened(browser, shelf / "catalogue.html") as opened:
        yield opened
        assert opened.complaints == []


def titles(page, tag):
    """The titles in a language that are to be seen."""
    return page.locator(f".t[lang='{tag}']").evaluate_all(f"all => all.filter({OPEN}).map(one => one.textContent)")


@pytest.mark.parametrize("width", WIDTHS)
@pytest.mark.parametrize("scheme", ("light", "dark"))
def test_axe_finds_nothing_and_nothing_is_wider_than_the_screen(width, scheme, shelf, browser):
    with Opened(browser, shelf / "catalogue.html", width, scheme, bypass_csp=True) as opened:
        assert opened.page.evaluate("document.documentElement.scrollWidth") <= width
        found = Axe().run(opened.page, options=RULES).response["violations"]
        assert [(rule["id"], [node["html"][:160] for node in rule["nodes"][:3]]) for rule in found] == []
        opened.page.add_style_tag(content=SPACED)
        assert opened.page.evaluate("document.documentElement.scrollWidth") <= width


def test_nothing_is_fetched_and_nothing_complains(shelf, browser):
    path = shelf / "catalogue.html"
    with Opened(browser, path) as opened:
        opened.search("thumb")
        assert opened.asked == [path.as_uri()]
        assert opened.complaints == []


def test_every_handout_is_found_and_its_link_leads_to_it(opened, shelf):
    links = opened.page.locator(".item a").evaluate_all("all => all.map(one => one.getAttribute('href'))")
    assert len(links) == len(set(links)) == 5 * len(program.languages())
    for link in links:
        assert (shelf / link).is_file(), link


def test_every_title_says_its_language_and_direction(opened):
    for tag in program.languages():
        of = opened.page.locator(f".t[lang='{tag}']")
        assert of.count() == 3
        wanted = "rtl" if any(unicodedata.bidirectional(c) == "AL" for c in of.first.text_content()) else "ltr"
        assert set(of.evaluate_all("all => all.map(one => getComputedStyle(one).direction)")) == {wanted}, tag


def test_what_is_typed_in_any_language_finds_its_item(opened):
    for tag in program.languages():
        opened.search("")
        for title in titles(opened.page, tag):
            found = opened.search(title)
            assert found, (tag, title)
            assert title in titles(opened.page, tag), (tag, title)
            # Capitals and marks make no difference.
            bare = "".join(c for c in unicodedata.normalize("NFD", title.upper()) if not (c < "\u0370" and unicodedata.combining(c)))
            assert opened.search(bare) == found, (tag, title)
    assert len(opened.search("")) == 3


def test_forms_of_arabic_letters_are_one(opened):
    if "ar" not in program.languages():
        pytest.skip("no Arabic words")
    swaps = {"أ": "ا", "إ": "ا", "آ": "ا", "ى": "ي", "ة": "ه", "ي": "ی", "ك": "ک"}
    tried = 0
    for title in titles(opened.page, "ar"):
        for real, typed in swaps.items():
            if real in title:
                assert opened.search(title.replace(real, typed)) == opened.search(title), (title, typed)
                tried += 1
        pointed = re.sub(r"(?<=[\u0628-\u064a])(?=[\u0628-\u064a])", "\u064e", title)
        assert opened.search(pointed) == opened.search(title)
    assert tried >= 3


def test_a_part_of_a_chinese_title_finds_it(opened, shelf, browser):
    tags = [tag for tag in program.languages() if tag.startswith("zh")]
    for tag in tags:
        for title in titles(opened.page, tag):
            han = re.search(r"[\u4e00-\u9fff]{3,}", title).group()
            assert opened.search(han[1:3]), title
    # Whether there are Chinese words or not: a planted name is found by a part of it, in either width of letters.
    text = (shelf / "catalogue.html").read_text(encoding="utf-8")
    planted = shelf.parent / "planted.html"
    planted.write_text(text.replace('data-names="', 'data-names="梧管棕合桥ＡＢ | ', 1), encoding="utf-8")
    with Opened(browser, planted) as other:
        for part in ("管棕", "棕合桥", "合桥ab"):
            assert len(other.search(part)) == 1, part
        assert other.search("管桥") == []


def test_words_in_any_order_and_the_name_of_a_language_narrow_it(opened):
    both = opened.search("tunnel carpal")
    assert len(both) == 1 and opened.lines() == len(program.languages())
    assert opened.search("carpal arabic") == both
    assert opened.lines() == 1
    assert opened.search("no such thing at all") == []
    assert opened.page.locator("#none").is_visible()


def test_choices_narrow_it_and_one_button_clears_all(opened):
    first = program.languages()[0]
    assert len(opened.choose("condition", "carpal-tunnel")) == 1
    opened.choose("condition", "")
    opened.choose("language", first)
    assert opened.lines() == 3
    opened.choose("print", "large")
    # A page for a telephone has no size: it stays.
    assert opened.page.locator(".item a").evaluate_all(f"all => all.filter({OPEN}).map(one => one.dataset.p)") == ["large", "large", ""]
    opened.choose("words", "original")
    assert opened.lines() == (3 if first == "en" else 0)
    opened.page.click("#clear")
    assert len(opened.shown()) == 3
    assert opened.page.evaluate("document.activeElement.id") == "q"


def test_what_is_due_follows_the_day_on_which_it_is_opened(shelf, browser):
    wanted = {"2027-07-01": (1, 1, 1), "2027-07-17": (1, 1, 1), "2027-07-18": (2, 0, 1), "2027-08-31": (2, 1, 0), "2027-09-01": (3, 0, 0)}
    for day, counts in wanted.items():
        with Opened(browser, shelf / "catalogue.html", day=day) as opened:
            found = tuple(len(opened.choose("review", word)) for word in ("due", "soon", "fine"))
            assert found == counts, day
            assert opened.page.locator(".late").count() == counts[0]


def test_the_number_found_is_told_to_those_who_listen(opened):
    status = opened.page.locator("#found")
    assert status.get_attribute("role") == "status"
    opened.search("carpal")
    opened.page.clock.run_for(500)
    opened.page.wait_for_function("document.getElementById('found').textContent.includes(': 1.')")
    files = 2 * len(program.languages())
    assert status.inner_text() == f"Items found: 1. Files: {files}."


def test_the_keyboard_reaches_everything_and_its_place_is_seen(opened):
    seen = []
    for _ in range(12):
        opened.page.keyboard.press("Tab")
        name, outline, thick, high = opened.page.evaluate(
            "() => { const one = document.activeElement, style = getComputedStyle(one);"
            " return [one.id || one.className || one.tagName, style.outlineStyle, parseFloat(style.outlineWidth), one.getBoundingClientRect().height] }"
        )
        assert outline == "solid" and thick >= 2 and high >= 24, (name, outline, thick, high)
        seen.append(name)
    assert seen[:8] == ["skip", "q", "condition", "language", "words", "print", "review", "clear"]
    opened.page.focus("#q")
    opened.page.keyboard.type("carpal")
    assert len(opened.shown()) == 1
    opened.page.keyboard.press("Escape")
    assert len(opened.shown()) == 3
    for control in ("q", "condition", "language", "words", "print", "review"):
        assert opened.page.locator(f"label[for='{control}']").count() == 1


def test_without_scripts_everything_is_listed_with_its_dates(shelf, browser):
    with Opened(browser, shelf / "catalogue.html", scripts=False) as opened:
        assert opened.page.locator(".item li").count() == 3 * len(program.languages())
        assert opened.page.locator(".item li").last.is_visible()
        assert not opened.page.locator("#tools").is_visible()
        assert "2027-07-18" in opened.page.locator("#list").text_content()


def test_a_printed_list_is_black_on_white_and_whole(opened):
    opened.page.emulate_media(media="print", color_scheme="dark")
    assert not opened.page.locator("#tools").is_visible()
    assert opened.page.evaluate("getComputedStyle(document.body).backgroundColor") == "rgb(255, 255, 255)"
    assert opened.page.pdf(format="A4").startswith(b"%PDF")


@pytest.fixture(scope="session")
def large(shelf):
    """The same page with as many handouts as a large shelf has: items repeated, each with a name of its own."""
    text = (shelf / "catalogue.html").read_text(encoding="utf-8")
    begin, end = text.index("<article"), text.rindex("</article>") + len("</article>")
    items = re.findall(r"<article.*?</article>", text[begin:end], re.S)
    lines = text[begin:end].count("<li ")
    many = []
    for number in range(-(-MANY // lines)):
        many += [re.sub(r"(<h3>|data-names=\")", rf"\g<1>{chr(97 + number % 26)}{number} ", item) for item in items]
    path = shelf.parent / "large.html"
    path.write_text(text[:begin] + "\n".join(many) + text[end:], encoding="utf-8")
    return path


def test_a_large_shelf_is_searched_while_one_types(large, browser, record_property):
    with Opened(browser, large) as opened:
        count = opened.page.locator(".item li").count()
        assert count >= MANY
        assert opened.lines() < 400, "only the first are laid out"
    # The clock of the page is not touched here: it measures.
    context = browser.new_context(viewport={"width": 1280, "height": 900})
    page = context.new_page()
    page.goto(large.as_uri())
    words = [text[: at + 1] for text in ("carpal tunnel", "tunel", "عصب", "b27") for at in range(len(text))] + [""]
    took = page.evaluate(
        """words => words.map(word => {
            const box = document.getElementById('q');
            const begun = performance.now();
            box.value = word;
            box.dispatchEvent(new Event('input'));
            document.body.getBoundingClientRect();
            return performance.now() - begun;
        })""",
        words,
    )
    context.close()
    size = large.stat().st_size
    record_property("search", {"handouts": count, "bytes": size, "median-ms": statistics.median(took), "most-ms": max(took)})
    print(f"\n{count} handouts, {size / 1024:.0f} KiB: search {statistics.median(took):.1f} ms in the middle, {max(took):.1f} ms at most")
    assert statistics.median(took) < QUICK
