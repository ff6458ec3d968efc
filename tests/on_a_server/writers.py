"""Writers at workstations of their own, and what a shop must hold once they have written."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from dataclasses import dataclass, field
from pathlib import Path

from desktop_app.shop_record.past import history
from tests.faults.busy_shop import photos_of
from tests.faults.test_backup_faults import ROOT
from tests.on_a_server.shops import opened, problems_of


@dataclass
class Said:
    """What writers said: certainly kept, perhaps kept, and how each ended."""

    kept: set[str] = field(default_factory=set)
    perhaps: set[str] = field(default_factory=set)
    ended: list[int] = field(default_factory=list)
    child: int = 0

    def hear(self, line: str) -> None:
        """Take one line of a writer; half a line, of one that was killed, says nothing."""
        what, _, which = line.rstrip("\n").partition(" ")
        if not line.endswith("\n"):
            return
        if what == "kept":
            self.kept.add(which)
        elif what == "perhaps":
            self.perhaps.add(which)
        elif what == "begun":
            self.child = int(which)
        elif what == "gone":
            self.ended.append(int(which.split()[1]))
            self.child = 0

    def kill(self) -> None:
        """Kill the writer that writes now."""
        os.kill(self.child, signal.SIGKILL)


def started(folder: Path) -> subprocess.Popen[str]:
    """Start the program that begins writers, at a workstation with this folder."""
    words = (sys.executable, "-m", "tests.on_a_server.server_writer", str(folder))
    pipe = subprocess.PIPE
    return subprocess.Popen(words, stdin=pipe, stdout=pipe, text=True, cwd=ROOT)


def begin(program: subprocess.Popen[str], deeds: int | None = None) -> None:
    """Let it begin a writer, of so many deeds or until it is killed."""
    assert program.stdin is not None
    program.stdin.write("\n" if deeds is None else f"{deeds}\n")
    program.stdin.flush()


def holds(folder: Path, said: Said) -> int:
    """Hold a shop against what was said; every row, photo and entry whole. Returns its entries."""
    with opened(folder) as record:
        photos = photos_of(record)
        with record.reading() as connection:
            people = connection.exec_driver_sql("SELECT name FROM person").scalars().all()
            entries, broken = history.chain_problems(connection)
        assert broken == []
        assert all(record.photos.is_whole(sha256) for sha256, _ in photos)
    there = {f"photo {sha256}" for sha256, _ in photos} | {f"person {name}" for name in people}
    assert said.kept <= there
    assert len(set(people)) == len(people)
    assert entries == len(people) + len(photos)
    return entries


def is_whole(folder: Path) -> None:
    """Check the whole shop as the program does; photos that no row names are told, not lost."""
    with opened(folder) as record:
        found = problems_of(record)
    assert [one for one in found if "belongs to no job" not in one] == []
