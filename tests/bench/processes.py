"""Processes measured: how long, how much processor time, and what others took of the machine meanwhile (Linux, proc(5))."""

import dataclasses
import os
import pathlib
import statistics
import subprocess
import threading
import time

TICK = os.sysconf("SC_CLK_TCK")


@dataclasses.dataclass
class Took:
    """What a process took, in seconds."""

    wall: float
    """From start to end."""
    processor: float
    """Processor time of all threads, of user and system."""
    running: float
    """The part of the time in which its threads could go on and did, 0 to 1: the rest they waited for a processor. On a
    machine with nothing else to do, next to 1."""
    others: float
    """The part of the machine's processors that others had meanwhile, 0 to 1."""
    out: str

    @property
    def clear(self) -> float:
        """From start to end, less the part in which it could have gone on and no processor was there."""
        return self.wall * self.running


class Failed(Exception):
    """A process that did not do its work."""


def machine() -> tuple[float, float]:
    """Seconds that all processors were busy or taken away from this machine, and seconds in all."""
    first = pathlib.Path("/proc/stat").read_text(encoding="utf-8").split("\n", 1)[0]
    fields = [int(field) for field in first.split()[1:9]]
    return (sum(fields) - fields[3] - fields[4]) / TICK, sum(fields) / TICK


def others_since(before: tuple[float, float], own: float) -> float:
    """The part of the machine that others had since then."""
    now = machine()
    return max(0.0, now[0] - before[0] - own) / max(0.01, now[1] - before[1])


class Threads:
    """Looks at the threads of a process until it ends: how long each ran and how long it waited to run."""

    def __init__(self, pid: int) -> None:
        self.seen: dict[str, tuple[int, int]] = {}
        self._folder = pathlib.Path(f"/proc/{pid}/task")
        self._ended = threading.Event()
        self._looks = threading.Thread(target=self._look, daemon=True)
        self._looks.start()

    def _look(self) -> None:
        while not self._ended.wait(0.01):
            try:
                for task in self._folder.iterdir():
                    ran, waited, _ = (task / "schedstat").read_text(encoding="utf-8").split()
                    self.seen[task.name] = int(ran), int(waited)
            except (OSError, ValueError):
                continue

    def end(self) -> tuple[int, int]:
        """How long all of them ran, and how long they waited, in ns."""
        self._ended.set()
        self._looks.join()
        return sum(ran for ran, _ in self.seen.values()), sum(waited for _, waited in self.seen.values())


def begin(command: list, env: dict | None = None) -> subprocess.Popen:
    """Starts a process whose output is kept."""
    return subprocess.Popen(
        [str(part) for part in command], stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
        env={**os.environ, **(env or {})}, text=True,
    )


def end(child: subprocess.Popen) -> tuple[float, str]:
    """Waits for a process: its processor time and its output."""
    out = child.stdout.read()
    _, status, used = os.wait4(child.pid, 0)
    child.returncode = os.waitstatus_to_exitcode(status)
    child.stdout.close()
    if child.returncode != 0:
        raise Failed(f"{' '.join(child.args)} ended with {child.returncode}:\n{out.strip()[-2000:]}")
    return used.ru_utime + used.ru_stime, out


def run(command: list, env: dict | None = None) -> Took:
    """Runs a process to its end."""
    return at_once([command], env)


def at_once(commands: list[list], env: dict | None = None) -> Took:
    """Runs processes side by side until the last has ended."""
    before, began = machine(), time.perf_counter()
    children = [begin(command, env) for command in commands]
    threads = [Threads(child.pid) for child in children]
    ended = [end(child) for child in children]
    wall = time.perf_counter() - began
    processor = sum(used for used, _ in ended)
    ran, waited = (sum(column) for column in zip(*(one.end() for one in threads)))
    return Took(wall, processor, ran / (ran + waited) if ran else 1.0, others_since(before, processor), ended[0][1])


def in_turn(rounds: int, *works) -> list[list]:
    """A, B, A, B, …: for each work what it took, round by round."""
    return [list(column) for column in zip(*([work() for work in works] for _ in range(rounds)))]


def middle(values) -> float:
    return statistics.median(values)


def resident(pid: int) -> tuple[float, float]:
    """Resident memory of a process now and at its most, MB."""
    lines = pathlib.Path(f"/proc/{pid}/status").read_text(encoding="utf-8").splitlines()
    found = {line.split(":")[0]: line.split()[1] for line in lines if line.startswith(("VmRSS", "VmHWM"))}
    return int(found.get("VmRSS", 0)) / 1024, int(found.get("VmHWM", 0)) / 1024


def used(pid: int) -> float:
    """Seconds of processor time that a process has taken so far."""
    fields = pathlib.Path(f"/proc/{pid}/stat").read_text(encoding="utf-8").rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / TICK
