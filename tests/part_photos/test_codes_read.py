"""Barcodes are read in photos as phones take them; what hides or breaks them costs the offer."""

from __future__ import annotations

import os
from collections.abc import Iterator

import pytest
from PIL import Image
from reportlab.graphics.barcode.code128 import Code128
from zxingcpp import BarcodeFormat as Form

from desktop_app.part_photos.codes.code_meaning import meanings_of
from desktop_app.part_photos.codes.seen_code import SeenCode
from desktop_app.part_photos.photo_trouble import Unfit
from desktop_app.part_photos.read_apart.photo_reader import PhotoReader
from tests.faults.hostile_pictures.brittle_reading import CHATTERS, CRASHES, KILLED
from tests.faults.test_backup_faults import ROOT
from tests.part_photos.bench_pictures import ENDINGS, encoded, exif, noisy
from tests.part_photos.code_scenes import VIN, bars, label, photo_of

EAN, PART = "4006381333931", "4711-22 B"
EACH = [
    *((PART, Form.Code39), (PART, Form.Code93), (PART, Form.Code128)),
    *((EAN, Form.EAN13), ("96385074", Form.EAN8), ("00012345600012", Form.ITF14)),
    *((VIN, Form.DataMatrix), (VIN, Form.QRCode), (VIN, Form.PDF417), (VIN, Form.Aztec)),
]


@pytest.fixture(scope="module")
def reader() -> Iterator[PhotoReader]:
    """The process that reads, one for all."""
    reader = PhotoReader()
    yield reader
    reader.end()


def texts(reader: PhotoReader, photo: Image.Image, kind: str = "JPEG") -> list[str]:
    return [code.text for code in reader.codes(encoded(photo, kind), ENDINGS[kind])]


@pytest.mark.parametrize(("text", "form"), EACH, ids=lambda one: str(one))
def test_each_sort_of_label_is_read(reader: PhotoReader, text: str, form: Form) -> None:
    assert texts(reader, photo_of(label(bars(text, form)), across=800)) == [text]


def test_a_upc_is_read_as_its_article(reader: PhotoReader) -> None:
    content = encoded(photo_of(label(bars("036000291452", Form.UPCA))))
    [seen] = meanings_of(reader.codes(content, "image/jpeg"))
    assert (seen.what, seen.value) == ("article number", "036000291452")


@pytest.mark.parametrize("turn", [0, 25, 60, 90, 118, 180, 270, 331])
@pytest.mark.parametrize(("text", "form"), [(PART, Form.Code128), (EAN, Form.EAN13)])
def test_however_the_phone_is_held(reader: PhotoReader, text: str, form: Form, turn: float) -> None:
    assert texts(reader, photo_of(label(bars(text, form)), turn=turn)) == [text]


@pytest.mark.parametrize("turn", [0, 33, 90])
@pytest.mark.parametrize("tilt", [-25, 20])
def test_a_vin_label_is_read_askew(reader: PhotoReader, turn: float, tilt: float) -> None:
    photo = photo_of(label(bars("I" + VIN, Form.Code39)), across=1150, turn=turn, tilt=tilt)
    content = encoded(photo)
    [seen] = meanings_of(reader.codes(content, "image/jpeg"))
    assert (seen.what, seen.value, seen.sure) == ("VIN", VIN, True)


@pytest.mark.parametrize("kind", ENDINGS)
def test_every_kind_of_photo_and_the_camera_s_turn(reader: PhotoReader, kind: str) -> None:
    photo = photo_of(label(bars(VIN, Form.DataMatrix)), across=400, tilt=30, blur=2.0)
    content = encoded(photo, kind, exif(6))
    assert [code.text for code in reader.codes(content, ENDINGS[kind])] == [VIN]


def test_small_bars_in_a_large_photo_show_only_there(reader: PhotoReader) -> None:
    large = Image.new("RGB", (4000, 3000), (90, 90, 90))
    large.paste(photo_of(label(bars(PART, Form.Code128)), across=420), (1000, 900))
    assert texts(reader, large) == [PART]


def test_all_codes_of_a_label_are_read(reader: PhotoReader) -> None:
    printed = label(bars(EAN, Form.EAN13), bars(PART, Form.Code128), bars(VIN, Form.DataMatrix))
    assert sorted(texts(reader, photo_of(printed))) == [VIN, EAN, PART]


def test_a_label_of_the_trade_shows_its_article_and_the_part_s_number(reader: PhotoReader) -> None:
    """GS1-128: FNC1 first, then (01) and (241), in bars that another library draws."""
    said = Code128("\xf1" + "01" + "0" + EAN + "241" + "99-AB")
    for step in (said.validate, said.encode, said.decompose):
        step()
    strokes = [
        (stroke.isupper(), 8 * (" abcd".index(stroke.lower()))) for stroke in said.decomposed
    ]
    printed = Image.new("L", (sum(wide for _, wide in strokes), 200))
    at = 0
    for is_bar, wide in strokes:
        printed.paste(0 if is_bar else 255, (at, 0, at + wide, 200))
        at += wide
    quiet = Image.new("L", (printed.width + 200, 240), 255)
    quiet.paste(printed, (100, 20))
    seen = meanings_of(reader.codes(encoded(photo_of(quiet, across=1300)), "image/jpeg"))
    assert [(one.what, one.value) for one in seen] == [
        ("article number", EAN),
        ("part number", "99-AB"),
    ]


@pytest.mark.parametrize("seed", range(3))
def test_where_there_is_no_code_none_is_made_up(reader: PhotoReader, seed: int) -> None:
    assert texts(reader, noisy(1200, 900, seed)) == []


def test_bars_that_are_out_of_focus_say_nothing(reader: PhotoReader) -> None:
    assert texts(reader, photo_of(label(bars(PART, Form.Code39)), across=500, blur=9.0)) == []


@pytest.mark.parametrize("content", [b"", b"\xff\xd8\xff no photo", encoded(noisy(90, 60))[:300]])
def test_a_broken_picture_is_unfit_and_the_next_is_read(
    reader: PhotoReader, content: bytes
) -> None:
    with pytest.raises(Unfit):
        reader.codes(content, "image/jpeg")
    assert texts(reader, photo_of(label(bars(EAN, Form.EAN13)))) == [EAN]


@pytest.mark.skipif(os.name == "nt", reason="signals are of another kind there")
@pytest.mark.parametrize("ends", [CRASHES, KILLED])
def test_a_picture_that_breaks_the_reader_costs_its_offer_alone(
    monkeypatch: pytest.MonkeyPatch, ends: bytes
) -> None:
    monkeypatch.setenv("PYTHONPATH", str(ROOT))
    brittle = PhotoReader("tests.faults.hostile_pictures.brittle_reading")
    photo = encoded(photo_of(label(bars(EAN, Form.EAN13))))
    with pytest.raises(Unfit, match="the reader broke over it"):
        brittle.codes(photo + ends, "image/jpeg")
    assert brittle.codes(photo + CHATTERS, "image/jpeg") == (SeenCode("EAN-13", EAN),)
    brittle.end()
