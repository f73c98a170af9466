"""Every angle of the content lies where a healthy adult's joint can go.

Source: American Academy of Orthopaedic Surgeons, Joint Motion: Method of Measuring and Recording, 1965. The figures are
recalled and agree with what later lists give as the Academy's; the book was not at hand. What its table does not have is
marked so; "reference values" are the Normal Range of Motion Reference Values of the Electronic Textbook of Hand Surgery,
e-hand.com, which were read. Angles are signed as in joints.py.
"""

import pytest

import joints
from content import folder
from joints import Range

FLEXION, SIDEWAYS = "flexion", "deviation"
NORMS = {
    ("elbow", FLEXION): (0, 150),
    # Pronation to supination.
    ("forearm", "rotation"): (-80, 80),
    ("wrist", FLEXION): (-70, 80),
    # Radial to ulnar.
    ("wrist", SIDEWAYS): (-20, 30),
    # The table has one abduction of 70 degrees. Handbooks differ by their zero points; the stricter reference values stand here.
    ("thumb-cmc", "palmar-abduction"): (0, 45),
    ("thumb-cmc", "radial-abduction"): (0, 60),
    ("thumb-cmc", FLEXION): (-20, 15),
    # The table ends at straight; the reference values have ten degrees past it.
    ("thumb-mcp", FLEXION): (-10, 50),
    ("thumb-ip", FLEXION): (-20, 80),
    ("mcp", FLEXION): (-45, 90),
    # The table ends at straight. Ten degrees past it, with help, are common practice, no source.
    ("pip", FLEXION): (-10, 100),
    ("dip", FLEXION): (-10, 90),
    # Sideways play of knuckles and middle joints: common practice, no source.
    ("mcp", SIDEWAYS): (-20, 20),
    ("thumb-mcp", SIDEWAYS): (-10, 10),
    ("pip", SIDEWAYS): (-10, 10),
}


def norm(name: str, axis: str) -> Range | None:
    kind = name if (name, axis) in NORMS else name.rpartition("-")[2]
    return Range(axis, *NORMS[kind, axis]) if (kind, axis) in NORMS and not (name.startswith("thumb") and kind != name) else None


def of_orthosis(orthosis: dict):
    """Where the piece sets its joints, may set them, lets them move and stops them. By how much a joint is held off its
    neighbours is no position."""
    for name, hold in orthosis["joints"].items():
        if hold["hold"] != "relative":
            for text in [*hold.get("at", []), *hold.get("adjustable", [])]:
                yield name, text, joints.read_range(text)
            for text in hold.get("stops", []):
                yield name, text, joints.read_stop(text)


def of_condition(condition: dict):
    """Where joints have to be held or stopped, where they must never come, and what a protocol may say."""
    for phase in condition["phases"]:
        for wanted in joints.requirements(phase):
            if wanted.get("hold") != "relative":
                for text in wanted.get("within", []):
                    yield wanted["joint"], text, joints.read_range(text)
                for text in wanted.get("stops", []):
                    yield wanted["joint"], text, joints.read_stop(text)
        for never in phase.get("never", []):
            for position in never["positions"]:
                yield position["joint"], position["range"], joints.read_range(position["range"])
    for angle in condition.get("protocol", {}).get("angles", []):
        for text in angle["within"]:
            yield angle["joint"], text, joints.read_range(text)


ORTHOSES, CONDITIONS = folder("orthoses"), folder("conditions")


def outside(angles) -> list[str]:
    return [f"{name} {text}" for name, text, given in angles if (norms := norm(name, given.axis)) is None or not norms.contains(given)]


@pytest.mark.parametrize("orthosis", ORTHOSES)
def test_an_orthosis_sets_no_joint_where_none_goes(orthosis):
    assert outside(of_orthosis(ORTHOSES[orthosis])) == []


@pytest.mark.parametrize("condition", CONDITIONS)
def test_a_condition_asks_for_no_angle_where_no_joint_goes(condition):
    assert outside(of_condition(CONDITIONS[condition])) == []


@pytest.mark.parametrize("orthosis", ORTHOSES)
def test_an_orthosis_is_set_where_it_can_be_set(orthosis):
    """The usual position lies inside the range in which the therapist may set it."""
    for name, hold in ORTHOSES[orthosis]["joints"].items():
        can = {given.axis: given for given in map(joints.read_range, hold.get("adjustable", []))}
        set_to = [*map(joints.read_range, hold.get("at", [])), *map(joints.read_stop, hold.get("stops", []))]
        assert all(can[given.axis].contains(given) for given in set_to if given.axis in can), name


def test_the_angles_are_many():
    """What is held against the norms is worth it: all kinds of joints, on more than one axis."""
    met = {
        (name.rpartition("-")[2] if not name.startswith("thumb") else name, given.axis)
        for angles in [*map(of_orthosis, ORTHOSES.values()), *map(of_condition, CONDITIONS.values())] for name, _, given in angles
    }
    assert {axis for _, axis in met} == {"flexion", "deviation", "rotation", "palmar-abduction", "radial-abduction"}
    assert {name for name, _ in met} == {"elbow", "forearm", "wrist", "thumb-cmc", "thumb-mcp", "thumb-ip", "mcp", "pip", "dip"}
