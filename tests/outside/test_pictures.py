"""Pictures measured from outside: bones, joints, sides, and the same picture through another renderer.

Lengths: A. Buryanov, V. Kotiuk, Proportions of Hand Segments, International Journal of Morphology 28(3), 2010, means of 66
adults. The figures were taken from a summary of the paper's table; the paper itself was not at hand.
Contrast: WCAG 2.2, success criterion 1.4.11, graphics against what is beside them.
"""

import functools
import io
import itertools
import json
import math
import re
import xml.etree.ElementTree as ElementTree

import cairosvg
import pytest
from PIL import Image, ImageChops, ImageStat

import program
from content import folder

SVG = "{http://www.w3.org/2000/svg}"
FINGERS = ("index", "middle", "ring", "little")
# Millimetres: proximal, middle and distal phalanx, and the soft tissue past the last.
PHALANGES = {
    "index": (39.8, 22.4, 15.8, 3.8),
    "middle": (44.6, 26.3, 17.4, 4.0),
    "ring": (41.4, 25.7, 17.3, 4.0),
    "little": (32.7, 18.1, 16.0, 3.7),
}
# Metacarpal, proximal and distal phalanx, soft tissue.
THUMB = (46.2, 31.6, 21.7, 5.7)


@pytest.fixture(scope="module")
def desk(tmp_path_factory):
    return tmp_path_factory.mktemp("pictures")


def draw(*arguments) -> dict:
    return json.loads(program.run("draw", *arguments, "--no-cache", "--format", "json").stdout)


def posed(desk, joints: dict[str, str], *arguments) -> dict:
    """The bones of a hand in a posture: name to its two ends, y up."""
    file = desk / "posture.yaml"
    file.write_text("joints:\n" + "".join(f"  {joint}: [{angle}]\n" for joint, angle in joints.items()), encoding="utf-8")
    picture = draw("--posture", file, *arguments)["pictures"][0]
    skeleton = picture["skeleton"]
    scale = skeleton["units-for-each-mm-of-the-limb"]
    flat = lambda dot: (dot[0] / scale, -dot[1] / scale)
    return {bone["segment"]: (flat(bone["from"]), flat(bone["to"])) for bone in skeleton["bones"]}


def bearing(bone) -> float:
    (x0, y0), (x1, y1) = bone
    return math.degrees(math.atan2(y1 - y0, x1 - x0))


def length(bone) -> float:
    return math.dist(*bone)


def bent(near, far) -> float:
    """How far the second bone is bent off the first, degrees, to the left as seen."""
    return (bearing(far) - bearing(near) + 180) % 360 - 180


STRAIGHT = {f"{finger}-{joint}": "flexion 0 deg" for finger in FINGERS for joint in ("mcp", "pip", "dip")}


def test_bones_are_as_long_as_published(desk):
    # A finger's bones lie in the picture plane when it is straight and seen from its back.
    bones = posed(desk, STRAIGHT, "--view", "dorsal")
    for finger, (proximal, middle, distal, pulp) in PHALANGES.items():
        for row, wanted in (("proximal", proximal), ("middle", middle), ("distal", distal + pulp)):
            assert length(bones[f"{finger}-{row}"]) == pytest.approx(wanted, rel=0.01), f"{finger} {row}"


def test_the_thumb_is_as_long_as_published(desk):
    # The thumb leaves the picture plane: two views at right angles give back its length.
    front, side = (posed(desk, STRAIGHT, "--view", view) for view in ("dorsal", "radial"))
    metacarpal, proximal, distal, pulp = THUMB
    for name, wanted in (("metacarpal", metacarpal), ("proximal", proximal), ("distal", distal + pulp)):
        (x0, y0), (x1, y1) = front[f"thumb-{name}"]
        (z0, _), (z1, _) = side[f"thumb-{name}"]
        assert math.hypot(x1 - x0, y1 - y0, z1 - z0) == pytest.approx(wanted, rel=0.01), name


@pytest.mark.parametrize("side", ["right", "left"])
@pytest.mark.parametrize("joint, near, far, angles", [
    ("wrist", "forearm", "hand", ("extension 70", "extension 30", "flexion 0", "flexion 45", "flexion 80")),
    *((f"{finger}-{joint}", near.format(finger), far.format(finger), angles)
      for finger in FINGERS
      for joint, near, far, angles in (
          ("mcp", "hand", "{}-proximal", ("extension 40", "flexion 30", "flexion 90")),
          ("pip", "{}-proximal", "{}-middle", ("extension 10", "flexion 25", "flexion 95")),
          ("dip", "{}-middle", "{}-distal", ("extension 10", "flexion 20", "flexion 85")),
      )),
])
def test_a_joint_stands_as_asked(desk, joint, near, far, angles, side):
    for angle in angles:
        bones = posed(desk, {**STRAIGHT, joint: f"{angle} deg"}, "--view", "radial", "--side", side)
        word, size = angle.split()
        # From the thumb side the palm of a right hand is on the left, of a left hand on the right.
        wanted = int(size) * (1 if word == "flexion" else -1) * (1 if side == "right" else -1)
        assert bent(bones[near], bones[far]) == pytest.approx(wanted, abs=1), f"{side} {joint} {angle}"


@pytest.mark.parametrize("side", ["right", "left"])
@pytest.mark.parametrize("direction, size", [("radial-deviation", 20), ("ulnar-deviation", 30)])
def test_the_wrist_deviates_to_its_side(desk, direction, size, side):
    bones = posed(desk, {"wrist": f"{direction} {size} deg"}, "--view", "dorsal", "--side", side)
    # The thumb of a right hand is on the left when its back is seen.
    wanted = size * (1 if direction.startswith("radial") else -1) * (1 if side == "right" else -1)
    assert bent(bones["forearm"], bones["hand"]) == pytest.approx(wanted, abs=1)


@pytest.mark.parametrize("side", ["right", "left"])
@pytest.mark.parametrize("view", ["dorsal", "palmar"])
def test_the_thumb_is_on_its_side(desk, view, side):
    bones = posed(desk, STRAIGHT, "--view", view, "--side", side)
    thumb_is_left = bones["thumb-distal"][1][0] < bones["little-distal"][1][0]
    assert thumb_is_left == ((side == "right") == (view == "dorsal"))


@functools.cache
def shaped() -> tuple[str, ...]:
    return tuple(folder("shapes"))


def some() -> list[str]:
    return list(shaped())[::4]


@pytest.fixture(scope="module")
def written(desk):
    """An orthosis as an SVG file and as the program's own picture of it."""
    @functools.cache
    def write(orthosis: str, side: str = "right"):
        for ending in ("svg", "png"):
            program.run("draw", "--orthosis", orthosis, "--side", side, "--no-cache", "--out", desk / f"{orthosis}-{side}.{ending}")
        return desk / f"{orthosis}-{side}.svg", desk / f"{orthosis}-{side}.png"
    return write


@pytest.mark.parametrize("orthosis", some())
def test_an_svg_file_is_well_formed_and_says_what_it_is(written, orthosis):
    svg, _ = written(orthosis)
    root = ElementTree.parse(svg).getroot()
    assert root.tag == f"{SVG}svg" and root.get("role") == "img"
    title, about = root.find(f"{SVG}title"), root.find(f"{SVG}desc")
    assert title is not None and title.text and about is not None
    assert title.text in about.text
    # The side is said of the part that is drawn: "Right hand", "Right thumb", "Finger of the right hand".
    assert "right" in about.text.lower() and "left" not in about.text.lower()
    left, _ = written(orthosis, "left")
    other = ElementTree.parse(left).getroot().find(f"{SVG}desc").text.lower()
    assert "left" in other and "right" not in other
    # Title and description come first, or readers do not find them.
    assert [child.tag for child in root][:2] == [f"{SVG}title", f"{SVG}desc"]
    width, height = (float(root.get(name).removesuffix("mm")) for name in ("width", "height"))
    box = [float(n) for n in root.get("viewBox").split()]
    assert width == pytest.approx(80, abs=0.1) and box[2] / width == pytest.approx(box[3] / height)
    for path in root.iter(f"{SVG}path"):
        assert re.fullmatch(r"[Mlcz0-9 .-]+", path.get("d"))


@pytest.mark.parametrize("orthosis", some())
def test_another_renderer_shows_the_same(written, orthosis):
    svg, png = written(orthosis)
    own = Image.open(png).convert("L")
    other = Image.open(io.BytesIO(cairosvg.svg2png(url=str(svg), output_width=own.width, output_height=own.height, background_color="white")))
    other = other.convert("L")
    # Edges fall between pixels differently: a quarter of the size evens that out.
    small = [image.resize((own.width // 4, own.height // 4), Image.Resampling.BOX) for image in (own, other)]
    apart = ImageChops.difference(*small)
    assert ImageStat.Stat(apart).mean[0] < 1.5
    assert apart.getextrema()[1] < 110, "a whole line or area differs"


def luminance(colour: str) -> float:
    digits = colour.removeprefix("#")
    digits = "".join(c * 2 for c in digits) if len(digits) == 3 else digits
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4
              for c in (int(digits[i:i + 2], 16) / 255 for i in (0, 2, 4))]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    high, low = sorted((luminance(one), luminance(other)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def test_lines_stand_out_from_what_they_lie_on(written):
    assert contrast("#000", "#fff") == pytest.approx(21)
    lines, grounds = set(), set()
    for orthosis in some():
        for path in ElementTree.parse(written(orthosis)[0]).getroot().iter(f"{SVG}path"):
            name, fill, stroke = path.get("class"), path.get("fill"), path.get("stroke")
            # White seams part dark lines from dark lines; they are no lines themselves.
            if stroke and luminance(stroke) < 0.5:
                lines.add((stroke, name))
            elif fill and fill != "none" and luminance(fill) > 0.5:
                grounds.add((fill, name))
    assert lines and len({fill for fill, _ in grounds}) > 1
    for (line, what), (ground, where) in itertools.product(lines, grounds):
        assert contrast(line, ground) >= 3, f"{what} {line} on {where} {ground}"


def test_the_same_command_gives_the_same_bytes(desk):
    files = []
    for folder_name in ("one", "two"):
        (desk / folder_name).mkdir()
        for ending in ("svg", "pdf", "png"):
            file = desk / folder_name / f"hand.{ending}"
            program.run("draw", "--orthosis", shaped()[0], "--no-cache", "--out", file)
            files.append(file.read_bytes())
    assert files[:3] == files[3:]
