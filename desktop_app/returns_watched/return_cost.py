"""What a return cost the shop: hours nobody pays, cash out, and what came back of it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, fields
from decimal import ROUND_HALF_UP, Decimal

from desktop_app.figures_shown import figure, shown
from desktop_app.language import tr
from desktop_app.shop_record.rule_words import rule_words

MOST_CENTS = 100_000_000
MOST_HOURS = 10_000

# The parts of the cash that went out, by their names in the record.
CASH_OUT = {
    "parts_cents": tr("Parts"),
    "sublet_cents": tr("Work given out"),
    "tow_cents": tr("Towing"),
    "loan_car_cents": tr("Loan car"),
    "goodwill_cents": tr("Goodwill"),
}
NOT_SPLIT, RECOVERED = "cost_cents", "recovered_cents"
AMOUNTS = {**CASH_OUT, NOT_SPLIT: tr("In one sum"), RECOVERED: tr("Got back")}


@dataclass(frozen=True, slots=True)
class CostWritten:
    """What was written about the cost of one return, in cents; None where nobody wrote anything.

    `cost_cents` is what nobody has split. `unbilled_hours` are hours of work that nobody pays.
    """

    unbilled_hours: float | None = None
    parts_cents: int | None = None
    sublet_cents: int | None = None
    tow_cents: int | None = None
    loan_car_cents: int | None = None
    goodwill_cents: int | None = None
    cost_cents: int | None = None
    recovered_cents: int | None = None

    @property
    def is_written(self) -> bool:
        """True where anything was written, a nought included."""
        return any(getattr(self, each.name) is not None for each in fields(self))

    @property
    def cash_out_cents(self) -> int:
        """The cash that went out, without what nobody has split."""
        return sum(getattr(self, name) or 0 for name in CASH_OUT)


@dataclass(frozen=True, slots=True)
class ReturnCost:
    """The cost of one return in cents, its kinds apart; `hours` at the shop's cost of an hour."""

    hours: Decimal
    work_cents: int
    cash_out_cents: int
    not_split_cents: int
    recovered_cents: int

    @property
    def total_cents(self) -> int:
        """Work, cash out and what nobody has split, less what came back; below 0 is a gain."""
        gone = self.work_cents + self.cash_out_cents + self.not_split_cents
        return gone - self.recovered_cents


def return_cost(written: CostWritten, hour_cost_cents: int) -> ReturnCost | None:
    """Work out the cost of a return; None where nobody wrote anything about it.

    Half a cent is rounded up. The hour is what it costs the shop (wages and a share of the
    overhead), not what a customer pays for it: common practice, no source.
    """
    if not written.is_written:
        return None
    hours = Decimal(str(written.unbilled_hours or 0))
    work = (hours * hour_cost_cents).quantize(Decimal(1), rounding=ROUND_HALF_UP)
    return ReturnCost(
        hours=hours,
        work_cents=int(work),
        cash_out_cents=written.cash_out_cents,
        not_split_cents=written.cost_cents or 0,
        recovered_cents=written.recovered_cents or 0,
    )


def cost_of_all(costs: Iterable[ReturnCost | None]) -> ReturnCost:
    """Add up the costs of several returns, kind by kind; what nobody wrote adds nothing."""
    known = [cost for cost in costs if cost is not None]
    return ReturnCost(
        hours=sum((cost.hours for cost in known), Decimal(0)),
        work_cents=sum(cost.work_cents for cost in known),
        cash_out_cents=sum(cost.cash_out_cents for cost in known),
        not_split_cents=sum(cost.not_split_cents for cost in known),
        recovered_cents=sum(cost.recovered_cents for cost in known),
    )


def preset_in_words(hour_cost_cents: int, currency: str) -> str:
    """Say that an hour is taken at the price that the program comes with, and where it is set."""
    return tr(
        "{an_hour} an hour is the price that the program comes with: set what an hour costs you "
        "on House Rules, “{rule}”.",
        an_hour=money(hour_cost_cents, currency),
        rule=rule_words("hour_cost_cents"),
    )


def cost_in_words(
    cost: ReturnCost | None, hour_cost_cents: int, currency: str, *, preset: bool = False
) -> str:
    """Say a cost with its kinds apart, then the total.

    `preset` where the price of an hour is the one that the program comes with.
    """
    if cost is None:
        return tr("Nobody has written what it cost.")
    said = []
    if cost.hours:
        hours = figure(cost.hours.normalize(), "f")
        an_hour = money(hour_cost_cents, currency)
        said.append(
            tr(
                "Hours: {hours} h at {an_hour}, {money}",
                hours=hours,
                an_hour=an_hour,
                money=money(cost.work_cents, currency),
            )
        )
    said.append(tr("Cash out: {money}", money=money(cost.cash_out_cents, currency)))
    if cost.not_split_cents:
        said.append(tr("In one sum: {money}", money=money(cost.not_split_cents, currency)))
    if cost.recovered_cents:
        said.append(tr("Got back: {money}", money=money(cost.recovered_cents, currency)))
    total = tr(
        "{said}. Total: {money}.", said=". ".join(said), money=money(cost.total_cents, currency)
    )
    if preset and cost.hours:
        return f"{total} {preset_in_words(hour_cost_cents, currency)}"
    return total


def money(cents: int, currency: str) -> str:
    """Return an amount with its sign and two decimals: "$1,204.50", "−$3.00"."""
    whole, rest = divmod(abs(cents), 100)
    # The joiner keeps the sign and the amount on one line.
    sign = "−\u2060" if cents < 0 else ""
    return f"{sign}{currency}{shown(f'{whole:,}.{rest:02d}')}"
