"""The clinician's record beside a guide says of each hand what the case and the plan say.

Common practice, no source. Codes are those of test_icd_codes.py.
"""

import json

import pytest
import simple_icd_10_cm as icd

import program
from content import folder


@pytest.fixture(scope="module")
def reasoning(cases) -> dict[str, list[dict]]:
    """What `palmleaf explain` says of each hand; it sees no language."""
    return {case.stem: answer["hands"] for case, answer in zip(cases, program.explain(cases), strict=True)}


def record(guide) -> dict:
    return json.loads(guide.path.with_name(f"record-{guide.path.stem.removeprefix('guide-')}.json").read_text(encoding="utf-8"))


def test_record_has_the_hands_of_the_case(guide):
    """The hand of the case first, the other one after it, each with its finger, its conditions and its orthosis."""
    made = record(guide)["hands"]
    assert len(made) == len(guide.hands)
    for own, hand in zip(made, guide.hands):
        conditions = [hand["condition"], *(other["condition"] for other in hand.get("other_conditions", []))]
        assert (own["hand"], own["finger"], own["orthosis"]) == (hand["hand"], hand.get("finger"), hand["orthosis"])
        assert [entry["id"] for entry in own["conditions"]] == conditions


def test_record_has_the_reasoning_of_each_hand(guide, reasoning):
    """The same verdict, plan and figures from memory that `palmleaf explain` shows."""
    for own, said in zip(record(guide)["hands"], reasoning[guide.example.stem], strict=True):
        assert own["hand"] == said["hand"]
        assert {key: own[key] for key in ("verdict", "plan", "from-memory")} == {key: said[key] for key in ("verdict", "plan", "from-memory")}


def test_record_has_the_code_of_the_hand_and_the_finger(guide):
    """ICD-10-CM: where a description names a side or a finger, the record's is the case's."""
    for own, hand in zip(record(guide)["hands"], guide.hands):
        for entry in own["conditions"]:
            codes = folder("conditions")[entry["id"]]["icd10cm"]
            wanted = codes.get("fingers", {}).get(hand.get("finger"), codes)[hand["hand"]]
            assert entry["icd-10-cm"] == wanted
            other = "left" if hand["hand"] == "right" else "right"
            assert other not in icd.get_description(wanted).split()


def test_record_names_the_protocol_that_is_followed(guide):
    for own, hand in zip(record(guide)["hands"], guide.hands):
        (entry, *_) = own["conditions"]
        assert entry["protocol"] == hand.get("protocol", {}).get("name")
