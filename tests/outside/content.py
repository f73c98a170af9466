"""The content and the cases, read with another YAML and another Fluent reader than the program's own."""

import datetime
import functools
import re

import yaml
from fluent.runtime import FluentBundle, FluentResource

from program import ROOT

CONTENT = ROOT / "content"


class Loader(yaml.SafeLoader):
    """YAML with no truth values: `yes`, `no`, `on`, `off`, `true` and `false` stay words, so that no id turns into one."""


Loader.yaml_implicit_resolvers = {
    first: [(tag, pattern) for tag, pattern in resolvers if tag != "tag:yaml.org,2002:bool"]
    for first, resolvers in yaml.SafeLoader.yaml_implicit_resolvers.items()
}


def read(path) -> dict:
    return yaml.load(path.read_text(encoding="utf-8"), Loader=Loader)


@functools.cache
def folder(name: str) -> dict[str, dict]:
    """Every file of a content folder, by its id."""
    return {path.stem: read(path) for path in sorted((CONTENT / name).glob("*.yaml"))}


@functools.cache
def general() -> dict:
    return read(CONTENT / "general.yaml")


def days(text: str) -> int:
    """"4 weeks" as 28."""
    number, unit = str(text).split()
    return int(number) * {"day": 1, "days": 1, "week": 7, "weeks": 7}[unit]


def minutes(text: str) -> int:
    """"2 h" as 120."""
    number, unit = str(text).split()
    return int(number) * {"min": 1, "h": 60}[unit]


def clock(text: str) -> int:
    """"07:30" as minutes after midnight."""
    hours, rest = str(text).split(":")
    return int(hours) * 60 + int(rest)


def date(value) -> datetime.date:
    return value if isinstance(value, datetime.date) else datetime.date.fromisoformat(str(value))


def section_titles() -> list[tuple[str, str]]:
    """Section ids with the message of their titles, in print order."""
    order = read(CONTENT / "sheets.yaml")["guide"]
    pattern = re.compile(r'^# \{\{ say\(id="([a-z-]+)"\) \}\}', re.M)
    return [(name, pattern.search((CONTENT / "sections" / f"{name}.md").read_text(encoding="utf-8")).group(1)) for name in order]


class Words:
    """The messages of one language."""

    def __init__(self, tag: str, locale: str):
        self.bundle = FluentBundle([locale], use_isolating=False)
        for path in sorted((ROOT / "locales" / tag).glob("*.ftl")):
            self.bundle.add_resource(FluentResource(path.read_text(encoding="utf-8")))

    def say(self, message: str, **arguments) -> str:
        text, faults = self.bundle.format_pattern(self.bundle.get_message(message).value, arguments)
        assert not faults, f"{message}: {faults}"
        return text
