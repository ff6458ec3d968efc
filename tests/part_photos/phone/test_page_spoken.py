"""The page speaks the language of the window, whatever signs its words have."""

from __future__ import annotations

import base64
import hashlib
import json
import os
import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from desktop_app.language import speak
from desktop_app.part_photos.phone.page_words import page_words
from tests.part_photos.bench_pictures import encoded, noisy
from tests.part_photos.phone.chromium import Phone, phone
from tests.part_photos.phone.open_page import OFFER, OpenPage, open_page

SIGN = "§"
HOSTILE = "</script><script>alert(1)</script>&amp;\"'\\\u2028{x}"
Speaks = Callable[..., None]


@pytest.fixture
def spoken() -> Iterator[Speaks]:
    """Let the window speak another language for one test."""
    yield speak
    speak(str)


def sent(page: OpenPage) -> tuple[str, str]:
    """The page as a browser is given it, and its policy."""
    line = page.line()
    line.request("GET", "/", headers={"Host": page.server.here})
    answer = line.getresponse()
    content = answer.read().decode("utf-8")
    line.close()
    return content, answer.headers["Content-Security-Policy"]


def test_all_that_is_read_comes_from_the_windows_words(spoken: Speaks, tmp_path: Path) -> None:
    spoken(lambda text: SIGN + text, "xx")
    with open_page(tmp_path / "shop") as page:
        content, _ = sent(page)
    assert '<html lang="xx">' in content
    assert "{{" not in content
    body = content[content.index("<body>") : content.index("<script>")]
    shown = [words.strip() for words in re.findall(r">([^<]*[a-z][^<]*)<", body)]
    shown += re.findall(r'aria-label="([^"]*)"', body)
    assert len(shown) == 10
    assert all(words.startswith(SIGN) for words in shown), shown


def test_words_with_any_signs_end_no_script_and_stay_what_they_are(
    spoken: Speaks, tmp_path: Path
) -> None:
    spoken(lambda text: text + HOSTILE)
    with open_page(tmp_path / "shop") as page:
        content, policy = sent(page)
    assert content.lower().count("<script") == content.lower().count("</script") == 1
    (script,) = re.findall(r"<script>(.*?)</script>", content, re.DOTALL)
    (table,) = re.findall(r"var WORDS = (\{.*\});", script)
    assert json.loads(table) == page_words()
    digest = base64.b64encode(hashlib.sha256(script.encode("utf-8")).digest()).decode("ascii")
    assert f"script-src 'sha256-{digest}'" in policy


@pytest.mark.needs_tool("chromium")
@pytest.mark.skipif(os.name == "nt", reason="the browser's pipe is one of Linux and macOS")
def test_the_phone_reads_another_language_from_the_first_photo_to_the_old_code(
    spoken: Speaks, tmp_path: Path
) -> None:
    spoken(lambda text: SIGN + text)
    photo, drawing = tmp_path / "photo.jpg", tmp_path / "drawing.jpg"
    photo.write_bytes(encoded(noisy(300, 200)))
    drawing.write_text("<svg xmlns='http://www.w3.org/2000/svg'/>", encoding="utf-8")

    def all_is_spoken(held: Phone) -> None:
        read = [line for line in held.reads().splitlines() if re.search("[a-z]", line)]
        assert read
        assert [line for line in read if SIGN not in line and line != OFFER.part] == []
        assert "{" not in held.reads()

    with phone("chromium", tmp_path / "profile") as held, open_page(tmp_path / "shop") as page:
        held.hold(412, 915)
        held.open(page.server.url())
        held.wait_to_read("§Job J-101")
        held.choose("pick", drawing, photo)
        held.wait_to_read("not taken. §this is §an SVG drawing")
        held.wait_to_read("✓ One photo is with the shop.")
        all_is_spoken(held)
        held.tap("side1")
        held.wait_to_read("§of the replacement, §face")
        page.session.offer(None)
        held.wait_to_read("§No part is chosen")
        all_is_spoken(held)
        held.network(there=False)
        held.choose("shoot", photo)
        held.wait_to_read("§not sent yet.")
        page.session.key = "f" * 32
        held.network()
        held.wait_to_read("§Keep photo 3 on this phone")
        all_is_spoken(held)
        assert [said for said in held.said if "Security Policy" in said] == []
