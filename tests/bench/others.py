"""Sets sheets with what Python offers: `others.py binding|weasyprint FOLDER OUT`, in the bench's own environment.

Each file of FOLDER becomes a PDF in OUT, with a call for each. The first does not count: with it everything is loaded that
is loaded once. Prints the processor seconds of each call, and pages where the tool tells them, as JSON.
"""

import json
import pathlib
import shutil
import sys
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
FONTS = ROOT / "content/fonts"


def binding(folder: pathlib.Path):
    import typst

    look = folder / "look"
    shutil.copytree(ROOT / "src/typeset/look", look, dirs_exist_ok=True)

    def one(data: pathlib.Path, out: pathlib.Path) -> None:
        shutil.copyfile(data, look / "data.json")
        typst.compile(
            look / "guide.typ", output=out, root=look, font_paths=[FONTS], ignore_system_fonts=True,
            pdf_standards=["ua-1", "a-2a"],
        )

    return sorted(folder.glob("*.json")), one


# The page is made for a telephone; this sets it on A4 in 12 pt, in the fonts of the printed sheet.
PAPER = """
@page { size: A4; margin: 13mm 14mm }
:root { font-size: 12pt }
body { max-width: none; padding: 0; font-family: "Noto Sans", "Noto Sans Arabic" !important }
"""


def weasyprint(folder: pathlib.Path):
    from weasyprint import CSS, HTML
    from weasyprint.text.fonts import FontConfiguration

    faces = FontConfiguration()
    names = {"NotoSans": "Noto Sans", "NotoSansArabic": "Noto Sans Arabic"}
    sheet = PAPER + "".join(
        f'@font-face {{ font-family: "{name}"; font-weight: {weight}; src: url("{(FONTS / f"{file}-{style}.ttf").as_uri()}") }}\n'
        for file, name in names.items()
        for style, weight in (("Regular", 400), ("Bold", 700))
    )
    css = CSS(string=sheet, font_config=faces)

    def one(page: pathlib.Path, out: pathlib.Path) -> int:
        document = HTML(filename=page).render(stylesheets=[css], font_config=faces)
        document.write_pdf(out, pdf_variant="pdf/ua-1")
        return len(document.pages)

    return sorted(folder.glob("*.html")), one


def main() -> None:
    kind, folder, out = sys.argv[1], pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])
    files, one = {"binding": binding, "weasyprint": weasyprint}[kind](folder)
    times, pages = [], []
    for file in files:
        began = time.process_time()
        pages.append(one(file, out / f"{file.stem}.pdf"))
        times.append(time.process_time() - began)
    print(json.dumps({"times": times[1:], "pages": pages[1:]}))


if __name__ == "__main__":
    main()
