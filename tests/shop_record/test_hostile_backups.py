"""Archives that were made to harm, or were harmed, are refused; each says why, nothing is left."""

from __future__ import annotations

import hashlib
import shutil
import sqlite3
import stat
import struct
import zipfile
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.shop_record.backups.backup_manifest import read_manifest
from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.record import create_shop
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.shop_record.backed_up import (
    Members,
    all_files,
    archive_of,
    named,
    sealed,
    through,
    with_photo,
    written_anew,
)

Said = dict[str, Any]
PHOTO = hashlib.sha256(b"a photo").hexdigest()
NAME = f"photos/{PHOTO[:2]}/{PHOTO}"


@pytest.fixture(scope="module")
def good(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A good archive of a small shop."""
    folder = tmp_path_factory.mktemp("good")
    record = create_shop(folder / "shop", lambda: NOON)
    named(record, "Odile")
    with_photo(record)
    file = archive_of(record, folder / "good.zip")
    record.close()
    return file


def at(members: Members, name: str) -> int:
    return next(i for i, (info, _) in enumerate(members) if info.filename == name)


def put(members: Members, name: str, content: bytes, attributes: int = 0) -> None:
    info = zipfile.ZipInfo(name)
    info.filename = name  # as it was said: also with a backslash
    info.external_attr = attributes << 16
    members.insert(0, (info, content))


def listed(said: Said, name: str) -> Said:
    found: Said = next(one for one in said["members"] if one["name"] == name)
    return found


def renamed(name: str) -> Callable[[Members, Said], None]:
    def change(members: Members, said: Said) -> None:
        put(members, name, b"a photo")
        said["members"].append({"name": name, "sha256": PHOTO, "size": 7})

    return change


def only_added(name: str, attributes: int = 0) -> Callable[[Members, Said], None]:
    return lambda members, _said: put(members, name, b"x", attributes)


def twice(members: Members, _said: Said) -> None:
    members.append(members[at(members, NAME)])


def link(members: Members, _said: Said) -> None:
    members[at(members, NAME)][0].external_attr = (stat.S_IFLNK | 0o777) << 16


def bomb(members: Members, said: Said) -> None:
    info, _ = members[at(members, NAME)]
    info.compress_type = zipfile.ZIP_DEFLATED
    members[at(members, NAME)] = (info, bytes(50_000_000))
    listed(said, NAME)["size"] = 50_000_000


def no_photo(members: Members, _said: Said) -> None:
    del members[at(members, NAME)]


def photo_not_listed(members: Members, said: Said) -> None:
    del members[at(members, NAME)]
    said["members"].remove(listed(said, NAME))


def other_photo(members: Members, _said: Said) -> None:
    members[at(members, NAME)] = (members[at(members, NAME)][0], b"A photo")


def longer_photo(members: Members, _said: Said) -> None:
    members[at(members, NAME)] = (members[at(members, NAME)][0], b"a photo " * 1000)


def no_record(members: Members, said: Said) -> None:
    del members[at(members, "shop.sqlite")]
    said["members"].remove(listed(said, "shop.sqlite"))


def no_manifest(members: Members, _said: Said) -> None:
    del members[at(members, "manifest.json")]


def record(sql: str) -> Callable[[Members, Said], None]:
    """Change the record itself, and let the manifest say what fits the new bytes."""

    def change(members: Members, said: Said) -> None:
        place = at(members, "shop.sqlite")
        memory = sqlite3.connect(":memory:")
        memory.deserialize(members[place][1])
        memory.execute("PRAGMA writable_schema = ON")
        memory.executescript(sql)
        content = memory.serialize()
        memory.close()
        members[place] = (members[place][0], content)
        one = listed(said, "shop.sqlite")
        one["sha256"], one["size"] = hashlib.sha256(content).hexdigest(), len(content)

    return change


def says(name: str, value: Any) -> Callable[[Members, Said], None]:
    return lambda _members, said: said.update({name: value})


def says_of_photo(name: str, value: Any) -> Callable[[Members, Said], None]:
    return lambda _members, said: listed(said, NAME).update({name: value})


HOSTILE: dict[str, tuple[Callable[[Members, Said], None], str]] = {
    "up": (only_added("../evil"), "leads out of the shop's folder"),
    "up, listed": (renamed("photos/../../evil"), "leads out of the shop's folder"),
    "absolute": (only_added("/evil"), "leads out of the shop's folder"),
    "drive": (only_added("C:evil"), "leads out of the shop's folder"),
    "backslash": (only_added("photos\\..\\evil"), "leads out of the shop's folder"),
    "stranger": (only_added("autorun.inf"), "which no backup has"),
    "folder": (only_added("photos/"), "which no backup has"),
    "device": (renamed("part_kinds/CON.toml"), "which no backup has"),
    "not listed": (only_added("part_kinds/x.toml"), "doesn't list"),
    "photo in a wrong place": (renamed(f"photos/00/{'ab' * 32}"), "which no backup has"),
    "link": (link, "is a link"),
    "twice": (twice, "twice"),
    "bomb": (bomb, "is packed"),
    "no record": (no_record, "shop.sqlite is not among its members"),
    "no manifest": (no_manifest, "manifest.json is missing"),
    "photo left out": (no_photo, "is missing from it"),
    "photo not even listed": (photo_not_listed, "a photo that the record names is not in it"),
    "photo changed": (other_photo, "its checksum differs"),
    "photo longer": (longer_photo, "another size than"),
    "lying size": (says_of_photo("size", 8), "another size than"),
    "size over every limit": (says_of_photo("size", 1 << 40), "for the size of"),
    "size that is none": (says_of_photo("size", -1), "for the size of"),
    "hash of another": (says_of_photo("sha256", "0" * 64), "another SHA-256"),
    "hash that is none": (says_of_photo("sha256", "x"), "no SHA-256"),
    "newer record": (says("record_form", "9999"), "a newer program wrote it"),
    "newer backup": (says("backup_form", 2), "written by a newer program"),
    "other head": (says("head", "0" * 64), "another one than its manifest says"),
    "fewer entries": (says("entries", 1), "another one than its manifest says"),
    "no members": (says("members", {}), "lists no members"),
    "no moment": (says("made_at", "soon"), "for made_at"),
    "moment of no place": (says("made_at", "2026-11-16T12:00:00"), "for made_at"),
    "less than no entries": (says("entries", -1), "says “-1” for entries"),
    "long name of the program": (says("program", "x" * 201), "for program"),
    "member without a size": (lambda _, said: listed(said, NAME).pop("size"), "doesn't describe"),
    "manifest in itself": (says_of_photo("name", "manifest.json"), "lists “manifest.json”"),
    "listed twice": (lambda _, said: said["members"].append(listed(said, NAME)), "member twice"),
    "missing photos untold": (says("missing_photos", None), "which photos were missing"),
    "missing photo without a name": (says("missing_photos", ["x"]), "by no SHA-256"),
    "changed entry": (
        record("UPDATE history SET body = replace(body, 'Odile', 'Olive')"),
        "was changed after it was written",
    ),
    "cut history": (record("DELETE FROM history WHERE seq = 2"), "another one than its manifest"),
    "row that points nowhere": (record("DELETE FROM visit"), "that is missing"),
    "trigger": (
        record("CREATE TRIGGER t AFTER INSERT ON person BEGIN DELETE FROM history; END"),
        "commands of its own",
    ),
    "view": (
        record("ALTER TABLE photo RENAME TO p; CREATE VIEW photo AS SELECT * FROM p"),
        "commands of its own",
    ),
    "no history": (record("DROP TABLE history"), "its pages are damaged"),
}


@pytest.mark.parametrize(("change", "why"), HOSTILE.values(), ids=HOSTILE.keys())
def test_a_hostile_archive_is_refused_and_says_why(
    good: Path, tmp_path: Path, change: Callable[[Members, Said], None], why: str
) -> None:
    file = written_anew(good, tmp_path / "hostile.zip", change)
    with pytest.raises(ShopTrouble) as refused:
        through(restore_backup(file, tmp_path / "inside" / "again", NOON))
    assert why in refused.value.sentence()
    assert all_files(tmp_path).keys() == {"hostile.zip"}


def test_the_same_archive_unchanged_is_taken(good: Path, tmp_path: Path) -> None:
    file = written_anew(good, tmp_path / "good.zip", lambda _members, _said: None)
    through(restore_backup(file, tmp_path / "again", NOON))
    assert (tmp_path / "again" / NAME).read_bytes() == b"a photo"


@pytest.mark.parametrize("content", [b"", b"[]", b"\xff{}", b"[" * 100_000])
def test_a_manifest_that_says_nothing_is_refused(content: bytes) -> None:
    with pytest.raises(ShopTrouble, match=r"manifest\.json can't be read"):
        read_manifest(content)


@pytest.mark.parametrize("content", [b"", b"PK", b"%PDF-1.7 no backup", bytes(100)])
def test_another_file_is_no_backup(tmp_path: Path, content: bytes) -> None:
    (tmp_path / "x").write_bytes(content)
    with pytest.raises(ShopTrouble, match="is no backup of this program"):
        through(restore_backup(tmp_path / "x", tmp_path / "again", NOON))


def test_a_foreign_folder_is_no_backup(tmp_path: Path) -> None:
    (tmp_path / "x").mkdir()
    with pytest.raises(ShopTrouble, match=r"has no manifest\.json"):
        through(restore_backup(tmp_path / "x", tmp_path / "again", NOON))


def test_a_file_that_is_not_there_is_said(tmp_path: Path) -> None:
    with pytest.raises(ShopTrouble, match="There is no backup"):
        through(restore_backup(tmp_path / "x", tmp_path / "again", NOON))


@given(where=st.floats(0, 1, exclude_max=True), bit=st.integers(0, 7), late=st.booleans())
def test_every_flipped_bit_is_found(good: Path, where: float, bit: int, late: bool) -> None:
    """Early ones mostly meet the record, late ones what the ZIP says of its members."""
    content = bytearray(good.read_bytes())
    reach = 2000 if late else len(content)
    content[len(content) - reach + int(where * reach)] ^= 1 << bit
    harmed = good.with_name("harmed.zip")
    harmed.write_bytes(content)
    with pytest.raises(ShopTrouble, match="The backup is not used"):
        through(restore_backup(harmed, good.with_name("again"), NOON))
    assert not good.with_name("again").exists()


@given(kept=st.floats(0, 1, exclude_max=True))
def test_every_cut_is_found(good: Path, kept: float) -> None:
    content = good.read_bytes()
    harmed = good.with_name("harmed.zip")
    harmed.write_bytes(content[: int(kept * len(content))])
    with pytest.raises(ShopTrouble, match="The backup is not used"):
        through(restore_backup(harmed, good.with_name("again"), NOON))


@given(where=st.floats(0, 1, exclude_max=True), bit=st.integers(0, 7))
def test_a_flipped_bit_under_a_mended_seal_is_found_too(good: Path, where: float, bit: int) -> None:
    """What is in the record is held by its hash, whoever made the seal."""
    with zipfile.ZipFile(good) as archive:
        info = archive.getinfo("shop.sqlite")
    content = bytearray(good.read_bytes())
    begins = info.header_offset + 30 + len("shop.sqlite")
    content[begins + int(where * info.file_size)] ^= 1 << bit
    assert sealed(bytes(content)) == bytes(content)  # the seal leaves it to the hash
    harmed = good.with_name("harmed.zip")
    harmed.write_bytes(content)
    with pytest.raises(ShopTrouble, match="The backup is not used"):
        through(restore_backup(harmed, good.with_name("again"), NOON))


@given(back=st.integers(9, 900), value=st.integers(0, 255))
def test_whatever_the_contents_of_the_zip_say_only_what_was_written_comes_back(
    good: Path, back: int, value: int
) -> None:
    content = bytearray(good.read_bytes())
    content[-back] = value
    with suppress(zipfile.BadZipFile, NotImplementedError, struct.error, ValueError):
        content = bytearray(sealed(bytes(content)))
    harmed, again = good.with_name("harmed.zip"), good.with_name("again")
    harmed.write_bytes(content)
    try:
        through(restore_backup(harmed, again, NOON))
    except ShopTrouble:
        assert not again.exists()
        return
    assert (again / NAME).read_bytes() == b"a photo"
    shutil.rmtree(again)
