"""Tool Drawer: the shop's instruments, how finely each is read and how far off it may be."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QPushButton, QTableView

from desktop_app.language import tr
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.screen.gauge_study_page import GaugeStudyPage
from desktop_app.parts_compared.screen.instrument_form import InstrumentForm
from desktop_app.parts_compared.screen.instrument_table import InstrumentTable, ToolShown
from desktop_app.parts_compared.stored_pairs import instrument_rows
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import save_everything
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.place_names import DRAWER
from desktop_app.shop_window.room_watch import RoomWatch
from desktop_app.shop_window.texts import plain_label

ROW_HEIGHT, ROWS_SEEN = 40, 12
LETTERS_WIDE = 130  # letters that the page has to be wide, for each figure to have its column


class ToolDrawerPage(ReadingPage):
    """A table of the instruments and a form to add one or to change what is known of it."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._model = InstrumentTable()
        self._table = QTableView()
        self._none = plain_label(
            tr(
                "The drawer is empty: every instrument counts with the figures that are "
                "usual for its sort. Put your own in, and its own figures count."
            ),
            "quiet",
            wrap=True,
        )
        self._form = InstrumentForm(desk)
        self._study: GaugeStudyPage | None = None
        self._put_away = QPushButton(tr("Put the chosen one away"))
        self._lay_out()
        desk.changed.connect(self._heard)

    def came_here(self) -> None:
        """Read the drawer again when its place is shown."""
        self._read()

    def keep_draft(self) -> None:
        """Keep what is typed into the form and a gauge study."""
        self._form.keep_draft()
        if self._study is not None:
            self._study.keep_draft()

    def _lay_out(self) -> None:
        self.column.addWidget(plain_label(DRAWER, "title"))
        drawer = Section(tr("In the drawer"))
        self._table.setModel(self._model)
        self._table.setAccessibleName(tr("Instruments"))
        self._table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self._table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self._table.setTabKeyNavigation(False)
        self._table.verticalHeader().hide()
        self._table.verticalHeader().setDefaultSectionSize(ROW_HEIGHT)
        self._table.horizontalHeader().setMinimumSectionSize(130)
        self._table.verticalHeader().sectionResized.connect(self._give_height)
        RoomWatch(self, LETTERS_WIDE, self._find_room).look()
        self._table.activated.connect(self._open)
        for key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            inside = Qt.ShortcutContext.WidgetShortcut
            words = tr("opens the chosen instrument, in its list")
            on_key(self._table, key, words, self._open, inside)
        self._put_away.clicked.connect(self._away)
        drawer.column.addWidget(self._none)
        drawer.column.addWidget(self._table)
        row = FlowRow()
        change = QPushButton(tr("Change the chosen one"))
        change.clicked.connect(self._open)
        row.addWidget(change)
        row.addWidget(self._put_away)
        try_out = QPushButton(tr("Try the chosen one out: gauge study"))
        try_out.clicked.connect(self._try_out)
        row.addWidget(try_out)
        drawer.column.addLayout(row)
        self._buttons = (change, self._put_away, try_out)
        self.column.addWidget(drawer)
        self.column.addWidget(self._form)

    def _read(self) -> None:
        rows = self._desk.ask(instrument_rows) or ()
        chosen = self._chosen()
        tools = tuple(ToolShown(*row) for row in rows)
        self._model.show_tools(tools, self._desk.rules.length_unit, self._desk.today())
        self._none.setVisible(not tools)
        for widget in (self._table, *self._buttons):
            widget.setVisible(bool(tools))
        self._give_height()
        row = self._model.row_of(chosen.name) if chosen else None
        if tools:
            self._table.selectRow(row or 0)
        self._form.show_unit()
        if self._study is not None:
            studied = next((one for one in tools if one.id == self._study.tool.id), None)
            if studied is None:
                self._leave_study()
            else:
                self._study.show_tool(studied)

    def _find_room(self, narrow: bool) -> None:
        """Put the figures into one column where the letters leave no room for several."""
        chosen = self._table.currentIndex().row()
        self._model.fold(narrow)
        head, grow = self._table.horizontalHeader(), QHeaderView.ResizeMode
        head.setSectionResizeMode(grow.ResizeToContents)
        head.setSectionResizeMode(1 if narrow else 0, grow.Stretch)
        rows = self._table.verticalHeader()
        rows.setSectionResizeMode(grow.ResizeToContents if narrow else grow.Interactive)
        if chosen >= 0:
            self._table.selectRow(chosen)
        self._give_height()

    @Slot()
    def _give_height(self) -> None:
        """Show all rows, or as many as a page has room for."""
        rows = self._table.verticalHeader()
        seen = sum(rows.sectionSize(row) for row in range(min(ROWS_SEEN, rows.count())))
        self._table.setFixedHeight(seen + self._table.horizontalHeader().sizeHint().height() + 4)

    def _chosen(self) -> ToolShown | None:
        index = self._table.currentIndex()
        return self._model.tool(index.row()) if index.isValid() else None

    @Slot()
    def _open(self) -> None:
        tool = self._chosen()
        if tool is not None:
            self._form.fill(tool)

    @Slot()
    def _try_out(self) -> None:
        tool = self._chosen()
        if tool is None:
            return
        if self._study is None or self._study.tool.id != tool.id:
            self._close_study()
            self._study = GaugeStudyPage(self._desk, tool)
            self._study.closed.connect(self._leave_study)
            self.column.insertWidget(self.column.indexOf(self._form), self._study)
            self._study.show()
        self._study.begin_typing()
        QTimer.singleShot(0, self, self._bring_study_up)  # once it has its height

    @Slot()
    def _bring_study_up(self) -> None:
        if self._study is not None:
            self.bring_up(self._study)

    @Slot()
    def _leave_study(self) -> None:
        # Its own button is still being pressed: it goes in the next turn.
        QTimer.singleShot(0, self, self._close_study)

    @Slot()
    def _close_study(self) -> None:
        if self._study is not None:
            save_everything(self._study)
            self._study.hide()
            self._study.setParent(None)
            self._study.deleteLater()
            self._study = None
            self._table.setFocus()

    @Slot()
    def _away(self) -> None:
        tool = self._chosen()
        if tool is not None:
            self._desk.do(actions.put_instrument_away, tool.id)

    @Slot(object)
    def _heard(self, done: Done) -> None:
        if not {"instrument", "setting"} & done.touched:
            return
        if self.isVisible():
            self._read()
