"""The structure tree of a tagged PDF with the text of every element: what a screen reader is given.

ISO 32000-1:2008: logical structure 14.7, marked content 14.6, ActualText 14.9.4, ToUnicode 9.10.3, ReversedChars 14.8.2.3.3.
"""

import re

import pikepdf


class Element:
    """A structure element, its role mapped to a standard one."""

    def __init__(self, entry, roles: dict, pages: "Pages", page=None):
        self.entry = entry
        self.role = str(entry["/S"]).removeprefix("/")
        seen = set()
        while self.role in roles and self.role not in seen:
            seen.add(self.role)
            self.role = roles[self.role]
        page = entry.get("/Pg", page)
        self.page = page
        self.alt = str(entry["/Alt"]) if "/Alt" in entry else None
        self.language = str(entry["/Lang"]) if "/Lang" in entry else None
        self.title = str(entry["/T"]) if "/T" in entry else None
        self.attributes = {}
        given = entry.get("/A", [])
        for attributes in given if isinstance(given, pikepdf.Array) else [given]:
            if isinstance(attributes, pikepdf.Dictionary):
                self.attributes.update({key: value for key, value in attributes.items() if key != "/O"})
        self.children: list[Element | str] = []
        self.objects = []
        kids = entry.get("/K", [])
        for kid in kids if isinstance(kids, pikepdf.Array) else [kids]:
            if isinstance(kid, pikepdf.Dictionary) and "/S" in kid:
                self.children.append(Element(kid, roles, pages, page))
            elif isinstance(kid, pikepdf.Dictionary) and kid.get("/Type") == "/OBJR":
                self.objects.append(kid["/Obj"])
            elif isinstance(kid, pikepdf.Dictionary):
                self.children.append(pages.text(kid.get("/Pg", page), int(kid["/MCID"])))
            else:
                self.children.append(pages.text(page, int(kid)))

    def walk(self):
        yield self
        for child in self.children:
            if isinstance(child, Element):
                yield from child.walk()

    def all(self, *roles):
        return [element for element in self.walk() if element.role in roles]

    def elements(self):
        return [child for child in self.children if isinstance(child, Element)]

    def text(self) -> str:
        """All text below, pieces divided by spaces: a line or a block may end between any two."""
        return " ".join(" ".join(child if isinstance(child, str) else child.text() for child in self.children).split())

    def columns(self) -> int:
        """How many columns a cell spans: ISO 32000-1:2008, 14.8.5.7, ColSpan."""
        return int(self.attributes.get("/ColSpan", 1))

    def scope(self) -> str | None:
        return str(self.attributes["/Scope"]) if "/Scope" in self.attributes else None


class Pages:
    """Text by page and marked-content id, read when it is asked for."""

    def __init__(self):
        self.read: dict = {}
        self.maps: dict = {}

    def text(self, page, mcid: int) -> str:
        key = page.objgen
        if key not in self.read:
            self.read[key] = self.marked(page)
        return self.read[key].get(mcid, "")

    def marked(self, page) -> dict[int, str]:
        fonts = page.get("/Resources", {}).get("/Font", {})
        found: dict[int, str] = {}
        font, stack = None, []

        def show(text):
            if any(frame["actual"] is not None for frame in stack):
                return
            mcid = next((frame["mcid"] for frame in reversed(stack) if frame["mcid"] is not None), None)
            if mcid is not None:
                reverse = any(frame["reverse"] for frame in stack)
                found[mcid] = found.get(mcid, "") + (text[::-1] if reverse else text)

        for operands, operator in pikepdf.parse_content_stream(page):
            name = str(operator)
            if name == "Tf":
                font = self.unicode(fonts[operands[0]])
            elif name in ("Tj", "TJ"):
                parts = operands[0] if name == "TJ" else [operands[0]]
                raw = b"".join(bytes(part) for part in parts if isinstance(part, pikepdf.String))
                show("".join(font.get(raw[at : at + 2], "\ufffd") for at in range(0, len(raw), 2)))
            elif name in ("BMC", "BDC"):
                properties = operands[1] if name == "BDC" and isinstance(operands[1], pikepdf.Dictionary) else {}
                frame = {
                    "mcid": int(properties["/MCID"]) if "/MCID" in properties else None,
                    "reverse": operands[0] == "/ReversedChars", "actual": None,
                }
                if "/ActualText" in properties:
                    show(str(properties["/ActualText"]))
                    frame["actual"] = True
                stack.append(frame)
            elif name == "EMC":
                stack.pop()
        return found

    def unicode(self, font) -> dict[bytes, str]:
        """Two-byte codes to text, by the font's ToUnicode map."""
        key = font.objgen
        if key in self.maps:
            return self.maps[key]
        made: dict[bytes, str] = {}
        source = font["/ToUnicode"].read_bytes().decode("latin-1")
        decode = lambda code: bytes.fromhex(code).decode("utf-16-be", "replace")
        for block in re.findall(r"beginbfchar(.*?)endbfchar", source, re.S):
            for code, text in re.findall(r"<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]*)>", block):
                made[bytes.fromhex(code)] = decode(text)
        for block in re.findall(r"beginbfrange(.*?)endbfrange", source, re.S):
            for first, last, text in re.findall(r"<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>", block):
                for offset in range(int(last, 16) - int(first, 16) + 1):
                    made[(int(first, 16) + offset).to_bytes(2, "big")] = decode(text)[:-1] + chr(ord(decode(text)[-1]) + offset)
        self.maps[key] = made
        return made


def tree(pdf: pikepdf.Pdf) -> Element:
    """The structure tree under one root element."""
    root = pdf.Root["/StructTreeRoot"]
    roles = {key.removeprefix("/"): str(value).removeprefix("/") for key, value in root.get("/RoleMap", {}).items()}
    kids = root["/K"]
    kids = list(kids) if isinstance(kids, pikepdf.Array) else [kids]
    assert len(kids) == 1, "one Document element holds everything"
    return Element(kids[0], roles, Pages())


class Part:
    """What stands under one first heading: the part of a guide for one hand."""

    def __init__(self, heading: Element):
        self.heading = heading
        self.members = [heading]

    def walk(self):
        return iter(self.members)

    def all(self, *roles) -> list[Element]:
        return [element for element in self.members if element.role in roles]

    def first_page(self):
        """The page that it begins on."""
        return next(element.page for element in self.heading.walk() if element.page is not None)


def parts(root: Element) -> list[Part]:
    """A part for each first heading, in reading order."""
    found: list[Part] = []
    for element in root.walk():
        if element.role == "H1":
            found.append(Part(element))
        elif found:
            found[-1].members.append(element)
    return found
