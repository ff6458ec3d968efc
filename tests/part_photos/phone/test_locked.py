"""The page behind a lock: the same door, a certificate of the shop's own, nobody held up."""

from __future__ import annotations

import hashlib
import os
import socket
import ssl
from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from desktop_app.part_photos.phone import limits
from desktop_app.part_photos.phone.own_certificate import (
    FILE,
    LASTS,
    RENEWED,
    can_lock,
    lock_for,
)
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.phone.chromium import until
from tests.part_photos.phone.open_page import PHOTO, OpenPage, heard, open_page

HERE = "127.0.0.1"
SOON = 10  # seconds: before the server would give a silent connection up anyway


@pytest.fixture
def locked(tmp_path: Path) -> Iterator[OpenPage]:
    """The page, open on this computer alone, with a lock."""
    shop = tmp_path / "shop"
    shop.mkdir()
    with open_page(shop, lock_for(shop, HERE, datetime.now(UTC))) as page:
        yield page


def photos(page: OpenPage) -> list[str]:
    """What lies in the shop's folder beside the certificate."""
    return [name for name in page.files() if name != FILE]


def test_a_photo_comes_in_behind_the_lock(locked: OpenPage) -> None:
    assert locked.server.url().startswith("https://127.0.0.1:")
    assert locked.label()[1]["job"] == "J-101"
    assert locked.send()[0] == 200
    assert locked.photos() == [PHOTO]


def test_the_window_shows_what_the_browser_shows_of_the_certificate(locked: OpenPage) -> None:
    told = ssl.PEM_cert_to_DER_cert(ssl.get_server_certificate(locked.at))
    assert locked.lock is not None
    assert locked.lock.sha256.replace(" ", "").lower() == hashlib.sha256(told).hexdigest()


def test_the_door_is_the_same(locked: OpenPage) -> None:
    assert locked.send(X_Bay_Key="0" * 32)[0] == 403
    assert locked.send(Origin=f"http://{locked.server.here}")[0] == 403
    assert locked.send(Content_Length="1_0")[0] == 411
    assert locked.send(X_Photo_SHA256="0" * 64)[0] == 422
    assert photos(locked) == []
    assert locked.send()[0] == 200


def test_who_speaks_without_the_lock_is_not_heard(locked: OpenPage) -> None:
    assert not locked.raw(locked.head_bytes() + PHOTO).startswith(b"HTTP")
    assert photos(locked) == []
    assert locked.send()[0] == 200


def test_who_never_agrees_on_keys_is_cut_and_holds_nobody_up(
    locked: OpenPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    with socket.create_connection(locked.at, timeout=SOON) as silent:
        assert locked.send()[0] == 200
        monkeypatch.setattr(limits, "HEADER_SECONDS", 0.3)
        with socket.create_connection(locked.at, timeout=SOON) as line:
            assert heard(line) == b""
        assert silent.fileno() >= 0


def test_cut_on_its_way_nothing_is_kept(locked: OpenPage) -> None:
    line = locked.line()
    line.putrequest("PUT", "/photo", skip_host=True, skip_accept_encoding=True)
    for name, value in locked.heads().items():
        line.putheader(name, value)
    line.endheaders(PHOTO[:-1])
    line.close()
    until(lambda: photos(locked) == [], lambda: f"left behind: {photos(locked)}")
    assert locked.send()[0] == 200
    until(lambda: len(photos(locked)) == 1, lambda: f"left behind: {photos(locked)}")


def test_its_end_cuts_who_is_sending(locked: OpenPage) -> None:
    line = locked.line()
    line.putrequest("PUT", "/photo", skip_host=True, skip_accept_encoding=True)
    for name, value in locked.heads().items():
        line.putheader(name, value)
    line.endheaders(PHOTO[:-1])
    until(lambda: bool(photos(locked)), lambda: "not past the door")
    locked.server.end()
    line.sock.settimeout(SOON)
    with closing(line):
        assert heard(line.sock) == b""
    until(lambda: photos(locked) == [], lambda: f"left behind: {photos(locked)}")


def test_the_certificate_is_kept_for_an_address_until_shortly_before_its_end(
    tmp_path: Path,
) -> None:
    now = datetime(2026, 11, 16, 12, tzinfo=UTC)
    first = lock_for(tmp_path, HERE, now).sha256
    later = now + LASTS - RENEWED - timedelta(days=2)
    assert lock_for(tmp_path, HERE, later).sha256 == first
    assert lock_for(tmp_path, "192.168.7.20", now).sha256 != first
    again = lock_for(tmp_path, HERE, now).sha256
    assert lock_for(tmp_path, HERE, now + LASTS).sha256 != again


@pytest.mark.parametrize(
    "spoiled", [b"", b"nonsense", b"\xff\xfe", b"-----BEGIN CERTIFICATE-----\n"]
)
def test_a_spoiled_certificate_gives_way_to_another_one(tmp_path: Path, spoiled: bytes) -> None:
    (tmp_path / FILE).write_bytes(spoiled)
    assert len(lock_for(tmp_path, HERE, datetime.now(UTC)).sha256.split()) == 16
    assert sorted(file.name for file in tmp_path.iterdir()) == [FILE]


@pytest.mark.skipif(os.name == "nt", reason="Windows keeps rights in another way")
def test_the_key_is_for_this_user_alone(tmp_path: Path) -> None:
    lock_for(tmp_path, HERE, datetime.now(UTC))
    assert (tmp_path / FILE).stat().st_mode & 0o777 == 0o600


def test_where_it_can_not_be_written_that_is_said(tmp_path: Path) -> None:
    with pytest.raises(ShopTrouble, match="can't be used"):
        lock_for(tmp_path / "gone", HERE, datetime.now(UTC))


def test_a_disk_that_refuses_the_key_keeps_no_half_of_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_handle: int) -> None:
        raise OSError(28, "No space left on device")

    assert can_lock()
    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(ShopTrouble, match="No space left on device") as told:
        lock_for(tmp_path, HERE, datetime.now(UTC))
    assert "open the page without the lock" in told.value.do
    assert list(tmp_path.iterdir()) == []


def test_who_finds_no_room_hears_no_word_before_keys_are_agreed_on(locked: OpenPage) -> None:
    while locked.session.traffic.enter(HERE):
        pass
    assert locked.raw(b"") == b""
