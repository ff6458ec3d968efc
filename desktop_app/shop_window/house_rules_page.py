"""House Rules: every setting of the shop with what it does and what it accepts.

Money is kept in cents, and typed and shown in the shop's currency.
"""

from __future__ import annotations

from collections.abc import Callable, Collection
from functools import partial
from typing import Any

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QWidget

from desktop_app.figures_shown import shown as as_shown
from desktop_app.language import tr
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.house_rules import RuleSaid, all_rules, change_rule, check_rule
from desktop_app.shop_record.rule_words import HEADINGS, rule_words, value_words
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.kept_choice import KeptChoiceField
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.refused_drafts import KeepsRefused, RefusedDrafts

ReadMoney = Callable[[str], int | None]  # the cents that are typed; ShopTrouble where none are
CENTS = "_cents"
LITTLE = 500  # cents; less is asked about: it may have been typed in another unit


class HouseRulesPage(KeepsRefused, ReadingPage):
    """The rules under their headings; each saves itself and says what it accepts if it refuses.

    `headings` are those that are asked for, where not all of them are.
    """

    def __init__(
        self, desk: Desk, read_money: ReadMoney, headings: Collection[str] = HEADINGS
    ) -> None:
        super().__init__()
        self._desk = desk
        self._read_money = read_money
        self._boxes: dict[str, Labelled] = {}
        self._answered: set[str] = set()  # questions answered with "right as typed"
        self.sections = {heading: Section(tr(heading)) for heading in headings}
        rules = {rule.name: rule for rule in all_rules()}
        for heading, section in self.sections.items():
            for name in HEADINGS[heading]:
                section.column.addWidget(self._box(rules[name]))
            self.column.addWidget(section)
        desk.changed.connect(self._reread)
        self._show()
        self._refused = RefusedDrafts(desk)
        self._refused.begin("refused-rules", self)

    def came_here(self) -> None:
        """Show the rules as they are now."""
        self._show()

    def field(self, rule: str) -> QWidget:
        """Return the field of a rule."""
        return self._boxes[rule].field

    def _box(self, rule: RuleSaid) -> Labelled:
        words = rule_words(rule.name)
        name = words[0].upper() + words[1:]
        field: KeptChoiceField | LineField
        if rule.allowed:
            choices = [(value, value_words(value)) for value in rule.allowed]
            field = KeptChoiceField(self._desk, name, choices, partial(self._save, rule.name))
        else:
            field = LineField(name, partial(self._save, rule.name))
        field.setProperty("rule", rule.name)
        field.setMaximumWidth(420)
        box = Labelled(name, field, self._hint(rule))
        box.question.kept.connect(self._answered.add)
        self._boxes[rule.name] = box
        return box

    def _save(self, name: str, value: Any) -> object:
        box = self._boxes[name]
        try:
            if name.endswith(CENTS):
                value = self._cents(next(r for r in all_rules() if r.name == name), value)
            check_rule(name, value)
        except ShopTrouble as trouble:
            box.refuse(trouble.sentence())
            return None
        box.refuse("")
        done = self._desk.do(change_rule, name, value)
        if done is not None and name.endswith(CENTS) and isinstance(box.field, LineField):
            box.field.setText(_amount(value))
        return done

    def _cents(self, rule: RuleSaid, typed: str) -> int:
        cents, (low, high) = self._read_money(typed), rule.bounds or (0, 2**31)
        if cents is None or not low <= cents <= high:
            raise ShopTrouble(
                tr("“{typed}” is not accepted.", typed=typed),
                do=_accepted(_amount(low), _amount(high)),
            )
        return cents

    @Slot(object)
    def _reread(self, done: Done) -> None:
        if "setting" in done.touched:
            self._show()

    def _show(self) -> None:
        rules = self._desk.rules
        for name, box in self._boxes.items():
            value = getattr(rules, name)
            if isinstance(box.field, KeptChoiceField):
                box.field.show_value(value)
            elif isinstance(box.field, LineField):
                box.field.show_value(_amount(value) if name.endswith(CENTS) else str(value))
            if name.endswith(CENTS):
                self._say_amount(name, box, value)

    def _say_amount(self, name: str, box: Labelled, cents: int) -> None:
        """Say the amount in the currency of now, and ask about one that is hardly meant."""
        box.hint(self._hint(next(rule for rule in all_rules() if rule.name == name)))
        sign = self._desk.rules.currency
        question = tr(
            "{sign}{amount} is kept, not {sign}{cents}. Is that meant?",
            sign=sign,
            amount=_amount(cents),
            cents=cents,
        )
        asked = 0 < cents < LITTLE and question not in self._answered
        box.question.ask(question if asked else None)

    def _hint(self, rule: RuleSaid) -> str:
        in_cents = rule.name.endswith(CENTS)
        shown: Callable[[Any], str] = _amount if in_cents else value_words
        said = [rule.says]
        if in_cents:
            said.insert(0, tr("In {currency}.", currency=self._desk.rules.currency))
        if rule.bounds:
            said.append(_accepted(*map(shown, rule.bounds)))
        said.append(tr("Without a change: {value}.", value=shown(rule.default)))
        return " ".join(said)


def _accepted(low: str, high: str) -> str:
    return tr("Accepted: {low} to {high}.", low=low, high=high)


def _amount(cents: int) -> str:
    return as_shown(f"{cents // 100:,}.{cents % 100:02d}")
