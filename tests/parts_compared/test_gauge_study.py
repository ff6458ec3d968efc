"""Gauge studies: what repeated readings say, what is missing, and what a study changes."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.instruments.gauge_plan import GaugePlan
from desktop_app.parts_compared.instruments.gauge_sentence import missing_sentence, study_sentences
from desktop_app.parts_compared.instruments.gauge_study import GaugeReading, gauge_rr, study
from desktop_app.parts_compared.instruments.instrument import Instrument

TOOL = Instrument("calliper", "mm", 0.01, 0.03)
ALONE = [12.01, 12.02, 12.00, 12.01, 12.03, 12.01, 12.02, 12.00, 12.01, 12.01]
VALUES = st.floats(0.0, 200.0).map(lambda x: round(x, 3))


def by(person: str, values: list[float], part: int = 1) -> list[GaugeReading]:
    """Readings of one part by one person, in turn."""
    return [GaugeReading(person, part, trial, value) for trial, value in enumerate(values, 1)]


def crossed(people: dict[str, list[list[float]]]) -> list[GaugeReading]:
    """Readings of several parts: a list for each part of each person."""
    return [
        one
        for person, parts in people.items()
        for part, values in enumerate(parts, 1)
        for one in by(person, values, part)
    ]


def said(readings: list[GaugeReading]) -> str:
    """What the study says."""
    return " ".join(study_sentences(study(readings), TOOL))


def test_one_person_and_one_part_give_the_spread_of_the_repeats() -> None:
    result = study(by("Ann", ALONE))
    mean = sum(ALONE) / 10
    by_hand = math.sqrt(sum((x - mean) ** 2 for x in ALONE) / 9)
    assert result.repeatability == pytest.approx(by_hand, rel=1e-9)
    assert (result.dof, result.enough) == (9, True)
    assert result.full is not None
    assert (result.full.between_people, result.full.parts, result.full.groups) == (None,) * 3
    assert "repeats itself to 0.0092 mm (standard deviation, 9 degrees" in said(by("Ann", ALONE))


def test_two_people_are_pooled_each_about_their_own_mean() -> None:
    # By hand: squares 2e-4 + 2e-4 over 4 degrees of freedom; the means lie 0.10 apart.
    readings = by("Ann", [1.00, 1.01, 1.02]) + by("Ben", [1.10, 1.11, 1.12])
    result = study(readings)
    assert result.repeatability == pytest.approx(0.01)
    assert (result.dof, result.enough) == (4, False)
    assert result.full is not None
    between = math.sqrt((0.015 - 1e-4) / 3)
    assert result.full.between_people == pytest.approx(between)
    assert result.full.rr == pytest.approx(math.hypot(between, 0.01))
    assert "Let the same person read the old part and the new one" in said(readings)


def test_people_that_agree_more_than_chance_count_as_no_difference() -> None:
    readings = by("Ann", [1.00, 1.02]) + by("Ben", [1.02, 1.00])
    result = study(readings)
    assert result.full is not None
    assert result.full.nought == ("people",)
    assert result.full.between_people == 0.0
    assert "lies between the people came out below nought and counts as nought" in said(readings)


def test_a_person_who_reads_parts_differently_keeps_the_interaction_apart() -> None:
    readings = crossed(
        {
            "Ann": [[1.00, 1.01], [2.00, 2.01], [3.00, 3.01]],
            "Ben": [[1.20, 1.21], [2.00, 2.01], [2.80, 2.81]],
        }
    )
    result = gauge_rr(readings)
    assert result is not None
    assert result.anova.p is not None
    assert result.anova.p < 0.001
    assert result.interaction == pytest.approx(math.sqrt((0.04 - 5e-5) / 2))
    assert result.repeatability_dof == 6
    # The people's means agree: below nought once the interaction is taken from them.
    assert result.nought == ("people",)
    assert result.between_people == pytest.approx(result.interaction)
    assert "How far the people differ depends on the part." in said(readings)
    assert "kept apart (p = 0.000, not above 0.25)" in said(readings)


def test_one_person_with_several_parts_tells_them_apart() -> None:
    readings = crossed({"Ann": [[1.00, 1.01], [1.50, 1.51], [2.00, 2.01]]})
    result = gauge_rr(readings)
    assert result is not None
    assert result.between_people is None
    assert result.parts == pytest.approx(math.sqrt((0.5 - 5e-5) / 2))
    assert "tells 99 groups of them apart" in said(readings)
    assert "Method: gauge R&R by analysis of variance" in said(readings)


def test_alike_repeats_scatter_within_a_step() -> None:
    result = study(by("Ann", [0.1] * 9))
    assert result.repeatability == 0.0
    assert "hides within one step of 0.01 mm" in said(by("Ann", [0.1] * 9))
    still = crossed({"Ann": [[1.0, 1.0], [2.0, 2.0]], "Ben": [[1.0, 1.0], [2.0, 2.0]]})
    full = gauge_rr(still)
    assert full is not None
    assert (full.anova.p, full.rr, full.groups) == (1.0, 0.0, None)
    assert "the measuring is 0.0 % of the whole study variation." in said(still)
    odd = crossed({"Ann": [[1.0, 1.0], [2.0, 2.0]], "Ben": [[1.1, 1.1], [1.9, 1.9]]})
    full = gauge_rr(odd)
    assert full is not None
    assert full.anova.p == 0.0


def test_parts_that_differ_less_than_the_measuring_are_told_as_no_groups() -> None:
    noisy = crossed({"Ann": [[1.00, 1.10], [1.06, 1.16], [1.02, 1.12]]})
    assert "tells no group of them apart from another" in said(noisy)
    alike = said(crossed({"Ann": [[1.0, 1.0], [1.0, 1.0]], "Ben": [[1.0, 1.0], [1.0, 1.0]]}))
    assert "The parts differ by" in alike
    assert "study variation" not in alike


@pytest.mark.parametrize("count", [0, 1])
def test_nothing_read_twice_says_so(count: int) -> None:
    result = study(by("Ann", ALONE[:count]))
    assert (result.repeatability, result.dof, result.full) == (None, 0, None)
    assert not result.enough
    assert "Nothing was read twice" in said(by("Ann", ALONE[:count]))


def test_an_unfinished_study_speaks_from_its_repeats_alone() -> None:
    readings = by("Ann", ALONE) + by("Ben", [12.05])
    result = study(readings)
    assert result.full is None
    assert result.dof == 9
    assert "From the repeats alone" in said(readings)


def test_what_comes_next_goes_through_all_parts_before_repeating() -> None:
    plan = GaugePlan(("Ann", "Ben"), parts=2, trials=2)
    assert plan.places()[:5] == [
        ("Ann", 1, 1), ("Ann", 2, 1), ("Ann", 1, 2), ("Ann", 2, 2), ("Ben", 1, 1),
    ]  # fmt: skip
    assert plan.next_place([], "Ben") == ("Ben", 1, 1)
    assert plan.next_place([GaugeReading("Ann", 1, 1, 1.0)]) == ("Ann", 2, 1)
    assert GaugePlan(("Ann",), 1, 2).next_place(by("Ann", [1.0, 1.0])) is None


def test_a_plan_makes_room_for_what_was_read() -> None:
    plan = GaugePlan(("Ann",), parts=1, trials=2).with_room_for([GaugeReading("Ben", 3, 5, 1.0)])
    assert plan == GaugePlan(("Ann", "Ben"), 3, 5)


def test_it_says_how_many_readings_are_still_too_few() -> None:
    plan = GaugePlan(("Ann",), parts=1, trials=10)
    assert "Still too few to count: 9 readings more" in missing_sentence(plan, [])
    assert "1 reading more" in missing_sentence(plan, by("Ann", ALONE[:8]))
    assert missing_sentence(plan, by("Ann", ALONE)).endswith("the plan is complete.")
    assert missing_sentence(plan, by("Ann", ALONE[:9])).endswith("asks for 1 reading.")
    small = GaugePlan(("Ann", "Ben"), parts=1, trials=3)
    assert "These readings will be too few: 8 repeats are needed" in missing_sentence(small, [])


@given(st.lists(VALUES, min_size=2, max_size=10), st.floats(-5, 5), st.sampled_from([1 / 25.4, 3]))
def test_neither_where_the_scale_begins_nor_its_unit_matters(
    values: list[float], shift: float, factor: float
) -> None:
    plain = study(by("Ann", values)).repeatability
    moved = study(by("Ann", [(one + shift) * factor for one in values])).repeatability
    assert plain is not None
    assert moved == pytest.approx(plain * factor, rel=1e-6, abs=1e-12)


@given(st.lists(st.lists(VALUES, min_size=12, max_size=12), min_size=1, max_size=3))
def test_the_squares_add_up_and_no_spread_is_below_nought(grid: list[list[float]]) -> None:
    people = {
        name: [values[0:4], values[4:8], values[8:12]]
        for name, values in zip("ABC", grid, strict=False)
    }
    result = gauge_rr(crossed(people))
    assert result is not None
    table = result.anova
    parts = (table.parts, table.people, table.interaction, table.repeats)
    assert sum(one.total for one in parts) == pytest.approx(table.total.total, rel=1e-9, abs=1e-9)
    assert sum(one.dof for one in parts) == table.total.dof
    assert result.parts is not None
    assert min(result.repeatability, result.between_people or 0, result.parts) >= 0
    assert result.total == pytest.approx(math.hypot(result.rr, result.parts))


@given(st.lists(VALUES, max_size=12), st.integers(1, 3), st.integers(2, 9))
def test_reading_what_is_asked_for_makes_the_study_enough(
    values: list[float], parts: int, trials: int
) -> None:
    plan = GaugePlan(("Ann", "Ben"), parts, trials)
    places = plan.places()
    readings = [GaugeReading(*place, value) for place, value in zip(places, values, strict=False)]
    more = plan.too_few(readings)
    rest = [GaugeReading(*place, 1.0) for place in plan.empty_places(readings)]
    if more is None:
        assert not study(readings + rest).enough
    else:
        assert study(readings + rest[:more]).enough


def test_repeats_without_scatter_make_no_interaction_out_of_rounding() -> None:
    """A coarse instrument reads each part alike every time; one person reads 0.01 higher."""
    readings = [
        GaugeReading(person, part, trial, 10.0 + part * 0.37 + above)
        for person, above in (("A", 0.0), ("B", 0.01))
        for part in (1, 2, 3)
        for trial in (1, 2, 3)
    ]
    found = gauge_rr(readings)
    assert found is not None
    assert found.anova.interaction.total == 0
    assert found.repeatability == pytest.approx(0, abs=1e-9)
    assert found.between_people == pytest.approx(0.01 / math.sqrt(2), rel=1e-6)
