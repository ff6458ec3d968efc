"""Lengths are kept in mm and spoken in the shop's unit: the verdict is the same in either."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.in_shop_unit import (
    judge_aloud,
    name_with_unit,
    said_in_inches,
    said_in_mm,
    shop_unit,
    typed_shown,
)
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.judged_in_inches import tool_in_inches
from desktop_app.parts_compared.open_steps import open_steps
from desktop_app.parts_compared.pair_view import PairView, judge
from desktop_app.parts_compared.part_kinds.own_kind import read_allowed
from desktop_app.parts_compared.part_kinds.said_of_dimension import allowed_typed, allowed_words
from desktop_app.parts_compared.reading import MakerLimit, Reading
from desktop_app.parts_compared.readings_typed import read_readings
from desktop_app.parts_compared.sheet_values import whole
from desktop_app.parts_compared.shown_value import amount, span_text
from desktop_app.parts_compared.typed_limit import limit_text
from tests.parts_compared.invented_kinds import both, dimension, kind, worn

WIDTH, TIP = dimension(), worn()
ANGLE = dimension(name="tip-angle", label="tip angle", unit="deg", role="orientation")
PART = kind(WIDTH, TIP)


def a_pair(readings: list[Reading], limits: tuple[MakerLimit, ...] = ()) -> PairView:
    """A pair of the invented part with these readings."""
    texts = dict.fromkeys(
        [
            *("position", "supplier", "lot", "number_removed", "number_on_box", "number_on_part"),
            *("fate", "note_removed", "note_replacement"),
        ],
        "",
    )
    return PairView(
        **{"id": 1, "job_id": 1, "part_kind": "invented-part", "origin": None, "fitted": True},
        **{"price_cents": None, "typed": {}, "instruments_used": {}, "conditions": ()},
        **{"explained": (), "photos": (), "readings": tuple(readings), "limits": limits, **texts},
    )


def test_only_lengths_change_their_unit() -> None:
    assert shop_unit("mm", "inch") == ("in", 1 / 25.4)
    assert shop_unit("mm", "mm") == ("mm", 1.0)
    assert shop_unit("ohm", "inch") == ("ohm", 1.0)


@pytest.mark.parametrize(
    ("unit", "role", "length_unit", "name"),
    [
        ("mm", "same", "inch", "Width, inch"),
        ("mm", "same", "mm", "Width, mm"),
        ("kohm", "limit", "inch", "Width, kΩ"),
        ("n", "count", "inch", "Width"),
        ("word", "word", "mm", "Width"),
    ],
)
def test_a_field_is_named_with_the_unit_that_it_expects(
    unit: str, role: str, length_unit: str, name: str
) -> None:
    assert name_with_unit(dimension(unit=unit, role=role), length_unit) == name


@pytest.mark.parametrize("typed", ["14.02", "14.02 mm", "0.55 in", '1/2"', "14", "1.4 cm"])
@pytest.mark.parametrize("length_unit", ["mm", "inch"])
def test_a_kept_reading_means_the_same_when_its_field_is_read_again(
    typed: str, length_unit: str
) -> None:
    ((kept, _, _),) = read_readings(typed, WIDTH, "mm")
    ((again, _, _),) = read_readings(typed_shown(typed, WIDTH, length_unit), WIDTH, length_unit)
    assert again == pytest.approx(kept)


def test_lengths_said_in_a_unit_have_it_where_they_lack_one() -> None:
    assert said_in_inches("0.55; 1 1/2; 14 mm; ") == "0.55 in; 1 1/2 in; 14 mm; "
    assert said_in_mm("14,2;0.30 + 0.15;male") == "14,2 mm; 0.30 + 0.15 mm; male"
    assert said_in_mm("") == ""


def test_a_limit_is_shown_as_it_would_be_typed() -> None:
    assert limit_text(None, WIDTH, "inch") == ""
    assert limit_text(25.4, WIDTH, "inch") == "1 in"
    assert limit_text(25.4, WIDTH, "mm") == "25.4"


def test_the_sentences_speak_inches_and_the_verdicts_stay() -> None:
    pair = a_pair([*both("width", 10.00, 10.02), *both("tip", 26.90, 27.45)])
    plain, aloud = judge(pair, PART, {}), judge_aloud(pair, PART, {}, "inch")
    assert judge_aloud(pair, PART, {}, "mm") == plain
    assert [one.verdict for one in aloud.dimensions] == [one.verdict for one in plain.dimensions]
    assert [one.removed for one in aloud.dimensions] == [one.removed for one in plain.dimensions]
    assert "0.02165 in more" in aloud.dimensions[1].sentence
    assert not [said for said in (*aloud.reasons, *aloud.next_steps) if " mm" in said]


def test_limits_angles_and_own_tools_are_spoken_too() -> None:
    limited = dimension(
        name="depth", label="depth", role="limit", allowed=None, essential=False, unit="mm"
    )
    ohms = dimension(name="r", label="r", role="limit", allowed=None, essential=False, unit="ohm")
    limits = (MakerLimit("depth", 5.0, None, ""), MakerLimit("r", None, 6.0, ""))
    pair = a_pair(
        [*both("tip-angle", 35.0, 35.5), *both("depth", 5.5, 6.0), *both("r", 5.0, 5.1)],
        limits=limits,
    )
    drawer = {"calliper": Instrument("calliper", "mm", 0.02, 0.03, 0.01)}
    aloud = judge_aloud(pair, kind(ANGLE, limited, ohms), drawer, "inch")
    said = " ".join(one.sentence for one in aloud.dimensions)
    assert "0.197 in" in said
    assert " mm" not in said
    spread = tool_in_inches(drawer["calliper"])
    assert (spread.unit, spread.repeatability) == ("in", pytest.approx(0.01 / 25.4))


@given(st.floats(9.7, 10.3), st.integers(1, 3))
def test_no_pair_is_judged_otherwise_in_inches(new: float, times: int) -> None:
    """At the very edge of a limit rounding may say otherwise: then what is kept in mm is said."""
    pair = a_pair([*both("width", [10.0] * times, [round(new, 3)] * times), *both("tip", 26, 27)])
    plain, aloud = judge(pair, PART, {}), judge_aloud(pair, PART, {}, "inch")
    assert aloud.verdict == plain.verdict
    assert [one.verdict for one in aloud.dimensions] == [one.verdict for one in plain.dimensions]
    inches = " in " in aloud.dimensions[0].sentence or aloud.dimensions[0].sentence.endswith(" in")
    assert inches or aloud == plain or "no difference" in aloud.dimensions[0].sentence


def test_each_open_dimension_has_its_step_and_settled_ones_none() -> None:
    judged = judge(a_pair(both("width", 10.0, 10.0)), PART, {})
    assert open_steps(judged) == (("tip", "Measure tip on both parts (calliper)."),)
    settled = judge(a_pair([*both("width", 10.0, 10.0), *both("tip", 26.9, 27.45)]), PART, {})
    assert open_steps(settled) == ()


def test_spans_and_figures_without_doubt_are_said_plainly() -> None:
    assert span_text(None, None, "mm") == "any value"
    assert span_text(4.0, None, "mm") == "at least 4 mm"
    assert amount(1.23456789, "mm", float("inf")) == "1.234568 mm"


def test_a_text_without_end_is_cut_on_the_sheet_and_says_so() -> None:
    assert whole("  short \n") == "short"
    cut = whole("word " * 5_000)
    assert cut.endswith("word… (cut here; the whole text is in the job)")


def test_where_rounding_to_inches_would_say_otherwise_the_millimetres_are_told() -> None:
    exact = {"calliper": Instrument("calliper", "mm", 0.0, 0.0, 0.0)}
    edge = a_pair([*both("width", 10.0, 10.19995), *both("tip", 26.90, 27.45)])
    aloud = judge_aloud(edge, PART, exact, "inch")
    assert aloud == judge(edge, PART, exact)
    assert aloud.dimensions[0].verdict == "same"


@pytest.mark.parametrize("length_unit", ["mm", "inch"])
@pytest.mark.parametrize("allowed", [None, (4.0, None), (None, 6.0), (4.0, 6.0)])
def test_limits_of_a_kind_are_shown_as_they_are_typed(
    allowed: tuple[float | None, float | None] | None, length_unit: str
) -> None:
    limited = dimension(role="limit", allowed=allowed)
    typed, words = allowed_typed(limited, length_unit), allowed_words(limited, length_unit)
    again = read_allowed(typed, limited, length_unit)
    for now, then in zip(again or (), allowed or (), strict=True):
        assert now is then or now == pytest.approx(then, rel=1e-3)
    unit = "in" if length_unit == "inch" else "mm"
    assert words == (f"{typed} {unit}" if allowed else "the maker's figure, entered at the pair")
