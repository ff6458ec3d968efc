"""House Rules: every setting of the shop with what it does and what it accepts."""

from __future__ import annotations

from functools import partial
from typing import Any

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QVBoxLayout

from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.house_rules import RuleSaid, all_rules, change_rule, check_rule
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField, Labelled, LineField
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.texts import plain_label


class HouseRulesPage(ReadingPage):
    """The rules in their order; each saves itself and says what it accepts when it refuses."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._boxes: dict[str, Labelled] = {}
        self.column.addWidget(plain_label("House Rules", "title"))
        section = Section("")
        self.extra = QVBoxLayout()
        for rule in (one for one in all_rules() if one.alone):
            section.column.addWidget(self._box(rule))
        self.column.addWidget(section)
        self.column.addLayout(self.extra)
        desk.changed.connect(self._reread)
        self._show()

    def came_here(self) -> None:
        """Show the rules as they are now."""
        self._show()

    def _box(self, rule: RuleSaid) -> Labelled:
        words = rule.name.replace("_", " ")
        name = words[0].upper() + words[1:]
        field: ChoiceField | LineField
        if rule.allowed:
            field = ChoiceField(name, [(value, str(value)) for value in rule.allowed], _nothing)
            field.activated.connect(self._chosen)
        else:
            field = LineField(name, partial(self._save, rule.name))
        field.setProperty("rule", rule.name)
        field.setMaximumWidth(420)
        box = Labelled(name, field, _hint(rule))
        self._boxes[rule.name] = box
        return box

    @Slot()
    def _chosen(self) -> None:
        field = self.sender()
        assert isinstance(field, ChoiceField)
        self._save(str(field.property("rule")), field.currentData())

    def _save(self, name: str, value: Any) -> object:
        rule = next(r for r in all_rules() if r.name == name)
        try:
            check_rule(name, value)
        except ShopTrouble as trouble:
            self._boxes[name].hint(trouble.sentence())
            return None
        self._boxes[name].hint(_hint(rule))
        return self._desk.do(change_rule, name, value)

    @Slot(object)
    def _reread(self, done: Done) -> None:
        if "setting" in done.touched:
            self._show()

    def _show(self) -> None:
        rules = self._desk.rules
        for name, box in self._boxes.items():
            value = getattr(rules, name)
            if isinstance(box.field, ChoiceField):
                box.field.show_value(value)
            elif isinstance(box.field, LineField):
                box.field.show_value(str(value))


def _hint(rule: RuleSaid) -> str:
    bounds = f" Accepted: {rule.bounds[0]} to {rule.bounds[1]}." if rule.bounds else ""
    return f"{rule.says}{bounds} Without a change: {rule.default}."


def _nothing(_value: Any) -> object:
    return None
