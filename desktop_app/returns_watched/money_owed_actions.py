"""What the shop does about money that a supplier owes: writes it down, asks for it, ends it."""

from __future__ import annotations

from typing import TypeVar

from desktop_app.language import tr
from desktop_app.returns_watched.owed import State, What
from desktop_app.returns_watched.return_cost import MOST_CENTS
from desktop_app.returns_watched.stored import MoneyOwed
from desktop_app.returns_watched.stored_money_owed import owed_since
from desktop_app.shop_record.as_shown import change_as_shown
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown, cents_in_words

Kind = TypeVar("Kind", What, State)


def write_owed(record: ShopRecord, pair: int, what: str, amount_cents: int | None = None) -> Done:
    """Write that the supplier of a pair's part owes a core's credit or a claim, since today.

    `made` is the row's id.
    """
    owed = _one_of(What, what, tr("“{typed}” is no kind of money owed.", typed=what))
    _check_amount(amount_cents)

    def work(deed: Deed) -> None:
        deed.add(
            MoneyOwed,
            pair_id=pair,
            what=owed.value,
            amount_cents=amount_cents,
            since=record.clock().date().isoformat(),
            state=State.OPEN.value,
            next_step="",
            ended_on=None,
        )

    return record.do(tr("Write down what is owed: {what}", what=tr(owed.value)), work)


def write_owed_amount(
    record: ShopRecord,
    owed: int,
    amount_cents: int | None,
    shown: Shown[int | None] | None = None,
) -> Done:
    """Write how much is owed, in cents; None where nobody knows.

    Raises WrittenMeanwhile where something else stands there than the page has `shown`.
    """
    _check_amount(amount_cents)
    return record.do(
        tr("Write the amount that is owed"),
        lambda deed: change_as_shown(
            deed, MoneyOwed, owed, shown, cents_in_words, amount_cents=amount_cents
        ),
    )


def write_next_step(
    record: ShopRecord, owed: int, words: str, shown: Shown[str] | None = None
) -> Done:
    """Write what is to be done next to get it; raises WrittenMeanwhile as the amount does."""
    return record.do(
        tr("Write the next step"),
        lambda deed: change_as_shown(deed, MoneyOwed, owed, shown, next_step=words.strip()),
    )


def set_owed_state(record: ShopRecord, owed: int, state: str) -> Done:
    """Say how far it is; paid and refused end it today, open and asked begin it again."""
    now = _one_of(State, state, tr("“{typed}” is no state.", typed=state))
    today = record.clock().date().isoformat()

    def work(deed: Deed) -> None:
        # a clock that was set back must not end it before it began
        ended = max(today, owed_since(deed, owed)) if now.is_end else None
        deed.change(MoneyOwed, owed, state=now.value, ended_on=ended)

    return record.do(tr("Say that it is {state}", state=tr(now.value)), work)


def take_owed_out(record: ShopRecord, owed: int) -> Done:
    """Take a sum out that is not owed after all."""
    return record.do(tr("Take out what is owed"), lambda deed: deed.remove(MoneyOwed, owed))


def _check_amount(cents: int | None) -> None:
    if cents is not None and not 0 <= cents <= MOST_CENTS:
        raise ShopTrouble(tr("The amount is not accepted."), do=tr("Accepted: 0 to 1,000,000.00."))


def _one_of(kinds: type[Kind], text: str, refused: str) -> Kind:
    try:
        return kinds(text.strip().lower())
    except ValueError:
        accepted = ", ".join(each.value for each in kinds)
        raise ShopTrouble(refused, do=tr("Accepted: {accepted}.", accepted=accepted)) from None
