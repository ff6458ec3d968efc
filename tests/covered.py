"""How much of the program its tests run through, with branches, held to two goals.

    python -m tests.covered                    every test there is, for every room; over an hour
    python -m tests.covered ROOM [TESTS...]    a room's rules and deeds by their own tests, and by
                                               whatever else is named

Rules and deeds are those of tests/fences.py and are run through wholly; the rest for nine tenths.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from tests.fences import ROOT, level

REST_GOAL = 90.0


@dataclass(frozen=True, slots=True)
class Walked:
    """What of one file was run through: of so many lines and branches so many, and what not."""

    path: str
    there: int
    run: int
    left: tuple[str, ...]

    def is_rule_or_deed(self) -> bool:
        """Whether every line and every branch of it has to be run through."""
        return level(self.path.removesuffix(".py").replace("/", ".")) in {0, 2}


def walked(report: Path) -> list[Walked]:
    """Return the files of a report that coverage has written as JSON."""
    found = []
    for path, file in json.loads(report.read_text(encoding="utf-8"))["files"].items():
        sums = file["summary"]
        left = [str(line) for line in file["missing_lines"]]
        left += [f"{start} to {end}" for start, end in file["missing_branches"]]
        there = sums["num_statements"] + sums["num_branches"]
        run = sums["covered_lines"] + sums["covered_branches"]
        found.append(Walked(path, there, run, tuple(left)))
    return found


def share(files: Iterable[Walked]) -> float:
    """Return the lines and branches that were run through, in percent of all; 100 of none."""
    those = list(files)
    there = sum(one.there for one in those)
    return 100 * sum(one.run for one in those) / there if there else 100.0


def missed(files: Iterable[Walked]) -> list[str]:
    """Return a line for every rule or deed that is not run through wholly, and one for the rest."""
    those = list(files)
    lines = [
        f"{one.path}: {share([one]):.0f} %, not {', '.join(one.left)}"
        for one in those
        if one.is_rule_or_deed() and one.run < one.there
    ]
    rest = share(one for one in those if not one.is_rule_or_deed())
    return [*lines, f"the rest: {rest:.1f} %"] if rest < REST_GOAL else lines


def unmeasured() -> dict[str, str]:
    """Return the surroundings of a process that is not measured.

    Measured, it would load and write what its test says it doesn't, or cannot.
    """
    return {name: said for name, said in os.environ.items() if not name.startswith("COVERAGE_")}


def main(chosen: list[str]) -> int:
    """Run the tests, say what they leave out; return 0 when both goals are met."""
    room, more = (chosen[0], chosen[1:]) if chosen else ("", [])
    tests = [f"tests/{room}", *more] if room else ["tests", "-n", "auto"]
    with tempfile.TemporaryDirectory() as folder:
        data, report = Path(folder, "data"), Path(folder, "report.json")
        coverage = [sys.executable, "-m", "coverage"]
        run = ["run", f"--data-file={data}", "-m", "pytest", "-q", *tests]
        status = subprocess.run([*coverage, *run], cwd=ROOT, check=False).returncode
        subprocess.run([*coverage, "combine", "-q", f"--data-file={data}"], cwd=ROOT, check=False)
        kept = ["json", "-q", f"--data-file={data}", "-o", str(report)]
        kept += [f"--include=desktop_app/{room}/*"] if room else []
        subprocess.run([*coverage, *kept], cwd=ROOT, check=True)
        files = walked(report)
    for line in missed(files):
        print(line)
    for kind, is_kind in (("rules and deeds", True), ("the rest", False)):
        print(f"{kind}: {share(one for one in files if one.is_rule_or_deed() is is_kind):.1f} %")
    return status or bool(missed(files))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
