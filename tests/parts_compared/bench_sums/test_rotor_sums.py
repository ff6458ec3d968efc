"""The rotor's gap, its change, and the gap when the tip stands beside the terminal."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.rotor_gap import GapWobble, shaft_wobble
from desktop_app.parts_compared.bench_sums.rotor_phase import phase_gap
from desktop_app.parts_compared.bench_sums.sums_offered import work_out

GAP = {
    "terminal_radius": "28.40",
    "old_tip_radius": "26.90",
    "new_tip_radius": "27.45",
    "reading_doubt": "0.03",
}
radii = st.floats(15, 60)
small = st.floats(0, 0.5)


def test_the_gap_is_vague_and_its_change_is_not() -> None:
    # Invented figures; play, run-out and seat: common practice, no source.
    wobble = GapWobble(shaft_wobble(0.10, 1.6), 0.03, 0.10, 0.03, 0.03)
    assert wobble.worst() == pytest.approx(0.27, abs=1e-12)
    assert wobble.usual() == pytest.approx(math.sqrt(0.0191), abs=1e-12)
    found = work_out("rotor-gap", GAP)
    assert found.value == pytest.approx(-0.55, abs=1e-12)
    assert found.expanded == pytest.approx(0.03 * math.sqrt(2), abs=1e-12)
    assert "was 1.50 mm and is 0.95 mm" in found.sentence
    assert "0.14 mm as a rule, ± 0.27 mm at worst" in found.sentence
    assert "0.55 mm smaller (± 0.04)" in found.sentence
    assert "doesn't reach the terminal" in found.sentence


def test_a_change_within_its_doubt_is_none() -> None:
    same = work_out("rotor-gap", {**GAP, "old_tip_radius": GAP["new_tip_radius"]}).sentence
    assert "No change was found (± 0.04)." in same
    assert "larger" not in same
    assert "smaller" not in same


def test_one_calliper_for_both_tips_does_not_count_its_error_twice() -> None:
    left_empty = work_out("rotor-gap", {**GAP, "reading_doubt": ""})
    typed = work_out("rotor-gap", {**GAP, "reading_doubt": "0.0406"})
    assert left_empty.expanded is not None
    assert typed.expanded is not None
    assert left_empty.expanded < typed.expanded


@pytest.mark.parametrize(
    ("radius", "said"),
    [
        ("28.60", "would touch the terminal: stop and look"),
        ("28.20", "can touch the terminal: stop and look"),
        ("28.10", "doesn't reach"),
    ],
)
def test_a_tip_that_may_touch_is_said(radius: str, said: str) -> None:
    assert said in work_out("rotor-gap", {**GAP, "new_tip_radius": radius}).sentence


def test_an_old_rotor_that_could_not_have_run_is_asked_about() -> None:
    said = work_out("rotor-gap", {**GAP, "old_tip_radius": "28.5"}).sentence
    assert "check the radii" in said


@given(shaft=small, bend=small, seat=small, reading=small)
def test_the_usual_wobble_is_never_above_the_worst(
    shaft: float, bend: float, seat: float, reading: float
) -> None:
    wobble = GapWobble(shaft, bend, seat, reading, reading)
    assert max(wobble.terms()) <= wobble.usual() + 1e-12
    assert wobble.usual() <= wobble.worst() + 1e-12


@pytest.mark.parametrize(("beyond", "gap"), [(0, 0.95), (4, 2.17), (8, 4.01)])
def test_a_few_degrees_cost_more_than_wear(beyond: float, gap: float) -> None:
    # Law of cosines, computed from invented radii.
    assert phase_gap(28.40, 27.45, beyond) == pytest.approx(gap, abs=0.005)


@given(terminal=radii, tip=radii, beyond=st.floats(0, 90))
def test_the_phase_gap_obeys_the_law_of_cosines(terminal: float, tip: float, beyond: float) -> None:
    turned = math.cos(math.radians(beyond))
    squared = terminal**2 + tip**2 - 2 * terminal * tip * turned
    assert phase_gap(terminal, tip, beyond) ** 2 == pytest.approx(squared, abs=1e-6)
    assert phase_gap(terminal, tip, beyond) == pytest.approx(phase_gap(tip, terminal, beyond))
    assert phase_gap(terminal, tip, beyond) >= abs(terminal - tip) - 1e-9


@given(beyond=st.floats(0, 89), more=st.floats(0, 1))
def test_turning_on_never_closes_the_gap(beyond: float, more: float) -> None:
    assert phase_gap(28.4, 27.45, beyond + more) >= phase_gap(28.4, 27.45, beyond)


def test_a_wide_tip_still_faces_its_terminal() -> None:
    typed = {"terminal_radius": "28.40", "tip_radius": "27.45", "angle": "-4", "tip_width": "6"}
    found = work_out("rotor-phase", typed)
    assert found.value == pytest.approx(0.95, abs=1e-9)
    assert "still faces its terminal" in found.sentence
    # The angle's own doubt doesn't vanish where the slope does.
    straight = work_out("rotor-phase", {**typed, "angle": "0", "tip_width": "0"})
    assert straight.expanded is not None
    assert straight.expanded > 0.1
