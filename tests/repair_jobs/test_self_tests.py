"""The car's own tests: typed in any usual way, decoded, compared, and never passed unrun."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.self_tests import (
    SelfTestsRead,
    SelfTestState,
    bytes_typed,
    decode,
    encode,
    monitors_of,
    read_bytes,
)
from desktop_app.repair_jobs.self_tests_compared import (
    StageTests,
    not_run,
    readings_at_odds,
    self_tests_in_words,
    side_by_side,
)
from desktop_app.shop_record.trouble import ShopTrouble

FOUR = bytes.fromhex("0007E500")


@pytest.mark.parametrize(
    "typed",
    [
        *("41 01 00 07 E5 00", "0007E500", "00 07 e5 00", "410100 07E500", "4101 0007 E500"),
        *("0x00 0x07 0xE5 0x00", "00,07,E5,00", "00-07-e5-00", " 00:07:E5:00 ", "00h 07h E5h 00h"),
        *("7E8 06 41 01 00 07 E5 00", "7E8 06 41 01 00 07 E5 00 AA", "> 41 01 00 07 E5 00"),
        *("18 DA F1 10 06 41 01 00 07 E5 00", "41\n01 00\t07 E5 00"),
    ],
)
def test_the_bytes_are_read_in_any_usual_way(typed: str) -> None:
    assert read_bytes(typed) == FOUR


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("", "no hex digits"),
        ("complete", "no hex digits"),
        ("00 07 EG 00", "no hex digits"),
        ("OO 07 E5 00", "no hex digits"),  # the letter O
        ("00 07 E5", "3 bytes"),
        ("00 07 E5 0", "7 hex digits"),
        ("41 01 00 07", "two bytes are missing"),
        ("41 00 00 07 E5 00", "6 bytes"),
        ("00 07 E5 00 00", "5 bytes"),
        ("41 01 00 07 E5 00 41 01 00 04 00 00", "12 bytes"),
        ("01 01", "2 bytes"),
    ],
)
def test_what_is_not_four_bytes_is_refused_with_what_is_accepted(typed: str, said: str) -> None:
    with pytest.raises(ShopTrouble) as refused:
        read_bytes(typed)
    assert said in refused.value.sentence()
    assert "41 01 00 07 E5 00" in refused.value.sentence()


@pytest.mark.parametrize("typed", ["2026-11-16", "16.11.2026", "16-11-2026", " 2026.11.16 "])
def test_what_looks_like_a_day_is_not_taken_for_bytes(typed: str) -> None:
    with pytest.raises(ShopTrouble, match="looks like a day"):
        bytes_typed(typed)


@pytest.mark.parametrize("typed", ["00-07-e5-00", "00 07 05 00", "00:07:05:00", "00-07-05-00"])
def test_bytes_that_are_set_apart_are_no_day(typed: str) -> None:
    assert bytes_typed(typed) == read_bytes(typed)


@st.composite
def readings(draw: st.DrawFn) -> SelfTestsRead:
    compression = draw(st.booleans())
    states = {
        one.id: draw(st.sampled_from(list(SelfTestState))) for one in monitors_of(compression)
    }
    return SelfTestsRead(draw(st.booleans()), draw(st.integers(0, 127)), compression, states)


@given(readings())
def test_what_is_said_survives_the_bytes(read: SelfTestsRead) -> None:
    assert decode(encode(read)) == read


@given(st.binary(min_size=4, max_size=4))
def test_any_four_bytes_are_decoded_and_nothing_is_complete_that_waits(four: bytes) -> None:
    read = decode(four)
    assert read_bytes(four.hex(" ")) == four or four[:2] == b"\x41\x01"
    again = decode(encode(read))
    assert (again.states, again.codes, again.lamp_on) == (read.states, read.codes, read.lamp_on)
    complete = sum(state is SelfTestState.COMPLETE for state in read.states.values())
    free = 0x14 if read.compression else 0
    fitted_and_done = (four[1] & ~(four[1] >> 4) & 7).bit_count()
    assert complete == fitted_and_done + (four[2] & ~four[3] & ~free & 0xFF).bit_count()


def test_bits_the_standard_keeps_free_are_noticed() -> None:
    assert decode(bytes.fromhex("00870000")).free_bits
    assert decode(bytes.fromhex("000F0400")).free_bits
    assert not decode(bytes.fromhex("00070400")).free_bits  # in use with spark ignition


def test_before_and_after_stand_side_by_side() -> None:
    found, after = StageTests("00 07 65 05"), StageTests("00 07 65 04")
    rows = {row.monitor.id: row for row in side_by_side(found, after)}
    assert [name for name, row in rows.items() if row.became_complete] == ["catalyst"]
    assert rows["evaporative"].after is SelfTestState.NOT_RUN
    assert rows["secondary-air"].after is SelfTestState.NOT_FITTED
    assert not_run(after) == ("evaporative",)
    said = self_tests_in_words(found, after)
    assert said[1:] == (
        "Not run: evaporative system.",
        "Not run when it came and complete since: catalyst.",
    )
    assert "evaporative" not in said[0]
    assert "secondary air" not in " ".join(said)


def test_what_a_person_entered_counts_where_no_bytes_were_typed() -> None:
    by_hand = {"nox": SelfTestState.NOT_RUN, "misfire": SelfTestState.COMPLETE}
    after = StageTests(by_hand=by_hand)
    rows = side_by_side(StageTests(), after)
    assert [row.monitor.id for row in rows if row.after is not None] == ["misfire", "nox"]
    assert all(row.found is None for row in rows)
    assert self_tests_in_words(StageTests(), after) == (
        "Complete: misfire.",
        "Not run: nitrogen oxide treatment.",
    )
    assert self_tests_in_words(StageTests("00 07 65 00"), StageTests()) == ()


@pytest.mark.parametrize(
    ("found", "after", "codes", "said"),
    [
        ("", "82 07 65 00", {}, "the bytes count 2 codes, and none is written down"),
        ("", "82 07 65 00", {"after repair": 2}, ""),
        ("00 07 65 00", "00 0F 61 00", {}, "different kinds of engine"),
        ("00 07 65 00", "00 07 61 00", {}, "in one reading and not in the other: evaporative"),
        ("", "00 00 00 00", {}, "not one test is fitted"),
        ("", "00 87 65 00", {}, "bits are set that the standard keeps free"),
        ("00 07 65 00", "00 07 65 04", {}, ""),
    ],
)
def test_readings_that_do_not_fit_each_other_are_doubted(
    found: str, after: str, codes: dict[str, int], said: str
) -> None:
    doubts = " ".join(readings_at_odds(StageTests(found), StageTests(after), codes))
    assert said in doubts
    assert bool(said) is bool(doubts)


def test_bytes_count_against_what_a_person_entered() -> None:
    after = StageTests("00 07 65 04", {"evaporative": SelfTestState.COMPLETE})
    assert not_run(after) == ("evaporative",)
    assert readings_at_odds(StageTests(), after, {}) == (
        "After the repair: evaporative system was entered as complete, and the bytes say not run. "
        "The bytes count.",
    )


def test_what_a_person_entered_as_the_bytes_say_it_is_not_odd() -> None:
    after = StageTests("00 07 65 04", {"evaporative": SelfTestState.NOT_RUN})
    assert readings_at_odds(StageTests(), after, {}) == ()
    alone = StageTests("", {"evaporative": SelfTestState.COMPLETE})
    assert readings_at_odds(StageTests(), alone, {}) == ()
