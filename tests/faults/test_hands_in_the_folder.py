"""Somebody with the shop's folder changes the past: exactly what he changed is named."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest
from sqlalchemy import text

from desktop_app.commands.checking import check
from desktop_app.shop_record.past.history import GENESIS, chained_hash, last_entry
from desktop_app.shop_record.trouble import ShopTrouble
from tests.faults.busy_shop import busy_shop, found_in, opened, photos_of
from tests.from_outside import damage, hands_in, lose_photo, spoil_photo
from tests.servers import copy_shop


class Words:
    """The words of a command line."""

    def __init__(self, shop: Path, anchor: str | None = None, mend: bool = False) -> None:
        self.shop, self.anchor, self.mend, self.json = str(shop), anchor, mend, True


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("hands") / "shop"
    busy_shop(folder)
    return folder


@pytest.fixture
def shop(made: Path, tmp_path: Path) -> Path:
    copy_shop(made, tmp_path / "shop")
    return tmp_path / "shop"


def chain_anew(shop: Path) -> None:
    """Compute every hash of the history again, as somebody would who knows how."""
    write = text("UPDATE history SET hash = :hash WHERE seq = :seq")
    with hands_in(shop) as raw:
        previous = GENESIS
        for seq, body in raw.execute(text("SELECT seq, body FROM history ORDER BY seq")).all():
            previous = chained_hash(previous, seq, body)
            raw.execute(write, {"hash": previous, "seq": seq})


def test_exactly_the_photos_that_were_touched_are_named(shop: Path) -> None:
    with opened(shop) as record:
        photos = [sha256 for sha256, _ in photos_of(record)]
        gone, changed, one, other = photos[:4]
        first, second = record.photos.read(one), record.photos.read(other)
        lose_photo(record, gone)
        for sha256, content in ((changed, b"another picture"), (one, second), (other, first)):
            spoil_photo(record, sha256, content)
    problems = found_in(shop)
    named = {sha256: p.what for p in problems for sha256 in photos if sha256 in p.what}
    assert len(problems) == len(named) == 4
    assert named.keys() == set(photos[:4])
    assert ["missing" in named[sha256] for sha256 in photos[:4]] == [True, False, False, False]
    assert all(problem.lost and problem.do for problem in problems)


@pytest.mark.parametrize(
    ("sql", "where", "says"),
    [
        ("UPDATE vehicle SET plate = 'XX 99' WHERE id = 2", "vehicle row 2", "“TIN 01”"),
        ("DELETE FROM photo WHERE id = 3", "photo row 3", "is gone"),
        ("INSERT INTO person (name, here) VALUES ('Nobody', 1)", "person row 4", "put in"),
        ("UPDATE job SET cause = 'ours' WHERE id = 13", "job rows 13 to 32", "as they came"),
        ("UPDATE job SET cause = 'ours' WHERE id = 32", "job row 32", "“cracked coil”"),
    ],
)
def test_exactly_the_row_that_was_changed_is_named(
    shop: Path, sql: str, where: str, says: str
) -> None:
    damage(shop, sql)
    found = [p for p in found_in(shop) if p.where != "the search index"]
    assert [(p.where, says in p.what) for p in found] == [(where, True)]


@pytest.mark.parametrize(
    "sql",
    [
        "UPDATE history SET body = replace(body, 'Odile', 'Oskar') WHERE seq = 1",
        "DELETE FROM history WHERE seq = 4",
        "DELETE FROM history WHERE seq > 12",
    ],
)
def test_an_entry_edited_taken_out_or_cut_off_is_found(shop: Path, sql: str) -> None:
    damage(shop, sql)
    assert "the history" in {problem.where for problem in found_in(shop)}


def forge(shop: Path) -> str:
    """Change a row, its entry and all hashes from there on; returns the anchor from before."""
    with opened(shop) as record, record.reading() as connection:
        number, sha256 = last_entry(connection)
    with hands_in(shop) as raw:
        wanted = text("SELECT seq, body FROM history WHERE words = 'Add Bram'")
        seq, body = raw.execute(wanted).one()
    facts = json.loads(body.replace("Bram", "Oskar"))
    again = json.dumps(facts, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    entry = "UPDATE history SET body = :again, words = 'Add Oskar' WHERE seq = :seq"
    damage(shop, entry, again=again, seq=seq)
    damage(shop, "UPDATE person SET name = 'Oskar' WHERE name = 'Bram'")
    chain_anew(shop)
    return f"{number}:{sha256[:16]}"


def test_a_whole_history_written_anew_is_found_by_the_backup_of_that_day(shop: Path) -> None:
    forge(shop)
    assert ["written anew" in problem.what for problem in found_in(shop)] == [True]


def test_without_a_backup_what_was_printed_finds_it(shop: Path) -> None:
    shutil.rmtree(shop / "backups")
    anchor = forge(shop)
    assert found_in(shop) == []
    assert check(Words(shop)).status == 0
    outcome = check(Words(shop, f"history {anchor.replace(':', ', ')}"))
    assert outcome.status == 1
    assert "was printed as" in outcome.json["problems"][0]["what"]


def test_an_anchor_that_holds_and_one_of_a_history_that_was_cut(shop: Path) -> None:
    shutil.rmtree(shop / "backups")
    with opened(shop) as record, record.reading() as connection:
        number, sha256 = last_entry(connection)
    assert check(Words(shop, f"{number}:{sha256}")).status == 0
    assert check(Words(shop, f"historial {number}, {sha256[:16]}")).status == 0  # of another desk
    outcome = check(Words(shop, f"{number + 1}:{sha256[:16]}"))
    assert "no entry" in outcome.json["problems"][0]["what"]
    with pytest.raises(ShopTrouble, match="no anchor"):
        check(Words(shop, "4211"))
