"""Every guide keeps PDF/UA-1 and PDF/A-2a as far as a reader of its objects can tell.

Standards: PDF/UA-1 is ISO 14289-1:2014; PDF/A-2 is ISO 19005-2:2011; both rest on PDF 1.7, ISO 32000-1:2008.
Checkpoints are those of the Matterhorn Protocol (PDF Association), which says what a checker of PDF/UA-1 looks at.
None of this is a claim of conformance: wording, reading order and the choice of tags need a person.
"""

import re
import xml.etree.ElementTree as xml

import pikepdf
import pytest

import cldr
import program
import structure
from content import ROOT, Words, date, folder, section_titles
from pdfua_report import INSTEAD

NAMES = {
    "rdf": "http://www.w3.org/1999/02/22-rdf-syntax-ns#",
    "dc": "http://purl.org/dc/elements/1.1/",
    "xmp": "http://ns.adobe.com/xap/1.0/",
    "pdfaid": "http://www.aiim.org/pdfa/ns/id/",
    "pdfuaid": "http://www.aiim.org/pdfua/ns/id/",
}
RIGHT_TO_LEFT = {"ar", "ur"}
# Of these tags, the parts that BCP 47 (RFC 5646, section 2.1) gives a language, a script and a region.
LANGUAGE_TAG = re.compile(r"[a-z]{2,3}(-[A-Z][a-z]{3})?(-([A-Z]{2}|[0-9]{3}))?")


@pytest.fixture
def tree(guide) -> structure.Element:
    return guide.tree


def metadata(guide) -> xml.Element:
    return xml.fromstring(guide.pdf.Root.Metadata.read_bytes().decode("utf-8"))


def metadata_text(guide, path: str) -> list[str]:
    return [element.text or "" for element in metadata(guide).iterfind(f".//{path}", NAMES)]


def dictionaries(pdf):
    """Every dictionary of the file, streams' own among them."""
    pending = list(pdf.objects)
    while pending:
        thing = pending.pop()
        if isinstance(thing, (pikepdf.Dictionary, pikepdf.Stream)):
            yield thing
            pending += [value for _, value in thing.items() if isinstance(value, (pikepdf.Dictionary, pikepdf.Array)) and not value.is_indirect]
        elif isinstance(thing, pikepdf.Array):
            pending += [value for value in thing if isinstance(value, (pikepdf.Dictionary, pikepdf.Array)) and not value.is_indirect]


# ---- another's checker -------------------------------------------------------------------------------


def test_pdfua_finds_nothing(guide, pdfua_reports):
    """pdfua 0.1.3, which knows 16 of the 106 machine rules of PDF/UA-1, has nothing to say."""
    report = pdfua_reports[str(guide.path)]
    assert report["findings"] == []
    assert report["summary"]["errors"] == report["summary"]["warnings"] == 0
    assert report["exit_code"] == 0


def test_pdfua_ran_every_rule(guide, pdfua_reports):
    """A rule that is skipped is no pass. One is known to give up, by name and by its ValueError, and has a stand-in here."""
    report = pdfua_reports[str(guide.path)]
    skipped = {entry["rule_id"]: entry["reason"] for entry in report["skipped"]}
    assert set(skipped) <= set(INSTEAD)
    assert all("ValueError" in reason for reason in skipped.values())
    assert report["summary"]["rules_run"] + len(skipped) == 12


# ---- what it claims -----------------------------------------------------------------------------------


def test_metadata_claims_both_standards(guide):
    """ISO 14289-1:2014, 5: `pdfuaid:part` is 1. ISO 19005-2:2011, 6.6.4: `pdfaid:part` 2, `pdfaid:conformance` A.
    Matterhorn checkpoint 06."""
    assert metadata_text(guide, "pdfuaid:part") == ["1"]
    assert metadata_text(guide, "pdfaid:part") == ["2"]
    assert metadata_text(guide, "pdfaid:conformance") == ["A"]
    assert guide.pdf.pdf_version == "1.7"


def test_title_in_the_metadata_is_the_one_on_the_page(guide, tree):
    """ISO 14289-1:2014, 7.1: `dc:title` names the document. Matterhorn checkpoint 06."""
    titles = metadata_text(guide, "dc:title/rdf:Alt/rdf:li")
    heading, *others = tree.all("H1")
    assert titles == [heading.title] and titles[0].strip()
    assert len(others) == len(guide.hands) - 1
    assert str(guide.pdf.docinfo["/Title"]) == titles[0]


def test_viewer_shows_the_title(guide):
    """ISO 14289-1:2014, 7.1: `DisplayDocTitle` is true. Matterhorn checkpoint 07."""
    assert guide.pdf.Root.ViewerPreferences.DisplayDocTitle is True


def test_reading_direction_is_the_languages_own(guide):
    """ISO 32000-1:2008, 12.2, table 150: `Direction` R2L for writing from right to left."""
    wanted = "/R2L" if guide.language in RIGHT_TO_LEFT else "/L2R"
    assert guide.pdf.Root.ViewerPreferences.get("/Direction", "/L2R") == wanted


def test_language_is_the_one_asked_for(guide, tree):
    """ISO 14289-1:2014, 7.2; ISO 32000-1:2008, 14.9.2: `Lang` on the catalog, and on parts in another language a tag of
    BCP 47. Matterhorn checkpoint 11."""
    assert str(guide.pdf.Root.Lang).split("-")[0] == guide.language.split("-")[0]
    assert metadata_text(guide, "dc:language/rdf:Bag/rdf:li") == [str(guide.pdf.Root.Lang)]
    for tag in [str(guide.pdf.Root.Lang), *(element.language for element in tree.walk() if element.language)]:
        assert LANGUAGE_TAG.fullmatch(tag)


# ---- structure ------------------------------------------------------------------------------------------


def test_file_is_marked_as_tagged(guide):
    """ISO 14289-1:2014, 7.1; ISO 32000-1:2008, 14.7.1, table 321: `Marked` is true, `Suspects` is not. Matterhorn checkpoint 01."""
    marks = guide.pdf.Root.MarkInfo
    assert marks.Marked is True
    assert marks.get("/Suspects", False) is False


def test_custom_tags_lead_to_standard_ones(guide, tree):
    """ISO 14289-1:2014, 7.1; ISO 32000-1:2008, 14.8.4. Matterhorn checkpoint 02."""
    standard = set(
        "Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH "
        "TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby Warichu Figure Formula Form".split()
    )
    assert {element.role for element in tree.walk()} <= standard


def test_headings_begin_at_one_and_skip_no_level(guide, tree):
    """ISO 14289-1:2014, 7.4.2. Matterhorn checkpoint 14. That H1 stands once for each hand is common practice, no source."""
    levels = [int(element.role[1]) for element in tree.walk() if re.fullmatch("H[1-6]", element.role)]
    assert levels[0] == 1 and levels.count(1) == len(guide.hands)
    assert all(after <= before + 1 for before, after in zip(levels, levels[1:]))
    assert all(len(part.all("H2")) >= 5 for part in structure.parts(tree))
    assert not tree.all("H")


def test_headings_say_something(guide, tree):
    """ISO 14289-1:2014, 7.4. Matterhorn checkpoint 14."""
    assert all(element.text() and element.title for element in tree.walk() if re.fullmatch("H[1-6]", element.role))


def test_sections_stand_in_the_order_of_the_content(guide, tree):
    """ISO 14289-1:2014, 7.1: the tree follows the logical reading order (Matterhorn checkpoint 09, for people); here the
    order of content/sheets.yaml."""
    words = Words(guide.language, cldr.LOCALES[guide.language])
    wanted = [words.say(title) for name, title in section_titles() if name != "note" or "note" in guide.case]
    for part in structure.parts(tree):
        assert [element.title for element in part.all("H2")] == wanted


def rows(table: structure.Element) -> list[structure.Element]:
    """The rows of a table, whether or not they stand in groups."""
    return [row for part in table.elements() for row in ([part] if part.role == "TR" else part.elements())]


def test_tables_have_header_cells(guide, tree):
    """ISO 14289-1:2014, 7.5; ISO 32000-1:2008, 14.8.4.3.4 and 14.8.5.7. Matterhorn checkpoints 09 and 15: rows are TR, in
    THead, TBody and TFoot or not, cells are TH or TD, each TH has a scope, the top row heads the columns, and each header
    that a cell names is there."""
    tables = tree.all("Table")
    assert tables
    for table in tables:
        groups = [element.role for element in table.elements()]
        assert set(groups) == {"TR"} or groups[0] == "THead" and "TBody" in groups and set(groups[1:]) <= {"TBody", "TFoot"}
        assert {row.role for row in rows(table)} == {"TR"} and len(rows(table)) > 1
        assert {cell.role for row in rows(table) for cell in row.elements()} == {"TH", "TD"}
        assert len({sum(cell.columns() for cell in row.elements()) for row in rows(table)}) == 1, "rows of different lengths"
        headers = table.all("TH")
        assert all(cell.scope() in ("/Column", "/Row", "/Both") for cell in headers)
        assert all(cell.role == "TH" and cell.scope() == "/Column" for cell in rows(table)[0].elements())
        names = {str(cell.entry["/ID"]) for cell in headers if "/ID" in cell.entry}
        used = {str(name) for cell in table.all("TD", "TH") for name in cell.attributes.get("/Headers", [])}
        assert used <= names


def test_rows_of_tables_have_a_header(guide, tree):
    """ISO 14289-1:2014, 7.5. Matterhorn checkpoint 15: in the schedule, the calendar and the table of daily life the first
    cell of a row heads it."""
    for hand, part in zip(guide.hands, structure.parts(tree), strict=True):
        # Where it is worn at once there is no schedule; daily life is a table at the standard size only.
        at_once = folder("conditions")[hand["condition"]].get("break_in") == "at-once"
        assert len(part.all("Table")) >= 2 - at_once + (guide.printed == "standard")
    for table in tree.all("Table"):
        for row in rows(table)[1:]:
            assert (row.elements()[0].role, row.elements()[0].scope()) == ("TH", "/Row")


def test_lists_are_lists(guide, tree):
    """ISO 14289-1:2014, 7.6; ISO 32000-1:2008, 14.8.4.3.3. Matterhorn checkpoints 09 and 16."""
    lists = tree.all("L")
    assert len(lists) >= 5
    for element in lists:
        assert {child.role for child in element.elements()} <= {"LI", "L", "Caption"}
        for item in element.all("LI"):
            roles = [child.role for child in item.elements()]
            assert roles in (["Lbl", "LBody"], ["LBody"])
        if any(item.elements()[0].role == "Lbl" for item in element.elements() if item.role == "LI"):
            assert element.attributes.get("/ListNumbering", "/None") != "/None"
    inside = {id(item) for element in lists for item in element.elements()}
    assert all(id(item) in inside for item in tree.all("LI"))


def test_figures_have_an_alternative(guide, tree):
    """ISO 14289-1:2014, 7.3. Matterhorn checkpoint 13."""
    figures = tree.all("Figure")
    assert len(figures) >= 2
    assert all(figure.alt and figure.alt.strip() for figure in figures)
    # A variable that nothing filled in is printed in braces by Fluent.
    assert not any(re.search(r"[{}]|\$", figure.alt) for figure in figures)


def test_the_hand_is_said_to_a_reader_who_sees_no_picture(guide, tree):
    """ISO 14289-1:2014, 7.3: the alternative says what the figure says; here, which hand is treated, and which finger."""
    words = Words(guide.language, cldr.LOCALES[guide.language])
    plain = lambda text: " ".join(text.split())
    for hand, part in zip(guide.hands, structure.parts(tree), strict=True):
        hands = {side: plain(words.say("hand-alt", side=side)) for side in ("left", "right")}
        wanted = [hands[hand["hand"]]]
        if "finger" in hand:
            wanted.append(plain(words.say("finger-name", finger=hand["finger"])))
        said = [text for text in (plain(figure.alt) for figure in part.all("Figure")) if text.startswith(tuple(hands.values()))]
        assert [text.rstrip(".") for text in said] == [" ".join(wanted).rstrip(".")]


def test_every_picture_says_the_side_of_its_part(guide, tree):
    """ISO 14289-1:2014, 7.3: a picture of a hand says which hand it shows, and never the other one. Two at a glance, and
    those of the skin check, stand in every guide of a splint with a look."""
    words = Words(guide.language, cldr.LOCALES[guide.language])
    plain = lambda text: " ".join(text.split())
    for hand, part in zip(guide.hands, structure.parts(tree), strict=True):
        openings = {
            side: tuple(
                plain(words.say("picture-seen", side=side, view=view, what=what, finger=hand.get("finger", "none")))
                for view in ("dorsal", "palmar", "radial", "ulnar", "turned", "own")
                for what in ("hand", "finger", "thumb")
            )
            for side in ("left", "right")
        }
        alternatives = [plain(figure.alt) for figure in part.all("Figure")]
        other = "left" if hand["hand"] == "right" else "right"
        own = [text for text in alternatives if text.startswith(openings[hand["hand"]])]
        assert not [text for text in alternatives if text.startswith(openings[other])]
        if (ROOT / "content" / "shapes" / f"{hand['orthosis']}.yaml").exists():
            assert len(own) >= 3
        # Each says more than from where it is seen.
        assert all(text not in openings[hand["hand"]] for text in own)


# ---- annotations, actions, security ------------------------------------------------------------------------


def test_pages_with_annotations_tab_in_reading_order(guide):
    """ISO 14289-1:2014, 7.18.3: `Tabs` is S. Matterhorn checkpoint 28."""
    for page in guide.pdf.pages:
        if "/Annots" in page:
            assert page.get("/Tabs") == "/S"


def test_links_are_tagged_and_described(guide, tree):
    """ISO 14289-1:2014, 7.18.1 and 7.18.5: a link is a Link element with its annotation, which has `Contents`. Matterhorn
    checkpoint 28."""
    annotations = [entry for page in guide.pdf.pages for entry in page.get("/Annots", [])]
    assert all(entry["/Subtype"] == "/Link" for entry in annotations)
    assert all(str(entry["/Contents"]).strip() for entry in annotations)
    tagged = [target.objgen for element in tree.all("Link") for target in element.objects]
    assert sorted(entry.objgen for entry in annotations) == sorted(tagged)
    # Links within the guide lead from its line of contents; one that leads out is the note's.
    out = [entry for entry in annotations if "/A" in entry and entry["/A"].get("/S") == "/URI"]
    assert bool(out) == ("with-link" in guide.example.stem)


def test_nothing_runs_and_nothing_is_fetched(guide):
    """ISO 19005-2:2011, 6.5.1 and 6.8; ISO 14289-1:2014, 7.11 and 7.19: no JavaScript, no action but a link's address, no
    attached or external file. Matterhorn checkpoints 21 and 29."""
    banned = {"/JS", "/JavaScript", "/AA", "/OpenAction", "/Launch", "/EmbeddedFiles", "/EF", "/XFA", "/AcroForm"}
    for entry in dictionaries(guide.pdf):
        assert not banned & set(entry.keys())
        assert entry.get("/Type") != "/Filespec"
        assert entry.get("/S") not in ("/JavaScript", "/Launch", "/SubmitForm", "/ImportData", "/GoToR", "/GoToE", "/Rendition")


def test_file_is_not_encrypted(guide):
    """ISO 19005-2:2011, 6.1.3; ISO 14289-1:2014, 7.16. Matterhorn checkpoint 26."""
    assert not guide.pdf.is_encrypted and "/Encrypt" not in guide.pdf.trailer


def test_file_has_an_identifier(guide):
    """ISO 19005-2:2011, 6.1.3; ISO 32000-1:2008, 14.4."""
    first, second = guide.pdf.trailer["/ID"]
    assert len(bytes(first)) >= 16 and len(bytes(second)) >= 16


def test_every_guide_has_an_identifier_of_its_own(guides):
    """ISO 32000-1:2008, 14.4: identifiers tell files apart. Large print that a person's factors ask for anyway is one file."""
    seen = {bytes(guide.pdf.trailer["/ID"][1]): guide.path.read_bytes() for guide in guides.values()}
    assert len(seen) == len({guide.path.read_bytes() for guide in guides.values()})
    assert len(seen) >= len(guides) - len(program.languages())


def test_colours_have_an_output_intent(guide):
    """ISO 19005-2:2011, 6.2.3: one output intent for PDF/A, with an embedded profile."""
    (intent,) = guide.pdf.Root.OutputIntents
    assert intent["/S"] == "/GTS_PDFA1"
    assert b"acsp" in intent["/DestOutputProfile"].read_bytes()[:128]


# ---- fonts ------------------------------------------------------------------------------------------------


def test_fonts_are_embedded_and_map_to_unicode(guide):
    """ISO 14289-1:2014, 7.21.4 and 7.21.7; ISO 19005-2:2011, 6.2.11.4 and 6.2.11.7. Matterhorn checkpoints 10 and 31."""
    fonts = [entry for entry in dictionaries(guide.pdf) if entry.get("/Type") == "/Font"]
    assert fonts
    for font in fonts:
        assert font["/Subtype"] in ("/Type0", "/CIDFontType0", "/CIDFontType2")
        if font["/Subtype"] == "/Type0":
            assert b"beginbf" in font["/ToUnicode"].read_bytes()
        else:
            files = [font["/FontDescriptor"][key] for key in ("/FontFile", "/FontFile2", "/FontFile3") if key in font["/FontDescriptor"]]
            assert len(files) == 1 and len(files[0].read_bytes()) > 500


# ---- dates and privacy ----------------------------------------------------------------------------------------


def test_creation_date_is_the_day_of_the_fitting(guide):
    """ISO 32000-1:2008, 14.3.3 and 7.9.4; ISO 19005-2:2011, 6.6.3: both dates agree. That it is the day of the fitting and
    no clock's is the program's own rule, so that a guide can be made again byte for byte."""
    fitted = date(guide.case["fitted"])
    assert str(guide.pdf.docinfo["/CreationDate"])[:10] == f"D:{fitted:%Y%m%d}"
    assert [text[:10] for text in metadata_text(guide, "xmp:CreateDate")] == [fitted.isoformat()]


def test_metadata_does_not_name_the_person(guide):
    """Common practice, no source: a file's name, properties and outline show up where its pages do not."""
    person = guide.case.get("person", {}).get("name", "")
    outline = [str(entry["/Title"]) for entry in dictionaries(guide.pdf) if "/Title" in entry and "/Parent" in entry]
    shown = [guide.path.name, guide.pdf.Root.Metadata.read_bytes().decode("utf-8"), *map(str, guide.pdf.docinfo.values()), *outline]
    for part in person.split():
        assert not any(re.search(rf"\b{re.escape(part)}\b", text, re.I) for text in shown)


# ---- paper ----------------------------------------------------------------------------------------------------


def test_pages_are_the_size_of_the_paper(guide):
    """ISO 216:2007: A4 is 210 by 297 mm. US Letter is 8.5 by 11 inches (ANSI/ASME Y14.1). A point is 1/72 inch."""
    wide, high = {"a4": (210 / 25.4 * 72, 297 / 25.4 * 72), "letter": (8.5 * 72, 11 * 72)}[guide.paper]
    for page in guide.pdf.pages:
        left, bottom, right, top = map(float, page.mediabox)
        assert (left, bottom) == (0, 0)
        assert right == pytest.approx(wide, abs=0.5) and top == pytest.approx(high, abs=0.5)
