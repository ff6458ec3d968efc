"""The main window: the rail of places, the page in the middle, undo and redo, the notice strip."""

from __future__ import annotations

from contextlib import suppress
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QSettings, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QAction, QCloseEvent, QKeyEvent, QKeySequence, QPaintEvent
from PySide6.QtWidgets import (
    QApplication,
    QBoxLayout,
    QMainWindow,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.shop_record.past.deed_words import deed_words
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.keys import on_key, press_by
from desktop_app.shop_window.look import dress_anew
from desktop_app.shop_window.middle import Middle
from desktop_app.shop_window.notice_strip import NoticeStrip
from desktop_app.shop_window.pages_made import Make, PagesMade
from desktop_app.shop_window.rail import Rail, RailButton
from desktop_app.shop_window.room_watch import RoomWatch
from desktop_app.shop_window.tab_order import first_stop
from desktop_app.shop_window.texts import tooltip
from desktop_app.shop_window.window_place import keep_place, put_in_place

if TYPE_CHECKING:
    from desktop_app.shop_window.desk import Desk

PAGE_LEAST = 560  # pixels; where the rail leaves less beside it, it lies above the page
LETTERS_FOR_WORDS = 105  # that the window has to be wide, for undo and redo to say so in words


class MainWindow(QMainWindow):
    """The frame around the places; it knows their names and nothing of what they do.

    No place's page is made before the window is there: some time after that, or when it is shown.
    """

    painted = Signal()  # once, when the frame was seen for the first time
    came_to = Signal(str)  # the place that is shown now
    shop_wanted = Signal(object)  # Path: a shop to open in place of this one; None: ask which

    def __init__(self, settings: QSettings | None = None) -> None:
        super().__init__()
        self.setWindowTitle("Benchwitness")
        self._settings = settings
        self._desk: Desk | None = None
        self._buttons: dict[str, QPushButton] = {}
        self._beside: set[str] = set()  # places that the rail never shows
        self._numbered = 0
        self._seen = False
        self._warned: list[ShopTrouble] = []  # what would be lost, and was told
        self._middle = Middle()
        self._stack = self._middle.stack
        self._pages = PagesMade(self._stack)
        self.strip = NoticeStrip()
        self._rail = Rail()
        self._top = FlowRow(at_end=True)
        self._undo = self._tool(tr("↶ Undo"), QKeySequence.StandardKey.Undo)
        self._redo = self._tool(tr("↷ Redo"), QKeySequence.StandardKey.Redo)
        self._lay_out()
        RoomWatch(self, LETTERS_FOR_WORDS, self._find_room)
        on_key(self, QKeySequence.StandardKey.Quit, tr("closes the window"), self.close)
        put_in_place(self, settings)

    def attend(self, desk: Desk) -> None:
        """Connect the frame to the desk once the record is open."""
        self._desk = desk
        desk.told.connect(self.strip.tell)
        desk.changed.connect(self.show_undo)
        desk.was_shut.connect(self.show_undo)
        desk.named.connect(self.strip.look_again)
        desk.changed.connect(self.strip.look_again)
        desk.changed.connect(self.strip.deed_done)
        once_shown = Qt.ConnectionType.QueuedConnection  # what the pages say then counts as well
        desk.changed.connect(self.strip.look_again, once_shown)
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.focusChanged.connect(self.strip.look_again)
        from desktop_app.shop_window.undo_key import UndoKey

        UndoKey(desk)
        desk.errands.started.connect(self.strip.watch)
        desk.errands.over.connect(self.strip.leave)
        self._undo.clicked.connect(self._undo_now)
        self._redo.clicked.connect(self._redo_now)
        self.show_undo()

    def add_place(
        self,
        name: str,
        make: Make,
        *,
        on_rail: bool = True,
        by_key: bool = True,
        beside: bool = False,
    ) -> None:
        """Add a place by the function that makes its page; those on the rail get Alt + number.

        One `beside` the others never comes onto the rail.
        """
        self._pages.add(name, make)
        if beside:
            self._beside.add(name)
        button = RailButton(name)
        button.setCheckable(True)
        button.setAutoExclusive(True)
        button.clicked.connect(self._rail_pressed)
        button.setProperty("place", name)
        if not on_rail:
            button.hide()
        self._rail.add(button)  # which shows it with all the others: shown alone, it lays them out
        if on_rail and by_key and self._numbered < 10:  # there are no more figures
            self._numbered += 1
            number = self._numbered
            key = f"Alt+{number % 10}"  # the tenth has the nought
            press_by(button, key)
            button.setToolTip(tooltip(f"{name} ({key})"))
        self._buttons[name] = button

    def folder(self) -> Path | None:
        """Return the folder of the shop that is open."""
        return None if self._desk is None else self._desk.record.folder

    def has_place(self, name: str) -> bool:
        """Tell whether a place was added."""
        return name in self._pages

    def take_place_away(self, name: str) -> None:
        """Take a place off the rail that is not needed any more."""
        if name in self._buttons:
            self._buttons[name].hide()

    def page(self, name: str) -> QWidget:
        """Return the page of a place, made now if it was never shown."""
        return self._pages.page(name)

    def go_on_making(self, name: str) -> bool:
        """Make a part of a page before anybody goes there; tell whether it is whole."""
        return self._pages.go_on_making(name)

    def has_page(self, name: str) -> bool:
        """Tell whether the page of a place is made."""
        return name in self._pages.whole

    def parts_to_come(self) -> QWidget:
        """Return what the parts lie in of pages that are not whole yet."""
        return self._pages.parts

    def let_unwanted_go(self) -> None:
        """Let the pages go that nobody has gone to: they would show what was."""
        self._pages.drop_unwanted()

    def let_all_go(self) -> None:
        """Let every page go of a window that is closed for good."""
        self._pages.drop_all()

    def pages(self) -> dict[str, QWidget]:
        """Return the pages that were made so far, by what the rail calls them."""
        return {self._buttons[name].text(): page for name, page in self._pages.whole.items()}

    def renew(self, name: str) -> bool:
        """Let the page of a place go, so that it is made anew.

        False while it is shown, or something in it is not accepted, or waits for the server.
        """
        page = self._pages.whole.get(name)
        if page is not None:
            from desktop_app.shop_window.kept_choice import waiting_choices

            if page is self._stack.currentWidget() or _save(page) or waiting_choices(page):
                return False
        self._pages.drop(name)
        return True

    def add_to_top(self, widget: QWidget, *, last: bool = False) -> None:
        """Put something into the strip above the page; the `last` stands beside undo and redo."""
        self._top.insert_from_end(2 if last else 3, widget)

    def go_to(self, name: str) -> None:
        """Show a place, saving first what was only typed on the one that is left."""
        leaving = self._stack.currentWidget()
        if leaving is not None:
            _save(leaving)
        page = self.page(name)
        self._stack.setCurrentWidget(page)
        button = self._buttons[name]
        button.setVisible(name not in self._beside)
        button.setChecked(True)
        self._rail.keep_in_sight()
        if leaving is not page:
            self.strip.page_changed()
        if hasattr(page, "came_here"):
            page.came_here()
        # Qt hands on where the cursor was; a key pressed blindly must undo nothing.
        adrift = QApplication.focusWidget() in (None, self._undo, self._redo)
        if adrift and (first := first_stop(page)) is not None:
            first.setFocus()
        self.came_to.emit(name)

    def name_place(self, name: str, words: str) -> None:
        """Change what the rail's button of a place says (a job's number, how many wait)."""
        self._buttons[name].setText(words)

    def here(self) -> str:
        """Return the name of the place that is shown."""
        current = self._stack.currentWidget()
        return next((n for n, page in self._pages.whole.items() if page is current), "")

    @Slot()
    def show_undo(self) -> None:
        """Let the two buttons name what they would do."""
        if self._desk is None:
            return
        shut = self._desk.why_shut
        undo, redo = None, None
        with suppress(ShopTrouble):  # its server is away: that is told already
            undo, redo = (None, None) if shut else self._desk.record.undo_and_redo()
        undoes = tr("Undo: {words}", words=deed_words(undo)) if undo else tr("Nothing to undo")
        redoes = tr("Redo: {words}", words=deed_words(redo)) if redo else tr("Nothing to redo")
        if shut:
            undoes = tr("No undo: {what}", what=shut.what)
            redoes = tr("No redo: {what}", what=shut.what)
        for button, words, said in ((self._undo, undo, undoes), (self._redo, redo, redoes)):
            button.setEnabled(words is not None)
            button.setToolTip(tooltip(said))
            button.setAccessibleName(said)

    def focusNextPrevChild(self, onward: bool) -> bool:
        """Let Tab go round the window as it is laid out: rail, what stands above, page, strip."""
        from desktop_app.shop_window.tab_order import after_gone, next_round

        whole = self.centralWidget()
        there = None if whole is None else next_round(whole, onward) or after_gone(whole)
        if there is None:
            return super().focusNextPrevChild(onward)
        there.setFocus(
            Qt.FocusReason.TabFocusReason if onward else Qt.FocusReason.BacktabFocusReason
        )
        return True

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Esc, where nothing on the page takes it, put the notice away."""
        if event.key() != Qt.Key.Key_Escape or not self.strip.put_away():
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint, and say so once: what takes longer begins only then."""
        super().paintEvent(event)
        if not self._seen:
            self._seen = True
            QTimer.singleShot(0, self.painted.emit)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Save what is still only typed, let errands end, remember the window's place.

        Something that was not accepted is said first; closing once more leaves it behind.
        """
        refused = [found for page in self._pages.whole.values() if (found := _save(page))]
        if self._desk is not None:
            from desktop_app.shop_window.kept_nowhere import kept_nowhere, kept_till_next_time

            if refused and kept_till_next_time(self._desk):
                refused = []
            refused += kept_nowhere(self._desk, self._pages.whole)
        if news := [one for one in refused if not self._was_told(one)]:
            self._warned = refused
            self.strip.tell(news[0])
            event.ignore()
            return
        if self._desk is not None:
            self._desk.closing.emit()
            self._desk.errands.finish()
        keep_place(self, self._settings)
        super().closeEvent(event)

    def _was_told(self, refused: ShopTrouble) -> bool:
        """Whether that was told the last time, of the words that stand there still."""
        return any(
            told.sentence() == refused.sentence() and getattr(told, "holds", lambda: True)()
            for told in self._warned
        )

    def _lay_out(self) -> None:
        self._top.addWidget(self._undo)
        self._top.addWidget(self._redo)
        right = QVBoxLayout()
        right.setContentsMargins(0, 0, 0, 0)
        top = self._above = QWidget()
        top.setObjectName("tight")  # where words are large
        top.setLayout(self._top)
        top.setContentsMargins(9, 9, 9, 4)
        right.addWidget(top)
        right.addWidget(self._middle, 1)
        right.addWidget(self.strip)
        whole = QWidget()
        row = self._whole = QBoxLayout(QBoxLayout.Direction.LeftToRight, whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self._rail)
        row.addLayout(right, 1)
        self.setCentralWidget(whole)

    def _find_room(self, narrow: bool) -> None:
        """Let undo and redo be signs alone, and the rail lie above, where there is little room."""
        self._undo.setText("↶" if narrow else tr("↶ Undo"))
        self._redo.setText("↷" if narrow else tr("↷ Redo"))
        flat, way = self.width() - self._rail.column() < PAGE_LEAST, QBoxLayout.Direction
        self._whole.setDirection(way.TopToBottom if flat else way.LeftToRight)
        self._rail.lie_flat(flat)
        if self._above.objectName() != (tight := "close" if flat else "tight"):
            self._above.setObjectName(tight)
            dress_anew(self._above)

    def _tool(self, words: str, keys: QKeySequence.StandardKey) -> QToolButton:
        button = QToolButton()
        button.setText(words)
        button.setEnabled(False)
        button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextOnly)
        action = QAction(words, self)
        action.setShortcut(keys)
        action.triggered.connect(partial(self._key_pressed, button))
        self.addAction(action)
        return button

    @Slot()
    def _rail_pressed(self) -> None:
        button = self.sender()
        assert isinstance(button, QPushButton)
        self.go_to(str(button.property("place")))

    def _key_pressed(self, button: QToolButton) -> None:
        """Press undo or redo; where it is off, say why: a key shows nothing by itself."""
        if button.isEnabled():
            button.click()
        elif self._desk is not None:
            self.strip.tell(f"{button.accessibleName()}.")

    @Slot()
    def _undo_now(self) -> None:
        self._reverse(undo=True)

    @Slot()
    def _redo_now(self) -> None:
        self._reverse(undo=False)

    def _reverse(self, *, undo: bool) -> None:
        if self._desk is None:
            return
        page = self._stack.currentWidget()
        if page is not None:
            from desktop_app.shop_window.fields import save_everything

            save_everything(page, rows=False)  # half a row would be entered to be taken back
        done = self._desk.undo() if undo else self._desk.redo()
        if done is not None:
            words = deed_words(done.words)
            again = tr("Done again: {words}.", words=words)
            self.strip.tell(tr("Undone: {words}.", words=words) if undo else again)


def _save(page: QWidget) -> ShopTrouble | None:
    """Save what is only typed on a page; return what to say of a field that refused."""
    # Loaded when the first page is left, long after the frame was painted.
    from desktop_app.shop_window.fields import save_everything
    from desktop_app.shop_window.notice import not_accepted

    save_everything(page)
    do = tr("Mend or empty it, or close the window once more.")
    number = getattr(page, "number", None)  # of the job that a page shows
    if number is None:
        return not_accepted(page, tr(" is not accepted."), do)
    lost = tr(" of {job} is not accepted.", job=number())
    return not_accepted(page, lost, do)
