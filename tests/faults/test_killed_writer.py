"""The program is killed at any moment: nothing that it said was saved is lost."""

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.commands.shop_place import new_place
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.checks.leftovers import leftovers
from tests.conftest import NOON
from tests.faults.busy_shop import MUCH_LATER, found_in, opened, photos_of
from tests.faults.test_backup_faults import ROOT

KILLS = int(os.environ.get("BENCHWITNESS_KILLS", "20"))
LONGEST_S = 0.08
pytestmark = pytest.mark.skipif(os.name == "nt", reason="there is no kill -9")


@pytest.fixture
def writer(tmp_path: Path) -> Iterator[subprocess.Popen[str]]:
    new_place(tmp_path / "shop", lambda: NOON).close()
    words = (sys.executable, "-m", "tests.faults.writer_to_kill", str(tmp_path / "shop"))
    pipe = subprocess.PIPE
    program = subprocess.Popen(words, stdin=pipe, stdout=pipe, text=True, cwd=ROOT)
    yield program
    program.communicate()


def killed_after(writer: subprocess.Popen[str], seconds: float) -> set[tuple[str, str]]:
    """Let one writer write for so long, kill it, and return what it said was saved."""
    assert writer.stdin is not None
    assert writer.stdout is not None
    writer.stdin.write("begin\n")
    writer.stdin.flush()
    said: set[tuple[str, str]] = set()
    child = 0
    for line in writer.stdout:
        what, _, which = line.rstrip("\n").partition(" ")
        if what == "gone":
            break
        if what == "begun":
            child = int(which)
        elif line.endswith("\n"):
            said.add((what, which))
        if child and said and seconds:
            time.sleep(seconds)
            os.kill(child, signal.SIGKILL)
            seconds = 0
    return said


def test_nothing_that_was_acknowledged_is_lost(
    writer: subprocess.Popen[str], tmp_path: Path
) -> None:
    shop, chance = tmp_path / "shop", random.Random(9)
    said: set[tuple[str, str]] = set()
    half = 0
    for _ in range(KILLS):
        said |= killed_after(writer, chance.uniform(0.001, LONGEST_S))
        half += len(list(shop.glob("*-journal")))
        with opened(shop) as record:  # the next start works
            photos = photos_of(record)
            checked = check_shop(record, photos)
            with record.reading() as connection:
                people = connection.exec_driver_sql("SELECT name FROM person").scalars().all()
        assert checked.problems == ()  # no row without its photo, the chain and all rows whole
        kept = {("photo", sha256) for sha256, _ in photos} | {("person", name) for name in people}
        assert said <= kept
    half += len(list((shop / "photos").rglob("*.tmp")))
    sys.stdout.write(f"{KILLS} kills: {len(said)} said, 0 lost, {half} half written\n")
    assert len(said) > KILLS
    found = {problem.where for problem in found_in(shop, MUCH_LATER)}
    assert found <= {"the photo folder"}  # photos whose row was not written in time
    with opened(shop) as record:
        named = {sha256 for sha256, _ in photos_of(record)}
        left = list(leftovers(record.photos, named, MUCH_LATER))
    assert len(left) <= KILLS  # one a kill at most
