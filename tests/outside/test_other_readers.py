"""Other people's PDF readers take the guides as they are: qpdf for the syntax, poppler for fonts and text.

Needs qpdf and poppler-utils (`apt install qpdf poppler-utils`).
"""

import cldr
import program
from content import Words, section_titles
from readers import ask, page_text, squeezed


def test_qpdf_finds_the_syntax_sound(guide):
    """ISO 32000-1:2008, 7: `qpdf --check` reads every object and stream without a warning."""
    done = ask("qpdf", "--check", guide.path)
    assert done.returncode == 0 and "WARNING" not in done.stdout + done.stderr, done.stdout + done.stderr


def test_poppler_finds_every_font_embedded_and_mapped(guide):
    """ISO 14289-1:2014, 7.21.4 and 7.21.7: columns `emb` and `uni` of pdffonts."""
    rows = ask("pdffonts", guide.path).stdout.splitlines()
    assert rows[0].split()[-5:] == ["emb", "sub", "uni", "object", "ID"] and len(rows) > 2
    for row in rows[2:]:
        embedded, _, mapped = row.split()[-5:-2]
        assert (embedded, mapped) == ("yes", "yes"), row


@program.by_letters
def test_section_titles_are_read_in_order(standard_guide):
    """Common practice, no source: text taken from the page comes in the order of content/sheets.yaml."""
    words = Words(standard_guide.language, cldr.LOCALES[standard_guide.language])
    text, at = squeezed(page_text(standard_guide.path, 1)), 0
    for name, title in section_titles():
        if name == "note" and "note" not in standard_guide.case:
            continue
        wanted = squeezed(words.say(title))
        found = text.find(wanted, at)
        assert found >= 0, f"{words.say(title)!r} does not come after the sections before it"
        at = found + len(wanted)


@program.by_letters
def test_letters_are_not_doubled(standard_guide):
    """ISO 14289-1:2014, 7.21.7 and ISO 32000-1:2008, 14.9.4: glyphs map to the characters they stand for, so the title that
    is taken from the page is the title. (A letter drawn as a base and dots must not be read twice.)"""
    title = str(standard_guide.pdf.docinfo["/Title"])
    assert squeezed(title) in squeezed(page_text(standard_guide.path, 1, 1))
