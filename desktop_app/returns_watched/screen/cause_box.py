"""Why a return came back: one main cause of fourteen, and any number that helped."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QComboBox, QWidget

from desktop_app.language import tr
from desktop_app.returns_watched import judging_actions
from desktop_app.returns_watched.judgement import RETURN_CAUSES, return_cause
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.return_actions import deeds_of
from desktop_app.returns_watched.screen.return_box import ReturnBox
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, Tick
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.kept_choice import KeptChoiceField, put_back
from desktop_app.shop_window.texts import plain_label, tooltip

NOT_OURS = tr("This cause is not ours: the return stays written down and leaves the count.")


class CauseBox(ReturnBox):
    """A choice for the main cause, a tick for each that helped."""

    def __init__(self, desk: Desk, judging: Judging) -> None:
        super().__init__(tr("Why did it come back?"), desk, judging)
        self._deeds = deeds_of(judging)
        causes = [(None, tr("not said")), *((c.id, f"{c.words}: {c.means}") for c in RETURN_CAUSES)]
        self._main = KeptChoiceField(desk, tr("Main cause"), causes, self._save_main)
        self._main.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self._main_box = Labelled(tr("Main cause"), self._main)
        self._helping: dict[str, Tick] = {}
        box = QWidget()
        self._row = FlowRow(box)
        for cause in RETURN_CAUSES:
            tick = Tick(cause.words)
            tick.setToolTip(tooltip(cause.means))
            tick.clicked.connect(self._save_helping)
            self._helping[cause.id] = tick
            self._row.addWidget(tick)
        self.column.addWidget(self._main_box)
        helped = plain_label(tr("What helped it along (as many as there were)"), wrap=True)
        for widget in (helped, box):
            self.column.addWidget(widget)
            widget.setHidden(judging.is_told)

    def show_return(self, judging: Judging) -> None:
        """Show the causes that are kept."""
        self.take(judging)
        self._main.show_value(judging.cause_class)
        cause = return_cause(judging.cause_class or "")
        self._main_box.hint("" if cause is None or cause.ours else NOT_OURS)
        for identity, tick in self._helping.items():
            tick.setChecked(identity in judging.helping)
            tick.setVisible(identity != judging.cause_class)
        self._row.invalidate()

    def _save_main(self, cause: str | None) -> object:
        return self.do(self._deeds.name_cause, cause)

    @Slot()
    def _save_helping(self) -> None:
        chosen = [identity for identity, tick in self._helping.items() if tick.isChecked()]
        done = self.do(judging_actions.name_helping_causes, chosen)
        for identity, tick in self._helping.items() if done is None else ():
            put_back(tick, identity in self.judging.helping)
