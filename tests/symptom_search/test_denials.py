"""What is denied, over, or asserted after a denial."""

from __future__ import annotations

import pytest

from desktop_app.symptom_search.vocabulary import Vocabulary


@pytest.mark.parametrize(
    ("text", "heard"),
    [
        ("doesn't stall any more", []),
        ("never overheats", []),
        ("stopped misfiring", []),
        ("it used to stall", []),
        ("the misfire went away", []),
        ("misfire gone now", []),
        ("no misfire now, only a turbo whistle", ["boost-noise"]),
        ("no misfire and it overheats", ["overheats"]),
        ("not overheating only losing coolant", ["loses-coolant"]),
        ("brakes not squeaking but grinding", ["brake-squeal"]),
        ("the brakes don't squeal, the pedal is spongy", ["brake-soft"]),
        ("does not just stall, it misfires too", ["stall", "misfire-random"]),
        # A denial that is the symptom itself denies nothing else.
        ("no power and overheats", ["low-power", "overheats"]),
        ("won't start and just clicks", ["no-fire", "no-crank"]),
        ("battery has gone flat", ["flat-battery"]),
        ("stopped charging", ["charge-lamp"]),
    ],
)
def test_a_denial_reaches_what_it_denies_and_no_further(
    words: Vocabulary, text: str, heard: list[str]
) -> None:
    assert [group.id for group in words.groups_in(text)] == heard
