"""Nothing leaves the machine: no command opens a socket, starts a program, or reads or writes beside what it is given."""

import re
from pathlib import Path

import pytest

import program
import traced

CASE = "examples/right-thumb.yaml"
CLINIC = "examples/harbour-row/clinic.yaml"

LIST = "examples/morning-list/cases.csv"
ANSWERS = """
de-quervain
right
1
forearm-thumb-spica


North Clinic
01632 960 142
999
open-jar
new-mother
en
standard
HR-7

"""
SHELF = """
title: Wrist splints
languages: [en]
print: [standard]
conditions: [carpal-tunnel]
"""
CLASS = """
title: Wrist splints
by: North Quay School of Therapy
language: en
items:
  - {orthosis: wrist-neutral, side: left}
  - {facts: carpal-tunnel, for: patients}
"""

# One row for each command. `OUT` is an empty folder but for what `before` puts there, `CLASS` a list of sheets, `ANSWERS` those
# to an interview.
RUNS = {
    "batch": ["batch", LIST, "--mapping", "examples/morning-list/mapping.yaml", "--out", "OUT"],
    "batch merge": ["batch", "merge", "OUT/batch.jsonl", "--out", "OUT"],
    "build": ["build", CASE, "--sheets", "all", "--pictures", "--out", "OUT"],
    "build of a clinic": ["build", "examples/harbour-row/case.yaml", "--clinic", CLINIC, "--sheets", "all", "--out", "OUT"],
    "check": ["check", CASE],
    "choose": ["choose", "de-quervain", "--chart", "OUT/chart.pdf"],
    "completions": ["completions", "bash"],
    "content check": ["content", "check"],
    "content confirm": ["content", "confirm", "orthoses/wrist-neutral", "--by", "AB", "--on", "2027-02-01", "--content", "OUT"],
    "content status": ["content", "status"],
    "draw": ["draw", "--orthosis", "wrist-neutral", "-o", "OUT/wrist.pdf"],
    "explain": ["explain", CASE],
    "licences": ["licences"],
    "list": ["list", "conditions"],
    "locales draft": ["locales", "draft", "--locales", "OUT"],
    "locales export": ["locales", "export", "--language", "es", "-o", "OUT/es.xlf"],
    "locales import": ["locales", "import", "tests/fuzz/corpus/csv/words.csv", "--language", "es", "--locales", "OUT"],
    "locales sign-off": ["locales", "sign-off", "--all", "--language", "es", "--by", "AB", "--on", "2027-02-01", "--locales", "OUT"],
    "locales status": ["locales", "status"],
    "man": ["man"],
    "new": ["new", "OUT/case.yaml", "--plain", "--answers", "ANSWERS", "--today", "2027-03-01"],
    "read": ["read", CASE],
    "schema": ["schema"],
    "shelf": ["shelf", "OUT", "--today", "2027-03-01"],
    "specimen": ["specimen", "-o", "OUT/specimen.pdf"],
    "teach booklet": ["teach", "booklet", "CLASS", "-o", "OUT/class.pdf"],
    "teach cards": ["teach", "cards", "--condition", "carpal-tunnel", "--out", "OUT"],
    "teach chart": ["teach", "chart", "--condition", "carpal-tunnel", "--out", "OUT"],
    "teach facts": ["teach", "facts", "carpal-tunnel", "--out", "OUT"],
    "teach questions": ["teach", "questions", "--count", "2", "--out", "OUT"],
    "watch": ["watch", CASE, "--out", "OUT"],
}

# What the start of a program reads of the system: the loader, the number of processors, the memory of a thread, how the
# allocator may ask for memory.
SYSTEM = (
    "/lib", "/lib64", "/usr/lib", "/etc/ld.so.cache", "/etc/ld.so.preload", "/proc", "/sys/fs/cgroup", "/sys/devices/system/cpu",
    "/sys/kernel/mm/transparent_hugepage",
)


def commands(*way: str) -> list[str]:
    """The commands at the ends of the tree, from the program's own help."""
    text = program.run(*way, "--help").stdout
    if "\nCommands:\n" not in text:
        return [" ".join(way)]
    rows = text.split("\nCommands:\n")[1].split("\n\n")[0]
    names = re.findall(r"^  ([a-z-]+)", rows, re.M)
    return [command for name in names if name != "help" for command in commands(*way, name)]


def test_every_command_has_a_row():
    rows = {" ".join(arguments) for arguments in RUNS.values()}
    for command in commands():
        assert any(row == command or row.startswith(command + " ") for row in rows), f"give `{command}` a row in RUNS"


def test_the_trace_sees_a_socket():
    """The check can fail: another program's socket is seen by the same eyes."""
    line = '123   socket(AF_INET, SOCK_STREAM|SOCK_CLOEXEC, IPPROTO_TCP) = 3'
    assert traced.Trace(None, [line]).network() == [line]


def before(name: str, out: Path) -> None:
    """What a command finds in its folder."""
    if name == "batch merge":
        program.run(*(argument.replace("OUT", str(out)) for argument in RUNS["batch"]), cwd=program.ROOT)
    if name == "shelf":
        (out / "shelf.yaml").write_text(SHELF, encoding="utf-8")


@pytest.mark.parametrize("name", RUNS)
def test_a_command_reaches_nothing_outside(name, tmp_path):
    out = (tmp_path / "out").resolve()
    out.mkdir()
    given_files = {"CLASS": CLASS, "ANSWERS": ANSWERS}
    for word, text in given_files.items():
        (tmp_path / word).write_text(text, encoding="utf-8")
    before(name, out)
    arguments = [str(tmp_path / argument) if argument in given_files else argument.replace("OUT", str(out)) for argument in RUNS[name]]
    trace = traced.run(*arguments, folder=tmp_path, interrupted=name == "watch")
    assert trace.done.returncode in (0, 1), trace.done.stderr
    assert trace.network() == [] and trace.started() == []
    cache = (tmp_path / "cache").resolve()
    for file in trace.opened(program.ROOT):
        inside = file.path.is_relative_to(out) or file.path.is_relative_to(cache)
        if file.writes:
            assert inside, f"{file.path} was written"
            assert not file.makes or file.mode in (0o600, 0o666), f"{file.path} was made with {file.mode:o}"
        else:
            given = file.path.name in given_files or file.path.is_relative_to(program.ROOT / "examples") or file.path.is_relative_to(program.ROOT / "tests")
            system = str(file.path).startswith(SYSTEM)
            assert inside or given or system or file.path == program.binary(), f"{file.path} was read"


def test_a_case_is_on_disk_in_its_folder_alone_and_closed_until_it_is_whole(tmp_path):
    """Unfinished files lie in the output folder, only their owner can read them, and no name of a file tells a name."""
    out = tmp_path / "out"
    trace = traced.run("build", CASE, "--sheets", "all", "--out", out, folder=tmp_path)
    made = [file for file in trace.opened(program.ROOT) if file.makes and not file.path.is_relative_to((tmp_path / "cache").resolve())]
    assert len(made) > 5 and all(file.path.parent == out.resolve() for file in made)
    assert all(re.fullmatch(r"\.palmleaf-\w+\.part", file.path.name) for file in made)
    # One file is opened to learn who may read a finished one; it is empty.
    assert [file.mode for file in made].count(0o666) == 1 and {file.mode for file in made} == {0o600, 0o666}
    kept = "\n".join(str(path) for path in (tmp_path / "cache").rglob("*")) + "\n".join(path.name for path in out.iterdir())
    assert "mara" not in kept.lower() and "oduya" not in kept.lower()
    for path in (tmp_path / "cache").rglob("*"):
        assert path.is_dir() or b"Oduya" not in path.read_bytes()


# The system call that fails, with what, at which of its uses; and what the program has to say.
FAULTS = {
    "no room for the bytes": ("write:error=ENOSPC:when=2+", "No space left"),
    "the disk gives up": ("fsync:error=EIO:when=1", "Input/output error"),
    "the right to rename is lost before the first": ("rename,renameat,renameat2:error=EACCES:when=1+", "Permission denied"),
    "the right to rename is lost between two": ("rename,renameat,renameat2:error=EACCES:when=2+", "Permission denied"),
    "the folder becomes read-only": ("rename,renameat,renameat2:error=EROFS:when=3+", "Read-only"),
}


@pytest.mark.parametrize("fault", FAULTS)
def test_a_fault_of_the_disk_is_named_and_what_was_good_stays(fault, tmp_path):
    out = tmp_path / "out"
    case = tmp_path / "case.yaml"
    text = (program.ROOT / CASE).read_text(encoding="utf-8")
    arguments = ("build", case, "--no-cache", "--sheets", "guide,card,diary,record", "--out", out)
    case.write_text(text, encoding="utf-8")
    program.run(*arguments)
    before = {path.name: path.read_bytes() for path in out.iterdir()}
    case.write_text(text.replace("review: 2027-03-29", "review: 2027-03-28"), encoding="utf-8")
    inject, said = FAULTS[fault]
    done = traced.run(*arguments, folder=tmp_path, inject=inject).done
    assert done.returncode == 3, done.stderr
    assert "output/unwritable" in done.stderr and said in done.stderr and str(out) in done.stderr, done.stderr
    now = {path.name: path.read_bytes() for path in out.iterdir()}
    changed = [name for name, data in now.items() if data != before.get(name)]
    # A file that has its name already is named, so that nobody takes the set for one.
    assert all(name in done.stderr for name in changed), done.stderr
    assert now.keys() == before.keys(), "unfinished files are left, or good ones are gone"
    assert ("nothing of this case was written" in done.stderr) == (not changed)
    program.run(*arguments)
    after = {path.name: path.read_bytes() for path in out.iterdir()}
    elsewhere = tmp_path / "elsewhere"
    program.run(*arguments[:-1], elsewhere)
    assert after == {path.name: path.read_bytes() for path in elsewhere.iterdir()}


def test_a_case_that_vanished_is_named_and_the_others_are_made(tmp_path):
    out = tmp_path / "out"
    done = program.run("build", program.ROOT / CASE, tmp_path / "gone.yaml", "--out", out, check=False)
    assert done.returncode == 3 and str(tmp_path / "gone.yaml") in done.stderr and "No such file" in done.stderr
    assert len(list(out.iterdir())) == 2
