"""Near words are looked up among few terms and are the same as among all."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search.typing_mistake import mistakes_allowed, nearest
from desktop_app.symptom_search.word_index import entry
from desktop_app.symptom_search.word_index.arrays import Part
from desktop_app.symptom_search.word_index.entry import JobEntry
from desktop_app.symptom_search.word_index.word_ways import KnownInParts
from desktop_app.symptom_search.word_index.writing import arrays_of

LETTERS = st.text("coelantд", min_size=1, max_size=9)


def known(words: list[str]) -> KnownInParts:
    """Return an index of one job, which says these words."""
    texts = (" ".join(words), *[""] * (len(entry.FIELDS) - 1))
    job = JobEntry(1, texts, (), 900, 900, entry.NEVER_SETTLED, 0, 0, 1, ())
    return KnownInParts([Part(arrays_of([job]))])


@given(st.lists(LETTERS, max_size=12), LETTERS)
def test_no_near_stem_is_left_out_of_a_shelf(words: list[str], typed: str) -> None:
    index = known(words)
    allowed = mistakes_allowed(typed)
    shelf = index.shelf("", typed, allowed)
    terms = [bytes(term).decode() for one in index.parts for term in one.arrays.terms]
    stems = {term: 1 for term in terms if term.isalpha()}
    assert nearest(typed, shelf.items()) == nearest(typed, stems.items())


@pytest.mark.parametrize("typed", ["colant", "coolnat", "cooolant"])
def test_few_others_come_with_it(typed: str) -> None:
    shelf = known(["coolant", "coupe", "cylinder", "compressor", "cough"]).shelf("co", typed, 1)
    assert shelf == {"coolant": 1}
