"""What a run asks of the system, seen by strace: network, files, names; and faults put into its answers."""

import dataclasses
import os
import re
import subprocess
from pathlib import Path

import program

NETWORK = ("socket", "connect", "bind", "listen", "accept", "sendto", "sendmsg", "recvfrom", "recvmsg", "socketpair")


@dataclasses.dataclass
class Opened:
    path: Path
    writes: bool
    makes: bool
    mode: int | None


@dataclasses.dataclass
class Trace:
    done: subprocess.CompletedProcess
    lines: list[str]

    def network(self) -> list[str]:
        return [line for line in self.lines if re.match(rf"\d+\s+({'|'.join(NETWORK)})\(", line)]

    def started(self) -> list[str]:
        """Other programs; the first is the one that is traced."""
        return [line for line in self.lines if re.match(r"\d+\s+execve(at)?\(", line)][1:]

    def opened(self, cwd: Path) -> list[Opened]:
        """Files that were opened, with links followed as far as they still lead somewhere."""
        found = []
        for line in self.lines:
            match = re.match(r'\d+\s+(?:openat\(AT_FDCWD, |open\()"((?:[^"\\]|\\.)*)", ([A-Z_|]+)(?:, (0\d+))?.*\) = (-?\d+)', line)
            if match and int(match[4]) >= 0:
                flags = match[2].split("|")
                mode = int(match[3], 8) if match[3] else None
                writes = bool({"O_WRONLY", "O_RDWR"} & set(flags))
                found.append(Opened((cwd / match[1]).resolve(), writes, "O_CREAT" in flags, mode))
        return found


def run(*arguments, folder: Path, cwd: Path = program.ROOT, inject: str | None = None, env=None, interrupted: bool = False) -> Trace:
    """One run of the program; `folder` takes the trace and the cache of pictures. One that goes on for ever is interrupted."""
    log = folder / "trace.txt"
    # rayon reads the number of processors, the loader its libraries: all of that is in the trace too.
    command = [program.tool("strace"), "-f", "-qq", "-s", "4096", "-o", str(log)]
    if inject is None:
        command += ["-e", "trace=network,open,openat,creat,execve,execveat"]
    else:
        command += ["-e", f"trace={inject.split(':')[0]}", "-e", f"inject={inject}"]
    surroundings = {**os.environ, "XDG_CACHE_HOME": str(folder / "cache"), **(env or {})}
    # The system's own word for an interrupt after a while: strace passes it on and ends with what it traces.
    limit = ["timeout", "--preserve-status", "--signal=INT", "20"] if interrupted else []
    done = subprocess.run(
        [*limit, *command, str(program.binary()), *map(str, arguments)],
        capture_output=True, text=True, encoding="utf-8", cwd=cwd, env=surroundings, check=False,
    )
    if "ptrace" in done.stderr and "Operation not permitted" in done.stderr:
        raise AssertionError("strace may not trace here; run where it may, since nothing else shows what a run asks for")
    return Trace(done, log.read_text(encoding="utf-8", errors="replace").splitlines())
