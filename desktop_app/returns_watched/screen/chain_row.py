"""The chain of comebacks that a return hangs on, the first job first."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.returns_watched.stored_then_now import ChainedJob
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label


class ChainRow(QWidget):
    """A button for each job with an arrow between; hidden where there are two jobs only."""

    job_chosen = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self._words = plain_label("", wrap=True)
        self._box = QWidget()
        self._row = FlowRow(self._box)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._words)
        column.addWidget(self._box)
        self.hide()

    def show_chain(self, chain: Sequence[ChainedJob]) -> None:
        """Show a chain of jobs, oldest first."""
        self.setVisible(len(chain) > 2)
        self._row.clear()
        if len(chain) <= 2:
            return
        root = chain[0].number
        self._words.setText(
            tr(
                "A chain of {chain} jobs. It counts once, against the first: {root}.",
                chain=len(chain),
                root=root,
            )
        )
        for place, job in enumerate(chain):
            if place:
                self._row.addWidget(plain_label("→"))
            button = QPushButton(f"{job.number}, {job.came_on}")
            button.setAccessibleName(
                tr(
                    "Open {number}, {place} of {chain} in the chain",
                    number=job.number,
                    place=place + 1,
                    chain=len(chain),
                )
            )
            button.setProperty("job", job.job_id)
            button.clicked.connect(self._open)
            self._row.addWidget(button)
            button.show()
        self._box.updateGeometry()

    @Slot()
    def _open(self) -> None:
        self.job_chosen.emit(int(self.sender().property("job")))
