"""Tells what follows a hand-over: judgements with cost and promise, answers, money owed."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date, datetime, timedelta
from functools import partial
from typing import Any

from demo_shop.people import COUNTER, OWNER
from demo_shop.return_story import AskedStory, OwedStory, ReturnStory
from demo_shop.storyteller import Storyteller
from demo_shop.written_followed import ASKED, KIND_PROMISES, OWED, OWN_WINDOWS
from demo_shop.written_returns import RETURNS
from desktop_app.returns_watched import actions as returns
from desktop_app.returns_watched import (
    customer_actions,
    judging_actions,
    money_owed_actions,
    told_actions,
)
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.returns_watched.stored_money_owed import parts_of_job
from desktop_app.returns_watched.window_actions import change_window, promise_for_kind

Told = tuple[datetime, Callable[[], None]]


def promise_by_kind(teller: Storyteller) -> None:
    """Let the owner give some part kinds a window of their own."""
    for kind, promise in KIND_PROMISES.items():
        teller.do(OWNER, promise_for_kind, kind, promise)


def own_window(teller: Storyteller, key: str) -> None:
    """Give a job the window that was agreed for it alone, if one was."""
    if key in OWN_WINDOWS:
        teller.do(COUNTER, change_window, teller.jobs[key], *OWN_WINDOWS[key])


def followed(teller: Storyteller) -> Iterator[Told]:
    """Give what followed the written jobs, each at its own moment."""
    at = teller.calendar.at
    for story in RETURNS:
        if story.at_first is not None:
            *_, moment = story.at_first
            yield at(moment), partial(_judged_at_first, teller, story)
        yield at(story.on), partial(_judged, teller, story)
        if story.looked_again:
            again = partial(_to, teller, story, story.looked_again, judging_actions.look_again)
            yield at(story.on) + timedelta(minutes=25), again
        if story.change is not None and story.change.done:
            yield at(story.change.done), partial(_done, teller, story)
    for asked in ASKED:
        yield at(asked.at), partial(_asked, teller, asked)
        if asked.judged is not None:
            yield at(asked.judged[-1]), partial(_judged_as_told, teller, asked)
    for owed in OWED:
        yield from _owed(teller, owed)


def first_repairer(teller: Storyteller, pair: tuple[int, int]) -> str:
    """Return who did the earlier repair of two jobs."""
    with teller.record.reading() as connection:
        judging = read_judging(connection, *pair)
    assert judging is not None
    return judging.first_by


def _to(
    teller: Storyteller, story: ReturnStory, who: str, deed: Callable[..., Any], *words: Any
) -> None:
    teller.do(who, deed, teller.jobs[story.earlier], teller.jobs[story.later], *words)


def _judged_at_first(teller: Storyteller, story: ReturnStory) -> None:
    assert story.at_first is not None
    judgement, cause, _ = story.at_first
    _to(teller, story, story.judged_by, returns.judge_return, judgement)
    _to(teller, story, story.judged_by, returns.name_cause_class, cause)


def _judged(teller: Storyteller, story: ReturnStory) -> None:
    """A return is judged by somebody who did not do the first repair."""
    who = story.judged_by
    pair = (teller.jobs[story.earlier], teller.jobs[story.later])
    said = {"why": story.why, "cause_class": story.cause_class}
    teller.do(who, returns.judge_return, *pair, story.judgement, **said)
    if story.also:
        _to(teller, story, who, judging_actions.say_also, story.also)
    if story.helping:
        _to(teller, story, who, judging_actions.name_helping_causes, story.helping)
    if story.evidence:
        _to(teller, story, who, judging_actions.write_evidence, story.evidence)
    if story.first_view:
        first = first_repairer(teller, pair)
        _to(teller, story, first, judging_actions.write_first_view, story.first_view)
    if story.hours is not None:
        _to(teller, story, COUNTER, judging_actions.write_unpaid_hours, story.hours)
    for name, cents in story.cents.items():
        _to(teller, story, COUNTER, judging_actions.write_amount, name, cents)
    if story.change is not None:
        _promised(teller, story)


def _promised(teller: Storyteller, story: ReturnStory) -> None:
    change = story.change
    assert change is not None
    _to(teller, story, OWNER, returns.promise_change, change.words)
    if change.by:
        _to(teller, story, OWNER, judging_actions.name_who_changes, change.by)
    for name, written in (("change_due", change.due), ("change_check_on", change.check)):
        if written:
            _day(teller, story, OWNER, name, teller.calendar.day(written))


def _done(teller: Storyteller, story: ReturnStory) -> None:
    change = story.change
    assert change is not None
    day = teller.calendar.at(change.done).date()
    _day(teller, story, change.by or OWNER, "change_done_on", day)


def _day(teller: Storyteller, story: ReturnStory, who: str, name: str, day: date) -> None:
    _to(teller, story, who, judging_actions.set_change_day, name, day)


def _asked(teller: Storyteller, asked: AskedStory) -> None:
    teller.do(
        asked.who,
        customer_actions.note_answer,
        teller.jobs[asked.key],
        asked.answer,
        odometer_told=asked.odometer,
        words=asked.words,
        source="paper" if asked.paper else None,
    )


def _judged_as_told(teller: Storyteller, asked: AskedStory) -> None:
    """Let the owner judge the same trouble that was told last of a job."""
    assert asked.judged is not None
    judgement, cause, why, _ = asked.judged
    job = teller.jobs[asked.key]
    with teller.record.reading() as connection:
        told = answers_of_job(connection, job)[-1].id
    said = {"why": why, "cause_class": cause}
    teller.do(OWNER, told_actions.judge_told, job, told, judgement, **said)
    if asked.dangerous is not None:
        teller.do(OWNER, told_actions.say_told_dangerous, job, told, asked.dangerous)


def _owed(teller: Storyteller, owed: OwedStory) -> Iterator[Told]:
    rows: list[int] = []

    def begins() -> None:
        with teller.record.reading() as connection:
            pair, *_ = parts_of_job(connection, teller.jobs[owed.key])[owed.place]
        written = (pair, owed.what, owed.cents)
        made = teller.do(COUNTER, money_owed_actions.write_owed, *written).made
        assert made is not None
        rows.append(made)
        if owed.next_step:
            teller.do(COUNTER, money_owed_actions.write_next_step, made, owed.next_step)

    def goes_on(state: str, next_step: str) -> None:
        teller.do(COUNTER, money_owed_actions.set_owed_state, rows[0], state)
        teller.do(COUNTER, money_owed_actions.write_next_step, rows[0], next_step)

    yield teller.calendar.at(owed.at), begins
    for moment, state, next_step in owed.then:
        yield teller.calendar.at(moment), partial(goes_on, state, next_step)
