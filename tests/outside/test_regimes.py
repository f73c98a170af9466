"""What a settled day looks like under each wear regime, minute by minute, in the random cases.

The regimes are the content's own; what each means is written down here a second time, after the words that stand beside it
in the case schema. That nobody sleeps in a piece that stretches, and that half an hour of rest lets marks fade between two
bouts, is common practice, no source.
"""

from cases import DAY, tolerates
from content import clock, days, folder, minutes
from planned import WORN, every, explain, plan_of
from random_cases import plain_case

PAUSES, EXERCISES = {"off-wash", "off-exercise"}, {"on-exercise", "off-exercise"}
# What a settled day has to have awake, what it may have beside it, and what it is asleep. Where it is off by day, exercises
# are done when they fall due.
REGIMES = {
    "never-remove": ({"on"}, {"on-exercise"}, "on"),
    "off-to-wash": ({"on", "off-wash"}, {"on-exercise"}, "on"),
    "off-to-exercise": ({"on", "off-wash"}, EXERCISES, "on"),
    "night-and-tasks": ({"needed"}, EXERCISES, "on"),
    "night-and-rest": ({"needed"}, EXERCISES, "on"),
    "day": ({"on", "off-wash"}, EXERCISES, "off"),
    "night": ({"off"}, EXERCISES, "on"),
    "stretch": ({"on", "off"}, EXERCISES, "off"),
    "tasks": ({"needed"}, EXERCISES, "off"),
    "off": ({"off"}, {"off-exercise"}, "off"),
}


def states(spans) -> list[str]:
    """The state of each minute; what the plan does not list is off."""
    made = ["off"] * 1440
    for start, end, state in spans:
        made[start:end] = [state] * (end - start)
    return made


def test_a_settled_day_is_what_its_regime_says(planned):
    met = set()
    def holds(one):
        asleep = [one.case.asleep(minute) for minute in range(1440)]
        for (name, phase, settled), given in zip(one.settled(), one.plan["phases"]):
            if given["wear"] != phase["wear"]:
                return f"{name} is worn {given['wear']} instead of {phase['wear']}"
            if "weaning" in phase:
                continue
            always, besides, asleep_state = REGIMES[phase["wear"]]
            # All settled days of a phase are alike (test_calendar.py), so the first and the last stand for them.
            for date in {*settled[:1], *settled[-1:]}:
                met.add(phase["wear"])
                day = states(one.hours[date])
                awake_met = {state for state, sleeps in zip(day, asleep) if not sleeps}
                asleep_met = {state for state, sleeps in zip(day, asleep) if sleeps}
                if not always <= awake_met <= always | besides or asleep_met != {asleep_state}:
                    return f"{name}, {date}: awake {awake_met}, asleep {asleep_met}"
        return None
    every(planned, holds)
    assert met == set(REGIMES)


def test_a_stretch_is_worn_in_its_bouts(planned):
    """As many bouts as the dose has, each as long as it says; all shorter by the same where the waking day has no room for
    them with half an hour of rest after each."""
    full, cut = 0, 0
    def holds(one):
        nonlocal full, cut
        for name, phase, settled in one.settled():
            if phase["wear"] != "stretch":
                continue
            bouts, each = one.case.dose(phase)
            for date in settled:
                wears = one.stretches(date)
                if wears is None:
                    continue
                if one.case.has_room(bouts, each):
                    full += 1
                    if wears != [each] * bouts:
                        return f"{name}, {date}: {wears} instead of {bouts} x {each}"
                else:
                    cut += 1
                    if len(wears) != bouts or len(set(wears)) != 1 or not 0 < wears[0] < each:
                        return f"{name}, {date}, a short day: {wears} instead of less than {bouts} x {each}"
        return None
    every(planned, holds)
    assert full > 100 and cut > 100


def test_short_wears_lie_half_an_hour_apart(planned):
    """Between two wears of one waking day, in breaking in and in bouts, marks have half an hour to fade."""
    met = 0
    def holds(one):
        nonlocal met
        for date, spans in one.hours.items():
            if one.kinds[date] not in ("build", "stretch"):
                continue
            worn = [(start, end) for start, end, state in spans if state in WORN]
            gaps = [after[0] - before[1] for before, after in zip(worn, worn[1:]) if after[0] != before[1]]
            met += len(gaps)
            if any(gap < 30 for gap in gaps):
                return f"{date}: {gaps} minutes between wears"
        return None
    every(planned, holds)
    assert met > 1000


def weaning_days(phase: dict) -> list[dict]:
    """The step of each day of a weaning."""
    steps = folder("wear")[phase["weaning"]]["weaning"]
    return [step for step in steps for _ in range(days(step["lasts"]))]


def test_weaning_wears_what_its_step_says(planned):
    """Worn for the hours of the step from getting up, then off until bed but for exercises; at night on or off. The last step
    lasts until the phase ends."""
    met = set()
    def holds(one):
        awake = one.case.awake()
        for name, first, last in one.phases():
            phase = one.case.phase_rules(name)
            if "weaning" not in phase:
                continue
            steps = weaning_days(phase)
            for into in range(1, (last - first).days + 1):
                step, before = (steps[min(day, len(steps) - 1)] for day in (into, into - 1))
                # The hours before getting up belong to the night of the day before.
                if step is not before:
                    continue
                met.add((phase["weaning"], step["awake"]))
                worn, night = min(minutes(step["awake"]), awake), "on" if step["night"] == "true" else "off"
                for minute, state in enumerate(states(one.hours[first + DAY * into])):
                    since_up = (minute - clock(one.case.up)) % 1440
                    allowed = {*WORN, *PAUSES} if since_up < worn else {"off", "on-exercise", "off-exercise"} if since_up < awake else {night}
                    if state not in allowed:
                        return f"{name}, {first + DAY * into}: {state} at {minute} with {step}"
        return None
    every(planned, holds)
    patterns = {phase["weaning"] for rules in folder("conditions").values() for phase in rules["phases"] if "weaning" in phase}
    assert met == {(name, step["awake"]) for name in patterns for step in folder("wear")[name]["weaning"]}


def test_a_substance_that_is_not_borne_rules_an_orthosis_out(pairs, tmp_path):
    """Of the orthoses that fit a condition, a factor with `excludes` refuses those that contain the substance, and no other."""
    factors = [name for name, factor in folder("factors").items() if "excludes" in factor]
    cases = [plain_case(*pair, factors=[factor]) for *pair, _ in pairs for factor in factors]
    wrong = [
        case.text() for case, answer in zip(cases, explain(cases, tmp_path), strict=True)
        if (plan_of(answer) is not None) is not tolerates(case.factors[0], case.orthosis)
    ]
    assert not wrong, f"{len(wrong)} of {len(cases)}, such as\n{wrong[0]}"
    assert {case.factors[0] for case in cases if not tolerates(case.factors[0], case.orthosis)} == set(factors)
