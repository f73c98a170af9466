"""Two conditions of one hand under one orthosis: neither gets less wear than it would get alone.

The stricter of two rules wins wherever both hold; that is common practice, no source. What is compared are hours, not
clock times: minutes worn by day, minutes worn or put on when needed by day, minutes worn asleep.
"""

import dataclasses
import functools
import itertools

import pytest

from cases import DAY, Case
from content import clock, folder
from planned import Planned, explain, plan_of
from random_cases import plain_case, waiting

# A pause in which it is off, or an exercise in which it is on, counts as what stands round it: exercises may move.
PAUSES = {"off-wash": min, "off-exercise": min, "on-exercise": max}
LEVELS = {"off": 0, "before": 0, "needed": 1, "on": 2}


@dataclasses.dataclass
class Pair:
    """Two cases of one orthosis, with and without each other."""

    one: Case
    other: Case
    both: Planned | None = None
    alone: tuple[Planned, ...] = ()

    def text(self) -> str:
        """The case of both: the second condition goes below the first."""
        first, *rest = self.other.condition_lines()
        finger = self.one.finger or self.other.finger
        whole = dataclasses.replace(self.one, finger=finger).text()
        return whole + "\n".join(["other_conditions:", f"  - {first}", *(f"    {line}" for line in rest)]) + "\n"


def last_kind(case: Case) -> str:
    """How the last of the dated phases is worn."""
    phase = case.phase_rules(case.begun[-1][0]) if case.begun else case.rules()["phases"][0]
    return "weaning" if "weaning" in phase else phase["wear"]


def candidates(pairs) -> dict[tuple[str, str], list[Pair]]:
    """Some pairs for every two ways of wearing that can meet under one orthosis."""
    found: dict[tuple[str, str], list[Pair]] = {}
    under = lambda entry: entry[1]
    for _, entries in itertools.groupby(sorted(pairs, key=lambda entry: (entry[1], entry[0], entry[2] or "")), under):
        entries = [entry for entry in entries if entry[2] in (None, "index", "ring")]
        for first, second in itertools.permutations(entries, 2):
            if first[0] == second[0] or len({first[2], second[2]} - {None}) > 1:
                continue
            for one_later, other_later in itertools.product(range(first[3] + 1), range(second[3] + 1)):
                pair = Pair(plain_case(*first[:3], one_later), plain_case(*second[:3], other_later))
                own = found.setdefault((last_kind(pair.one), last_kind(pair.other)), [])
                if len(own) < 5:
                    own.append(pair)
    return found


@pytest.fixture(scope="module")
def together(pairs, tmp_path_factory) -> list[Pair]:
    """One pair that the program accepts for every two ways of wearing."""
    where, made = tmp_path_factory.mktemp("together"), []
    found = candidates(pairs)
    flat = [pair for own in found.values() for pair in own]
    answers = dict(zip(map(id, flat), explain(flat, where), strict=True))
    for own in found.values():
        accepted = [pair for pair in own if plan_of(answers[id(pair)])]
        made += accepted[:1]
    alone = iter(explain([case for pair in made for case in (pair.one, pair.other)], where))
    for pair in made:
        pair.both = Planned(pair.one, plan_of(answers[id(pair)]))
        pair.alone = tuple(Planned(case, plan_of(next(alone))) for case in (pair.one, pair.other))
    return made


@functools.cache
def wear(up: int, awake: int, spans: tuple) -> tuple[int, int, int]:
    """Minutes worn by day, worn or put on when needed by day, worn asleep."""
    runs, at = [], 0
    for start, end, state in [*spans, (1440, 1440, None)]:
        runs += [("off", at, start)] if start > at else []
        runs += [(state, start, end)] if state else []
        at = end
    worn = needed = asleep = 0
    for index, (state, start, end) in enumerate(runs):
        before = [LEVELS[run[0]] for run in runs[:index] if run[0] not in PAUSES][-1:]
        after = [LEVELS[run[0]] for run in runs[index + 1 :] if run[0] not in PAUSES][:1]
        level = PAUSES[state](before + after) if state in PAUSES else LEVELS[state]
        by_day = sum((minute - up) % 1440 < awake for minute in range(start, end))
        worn += by_day * (level == 2)
        needed += by_day * (level >= 1)
        asleep += (end - start - by_day) * (level == 2)
    return worn, needed, asleep


def guards_at_once(case: Case) -> bool:
    """Healing tissue is guarded from the fitting on, whatever the skin."""
    return case.rules()["phases"][0].get("protective") == "true" and folder("wear")[case.pattern()].get("at_once") == "true"


def test_the_pairs_are_of_all_kinds(together):
    """Every way of wearing that the content has meets another one."""
    kinds = {"weaning" if "weaning" in phase else phase["wear"] for rules in folder("conditions").values() for phase in rules["phases"]}
    assert {last_kind(case) for pair in together for case in (pair.one, pair.other)} == kinds
    assert len(together) >= 40


def test_nobody_wears_it_less_for_having_two_conditions(together):
    """On no day less than either condition alone gives. Breaking in is a limit and no dose, so its days are not compared; save
    that nothing is broken in where one of the two guards healing tissue at once."""
    wrong, compared = [], 0
    for pair in together:
        day = (clock(pair.one.up), pair.one.awake())
        for case, alone in zip((pair.one, pair.other), pair.alone):
            for date, spans in alone.hours.items():
                building = {pair.both.kinds.get(date), pair.both.kinds.get(date - DAY)} & {"build"}
                if (date - case.fitted).days <= case.build_days() or building and not guards_at_once(case):
                    continue
                least, given = wear(*day, tuple(spans)), wear(*day, tuple(pair.both.hours[date]))
                compared += 1
                if any(has < wants for has, wants in zip(given, least)):
                    kinds = f"{last_kind(pair.one)} with {last_kind(pair.other)}"
                    wrong.append(f"{kinds}: on {date} {given} minutes instead of {least} for {case.condition}\n{pair.text()}")
                    break
    assert compared > 1000
    kinds = "".join(f"\n{text.splitlines()[0]}" for text in wrong)
    assert not wrong, f"{len(wrong)} of {2 * len(together)}:{kinds}\nsuch as:\n{wrong[0]}"


def test_both_conditions_are_in_the_plan(together):
    """The plan goes on as long as the longer of the two, and stands under the name of both while both hold."""
    for pair in together:
        assert max(pair.both.hours) == max(max(alone.hours) for alone in pair.alone), pair.text()
        names = [alone.phases()[0][0] for alone in pair.alone]
        assert pair.both.phases()[0][0] == "-with-".join(names), pair.text()
