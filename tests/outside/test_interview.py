"""The interview on a terminal of 80 columns, through a pseudo-terminal: arrow keys, search as you type, Ctrl-C.

The screen is kept by pyte, a terminal emulator, so that what is judged is what a person sees.
"""

import os
import time

import pexpect
import pyte
import pytest
import yaml

import program

COLUMNS, ROWS = 80, 24
DOWN, ENTER, INTERRUPT, ESCAPE, SPACE = "\x1b[B", "\r", "\x03", "\x1b", " "


class Terminal:
    """A person at a terminal."""

    def __init__(self, folder, *arguments, **env):
        self.screen = pyte.Screen(COLUMNS, ROWS)
        self.stream = pyte.Stream(self.screen)
        self.raw = ""
        env = {**os.environ, "TERM": "xterm-256color", **env}
        self.child = pexpect.spawn(
            str(program.binary()), ["new", *map(str, arguments)],
            cwd=str(folder), env=env, dimensions=(ROWS, COLUMNS), encoding="utf-8", timeout=30,
        )

    def read(self) -> bool:
        """Takes in what was written; false when the program has ended."""
        try:
            text = self.child.read_nonblocking(65536, timeout=0.2)
            self.raw += text
            self.stream.feed(text)
        except pexpect.TIMEOUT:
            pass
        except pexpect.EOF:
            return False
        return True

    def until(self, *wanted: str) -> str:
        """Reads until the screen shows all of it. A screen is written in parts: what is asserted next is asked for here."""
        end = time.monotonic() + 30
        while time.monotonic() < end:
            if not self.read():
                break
            if all(text in self.shown for text in wanted):
                return self.shown
        missing = [text for text in wanted if text not in self.shown]
        assert not missing, f"{missing} is never shown:\n{self.shown}"
        return self.shown

    def gone(self, unwanted: str):
        """Reads until the screen no longer shows it."""
        end = time.monotonic() + 30
        while unwanted in self.shown and time.monotonic() < end:
            self.read()
        assert unwanted not in self.shown, f"{unwanted!r} stays:\n{self.shown}"

    @property
    def shown(self) -> str:
        return "\n".join(line.rstrip() for line in self.screen.display)

    def type(self, text: str):
        self.child.send(text)

    def end(self) -> int:
        self.until_closed()
        self.child.close()
        return self.child.exitstatus

    def until_closed(self):
        end = time.monotonic() + 30
        while self.read():
            assert time.monotonic() < end, f"it does not end:\n{self.shown}"


def choose(terminal, question, typed):
    terminal.until(question)
    terminal.type(typed)
    time.sleep(0.3)
    terminal.type(ENTER)


def test_arrows_and_search_make_a_case(tmp_path):
    terminal = Terminal(tmp_path, "case.yaml", "--today", "2027-03-01")
    terminal.until("What is the orthosis for?")
    terminal.type("quervain")
    terminal.until("De Quervain")
    terminal.gone("Carpal tunnel")
    terminal.type(ENTER)
    terminal.until("Which hand?", "> right", "left")
    terminal.type(DOWN)
    time.sleep(0.3)
    terminal.type(ENTER)
    choose(terminal, "Which phase", "")
    terminal.until("Which orthosis was fitted?", " fits")
    terminal.type("wrist-only")
    terminal.until("DOES NOT FIT: thumb-cmc")
    terminal.type(ENTER)
    terminal.until("Take it all the same?", "must be held still")
    terminal.type(ENTER)
    terminal.until("Which orthosis was fitted?\n")
    terminal.type("forearm-thumb-spica")
    time.sleep(0.5)
    terminal.type(ENTER)
    for question in ("Fitted on", "Next visit on", "Name of the clinic", "Telephone", "Emergency"):
        choose(terminal, question, "")
    terminal.until("What does this person do all day?")
    terminal.type("open-jar")
    time.sleep(0.3)
    terminal.type(SPACE)
    time.sleep(0.3)
    terminal.type(ENTER)
    choose(terminal, "What is particular", "")
    choose(terminal, "In which language", "Arabic")
    for question in ("How large", "own number", "Name to print"):
        choose(terminal, question, "")
    assert terminal.end() == 0, terminal.shown
    text = (tmp_path / "case.yaml").read_text(encoding="utf-8")
    case = yaml.safe_load(text)
    assert case["condition"] == "de-quervain"
    assert case["hand"] == "left"
    assert case["orthosis"] == "forearm-thumb-spica"
    assert case["language"] == "ar"
    assert case["activities"] == ["open-jar"]
    assert "\x1b" not in text


@pytest.mark.parametrize("key", [INTERRUPT, ESCAPE], ids=["ctrl-c", "escape"])
def test_leaving_leaves_nothing_behind(tmp_path, key):
    terminal = Terminal(tmp_path, "case.yaml")
    choose(terminal, "What is the orthosis for?", "quervain")
    terminal.until("Which hand?")
    terminal.type(key)
    assert terminal.end() == 1
    assert "nothing was written" in terminal.raw
    assert list(tmp_path.iterdir()) == []


def test_no_line_is_wider_than_the_terminal_whatever_the_script(tmp_path):
    terminal = Terminal(tmp_path, "case.yaml")
    terminal.until("What is the orthosis for?")
    for _ in range(3):
        terminal.type(DOWN)
    terminal.type("n")
    time.sleep(0.5)
    shown = terminal.until("What is the orthosis for?")
    rows = [line for line in shown.splitlines() if line.strip()]
    # A question, ten entries and a line of help: a wrapped entry would make more.
    assert len(rows) <= 12, shown
    terminal.type(INTERRUPT)
    terminal.end()


def test_without_colour_nothing_is_coloured(tmp_path):
    terminal = Terminal(tmp_path, "case.yaml", NO_COLOR="1")
    terminal.until("What is the orthosis for?")
    terminal.type(INTERRUPT)
    terminal.end()
    coloured = [part for part in terminal.raw.split("\x1b[")[1:] if part.split("m")[0].replace(";", "").isdigit() and part.split("m")[0] not in ("0", "")]
    coloured = [part for part in coloured if "m" in part[:12] and not part[:12].startswith(("39m", "49m"))]
    assert coloured == [], coloured[:5]


def test_a_terminal_that_cannot_move_gets_plain_questions(tmp_path):
    terminal = Terminal(tmp_path, "case.yaml", "--today", "2027-03-01", TERM="dumb")
    terminal.until("Number, id or part of a name")
    assert "\x1b" not in terminal.raw
    assert max(map(len, terminal.raw.splitlines())) <= COLUMNS
    terminal.type("quervain\n")
    terminal.until("may be 2 of these")
    terminal.type("de-quervain\n")
    terminal.until("Which hand?")
    terminal.type("sideways\n")
    terminal.until("Nothing here is called")
    terminal.type(INTERRUPT)
    terminal.until_closed()
    terminal.child.close()
    assert list(tmp_path.iterdir()) == []
