"""One boxed part of the page on which a return is judged; each field is a deed of its own."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal

from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.screen.asked_line import AskedLine
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.written_meanwhile import WrittenMeanwhile
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, WordsField
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.which_of_two import MINE, THEIRS, both, hearing

Typed = LineField | WordsField


class ReturnBox(Section):
    """A section about one return, for as long as that return is on the page.

    Each deed carries what the page showed, for a typed field what it showed before the typing; what
    was written at another desk meanwhile is never written over unasked. `stale` says that the page
    shows less than there is.
    """

    stale = Signal()

    def __init__(self, heading: str, desk: Desk, judging: Judging) -> None:
        super().__init__("")
        self.setAccessibleName(heading)
        self.column.addWidget(plain_label(heading, "heading", wrap=True))  # it may be a question
        self.desk = desk
        self.judging = judging
        self._seen: dict[Typed, Judging] = {}
        self._meanwhile = AskedLine()
        self._doubted: Typed | None = None
        self.column.addWidget(self._meanwhile)

    def take(self, judging: Judging) -> None:
        """Take what is kept now, to be shown; a half-typed field stays with what it showed."""
        self.judging = judging
        fields: list[Typed] = [*self.findChildren(LineField), *self.findChildren(WordsField)]
        for field in fields:
            if not field.unsaved():
                self._seen[field] = judging
        if self._doubted is not None and not self._doubted.unsaved():
            self._meanwhile.put_away()

    def do(self, deed: Callable[..., Done], *args: object, **more: object) -> Done | None:
        """Do a deed on this return; None where it was refused."""
        return self._do(deed, args, more, self.judging)[0]

    def save(self, field: Typed, deed: Callable[..., Done], *args: object) -> Done | None:
        """Save what was typed by a deed; None where it was refused, and the typing stays."""
        done, news = self._do(deed, args, {}, self._seen.get(field, self.judging))
        if news is not None:
            self._ask_which(field, news)
        return done

    def _do(
        self,
        deed: Callable[..., Done],
        args: tuple[object, ...],
        more: dict[str, object],
        shown: Judging,
    ) -> tuple[Done | None, WrittenMeanwhile | None]:
        news: list[WrittenMeanwhile] = []

        pair = (shown.earlier_id, shown.later_id)
        done = self.desk.do(hearing(deed, news.append), *pair, *args, **more, shown=shown)
        if news:
            self.stale.emit()
        return done, news[0] if news else None

    def _ask_which(self, field: Typed, news: WrittenMeanwhile) -> None:
        typed = field.toPlainText() if isinstance(field, WordsField) else field.text()

        def mine() -> None:
            self._seen[field] = self.judging
            field.save_now()

        def theirs() -> None:
            field.forget()
            self.stale.emit()

        self._doubted = field
        self._meanwhile.ask(both(news, typed), {MINE: mine, THEIRS: theirs}, field)
