"""Eight workstations write at once: all that each wrote is there, in one history."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from desktop_app.shop_record.server.server_folder import read_place, write_place
from tests.on_a_server.writers import Said, begin, holds, is_whole, started

WORKSTATIONS = 8
EACH = 200 if os.environ.get("BENCHWITNESS_LONG") == "1" else 25


@pytest.mark.skipif(os.name == "nt", reason="writers are begun by fork")
def test_eight_workstations_lose_nothing(server_folder: Path, tmp_path: Path) -> None:
    bays = [tmp_path / f"bay-{number}" for number in range(WORKSTATIONS)]
    for bay in bays:
        write_place(bay, read_place(server_folder))
    programs = [started(bay) for bay in bays]
    for program in programs:
        begin(program, EACH)
    said = Said()
    for program in programs:
        for line in program.communicate()[0].splitlines(keepends=True):
            said.hear(line)
    assert said.ended == [0] * WORKSTATIONS
    assert said.perhaps == set()
    assert len(said.kept) == WORKSTATIONS * EACH
    assert holds(server_folder, said) == WORKSTATIONS * EACH
    is_whole(server_folder)
