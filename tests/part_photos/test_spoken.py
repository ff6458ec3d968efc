"""Photos and cards in another language: what is said is spoken, what is kept is known again."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import numpy as np
import pytest
from PIL import Image

from desktop_app.language import speak
from desktop_app.part_photos.bench_card.card_layouts import bench_card, card_words, usual_paper
from desktop_app.part_photos.bench_card.card_page import card_page
from desktop_app.part_photos.bench_card.drawing import Words
from desktop_app.part_photos.mark_words import NEUTRAL, method_words, share_sentence
from desktop_app.part_photos.overlay.picture_lines import Pen
from desktop_app.part_photos.sheet_card import card_pdf

Speaks = Callable[..., None]


@pytest.fixture
def spoken() -> Iterator[Speaks]:
    """Let the program speak another language for one test."""
    yield speak
    speak(str)


def test_a_card_printed_in_one_language_is_known_in_another(spoken: Speaks) -> None:
    bench_card.cache_clear()
    english = bench_card("letter")
    spoken(lambda text: f"§{text}")
    bench_card.cache_clear()
    assert bench_card("letter") == english
    assert card_words(english).startswith("§Benchwitness bench card, ")
    words = [shape.words for shape in card_page(english) if isinstance(shape, Words)]
    assert "§bench card" in words
    assert usual_paper("DE", "Letter") == "letter"


def test_the_cards_pdf_names_its_language(spoken: Speaks) -> None:
    assert b"/Lang (en)" in card_pdf(bench_card("a4"))
    spoken(str, "es")
    assert b"/Lang (es)" in card_pdf(bench_card("a4"))


def test_a_share_counted_against_grey_stays_one_whatever_is_spoken(spoken: Speaks) -> None:
    kept = f"contados frente a {NEUTRAL}, equilibrado"
    assert "no bare metal was drawn" in share_sentence(12.0, 4.0, kept)
    spoken(lambda text: "gris neutro" if text == NEUTRAL else f"§{text}")
    assert "no bare metal was drawn" in share_sentence(12.0, 4.0, kept)
    assert method_words(kept) == "§How: contados frente a gris neutro, equilibrado"


def test_a_picture_of_differences_has_every_letter_and_sign() -> None:
    drawn = set()
    for words in ("−1", "+1", "±1", "á1", "ñ1", "ú1"):
        picture = Image.new("RGB", (400, 200), "white")
        Pen(picture, np.zeros(2, np.intp), 1.0).bar(100.0, words)
        drawn.add(picture.tobytes())
    assert len(drawn) == 6
