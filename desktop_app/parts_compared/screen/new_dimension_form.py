"""The form that adds a dimension of the shop's own to a part kind."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.parts_compared import kind_actions
from desktop_app.parts_compared.instruments.instrument import (
    USUAL_INSTRUMENTS,
    tool_words,
    usual_instrument,
)
from desktop_app.parts_compared.part_kinds.own_kind import new_dimension, with_dimension
from desktop_app.parts_compared.part_kinds.part_kind import DIRECTIONS, ROLES, Direction, PartKind
from desktop_app.parts_compared.part_kinds.said_of_dimension import ROLE_WORDS
from desktop_app.parts_compared.stored_kinds import dimensions_read
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.texts import plain_label

UNITS = ("mm", "deg", "ohm", "kohm", "V", "A", "kPa", "ml", "C", "g/s")
HINTS = {
    "same": tr("either way, such as 0.2"),
    "orientation": tr("degrees either way, such as 2"),
    "restored": tr("from and to, such as 0.1 to 1.5"),
    "limit": tr("10 to 20, at least 10, at most 20, or nothing"),
    "count": tr("nothing to say: it must be equal"),
    "word": tr("nothing to say: it must be alike"),
}


class NewDimensionForm(QWidget):
    """Name, role, unit, how much is allowed, instrument; kept with one button."""

    def __init__(self, desk: Desk, kind: PartKind) -> None:
        super().__init__()
        self._desk = desk
        self._kind = kind
        self._label, self._allowed = QLineEdit(), QLineEdit()
        self._role, self._unit, self._tool, self._way = (ChoiceList() for _ in range(4))
        for role in ROLES:
            self._role.addItem(ROLE_WORDS[role], role)
        for unit in UNITS:
            self._unit.addItem(unit, unit)
        for way in DIRECTIONS:
            self._way.addItem(tr(way), way)
        self._allowed_box = Labelled(tr("Allowed"), self._allowed)
        self._way_box = Labelled(tr("Comes back"), self._way)
        self._refusal = plain_label("", wrap=True)
        self._refusal.hide()
        grid = QGridLayout()
        boxes = (
            Labelled(tr("Another dimension"), self._label),
            Labelled(tr("What it asks"), self._role),
            Labelled(tr("In"), self._unit),
            self._allowed_box,
            self._way_box,
            Labelled(tr("Read with"), self._tool),
        )
        for place, box in enumerate(boxes):
            grid.addWidget(box, place // 3, place % 3)
        add = QPushButton(tr("Add it"))
        add.setAccessibleName(tr("Add the dimension"))
        add.clicked.connect(self._add)
        self._label.returnPressed.connect(self._add)
        self._allowed.returnPressed.connect(self._add)
        row = QHBoxLayout()
        row.addWidget(add)
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 10, 0, 0)
        column.addLayout(grid)
        column.addWidget(self._refusal)
        column.addLayout(row)
        self._role.currentIndexChanged.connect(self._fit)
        self._unit.currentIndexChanged.connect(self._fit)
        self._fit()

    def unsaved(self) -> dict[str, str]:
        """Return what is typed, with what is chosen for it; empty where nothing is typed."""
        if not self._label.text().strip() and not self._allowed.text().strip():
            return {}
        return {
            "label": self._label.text(),
            "role": str(self._role.currentData()),
            "unit": self._unit.currentData(),
            "allowed": self._allowed.text(),
            "way": self._way.currentData(),
            "tool": str(self._tool.currentData()),
        }

    def fill_in(self, typed: Mapping[str, str]) -> None:
        """Put in what was typed before."""
        self._label.setText(typed.get("label", ""))
        self._allowed.setText(typed.get("allowed", ""))
        self._role.setCurrentIndex(max(0, self._role.findData(typed.get("role", ROLES[0]))))
        for choice, key in ((self._unit, "unit"), (self._way, "way"), (self._tool, "tool")):
            choice.setCurrentIndex(max(0, choice.findData(typed.get(key, ""))))

    def show_kind(self, kind: PartKind) -> None:
        """Take the kind as it is now: the dimension is added to that."""
        self._kind = kind

    @Slot()
    def _fit(self) -> None:
        """Offer what goes with the role and the unit that are chosen."""
        role = self._role.currentData()
        unit = {"count": "n", "word": "word", "orientation": "deg"}.get(role)
        off_because(self._unit, "" if unit is None else tr("“What it asks” settles the unit."))
        self._way_box.setVisible(role == "restored")
        equal = HINTS[role] if role in ("count", "word") else ""
        off_because(self._allowed, equal)
        self._allowed_box.hint(HINTS[role])
        chosen = self._tool.currentData()
        self._tool.clear()
        wanted = unit or self._unit.currentText()
        looked_at = wanted in ("n", "word")
        for name in USUAL_INSTRUMENTS:
            tool = usual_instrument(name, wanted)
            if name == "eye" if looked_at else tool is not None and tool.resolution > 0:
                self._tool.addItem(tool_words(name), name)
        self._tool.setCurrentIndex(max(0, self._tool.findData(chosen)))

    @Slot()
    def _add(self) -> None:
        role, unit = self._role.currentData(), self._unit.currentText()
        tool, allowed = str(self._tool.currentData()), self._allowed.text()
        way: Direction = "smaller" if self._way.currentData() == "smaller" else "bigger"
        label, length_unit = self._label.text(), self._desk.rules.length_unit

        read = self._desk.ask(dimensions_read, self._kind.id) or frozenset()

        def change(kept: PartKind) -> PartKind:
            one = new_dimension(kept, label, role, unit, tool, allowed, way, length_unit, read)
            return with_dimension(kept, one)

        try:
            change(self._kind)
        except ShopTrouble as trouble:
            self._refusal.setText(f"✎ {trouble.sentence()}")
            self._refusal.show()
            return
        self._refusal.hide()
        if self._desk.do(kind_actions.change_own_kind, self._kind, change) is not None:
            self._label.clear()
            self._allowed.clear()
