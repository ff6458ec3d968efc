"""What a return cost the shop: hours, cash out, what came back, and the total."""

from __future__ import annotations

from functools import partial
from typing import Any

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QPushButton

from desktop_app.figures_shown import shown
from desktop_app.language import tr
from desktop_app.repair_jobs.typed_entry import read_hours, read_money
from desktop_app.returns_watched import judging_actions
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.return_cost import (
    AMOUNTS,
    cost_in_words,
    money,
    preset_in_words,
    return_cost,
)
from desktop_app.returns_watched.screen.return_box import ReturnBox
from desktop_app.returns_watched.screen.typed_field import TypedField, amount_text
from desktop_app.shop_record.house_rules import hour_is_preset
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label

HINTS = {
    "parts_cents": tr("What nobody pays back."),
    "goodwill_cents": tr("Given back or let off."),
    "cost_cents": tr("Not in the others; added to them."),
    "recovered_cents": tr("From a supplier or an insurer."),
}


class CostBox(ReturnBox):
    """A field for the hours and for each amount; the sums stand beneath, each kind apart."""

    def __init__(self, desk: Desk, judging: Judging) -> None:
        super().__init__(tr("What did it cost?"), desk, judging)
        self._hours = TypedField(tr("Hours nobody pays"), read_hours, self._save_hours, "", _plain)
        self._take = QPushButton("")
        self._take.clicked.connect(self._take_over)
        self._amounts = {
            name: TypedField(
                words,
                read_money,
                partial(self._save_amount, name),
                HINTS.get(name, ""),
                amount_text,
            )
            for name, words in AMOUNTS.items()
        }
        self._sums = plain_label("", wrap=True)
        self._elsewhere = plain_label("", wrap=True)
        row = FlowRow()
        row.addWidget(self._take)
        self._how = plain_label("", "quiet", wrap=True)
        self.column.addWidget(self._how)
        self.column.addWidget(self._elsewhere)
        self.column.addWidget(FieldRows((self._hours, *self._amounts.values()), 4, 150))
        self.column.addLayout(row)
        self.column.addWidget(self._sums)

    def show_return(self, judging: Judging) -> None:
        """Show what was written about the cost, and what it comes to."""
        self.take(judging)
        rules, cost = self.desk.rules, judging.cost
        self._hours.show_kept(cost.unbilled_hours)
        for name, field in self._amounts.items():
            field.show_kept(getattr(cost, name))
        self._how.setText(
            tr("Amounts in {currency}. Empty where nobody knows.", currency=rules.currency)
        )
        hours = judging.hours_unpaid
        elsewhere = tr(" and ").join(judging.cost_elsewhere)
        self._elsewhere.setText(
            tr(
                "Costs of this visit are written with {elsewhere} already. Write here only "
                "what is not among them: other amounts are added up; the very same amounts "
                "count once.",
                elsewhere=elsewhere,
            )
        )
        self._elsewhere.setVisible(bool(elsewhere))
        untaken = hours is not None and cost.unbilled_hours is None
        self._take.setVisible(untaken and not elsewhere)
        self._take.setText(
            tr("Take {hours} hours from {later}", hours=_plain(hours or 0), later=judging.later)
        )
        hour = judging.hour_cost(rules.hour_cost_cents)
        preset = hour == rules.hour_cost_cents and hour_is_preset(rules)
        said = cost_in_words(return_cost(cost, hour), hour, rules.currency, preset=preset)
        amount = money(hour, rules.currency)
        if preset:
            an_hour = preset_in_words(hour, rules.currency)
        elif hour == rules.hour_cost_cents:
            an_hour = tr("An hour costs {amount} (house rule).", amount=amount)
        else:
            an_hour = tr(
                "An hour cost, when this was judged, {amount} (house rule).", amount=amount
            )
        self._sums.setText(said if cost.is_written else f"{said} {an_hour}")

    @Slot()
    def _take_over(self) -> None:
        self.do(judging_actions.write_unpaid_hours, self.judging.hours_unpaid)

    def _save_hours(self, hours: Any) -> object:
        return self.save(self._hours.line, judging_actions.write_unpaid_hours, hours)

    def _save_amount(self, name: str, cents: Any) -> object:
        field = self._amounts[name].line
        return self.save(field, judging_actions.write_amount, name, cents)


def _plain(hours: float) -> str:
    return shown(f"{hours:.2f}".rstrip("0").rstrip("."))
