"""What the text of a barcode may be: told by rules alone."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.codes.article_number import is_article_number
from desktop_app.part_photos.codes.code_meaning import CodeMeaning, meanings_of
from desktop_app.part_photos.codes.seen_code import (
    MOST_CODES,
    MOST_LETTERS,
    SeenCode,
    listed,
    read_back,
)
from desktop_app.part_photos.codes.vin_words import vin_offer_words
from desktop_app.repair_jobs.vin import expected_check_digit
from tests.part_photos.code_scenes import VIN

ALPHABET = "ABCDEFGHJKLMNPRSTUVWXYZ0123456789"
OTHER_MARKET = "WXX" + "ZZZ99ZTS392124"  # 17, and its ninth character is no check digit
FORMS = ["Code 39", "Code 128", "EAN-13", "UPC-E", "ITF", "Data Matrix", "QR Code", "?"]


def said(form: str, text: str) -> list[tuple[str, str]]:
    return [(one.what, one.value) for one in meanings_of([SeenCode(form, text)])]


@pytest.mark.parametrize(
    ("form", "text", "meant"),
    [
        ("Code 39", VIN, [("VIN", VIN)]),
        ("Code 39", "I" + VIN, [("VIN", VIN)]),
        ("Code 39", f"*I{VIN}*", [("VIN", VIN)]),
        ("QR Code", f"VIN:{VIN};MY:1989", [("VIN", VIN)]),
        ("Data Matrix", f"[)>\x1e06\x1dI{VIN}\x1e\x04", [("VIN", VIN)]),
        ("Code 128", OTHER_MARKET, [("VIN", OTHER_MARKET), ("part number", OTHER_MARKET)]),
        ("Code 128", "ABCDEFGHJKLMNPRST", []),  # 17 letters; a VIN ends with digits
        ("Code 128", "12345678901234567", [("part number", "12345678901234567")]),
        ("EAN-13", "4006381333931", [("article number", "4006381333931")]),
        ("EAN-13", "4006381333932", []),  # misread
        ("EAN-13", "0036000291452", [("article number", "036000291452")]),
        ("UPC-E", "0012345000065", [("article number", "012345000065")]),
        ("EAN-8", "96385074", [("article number", "96385074")]),
        ("ITF", "10614141000415", [("article number", "10614141000415")]),
        ("Code 128", "(01)04006381333931(10)LOT7", [("article number", "4006381333931")]),
        (
            "Data Matrix",
            "(01)04006381333931(241)99-AB(21)7",
            [("article number", "4006381333931"), ("part number", "99-AB")],
        ),
        (
            "Data Matrix",
            "[)>\x1e06\x1dP4711-22\x1d1PAB 12.7\x1dQ5\x1e\x04",
            [("part number", "4711-22"), ("part number", "AB 12.7")],
        ),
        ("Code 128", "4006381333931", [("part number", "4006381333931")]),
        ("Code 39", "0 221 503 027", [("part number", "0 221 503 027")]),
        ("QR Code", "https://parts.example/4711", []),
        ("QR Code", "two\nlines 2", []),
        ("Code 39", "Q12", []),  # too short: a quantity
        ("Code 39", "FRAGILE", []),
        ("Code 39", "", []),
    ],
)
def test_a_code_says(form: str, text: str, meant: list[tuple[str, str]]) -> None:
    assert said(form, text) == meant


def test_a_vin_with_another_check_digit_is_doubted_and_offered_all_the_same() -> None:
    [vin, _number] = meanings_of([SeenCode("Code 39", OTHER_MARKET)])
    assert not vin.sure
    words = vin_offer_words(vin, "door.jpg", "")
    assert words is not None
    assert words.startswith("The photo “door.jpg” shows the VIN WXX ZZZ99Z TS392124.")
    assert "on cars of many markets it is right all the same" in words


def test_what_the_vin_s_field_has_is_said_where_it_differs() -> None:
    seen = CodeMeaning("VIN", VIN)
    assert vin_offer_words(seen, "a.jpg", VIN.lower()) is None
    assert vin_offer_words(seen, "a.jpg", VIN.replace("0", "O")) is None  # read as a nought
    other = vin_offer_words(seen, "a.jpg", "WXX 1")
    assert other == "The photo “a.jpg” shows the VIN 1M8 GDM9AX KP042788. The field has WXX 1 now."
    assert vin_offer_words(CodeMeaning("part number", "4711"), "a.jpg", "") is None


@given(st.text(ALPHABET, min_size=17, max_size=17), st.booleans())
def test_each_vin_is_told_with_and_without_its_letter(body: str, lettered: bool) -> None:
    vin = "W" + body[1:8] + "0" + body[9:]
    vin = vin[:8] + expected_check_digit(vin) + vin[9:]
    assert said("Code 39", "I" * lettered + vin) == [("VIN", vin)]


@given(st.sampled_from(FORMS), st.text(max_size=60))
def test_any_text_is_told_and_nothing_else_than_it_says_is_offered(form: str, text: str) -> None:
    for one in meanings_of([SeenCode(form, text)]):
        assert one.value in text
        assert one.value.isprintable()
        assert 4 <= len(one.value) <= 40
        if one.what == "article number":
            assert is_article_number(one.value)


def test_a_code_that_is_seen_twice_counts_once() -> None:
    twice = [SeenCode("Code 39", "4711-22"), SeenCode("Code 128", "4711-22")]
    assert len(meanings_of(twice)) == 1


codes = st.builds(
    SeenCode, st.sampled_from(FORMS), st.text(st.characters(codec="utf-8"), min_size=1, max_size=50)
)


@given(st.lists(codes, max_size=MOST_CODES))
def test_codes_come_over_from_the_other_process(seen: list[SeenCode]) -> None:
    assert read_back(listed(seen)) == tuple(seen)


def test_what_is_beyond_any_label_is_left_out() -> None:
    long = SeenCode("QR Code", "9" * (MOST_LETTERS + 1))
    assert read_back(listed([long, SeenCode("Code 39", "4711")])) == (SeenCode("Code 39", "4711"),)
    many = [SeenCode("Code 39", f"47{n:02}") for n in range(MOST_CODES + 5)]
    assert read_back(listed(many)) == tuple(many[:MOST_CODES])


@pytest.mark.parametrize(
    "lies",
    [
        *(b"", b"{}", b"[1]", b'[["Code 39"]]', b'[["Code 39", 5]]', b'[[1, "a"]]', b"\xff"),
        *(b"[" * 100_000, b'[["a", "' + b"b" * 500 + b'"]]', b'[["a", "b"]' + b', ["a", "b"]' * 20),
    ],
)
def test_a_process_that_a_picture_turned_is_not_believed(lies: bytes) -> None:
    assert read_back(lies) is None
