"""Part Kinds: the shelf of everything the shop can compare, and what it says about each kind."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import (
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSize,
    Qt,
    QTimer,
    Slot,
)
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QApplication,
    QBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.parts_compared import kind_actions
from desktop_app.parts_compared.part_kinds.kind_effect import effect_words, pairs_judged_otherwise
from desktop_app.parts_compared.part_kinds.kind_names import kinds_meant
from desktop_app.parts_compared.part_kinds.kind_shelf import KindShelf
from desktop_app.parts_compared.part_kinds.own_kind import own_id
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.screen.kind_sheet import KindSheet
from desktop_app.parts_compared.stored_kinds import jobs_of_pairs
from desktop_app.parts_compared.stored_many import verdicts_of_record
from desktop_app.parts_compared.stored_pairs import drawer
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import save_everything
from desktop_app.shop_window.kept_choice import waiting_choices
from desktop_app.shop_window.look import TOUCH
from desktop_app.shop_window.lost_words import LEFT, let_go
from desktop_app.shop_window.page import ReadingPage
from desktop_app.shop_window.place_names import KINDS
from desktop_app.shop_window.room_watch import RoomWatch
from desktop_app.shop_window.tab_order import stops
from desktop_app.shop_window.texts import plain_label, tooltip

KIND = Qt.ItemDataRole.UserRole
_BETWEEN = 8  # pixels between the words of two rows
LETTERS_BESIDE = 98  # letters that the page has to be wide, for the list to stand beside the kind


class PartKindsPage(QWidget):
    """A list of the kinds with a field to find one, and the kind that is chosen.

    `shelf` gives the kinds as they are now; it is asked again after each change of one.
    `built_in` are those that come with the program.
    """

    def __init__(
        self, desk: Desk, shelf: Callable[[], KindShelf], built_in: Mapping[str, PartKind]
    ) -> None:
        super().__init__()
        self._built_in = built_in
        self._desk = desk
        self._shelf = shelf
        self._field = QLineEdit()
        self._list = QListWidget()
        self._page = ReadingPage()
        self._sheet: KindSheet | None = None
        self._lay_out()
        self._fill()
        desk.changed.connect(self._hear)

    def came_here(self) -> None:
        """Make the field ready to type in."""
        self._field.setFocus()
        self._field.selectAll()

    def keep_draft(self) -> None:
        """Keep what is only typed about the kind that is shown."""
        if self._sheet is not None:
            self._sheet.keep_draft()

    def show_kind(self, kind: str) -> None:
        """Choose a kind by its id."""
        for row in range(self._list.count()):
            if self._list.item(row).data(KIND) == kind:
                self._list.setCurrentRow(row)

    def _lay_out(self) -> None:
        self._field.setAccessibleName(tr("Find a part kind"))
        self._field.setPlaceholderText(tr("rotor, pads, plug …"))
        self._field.setClearButtonEnabled(True)
        self._field.textChanged.connect(self._fill)
        self._field.installEventFilter(self)
        self._list.setAccessibleName(tr("Part kinds"))
        self._list.setMinimumSize(250, 4 * TOUCH)
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setWordWrap(True)  # what a kind is called may be long
        self._list.setResizeMode(QListWidget.ResizeMode.Adjust)
        self._list.setItemDelegate(_TouchedRow(self._list))
        self._list.currentItemChanged.connect(self._choose)
        left = self._left = QVBoxLayout()
        left.addWidget(plain_label(KINDS, "title"))
        left.addWidget(self._field)
        left.addWidget(self._list, 1)
        self._beside = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._beside.addLayout(left, 1)
        self._beside.addWidget(self._page, 4)
        RoomWatch(self, LETTERS_BESIDE, self._find_room)

    def _find_room(self, below: bool) -> None:
        """Put the list above the kind where the letters leave no room beside it."""
        beside = QBoxLayout.Direction.LeftToRight
        self._beside.setDirection(QBoxLayout.Direction.TopToBottom if below else beside)
        self._beside.setStretch(1, 2 if below else 4)
        self._beside.setContentsMargins(0 if below else 16, 12, 0, 12)
        self._left.setContentsMargins(16 if below else 0, 0, 16 if below else 0, 0)

    @Slot()
    def _fill(self) -> None:
        """List the kinds that the field may mean; the chosen one stays chosen where it can."""
        shelf, chosen = self._shelf(), self._chosen()
        self._list.blockSignals(True)
        self._list.clear()
        for kind in kinds_meant(self._field.text(), shelf.kinds):
            own = kind.id in shelf.own
            item = QListWidgetItem(f"✎  {kind.name}" if own else kind.name)
            item.setData(KIND, kind.id)
            item.setToolTip(
                tooltip(tr("{name}, the shop's own", name=kind.name) if own else kind.name)
            )
            self._list.addItem(item)
        self._list.setCurrentRow(0)
        self._list.blockSignals(False)
        if chosen is not None:
            self.show_kind(chosen)
        self._choose()

    def _chosen(self) -> str | None:
        item = self._list.currentItem()
        return None if item is None else str(item.data(KIND))

    @Slot()
    def _choose(self) -> None:
        chosen, shelf = self._chosen(), self._shelf()
        kind = shelf.kinds.get(chosen) if chosen else None
        focus, was_inside = QApplication.focusWidget(), False
        if self._sheet is not None:
            if kind is not None and self._sheet.can_show(kind, own=kind.id in shelf.own):
                self._sheet.show_kind(kind)
                return
            was_inside = focus is not None and self._sheet.isAncestorOf(focus)
            save_everything(self._sheet)
            self._let_sheet_go(self._sheet)
            self._sheet = None
        if kind is None:
            return
        self._sheet = KindSheet(
            self._desk,
            kind,
            own=kind.id in shelf.own,
            built_in=kind.id in self._built_in,
            copy_of=shelf.kinds[kind.like].name if kind.like in shelf.kinds else kind.like,
        )
        self._sheet.effect_wanted.connect(self._weigh)
        self._sheet.copy_wanted.connect(self._copy)
        self._page.column.addWidget(self._sheet)
        self._sheet.show()
        if was_inside:  # a button of the sheet led here; the keys go on where it was
            next(iter(stops(self._sheet)), self._list).setFocus()

    def _let_sheet_go(self, sheet: KindSheet) -> None:
        """Take the sheet off; what is typed there comes back with it, a choice does not."""
        chosen = [(one.accessibleName(), one.typed()) for one in waiting_choices(sheet)]
        let_go(
            self._desk,
            self._page.column,
            sheet,
            tr("The sheet of {name}", name=sheet.name),
            LEFT,
            chosen,
        )

    @Slot(str)
    def _copy(self, name: str) -> None:
        shelf, chosen = self._shelf(), self._chosen()
        if chosen is None:
            return
        kind = shelf.kinds[chosen]
        done = self._desk.do(kind_actions.copy_kind, kind, name, shelf.kinds.keys())
        if done is not None:
            if self._sheet is not None:
                self._sheet.copied()
            self._field.clear()
            self._fill()
            self.show_kind(own_id(name, shelf.kinds.keys()))

    @Slot()
    def _weigh(self) -> None:
        """Judge the pairs of the kind by its built-in form and by ours, beside the window."""
        sheet, chosen = self._sheet, self._chosen()
        if sheet is None or chosen is None:
            return
        record, confidence = self._desk.record, self._desk.rules.confidence
        ours, built_in = self._shelf().kinds[chosen], self._built_in[chosen]

        def work() -> str:
            with record.reading() as connection:
                tools = drawer(connection)
                before, after = (
                    verdicts_of_record(connection, {chosen: one}, tools, confidence, chosen)
                    for one in (built_in, ours)
                )
                changed = pairs_judged_otherwise(before, after)
                return effect_words(before, after, jobs_of_pairs(connection, changed))

        def say(words: str) -> None:
            if self._sheet is sheet:
                sheet.say_effect(words)

        self._desk.errands.run(tr("Judging the pairs both ways"), work, say)

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if {"own_kind", "setting"} & done.touched:
            # A button of the sheet may still be being pressed: the sheet changes in the next turn.
            QTimer.singleShot(0, self, self._fill)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let Down go from the field into the list; Escape empties the field."""
        if watched is self._field and isinstance(event, QKeyEvent):
            if event.type() == QEvent.Type.KeyPress and event.key() == Qt.Key.Key_Down:
                self._list.setFocus()
                return True
            if event.type() == QEvent.Type.KeyPress and event.key() == Qt.Key.Key_Escape:
                self._field.clear()
                return True
        return super().eventFilter(watched, event)


class _TouchedRow(QStyledItemDelegate):
    """As high as its words, in as many lines as they take, and never too low for a glove."""

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        hint = super().sizeHint(option, index) + QSize(0, _BETWEEN)
        return hint.expandedTo(QSize(0, TOUCH - 4))
