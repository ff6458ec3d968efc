"""What a shop keeps is counted in whole words, in every language: one photo, two photos."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QTranslator

from desktop_app import language
from desktop_app.shop_record.counted_words import (
    entries_counted,
    jobs_counted,
    photos_counted,
    rows_counted,
)
from tests.spoken.spoken_files import SPOKEN

COUNTED = (photos_counted, jobs_counted, rows_counted, entries_counted)
ENGLISH = ("photo", "job", "row", "entry of the history")
SPANISH = ("foto", "trabajo", "fila", "asiento del historial")


@pytest.fixture
def spoken(code: str) -> Iterator[None]:
    """Speak a language as long as the test runs; English has no words of its own."""
    words = QTranslator()
    words.load(str(SPOKEN / f"{code}.qm"))
    language.speak(lambda text: words.translate("", text), code)
    yield
    language.speak(str)


@pytest.mark.usefixtures("spoken")
@pytest.mark.parametrize(("code", "one"), [("en", ENGLISH), ("es", SPANISH)])
def test_one_is_no_plural(code: str, one: tuple[str, ...]) -> None:
    assert [counted(1) for counted in COUNTED] == [f"1 {word}" for word in one]
    for number, shown in ((0, "0"), (2, "2"), (1234, "1,234")):
        for counted, word in zip(COUNTED, one, strict=True):
            said = counted(number)
            assert said.startswith(f"{shown} ")
            assert said != f"{shown} {word}"
