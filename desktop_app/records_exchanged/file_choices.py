"""What a person chose about a file, laid over what was found out about it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType

from desktop_app.language import tr
from desktop_app.records_exchanged.asked_once import answered, open_questions
from desktop_app.records_exchanged.column_choice import fields_of, how_sure, with_column
from desktop_app.records_exchanged.column_guess import Columns
from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.question import Question
from desktop_app.records_exchanged.survey import Survey


class FileChoices:
    """Columns and answers; `kept` is the map of the last file like it, as long as it counts."""

    def __init__(self) -> None:
        self.columns: Columns | None = None
        self.answers: dict[str, str] = {}
        self.kept: ColumnMap | None = None
        self._by_hand: set[int] = set()

    def take_kept(self, kept: ColumnMap, found: Survey) -> None:
        """Take the columns that were read by the kept map, and its answers where it is asked."""
        self.kept, self.columns = kept, dict(found.columns)
        for question in open_questions(found):
            choice = getattr(kept, question.option)
            if choice in question.choices:
                self.answers.setdefault(question.option, choice)

    def start_again(self) -> None:
        """Let go of the columns: they are another table's."""
        self.columns, self.kept = None, None
        self._by_hand.clear()

    def give(self, found: Survey, column: int, field: str | None) -> bool:
        """Read a column as a field, or leave it out; False where that is so already."""
        if fields_of(found.columns, column) == ((field,) if field else ()):
            return False
        self.columns = with_column(found.columns, column, field)
        self._by_hand.add(column)
        return True

    def named(self, found: Survey) -> Mapping[str, tuple[str, ...]]:
        """Return the headers of each field's columns, as a map says them."""
        columns = self.columns or {}
        said = {f: tuple(found.headers[i] for i in at) for f, at in columns.items()}
        return MappingProxyType(said)

    def over(self, found: Survey) -> tuple[Survey, tuple[Question, ...]]:
        """Return the survey with all of it, and the questions that the file leaves open."""
        chosen = found if self.columns is None else replace(found, columns=self.columns)
        return answered(chosen, self.answers), open_questions(chosen)

    def as_last_time(self, option: str) -> bool:
        """Tell whether a question is answered as for the last file like this one."""
        return self.kept is not None and getattr(self.kept, option) == self.answers.get(option)

    def sureness(self, found: Survey, column: int) -> str:
        """Say how a column came to its field: chosen, as last time, or how sure the guess is."""
        if not fields_of(found.columns, column):
            return ""
        if column in self._by_hand:
            return tr("chosen")
        if self.kept is not None:
            return tr("as last time")
        return how_sure(found.headers, found.columns, column)
