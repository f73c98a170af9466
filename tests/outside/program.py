"""Runs the built program, and finds what its repository holds."""

import functools
import json
import os
import shutil
import subprocess
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
EXAMPLES = sorted((ROOT / "examples").glob("*.yaml"))


class Missing(Exception):
    """Something the checks cannot do without; they fail then, and never pass by skipping."""


def binary() -> Path:
    named = os.environ.get("PALMLEAF")
    if not named:
        raise Missing("set PALMLEAF to the built program, such as target/release/palmleaf")
    path = Path(named).resolve()
    if not os.access(path, os.X_OK):
        raise Missing(f"PALMLEAF names {named}, which is no program")
    return path


def tool(name: str) -> str:
    found = shutil.which(name)
    if found is None:
        raise Missing(f"{name} is missing: apt install qpdf poppler-utils strace tesseract-ocr")
    return found


def browser() -> str:
    for name in ("chromium", "chromium-browser", "google-chrome"):
        if found := shutil.which(name):
            return found
    raise Missing("no browser of the Chromium family is here: apt install chromium")


def run(*arguments, env=None, cwd=None, check=True) -> subprocess.CompletedProcess:
    """One run of the program; its output is text in UTF-8."""
    done = subprocess.run(
        [str(binary()), *map(str, arguments)],
        capture_output=True, text=True, encoding="utf-8", env=env, cwd=cwd, check=False,
    )
    if check and done.returncode != 0:
        raise AssertionError(f"palmleaf {' '.join(map(str, arguments))}: exit {done.returncode}\n{done.stderr}{done.stdout}")
    return done


@functools.cache
def languages() -> tuple[str, ...]:
    """The tags that the program speaks."""
    return tuple(entry["id"] for entry in json.loads(run("list", "languages", "--format", "json").stdout))


# Languages that every guide is built and read in; the others are read in some of them, each in all of its parts.
THOROUGH = ("en", "es", "ar")
SOME = ("both-hands", "mallet-ring-finger", "right-thumb")


# Nastaliq draws a letter as a stroke and its dots, and a PDF names both: words taken from such a page are not the words on it.
# `tests/suite/languages.rs` holds them on the way to the page, `test_phone_page.py` on the telephone.
UNLETTERED = ("ur",)


def by_letters(test):
    """A check that finds words on a page by their letters: not for languages where they cannot be found."""
    test.by_letters = True
    return test


def is_read(example: str, language: str, size: str = "standard", paper: str = "a4") -> bool:
    """Whether the checks of guides look at this one."""
    if language in THOROUGH:
        return True
    return example in SOME and paper == "a4" and (size == "standard" or example == "mallet-ring-finger")


def explain(cases) -> list[dict]:
    """The whole reasoning of each case, in their order."""
    done = run("explain", *cases, "--format", "json", check=False)
    if not done.stdout.strip():
        raise AssertionError(f"palmleaf explain: exit {done.returncode}\n{done.stderr}")
    return json.loads(done.stdout)
