"""The words of one shop: the program's vocabulary with the phrases that the shop added to it."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.symptom_search.own_phrases import PhraseKept
from desktop_app.symptom_search.stored_phrases import read_phrases
from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary


class ShopWords:
    """Gives the vocabulary as it is now: what any desk has changed counts with the next question.

    Several threads may ask; the phrases are few, and read each time. Hold what it gives where very
    many texts are read one after another.
    """

    def __init__(
        self, record: ShopRecord, built_in: Callable[[], Vocabulary] = shop_vocabulary
    ) -> None:
        self._record, self._built_in = record, built_in
        self._read: tuple[tuple[PhraseKept, ...], Vocabulary] | None = None

    def __call__(self) -> Vocabulary:
        """Return the shop's vocabulary; while the record is busy, as it was read last."""
        read = self._read or ((), self._built_in())
        with suppress(ShopTrouble), self._record.reading() as connection:
            own = read_phrases(connection)
            if own != read[0]:
                means = {one.phrase: one.symptom for one in own}
                read = own, self._built_in().with_own(means)
        self._read = read
        return read[1]
