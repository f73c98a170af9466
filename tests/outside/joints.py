"""Joint names and angles as the content writes them, read anew: which joints a name stands for, and signed degrees.

An angle is signed along its axis: flexion, ulnar deviation, supination and abduction are positive, so that "extension 10 deg
to flexion 20 deg" is -10 to 20.
"""

import dataclasses
import re

FINGERS = ("index", "middle", "ring", "little")
# Direction to axis and sign.
DIRECTIONS = {
    "flexion": ("flexion", 1), "extension": ("flexion", -1),
    "ulnar-deviation": ("deviation", 1), "radial-deviation": ("deviation", -1),
    "supination": ("rotation", 1), "pronation": ("rotation", -1),
    "palmar-abduction": ("palmar-abduction", 1), "palmar-adduction": ("palmar-abduction", -1),
    "radial-abduction": ("radial-abduction", 1), "radial-adduction": ("radial-abduction", -1),
}
RANGE = re.compile(r"([a-z-]+) ([\d.]+)(?: deg)?(?: to (?:([a-z-]+) )?([\d.]+) deg)?")


@dataclasses.dataclass(frozen=True)
class Range:
    """A stretch of one axis, both ends included."""

    axis: str
    low: float
    high: float

    def contains(self, other: "Range") -> bool:
        return self.axis == other.axis and self.low <= other.low and other.high <= self.high


def read_range(text: str) -> Range:
    """"flexion 10 to 20 deg", "extension 10 deg to flexion 20 deg" or "extension 15 deg"."""
    match = RANGE.fullmatch(text.strip())
    assert match, f"{text!r} is no range"
    direction, size, other, end = match.groups()
    axis, sign = DIRECTIONS[direction]
    one = sign * float(size)
    if end is None:
        return Range(axis, one, one)
    other_axis, other_sign = DIRECTIONS[other or direction]
    assert other_axis == axis, f"{text!r} lies on two axes"
    two = other_sign * float(end)
    return Range(axis, min(one, two), max(one, two))


def read_stop(text: str) -> Range:
    """"extension at flexion 10 deg": the angle at which it stops."""
    direction, at = text.split(" at ")
    stopped = read_range(at)
    assert DIRECTIONS[direction][0] == stopped.axis, f"{text!r} lies on two axes"
    return stopped


def write(axis: str, angle: float) -> str:
    """-15 on the axis of flexion as "extension 15 deg"."""
    word = next(word for word, (own, sign) in DIRECTIONS.items() if own == axis and sign == (1 if angle >= 0 else -1))
    return f"{word} {abs(angle):g} deg"


def about_one_finger(name: str) -> bool:
    """Whether the name depends on which finger is affected."""
    return name.startswith(("finger-", "other-fingers-"))


def single(name: str, finger: str | None) -> frozenset[str]:
    """The joints that a name stands for."""
    group, _, knuckle = name.rpartition("-")
    if group == "fingers":
        return frozenset(f"{one}-{knuckle}" for one in FINGERS)
    if group == "finger":
        return frozenset({f"{finger}-{knuckle}"})
    if group == "other-fingers":
        return frozenset(f"{one}-{knuckle}" for one in FINGERS if one != finger)
    return frozenset({name})


def requirements(phase: dict) -> list[dict]:
    """Everything a phase asks of joints, the alternative ways among it."""
    ways = [way for one in phase.get("one_of", []) for way in one["ways"]]
    return [*phase.get("requires", []), *(wanted for way in ways for wanted in way.get("requires", []))]


def names_of_condition(condition: dict) -> set[str]:
    """Every joint name that a condition uses."""
    names = {angle["joint"] for angle in condition.get("protocol", {}).get("angles", [])}
    for phase in condition["phases"]:
        asked = requirements(phase)
        names |= {wanted["joint"] for wanted in asked} | {wanted["when"]["joint"] for wanted in asked if "when" in wanted}
        names |= {position["joint"] for never in phase.get("never", []) for position in never["positions"]}
        names |= {ban["joint"] for ban in phase["exercises"].get("bans", [])} | set(phase["exercises"].get("joints", []))
    return names


def names_of_orthosis(orthosis: dict) -> set[str]:
    return {*orthosis["joints"], *orthosis.get("primary", [])}
