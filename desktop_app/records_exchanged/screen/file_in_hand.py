"""The file that is in hand: looked through beside the window, and again after each choice."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Signal, Slot

from desktop_app.language import tr
from desktop_app.records_exchanged.column_map import ALL_OTHERS, ColumnMap
from desktop_app.records_exchanged.file_choices import FileChoices
from desktop_app.records_exchanged.header_row import header_key
from desktop_app.records_exchanged.looked_through_files import Looked, OpenedFile, look
from desktop_app.records_exchanged.map_files import MAPS, forget_map, keep_map
from desktop_app.records_exchanged.question import Question
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.rejected_rows import WHY
from desktop_app.records_exchanged.screen.telling import Tell, Telling
from desktop_app.records_exchanged.survey import Survey
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk


class FileInHand(QObject):
    """`changed` says that what is known or chosen is another; `stepped` how far the looking is.

    `found` is the survey with all that was chosen and answered; `laid_down` how the file is cut
    into rows and cells, where somebody or the kept map said so.
    """

    changed = Signal()
    stepped = Signal(object)  # Step

    def __init__(self, desk: Desk, parent: QObject) -> None:
        super().__init__(parent)
        self._desk = desk
        self._maps = desk.record.folder / MAPS
        self._held: list[OpenedFile] = []
        self._looking: Telling | None = None
        self.destroyed.connect(partial(_close_all, self._held))
        self.path: Path | None = None
        self._forget_all()

    def _forget_all(self) -> None:
        self.laid_down = ColumnMap()
        self.choices = FileChoices()
        self.found: Survey | None = None
        self.questions: tuple[Question, ...] = ()
        self.trouble = self.said = ""
        self._looked: Looked | None = None
        self._key = ""  # of the headers as they were found first

    @property
    def sheets(self) -> tuple[str, ...]:
        """The sheets of a workbook."""
        return self._looked.opened.source.sheets if self._looked else ()

    def busy(self) -> bool:
        """Tell whether the file is being looked through."""
        return self._looking is not None

    def take(self, path: Path) -> None:
        """Take another file in hand, or the same one anew."""
        self._look_no_further()
        _close_all(self._held)
        self._forget_all()
        self.path = path
        self._look(kept_too=True)

    @Slot()
    def stop(self) -> None:
        """Look no further; the file is not read then."""
        if self.busy():
            self._look_no_further()
            self.trouble = tr("The file was not looked through to its end. Choose it once more.")
            self.changed.emit()

    def lay_down(self, **said: Any) -> None:
        """Say how the file is cut into cells; with other letters chosen columns stay."""
        laid_down = replace(self.laid_down, **said)
        if laid_down == self.laid_down:
            return
        self.laid_down = laid_down
        stays = set(said) == {"encoding"}
        if not stays:
            self.choices.start_again()
        self._look(kept_too=not stays, named=False)

    def give(self, column: int, field: str | None) -> None:
        """Read a column as this field; None leaves it out."""
        if self.found is not None and self.choices.give(self.found, column, field):
            self._work_out()
            self._look(kept_too=False)

    def answer(self, option: str, choice: str) -> None:
        """Answer a question about the whole file."""
        self.choices.answers[option] = choice
        self._work_out()
        self.changed.emit()

    @Slot()
    def forget_map(self) -> None:
        """Forget the map of files like this one, and guess again."""
        for key in self._keys():
            forget_map(self._maps, key)
        self.choices = FileChoices()
        self.laid_down = ColumnMap()
        self._look(kept_too=False)

    def unanswered(self) -> bool:
        """Tell whether something that the file leaves open is not answered yet."""
        return any(each.option not in self.choices.answers for each in self.questions)

    def why_not(self) -> str:
        """Return what is to be done before rows can be brought in; nothing where they can."""
        if self.found is None or self.trouble or self.busy():
            return self.trouble or tr("The file is being looked through.")
        if "job_number" not in self.found.columns:
            return tr("Say which column holds the job number: by it a job is known again.")
        if self.unanswered():
            return tr("Answer first what the file leaves open.")
        return ""

    def table(self) -> Table:
        """Return the rows to be brought in; only where `why_not` says nothing."""
        assert self.found is not None
        assert self._looked is not None
        return Table(self._looked.opened.source, self._looked.laid_down, self.found)

    def keeping(self) -> Callable[[], None]:
        """Return what keeps how this file is read, for the next one with the same headers."""
        settled, maps, keys = self.table().settled_map(), self._maps, self._keys()

        def keep() -> None:
            for key in keys:
                keep_map(maps, key, settled)

        return keep

    def _keys(self) -> tuple[str, ...]:
        """Return what this file is remembered by, and the file of its rows turned away."""
        assert self.found is not None
        bare = [header for header in self.found.headers if header != WHY]
        return tuple(sorted({self._key, header_key(bare), header_key([*bare, WHY])}))

    def _look_no_further(self) -> None:
        if self._looking is not None:
            self._looking.stop()
        self._looking = None

    def _look(self, *, kept_too: bool, named: bool = True) -> None:
        self._look_no_further()
        assert self.path is not None
        path, maps, laid_down = self.path, self._maps, self.laid_down
        opened = self._held[0] if self._held else None
        if named and self.choices.columns and self.found is not None:
            columns = self.choices.named(self.found)
            laid_down = replace(laid_down, columns=columns, left_out=ALL_OTHERS)

        def work(tell: Tell) -> Looked:
            def progress(share: float) -> None:
                tell(Step(round(100 * share), 100, tr("Looking through {file}", file=path.name)))

            return look(path, laid_down, maps, opened, progress, kept_too=kept_too)

        telling = Telling(
            self._desk,
            self,
            tr("Looking through {file}", file=path.name),
            work,
            lambda looked: self._took(telling, looked),
            lambda trouble: self._gave_up(telling, trouble),
        )
        telling.stepped.connect(self.stepped)
        self._looking, self.trouble = telling, ""
        self.changed.emit()

    def _took(self, telling: Telling, looked: Looked) -> None:
        if telling is not self._looking:  # something else was chosen meanwhile
            if looked.opened not in self._held:
                looked.opened.close()
            return
        self._looking = None
        if looked.opened not in self._held:
            _close_all(self._held)
            self._held.append(looked.opened)
        before, self._looked = self._looked, looked
        self.laid_down = replace(looked.laid_down, columns=ColumnMap().columns, left_out=())
        self._key = self._key or looked.key
        self.said = looked.said
        found = looked.found
        if before is not None and len(before.found.headers) != len(found.headers):
            self.choices.start_again()
        if looked.kept is not None:
            self.choices.take_kept(looked.kept, found)
        self._work_out()
        chosen = self.choices.columns
        if chosen and chosen != found.columns:
            self._look(kept_too=False)  # other columns, other questions
        else:
            self.changed.emit()

    def _gave_up(self, telling: Telling, trouble: ShopTrouble | None) -> None:
        if telling is self._looking:
            self._looking = None
            self.trouble = trouble.sentence() if trouble else tr("The file was not looked through.")
            self.changed.emit()

    def _work_out(self) -> None:
        if self._looked is not None:
            self.found, self.questions = self.choices.over(self._looked.found)


def _close_all(held: list[OpenedFile]) -> None:
    while held:
        held.pop().close()
