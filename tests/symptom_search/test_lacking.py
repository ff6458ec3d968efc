"""What a car doesn't do is a symptom, and denies no condition under which it doesn't."""

from __future__ import annotations

import pytest

from desktop_app.symptom_search.vocabulary_file import shop_vocabulary


@pytest.mark.parametrize(
    ("said", "group", "conditions"),
    [
        ("won't start when hot", "restart-hot", ("restart-hot",)),
        ("doesn't start cold", "no-fire", ("cold",)),
        ("will not crank when damp", "no-crank", ("damp",)),
        ("no start after a wash", "no-fire", ("wash",)),
        ("it never starts in the rain", "no-fire", ("rain",)),
        ("no power uphill", "low-power", ("pulling",)),
        ("doesn't pull uphill", "low-power", ("pulling",)),
        ("no heat at idle", "runs-cool", ("idle",)),
        ("no brakes when wet", "brake-soft", ("rain",)),
    ],
)
def test_a_symptom_that_lacks_something_keeps_its_condition(
    said: str, group: str, conditions: tuple[str, ...]
) -> None:
    vocabulary = shop_vocabulary()
    assert [one.id for one in vocabulary.groups_in(said)] == [group]
    assert vocabulary.conditions_in(said) == conditions


@pytest.mark.parametrize(
    "said",
    [
        "misses, but never when hot",
        "it does not miss when hot",
        "doesn't stall when warm",
        "no trouble when hot",
        "does not happen when cold",
        "no noise when cold",
        "not when dry",
    ],
)
def test_what_it_does_not_do_then_is_denied_as_ever(said: str) -> None:
    assert shop_vocabulary().conditions_in(said) == ()


def test_one_denial_does_not_speak_for_the_other() -> None:
    conditions = shop_vocabulary().conditions_in("no power uphill, but never when cold")
    assert conditions == ("pulling",)
