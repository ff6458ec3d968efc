"""A file that a person named: refused in words before any work, and never half written."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest

from desktop_app.part_photos import actions
from desktop_app.part_photos.actions import read_photo_file
from desktop_app.part_photos.arrival import Arrival, arrived, spread_out
from desktop_app.part_photos.bench_card.card_file import card_json
from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.card_actions import write_card
from desktop_app.part_photos.file_actions import check_place, put_files
from desktop_app.part_photos.photo_trouble import PhotoTrouble
from desktop_app.shop_record.trouble import ShopTrouble


def refused(to: Path, *inputs: Path) -> str:
    with pytest.raises(ShopTrouble) as told:
        check_place(to, ".pdf", "card.pdf", inputs)
    return told.value.sentence()


def test_a_place_that_can_be_no_file_of_the_kind_is_refused_with_what_to_name(
    tmp_path: Path,
) -> None:
    assert "is a folder. Name a file, such as card.pdf." in refused(tmp_path)
    assert "“card.txt” does not end in .pdf. Let the name end in .pdf." in refused(
        tmp_path / "card.txt"
    )
    assert "There is no folder" in refused(tmp_path / "nowhere" / "card.pdf")
    check_place(tmp_path / "CARD.PDF", ".pdf", "card.pdf", [tmp_path / "not there.json"])


@pytest.mark.skipif(os.name == "nt", reason="pipes are of another kind there")
def test_a_device_or_a_pipe_is_no_place(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "card.pdf")
    assert "is a device or a pipe. Name a file." in refused(tmp_path / "card.pdf")


def test_what_is_read_is_never_written_over_by_whatever_name_it_is_called(tmp_path: Path) -> None:
    photo, other = tmp_path / "photo.pdf", tmp_path / "other.pdf"
    photo.write_bytes(b"a photo")
    other.write_bytes(b"another")
    check_place(other, ".pdf", "card.pdf", [photo])
    assert "is one of the files that are read, and those are never changed" in refused(
        tmp_path / "." / "photo.pdf", other, photo
    )


def test_files_are_put_in_their_places_together(tmp_path: Path) -> None:
    one, two = tmp_path / "one", tmp_path / "two"
    one.write_bytes(b"before")
    put_files({one: b"now", two: b"new"})
    assert (one.read_bytes(), two.read_bytes()) == (b"now", b"new")
    assert sorted(tmp_path.iterdir()) == [one, two]


def test_of_a_disk_that_is_full_every_file_stays_as_it_was(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    one, two = tmp_path / "one", tmp_path / "two"
    one.write_bytes(b"before")
    synced: list[int] = []

    def full(handle: int) -> None:
        synced.append(handle)
        if len(synced) == 2:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(ShopTrouble) as told:
        put_files({one: b"now", two: b"new"})
    assert f"{two.name} was not written: No space left on device." in told.value.what
    assert told.value.kept == "A file that was there is as it was."
    assert one.read_bytes() == b"before"
    assert sorted(tmp_path.iterdir()) == [one]


def test_a_place_that_cannot_be_taken_is_told_and_nothing_lies_beside_it(tmp_path: Path) -> None:
    place = tmp_path / "card"
    (place / "something").mkdir(parents=True)
    with pytest.raises(ShopTrouble, match="was not written"):
        put_files({place: b"new"})
    assert sorted(tmp_path.iterdir()) == [place]


def test_a_card_is_written_with_its_layout_where_that_is_asked(tmp_path: Path) -> None:
    card = bench_card("a4")
    write_card(card, tmp_path / "card.pdf", tmp_path / "card.json")
    assert (tmp_path / "card.pdf").read_bytes().startswith(b"%PDF")
    assert (tmp_path / "card.json").read_text("utf-8") == card_json(card)
    write_card(card, tmp_path / "alone.pdf")
    with pytest.raises(ShopTrouble, match=r"does not end in \.json"):
        write_card(card, tmp_path / "another.pdf", tmp_path / "another.txt")
    assert {file.name for file in tmp_path.iterdir()} == {"card.pdf", "card.json", "alone.pdf"}


def test_a_file_and_bytes_come_as_they_are_and_a_folder_as_what_lies_in_it(tmp_path: Path) -> None:
    folder = tmp_path / "phone"
    (folder / "inside").mkdir(parents=True)
    for name in ("b.jpg", "a.jpg", ".hidden"):
        (folder / name).write_bytes(b"")
    pasted, file = Arrival("pasted.png", content=b"bytes"), arrived(folder / "a.jpg")
    pieces, aside = spread_out([pasted, file, arrived(folder)])
    assert pieces == [pasted, file, arrived(folder / "a.jpg"), arrived(folder / "b.jpg")]
    assert [one.sentence() for one in aside] == [
        "inside: a folder inside a folder is not searched. Drop it itself."
    ]
    (tmp_path / "empty").mkdir()
    assert spread_out([arrived(tmp_path / "empty")])[1][0].reason == "the folder is empty."


def test_a_folder_that_cannot_be_read_is_named_and_the_rest_is_taken(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def torn(_folder: Path) -> None:
        raise OSError(errno.EIO, os.strerror(errno.EIO))

    monkeypatch.setattr(Path, "iterdir", torn)
    pasted = Arrival("pasted.png", content=b"bytes")
    pieces, [trouble] = spread_out([arrived(tmp_path), pasted])
    assert pieces == [pasted]
    assert trouble.sentence() == f"{tmp_path.name}: the folder can't be read: Input/output error."


def test_a_photo_on_a_card_that_was_pulled_out_is_refused_by_its_name(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "cap.jpg").write_bytes(b"bytes")

    def torn(*_asked: object, **_more: object) -> None:
        raise OSError(errno.EIO, os.strerror(errno.EIO))

    monkeypatch.setattr(actions.os, "fdopen", torn)
    with pytest.raises(PhotoTrouble) as told:
        read_photo_file(tmp_path / "cap.jpg")
    assert told.value.sentence() == "cap.jpg: it can't be read (Input/output error)."
