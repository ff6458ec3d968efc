"""A picture that breaks the decoder, or never lets it end, is refused; the next one is taken."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import threading
from collections.abc import Iterator

import pytest

from desktop_app.part_photos.intake import look_at
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.photo_trouble import PhotoTrouble
from desktop_app.part_photos.read_apart import photo_reader
from desktop_app.part_photos.read_apart.photo_reader import PhotoReader
from desktop_app.part_photos.screen.bench_photo import decoded_photo
from desktop_app.part_photos.screen.picture_image import full_picture, small_picture
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.covered import unmeasured
from tests.faults.hostile_pictures.brittle_reading import (
    CHATTERS,
    CRASHES,
    EATS,
    HANGS,
    KILLED,
    LIES,
)
from tests.faults.test_backup_faults import ROOT
from tests.part_photos.bench_pictures import encoded, noisy, picture

BRITTLE = "tests.faults.hostile_pictures.brittle_reading"
PHOTO = encoded(noisy(200, 150))
BROKE = (
    "left.jpg: this picture could not be read: the reader broke over it. "
    "Open it in a picture program and save it as JPEG, then send that."
)
posix = pytest.mark.skipif(os.name == "nt", reason="signals are of another kind there")


@pytest.fixture
def reader(monkeypatch: pytest.MonkeyPatch) -> Iterator[PhotoReader]:
    """A reader that can be broken, in the place of the program's own."""
    monkeypatch.setenv("PYTHONPATH", str(ROOT))
    brittle = PhotoReader(BRITTLE, 60.0)
    monkeypatch.setattr(photo_reader, "READER", brittle)
    yield brittle
    brittle.end()


def test_it_knows_no_password_and_does_without_large_pipes(
    reader: PhotoReader, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PGPASSWORD", "secret-of-the-shop")
    asked: list[tuple[int, bool]] = []
    popen = subprocess.Popen

    def scarce(*words: object, **more: object) -> object:
        size, environment = more["pipesize"], more["env"]
        asked.append((size, "PGPASSWORD" in environment))  # type: ignore[operator, arg-type]
        if size != -1:
            raise PermissionError("too many pages of pipes")
        return popen(*words, **more)  # type: ignore[call-overload]

    monkeypatch.setattr(subprocess, "Popen", scarce)
    assert look_at("first.jpg", PHOTO)
    assert [no for _, no in asked] == [False, False]
    assert asked[-1][0] == -1


@posix
@pytest.mark.parametrize("ends", [CRASHES, KILLED, LIES])
def test_a_picture_that_breaks_the_reader_is_refused(reader: PhotoReader, ends: bytes) -> None:
    look_at("first.jpg", PHOTO)
    number = reader.process_id()
    with pytest.raises(PhotoTrouble) as refused:
        look_at("left.jpg", PHOTO + ends)
    assert refused.value.sentence() == BROKE
    assert look_at("next.jpg", PHOTO).width == 200
    assert reader.process_id() != number


def test_a_picture_that_never_ends_is_given_up(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PYTHONPATH", str(ROOT))
    hasty = PhotoReader(BRITTLE, 3.0)
    monkeypatch.setattr(photo_reader, "READER", hasty)
    with pytest.raises(PhotoTrouble, match=r"^left\.jpg: .* it takes longer than 3 seconds\. Open"):
        look_at("left.jpg", PHOTO + HANGS)
    monkeypatch.setattr(photo_reader, "READER", PhotoReader())
    assert look_at("next.jpg", PHOTO).width == 200
    photo_reader.READER.end()


@pytest.mark.skipif(sys.platform != "linux", reason="not every system limits memory")
@pytest.mark.usefixtures("reader")
def test_a_picture_that_eats_the_memory_is_refused() -> None:
    with pytest.raises(PhotoTrouble, match="takes more memory than any photo does"):
        look_at("left.jpg", PHOTO + EATS)
    assert look_at("next.jpg", PHOTO).width == 200


@pytest.mark.usefixtures("reader")
def test_what_a_decoder_prints_is_no_answer() -> None:
    assert look_at("left.jpg", PHOTO + CHATTERS).width == 200


@posix
def test_a_reader_that_was_killed_between_photos_costs_none(reader: PhotoReader) -> None:
    look_at("first.jpg", PHOTO)
    number = reader.process_id()
    assert number is not None
    os.kill(number, signal.SIGKILL)
    os.waitid(os.P_PID, number, os.WEXITED | os.WNOWAIT)
    assert look_at("next.jpg", PHOTO).width == 200
    assert reader.process_id() != number


def test_one_process_serves_all_photos(reader: PhotoReader) -> None:
    assert reader.process_id() is None
    numbers = set()
    for shade in range(5):
        look_at("photo.png", encoded(picture(shade=shade), "PNG"))
        numbers.add(reader.process_id())
    assert len(numbers) == 1


def test_photos_asked_for_by_two_threads_are_not_mixed_up(reader: PhotoReader) -> None:
    seen: dict[int, int] = {}

    def look(width: int) -> None:
        seen[width] = look_at("photo.png", encoded(picture(width), "PNG")).width

    threads = [threading.Thread(target=look, args=(width,)) for width in range(40, 60)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert seen == {width: width for width in range(40, 60)}
    assert reader.process_id() is not None


@posix
@pytest.mark.usefixtures("reader")
def test_a_photo_of_a_record_that_was_brought_in_breaks_no_window(shop: ShopRecord) -> None:
    content = PHOTO + CRASHES
    sha256 = shop.photos.keep(content)
    photo = KeptPhoto(1, 1, sha256, "a.jpg", "image/jpeg", len(content), 200, 150, None, "")
    for opened in (small_picture, full_picture, decoded_photo):
        with pytest.raises(ShopTrouble, match="can't be read any more"):
            opened(shop, photo)


ONE_PHOTO = """
import sys
from desktop_app.part_photos.intake import look_at
from desktop_app.part_photos.read_apart.photo_reader import READER
before = READER.process_id()
look_at("cap.jpg", open(sys.argv[1], "rb").read())
print(before, READER.process_id())
"""


@pytest.mark.skipif(os.name == "nt", reason="processes are told by /proc there")
def test_the_process_begins_with_the_first_photo_and_ends_with_the_program(
    tmp_path_factory: pytest.TempPathFactory,
) -> None:
    file = tmp_path_factory.mktemp("phone") / "cap.jpg"
    file.write_bytes(PHOTO)
    words = [sys.executable, "-c", ONE_PHOTO, str(file)]
    ran = subprocess.run(words, cwd=ROOT, capture_output=True, text=True, check=True)
    before, number = ran.stdout.split()
    assert before == "None"
    with pytest.raises(ProcessLookupError):
        os.kill(int(number), 0)


def test_the_process_knows_no_window() -> None:
    words = (
        "import sys; from desktop_app.part_photos.read_apart import reading_process; "
        "from desktop_app.part_photos.upright_picture import open_picture; import PIL.Image; "
        "print([name for name in sys.modules if name.split('.')[0] in "
        "('PySide6', 'shiboken6', 'sqlalchemy', 'sqlite3', 'cv2')])"
    )
    order = [sys.executable, "-c", words]
    ran = subprocess.run(
        order, cwd=ROOT, env=unmeasured(), capture_output=True, text=True, check=True
    )
    assert ran.stdout.strip() == "[]"
