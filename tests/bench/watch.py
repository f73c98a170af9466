#!/usr/bin/env python3
"""How long a save takes to become a guide: `tests/bench/watch.py [PROGRAM] [SAVES]`.

The clock runs from the end of the write to the moment at which the new guide has its name. Every second save changes a
figure on the page, so nothing is the same as before; every fifth is a save by renaming.
"""

import os
import pathlib
import statistics
import subprocess
import sys
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]


def processor(pid: int) -> float:
    """Seconds of processor time that a process has taken (Linux, proc(5))."""
    fields = pathlib.Path(f"/proc/{pid}/stat").read_text(encoding="utf-8").rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def saves(program: str, count: int, env: dict | None = None) -> tuple[list[float], list[float], int]:
    """Saves a case so many times: ms until each guide was there, ms of processor time for each, and how `watch` ended."""
    text = (ROOT / "examples/right-thumb.yaml").read_text(encoding="utf-8").replace("language: ar", "language: en")
    with tempfile.TemporaryDirectory() as folder:
        case, out = pathlib.Path(folder, "case.yaml"), pathlib.Path(folder, "out")
        case.write_text(text, encoding="utf-8")
        child = subprocess.Popen(
            [program, "watch", str(case), "--out", str(out)], stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True,
            env={**os.environ, **(env or {})},
        )
        for line in child.stderr:
            if "watching" in line:
                break
        guide = next(out.glob("guide-*.pdf"))
        times, busy = [], []
        for number in range(count):
            day = 10 + number % 18
            changed = text.replace("review: 2027-03-29", f"review: 2027-04-{day}")
            before = os.stat(guide).st_ino, os.stat(guide).st_mtime_ns
            if number % 5 == 4:
                beside = case.with_suffix(".new")
                beside.write_text(changed, encoding="utf-8")
                os.replace(beside, case)
            else:
                case.write_text(changed, encoding="utf-8")
            began, spent = time.perf_counter(), processor(child.pid)
            while True:
                now = os.stat(guide)
                if (now.st_ino, now.st_mtime_ns) != before:
                    break
                if time.perf_counter() - began > 20:
                    child.kill()
                    raise TimeoutError(f"save {number + 1} was never built")
                time.sleep(0.0005)
            times.append((time.perf_counter() - began) * 1000)
            busy.append((processor(child.pid) - spent) * 1000)
            time.sleep(0.15)
        child.send_signal(2)
        return times, busy, child.wait(timeout=20)


def main() -> int:
    program = sys.argv[1] if len(sys.argv) > 1 else str(ROOT / "target/release/palmleaf")
    count = int(sys.argv[2]) if len(sys.argv) > 2 else 50
    times, busy, ended = saves(program, count)
    print(f"processor: median {statistics.median(busy):.0f} ms a save; the rest is waiting, and other work of the machine")
    print(f"{count} saves: median {statistics.median(times):.0f} ms, worst {max(times):.0f} ms; ended with {ended}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
