"""Words of ours that are kept as they are, and said and understood in the language spoken."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest

from desktop_app import language
from desktop_app.parts_compared.bench_sums.bench_sum import SumKept
from desktop_app.parts_compared.bench_sums.spark_voltage import SPARK_SUM, ratio_kept
from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.parts_compared.instruments.instrument_called import tool_called

WORDS = {"calliper": "calibre", "feeler gauge": "galga", "miles": "millas"}
PADS = {"first": "12", "now": "7.5", "limit": "2", "distance": "30000"}
GAPS = {"rotor_old": "1", "rotor_new": "0.8", "plug_old": "1.1", "plug_new": "0.9"}


@pytest.fixture
def spanish() -> Iterator[None]:
    """Say these words in Spanish as long as the test runs."""
    language.speak(lambda text: WORDS.get(text, text))
    yield
    language.speak(str)


@pytest.mark.parametrize(
    ("typed", "kept"),
    [("Calibre", "calliper"), (" galga ", "feeler gauge"), ("calibre 2", "calibre 2")],
)
def test_a_usual_instrument_is_kept_by_its_own_name(typed: str, kept: str, spanish: None) -> None:
    assert tool_called(typed) == kept


@pytest.mark.parametrize("typed", ["calliper", "Calliper", "calibre", "calliper 2"])
def test_without_another_language_every_name_stays_as_typed(typed: str) -> None:
    assert tool_called(typed) == typed


@pytest.mark.parametrize("typed", ["millas", "miles", "", "Millas"])
def test_a_choice_is_understood_in_both_languages_and_said_in_one(
    typed: str, spanish: None
) -> None:
    told = work_out("pad-life", {**PADS, "distance_unit": typed})
    assert told.unit == "miles"
    assert "30000 millas" in told.sentence
    assert ("distances are in", "millas") in told.inputs


def test_a_kept_compression_ratio_is_found_whatever_it_was_called() -> None:
    told = work_out(SPARK_SUM, {**GAPS, "ratio": "9,5"})
    called = tuple((f"«{label}»", text) for label, text in told.inputs)
    kept = SumKept(1, SPARK_SUM, told.name, told.sentence, told.limit_sentence, called, True)
    assert ratio_kept([kept]) == 9.5
    assert ratio_kept([replace(kept, inputs=())]) is None
