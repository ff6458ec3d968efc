"""Who may send, and what: every refusal with real sockets, and nothing of it stays on the disk."""

from __future__ import annotations

import http.client
import socket
import time
from pathlib import Path

import pytest

from desktop_app.part_photos.phone import limits
from desktop_app.part_photos.phone.phone_server import PhoneServer
from desktop_app.part_photos.photo_limits import MOST_BYTES
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.bench_pictures import encoded, noisy
from tests.part_photos.phone.chromium import until
from tests.part_photos.phone.open_page import OFFER, PHOTO, OpenPage, heard, open_page

SOON = 10  # seconds: before the server would give a silent connection up anyway


def test_a_photo_with_the_key_is_kept_and_answered_by_its_hash(page: OpenPage) -> None:
    status, said = page.send()
    heads = page.heads()
    assert (status, said) == (200, {"sha256": heads["X-Photo-SHA256"], "bytes": len(PHOTO)})
    (one,) = page.tray.waiting()
    assert page.tray.read(one.name) == PHOTO
    assert one.called == "IMG_1.jpg"
    assert one.meant == "removed part · back · brake pads front left · job J-101"
    assert page.came == [one.name]


def test_the_phone_is_told_the_place_and_nothing_else(page: OpenPage) -> None:
    status, said = page.label()
    assert status == 200
    assert said == {
        "key": OFFER.key,
        "job": "J-101",
        "part": "brake pads front left",
        "views": ["face", "back"],
        "side": 0,
        "view": 0,
        "refused": {},
        "minutes": 30 + 1 if said["minutes"] == 31 else 30,
    }


@pytest.mark.parametrize(
    ("wrong", "status"),
    [
        ({"X_Bay_Key": None}, 403),
        ({"X_Bay_Key": ""}, 403),
        ({"X_Bay_Key": "0" * 32}, 403),
        ({"X_Bay_Key": "ÿ" * 32}, 403),
        ({"Host": "elsewhere.example"}, 421),
        ({"Host": "127.0.0.1"}, 421),
        ({"Host": None}, 421),
        ({"Origin": "null"}, 403),
        ({"Origin": "http://elsewhere.example"}, 403),
        ({"Origin": "https://127.0.0.1"}, 403),
        ({"Content_Length": None}, 411),
        ({"Content_Length": "-1"}, 411),
        ({"Content_Length": f"+{len(PHOTO)}"}, 411),
        ({"Content_Length": "1_0"}, 411),
        ({"Content_Length": "0x10"}, 411),
        ({"Content_Length": "²"}, 411),
        ({"Content_Length": "9" * 40}, 411),
        ({"Transfer_Encoding": "chunked"}, 411),
        ({"Content_Length": None, "Transfer_Encoding": "chunked"}, 411),
        ({"Content_Length": str(MOST_BYTES + 1)}, 413),
        ({"Content_Length": "2000000000"}, 413),
        ({"X_Photo_SHA256": None}, 400),
        ({"X_Photo_SHA256": "../../evil"}, 400),
        ({"X_Photo_SHA256": "0" * 64}, 422),
    ],
)
def test_what_is_wrong_with_a_sending_is_refused_in_words(
    page: OpenPage, wrong: dict[str, str | None], status: int
) -> None:
    got = page.raw(page.head_bytes(**wrong) + PHOTO, shut=True)
    assert got.startswith(f"HTTP/1.0 {status} ".encode())
    assert b'{"words": "' in got
    assert page.files() == []
    assert page.came == []
    assert page.send()[0] == 200  # and the next one with the right key comes in


def test_an_empty_photo_is_refused_for_good(page: OpenPage) -> None:
    assert page.send(b"") == (400, {"words": "The photo is empty. Take it again."})
    assert page.files() == []


def test_a_length_said_twice_is_refused(page: OpenPage) -> None:
    twice = page.head_bytes().replace(b"\r\n\r\n", b"\r\nContent-Length: 3\r\n\r\n")
    assert page.raw(twice + PHOTO, shut=True).startswith(b"HTTP/1.0 411 ")
    assert page.files() == []


def test_the_origin_of_a_browser_that_tells_none_is_no_trouble(page: OpenPage) -> None:
    assert page.send(Origin=None)[0] == 200


def test_the_key_is_looked_at_first(page: OpenPage) -> None:
    wrong = page.head_bytes(X_Bay_Key="0" * 32, Host="elsewhere.example", Content_Length="-1")
    assert page.raw(wrong, shut=True).startswith(b"HTTP/1.0 403 ")


def test_many_wrong_keys_are_counted_and_keep_nobody_out(page: OpenPage) -> None:
    for number in range(30):
        assert page.label(X_Bay_Key=f"{number:032x}")[0] == 403
    assert page.session.counts() == (0, 30)
    assert page.send()[0] == 200


@pytest.mark.parametrize(
    ("method", "path"),
    [
        ("GET", "/place"),
        ("GET", "/photo"),
        ("GET", "/../shop.sqlite"),
        ("GET", "/favicon.ico"),
        ("GET", "//etc/passwd"),
        ("POST", "/photo"),
        ("PUT", "/place"),
        ("PUT", "/phone-tray/x"),
        ("PUT", "/photo/../../x"),
    ],
)
def test_there_is_nothing_else_to_ask_for(page: OpenPage, method: str, path: str) -> None:
    heads = page.heads()
    if method == "GET":
        heads["Content-Length"] = "0"
    assert page.ask(method, path, heads, b"" if method == "GET" else PHOTO)[0] == 404
    assert page.files() == []


@pytest.mark.parametrize("method", ["DELETE", "OPTIONS", "HEAD", "PATCH", "TRACE", "PROPFIND"])
def test_other_ways_of_asking_are_not_known(page: OpenPage, method: str) -> None:
    got = page.raw(f"{method} / HTTP/1.1\r\nHost: {page.server.here}\r\n\r\n".encode(), shut=True)
    assert got.startswith(b"HTTP/1.0 501 ")
    assert b"Allow" not in got


@pytest.mark.parametrize(
    "name",
    [
        "../../evil",
        "..%2F..%2Fevil",
        "%00",
        "a" * 5000,
        "%E2%80%AE gnp.exe",
        "C:\\x\\y.jpg",
        "%FF",
        "",
    ],
)
def test_a_name_is_shown_and_never_becomes_a_file(page: OpenPage, name: str) -> None:
    assert page.send(X_Photo_Name=name)[0] == 200
    (one,) = page.tray.waiting()
    assert page.files() == [f"phone-tray/{one.name}"]
    assert len(one.called) <= 200
    assert one.called.isprintable()
    assert "/" not in one.called
    assert "\\" not in one.called
    assert not (page.shop.parent / "evil").exists()


@pytest.mark.parametrize(
    "place", ["", "../../x", "none", "f" * 16 + ".0.0", f"{OFFER.key}.2.0", f"{OFFER.key}.0.7", "é"]
)
def test_a_place_that_was_never_offered_loses_no_photo(page: OpenPage, place: str) -> None:
    assert page.send(X_Photo_Place=place)[0] == 200
    (one,) = page.tray.waiting()
    assert (one.place, one.meant) == ("none", "")


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"<svg xmlns='http://www.w3.org/2000/svg'/>", "SVG"),
        (b"%PDF-1.4", "PDF"),
        (b"MZ" + bytes(500), "not a photo"),
        (encoded(noisy(32, 32), "PNG")[:20] + bytes.fromhex("7fff") + bytes(100), ""),
    ],
)
def test_what_is_no_photo_is_refused_before_it_is_kept(
    page: OpenPage, content: bytes, words: str
) -> None:
    status, said = page.send(content)
    assert status == 415
    assert words in said["words"]
    assert page.files() == []


def test_a_head_without_end_and_one_of_too_many_lines_are_refused(page: OpenPage) -> None:
    many = b"PUT /photo HTTP/1.1\r\n" + b"X-A: 1\r\n" * 500 + b"\r\n"
    assert page.raw(many, shut=True).startswith(b"HTTP/1.0 431 ")
    assert page.raw(b"GET /" + b"a" * 70_000, shut=True).startswith(b"HTTP/1.0 414 ")
    assert page.raw(b"\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03", shut=True) is not None
    assert page.send()[0] == 200


def test_more_than_two_hundred_photos_an_hour_are_refused(
    page: OpenPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(limits, "PHOTOS_AN_HOUR", 3)
    assert [page.send()[0] for _ in range(4)] == [200, 200, 200, 429]


def test_one_address_is_served_twice_at_a_time_and_the_fifth_is_told_to_wait(
    page: OpenPage,
) -> None:
    asked = f"GET / HTTP/1.1\r\nHost: {page.server.here}\r\n\r\n".encode()
    lines = [socket.create_connection(page.at, timeout=30) for _ in range(4)]
    try:
        until(lambda: page.raw(asked).startswith(b"HTTP/1.0 503 "), lambda: "a fifth came in")
    finally:
        for line in lines:
            line.close()
    until(lambda: page.label()[0] == 200, lambda: "no room again")


def test_who_does_not_end_the_head_in_time_is_cut_however_busy(
    page: OpenPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(limits, "HEADER_SECONDS", 0.3)
    with socket.create_connection(page.at, timeout=SOON) as line:
        line.sendall(b"PUT /photo HTTP/1.1\r\nHost: ")
        until(lambda: _is_cut(line, b"a"), lambda: "a letter now and then keeps it open")
    assert page.label()[0] == 200


def test_who_does_not_end_the_body_in_time_is_cut_and_leaves_nothing(
    page: OpenPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(limits, "ANSWER_SECONDS", 0.3)
    monkeypatch.setattr(limits, "SLOWEST", 1e9)
    with socket.create_connection(page.at, timeout=SOON) as line:
        line.sendall(page.head_bytes() + PHOTO[:-1])
        assert heard(line) == b""
    until(lambda: page.files() == [], lambda: f"left behind: {page.files()}")


def test_a_slow_phone_has_the_time_that_its_photo_takes(
    page: OpenPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(limits, "HEADER_SECONDS", 0.2)
    with socket.create_connection(page.at, timeout=SOON) as line:
        line.sendall(page.head_bytes() + PHOTO[:1000])
        head_is_late = time.monotonic() + 0.6
        until(lambda: time.monotonic() > head_is_late, lambda: "no clock")
        line.sendall(PHOTO[1000:])
        assert heard(line).startswith(b"HTTP/1.0 200 ")


def _is_cut(line: socket.socket, sent: bytes) -> bool:
    try:
        line.sendall(sent)
        line.settimeout(0.05)
        return line.recv(1) == b""
    except TimeoutError:
        return False
    except ConnectionError:
        return True


@pytest.mark.expects_trouble_log
def test_a_disk_that_takes_nothing_is_said_and_leaves_nothing(page: OpenPage) -> None:
    page.tray.folder.write_bytes(b"a file where the folder should be")
    status, said = page.send()
    assert (status, "disk" in said["words"]) == (507, True)
    assert page.came == []
    page.tray.folder.unlink()
    assert page.send()[0] == 200


def test_the_page_carries_its_policy_and_no_word_of_the_shop(page: OpenPage) -> None:
    got = page.raw(f"GET / HTTP/1.1\r\nHost: {page.server.here}\r\n\r\n".encode())
    head, _, body = got.partition(b"\r\n\r\n")
    assert b"Content-Security-Policy: default-src 'none'; script-src 'sha256-" in head
    for line in (b"nosniff", b"no-store", b"Referrer-Policy: no-referrer"):
        assert line in head
    assert b"Python" not in head
    assert page.session.key.encode() not in got
    assert b"J-101" not in got
    assert b"http://" not in body.replace(b"http://www.w3.org", b"")
    assert b"https://" not in body


def test_after_its_end_nobody_is_let_in(page: OpenPage) -> None:
    key = page.session.key
    page.session.end()
    assert page.label(X_Bay_Key=key)[0] == 403
    assert page.label(X_Bay_Key="")[0] == 403
    page.server.end()
    with pytest.raises(OSError, match=r"refused|reset|Errno"):
        page.label(X_Bay_Key=key)


def test_it_listens_on_the_one_address(page: OpenPage) -> None:
    assert page.server.server_address[0] == "127.0.0.1"
    with pytest.raises(OSError, match=r"refused|Errno"):
        socket.create_connection(("127.0.0.2", page.at[1]), timeout=5)


def test_who_asks_for_the_place_brings_nothing_along(page: OpenPage) -> None:
    status, said = page.label(Content_Length="5")
    assert (status, said["words"]) == (400, "This is no request of the page.")


def test_who_waits_for_a_turn_in_vain_is_told_to_come_again(
    page: OpenPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(limits, "TURN_SECONDS", 0.01)
    address, _ = page.at
    for _ in range(2):  # both turns of this phone are taken
        assert page.session.traffic.enter(address)
        assert page.session.traffic.turn(address, 0)
    assert page.raw(b"").startswith(b"HTTP/1.0 503 ")
    page.session.traffic.leave(address)
    monkeypatch.undo()
    assert page.send()[0] == 200


def test_a_second_page_takes_another_port_and_a_foreign_address_is_refused(
    page: OpenPage, tmp_path: Path
) -> None:
    with open_page(tmp_path / "other") as other:
        assert other.server.here != page.server.here
        assert (other.label()[0], page.label()[0]) == (200, 200)
    # An address of documentation (RFC 5737) that no computer has.
    with pytest.raises(ShopTrouble, match=r"can't be opened at 192\.0\.2\.1: ") as told:
        PhoneServer("192.0.2.1", page.session, page.tray)
    assert told.value.do == "Choose another address of this computer."


def test_where_a_port_would_be_shared_with_other_programs_it_is_taken_alone(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(PhoneServer, "allow_reuse_address", False)
    with open_page(tmp_path / "shop") as alone:
        assert alone.server.socket.getsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR) == 0
        assert alone.label()[0] == 200


def test_who_is_taken_in_while_the_page_closes_is_cut(page: OpenPage) -> None:
    page.server.end()
    ours, theirs = socket.socketpair()
    with ours:
        ours.settimeout(SOON)
        page.server.process_request(theirs, ("127.0.0.1", 1))
        assert heard(ours) == b""


@pytest.mark.expects_trouble_log
def test_a_mistake_of_the_program_ends_one_request_and_goes_into_the_log(
    page: OpenPage, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def mistaken() -> dict[str, object]:
        raise RuntimeError("a mistake")

    monkeypatch.setattr(page.session, "label", mistaken)
    with pytest.raises((http.client.HTTPException, ConnectionError)):
        page.label()
    until(lambda: "a request from the phone failed" in caplog.text, lambda: caplog.text)
    monkeypatch.undo()
    assert page.label()[0] == 200
