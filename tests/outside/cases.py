"""A case, and what the content's rules make of it: worked out anew, from the YAML alone."""

import dataclasses
import datetime

import joints
from content import clock, days, folder, general, minutes

DAY = datetime.timedelta(days=1)


def as_clock(minute: int) -> str:
    return f"{minute // 60:02}:{minute % 60:02}"


def needs_finger(condition: str, orthosis: str) -> bool:
    """Whether the condition or the orthosis is about one finger, which the case then has to name."""
    names = joints.names_of_condition(folder("conditions")[condition]) | joints.names_of_orthosis(folder("orthoses")[orthosis])
    return any(map(joints.about_one_finger, names))


def tolerates(factor: str, orthosis: str) -> bool:
    """Whether nothing that this person must not have on the skin is in the orthosis."""
    excluded = folder("factors")[factor].get("excludes", [])
    return not set(excluded) & set(folder("orthoses")[orthosis].get("contains", []))


def usual_angle(orthosis: str, joint: str, within: list[str], finger: str | None) -> str:
    """Where the orthosis sets the joint, or stops it; the nearest angle that protocols give, where that is another."""
    wanted, given = joints.single(joint, finger), [joints.read_range(text) for text in within]
    offered = []
    for name, hold in folder("orthoses")[orthosis]["joints"].items():
        if wanted <= joints.single(name, finger):
            offered += map(joints.read_range, hold.get("at", []))
            offered += map(joints.read_stop, hold.get("stops", []))
    nearest = [
        (abs(can - at.low), joints.write(given_range.axis, can))
        for at in offered for given_range in given if given_range.axis == at.axis
        for can in [min(max(at.low, given_range.low), given_range.high)]
    ]
    return min(nearest)[1] if nearest else joints.write(given[0].axis, given[0].low)


@dataclasses.dataclass
class Case:
    condition: str
    orthosis: str
    fitted: datetime.date
    review: datetime.date
    fitted_at: str = "12:00"
    up: str = "07:00"
    bed: str = "23:00"
    finger: str | None = None
    factors: list[str] = dataclasses.field(default_factory=list)
    begun: list[tuple[str, datetime.date]] = dataclasses.field(default_factory=list)
    # Days of the phases whose length the surgeon's protocol sets.
    lengths: dict[str, int] = dataclasses.field(default_factory=dict)

    def text(self) -> str:
        return "\n".join([
            "palmleaf: 1", "hand: right", *self.condition_lines(), f"orthosis: {self.orthosis}",
            f"fitted: {self.fitted}", f'fitted_at: "{self.fitted_at}"', f"review: {self.review}", "language: en",
            f'day: {{up: "{self.up}", bed: "{self.bed}"}}', f"factors: [{', '.join(self.factors)}]",
            *([f"finger: {self.finger}"] if self.finger else []),
        ]) + "\n"

    def condition_lines(self) -> list[str]:
        """The condition with its protocol and the phases that have begun."""
        lines = [f"condition: {self.condition}"]
        needs = self.rules().get("protocol")
        if needs is not None:
            lines += ["protocol:", "  name: an invented protocol"]
            lengths = [f"    - {{phase: {phase}, lasts: {count} days}}" for phase, count in self.lengths.items()]
            angles = [
                f"    - {{joint: {angle['joint']}, at: {usual_angle(self.orthosis, angle['joint'], angle['within'], self.finger)}}}"
                for angle in needs.get("angles", [])
            ]
            lines += [line for field, list_ in (("lengths", lengths), ("angles", angles)) if list_ for line in (f"  {field}:", *list_)]
        if self.begun:
            lines += ["begun:", *(f"  - {{phase: {phase}, on: {on}}}" for phase, on in self.begun)]
        return lines

    # ---- what the rules make of it ----------------------------------------------------------

    def rules(self) -> dict:
        return folder("conditions")[self.condition]

    def phase_rules(self, name: str) -> dict:
        """Of a phase; a cast, which nobody takes off at home, stays on where others come off to wash or exercise."""
        rules = next(phase for phase in self.rules()["phases"] if phase["id"] == name)
        stays = folder("orthoses")[self.orthosis]["material"] == "cast" and rules["wear"] in ("off-to-wash", "off-to-exercise")
        return {**rules, "wear": "never-remove"} if stays else rules

    def awake(self) -> int:
        return (clock(self.bed) - clock(self.up)) % 1440

    def asleep(self, minute: int) -> bool:
        """Whether the person is in the main sleep at a minute after midnight."""
        return (minute - clock(self.up)) % 1440 >= self.awake()

    def phases(self) -> list[tuple[str, datetime.date, datetime.date]]:
        """Name, first and last day of every dated phase."""
        begun, made, start = dict(self.begun), [], self.fitted
        phases = self.rules()["phases"]
        for index, phase in enumerate(phases):
            if phase["begins"] == "after-review" and index > 0:
                if phase["id"] not in begun:
                    break
                start = begun[phase["id"]]
                made[-1] = (made[-1][0], made[-1][1], start - DAY)
            length = self.length(phase)
            following = phases[index + 1] if index + 1 < len(phases) else None
            waits = following is not None and following["begins"] == "after-review" and following["id"] not in begun
            if length is None:
                last = max(self.review, start)
            else:
                last = start + DAY * (length - 1)
                last = max(last, self.review) if waits else last
            made.append((phase["id"], start, last))
            start = last + DAY
        return made

    def length(self, phase: dict) -> int | None:
        """The surgeon's protocol says it; where healing is slow, the late end of the window holds; otherwise the usual
        length, or that of the weaning."""
        if phase["id"] in self.lengths:
            return self.lengths[phase["id"]]
        slow = any(folder("factors")[name].get("late_end") == "true" for name in self.factors)
        if slow and "lasts_up_to" in phase:
            return days(phase["lasts_up_to"])
        if "lasts" in phase:
            return days(phase["lasts"])
        if "weaning" in phase:
            return sum(days(step["lasts"]) for step in folder("wear")[phase["weaning"]]["weaning"])
        return None

    def pattern(self) -> str:
        """The gentlest pattern of breaking in that applies; a piece that protects healing tissue is worn at once all the same."""
        patterns = folder("wear")
        usual = self.rules().get("break_in", general()["break_in"])
        protective = self.rules()["phases"][0].get("protective") == "true"
        if protective and patterns[usual].get("at_once") == "true":
            return usual
        asked = [folder("factors")[name].get("break_in") for name in self.factors]
        return max([usual, *filter(None, asked)], key=lambda name: patterns[name]["gentleness"])

    def steps(self) -> list[tuple[int, int]]:
        """Times and minutes of each step of breaking in. A piece that stretches is never worn beyond its dose, and the last
        step is the first that reaches it."""
        steps = [(step["times"], minutes(step["each"])) for step in folder("wear")[self.pattern()].get("break_in", [])]
        dose = self.dose(self.rules()["phases"][0])
        if dose is None:
            return steps
        capped = [(min(times, dose[0]), min(each, dose[1])) for times, each in steps]
        full = [index for index, (times, each) in enumerate(capped) if times * each >= dose[0] * dose[1]]
        return capped[: full[0] + 1] if full else capped

    @staticmethod
    def dose(phase: dict) -> tuple[int, int] | None:
        """Bouts a day and minutes of each, of a phase that stretches."""
        return (phase["stretch"]["bouts"], minutes(phase["stretch"]["each"])) if "stretch" in phase else None

    def break_in_begins(self) -> int:
        """0 when the day of the fitting has room for the first step and half an hour of rest around each wear, else 1."""
        if not self.steps():
            return 0
        times, each = self.steps()[0]
        since_up = (clock(self.fitted_at) - clock(self.up)) % 1440
        room = self.awake() - since_up
        return 0 if since_up < self.awake() and room >= times * (each + 30) + minutes(general()["settling"]) else 1

    def build_days(self) -> int:
        return len(self.steps()) + self.break_in_begins()

    def has_room(self, times: int, each: int) -> bool:
        """Whether a whole waking day has room for a step with half an hour of rest after each wear."""
        room = self.awake() - 2 * minutes(general()["settling"])
        return each <= room // times - 30
