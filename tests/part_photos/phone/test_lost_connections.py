"""A phone that loses the Wi-Fi: nothing torn is kept, and sending again keeps one."""

from __future__ import annotations

import socket
import struct
import threading

import pytest

from tests.part_photos.bench_pictures import encoded, noisy
from tests.part_photos.phone.chromium import until
from tests.part_photos.phone.open_page import PHOTO, OpenPage, heard

POINTS = 20
SOON = 10  # seconds: before the server would give a silent connection up anyway


@pytest.mark.parametrize("rudely", [False, True], ids=["ended", "reset"])
@pytest.mark.parametrize("point", range(POINTS))
def test_cut_anywhere_nothing_is_kept_and_the_next_sending_keeps_one(
    page: OpenPage, point: int, rudely: bool
) -> None:
    whole = page.head_bytes() + PHOTO
    sent = whole[: len(whole) * point // POINTS]
    with socket.create_connection(page.at, timeout=30) as line:
        line.sendall(sent)
        if rudely:
            line.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
    assert page.send()[0] == 200
    assert page.photos() == [PHOTO]
    until(lambda: len(page.files()) == 1, lambda: f"left behind: {page.files()}")
    assert len(set(page.came)) == 1


def test_a_photo_whose_answer_was_lost_is_there_once_when_it_is_sent_again(
    page: OpenPage,
) -> None:
    with socket.create_connection(page.at, timeout=30) as line:
        line.sendall(page.head_bytes() + PHOTO)
        until(lambda: bool(page.came), lambda: "it never came")
        line.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
    assert page.send()[0] == 200
    assert page.photos() == [PHOTO]
    assert page.session.counts()[0] == 1


def test_the_same_photo_for_two_places_is_kept_for_each(page: OpenPage) -> None:
    for side in "01":
        assert page.send(X_Photo_Place=f"0123456789abcdef.{side}.0")[0] == 200
    assert [one.meant[:11] for one in page.tray.waiting()] == ["removed par", "replacement"]


def test_two_phones_that_send_the_same_and_others_at_once_keep_each_once(page: OpenPage) -> None:
    photos = [encoded(noisy(200, 150, seed)) for seed in range(4)]
    answers: list[int] = []

    def send_all() -> None:
        answers.extend(page.send(photo)[0] for photo in photos)

    phones = [threading.Thread(target=send_all) for _ in range(2)]
    for one in phones:
        one.start()
    for one in phones:
        one.join()
    assert answers == [200] * 8
    assert sorted(page.photos()) == sorted(photos)


def test_what_was_half_written_when_the_program_stopped_is_swept(page: OpenPage) -> None:
    assert page.send()[0] == 200
    (page.tray.folder / "0123456789abcdef.tmp").write_bytes(PHOTO[:100])
    (page.tray.folder / "own notes.txt").write_text("somebody's")
    assert len(page.tray.waiting()) == 1
    page.tray.sweep()
    assert not [name for name in page.files() if name.endswith(".tmp")]
    assert "phone-tray/own notes.txt" in page.files()
    assert page.photos() == [PHOTO]


def test_ending_the_page_cuts_who_is_sending_and_keeps_nothing_of_it(page: OpenPage) -> None:
    with socket.create_connection(page.at, timeout=SOON) as line:
        line.sendall(page.head_bytes() + PHOTO[:-1])
        until(lambda: bool(page.files()), lambda: "not past the door")
        page.server.end()
        assert heard(line) == b""
    until(lambda: page.files() == [], lambda: f"left behind: {page.files()}")
