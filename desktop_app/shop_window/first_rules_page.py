"""A new shop is set up: its name, its units, its promise, its people; each has a default."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.house_rules import HouseRules
from desktop_app.shop_record.rule_words import SHOP
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.house_rules_page import HouseRulesPage, ReadMoney
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.place_names import FIRST_RULES
from desktop_app.shop_window.texts import plain_label

_SAYS = tr(
    "All of it can stay as it is and be changed at any time under House Rules, where "
    "every other rule stands too."
)


class FirstRulesPage(HouseRulesPage):
    """The few rules that a new shop wants to say at once; `done` leads on to the first car."""

    done = Signal()

    def __init__(self, desk: Desk, read_money: ReadMoney, *boxes: QWidget) -> None:
        super().__init__(desk, read_money, [SHOP])
        self.column.insertWidget(0, plain_label(FIRST_RULES, "title"))
        self.column.insertWidget(1, plain_label(_SAYS, "quiet", wrap=True))
        for box in boxes:
            self.column.addWidget(box)
        begin = QPushButton(tr("Begin: a car is here"))
        begin.setObjectName("next")
        begin.clicked.connect(self.done)
        last = Section("")
        last.column.addWidget(begin)
        self.column.addWidget(last)

    def came_here(self) -> None:
        """Show the rules as they are now; a name that nobody gave is typed over."""
        super().came_here()
        name = self.field("shop_name")
        if isinstance(name, LineField) and name.text() == HouseRules().shop_name:
            name.selectAll()
