"""The ICD-10-CM codes of the conditions are codes, of the right side and finger, and mean what the condition is.

Source: ICD-10-CM, release of April 2026 (National Center for Health Statistics), in the package simple-icd-10-cm 1.5.0. The key
words are written here from the conditions' own names; a condition without a code of its own has the words of the code that
coders use in its place.
"""

import re

import pytest
import simple_icd_10_cm as icd

from content import folder
from joints import FINGERS

CONDITIONS = folder("conditions")
SIDES = ("right", "left")
MEANINGS = {
    "boutonniere-acute": ["boutonnière deformity", "finger"],
    "boutonniere-chronic": ["boutonnière deformity", "finger"],
    "carpal-tunnel": ["carpal tunnel"],
    "carpal-tunnel-release": ["carpal tunnel"],
    "cubital-tunnel": ["ulnar nerve"],
    "de-quervain": ["radial styloid tenosynovitis", "de quervain"],
    "dip-osteoarthritis": ["osteoarthritis", "hand"],
    "distal-radius-after-cast": ["fracture", "lower end", "radius", "subsequent"],
    "dorsal-hand-burn": ["burn", "back of", "hand"],
    "dupuytren-release": ["palmar fascial fibromatosis", "dupuytren"],
    "ecu-tendinopathy": ["tendon", "wrist"],
    "epl-repair": ["laceration of extensor", "tendon", "thumb", "subsequent"],
    "extensor-zone-five-six-repair": ["laceration of extensor", "tendon", "finger", "hand level", "subsequent"],
    "extensor-zone-three-repair": ["laceration of extensor", "tendon", "finger", "subsequent"],
    "fifth-metacarpal-neck-fracture": ["fracture of neck", "fifth metacarpal"],
    "flexor-zone-two-repair": ["laceration of flexor", "tendon", "finger", "subsequent"],
    "fpl-repair": ["laceration of long flexor", "tendon", "thumb", "subsequent"],
    "hypermobile-thumb": ["instability", "hand"],
    "intersection-syndrome": ["crepitant synovitis", "wrist"],
    "lateral-elbow": ["lateral epicondylitis", "elbow"],
    "mallet-bony": ["fracture of distal phalanx", "finger"],
    "mallet-tendon": ["mallet finger"],
    "median-nerve-palsy-low": ["lesions of median nerve"],
    "palmar-hand-burn": ["burn", "palm"],
    "pip-collateral-sprain": ["sprain of interphalangeal joint", "finger"],
    "pip-flexion-contracture": ["contracture", "hand"],
    "pip-volar-plate": ["sprain of interphalangeal joint", "finger"],
    "proximal-phalanx-fracture": ["fracture of proximal phalanx", "finger"],
    "radial-nerve-palsy": ["radial nerve"],
    "rheumatoid-knuckle-drift": ["deformity", "finger"],
    "rheumatoid-wrist": ["rheumatoid arthritis"],
    "sagittal-band-injury": ["strain of extensor", "tendon", "finger"],
    "scaphoid-after-cast": ["fracture", "navicular [scaphoid]", "wrist", "subsequent"],
    "stroke-tight-hand": ["hemiplegia", "cerebral infarction"],
    "swan-neck": ["swan-neck deformity", "finger"],
    "tfcc-injury": ["sprain", "wrist"],
    "thumb-cmc-arthroplasty": ["orthopedic aftercare"],
    "thumb-cmc-osteoarthritis": ["osteoarthritis of first carpometacarpal joint"],
    "thumb-rcl-injury": ["sprain of metacarpophalangeal joint", "thumb"],
    "thumb-ucl-acute": ["sprain of metacarpophalangeal joint", "thumb"],
    "thumb-ucl-chronic": ["ligament", "hand"],
    "trigger-finger": ["trigger finger"],
    "trigger-thumb": ["trigger thumb"],
    "ulnar-nerve-palsy": ["ulnar nerve"],
    "wrist-sprain": ["sprain", "wrist"],
    "wrist-thumb-around-birth": ["radial styloid tenosynovitis"],
}
# Where no hand is meant the code set does not count the metacarpals either.
WITHOUT_SIDE = {"fifth-metacarpal-neck-fracture": ["fracture of neck", "metacarpal"]}


def codes():
    """Condition, code, and the side and the finger it is used for; None where none is meant."""
    for condition, rules in CONDITIONS.items():
        given = rules["icd10cm"]
        yield condition, given["unspecified"], None, None
        for side in SIDES:
            yield condition, given[side], side, None
            for finger, own in given.get("fingers", {}).items():
                yield condition, own[side], side, finger


ALL = list(codes())
each_code = pytest.mark.parametrize(
    ("condition", "code", "side", "finger"), ALL, ids=["-".join(filter(None, (one[0], one[2], one[3]))) for one in ALL],
)


def words(code: str) -> set[str]:
    return set(re.findall(r"[a-z]+", icd.get_description(code).lower()))


def siblings(code: str) -> list[str]:
    """The codes that differ from this one in the character that tells sides apart: the children of its parent, with the same
    seventh character."""
    if icd.is_extended_subcategory(code):
        return [one + code[-1] for one in icd.get_children(icd.get_parent(icd.get_parent(code)))]
    return icd.get_children(icd.get_parent(code))


def test_every_condition_has_a_meaning():
    assert set(MEANINGS) == set(CONDITIONS)


@each_code
def test_code_is_one_that_can_be_billed(condition, code, side, finger):
    """A leaf of the tree: every character is there that the code set asks for, the seventh among them."""
    assert icd.is_valid_item(code), f"{code} is no code"
    assert icd.is_leaf(code), f"{code} has to be said more exactly"


@each_code
def test_code_is_of_its_side(condition, code, side, finger):
    """A description that names a side names that one. One that names none stands only where none of its siblings does, or
    where the codes of the fingers name it."""
    met = words(code) & set(SIDES)
    assert met <= {side}, icd.get_description(code)
    if side and not met and not CONDITIONS[condition]["icd10cm"].get("fingers"):
        sided = [one for one in siblings(code) if words(one) & set(SIDES)]
        assert not sided, f"{code} names no side, and {sided} do"


@each_code
def test_code_is_of_its_finger(condition, code, side, finger):
    """A description that names a finger names that one."""
    met = words(code) & set(FINGERS)
    assert met == ({finger} if finger else set()), icd.get_description(code)


@pytest.mark.parametrize("condition", [name for name, rules in CONDITIONS.items() if rules["icd10cm"].get("fingers")])
def test_fingers_are_counted_whole(condition):
    """Where codes count the finger each finger has its own, on both sides; no two share one."""
    own = CONDITIONS[condition]["icd10cm"]["fingers"]
    assert set(own) == set(FINGERS)
    assert len({code for sides in own.values() for code in sides.values()}) == 8


@pytest.mark.parametrize("condition", CONDITIONS)
def test_fingers_are_counted_where_codes_count_them(condition):
    """Where the siblings of the code name fingers, the condition has a code for each."""
    code = CONDITIONS[condition]["icd10cm"]["unspecified"]
    counted = any(words(one) & set(FINGERS) for one in siblings(code))
    assert counted == bool(CONDITIONS[condition]["icd10cm"].get("fingers")), f"{code}: {siblings(code)}"


@each_code
def test_code_means_the_condition(condition, code, side, finger):
    description = icd.get_description(code).lower()
    wanted = MEANINGS[condition] if side else WITHOUT_SIDE.get(condition, MEANINGS[condition])
    missing = [word for word in wanted if word not in description]
    assert not missing, f"{code} is {description!r}: no {missing}"


@each_code
def test_right_and_left_are_the_same_but_for_the_side(condition, code, side, finger):
    """The codes of both hands have one description, the words for the side left out."""
    given = CONDITIONS[condition]["icd10cm"]
    own = given["fingers"][finger] if finger else given
    plain = {re.sub(r"\b(right|left|dominant|non-dominant)\b", "", icd.get_description(own[one])) for one in SIDES}
    assert len(plain) == 1, plain
