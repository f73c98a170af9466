"""The rows of the table, each measured with both sides in turn."""

import dataclasses
import json
import os
import pathlib
import shutil
import signal
import statistics
import time

import watch
from processes import Failed, Took, at_once, begin, end, in_turn, machine, middle, others_since, resident, run, used

HERE = pathlib.Path(__file__).resolve().parent


@dataclasses.dataclass
class Row:
    what: str
    ours: str
    theirs: str
    ratio: float
    limit: float
    """What the ratio must not be above, or below where `at_least`."""
    at_least: bool = False
    notes: list = dataclasses.field(default_factory=list)

    @property
    def met(self) -> bool:
        return self.ratio >= self.limit if self.at_least else self.ratio <= self.limit


@dataclasses.dataclass
class Bench:
    """What everything is measured with."""

    program: pathlib.Path
    parts: pathlib.Path
    """The part of the bench that is written in Rust."""
    python: pathlib.Path
    folder: pathlib.Path
    """Emptied before and after."""
    cases: int
    many: int

    @property
    def env(self) -> dict:
        # Pictures are kept from run to run, as on the machine of a clinic, but not with those of the person at it.
        return {"XDG_CACHE_HOME": str(self.folder.parent / "bench-cache")}

    def lay(self, what: str, first: int, last: int) -> pathlib.Path:
        """A new folder with cases, data or pages of numbered cases."""
        folder = self.new(what)
        run([self.parts, "lay", what, folder, first, last], self.env)
        return folder

    def new(self, name: str) -> pathlib.Path:
        folder = self.folder / name
        shutil.rmtree(folder, ignore_errors=True)
        folder.mkdir(parents=True)
        return folder

    def list(self, first: int, last: int) -> pathlib.Path:
        """A list of cases, one after the other in a file."""
        cases = sorted(self.lay("case", first, last).glob("*.yaml"))
        target = self.folder / f"list-{first}-{last}.yaml"
        target.write_text("---\n".join(case.read_text(encoding="utf-8") for case in cases), encoding="utf-8")
        return target

    def batch(self, cases: pathlib.Path, threads: int, out: str = "out") -> list:
        return [self.program, "batch", cases, "--threads", threads, "--out", self.new(out)]

    def warm(self) -> float:
        """Draws every picture that the cases have, and tells how many pages a guide has."""
        run(self.batch(self.list(0, 24), 2), self.env)
        records = (self.folder / "out").glob("record-*.json")
        return statistics.fmean(json.loads(record.read_text(encoding="utf-8"))["sheets"]["guide"]["pages"] for record in records)


def ms(seconds: float, of: int = 1) -> float:
    return seconds * 1000 / of


def noise(*columns: list[Took]) -> str:
    return f"others had {statistics.fmean(one.others for column in columns for one in column):.0%} of the machine"


def against_bare(bench: Bench) -> list[Row]:
    rounds = 5 if bench.cases >= 100 else 2
    each = max(1, bench.cases // rounds)
    ours, bare = [], []
    for number in range(rounds):
        span = number * each, (number + 1) * each
        cases, data = bench.list(*span), bench.lay("data", *span)
        (mine,), (theirs,) = in_turn(
            1,
            lambda: run(bench.batch(cases, 2), bench.env),
            lambda: run([bench.parts, "bare-all", data, bench.new("bare"), 2]),
        )
        ours.append(mine)
        bare.append(theirs)
    one, other = (middle(ms(took.clear, each) for took in column) for column in (ours, bare))
    work = [middle(ms(took.processor, each) for took in column) for column in (ours, bare)]
    return [Row(
        f"`batch` of {rounds * each} in {rounds} parts / the same sources in a bare embed, 2 threads",
        f"{one:.1f} ms a guide", f"{other:.1f} ms", one / other, 1.15,
        notes=[f"processor time {work[0]:.1f} / {work[1]:.1f} ms = {work[0] / work[1]:.2f}", noise(ours, bare)],
    )]


BATCH = 100
"""Guides of a batch that is held against calls one by one: a morning's list of a busy clinic."""


def per_core(bench: Bench, kind: str, count: int, rounds: int, least: float, what: str) -> Row:
    """Processor time of a guide against that of a call, the start of our process counted in and that of theirs not."""
    mine, theirs, pages = [], [], []
    laid = {"binding": "data", "weasyprint": "page"}[kind]
    for number in range(rounds):
        first = number * count
        cases, given = bench.list(first, first + BATCH), bench.lay(laid, first, first + count + 1)
        took = run(bench.batch(cases, 1), bench.env)
        mine.append(ms(took.processor, BATCH))
        told = run([bench.python, HERE / "others.py", kind, given, bench.new(kind)], bench.env).out
        try:
            told = json.loads(told.strip().splitlines()[-1])
        except (ValueError, IndexError):
            raise Failed(f"others.py {kind} told nothing:\n{told[-2000:]}") from None
        theirs += [ms(seconds) for seconds in told["times"]]
        pages += [number for number in told["pages"] if number]
    one, other = middle(mine), middle(theirs)
    notes = [f"{len(theirs)} calls against {rounds} batches of {BATCH}, in turn"]
    if pages:
        notes.append(f"{statistics.fmean(pages):.1f} pages each on their side")
    return Row(what, f"{one:.1f} ms a guide", f"{other:.1f} ms a call", other / one, least, True, notes)


def against_binding(bench: Bench) -> list[Row]:
    what = "`typst` binding, a call for each / `batch`, processor time"
    return [per_core(bench, "binding", 12, 4, 4, what)]


def against_weasyprint(bench: Bench) -> list[Row]:
    what = "WeasyPrint, the same content, PDF/UA / `batch`, processor time"
    return [per_core(bench, "weasyprint", 3, 4, 60, what)]


def two_threads(bench: Bench) -> list[Row]:
    cases, left, right = bench.list(0, 48), bench.list(0, 24), bench.list(24, 48)
    one, two, apart = in_turn(
        5,
        lambda: run(bench.batch(cases, 1), bench.env),
        lambda: run(bench.batch(cases, 2), bench.env),
        lambda: at_once([bench.batch(left, 1, "left"), bench.batch(right, 1, "right")], bench.env),
    )
    slow, fast, ceiling = (middle(ms(took.clear, 48) for took in column) for column in (one, two, apart))
    work = [middle(ms(took.processor, 48) for took in column) for column in (one, two)]
    return [Row(
        "1 thread / 2 threads", f"{fast:.1f} ms a guide", f"{slow:.1f} ms", slow / fast, 1.8, True,
        [
            f"two processes of one thread each: {slow / ceiling:.2f}",
            f"processor time {work[1]:.1f} ms on two, {work[0]:.1f} on one",
            f"by the clock {middle(took.wall for took in one) / middle(took.wall for took in two):.2f}",
            noise(one, two),
        ],
    )]


def many(bench: Bench) -> list[Row]:
    """A long run, held up five times for a run of a hundred: so both are measured under the same weather."""
    hundred, long = bench.list(0, 100), bench.list(0, bench.many)
    few, samples, stops = [], [], [bench.many * part // 6 for part in range(1, 6)]
    out = bench.new("many")
    child = begin([bench.program, "batch", long, "--threads", 2, "--out", out], bench.env)
    last, most, spent = time.perf_counter(), 0.0, 0.0
    try:
        while os.waitid(os.P_PID, child.pid, os.WEXITED | os.WNOHANG | os.WNOWAIT) is None:
            done = sum(entry.name.endswith(".pdf") for entry in os.scandir(out))
            now, most = resident(child.pid)
            spent = used(child.pid)
            samples.append((done, now, spent))
            if stops and done >= stops[0]:
                stops.pop(0)
                child.send_signal(signal.SIGSTOP)
                few.append(run(bench.batch(hundred, 2), bench.env))
                child.send_signal(signal.SIGCONT)
            time.sleep(0.5)
        spent, _ = end(child)
    finally:
        if child.returncode is None:
            child.kill()
    if not few:
        raise Failed(f"{bench.many} cases are too few for a long run; give more with `--many`")
    one, other = ms(spent, bench.many), middle(ms(took.processor, 100) for took in few)
    def level(first: float, last: float) -> float:
        return middle([now for done, now, _ in samples if first * bench.many <= done <= last * bench.many] or [0.0])
    early, late = level(0.2, 0.4), level(0.8, 1.0)
    shutil.rmtree(out, ignore_errors=True)
    return [
        Row(
            f"a guide of {bench.many} / a guide of 100, processor time, 2 threads",
            f"{one:.1f} ms", f"{other:.1f} ms", one / other, 1.10,
            notes=[f"{len(few)} runs of 100 while the long one was held up"],
        ),
        Row(f"resident memory over {bench.many}, last fifth / second fifth", f"{late:.0f} MB", f"{early:.0f} MB", late / max(early, 1), 1.10),
        Row("resident memory at its most / 500 MB", f"{most:.0f} MB", "500 MB", most / 500, 1.0),
    ]


def fresh(bench: Bench) -> list[Row]:
    case = bench.lay("case", 0, 1) / "00000.yaml"
    data = bench.lay("data", 0, 1) / "00000.json"
    out = bench.new("out")
    built, bare = in_turn(
        15,
        lambda: run([bench.program, "build", case, "--out", out], bench.env),
        lambda: run([bench.parts, "bare", data, out / "bare.pdf"]),
    )
    one, other = (middle(ms(took.clear) for took in column) for column in (built, bare))
    work = [middle(ms(took.processor) for took in column) for column in (built, bare)]
    return [Row(
        "one `build` in a fresh process / a bare embed in one", f"{one:.0f} ms", f"{other:.0f} ms", one / other, 1.5,
        notes=[f"processor time {work[0]:.0f} / {work[1]:.0f} ms = {work[0] / work[1]:.2f}", noise(built, bare)],
    )]


def pictures(bench: Bench) -> list[Row]:
    """What pictures cost: those that are kept, and all of a first guide."""
    case = bench.lay("case", 0, 1) / "00000.yaml"
    out = bench.new("out")
    with_them, without = in_turn(
        15,
        lambda: run([bench.parts, "guide", case, "with", out / "with.pdf"], bench.env),
        lambda: run([bench.parts, "guide", case, "without", out / "without.pdf"], bench.env),
    )
    kept, bare = (middle(ms(took.clear) for took in column) for column in (with_them, without))
    drawn = json.loads(run([bench.parts, "pictures", 6]).out)
    rows = [Row(
        "one guide with kept pictures in a fresh process / the same without any", f"{kept:.0f} ms", f"{bare:.0f} ms", kept / bare, 1.3,
        notes=[noise(with_them, without)],
    )]
    rows.append(Row(
        f"a picture drawn cold on one thread, the middle of {drawn['of']} / 250 ms, processor time",
        f"{drawn['ms']['median']:.0f} ms", "250 ms", drawn["ms"]["median"] / 250, 1.0,
        notes=[f"the slowest {drawn['ms']['worst']:.0f} ms, {drawn['ms']['worst-is']}"],
    ))
    first = {}
    for example in sorted((HERE.parents[1] / "examples").glob("*.yaml")):
        took = [run([bench.program, "build", example, "--out", out], {"XDG_CACHE_HOME": str(bench.new("nothing-kept"))}) for _ in range(3)]
        first[example.stem] = middle(one.clear for one in took)
    slowest = max(first, key=first.get)
    rows.append(Row(
        f"first guide of each of {len(first)} examples, every picture drawn / 2 s; the slowest", f"{first[slowest]:.2f} s", "2 s", first[slowest] / 2, 1.0,
        notes=[", ".join(f"{name} {seconds:.2f}" for name, seconds in first.items())],
    ))
    return rows


def at_the_keyboard(bench: Bench) -> list[Row]:
    told = json.loads(run([bench.parts, "at-once"]).out)
    rows = []
    for what, of in (("choose", f"conditions, {told['orthoses']} orthoses each"), ("check", "cases")):
        found = told[what]
        rows.append(Row(
            f"`{what}` after start / 5 ms", f"{found['median']:.2f} ms", "5 ms", found["median"] / 5, 1.0,
            notes=[f"{found['of']} {of}; the slowest {found['worst']:.2f} ms"],
        ))
    before = machine()
    times, busy, _ = watch.saves(str(bench.program), 25, bench.env)
    rows.append(Row(
        "`watch`: from save to guide / 100 ms", f"{middle(times):.0f} ms", "100 ms", middle(times) / 100, 1.0,
        notes=[f"processor time {middle(busy):.0f} ms, worst {max(times):.0f} ms", f"others had {others_since(before, sum(busy) / 1000):.0%} of the machine"],
    ))
    return rows


ROWS = {
    "bare": against_bare, "binding": against_binding, "weasyprint": against_weasyprint, "threads": two_threads,
    "many": many, "fresh": fresh, "pictures": pictures, "keyboard": at_the_keyboard,
}
