"""Cuts the large fonts of content/fonts down to the letters that sheets need.

    python tests/fonts/subset.py FOLDER

FOLDER holds two packages of Debian and one of the npm registry, which are told apart from others by their hash:
fonts-noto-core_20201225-1_all.deb, fonts-noto-cjk_20220127+repack1-1_all.deb and
@fontsource/noto-nastaliq-urdu 5.3.0 (`npm pack`). fonttools makes the subsets (`pip install fonttools==4.68.0 brotli`);
the same words and packages give the same bytes.

- Latin, Vietnamese and Cyrillic letters and signs of Noto Sans.
- Of Noto Sans CJK SC: every sign of the words in locales/zh-Hans, Latin letters, and the 3,755 commonest characters as
  GB 2312-80 lists them (its first level, rows 16 to 55), so that names and notes of most cases can be set too.
- Devanagari and Nastaliq faces are taken whole: shaping needs nearly all of them. Nastaliq is not Debian's: the bold of
  that version says it is regular, and its letters stand apart in the middle of words.
"""
import hashlib
import os
import pathlib
import subprocess
import sys
import tarfile
import tempfile

from fontTools import subset
from fontTools.ttLib import TTCollection, TTFont

ROOT = pathlib.Path(__file__).resolve().parents[2]
OUT = ROOT / "content/fonts"
PACKAGES = {
    "58f4f0bb6720f919f92096b3508e1412a0f1544424ade6c5b5bf1eb694dd64ba": "core",
    "4a2515eb6db3978b897fef9709ed0d2b1f4c6c4df4d83d6c4ef65f71f1b1f502": "cjk",
}
NASTALIQ = "80690ba85bdfbd96769337da894e1485a0b4aa597cb28a04f1b26e14487847e2"
WHOLE = ["NotoSansDevanagari-Regular", "NotoSansDevanagari-Bold"]
# Basic Latin to Latin Extended-B, combining marks that Vietnamese may be typed with, Cyrillic, Vietnamese letters,
# punctuation, currency, letterlike signs, arrows, mathematical operators, boxes and ticks.
LETTERS = [(0x20, 0x7E), (0xA0, 0x24F), (0x2B0, 0x2FF), (0x300, 0x36F), (0x400, 0x4FF), (0x1E00, 0x1EFF),
           (0x2000, 0x206F), (0x20A0, 0x20BF), (0x2100, 0x214F), (0x2190, 0x21FF), (0x2200, 0x22FF)]


def unpack(folder: pathlib.Path, into: pathlib.Path) -> dict[str, pathlib.Path]:
    found = {}
    for package in sorted(folder.glob("*.deb")):
        name = PACKAGES.get(hashlib.sha256(package.read_bytes()).hexdigest())
        if name:
            subprocess.run(["dpkg-deb", "-x", package, into / name], check=True)
            found[name] = into / name / "usr/share/fonts"
    for package in sorted(folder.glob("*.tgz")):
        if hashlib.sha256(package.read_bytes()).hexdigest() == NASTALIQ:
            with tarfile.open(package) as files:
                files.extractall(into / "nastaliq", filter="data")
            found["nastaliq"] = into / "nastaliq/package/files"
    missing = (set(PACKAGES.values()) | {"nastaliq"}) - set(found)
    if missing:
        sys.exit(f"{folder} lacks the package of {', '.join(sorted(missing))} (see the head of this file)")
    return found


def cut(font: TTFont, letters: set[int], to: pathlib.Path) -> None:
    options = subset.Options()
    options.layout_features = ["*"]
    options.name_IDs = ["*"]
    options.hinting = False
    options.notdef_outline = True
    cutter = subset.Subsetter(options)
    cutter.populate(unicodes=letters)
    cutter.subset(font)
    font["head"].modified = font["head"].created
    font.recalcTimestamp = False
    font.save(to, reorderTables=True)
    print(f"{to.name}: {to.stat().st_size // 1024} KB")


def ranges(*parts: tuple[int, int]) -> set[int]:
    return {letter for first, last in parts for letter in range(first, last + 1)}


def commonest() -> set[int]:
    rows = (bytes([0xA0 + row, 0xA0 + cell]) for row in range(16, 56) for cell in range(1, 95))
    return {ord(text) for text in (pair.decode("gb2312", "ignore") for pair in rows) if text}


def said(language: str) -> set[int]:
    files = (ROOT / "locales" / language).rglob("*.ftl")
    return {ord(sign) for file in files for sign in file.read_text(encoding="utf-8") if sign.isprintable()}


def main() -> None:
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    os.environ.setdefault("SOURCE_DATE_EPOCH", "0")
    with tempfile.TemporaryDirectory() as space:
        sources = unpack(pathlib.Path(sys.argv[1]), pathlib.Path(space))
        core = sources["core"] / "truetype/noto"
        for name in WHOLE:
            (OUT / f"{name}.ttf").write_bytes((core / f"{name}.ttf").read_bytes())
        for weight, number in [("Regular", 400), ("Bold", 700)]:
            nastaliq = TTFont(sources["nastaliq"] / f"noto-nastaliq-urdu-arabic-{number}-normal.woff2", recalcTimestamp=False)
            nastaliq.flavor = None
            nastaliq.save(OUT / f"NotoNastaliqUrdu-{weight}.ttf", reorderTables=True)
            cut(TTFont(core / f"NotoSans-{weight}.ttf"), ranges(*LETTERS), OUT / f"NotoSans-{weight}.ttf")
            faces = TTCollection(sources["cjk"] / f"opentype/noto/NotoSansCJK-{weight}.ttc").fonts
            face = next(face for face in faces if face["name"].getDebugName(1).startswith("Noto Sans CJK SC"))
            letters = commonest() | said("zh-Hans") | ranges((0x20, 0x7E), (0xA0, 0xFF), (0x2010, 0x2044),
                                                              (0x3000, 0x303F), (0xFF01, 0xFF5E))
            cut(face, letters, OUT / f"NotoSansCJKsc-{weight}.otf")


if __name__ == "__main__":
    main()
