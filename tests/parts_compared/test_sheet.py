"""The comparison sheet: what stands on it, and that nothing a person typed can break it."""

from __future__ import annotations

import re
import subprocess
from dataclasses import replace
from datetime import date
from io import BytesIO
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.kind_actions import keep_own_kind
from desktop_app.parts_compared.reading import SIDES
from desktop_app.parts_compared.sheet import sheet_bytes, write_sheet
from desktop_app.parts_compared.sheet_facts import SheetFacts
from desktop_app.parts_compared.sheet_units import instrument_words
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.repair_jobs.actions import write_concern
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.from_outside import GONE, lose_photo
from tests.part_photos.bench_pictures import encoded, picture
from tests.parts_compared.sheet_story import (
    SIDE,
    TOP,
    UNDERSIDE,
    RotorStory,
    a_job,
    a_rotor,
    jpegs_in,
    kinds,
    page_count,
    phone_photo,
    put_photo,
    saved,
    words_in,
)


@pytest.fixture
def rotor(shop: ShopRecord) -> RotorStory:
    """The rotor of J-104, measured, without photos."""
    return a_rotor(shop)


def ran(*order: str | Path) -> str:
    """What a program printed."""
    return subprocess.run(order, capture_output=True, text=True, check=True).stdout


def test_the_sheet_says_who_what_and_why(rotor: RotorStory) -> None:
    words = words_in(rotor.pdf())
    for said in (
        "Tin Heron Garage",
        "job J-104",
        "1.8-litre compact hatchback, 1990s",
        "TIN 04",
        "042788",
        "12 November 2026",
        "“Stumbles when it's damp, worst pulling up the hill.”",
        "Cause: Rotor tip burned back.",
        "Correction: Rotor replaced.",
        "Distributor rotor",
        "number on the box RT-2207; number on the part RT-2207 B",
        "Note on the removed part: Tip face pitted on the leading edge.",
        "The old part shows burned tip",
        "Reached: road (2 of 4)",
        "Not said whether tried: damp.",
        "Plug wires, nine years old",
        "The vehicle maker's procedures, local rules and licensed practice come before",
        "page 1 of",
    ):
        assert said in words, said


def test_values_stand_with_their_uncertainty_and_the_verdict_with_its_sign(
    rotor: RotorStory,
) -> None:
    words = words_in(rotor.pdf())
    assert "33.42 ± 0.04 33.97 ± 0.04 +0.55 ± 0.02 +0.1 to +1.5 ↥ restored" in words
    assert "expanded uncertainty at 95 % coverage" in words
    assert "▣" in words
    assert "fits" in words
    assert "calliper (reads to 0.01 mm, permitted error ± 0.03 mm, usual figures)" in words


def test_a_turned_tip_says_stop_and_look_and_where(rotor: RotorStory) -> None:
    rotor.read("tip-angle", replacement="41; 41; 41")
    words = words_in(rotor.pdf())
    assert "stop and look" in words
    assert "Speaks against it" in words
    assert "the new one is turned by 6.0° (± 1.1); 2° is allowed" in words


def test_an_explained_difference_names_by_whom(rotor: RotorStory) -> None:
    rotor.read("bore", replacement="14.50")
    why = "a sleeve lies in the box"
    actions.explain_difference(rotor.record, rotor.pair, "bore", why, "Counter Nine Parts")
    words = words_in(rotor.pdf())
    assert "Different, and explained" in words
    assert "Explained by Counter Nine Parts: a sleeve lies in the box." in words


def test_what_was_not_measured_is_told_with_what_to_do(shop: ShopRecord) -> None:
    job = a_job(shop, left_at=None)
    pair = actions.lay_side_by_side(shop, job, "distributor-rotor").made
    assert pair is not None
    words = words_in(RotorStory(shop, job, pair).pdf())
    assert "not enough measured" in words
    assert "Measure bore diameter on both parts (pin gauge)." in words
    assert "No photos were put to these parts." in words


def test_inches_are_told_in_inches_and_decided_alike(rotor: RotorStory) -> None:
    before = read_sheet(rotor.record, rotor.job, kinds()).pairs[0].compared
    change_rule(rotor.record, "length_unit", "inch")
    sheet = read_sheet(rotor.record, rotor.job, kinds())
    told = sheet.pairs[0].compared
    assert before is not None
    assert told is not None
    assert [one.verdict for one in told.dimensions] == [one.verdict for one in before.dimensions]
    words = words_in(sheet_bytes(sheet))
    assert "1.3157 ± 0.0014 1.3374 ± 0.0014 +0.0217 ± 0.0008" in words
    judged = re.sub("Single readings: .*? Seen", "", words)  # those stand as they were read
    assert " mm" not in judged


@pytest.mark.parametrize(("paper", "width"), [("A4", 595.28), ("Letter", 612.0)])
def test_the_paper_is_the_house_rule(rotor: RotorStory, paper: str, width: float) -> None:
    from io import BytesIO

    from pypdf import PdfReader

    change_rule(rotor.record, "paper", paper)
    page = PdfReader(BytesIO(rotor.pdf())).pages[0]
    assert float(page.mediabox.width) == pytest.approx(width, abs=0.01)


def test_a_job_without_parts_gives_a_sheet(shop: ShopRecord) -> None:
    job = a_job(shop, cause_found=0, cause="", correction="", proof_level=None, declined=None)
    pdf = sheet_bytes(read_sheet(shop, job, kinds()))
    words = words_in(pdf)
    assert "Cause: Not caught." in words
    assert "How far this repair is proved has not been said yet." in words
    assert page_count(pdf) == 1


def test_a_part_kind_that_is_gone_is_shown_as_typed(rotor: RotorStory) -> None:
    pdf = sheet_bytes(read_sheet(rotor.record, rotor.job, {}))
    words = words_in(pdf)
    assert "not on the shelf" in words
    assert "33.41; 33.43; 33.42" in words


def test_the_foot_names_the_end_of_the_history(rotor: RotorStory) -> None:
    sheet = read_sheet(rotor.record, rotor.job, kinds())
    words = words_in(sheet_bytes(sheet))
    assert f"history {sheet.history_seq}, {sheet.history_hash[:16]}" in words
    assert "made 16 November 2026, 12:00" in words
    rotor.read("tip-width", "8.1")
    later = read_sheet(rotor.record, rotor.job, kinds())
    assert (later.history_seq, later.anchor) != (sheet.history_seq, sheet.anchor)


def test_the_same_facts_give_the_same_bytes(rotor: RotorStory) -> None:
    rotor.photograph(TOP, phone_photo(1), phone_photo(2))
    assert rotor.pdf() == rotor.pdf()


def test_photos_stand_side_by_side_upright_and_without_the_cameras_notes(
    rotor: RotorStory,
) -> None:
    rotor.photograph(TOP, phone_photo(1, orientation=6), phone_photo(2))
    pdf = rotor.pdf()
    removed, replacement = jpegs_in(pdf)
    assert removed.height > removed.width
    assert replacement.width > replacement.height
    assert max(*removed.size, *replacement.size) < 1000
    assert not removed.getexif()
    assert b"Exif" not in pdf
    words = words_in(pdf)
    assert "◆ Removed part · top, key at twelve o'clock" in words
    assert "● Replacement · top, key at twelve o'clock" in words


def test_two_views_are_printed_and_those_with_both_parts_come_first(rotor: RotorStory) -> None:
    rotor.photograph(UNDERSIDE, phone_photo(1), None)
    rotor.photograph(SIDE, phone_photo(2), phone_photo(3))
    rotor.photograph(TOP, phone_photo(4), phone_photo(5))
    words = words_in(rotor.pdf())
    assert "top, key" in words
    assert "side, tip" in words
    assert "underside" not in words


def test_a_missing_side_and_a_lost_file_are_said_in_the_photos_place(rotor: RotorStory) -> None:
    lost = encoded(picture(640, 480))
    rotor.photograph(TOP, lost, None)
    sha256 = read_sheet(rotor.record, rotor.job, kinds()).pairs[0].pair.photos[0].sha256
    lose_photo(rotor.record, sha256)
    words = words_in(rotor.pdf())
    assert GONE.search(words)
    assert "No photo of this part in this view." in words


def test_one_picture_on_both_sides_is_told(rotor: RotorStory) -> None:
    content = encoded(picture(640, 480))
    rotor.photograph(TOP, content, None)
    photo = read_sheet(rotor.record, rotor.job, kinds()).pairs[0].pair.photos[0].photo_id
    actions.show_in_pair(rotor.record, rotor.pair, [photo], "replacement", TOP)
    assert "These are the same picture" in words_in(rotor.pdf())


@pytest.mark.needs_tool("pdfimages", "pdffonts")
def test_photos_are_fine_enough_and_fonts_are_inside(rotor: RotorStory, tmp_path: Path) -> None:
    rotor.photograph(TOP, phone_photo(1), encoded(picture(300, 200)))
    rotor.photograph(SIDE, phone_photo(2), phone_photo(3))
    file = saved(rotor.pdf(), tmp_path)
    lines = ran("pdfimages", "-list", file).splitlines()[2:]
    assert len(lines) == 4
    assert all(min(int(each) for each in line.split()[12:14]) >= 150 for line in lines)
    fonts = ran("pdffonts", file).splitlines()[2:]
    assert fonts
    assert all("DejaVu" in line and re.search(r"yes yes yes", line) for line in fonts)


@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_two_pairs_take_one_page_for_the_customer(rotor: RotorStory, paper: str) -> None:
    change_rule(rotor.record, "paper", paper)
    rotor.photograph(TOP, phone_photo(1), phone_photo(2))
    _another_pair(rotor, "distributor-cap", 3)
    first, second, *_ = _pages(rotor.pdf())
    assert "It is no inspection of the car." in first
    assert "Distributor rotor" in first
    assert "Distributor cap" in first
    assert second.startswith("For the file · job J-104")


def test_more_pairs_go_on_and_leave_no_page_half_empty(rotor: RotorStory) -> None:
    rotor.photograph(TOP, phone_photo(1), phone_photo(2))
    for seed, kind in enumerate(("distributor-cap", "plug-wire", "ignition-coil"), start=3):
        _another_pair(rotor, kind, seed)
    first, second, *_ = _pages(rotor.pdf())
    assert "Distributor cap" in first
    assert "It is no inspection of the car." in second
    assert "For the file · job J-104" in second
    assert not second.startswith("For the file")


def _another_pair(rotor: RotorStory, kind: str, seed: int) -> None:
    pair = actions.lay_side_by_side(rotor.record, rotor.job, kind).made
    assert pair is not None
    for side in SIDES:
        photo = put_photo(rotor.record, rotor.job, phone_photo(seed + len(side)))
        actions.show_in_pair(rotor.record, pair, [photo], side, "top")


def _pages(pdf: bytes) -> list[str]:
    from pypdf import PdfReader

    pages = [" ".join(page.extract_text().split()) for page in PdfReader(BytesIO(pdf)).pages]
    return [re.sub(r"^Job J-104 .* page \d of \d ", "", page) for page in pages]  # but the foot


def test_an_ordinary_pair_with_two_views_takes_two_pages(rotor: RotorStory) -> None:
    rotor.photograph(TOP, phone_photo(1), phone_photo(2))
    rotor.photograph(SIDE, phone_photo(3), phone_photo(4))
    assert page_count(rotor.pdf()) == 2


LONG = "x" * 5000
MARKUP = '<b>bold</b> & <para> </font> &amp; <bullet>"quoted"</bullet> ]]> <!-- {0} %s'


@pytest.mark.parametrize("text", [LONG, "long words " * 450, MARKUP, "a\x00b\ud800\x1bc\n\n\td"])
def test_no_text_breaks_the_layout(shop: ShopRecord, text: str) -> None:
    kept = text.replace("\ud800", "").replace("\x00", "")
    story = a_rotor(shop, cause=kept, correction=kept, declined=kept, proof_words=kept)
    for field in sorted(actions.PAIR_TEXTS):
        actions.write_about_pair(shop, story.pair, field, kept)
    actions.see_condition(shop, story.pair, "removed", kept, seen=True)
    actions.see_condition(shop, story.pair, "replacement", kept, seen=True)
    actions.explain_difference(shop, story.pair, "bore", kept, kept)
    story.read("bore", replacement="14.5")
    change_rule(shop, "shop_name", kept[:200])
    write_concern(shop, story.job, kept)
    sheet = read_sheet(shop, story.job, kinds())
    worse = replace(sheet, job=replace(sheet.job, concern=text, number=text[:40]))
    assert page_count(sheet_bytes(worse)) < 20
    two = replace(worse, pairs=(*worse.pairs, *worse.pairs))
    assert page_count(sheet_bytes(two)) < 30


def test_markup_is_printed_as_it_was_typed(shop: ShopRecord) -> None:
    job = a_job(shop, concern="<b>worse</b> & louder")
    pdf = sheet_bytes(read_sheet(shop, job, kinds()))
    assert "“<b>worse</b> & louder”" in words_in(pdf)


@pytest.fixture(scope="module")
def plain_sheet(tmp_path_factory: pytest.TempPathFactory) -> SheetFacts:
    """The facts of a sheet, read once."""
    from desktop_app.shop_record.record import create_shop
    from tests.conftest import NOON

    record = create_shop(tmp_path_factory.mktemp("sheet") / "shop", lambda: NOON)
    story = a_rotor(record)
    facts = read_sheet(record, story.job, kinds())
    record.close()
    return facts


@settings(max_examples=15)
@given(text=st.text(max_size=300))
def test_any_text_can_be_told(plain_sheet: SheetFacts, text: str) -> None:
    pair = plain_sheet.pairs[0]
    told = replace(
        plain_sheet,
        shop_name=text,
        job=replace(plain_sheet.job, concern=text, declined=text, number=text),
        pairs=(replace(pair, pair=replace(pair.pair, note_removed=text, position=text)),),
    )
    assert sheet_bytes(told).startswith(b"%PDF")


def test_the_sheet_never_calls_a_car_safe(rotor: RotorStory) -> None:
    assert "safe" not in words_in(rotor.pdf()).lower()


def test_a_sheet_is_written_whole_or_not_at_all(rotor: RotorStory, tmp_path: Path) -> None:
    to = tmp_path / "sheet-J-104.pdf"
    to.write_bytes(b"an older one")
    write_sheet(rotor.record, rotor.job, kinds(), to)
    assert to.read_bytes() == rotor.pdf()
    assert [file.name for file in tmp_path.glob("*.p*")] == ["sheet-J-104.pdf"]


@pytest.mark.parametrize("name", ["sheet.txt", "no such folder/sheet.pdf", "."])
def test_a_place_that_will_not_do_is_said(rotor: RotorStory, tmp_path: Path, name: str) -> None:
    with pytest.raises(ShopTrouble):
        write_sheet(rotor.record, rotor.job, kinds(), tmp_path / name)


def test_a_job_that_is_not_there_is_said(shop: ShopRecord, tmp_path: Path) -> None:
    with pytest.raises(ShopTrouble, match="not in the record"):
        write_sheet(shop, 404, kinds(), tmp_path / "sheet.pdf")


def test_the_file_is_named_after_the_job(plain_sheet: SheetFacts) -> None:
    assert plain_sheet.file_name == "sheet-J-104.pdf"
    odd = replace(plain_sheet, job=replace(plain_sheet.job, number="../J 1:4"))
    assert odd.file_name == "sheet-..-J-1-4.pdf"


def test_an_instrument_whose_check_is_overdue_is_said_with_its_own_repeatability() -> None:
    own = Instrument("calliper", "mm", 0.01, 0.02, 0.0123, 9.0, "2025-06-01")
    said = instrument_words("calliper", "mm", "mm", own, date(2026, 11, 16))
    assert said == (
        "calliper (reads to 0.01 mm, permitted error ± 0.02 mm, repeats to 0.012 mm by our own "
        "study, last checked 2025-06-01, so its check is overdue)"
    )
    fresh = instrument_words("calliper", "mm", "mm", own, date(2026, 5, 1))
    assert "overdue" not in fresh
    assert "usual figures" in instrument_words("calliper", "mm", "mm", None, date(2026, 5, 1))


def test_what_was_read_off_a_photo_by_eye_is_no_study_of_ours() -> None:
    said = instrument_words("photo", "mm", "mm", None, date(2026, 5, 1))
    assert said.startswith("photo, by eye (reads to 0.05 mm, permitted error ± 0.15 mm, ")
    assert "repeats to 0.15 mm, usual figures" in said
    assert "study" not in said


def test_a_sheet_says_that_the_shops_own_figures_judge(rotor: RotorStory) -> None:
    said = "Judged by the shop's own figures for this kind of part"
    assert said not in words_in(rotor.pdf())
    keep_own_kind(rotor.record, kinds()["distributor-rotor"])
    assert said in words_in(rotor.pdf())
