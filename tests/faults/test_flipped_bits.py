"""Single bits flipped in what is kept: the check finds each that changes anything."""

from __future__ import annotations

import os
import random
import shutil
import sqlite3
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.record_name import FILE_NAME
from tests.faults.busy_shop import busy_shop, by_hand, found_in

FLIPS = int(os.environ.get("BENCHWITNESS_FLIPS", "40"))
SEED = int(os.environ.get("BENCHWITNESS_SEED", "7"))
# What is made of the jobs and can be made anew (its check finds most, not all), and a counter.
DERIVED = ("job_text_", "sqlite_sequence")
pytestmark = pytest.mark.expects_trouble_log


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("flipped") / "shop"
    busy_shop(folder)
    assert found_in(folder) == []
    return folder


def content(database: Path) -> Any:
    """Everything that stands in a database, as it comes out of it; words where it does not."""
    raw = sqlite3.connect(f"{database.as_uri()}?mode=ro", uri=True)
    raw.text_factory = bytes
    try:
        raw.execute("PRAGMA cell_size_check = ON")
        described = raw.execute("SELECT type, name, tbl_name, sql FROM sqlite_master").fetchall()
        named = (row[1].decode("utf-8", "replace") for row in described if row[0] == b"table")
        tables = [name for name in named if not name.startswith((*DERIVED, "job_words"))]
        tables.remove("job_text")
        kept = [[part and b" ".join(part.split()) for part in row] for row in described]
        kept = [row for row in kept if b"job_text_" not in row[1] + row[2]]
        return kept, [raw.execute(f'SELECT * FROM "{name}"').fetchall() for name in tables]
    except (sqlite3.Error, UnicodeDecodeError) as error:
        return type(error)
    finally:
        raw.close()


def flipped(whole: bytes, chance: random.Random, only: Callable[[int], bool]) -> bytes:
    """Return the bytes with one bit turned, in one of those that are said."""
    at = chance.choice([place for place, byte in enumerate(whole) if only(byte)])
    return whole[:at] + bytes([whole[at] ^ 1 << chance.randrange(8)]) + whole[at + 1 :]


@pytest.mark.embedded
def test_no_flip_that_changes_the_record_goes_unseen(shop: Path, tmp_path: Path) -> None:
    copy = tmp_path / "shop"
    shutil.copytree(shop, copy)
    database, chance = copy / FILE_NAME, random.Random(SEED)
    whole, before = database.read_bytes(), content(database)
    unseen, changed, found = [], 0, 0
    for number in range(FLIPS):
        bad = flipped(whole, chance, bool)  # most bytes of empty space are 0
        database.write_bytes(bad)
        changes, problems = content(database) != before, found_in(copy)
        changed, found = changed + changes, found + bool(problems)
        if changes and not problems:
            unseen.append(number)
    sys.stdout.write(f"{FLIPS} flips: {changed} changed what is kept, {found} were found\n")
    assert changed > FLIPS // 2
    assert unseen == []


@pytest.mark.embedded  # a photo is a file there, and a row of a server
def test_every_flip_in_a_photo_is_found_and_the_photo_named(shop: Path, tmp_path: Path) -> None:
    copy, chance = tmp_path / "shop", random.Random(SEED)
    shutil.copytree(shop, copy)
    for photo in sorted((copy / "photos").rglob("?" * 64)):
        whole = photo.read_bytes()
        photo.chmod(0o644)
        photo.write_bytes(flipped(whole, chance, lambda _byte: True))
        problems = found_in(copy)
        assert [photo.name in problem.what for problem in problems] == [True]
        photo.write_bytes(whole)
    assert found_in(copy) == []


@pytest.mark.embedded
def test_every_flip_in_the_body_of_an_entry_is_found(shop: Path, tmp_path: Path) -> None:
    copy, chance = tmp_path / "shop", random.Random(SEED)
    shutil.copytree(shop, copy)
    with by_hand(copy) as raw:
        bodies = raw.execute("SELECT seq, CAST(body AS BLOB) FROM history").fetchall()
    for seq, body in chance.sample(bodies, 8):
        with by_hand(copy) as raw:
            bad = flipped(body, chance, lambda _byte: True)
            raw.execute("UPDATE history SET body = CAST(? AS TEXT) WHERE seq = ?", (bad, seq))
        problems = found_in(copy)
        assert any(f"history entry {seq} " in problem.what for problem in problems), problems
        with by_hand(copy) as raw:
            raw.execute("UPDATE history SET body = CAST(? AS TEXT) WHERE seq = ?", (body, seq))
    assert found_in(copy) == []


@pytest.mark.embedded
@pytest.mark.parametrize("column", ["at", "who", "words", "reverses"])
def test_what_an_entry_is_listed_with_is_held_as_well(
    shop: Path, tmp_path: Path, column: str
) -> None:
    copy = tmp_path / "shop"
    shutil.copytree(shop, copy)
    with by_hand(copy) as raw:
        raw.execute(f'UPDATE history SET "{column}" = 2 WHERE seq = 5')
    assert ["entry 5" in problem.what for problem in found_in(copy)] == [True]


def test_every_flip_in_the_newest_backup_is_found(shop: Path, tmp_path: Path) -> None:
    copy, chance = tmp_path / "shop", random.Random(SEED)
    shutil.copytree(shop, copy)
    older = [folder for _, folder in generations_in(copy / "backups")[:-1]]
    lying = [file for file in sorted((copy / "backups").rglob("*")) if file.is_file()]
    kept = [f for f in lying if f.stat().st_size and not set(f.parents).intersection(older)]
    assert len(kept) > 12
    for file in kept:
        whole = file.read_bytes()
        file.chmod(0o644)
        file.write_bytes(flipped(whole, chance, lambda _byte: True))
        problems = found_in(copy)
        assert problems, file
        assert all("backup" in problem.where or "history" in problem.where for problem in problems)
        file.write_bytes(whole)
    assert found_in(copy) == []


@pytest.mark.embedded
@pytest.mark.parametrize("left", [0, 1, 100, 4096, 0.5, -4096, -100, -1])
def test_a_record_that_was_cut_is_found(shop: Path, tmp_path: Path, left: float) -> None:
    copy = tmp_path / "shop"
    shutil.copytree(shop, copy)
    whole = (copy / FILE_NAME).read_bytes()
    length = int(len(whole) * left) if isinstance(left, float) else left
    (copy / FILE_NAME).write_bytes(whole[:length])
    assert found_in(copy)
