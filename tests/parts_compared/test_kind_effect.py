"""What a changed kind does to pairs that are judged already, in one sentence."""

from __future__ import annotations

from desktop_app.parts_compared.part_kinds.kind_effect import effect_words, pairs_judged_otherwise


def test_the_effect_of_a_change_is_counted_and_the_jobs_are_named() -> None:
    assert effect_words({}, {}, ()) == "No pair of this kind is in the record yet."
    assert "All 1 pairs" in effect_words({1: "fits"}, {1: "fits"}, ())
    before = dict.fromkeys(range(12), "fits")
    after = {**before, **dict.fromkeys(range(10), "stop and look")}
    assert pairs_judged_otherwise(before, after) == tuple(range(10))
    said = effect_words(before, after, [f"J-{number}" for number in range(10)])
    assert "Of 12 pairs in the record: 10 × “fits” becomes “stop and look”." in said
    assert said.endswith("J-7 and 2 more.")
    few = effect_words(before, after, ["J-1", "J-2"])
    assert few.endswith("Jobs: J-1, J-2.")
