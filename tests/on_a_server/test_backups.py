"""Backups of a shop on a server: whole, with its photos, one a day for all who share a disk."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.commands.command_line import run
from desktop_app.commands.mending import mend
from desktop_app.commands.shop_place import open_place
from desktop_app.commands.whole_check import whole_check
from desktop_app.shop_record.backups.backups_late import backup_troubles, too_long_ago
from desktop_app.shop_record.backups.backups_made import (
    asked_of,
    backup_before,
    daily_backup,
    places,
)
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.backups.restore_drill import last_drill, monthly_drill
from desktop_app.shop_record.first_look import first_look
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord, open_shop
from desktop_app.shop_record.server.server_folder import ServerPlace, read_place, write_place
from desktop_app.shop_record.server.server_trouble import ServerLost
from desktop_app.shop_record.trouble import ShopTrouble, ShopUnwritable
from tests.servers import Server
from tests.shop_record.backed_up import archive_of, through, with_photo
from tests.shop_record.test_generations import Clock


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def here(server_folder: Path, clock: Clock) -> Iterator[ShopRecord]:
    """The shop as one computer has it open, with a job and its photo."""
    record = open_place(server_folder, clock)
    with_photo(record)
    yield record
    record.close()


@pytest.fixture
def there(here: ShopRecord, tmp_path: Path, clock: Clock) -> Iterator[ShopRecord]:
    """The same shop as another computer has it open, with a folder of its own."""
    write_place(tmp_path / "there", read_place(here.folder))
    record = open_place(tmp_path / "there", clock)
    yield record
    record.close()


def made(base: Path) -> list[str]:
    return [folder.name for _, folder in generations_in(base)]


def photos_in(folder: Path) -> dict[str, bytes]:
    return {one.name: one.read_bytes() for one in (folder / "photos").glob("??/*")}


def test_a_backup_made_elsewhere_has_the_photos_and_comes_back(
    there: ShopRecord, tmp_path: Path, clock: Clock
) -> None:
    assert photos_in(there.folder) == {}
    archive = archive_of(there, tmp_path / "a.zip")
    back = through(restore_backup(archive, tmp_path / "back", clock()))
    assert back.manifest.missing_photos == ()
    assert list(photos_in(tmp_path / "back").values()) == [b"a photo"]
    again = open_shop(tmp_path / "back", clock)
    assert not again.on_server
    assert through(whole_check(again)).ok
    again.close()


def test_a_photo_that_no_row_names_any_more_is_in_it(
    here: ShopRecord, there: ShopRecord, tmp_path: Path, clock: Clock
) -> None:
    here.know_tables()
    here.undo()
    through(restore_backup(archive_of(there, tmp_path / "a.zip"), tmp_path / "back", clock()))
    assert list(photos_in(tmp_path / "back").values()) == [b"a photo"]


@pytest.mark.parametrize("sort", ["a file", "a generation"])
def test_a_copy_that_is_damaged_here_is_fetched_anew(
    here: ShopRecord, tmp_path: Path, sort: str
) -> None:
    (copy,) = (here.folder / "photos").glob("??/*")
    copy.chmod(0o644)
    copy.write_bytes(b"A photo")
    if sort == "a file":
        archive_of(here, tmp_path / "a.zip")
    else:
        (generation,) = through(daily_backup(here))
        assert generation.manifest.missing_photos == ()
    assert copy.read_bytes() == b"a photo"


def test_each_computer_has_its_own_where_they_share_no_disk(
    here: ShopRecord, there: ShopRecord
) -> None:
    assert len(through(daily_backup(here))) == 1
    assert len(through(daily_backup(there))) == 1
    assert through(daily_backup(here)) == []
    assert len(made(here.folder / "backups")) == len(made(there.folder / "backups")) == 1


def test_one_a_day_is_enough_where_they_share_a_disk(
    here: ShopRecord, there: ShopRecord, tmp_path: Path, clock: Clock
) -> None:
    stick = tmp_path / "stick"
    stick.mkdir()
    change_rule(here, "second_backup_folder", str(stick))
    assert len(through(daily_backup(here))) == 1
    assert through(daily_backup(there)) == []
    (base,) = stick.iterdir()
    assert len(made(base)) == 1
    assert made(here.folder / "backups") == made(there.folder / "backups") == []
    assert [one.what for one in backup_troubles(there) if "same disk" not in one.what] == []
    stick.rename(tmp_path / "taken home")
    clock.later(days=1)
    assert too_long_ago(there) is None  # it remembers what another computer made
    assert len(through(daily_backup(there))) == 1  # now here
    assert len(made(there.folder / "backups")) == 1


def test_where_the_shared_disk_takes_nothing_it_is_made_here(
    here: ShopRecord, tmp_path: Path
) -> None:
    stick = tmp_path / "stick"
    stick.mkdir()
    change_rule(here, "second_backup_folder", str(stick))
    rules, shop, _ = asked_of(here)
    places(here, rules, shop)["second"].write_text("in the way")
    with pytest.raises(ShopTrouble, match="was not written"):
        through(daily_backup(here))
    assert len(made(here.folder / "backups")) == 1


@pytest.mark.parametrize("shared", [False, True])
def test_the_newest_is_brought_back_on_trial(
    here: ShopRecord, tmp_path: Path, shared: bool
) -> None:
    if shared:
        (tmp_path / "stick").mkdir()
        change_rule(here, "second_backup_folder", str(tmp_path / "stick"))
    through(daily_backup(here))
    drill = through(monthly_drill(here))
    assert drill is not None
    assert drill.wrong == ""
    assert last_drill(here.folder).whole_at
    assert through(monthly_drill(here)) is None


def test_before_an_import_one_is_made_here(here: ShopRecord) -> None:
    folder = through(backup_before(here, "an import"))
    assert folder.parent == here.folder / "backups"


def test_a_copy_can_be_stopped(here: ShopRecord) -> None:
    steps = daily_backup(here)
    for _ in range(5):
        next(steps)
    steps.close()
    assert made(here.folder / "backups") == []
    assert not [one for one in (here.folder / "backups").iterdir() if "being-made" in one.name]


def test_the_check_finds_all_whole_and_mends_what_is_derived(
    here: ShopRecord, server: Server
) -> None:
    assert through(whole_check(here)).ok
    database = read_place(here.folder).address.database
    server.sql("UPDATE job_text SET concern = 'nothing of it'", database)
    odd = here.folder / "photos" / "odd.txt"
    odd.write_text("nobody's")
    os.utime(odd, (1, 1))
    looked = through(whole_check(here))
    assert {one.where for one in looked.problems} == {"the search index", "the photo folder"}
    said = through(mend(here, looked))
    assert any("made anew" in one for one in said)
    assert any("trash" in one for one in said)
    assert through(whole_check(here)).ok


def test_the_check_names_a_row_that_somebody_changed_past_the_program(
    here: ShopRecord, server: Server
) -> None:
    database = read_place(here.folder).address.database
    server.sql("UPDATE vehicle SET plate = 'TIN 02'", database)
    looked = through(whole_check(here))
    assert any("vehicle" in one.where for one in looked.problems)


def test_a_photo_that_the_server_lost_is_named(here: ShopRecord, server: Server) -> None:
    database = read_place(here.folder).address.database
    server.sql("ALTER TABLE photo_content DISABLE TRIGGER ALL", database)
    server.sql("DELETE FROM photo_content", database)
    looked = through(whole_check(here))
    assert any("is missing" in one.what for one in looked.problems)


def test_leftovers_in_a_shared_folder_of_photos_are_set_aside(
    here: ShopRecord, server: Server, tmp_path: Path, clock: Clock
) -> None:
    address = read_place(here.folder).address
    server.sql("UPDATE set_up SET value = 'in a folder'", address.database)
    shared = tmp_path / "shared" / "photos"
    shared.mkdir(parents=True)
    write_place(here.folder, ServerPlace(address, shared))
    record = open_place(here.folder, clock)
    record.photos.keep(b"a photo")
    odd = shared / "odd.txt"
    odd.write_text("nobody's")
    os.utime(odd, (1, 1))
    assert first_look(record) is None
    looked = through(whole_check(record))
    (said,) = through(mend(record, looked))
    assert str(shared / "odd.txt") in said
    assert not odd.exists()
    shared.rename(tmp_path / "away")
    away = first_look(record)
    assert away is not None
    assert "can't be reached" in away.what
    record.close()


def test_who_only_reads_is_told_so_at_the_start(here: ShopRecord, server: Server) -> None:
    assert first_look(here) is None
    address = read_place(here.folder).address
    server.sql("CREATE ROLE only_looks LOGIN")
    for said in ("GRANT USAGE ON SCHEMA public", "GRANT SELECT ON ALL TABLES IN SCHEMA public"):
        server.sql(f"{said} TO only_looks", address.database)
    write_place(here.folder, ServerPlace(address._replace(user="only_looks")))
    reader = open_place(here.folder)
    said = first_look(reader)
    assert isinstance(said, ShopUnwritable)
    assert "only_looks may look at the shop on the server, and not write" in said.what
    reader.close()
    server.sql("DROP OWNED BY only_looks", address.database)
    server.sql("DROP ROLE only_looks")


def test_a_server_that_is_away_is_no_damage(here: ShopRecord) -> None:
    here.away = ServerLost("The shop's server can't be reached.")
    assert first_look(here) is None
    with pytest.raises(ServerLost):
        through(whole_check(here))


def test_the_commands_do_so_too(
    here: ShopRecord, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    address = read_place(here.folder).address.text()
    for words in (
        ("backup", str(tmp_path / "a.zip"), "--shop", address),
        ("restore", str(tmp_path / "a.zip"), str(tmp_path / "back")),
        ("check", "--mend", "--shop", address),
        ("check", "--shop", str(tmp_path / "back")),
    ):
        assert run(words, lambda _folder: 0, lambda _folder, _picture: None) == 0
    assert capsys.readouterr().out.count("all is whole") == 2
