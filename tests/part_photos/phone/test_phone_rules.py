"""The rules behind the page: room for phones, photos an hour, addresses, what lies in the tray."""

from __future__ import annotations

from datetime import UTC, datetime
from hashlib import sha256
from pathlib import Path

import pytest

from desktop_app.part_photos.phone import in_tray, limits
from desktop_app.part_photos.phone.addresses import Address, worth_offering
from desktop_app.part_photos.phone.in_tray import InTray
from desktop_app.part_photos.phone.offer import Place, read_place
from desktop_app.part_photos.phone.session import MOST_REFUSED, Session
from desktop_app.part_photos.phone.traffic import Traffic
from desktop_app.shop_record.checks.leftovers import TRASH
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.phone.open_page import OFFER, PHOTO

SHA = "ab" * 32
NOON = datetime(2026, 11, 16, 12, 0, tzinfo=UTC)


def test_eight_connections_are_the_most_of_all_and_two_of_one() -> None:
    traffic = Traffic()
    one = "10.0.0.1"
    assert [traffic.enter(one) for _ in range(5)] == [True] * 4 + [False]
    assert [traffic.enter(f"10.0.0.{n}") for n in range(2, 7)] == [True] * 4 + [False]
    assert traffic.here() == limits.MOST_CONNECTIONS
    assert [traffic.turn(one, 0) for _ in range(3)] == [True, True, False]
    assert traffic.enter("10.0.0.6")  # in the place of who waited in vain
    traffic.leave(one)
    assert traffic.turn(one, 0)
    assert not traffic.turn(one, 0)


def test_the_hour_of_two_hundred_photos_goes_on() -> None:
    now = [0.0]
    traffic = Traffic(lambda: now[0])
    assert all(traffic.another_photo() for _ in range(200))
    now[0] = 3599.0
    assert not traffic.another_photo()
    now[0] = 3600.0
    assert traffic.another_photo()


def test_the_page_closes_after_half_an_hour_that_nobody_used() -> None:
    now = [0.0]
    session = Session(lambda name: None, lambda: now[0])
    now[0] = 1700.0
    assert session.seconds_left() == pytest.approx(100)
    session.label()  # a page that lies open asks, and is no use
    assert session.seconds_left() == pytest.approx(100)
    session.arrived(SHA, "x")
    assert session.seconds_left() == pytest.approx(1800)
    now[0] = 9999.0
    assert session.seconds_left() == 0


def test_a_body_has_twenty_seconds_and_five_for_each_megabyte() -> None:
    assert limits.body_seconds(0) == 20
    assert limits.body_seconds(4_000_000) == 40


def test_each_key_has_128_bits_and_is_another_one() -> None:
    keys = {Session(lambda name: None).key for _ in range(50)}
    assert len(keys) == 50
    assert {len(bytes.fromhex(key)) for key in keys} == {16}


def test_an_earlier_offer_still_takes_what_was_meant_for_it() -> None:
    session = Session(lambda name: None)
    session.offer(OFFER)
    session.offer(None)
    assert session.label()["key"] == ""
    assert session.meant(f"{OFFER.key}.1.0") == (Place(OFFER.key, 1, 0), OFFER)
    assert session.meant(f"{OFFER.key}.1.2") is None


@pytest.mark.parametrize(
    "text", ["", "none", "0" * 16 + ".0", "0" * 16 + ".0.0\n", "0" * 16 + ".0.٣", "G" * 16 + ".0.0"]
)
def test_no_other_text_is_a_place(text: str) -> None:
    assert read_place(text) is None


def test_addresses_are_those_of_the_shop_first_and_never_all_of_them() -> None:
    found = [
        Address("127.0.0.1", "lo"),
        Address("0.0.0.0", "any"),
        Address("fe80::1%eth0", "eth0"),
        Address("169.254.3.4", "usb0"),
        Address("192.168.7.20", "wlan0"),
        Address("203.0.113.9", "ppp0"),
        Address("224.0.0.1", "many"),
        Address("192.168.7.20", "wlan0"),
    ]
    offered = [one.number for one in worth_offering(found)]
    assert offered == ["192.168.7.20", "203.0.113.9", "169.254.3.4", "127.0.0.1"]
    assert "this computer alone" in worth_offering(found)[-1].words()


def kept(tray: InTray, called: str = "IMG_7.jpg", sha256: str = SHA) -> str:
    """Put a photo into the tray and return its name there."""
    with tray.coming() as coming:
        coming.write(PHOTO)
        return coming.keep(sha256, "none", called, "")


def test_a_photo_whose_note_was_lost_or_spoiled_is_a_photo_still(tmp_path: Path) -> None:
    tray = InTray(tmp_path)
    name = kept(tray, sha256=sha256(PHOTO).hexdigest())
    whole = (tray.folder / name).read_bytes()
    assert tray.read(name) == PHOTO
    for torn in (PHOTO, PHOTO + b"bench-note", whole.replace(b'"called"', b"\xff\xfecalled")):
        (tray.folder / name).write_bytes(torn)
        assert [one.called for one in tray.waiting()] == ["photo"]
    (tray.folder / name).write_bytes(PHOTO)
    assert tray.read(name) == PHOTO


@pytest.mark.parametrize("called", ["IMG_7.jpg", "\U0001f527" * 200, "é" * 200])
def test_what_a_photo_was_called_comes_back(tmp_path: Path, called: str) -> None:
    tray = InTray(tmp_path)
    assert tray.one(kept(tray, called)).called == called


def test_what_is_not_kept_leaves_nothing(tmp_path: Path) -> None:
    tray = InTray(tmp_path)
    with tray.coming() as coming:
        coming.write(PHOTO)
    assert list(tray.folder.iterdir()) == []


def test_a_photo_that_the_disk_spoiled_is_named_and_stays(tmp_path: Path) -> None:
    tray = InTray(tmp_path)
    name = kept(tray)
    with pytest.raises(ShopTrouble, match="damaged on this computer's disk"):
        tray.read(name)
    assert tray.holds(name)


def test_what_is_thrown_away_lies_in_the_trash(tmp_path: Path) -> None:
    tray = InTray(tmp_path)
    name = kept(tray)
    tray.throw_away(name, NOON)
    assert tray.waiting() == []
    assert (tmp_path / TRASH / "2026-11-16-120000" / "phone-tray" / name).read_bytes() == PHOTO
    with pytest.raises(ShopTrouble, match="not thrown away"):
        tray.throw_away(name, NOON)


def test_what_was_refused_long_ago_is_not_told_any_more() -> None:
    session = Session(lambda name: None)
    hashes = [f"{number:064x}" for number in range(MOST_REFUSED + 2)]
    for one in hashes:
        session.refuse(one, "no photo")
    assert session.label()["refused"] == dict.fromkeys(hashes[2:], "no photo")


def test_a_photo_that_is_kept_elsewhere_is_let_go_once_and_for_all(tmp_path: Path) -> None:
    tray = InTray(tmp_path)
    name = kept(tray)
    for _ in range(2):
        tray.let_go(name)
        assert tray.waiting() == []
    with pytest.raises(ShopTrouble, match="A photo from the phone can't be read: No such file"):
        tray.read(name)


def test_a_photo_without_its_note_is_thrown_away_whole(tmp_path: Path) -> None:
    tray = InTray(tmp_path)
    name = kept(tray)
    (tray.folder / name).write_bytes(PHOTO)
    tray.throw_away(name, NOON)
    assert (tmp_path / TRASH / "2026-11-16-120000" / "phone-tray" / name).read_bytes() == PHOTO


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no device is always full there")
def test_a_disk_that_fills_up_while_a_photo_comes_is_said_at_its_end(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    tray = InTray(tmp_path)
    tray.folder.mkdir()
    monkeypatch.setattr(in_tray.secrets, "token_hex", lambda _bytes: "full")
    (tray.folder / "full.tmp").symlink_to("/dev/full")
    with tray.coming() as coming:
        for _ in range(3):
            coming.write(PHOTO * 10)
        with pytest.raises(OSError, match="No space left"):
            coming.keep(SHA, "none", "IMG_7.jpg", "")
    assert list(tray.folder.iterdir()) == []
