"""What the shop does when it asks a customer how the car does: a list, no messages are sent."""

from __future__ import annotations

from datetime import date
from typing import Any

from desktop_app.language import tr
from desktop_app.repair_jobs.entry_bounds import check_reading
from desktop_app.returns_watched.customer_answers import Answer, HeardBy
from desktop_app.returns_watched.link_actions import no_job
from desktop_app.returns_watched.stored import CustomerAsked
from desktop_app.returns_watched.stored_customers_asked import source_of
from desktop_app.returns_watched.stored_links import job_days
from desktop_app.returns_watched.stored_told_judging import judged_in
from desktop_app.shop_record.as_shown import change_as_shown, check_as_shown
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown


def note_answer(
    record: ShopRecord,
    job: int,
    answer: str,
    *,
    on: date | None = None,
    odometer_told: int | None = None,
    words: str = "",
    source: str | None = None,
) -> Done:
    """Note what a customer said; `on` is today where it is not given. `made` is the row's id.

    `source` is "paper" where another shop's bill was seen. Raises ShopTrouble for another answer
    than the five, a car that is still here, a day that has not come or lies before the hand-over,
    or a reading that no odometer can have.
    """
    said = _answer(answer)
    check_reading(odometer_told)
    today = record.clock().date()
    day = today if on is None else on

    def work(deed: Deed) -> None:
        known = job_days(deed.connection, job)
        if known is None:
            raise no_job()
        if known.left_at is None:
            raise ShopTrouble(
                tr("{number} is still in the shop.", number=known.number),
                do=tr("Ask once the car has left."),
            )
        if not known.left_at[:10] <= day.isoformat() <= today.isoformat():
            raise ShopTrouble(
                tr(
                    "{day} is not a day on which this customer can have been asked.",
                    day=day.isoformat(),
                ),
                do=tr(
                    "Accepted: {left_at} to {today}.",
                    left_at=known.left_at[:10],
                    today=today.isoformat(),
                ),
            )
        deed.add(
            CustomerAsked,
            job_id=job,
            asked_on=day.isoformat(),
            answer=said.value,
            odometer_told=odometer_told,
            words=words.strip(),
            asked_by=record.who,
            source=None if source is None else _source(source).value,
        )

    deed_words = tr("Note that the customer says “{answer}”", answer=tr(said.value))
    return record.do(deed_words, work)


def change_answer(record: ShopRecord, asked: int, answer: str) -> Done:
    """Put another answer in the place of one that was noted; refused where it is judged."""
    said = _answer(answer)

    def work(deed: Deed) -> None:
        if said is not Answer.SAME_TROUBLE:
            _refuse_judged(deed, asked)
        deed.change(CustomerAsked, asked, answer=said.value)

    return record.do(tr("Change the customer's answer"), work)


def say_source(
    record: ShopRecord, asked: int, source: str, shown: Shown[str] | None = None
) -> Done:
    """Say how the shop knows of the same trouble: told, or on another shop's bill."""
    said = _source(source)

    def work(deed: Deed) -> None:
        now = source_of(deed.connection, asked)
        check_as_shown(deed, CustomerAsked, shown, now, said.value)
        deed.change(CustomerAsked, asked, source=said.value)

    return record.do(tr("Say how it became known"), work)


def write_told_odometer(
    record: ShopRecord,
    asked: int,
    reading: int | None,
    shown: Shown[int | None] | None = None,
) -> Done:
    """Write the odometer as the customer told it; None where it was not told."""
    check_reading(reading)
    return _change(record, tr("Write the odometer as told"), asked, shown, odometer_told=reading)


def write_answer_words(
    record: ShopRecord, asked: int, words: str, shown: Shown[str] | None = None
) -> Done:
    """Write down the customer's words."""
    said = words.strip()
    return _change(record, tr("Write down what the customer says"), asked, shown, words=said)


def take_answer_out(record: ShopRecord, asked: int) -> Done:
    """Take a noted answer out again; refused where it is judged."""

    def work(deed: Deed) -> None:
        _refuse_judged(deed, asked)
        deed.remove(CustomerAsked, asked)

    return record.do(tr("Take the answer out"), work)


def _refuse_judged(deed: Deed, asked: int) -> None:
    """Raise a ShopTrouble where an answer belongs to something judged: that would count anew."""
    judged = judged_in(deed.connection, asked)
    if judged is not None:
        raise ShopTrouble(
            tr(
                "What was told here is judged “{judgement}”; without it that would count anew.",
                judgement=tr(judged.value),
            ),
            kept=tr("Nothing was changed."),
            do=tr("Take the judgement back first, under It's Back."),
        )


def _change(
    record: ShopRecord, said: str, asked: int, shown: Shown[Any] | None = None, **values: Any
) -> Done:
    return record.do(
        said, lambda deed: change_as_shown(deed, CustomerAsked, asked, shown, **values)
    )


def _source(text: str) -> HeardBy:
    try:
        return HeardBy(text.strip().lower())
    except ValueError:
        accepted = ", ".join(each.value for each in HeardBy)
        raise ShopTrouble(
            tr("“{typed}” is no way to know of it.", typed=text),
            do=tr("Accepted: {accepted}.", accepted=accepted),
        ) from None


def _answer(text: str) -> Answer:
    try:
        return Answer(text.strip().lower())
    except ValueError:
        accepted = ", ".join(each.value for each in Answer)
        raise ShopTrouble(
            tr("“{typed}” is no answer.", typed=text),
            do=tr("Accepted: {accepted}.", accepted=accepted),
        ) from None
