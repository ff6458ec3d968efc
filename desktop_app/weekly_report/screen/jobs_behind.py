"""The jobs behind a figure, as buttons that open them."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label, tooltip
from desktop_app.weekly_report.screen.sheet_rows import as_read
from desktop_app.weekly_report.sheet_form import Total
from desktop_app.weekly_report.sheet_names import RAW

MOST_JOBS = 40  # buttons; more are only counted


class JobsBehind(QWidget):
    """The jobs behind a figure as buttons that open them; hidden until one is asked for."""

    job_wanted = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self._said = plain_label("", "quiet", wrap=True)
        self._row_widget = QWidget()
        self._row = FlowRow(self._row_widget)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._said)
        column.addWidget(self._row_widget)
        self.hide()

    def show_jobs(self, jobs: Sequence[str], of: str = "") -> None:
        """Show the jobs by their numbers, the first MOST_JOBS of them as buttons.

        `of` says what they stand behind, where several figures share the place.
        """
        self._row.clear()
        self._said.setText(_behind_words(len(jobs), f"“{of}”" if of else tr("it")))
        for number in jobs[:MOST_JOBS]:
            self._row.addWidget(job_button(number, self._press))
        self._row_widget.setVisible(bool(jobs))
        self.show()

    def go_there(self) -> None:
        """Put the keys on the first job's button."""
        button = self._row_widget.findChild(QPushButton)
        if button is not None:
            button.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def _press(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            self.job_wanted.emit(button.text())


def _behind_words(jobs: int, figure: str) -> str:
    if not jobs:
        return tr("No job stands behind {figure}.", figure=figure)
    if jobs == 1:
        return tr("1 job stands behind {figure}.", figure=figure)
    if jobs <= MOST_JOBS:
        return tr("{jobs:,} jobs stand behind {figure}.", jobs=jobs, figure=figure)
    return tr(
        "{jobs:,} jobs stand behind {figure}; the first {shown} are here, all of them in the "
        "sheet {sheet}.",
        jobs=jobs,
        figure=figure,
        shown=MOST_JOBS,
        sheet=RAW,
    )


def job_button(number: str, press: Callable[[], object]) -> QPushButton:
    """Return a button that says a job's number."""
    button = QPushButton(number)
    button.setAccessibleName(tr("Open the job {number}", number=number))
    button.clicked.connect(press)
    return button


def figure_shown(total: Total, currency: str, behind: JobsBehind, words: str = "") -> QWidget:
    """Return a total's figure, after words; one with jobs behind it is a button that shows them."""
    figure = as_read(total.value, total.kind, currency)
    jobs, name = total.jobs, f"{words or total.words}: {figure}"
    shown = name if words else figure
    if jobs is None or not total.value:
        label = plain_label(shown)
        label.setAccessibleName(name)
        return label
    button = QPushButton(shown)
    button.setAccessibleName(name)
    button.setToolTip(tooltip(tr("Show the jobs behind this figure")))
    button.clicked.connect(lambda: behind.show_jobs(jobs(), total.words))
    return button
