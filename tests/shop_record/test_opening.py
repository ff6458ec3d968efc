"""Opening a shop: the pragmas took, foreign and newer files are refused, older ones upgraded."""

from __future__ import annotations

import shutil
import sqlite3
from datetime import UTC, datetime
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import text

import desktop_app.part_photos.stored
import desktop_app.parts_compared.stored
import desktop_app.repair_jobs.stored
import desktop_app.returns_watched.stored  # noqa: F401 - all tables must be known
from desktop_app.shop_record import upgrade
from desktop_app.shop_record.backups.backup_opened import open_backup
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.record import ShopRecord, create_shop, open_shop
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.tables import Base
from desktop_app.shop_record.trouble import ShopTrouble

OLD_RECORDS = Path(__file__).parent.parent / "old_records"


def clock() -> datetime:
    return datetime(2026, 11, 16, 12, tzinfo=UTC)


@pytest.mark.embedded
def test_every_connection_has_the_pragmas(shop: ShopRecord) -> None:
    with shop.reading() as connection:
        for name, _, reads in dialect.PRAGMAS:
            assert connection.execute(text(f"PRAGMA {name}")).scalar() == reads


@pytest.mark.embedded
def test_all_tables_are_strict(shop: ShopRecord) -> None:
    with shop.reading() as connection:
        rows = connection.execute(text("PRAGMA table_list")).all()
    ours = [r for r in rows if r[1] in Base.metadata.tables]
    assert len(ours) == len(Base.metadata.tables)
    assert all(row[5] == 1 for row in ours)


@pytest.mark.embedded
def test_the_steps_make_exactly_the_tables_of_the_program(shop: ShopRecord) -> None:
    def ours(_object: object, name: str | None, kind: str, *_: object) -> bool:
        return not (kind == "table" and str(name).startswith(("job_text", "job_words")))

    with shop.reading() as connection:
        context = MigrationContext.configure(connection, opts={"include_object": ours})
        assert compare_metadata(context, Base.metadata) == []


def test_a_folder_with_something_in_it_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / "note.txt").write_text("mine")
    with pytest.raises(ShopTrouble, match="not empty"):
        create_shop(tmp_path, clock)
    assert [p.name for p in tmp_path.iterdir()] == ["note.txt"]


def test_no_shop_there_says_how_to_make_one(tmp_path: Path) -> None:
    with pytest.raises(ShopTrouble, match="new-shop"):
        open_shop(tmp_path, clock)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.embedded
def test_whether_a_record_is_of_an_older_form_is_told_without_opening_the_shop(
    tmp_path: Path,
) -> None:
    create_shop(tmp_path / "shop", clock).close()
    (tmp_path / "other").write_bytes(b"%PDF-1.7 not a record")
    older = sorted(OLD_RECORDS.glob("*.sqlite"))[0]
    told = [
        upgrade.is_older(path)
        for path in (older, tmp_path / "shop" / FILE_NAME, tmp_path / "other", tmp_path / "none")
    ]
    assert told == [True, False, False, False]


def test_a_file_in_the_place_of_a_shop_is_said(tmp_path: Path) -> None:
    (tmp_path / "shop").write_text("mine")
    with pytest.raises(ShopTrouble, match="shop is a file") as told:
        open_shop(tmp_path / "shop", clock)
    assert "folder" in told.value.do
    assert (tmp_path / "shop").read_text() == "mine"


@pytest.mark.embedded
def test_a_shop_that_may_not_be_read_is_said(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def forbidden(path: Path) -> bool:
        raise PermissionError(13, "Permission denied")

    create_shop(tmp_path / "shop", clock).close()
    monkeypatch.setattr(dialect, "carries_our_mark", forbidden)
    with pytest.raises(ShopTrouble, match="cannot be read: Permission denied") as told:
        open_shop(tmp_path / "shop", clock)
    assert told.value.do == "Ask for the right to read it."


@pytest.mark.parametrize("content", [b"", b"%PDF-1.7 not a record", b"SQLite format 3\x00" * 9])
def test_another_programs_file_is_refused_and_kept(tmp_path: Path, content: bytes) -> None:
    (tmp_path / FILE_NAME).write_bytes(content)
    with pytest.raises(ShopTrouble, match="not a shop's record"):
        open_shop(tmp_path, clock)
    assert (tmp_path / FILE_NAME).read_bytes() == content


def test_an_empty_database_with_our_mark_is_refused(tmp_path: Path) -> None:
    dialect.create_file(tmp_path / FILE_NAME)
    with pytest.raises(ShopTrouble, match="empty or cut short"):
        open_shop(tmp_path, clock)


@pytest.mark.embedded
def test_a_newer_record_is_refused_and_not_touched(tmp_path: Path) -> None:
    create_shop(tmp_path / "shop", clock).close()
    path = tmp_path / "shop" / FILE_NAME
    with sqlite3.connect(path) as raw:
        raw.execute("UPDATE alembic_version SET version_num = '9999'")
    raw.close()
    before = path.read_bytes()
    with pytest.raises(ShopTrouble, match="newer program"):
        open_shop(tmp_path / "shop", clock)
    assert path.read_bytes() == before


@pytest.mark.embedded
def test_an_older_record_is_upgraded_after_it_was_backed_up(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    create_shop(tmp_path / "shop", clock).close()
    path = tmp_path / "shop" / FILE_NAME
    with sqlite3.connect(path) as raw:
        raw.execute("DROP TABLE alembic_version")
        raw.execute("CREATE TABLE alembic_version (version_num TEXT NOT NULL)")
        raw.execute("INSERT INTO alembic_version VALUES ('0000')")
    raw.close()
    ran: list[str] = []
    monkeypatch.setattr(upgrade, "STEPS", ("0000", *upgrade.STEPS))
    monkeypatch.setattr(upgrade, "_run_steps", lambda _engine: ran.append("steps"))
    open_shop(tmp_path / "shop", clock).close()
    assert ran == ["steps"]
    [(_, backup)] = generations_in(tmp_path / "shop" / "backups")
    assert open_backup(backup).manifest.reason == "before an update"
    assert open_backup(backup).manifest.record_form == "0000"
    assert not list((tmp_path / "shop").glob("shop-before-*"))


@pytest.mark.parametrize("saved", sorted(OLD_RECORDS.glob("*.sqlite")), ids=lambda p: p.stem)
def test_every_saved_record_of_an_older_form_opens(tmp_path: Path, saved: Path) -> None:
    shutil.copy(saved, tmp_path / FILE_NAME)
    record = open_shop(tmp_path, clock)
    with record.reading() as connection:
        assert connection.execute(text("SELECT number FROM job")).scalars().all() == ["J-101"]
    record.close()


def test_there_is_a_saved_record_of_every_form() -> None:
    assert {path.stem for path in OLD_RECORDS.glob("*.sqlite")} == set(upgrade.STEPS)


@pytest.mark.embedded
def test_a_busy_record_is_told_in_words(shop: ShopRecord, monkeypatch: pytest.MonkeyPatch) -> None:
    other = sqlite3.connect(shop.folder / FILE_NAME, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    with shop.reading() as connection:
        connection.exec_driver_sql("PRAGMA busy_timeout = 50")
    with pytest.raises(ShopTrouble, match="busy in another program"):
        shop.do("Anything", lambda _deed: None)
    other.rollback()
    other.close()


def test_a_folder_that_cannot_be_written_is_told_in_words(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    with pytest.raises(ShopTrouble, match="cannot be used"):
        create_shop(tmp_path / "file" / "shop", clock)
