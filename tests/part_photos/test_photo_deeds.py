"""Photos on a job: kept as they came before any row names them, added once, undone."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from desktop_app.part_photos.actions import (
    add_photos,
    read_photo_file,
    take_in,
    take_off_job,
    write_photo_note,
)
from desktop_app.part_photos.arrival import Arrival, arrived, spread_out
from desktop_app.part_photos.intake_news import intake_news
from desktop_app.part_photos.kept_photo import KeptPhoto, same_picture
from desktop_app.part_photos.photo_limits import MOST_BYTES
from desktop_app.part_photos.photo_trouble import PhotoTrouble
from desktop_app.part_photos.stored import Mark
from desktop_app.part_photos.stored_reading import photos_by_id, photos_of_job
from desktop_app.part_photos.stored_thumbnails import thumbnails_of
from desktop_app.part_photos.upright_picture import open_picture
from desktop_app.parts_compared.stored import Pair, PairPhoto
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.from_outside import GONE, lose_photo
from tests.part_photos.bench_pictures import encoded, exif, noisy, picture

CAP = encoded(picture(), "JPEG", exif(6, "2026:11:13 16:40:05"))
REFUSED = PhotoTrouble("a.txt", "not a photo.")
ROTOR = encoded(picture(shade=90), "PNG")


def on_job(record: ShopRecord, job_id: int) -> tuple[KeptPhoto, ...]:
    """Return the job's photos."""
    with record.reading() as connection:
        return photos_of_job(connection, job_id)


def test_a_photo_is_kept_as_it_came(record: ShopRecord, job_id: int, tmp_path: Path) -> None:
    file = tmp_path / "old cap.JPG"
    file.write_bytes(CAP)
    taken = take_in(record, arrived(file))
    assert record.photos.read(taken.sha256) == CAP
    assert on_job(record, job_id) == ()
    done = add_photos(record, job_id, [taken])
    (photo,) = on_job(record, job_id)
    assert (photo.id, photo.name, photo.width, photo.height) == (done.made, "old cap.JPG", 48, 64)
    assert photo.caption() == "old cap.JPG · 2026-11-13 16:40"


def test_several_photos_are_one_deed_and_one_undo(record: ShopRecord, job_id: int) -> None:
    taken = [take_in(record, Arrival(name, content=c)) for name, c in (("a", CAP), ("b", ROTOR))]
    assert add_photos(record, job_id, taken).words == "Add 2 photos"
    assert [photo.name for photo in on_job(record, job_id)] == ["a", "b"]
    record.undo()
    assert on_job(record, job_id) == ()
    assert record.photos.is_whole(taken[0].sha256)
    record.redo()
    assert [photo.name for photo in on_job(record, job_id)] == ["a", "b"]


def test_the_same_picture_is_added_once(record: ShopRecord, job_id: int) -> None:
    first = take_in(record, Arrival("first.jpg", content=CAP))
    again = take_in(record, Arrival("again.jpg", content=CAP))
    add_photos(record, job_id, [first, again])
    done = add_photos(record, job_id, [again])
    assert (done.seq, done.made) == (None, None)
    assert [photo.name for photo in on_job(record, job_id)] == ["first.jpg"]
    assert same_picture(first.sha256, again.sha256)


def test_a_job_that_is_gone_gets_no_photos(record: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="no longer there"):
        add_photos(record, 77, [take_in(record, Arrival("a", content=CAP))])


def test_a_note_and_a_removal_are_undone(record: ShopRecord, job_id: int) -> None:
    photo_id = add_photos(record, job_id, [take_in(record, Arrival("a", content=CAP))]).made
    assert photo_id is not None
    write_photo_note(record, photo_id, "  carbon track from 3 to ground ")
    with record.deed("Draw a mark") as deed:
        deed.add(Mark, photo_id=photo_id, kind="note", points="[[1, 2]]")
    take_off_job(record, photo_id)
    assert on_job(record, job_id) == ()
    record.undo()
    assert on_job(record, job_id)[0].note == "carbon track from 3 to ground"
    with record.reading() as connection:
        assert photos_by_id(connection, [photo_id, 999]).keys() == {photo_id}


def test_a_photo_that_a_pair_shows_stays(record: ShopRecord, job_id: int) -> None:
    photo_id = add_photos(record, job_id, [take_in(record, Arrival("a", content=CAP))]).made
    with record.deed("Show a photo") as deed:
        pair = deed.add(Pair, job_id=job_id, part_kind="distributor-cap")
        deed.add(PairPhoto, pair_id=pair, photo_id=photo_id, side="removed", view="inside")
    assert photo_id is not None
    with pytest.raises(ShopTrouble, match="A pair of parts shows this photo"):
        take_off_job(record, photo_id)
    assert len(on_job(record, job_id)) == 1


def test_a_folder_is_searched_one_level(tmp_path: Path) -> None:
    folder = tmp_path / "phone"
    (folder / "older").mkdir(parents=True)
    (folder / "b.jpg").write_bytes(CAP)
    (folder / "a.txt").write_bytes(b"gap 0.8")
    (folder / ".thumb").write_bytes(b"")
    (tmp_path / "nothing").mkdir()
    pieces, aside = spread_out([arrived(folder), arrived(tmp_path / "nothing")])
    assert [piece.name for piece in pieces] == ["a.txt", "b.jpg"]
    assert [trouble.name for trouble in aside] == ["older", "nothing"]


@pytest.mark.skipif(os.name == "nt", reason="pipes and devices are of another kind there")
def test_pipes_devices_and_lost_links_are_refused_without_waiting(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.jpg")
    (tmp_path / "zero.jpg").symlink_to("/dev/zero")
    (tmp_path / "lost.jpg").symlink_to(tmp_path / "gone")
    (tmp_path / "round.jpg").symlink_to(tmp_path / "round.jpg")
    (tmp_path / "folder.jpg").mkdir()
    for name in ("pipe", "zero", "lost", "round", "folder", "never"):
        with pytest.raises(PhotoTrouble, match=f"^{name}.jpg: "):
            read_photo_file(tmp_path / f"{name}.jpg")
    with pytest.raises(PhotoTrouble):
        read_photo_file(Path("a\x00b"))


def test_a_link_to_a_photo_is_a_photo(tmp_path: Path) -> None:
    (tmp_path / "cap.jpg").write_bytes(CAP)
    (tmp_path / "link.jpg").symlink_to(tmp_path / "cap.jpg")
    assert read_photo_file(tmp_path / "link.jpg") == CAP


def test_a_huge_file_is_refused_before_it_is_read(tmp_path: Path) -> None:
    with (tmp_path / "film.jpg").open("wb") as file:
        file.truncate(MOST_BYTES + 1)
    with pytest.raises(PhotoTrouble, match="40 MB"):
        read_photo_file(tmp_path / "film.jpg")


@pytest.mark.embedded
def test_a_full_disk_names_the_photo(record: ShopRecord, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(handle: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(ShopTrouble, match=r"^a\.jpg: .*No space left"):
        take_in(record, Arrival("a.jpg", content=CAP))


def test_a_thumbnail_is_made_once_and_again_when_lost(record: ShopRecord, job_id: int) -> None:
    taken = take_in(record, Arrival("a", content=encoded(noisy(600, 400))))
    folder = thumbnails_of(record)
    path = folder.path(taken.sha256)
    assert path.read_bytes() == taken.thumbnail
    assert path.is_relative_to(record.folder / "thumbnails")
    path.write_bytes(taken.thumbnail[:-40])  # torn by a power cut
    made = folder.jpeg(taken.sha256, taken.media_type)
    assert open_picture(made, "image/jpeg").size == (256, 171)
    assert path.read_bytes() == made
    lose_photo(record, taken.sha256)
    assert folder.jpeg(taken.sha256, taken.media_type) == made
    path.unlink()
    with pytest.raises(ShopTrouble, match=GONE):
        folder.jpeg(taken.sha256, taken.media_type)


def test_a_thumbnail_that_can_not_be_kept_is_still_shown(record: ShopRecord) -> None:
    (record.folder / "thumbnails").write_bytes(b"a file where the folder should be")
    taken = take_in(record, Arrival("a", content=CAP))
    assert thumbnails_of(record).jpeg(taken.sha256, taken.media_type).startswith(b"\xff\xd8")


@pytest.mark.parametrize(
    ("taken", "refused", "doubles", "news"),
    [
        (3, [], [], None),
        (
            1,
            [PhotoTrouble("a.txt", "not a photo.")],
            [],
            "One photo was added. Not taken: a.txt: not a photo.",
        ),
        (0, [], ["b.jpg"], "No photo was added. It is on this job already: b.jpg."),
        (2, [], ["b", "c"], "2 photos were added. On this job already: b, c."),
    ],
)
def test_a_drop_is_told_in_one_paragraph(
    taken: int, refused: list[PhotoTrouble], doubles: list[str], news: str | None
) -> None:
    assert intake_news(taken, refused, doubles) == news


@pytest.mark.parametrize(
    ("taken", "put", "news"),
    [
        (0, ["a"], "This job had it already; now it stands for this part too: a."),
        (0, ["a", "b"], "This job had them already; now they stand for this part too: a, b."),
        (
            1,
            ["a"],
            "One photo was added. This job had it already; now it stands for this part too: a.",
        ),
    ],
)
def test_photos_that_the_job_had_for_another_part_are_told(
    taken: int, put: list[str], news: str
) -> None:
    assert intake_news(taken, [], [], put) == news


def test_many_refusals_are_counted() -> None:
    refused = [PhotoTrouble(f"{n}.txt", "not a photo.") for n in range(9)]
    news = intake_news(0, refused, [])
    assert news is not None
    assert news.endswith("3.txt: not a photo. and 5 more")
