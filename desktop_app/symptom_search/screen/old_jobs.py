"""What the screens ask of the old jobs of one shop."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from desktop_app.parts_compared.part_kinds.part_kind import Called
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search import find
from desktop_app.symptom_search.filters import ALL_JOBS, Filters
from desktop_app.symptom_search.found import Found, Hit
from desktop_app.symptom_search.led_there import LedThere
from desktop_app.symptom_search.question import Piece, read_question, without
from desktop_app.symptom_search.untold_words import Untold, untold
from desktop_app.symptom_search.vocabulary import Vocabulary

Words = Callable[[], Vocabulary]
Kinds = Callable[[], Mapping[str, Called]]


class OldJobs:
    """The questions of the search's screens; each may be asked in the window or beside it."""

    def __init__(self, record: ShopRecord, words: Words, kinds: Kinds) -> None:
        self._record, self._words, self._kinds = record, words, kinds

    def find(self, text: str, limit: int, kept: Filters = ALL_JOBS) -> Found:
        """Return the jobs that a text is about, and what fixed them."""
        return find.find(self._record, self._words(), self._kinds(), text, limit, kept)

    def open_page(self) -> tuple[tuple[Hit, ...], tuple[Hit, ...]]:
        """Return the jobs of the cars that are here, and the latest jobs."""
        return find.open_page(self._record)

    def without(self, text: str, piece: Piece) -> str:
        """Return a text without a piece of it."""
        return without(text, piece, self._words(), self._kinds())

    def behind(self, jobs: Sequence[int]) -> tuple[Hit, ...]:
        """Return the jobs behind a number, as they are shown."""
        return find.jobs_as_hits(self._record, jobs)

    def led(self, jobs: Sequence[int]) -> LedThere:
        """Return what was looked at first in these jobs, and the codes."""
        return find.what_led_there(self._record, jobs)

    def classes(self) -> tuple[str, ...]:
        """Return the classes of vehicles that the shop has seen, the commonest first."""
        return find.vehicle_classes(self._record)

    def words(self) -> Vocabulary:
        """Return the vocabulary with what the shop's own phrases mean now."""
        return self._words()

    def untold(self, text: str) -> Untold:
        """Return the words of a text that mean nothing yet, and what they are guessed to mean."""
        return untold(read_question(text, self._words(), self._kinds()))

    def says_enough(self, text: str, fewest: int = 2) -> bool:
        """Tell whether a text has so many words with a meaning, symptoms' words among them."""
        return len(read_question(text, self._words(), self._kinds()).words) >= fewest
