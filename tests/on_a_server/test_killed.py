"""Writers and the server itself are killed at any moment: nothing that was said is lost."""

from __future__ import annotations

import os
import random
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from threading import Thread

import pytest

from tests.on_a_server.shops import new_on_server
from tests.on_a_server.writers import Said, begin, holds, is_whole, started
from tests.servers import Server, running

LONG = os.environ.get("BENCHWITNESS_LONG") == "1"
KILLS, SERVER_KILLS = (200, 40) if LONG else (20, 4)
WRITERS, LONGEST_S = 2, 0.15
pytestmark = pytest.mark.skipif(os.name == "nt", reason="there is no kill -9")


@pytest.fixture
def careful() -> Iterator[Server]:
    """A server that waits for its disk, as a shop's does."""
    with running(("max_connections=50",)) as server:
        yield server


@pytest.fixture
def folder(careful: Server, tmp_path: Path) -> Iterator[Path]:
    """The folder of a new shop on it."""
    with new_on_server(careful, tmp_path / "shop"):
        yield tmp_path / "shop"


@pytest.fixture
def programs(folder: Path) -> Iterator[list[subprocess.Popen[str]]]:
    """Programs that begin writers."""
    found = [started(folder) for _ in range(WRITERS)]
    yield found
    for program in found:
        program.communicate()


def test_a_writer_that_is_killed_loses_nothing_it_said(
    programs: list[subprocess.Popen[str]], folder: Path
) -> None:
    program, chance, said = programs[0], random.Random(9), Said()
    for number in range(KILLS):
        begin(program)
        before = len(said.kept)
        assert program.stdout is not None
        for line in program.stdout:
            said.hear(line)
            if line.startswith("gone"):
                break
            if len(said.kept) > before and len(said.ended) == number:
                time.sleep(chance.uniform(0.001, LONGEST_S))
                said.kill()
                before = sys.maxsize
        if number % 5 == 4:
            holds(folder, said)
    assert said.ended == [-9] * KILLS
    assert len(said.kept) >= KILLS
    assert said.perhaps == set()
    is_whole(folder)


def test_a_server_that_is_killed_loses_nothing_and_writers_go_on(
    programs: list[subprocess.Popen[str]], folder: Path, careful: Server
) -> None:
    chance = random.Random(4)
    heard = [Said() for _ in programs]

    def listen(program: subprocess.Popen[str], said: Said) -> None:
        assert program.stdout is not None
        for line in program.stdout:
            said.hear(line)
            if line.startswith("gone"):
                return

    ears = [Thread(target=listen, args=one) for one in zip(programs, heard, strict=True)]
    for program, ear in zip(programs, ears, strict=True):
        begin(program)
        ear.start()
    for _ in range(SERVER_KILLS):
        more_than = [len(said.kept) for said in heard]
        while any(len(said.kept) <= n for said, n in zip(heard, more_than, strict=True)):
            assert all(ear.is_alive() for ear in ears)  # a writer has ended by itself
            time.sleep(0.01)
        time.sleep(chance.uniform(0.001, LONGEST_S))
        careful.stop("immediate")
        careful.start()
    for said in heard:
        said.kill()
    for ear in ears:
        ear.join()
    together = Said(set().union(*(said.kept for said in heard)))
    entries = holds(folder, together)
    unsure = sum(len(said.perhaps) for said in heard)
    assert len(together.kept) > WRITERS * SERVER_KILLS
    assert entries <= len(together.kept) + unsure + WRITERS  # one each was not said when it ended
    is_whole(folder)
