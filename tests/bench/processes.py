"""Processes measured: wall time, processor time, and how much of the machine others took meanwhile (Linux)."""

import dataclasses
import os
import pathlib
import statistics
import subprocess
import time

TICK = os.sysconf("SC_CLK_TCK")
# A pair is measured again, so many times at most, while others take more than this part of the machine.
TRIES = 3
CROWDED = 0.10


@dataclasses.dataclass
class Took:
    wall: float
    """Seconds from start to end."""
    processor: float
    """Seconds of processor time, of all threads, of user and system."""
    others: float
    """The part of the machine's processors that went elsewhere meanwhile, 0 to 1."""
    out: str


def _busy() -> tuple[float, float]:
    """Seconds that all processors were busy, or taken away from this machine, and seconds in all (proc(5))."""
    fields = [int(field) for field in pathlib.Path("/proc/stat").read_text(encoding="utf-8").split("\n", 1)[0].split()[1:9]]
    return (sum(fields) - fields[3] - fields[4]) / TICK, sum(fields) / TICK


class Failed(Exception):
    """A process that did not do its work."""


def run(command: list, env: dict | None = None) -> Took:
    """Runs a process to its end."""
    command = [str(part) for part in command]
    with subprocess.Popen(
        command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, env={**os.environ, **(env or {})}, text=True,
    ) as child:
        before, began = _busy(), time.perf_counter()
        out = child.stdout.read()
        _, status, used = os.wait4(child.pid, 0)
        wall = time.perf_counter() - began
        child.returncode = os.waitstatus_to_exitcode(status)
    if child.returncode != 0:
        raise Failed(f"{' '.join(command)} ended with {child.returncode}:\n{out.strip()[-2000:]}")
    after = _busy()
    processor = used.ru_utime + used.ru_stime
    others = max(0.0, after[0] - before[0] - processor) / max(0.01, after[1] - before[1])
    return Took(wall, processor, others, out)


def together(*works) -> list:
    """Does works one after the other, and all of them again while others take too much of the machine; the quietest."""
    best, noise = None, None
    for _ in range(TRIES):
        took = [work() for work in works]
        loud = max(one.others for one in took)
        if best is None or loud < noise:
            best, noise = took, loud
        if noise <= CROWDED:
            break
    return best


def in_turn(rounds: int, *works) -> list[list]:
    """A, B, A, B, …: for each work what it took, round by round."""
    return [list(column) for column in zip(*(together(*works) for _ in range(rounds)))]


def middle(values) -> float:
    return statistics.median(values)


def resident(pid: int) -> tuple[float, float]:
    """Resident memory of a process now and at its most, MB (proc(5))."""
    lines = pathlib.Path(f"/proc/{pid}/status").read_text(encoding="utf-8").splitlines()
    found = {line.split(":")[0]: line.split()[1] for line in lines if line.startswith(("VmRSS", "VmHWM"))}
    return int(found.get("VmRSS", 0)) / 1024, int(found.get("VmHWM", 0)) / 1024


def used(pid: int) -> float:
    """Seconds of processor time that a process has taken so far."""
    fields = pathlib.Path(f"/proc/{pid}/stat").read_text(encoding="utf-8").rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / TICK
