"""The page in a real browser in the shape of a phone: by touch, on slow Wi-Fi, on lost Wi-Fi."""

from __future__ import annotations

import os
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from desktop_app.part_photos.phone.own_certificate import lock_for
from tests.part_photos.bench_pictures import encoded, noisy
from tests.part_photos.phone.chromium import Phone, phone, until
from tests.part_photos.phone.open_page import OFFER, OpenPage, open_page

pytestmark = [
    pytest.mark.needs_tool("chromium"),
    pytest.mark.skipif(os.name == "nt", reason="the browser's pipe is one of Linux and macOS"),
]
SMALL, USUAL = (320, 568), (412, 915)


@pytest.fixture(scope="module")
def browser(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Phone]:
    """One browser for all tests of this file."""
    with phone("chromium", tmp_path_factory.mktemp("profile")) as held:
        yield held


@pytest.fixture
def held(browser: Phone, page: OpenPage) -> Phone:
    """A phone that has scanned the code."""
    browser.network()
    browser.hold(*USUAL)
    browser.open("about:blank")
    browser.said.clear()
    browser.open(page.server.url())
    browser.wait_to_read("Job J-101")
    return browser


def files(folder: Path, *contents: bytes) -> list[Path]:
    """Photos on the phone."""
    made = []
    for number, content in enumerate(contents):
        made.append(folder / f"IMG_{number} ü.jpg")
        made[-1].write_bytes(content)
    return made


def test_photos_are_taken_and_chosen_and_arrive_with_their_place(
    held: Phone, page: OpenPage, tmp_path: Path
) -> None:
    one, two, three = (encoded(noisy(300, 200, seed)) for seed in range(3))
    paths = files(tmp_path, one, two, three)
    held.choose("shoot", paths[0])
    held.wait_to_read("One photo is with the shop.")
    held.tap("side1")
    held.value("document.getElementById('view').value = '1'")
    held.choose("pick", *paths[1:])
    held.wait_to_read("3 photos are with the shop.")
    came = page.tray.waiting()
    assert [page.tray.read(each.name) for each in came] == [one, two, three]
    assert [each.place for each in came] == [
        f"{OFFER.key}.0.0",
        f"{OFFER.key}.1.1",
        f"{OFFER.key}.1.1",
    ]
    assert came[0].called == "IMG_0 ü.jpg"
    assert held.said == []  # nothing broke, and the page's policy held nothing of it back


def test_its_own_sums_are_right_at_every_length(
    held: Phone, page: OpenPage, tmp_path: Path
) -> None:
    photo = encoded(noisy(64, 64))
    lengths = [*range(2048 - 10, 2048 + 1), 2048 + 55, 2048 + 56, (1 << 20) - 1, (1 << 20) + 63]
    lengths += [2 << 20, (3 << 20) + 1]
    assert len(photo) < lengths[0]
    contents = [photo + os.urandom(length - len(photo)) for length in lengths]
    held.choose("pick", *files(tmp_path, *contents))
    held.wait_to_read(f"{len(lengths)} photos are with the shop.")
    assert page.photos() == contents


def test_on_slow_wifi_how_far_it_is_is_shown(held: Phone, page: OpenPage, tmp_path: Path) -> None:
    held.network(kilobytes_a_second=150)
    held.choose("shoot", *files(tmp_path, encoded(noisy(1600, 1200))))
    held.wait_for("document.querySelector('progress').value > 0.2")
    assert "% sent" in held.reads()
    assert page.came == []
    held.network()
    held.wait_to_read("One photo is with the shop.")


def test_lost_wifi_loses_and_doubles_nothing(held: Phone, page: OpenPage, tmp_path: Path) -> None:
    photos = [encoded(noisy(1200, 900, seed)) for seed in range(3)]
    held.network(kilobytes_a_second=200)
    held.choose("pick", *files(tmp_path, *photos))
    for _ in range(2):
        held.wait_for("document.querySelector('progress').value < 0.9")
        held.wait_to_read("% sent")
        held.network(there=False)
        held.wait_to_read("not sent yet")
        held.network(kilobytes_a_second=400)
    held.network()
    held.wait_to_read("3 photos are with the shop.")
    assert page.photos() == photos
    assert len(page.files()) == 3


def test_what_is_no_photo_is_named_with_its_reason(
    held: Phone, page: OpenPage, tmp_path: Path
) -> None:
    drawing = tmp_path / "drawing.jpg"
    drawing.write_text("<svg xmlns='http://www.w3.org/2000/svg'/>", encoding="utf-8")
    good = files(tmp_path, encoded(noisy(300, 200)))
    held.choose("pick", drawing, *good)
    held.wait_to_read("not taken. this is an SVG drawing")
    held.wait_to_read("One photo is with the shop.")
    assert len(page.tray.waiting()) == 1


def test_an_empty_photo_is_refused_at_once_and_holds_nothing_up(
    held: Phone, page: OpenPage, tmp_path: Path
) -> None:
    empty = tmp_path / "empty.jpg"
    empty.touch()
    held.choose("pick", empty, *files(tmp_path, encoded(noisy(300, 200))))
    held.wait_to_read("Photo 1, 0 MB: ✕ not taken. The photo is empty. Take it again.")
    held.wait_to_read("One photo is with the shop.")
    assert len(page.tray.waiting()) == 1


def test_a_photo_that_the_window_refused_is_taken_off_the_count(
    held: Phone, page: OpenPage, tmp_path: Path
) -> None:
    held.choose("shoot", *files(tmp_path, encoded(noisy(300, 200))))
    held.wait_to_read("One photo is with the shop.")
    page.session.refuse(page.came[0].partition(".")[0], "IMG_0.jpg: it breaks off.")
    held.wait_to_read("✕ not taken. IMG_0.jpg: it breaks off.")
    assert "is with the shop" not in held.reads()


def test_another_part_in_the_window_is_shown(held: Phone, page: OpenPage) -> None:
    page.session.offer(None)
    held.wait_to_read("No part is chosen")
    assert held.value("document.getElementById('where').hidden") is True
    page.session.offer(OFFER)
    held.wait_to_read("brake pads front left")


def test_an_old_code_says_so_and_what_was_not_sent_can_be_kept_or_sent_by_the_new_one(
    held: Phone, page: OpenPage, tmp_path: Path
) -> None:
    photo = encoded(noisy(1200, 900))
    held.network(there=False)
    held.choose("shoot", *files(tmp_path, photo))
    held.wait_to_read("not sent yet")
    page.session.key = "f" * 32
    held.network()
    held.wait_to_read("This code is no longer good")
    assert "Keep photo 1 on this phone" in held.reads()
    held.value(f"location.hash = '{'f' * 32}'")  # the new code, opened in the same tab
    held.wait_to_read("One photo is with the shop.")
    assert page.photos() == [photo]


def test_behind_a_lock_the_page_says_so_and_works(browser: Phone, tmp_path: Path) -> None:
    shop = tmp_path / "shop"
    shop.mkdir()
    photo = encoded(noisy(300, 200))
    browser.network()
    browser.hold(*USUAL)
    browser.go_on_past_warnings(True)
    with open_page(shop, lock_for(shop, "127.0.0.1", datetime.now(UTC))) as page:
        browser.open("about:blank")
        browser.open(page.server.url())
        browser.wait_to_read("Job J-101")
        assert "Photos travel locked." in browser.reads()
        assert "not locked" not in browser.reads()
        browser.choose("shoot", *files(tmp_path, photo))
        browser.wait_to_read("One photo is with the shop.")
        assert page.photos() == [photo]
    browser.go_on_past_warnings(False)


@pytest.mark.parametrize("dark", [True, False], ids=["dark", "light"])
@pytest.mark.parametrize("size", [SMALL, USUAL], ids=["small", "usual"])
def test_a_thumb_reaches_what_it_needs(
    held: Phone, size: tuple[int, int], dark: bool, tmp_path: Path
) -> None:
    held.hold(*size, dark=dark)
    held.wait_for(f"innerWidth === {size[0]}")
    assert held.value("document.documentElement.scrollWidth <= innerWidth")
    for press in ("label[for=shoot]", "label[for=pick]", "#side0", "#side1", "#view"):
        top, height, bottom = held.value(
            f"(function(b) {{ return [b.top, b.height, b.bottom]; }})"
            f"(document.querySelector('{press}').getBoundingClientRect())"
        )
        assert height >= 48, press  # CSS pixels: a thumb in a glove
        assert top >= 0
        assert bottom <= size[1]
    lowest = held.value("document.querySelector('label[for=shoot]').getBoundingClientRect().top")
    assert lowest > size[1] / 2  # where a thumb is
    ground = held.value("getComputedStyle(document.body).backgroundColor")
    assert (ground == "rgb(25, 29, 33)") is dark
    assert "user-scalable" not in held.value(
        "document.querySelector('meta[name=viewport]').content"
    )
    held.picture(tmp_path / "page.png")


def test_nothing_of_the_page_comes_from_elsewhere(held: Phone, page: OpenPage) -> None:
    asked = held.value("performance.getEntriesByType('resource').map(function(e) {return e.name})")
    assert asked
    assert {name.split("/#")[0] for name in asked} == {f"http://{page.server.here}/place"}
    held.value("fetch('http://127.0.0.1:9/').catch(function() {}) && 0")
    until(
        lambda: any("Content Security Policy" in said for said in _heard(held)), lambda: "let out"
    )


def _heard(held: Phone) -> list[str]:
    held.reads()
    return held.said
