"""Under Watch: all jobs whose window is open, what ends first, and whom to ask."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QFrame,
    QPushButton,
    QScrollArea,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.screen.ask_view import AskView
from desktop_app.returns_watched.screen.open_windows_view import OpenWindowsView
from desktop_app.returns_watched.stored_watch_place import WatchPlace, read_watch_place
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.place_names import WATCH
from desktop_app.shop_window.texts import plain_label

MATTERS = frozenset(
    (
        *("job", "visit", "vehicle", "vehicle_event", "return_link", "setting", "job_symptom"),
        *("pair", "customer", "customer_asked", "trouble_code"),
    )
)
WINDOWS, ASK = tr("What ends soonest"), tr("Ask the customer")


class UnderWatchPage(QWidget):
    """The page; `job_chosen` carries the id of the job to open."""

    job_chosen = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._stale = True
        self._reading = False
        self._told = plain_label(tr("Looking at the watch …"), wrap=True)
        self._views = QStackedWidget()
        self._windows, self._ask = OpenWindowsView(), AskView(desk)
        self._turn: dict[QWidget, QPushButton] = {}
        turn_row = QWidget()
        turns = FlowRow(turn_row)
        group = QButtonGroup(self)
        for view, words in ((self._windows, WINDOWS), (self._ask, ASK)):
            self._views.addWidget(view)
            view.job_chosen.connect(self.job_chosen)
            button = QPushButton(words)
            button.setCheckable(True)
            group.addButton(button)
            button.clicked.connect(self._turn_over)
            self._turn[view] = button
            turns.addWidget(button)
        self._turn[self._windows].setChecked(True)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 16)
        column.setSpacing(8)
        column.addWidget(plain_label(WATCH, "title"))
        column.addWidget(self._told)
        column.addWidget(turn_row)
        column.addWidget(_Roomy(self._views), 1)
        desk.changed.connect(self._hear)

    def came_here(self) -> None:
        """Read the watch again where something has changed."""
        if self._stale:
            self._read()

    @Slot()
    def _turn_over(self) -> None:
        view = next(v for v, button in self._turn.items() if button.isChecked())
        self._views.setCurrentWidget(view)

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if done.touched & MATTERS:
            self._stale = True
            if self.isVisible():
                self._read()

    def _read(self) -> None:
        if self._reading:
            return
        self._reading, self._stale = True, False
        record, today = self._desk.record, self._desk.today()

        def work() -> WatchPlace:
            with record.reading() as connection:
                return read_watch_place(connection, today)

        errand = self._desk.errands.run(tr("Looking at the watch"), work, self._show)
        errand.failed.connect(self._gave_up)

    def _show(self, place: WatchPlace) -> None:
        self._reading = False
        rules = self._desk.rules
        unit: DistanceUnit = "km" if rules.distance_unit == "km" else "mi"
        self._windows.show_place(place, self._desk.today(), unit)
        self._ask.show_asks(place.to_ask, rules.ask_after_days)
        self._turn[self._ask].setText(f"{ASK} ({len(place.to_ask)})" if place.to_ask else ASK)
        self._told.setText(_summary(len(place.jobs)))
        if self._stale:
            self._read()

    @Slot(object)
    def _gave_up(self, _trouble: object) -> None:
        self._reading, self._stale = False, True


class _Roomy(QScrollArea):
    """Scrolls what it holds where the window is too low for the text of the view that is shown."""

    LINES = 22  # enough for most; what says more asks for more

    def __init__(self, views: QStackedWidget) -> None:
        super().__init__()
        self._views = views
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(views)
        views.currentChanged.connect(self._fit)
        for place in range(views.count()):
            if (view := views.widget(place)) is not None:
                view.installEventFilter(self)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Fit again when other words, or larger ones, are laid out."""
        done = super().eventFilter(watched, event)
        if event.type() == QEvent.Type.LayoutRequest:
            QTimer.singleShot(0, self, self._fit)
        return done

    @Slot()
    def _fit(self) -> None:
        room, least = self.viewport().size(), self.LINES * self.fontMetrics().lineSpacing()
        view = self._views.currentWidget()
        if view is not None and (layout := view.layout()) is not None:
            least = max(least, layout.totalMinimumHeightForWidth(room.width()))
        self._views.resize(room.width(), max(room.height(), least))


def _summary(jobs: int) -> str:
    if not jobs:
        return tr("No window is open. A job comes here when its car is handed over.")
    number = tr("1 window is open") if jobs == 1 else tr("{jobs:,} windows are open", jobs=jobs)
    return tr("{number}. An open window is not a success: nobody knows yet.", number=number)
