"""What a pair comes to: fits, stop and look, not enough measured."""

from __future__ import annotations

import json

import pytest

from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import ConditionSeen, Explanation, MakerLimit, Reading
from tests.parts_compared.invented_kinds import both, dimension, kind, read, worn

WIDTH = dimension()
TIP = worn()
PART = kind(WIDTH, TIP)
BELOW_TEN = MakerLimit("width", None, 10.0)
GOOD = [*both("width", 10.00, 10.02), *both("tip", 26.90, 27.45)]


def test_a_good_pair_fits_and_says_why() -> None:
    pair = compare(PART, GOOD)
    assert pair.verdict == "fits"
    assert [one.verdict for one in pair.dimensions] == ["same", "restored"]
    assert "Tip: the new one measures 0.55 mm more (± 0.03). Wear can explain that." in pair.reasons


def test_wear_can_explain_what_a_new_part_brings_back_and_nothing_more_is_claimed() -> None:
    for seen in ((), (ConditionSeen("removed", ("burned tip",)),)):
        said = compare(PART, GOOD, seen).dimensions[1].sentence
        assert said.endswith("0.55 mm more (± 0.03). Wear can explain that.")


def test_an_essential_dimension_without_readings_leaves_it_open() -> None:
    pair = compare(PART, both("width", 10.00, 10.02))
    assert pair.verdict == "not enough measured"
    assert pair.dimensions[1].verdict == "not measured"
    assert pair.next_steps == ("Measure tip on both parts (calliper).",)


def test_one_side_alone_is_not_measured_and_is_shown() -> None:
    pair = compare(PART, [*both("width", 10.0, 10.0), read("removed", "tip", 26.9)])
    tip = pair.dimensions[1]
    assert tip.verdict == "not measured"
    assert tip.removed is not None
    assert tip.removed.value == 26.9
    assert tip.sentence == "Tip: not measured on the replacement."


def test_nothing_measured_never_fits() -> None:
    assert compare(PART, []).verdict == "not enough measured"
    assert compare(kind(dimension(essential=False)), []).verdict == "not enough measured"


def test_a_difference_even_beside_the_essentials_is_a_reason_to_stop() -> None:
    part = kind(WIDTH, dimension(name="depth", label="depth", essential=False))
    pair = compare(part, [*both("width", 10.01, 10.01), *both("depth", 5.01, 6.01)])
    assert pair.verdict == "stop and look"
    assert pair.reasons[0].startswith("Depth: the new one measures 1.00 mm more")


def test_an_explained_difference_stands_with_its_source() -> None:
    readings = [*both("width", 10.0, 11.0), *both("tip", 26.9, 27.45)]
    assert compare(PART, readings).verdict == "stop and look"
    pair = compare(PART, readings, explained=[Explanation("width", "the supplier", "new number")])
    assert pair.verdict == "fits"
    assert pair.dimensions[0].verdict == "explained"
    assert pair.dimensions[0].sentence.endswith("Explained by the supplier: new number.")


def test_an_explanation_doesnt_replace_a_measurement() -> None:
    pair = compare(PART, both("width", 10.0, 10.0), explained=[Explanation("tip", "someone")])
    assert pair.dimensions[1].verdict == "not measured"


@pytest.mark.parametrize(
    ("side", "term", "verdict"),
    [
        ("removed", "burned tip", "fits"),
        ("replacement", "Eroded  TIP", "stop and look"),
        ("replacement", "hairline crack", "stop and look"),
        ("replacement", "no cracks", "fits"),
        ("replacement", "storage film", "fits"),
        ("replacement", "white print", "fits"),
    ],
)
def test_conditions(side: str, term: str, verdict: str) -> None:
    seen = ConditionSeen("removed" if side == "removed" else "replacement", (term,))
    pair = compare(PART, GOOD, [seen])
    assert pair.verdict == verdict
    assert any(" ".join(term.split()) in reason for reason in pair.reasons)


def test_makers_limits_are_needed_for_a_limit() -> None:
    part = kind(dimension(name="r", label="resistance", unit="kohm", role="limit", allowed=None,
                          instrument="ohmmeter"))  # fmt: skip
    readings = [read("replacement", "r", 5.1)]
    alone = compare(part, readings).dimensions[0]
    assert alone.verdict == "not measured"
    assert "No maker's limit is entered" in alone.sentence
    within = compare(part, readings, limits=[MakerLimit("r", 4.0, 6.0)])
    assert within.verdict == "fits"
    assert within.dimensions[0].verdict == "within limits"
    assert within.dimensions[0].allowed == (4.0, 6.0)
    assert compare(part, readings, limits=[MakerLimit("r", None, 4.0)]).verdict == "stop and look"
    assert (
        compare(part, readings, limits=[MakerLimit("r", 5.11, None)]).dimensions[0].verdict
        == "too close to tell"
    )


def test_a_reading_in_inches_is_asked_about() -> None:
    pair = compare(PART, both("width", 12.7, 0.5))
    assert "25.4 times apart" in pair.questions[0]
    assert pair.questions[0] in pair.reasons


def test_a_reading_of_a_lost_dimension_is_kept_and_told() -> None:
    pair = compare(PART, [*GOOD, read("removed", "gone", 1.0)])
    assert pair.verdict == "fits"
    assert "'gone' is kept" in pair.reasons[-1]


def test_an_instrument_that_nothing_is_known_of_settles_nothing() -> None:
    pair = compare(PART, both("width", 10.0, 10.0, "grandfather's stick"))
    assert pair.dimensions[0].verdict == "not measured"
    known = {"grandfather's stick": Instrument("grandfather's stick", "mm", 0.01, 0.03)}
    pair = compare(PART, both("width", 10.0, 10.0, "grandfather's stick"), instruments=known)
    assert pair.dimensions[0].verdict == "same"


def test_json_has_the_shape_of_the_contract() -> None:
    document = json.loads(json.dumps(compare(PART, GOOD).as_json(), allow_nan=False))
    assert list(document) == ["kind", "verdict", "dimensions", "reasons"]
    one = document["dimensions"][1]
    assert list(one) == [
        "name", "role", "unit", "removed", "replacement", "difference",
        "difference_expanded_uncertainty", "allowed", "probability_within", "verdict",
        "readings_needed",
    ]  # fmt: skip
    assert list(one["removed"]) == ["value", "expanded_uncertainty", "coverage", "readings"]
    assert one["removed"]["coverage"] == 0.95
    assert one["allowed"] == [0.1, 1.5]
    assert one["difference"] == pytest.approx(0.55)


def asked(readings: list[Reading], *seen: ConditionSeen, part: PartKind = PART) -> str:
    """Return what is asked about a pair."""
    return " ".join(compare(part, readings, seen).questions)


def test_sides_that_seem_exchanged_are_asked_about() -> None:
    readings = [*both("width", 10.0, 10.0), *both("tip", [27.45, 27.46], [26.90, 26.91])]
    assert "Were the two sides exchanged?" in asked(readings)
    assert asked(GOOD) == ""
    worn_new = ConditionSeen("replacement", ("scuffed",))
    assert "Only the new part is noted as worn" in asked(both("width", 10.0, 10.0), worn_new)


def test_readings_that_seem_copied_are_asked_about() -> None:
    same = [10.02, 10.00, 10.01]
    assert "the same readings on both parts. Was one copied?" in asked(both("width", same, same))
    assert asked(both("width", [10.02, 10.0], [10.0, 10.02])) == ""


def test_both_sides_read_in_inches_are_asked_about() -> None:
    part = kind(dimension(typical=(8.0, 12.0)))
    assert "in" in asked(both("width", 0.394, 0.395), part=part)
    assert "Were those inches?" in asked([read("removed", "width", 0.394)], part=part)


@pytest.mark.parametrize(
    ("term", "counts"),
    [
        ("hairline crack", True),
        ("rusty", True),
        ("pitted seat", True),
        ("leaks at the seam", True),
        ("rust-free", False),
        ("free of cracks", False),
        ("checked, no rust", False),
        ("seal not torn", False),
        ("leak-tested", False),
        ("pitch marked", False),
        ("cut to length", False),
        ("burnished", False),
    ],
)
def test_what_no_new_part_deserves_is_read_as_a_person_means_it(term: str, counts: bool) -> None:
    pair = compare(PART, GOOD, [ConditionSeen("replacement", (term,))])
    assert (pair.verdict == "stop and look") == counts


def test_next_steps_fit_what_is_open() -> None:
    towers = kind(dimension(name="towers", label="towers", role="count", instrument="eye"))
    assert compare(towers, both("towers", [4.0, 5.0], 4.0)).next_steps == (
        "Count towers again on both parts.",
    )
    two = [
        read("removed", "width", 10.0, instrument="calliper"),
        read("replacement", "width", 10.0, instrument="depth rod"),
    ]
    narrow = kind(dimension(allowed=(-0.02, 0.02)))
    assert compare(narrow, two).next_steps == ("Measure width on both parts with one instrument.",)
    limit = kind(dimension(role="limit", allowed=(9.99, 10.01), instrument="steel rule"))
    (step,) = compare(limit, [read("replacement", "width", 10.0)]).next_steps
    assert step.endswith("again with the micrometer, on the replacement.")


def test_nothing_worn_is_said_where_any_restoration_will_do() -> None:
    lift = kind(worn(low=0.0, high=3.0, name="lift", label="lift"))
    pair = compare(lift, both("lift", [8.00, 8.01], [8.01, 8.01]))
    assert "Was the old one worn there at all?" in pair.reasons[0]
    assert pair.next_steps == ("Look whether the old part is worn at all: lift.",)


def test_readings_of_one_part_that_lie_far_apart_are_asked_about() -> None:
    found = asked([read("removed", "width", 10.0, 0.394), read("replacement", "width", 10.0)])
    assert "Width, removed part: readings of one part are about 25.4 times apart." in found
    assert asked([read("removed", "width", 10.0, 9.9)]) == ""


@pytest.mark.parametrize(
    ("values", "question"),
    [
        ((3.2, 3.1, 32.0), "One reading is 32 mm, the others are 3.1 to 3.2 mm. Is it a slip?"),
        ((31.0, 3.2, 31.0), "One reading is 3.2 mm, the others are 31 mm. Is it a slip?"),
        (
            (10.0, 10.1, 0.394),
            "One reading is 0.394 mm, the others are 10 to 10.1 mm. Was it read in inches?",
        ),
        ((3.2, 32.0), "3.2 mm and 32 mm are readings of one part. Is one of them a slip?"),
        ((3.2, 3.1, 6.0), ""),
        ((0.0, 3.1, 32.0), ""),
        ((3.2, 32.0, 320.0), ""),
    ],
)
def test_the_one_reading_that_is_off_is_named(values: tuple[float, ...], question: str) -> None:
    found = asked([read("removed", "width", *values), read("replacement", "width", 7.0)])
    assert found == (f"Width, removed part: {question}" if question else "")


def test_a_side_with_a_reading_that_is_off_is_not_asked_about_by_its_mean() -> None:
    slip = [read("removed", "width", 3.2, 3.1, 32.0), read("replacement", "width", 325.0)]
    assert "25.4" not in asked(slip)
    assert "Is it a slip?" in asked(slip)


def test_a_limit_too_close_to_tell_says_how_many_readings_of_the_new_part_may_settle_it() -> None:
    part = kind(dimension(role="limit", allowed=None))
    for value, steps in (
        (9.968, "Take 1 more reading of width on the replacement."),
        (9.97, "Take 4 more readings of width on the replacement."),
    ):
        pair = compare(part, [read("replacement", "width", value)], limits=[BELOW_TEN])
        (one,) = pair.dimensions
        assert one.verdict == "too close to tell"
        assert pair.next_steps[0].endswith(steps)
        more = one.readings_needed
        assert more is not None
        said = "1 more reading" if more == 1 else f"{more} more readings"
        assert f"About {said} would probably settle it." in one.sentence


def test_a_word_or_a_count_that_was_seen_both_ways_is_looked_at_again() -> None:
    part = kind(
        dimension(name="form", label="form", unit="word", role="word", allowed=None,
                  instrument="eye"),
        dimension(name="teeth", label="teeth", unit="n", role="count", allowed=(0.0, 0.0),
                  instrument="eye"),
    )  # fmt: skip
    pair = compare(
        part,
        [read("removed", "form", "male", "female"), read("replacement", "form", "male"),
         read("removed", "teeth", 11.0, 12.0), read("replacement", "teeth", 12.0)],
    )  # fmt: skip
    assert [one.verdict for one in pair.dimensions] == ["too close to tell"] * 2
    assert pair.next_steps == (
        "Look at form again on both parts.",
        "Count teeth again on both parts.",
    )


def test_what_is_exact_and_alike_shows_no_difference_and_no_doubt() -> None:
    rated = kind(dimension(unit="A", allowed=(0.0, 0.0), instrument="label"))
    (one,) = compare(rated, both("width", 90, 90)).dimensions
    assert "no difference found" in one.sentence
    assert "±" not in one.sentence
    bare = kind(worn(instrument="label", unit="A"))
    (one,) = compare(bare, both("tip", 90, 90)).dimensions
    assert one.sentence.startswith("Tip: no difference found")
    assert "±" not in one.sentence


def test_a_feeler_that_still_enters_is_told_with_the_size_that_it_measures() -> None:
    part = kind(dimension(role="limit", allowed=None, instrument="feeler gauge"))
    (one,) = compare(
        part, [read("replacement", "width", 0.30)], limits=[MakerLimit("width", 0.2, 0.5)]
    ).dimensions
    assert one.verdict == "within limits"
    assert "0.3 mm still enters the new one, so it measures" in one.sentence
