"""The gate for photos: what comes in upright and dated, and what is refused by name."""

from __future__ import annotations

import hashlib
import struct
import zlib
from collections.abc import Callable
from io import BytesIO

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.capture_time import iso_moment
from desktop_app.part_photos.claimed_size import claimed_size
from desktop_app.part_photos.intake import look_at
from desktop_app.part_photos.photo_limits import LONGEST_SIDE, MOST_BYTES
from desktop_app.part_photos.photo_trouble import PhotoTrouble, shown_name
from desktop_app.part_photos.picture_kind import picture_kind
from desktop_app.part_photos.read_apart import photo_reader
from desktop_app.part_photos.upright_picture import open_picture, upright_rgb
from tests.part_photos.bench_pictures import ENDINGS, encoded, exif, noisy, picture

PNG_START = b"\x89PNG\r\n\x1a\n"


@pytest.mark.parametrize("kind", ENDINGS)
def test_each_accepted_kind_is_told_by_its_bytes(kind: str) -> None:
    content = encoded(picture(), kind)
    taken = look_at("phone/rotor.dat", content)
    assert (taken.media_type, taken.width, taken.height) == (ENDINGS[kind], 64, 48)
    assert (taken.name, taken.size_bytes) == ("rotor.dat", len(content))
    assert taken.sha256 == hashlib.sha256(content).hexdigest()
    assert taken.taken_at is None


@pytest.mark.parametrize("kind", ENDINGS)
@pytest.mark.parametrize("orientation", range(1, 9))
def test_a_photo_held_sideways_is_measured_upright(kind: str, orientation: int) -> None:
    taken = look_at("cap.jpg", encoded(picture(), kind, exif(orientation)))
    assert (taken.width, taken.height) == ((48, 64) if orientation >= 5 else (64, 48))


@pytest.mark.parametrize("kind", ENDINGS)
def test_the_camera_s_time_is_kept(kind: str) -> None:
    notes = exif(1, "2026:11:13 16:40:05", "+01:00")
    assert look_at("cap", encoded(picture(), kind, notes)).taken_at == "2026-11-13T16:40:05+01:00"


@pytest.mark.parametrize(
    ("moment", "offset", "iso"),
    [
        ("2026:11:13 16:40:05", None, "2026-11-13T16:40:05"),
        ("2026:11:13 16:40:05\x00", "-05:30", "2026-11-13T16:40:05-05:30"),
        ("2026:11:13 16:40:05", "   :  ", "2026-11-13T16:40:05"),
        ("2026:11:13 16:40:05", "+99:00", "2026-11-13T16:40:05"),
        ("0000:00:00 00:00:00", None, None),
        ("2026:02:30 10:00:00", None, None),
        ("    :  :     :  :  ", None, None),
        (None, None, None),
        ("yesterday", "+01:00", None),
    ],
)
def test_a_camera_without_a_clock_gives_no_time(
    moment: object, offset: object, iso: str | None
) -> None:
    assert iso_moment(moment, offset) == iso


@pytest.mark.parametrize(
    ("content", "reason"),
    [
        (b"", "empty"),
        (b"<svg xmlns='http://www.w3.org/2000/svg'/>", "an SVG drawing"),
        (b"\xef\xbb\xbf<?xml version='1.0'?><svg/>", "an SVG drawing"),
        (b"%!PS-Adobe-3.0 EPSF-3.0", "a PostScript drawing"),
        (b"%PDF-1.7", "a PDF document"),
        (b"GIF89a\xff\xff\xff\xff", "a GIF"),
        (b"II*\x00\x08\x00\x00\x00", "a TIFF"),
        (b"\x00\x00\x00\x1cftypavif\x00\x00\x00\x00avifmif1miaf", "of another kind"),
        (b"\x00\x00\x00\x18ftypmp42\x00\x00\x00\x00mp42isom", "of another kind"),
        (b"<!DOCTYPE html><html>", "a web page"),
        (b"gap 0.8 mm", "not a photo"),
        (b"\xff\xd8\xff\xe0 and then nothing", "damaged"),
        (b"\x00\x00\x00\x1cftypheic\x00\x00\x00\x00mif1heicmiaf", "damaged"),
        (b"RIFF\x20\x00\x00\x00WEBPVP8 ", "damaged"),
    ],
)
def test_what_is_no_photo_is_refused_by_name(content: bytes, reason: str) -> None:
    with pytest.raises(PhotoTrouble, match=r"^old cap\.jpg: ") as refused:
        look_at("old cap.jpg", content)
    assert reason in refused.value.sentence()


@pytest.mark.parametrize("kind", ENDINGS)
@pytest.mark.parametrize("part", [0.3, 0.5, 0.9, 0.99])
def test_a_photo_whose_end_is_missing_is_refused(kind: str, part: float) -> None:
    content = encoded(noisy(200, 150), kind)
    with pytest.raises(PhotoTrouble, match="damaged or incomplete"):
        look_at("half.jpg", content[: int(len(content) * part)])


@pytest.mark.parametrize("kind", ENDINGS)
@pytest.mark.parametrize("lossless", [False, True])
def test_the_size_that_a_header_claims_is_the_pictures_own(kind: str, lossless: bool) -> None:
    file = BytesIO()
    encoded(picture(), kind)  # makes the HEIC writer known
    picture(130, 70).save(file, kind, lossless=lossless)
    assert claimed_size(file.getvalue(), ENDINGS[kind]) == (130, 70)
    assert claimed_size(file.getvalue()[:20], ENDINGS[kind]) is None


def test_a_header_of_no_known_frame_claims_no_size() -> None:
    file = BytesIO()
    picture(130, 70).save(file, "WEBP")
    unknown = file.getvalue().replace(b"VP8 ", b"VP9?", 1)  # RFC 9649 knows no such chunk
    assert claimed_size(unknown, ENDINGS["WEBP"]) is None


def test_a_file_that_is_too_big_is_refused_before_it_is_decoded() -> None:
    with pytest.raises(PhotoTrouble, match="more than 40 MB"):
        look_at("big.jpg", encoded(picture()) + bytes(MOST_BYTES))


def chunk(name: bytes, body: bytes) -> bytes:
    """One chunk of a PNG."""
    return struct.pack(">I", len(body)) + name + body + struct.pack(">I", zlib.crc32(name + body))


def segment(marker: int, body: bytes) -> bytes:
    """One segment of a JPEG."""
    return bytes([0xFF, marker]) + (len(body) + 2).to_bytes(2, "big") + body


def claimed_png(width: int, height: int) -> bytes:
    """A PNG whose header promises so many pixels."""
    head = struct.pack(">IIBBBBB", width, height, 1, 0, 0, 0, 0)
    rows = zlib.compress(bytes(1000))
    return PNG_START + chunk(b"IHDR", head) + chunk(b"IDAT", rows) + chunk(b"IEND", b"")


@pytest.fixture
def no_reader(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whoever asks for a photo to be decoded fails."""
    monkeypatch.setattr(photo_reader, "READER", None)


@pytest.mark.parametrize(
    ("width", "height"),
    [(LONGEST_SIDE + 1, 1), (1, LONGEST_SIDE + 1), (10_001, 10_000), (65_000, 65_000)],
)
@pytest.mark.usefixtures("no_reader")
def test_a_picture_that_would_fill_the_memory_is_refused_before_it_is_decoded(
    width: int, height: int
) -> None:
    said = (
        rf"bomb\.png: it is {width:,} × {height:,} pixels; a photo may have at most 20,000 a side "
        r"and 100 million in all\. Send a smaller one\."
    )
    with pytest.raises(PhotoTrouble, match=said):
        look_at("bomb.png", claimed_png(width, height))


def many_segments() -> bytes:
    """A JPEG of 5 MB in which the camera's notes come in 500,000 crumbs."""
    whole = encoded(picture())
    return whole[:2] + segment(0xE1, b"Exif\x00\x00X") * 500_000 + whole[2:]


def many_scans() -> bytes:
    """A progressive JPEG whose last scan comes three hundred times."""
    file = BytesIO()
    picture(600, 400).save(file, "JPEG", progressive=True)
    whole = file.getvalue()
    last = whole[whole.rindex(b"\xff\xc4") : -2]
    return whole[:-2] + last * 300 + whole[-2:]


def many_chunks() -> bytes:
    """A PNG with a million empty chunks before its pixels."""
    whole = encoded(picture(), "PNG")
    return whole[:33] + chunk(b"abCd", b"") * 1_000_000 + whole[33:]


@pytest.mark.parametrize("crumbs", [many_segments, many_scans, many_chunks])
@pytest.mark.usefixtures("no_reader")
def test_a_file_cut_into_crumbs_is_refused_before_it_is_decoded(
    crumbs: Callable[[], bytes],
) -> None:
    content = crumbs()
    with pytest.raises(PhotoTrouble, match="far more pieces than a camera writes"):
        look_at("crumbs", content)


def test_large_notes_and_a_progressive_photo_are_taken() -> None:
    file = BytesIO()
    noisy(300, 200).save(file, "JPEG", progressive=True, optimize=True)
    whole = file.getvalue()
    notes = segment(0xE1, b"http://ns.adobe.com/xmp/extension/\x00" + bytes(65_000)) * 250
    taken = look_at("depth.jpg", whole[:2] + notes + whole[2:])
    assert (taken.width, taken.height) == (300, 200)


@pytest.mark.parametrize(
    "packed", [b"zTXtk\x00\x00", b"iCCPk\x00\x00", b"iTXtk\x00\x01\x00\x00\x00"]
)
def test_words_that_unpack_to_gigabytes_are_refused(packed: bytes) -> None:
    whole = encoded(picture(), "PNG")
    body = packed[4:] + zlib.compress(bytes(80_000_000))
    content = whole[:33] + chunk(packed[:4], body) + whole[33:]
    with pytest.raises(PhotoTrouble, match="damaged"):
        look_at("bomb.png", content)


@pytest.mark.parametrize("behind", [b"PK\x03\x04" + bytes(500), b"<script>go()</script>"])
def test_bytes_behind_the_picture_change_nothing(behind: bytes) -> None:
    content = encoded(picture(), "JPEG") + behind
    taken = look_at("two in one.jpg", content)
    assert (taken.media_type, taken.size_bytes) == ("image/jpeg", len(content))


@pytest.mark.parametrize("kind", ["PNG", "WEBP", "HEIF"])
@pytest.mark.parametrize("frames", [2, 40])
def test_of_an_animation_the_first_picture_counts(kind: str, frames: int) -> None:
    encoded(picture(), kind)  # makes the HEIC writer known
    first, *rest = [picture(shade=4 * n) for n in range(frames)]
    file = BytesIO()
    first.save(file, kind, save_all=True, append_images=rest)
    taken = look_at("turning", file.getvalue())
    upright = upright_rgb(open_picture(file.getvalue(), taken.media_type))
    assert (taken.width, taken.height) == (64, 48)
    assert max(upright.getpixel((60, 40))) < 3  # the first one is black there


def test_a_damaged_note_of_the_camera_spoils_no_photo() -> None:
    content = encoded(picture(), "JPEG", exif(6, "2026:11:13 16:40:05"))
    start = content.index(b"Exif\x00\x00") + 6
    spoiled = content[:start] + b"\xff" * 12 + content[start + 12 :]
    taken = look_at("cap.jpg", spoiled)
    assert (taken.width, taken.height, taken.taken_at) == (64, 48, None)


@given(data=st.data(), kind=st.sampled_from(sorted(ENDINGS)))
def test_damaged_bytes_are_taken_or_refused_but_never_a_mistake(
    data: st.DataObject, kind: str
) -> None:
    content = bytearray(encoded(picture(24, 16), kind, exif(6, "2026:11:13 16:40:05")))
    places = st.tuples(st.integers(0, len(content) - 1), st.integers(0, 255))
    for at, value in data.draw(st.lists(places, min_size=1, max_size=12)):
        content[at] = value
    try:
        taken = look_at("cap", bytes(content))
    except PhotoTrouble as refused:
        said = refused.sentence()
    else:
        said = f"cap: {taken.width} × {taken.height}"
    assert said.startswith("cap: ")


@given(st.binary(max_size=64))
def test_the_kind_is_told_for_any_bytes(content: bytes) -> None:
    kind = picture_kind(content)
    assert kind is None or kind in ENDINGS.values()


@pytest.mark.parametrize(
    ("given_name", "shown"),
    [
        ("C:\\phone\\IMG 1.jpg", "IMG 1.jpg"),
        ("../../etc/cap.png", "cap.png"),
        ("line\nbreak\x1b[2J.jpg", "line\ufffdbreak\ufffd[2J.jpg"),
        ("", "photo"),
        ("x" * 500, "x" * 200),
    ],
)
def test_a_name_is_one_plain_line(given_name: str, shown: str) -> None:
    assert shown_name(given_name) == shown
