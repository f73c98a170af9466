"""What other people's readers make of a PDF."""

import subprocess
import unicodedata

import program


def ask(name: str, *arguments) -> subprocess.CompletedProcess:
    return subprocess.run([program.tool(name), *map(str, arguments)], capture_output=True, text=True, encoding="utf-8", check=False)


def page_text(path, first: int, last: int | None = None) -> str:
    """The text of pages, as pdftotext reads it."""
    until = ["-l", last] if last else []
    done = ask("pdftotext", "-enc", "UTF-8", "-f", first, *until, path, "-")
    assert done.returncode == 0, done.stderr
    return done.stdout


def squeezed(text: str) -> str:
    """Presentation forms as letters (Unicode Standard Annex 15, NFKC); no spaces, no direction marks, no soft hyphens. Spaces
    go because a reader puts them in and leaves them out by distances on the page. Lam and the letters it forms a ligature
    with go too: pdftotext turns the two letters of such a glyph round in right-to-left text, although its ToUnicode entry
    has them in logical order (ISO 32000-1:2008, 9.10.3); the tests over the tag tree compare them."""
    kept = unicodedata.normalize("NFKC", text)
    return "".join(c for c in kept if not c.isspace() and unicodedata.category(c) != "Cf" and c not in "لاأإآى")
