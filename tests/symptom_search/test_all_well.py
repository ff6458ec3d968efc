"""Under which conditions the trouble happens, where somebody also says when all is well."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

WELL = [
    ("Misses when damp, fine when dry. Stumbles mornings.", ["damp", "first-start"]),
    ("okay when dry", []),
    ("runs fine in dry weather", []),
    ("good when warm", []),
    ("perfect once warmed up", []),
    ("ok after ten minutes", []),
    ("starts fine hot", []),
    ("all right in the dry", []),
    ("alright at idle", []),
    ("goes well when cold", []),
    ("pulls well uphill", []),
    ("runs normally when cold", []),
    ("back to normal once warm", []),
    ("works perfectly when warm", []),
    ("is fine when dry", []),
    ("it's fine when the clutch is hot", []),
    ("fine as long as it is dry", []),
    ("fine when cold or damp", []),
    ("runs fine, even when damp", []),
    ("no trouble at all once it has warmed up", []),
    ("no problem when hot", []),
    ("never any bother in the rain", []),
    ("nothing wrong when cold", []),
    ("no trouble cold and hot", []),
    ("always fine when dry", []),
    ("good morning", []),
    # The condition comes first.
    ("when dry it runs fine", []),
    ("When it's dry, it's fine. When damp, it misses.", ["damp"]),
    ("In the dry, no problem.", []),
    ("Cold: fine, hot: misses", ["hot"]),
    ("hot starts are fine, cold starts are not", ["cold"]),
    ("idles fine but misses under load", ["pulling"]),
    # What is told beside it holds.
    ("only when wet, otherwise fine", ["rain"]),
    ("only when wet, fine otherwise", ["rain"]),
    ("only when wet fine in the dry", ["rain"]),
    ("misses when damp and fine when dry", ["damp"]),
    ("misses when damp fine when dry", ["damp"]),
    ("fine when dry and misses when damp", ["damp"]),
    ("fine when dry, misses when damp", ["damp"]),
    ("fine cold, misses hot", ["hot"]),
    ("fine cold misses hot", ["hot"]),
    ("misses cold fine hot", ["cold"]),
    ("cold fine hot misses", ["hot"]),
    ("when hot it is fine when cold it misses", ["cold"]),
    ("cold it misses hot it is fine", ["cold"]),
    ("fine when cold then stalls hot", ["hot"]),
    ("fine in the dry and it misses in the rain", ["rain"]),
    ("Stalls when hot, restarts fine", ["hot"]),
    ("stalls when hot and starts fine", ["hot"]),
    ("stalls at idle fine on the flat", ["idle"]),
    ("idles rough, cold, fine hot", ["idle", "cold"]),
    ("good idle but dies hot", ["hot"]),
    ("runs fine rain or shine", []),
    ("when cold everything is fine, hot it dies", ["hot"]),
    ("normal when cold, knocks hot", ["hot"]),
    ("misses at idle (fine at 60)", ["idle"]),
    ("the brakes are good, they squeal in the wet", ["rain"]),
    ("fine in the cold, dry weather", []),
    ("when hot, cold or damp it is fine", []),
    ("Gearbox shifts fine cold; slips when hot", ["hot"]),
    ("Misses on a cold morning, after ten minutes it is fine", ["cold"]),
    ("Misses cold. Once warm, fine again.", ["cold"]),
    ("hard to start when hot, cold it's perfect", ["restart-hot"]),
    ("No issues in the dry. In the wet, it stalls.", ["rain"]),
]
# Words of well-being that say nothing of the kind, or the opposite.
NOT_WELL = [
    ("fine until it is damp", ["damp"]),
    ("fine till hot", ["hot"]),
    ("fine unless wet", ["rain"]),
    ("fine except when hot", ["hot"]),
    ("no problem until it is hot", ["hot"]),
    ("ran fine before the rain", ["rain"]),
    ("it is not fine when damp", ["damp"]),
    ("it isn't okay when damp", ["damp"]),
    ("never runs well when cold", ["cold"]),
    ("doesn't run well when cold", ["cold"]),
    ("no longer fine when hot", ["hot"]),
    ("no good when cold", ["cold"]),
    ("not so good in the rain", ["rain"]),
    ("far from perfect when cold", ["cold"]),
    ("used to be fine when hot", ["hot"]),
    ("starts fine but stalls when hot", ["hot"]),
    ("starts fine stalls when hot", ["hot"]),
    ("starts fine and stalls when hot", ["hot"]),
    ("dies in fine rain", ["rain"]),
    ("fine vibration at 60", ["high-speed"]),
    ("misses when hot as well", ["hot"]),
    ("as well as in the rain it misses cold", ["rain", "cold"]),
    ("Well, when hot it stalls", ["hot"]),
    ("Well when hot it stalls", ["hot"]),
    ("shakes well over 60", ["high-speed"]),
    ("normally stalls when cold", ["cold"]),
    ("louder than normal when cold", ["cold"]),
    ("once it is good and hot it stalls", ["hot"]),
    ("a good knock when cold", ["cold"]),
    ("shakes on a smooth road", ["smooth"]),
    ("no fault codes, misses cold", ["cold"]),
    ("good battery, slow when cold", ["cold"]),
    ("trouble when cold", ["cold"]),
    ("ran well until it went through a car wash", ["wash"]),
    ("sometimes it's fine, sometimes it stalls hot", ["random", "hot"]),
    ("not fine at idle", ["idle"]),
    ("problem in the rain", ["rain"]),
]
# It could be either: nothing is ticked for what may be well.
EITHER = ["misses when damp runs fine", "cold fine hot", "sometimes fine when cold"]


@pytest.mark.parametrize(("text", "happens"), WELL)
def test_where_all_is_well_the_trouble_does_not_happen(
    words: Vocabulary, text: str, happens: list[str]
) -> None:
    assert list(words.conditions_in(text)) == happens


@pytest.mark.parametrize(("text", "happens"), NOT_WELL)
def test_what_only_sounds_well_denies_nothing(
    words: Vocabulary, text: str, happens: list[str]
) -> None:
    assert list(words.conditions_in(text)) == happens


@pytest.mark.parametrize("text", EITHER)
def test_where_it_may_be_either_nothing_is_said(words: Vocabulary, text: str) -> None:
    assert not {"damp", "cold", "hot"}.intersection(words.conditions_in(text))


def test_the_symptoms_are_heard_as_before(words: Vocabulary) -> None:
    heard = words.groups_in("Misses when damp, fine when dry, no trouble when hot.")
    assert [group.id for group in heard] == ["misfire-random"]


SAID = st.sampled_from(("fine", "okay", "good", "no trouble", "all right", "it runs well"))
WHEN = st.sampled_from(
    (("when damp", "damp"), ("when hot", "hot"), ("in the rain", "rain"), ("uphill", "pulling"))
)
OTHER = st.sampled_from((("when dry", "dry"), ("when cold", "cold"), ("at idle", "idle")))
BETWEEN = st.sampled_from((", ", ". ", " but ", "; ", " and "))


@given(SAID, WHEN, OTHER, BETWEEN, st.booleans())
def test_one_half_of_a_sentence_leaves_the_other_alone(
    said: str, when: tuple[str, str], other: tuple[str, str], between: str, first: bool
) -> None:
    halves = [f"misses {when[0]}", f"{said} {other[0]}"]
    text = between.join(reversed(halves) if first else halves)
    assert shop_vocabulary().conditions_in(text) == (when[1],)
