"""The deeds about returns: judged, said more about, told by customers; and what is promised."""

from __future__ import annotations

from typing import Any

from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.returns_watched import (
    actions,
    customer_actions,
    judging_actions,
    told_actions,
    window_actions,
)
from desktop_app.returns_watched.customer_answers import Answer, HeardBy
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.return_cost import AMOUNTS
from desktop_app.returns_watched.stored import CustomerAsked, ReturnLink
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.returns_watched.stored_told_judging import read_told_judging
from tests.undo_machine.deeds_to_do import CENTS, GONE, HOURS, READINGS, Deeds, Given, Seen, using

JUDGED = (*Judgement, "who knows")
CAUSES = (*(cause.id for cause in RETURN_CAUSES[:3]), "moonlight")
PROMISES = (Promise(90, None, 3000), Promise(None, 12, None, "both"), Promise(None, None, 500))
NAMES = (None, "Ana", "Bo", "")


def jobs(seen: Seen) -> tuple[int, int]:
    """Choose an earlier job and a later one: mostly of one car, or judged already."""
    links = [
        (row["earlier_job_id"], row["later_job_id"])
        for row in seen.state[ReturnLink.__tablename__].values()
    ]
    car = {job: _car(seen, job) for job in seen.rows(Job)}
    same = [(a, b) for a in car for b in car if a < b and car[a] == car[b]]
    return seen.of([*links, *same, (seen.one(Job), seen.one(Job))])


def _car(seen: Seen, job: int) -> Any:
    return seen.row(Visit, seen.row(Job, job)["visit_id"])["vehicle_id"]


def told(seen: Seen) -> tuple[int, int]:
    """Choose a job, and an answer of its customer."""
    asked = seen.one(CustomerAsked)
    return seen.row(CustomerAsked, asked).get("job_id", GONE), asked


def about(*words: Any) -> Any:
    """Say something of a return, on what its page showed."""

    def choose(seen: Seen) -> Given:
        pair = jobs(seen)
        with seen.record.reading() as connection:
            shown = read_judging(connection, *pair) if seen.yes() else None
        said = [one(seen) if callable(one) else one for one in words]
        return using(*pair, *said, shown=shown)

    return choose


def about_told(*words: Any) -> Any:
    """Say something of what was told, on what its page showed."""

    def choose(seen: Seen) -> Given:
        pair = told(seen)
        with seen.record.reading() as connection:
            shown = read_told_judging(connection, *pair) if seen.yes() else None
        return using(*pair, *(one(seen) for one in words), shown=shown)

    return choose


def judged(seen: Seen) -> dict[str, Any]:
    """A judgement with what may be said in one go."""
    return {
        "why": seen.of((None, seen.words())),
        "cause_class": seen.of((None, *CAUSES)),
        "by": seen.of(NAMES),
    }


def judge(seen: Seen) -> Given:
    """Judge a return."""
    return using(*jobs(seen), seen.of(JUDGED), cost_cents=seen.of(CENTS), **judged(seen))


def judge_told(seen: Seen) -> Given:
    """Judge what was told."""
    return using(*told(seen), seen.of(JUDGED), **judged(seen))


def answer(seen: Seen) -> Given:
    """Note what a customer says."""
    return using(
        seen.one(Job),
        seen.of((*Answer, Answer.SAME_TROUBLE, "hm")),
        on=seen.of((None, seen.day())),
        odometer_told=seen.of(READINGS),
        words=seen.words(),
        source=seen.of((None, *HeardBy, "dreamt")),
    )


def of_answer(column: str, choices: Any) -> Any:
    """Change one thing of an answer."""

    def choose(seen: Seen) -> Given:
        asked = seen.one(CustomerAsked)
        said = seen.words() if choices is None else seen.of(choices)
        return using(asked, said, seen.shown(CustomerAsked, asked, column))

    return choose


def kind_promise(seen: Seen) -> Given:
    """Promise something for a part kind, or no more."""
    return using(seen.of(("distributor-rotor", "brake-pads", " ")), seen.of((None, *PROMISES)))


def window(seen: Seen) -> Given:
    """Change the promise of one job."""
    limits = seen.of((90, "12", "", None, 0, -5)), seen.of((3000, "", None, "many"))
    rule = seen.of(("first", "both", "never"))
    return using(seen.one(Job), *limits, rule, seen.of((None, 12, "")))


def some(choices: Any) -> Any:
    """Choose some of these."""
    return lambda seen: seen.some(choices)


def one_of(*choices: Any) -> Any:
    """Choose one of these."""
    return lambda seen: seen.of(choices)


DEEDS: Deeds = {
    actions.judge_return: judge,
    actions.take_judgement_back: about(),
    actions.say_why: about(Seen.words),
    actions.name_cause_class: about(one_of(None, *CAUSES)),
    actions.promise_change: about(Seen.words),
    actions.say_not_same_vehicle: about(),
    actions.say_same_vehicle: about(),
    judging_actions.say_also: about(some(JUDGED[:5])),
    judging_actions.name_helping_causes: about(some(CAUSES)),
    judging_actions.write_evidence: about(Seen.words),
    judging_actions.write_first_view: about(Seen.words),
    judging_actions.say_dangerous: about(one_of(None, True, False)),
    judging_actions.look_again: about(),
    judging_actions.take_second_look_back: about(),
    judging_actions.write_unpaid_hours: about(one_of(*HOURS)),
    judging_actions.write_amount: about(one_of(*AMOUNTS, "glory"), one_of(*CENTS)),
    judging_actions.name_who_changes: about(Seen.words),
    judging_actions.set_change_day: about(
        one_of(*judging_actions.CHANGE_DAYS, "someday"), lambda s: s.of((None, s.day()))
    ),
    told_actions.judge_told: judge_told,
    told_actions.take_told_judgement_back: about_told(),
    told_actions.say_why_told: about_told(Seen.words),
    told_actions.name_told_cause: about_told(one_of(None, *CAUSES)),
    told_actions.say_told_dangerous: about_told(one_of(None, True, False)),
    customer_actions.note_answer: answer,
    customer_actions.change_answer: lambda s: using(s.one(CustomerAsked), s.of((*Answer, "hm"))),
    customer_actions.say_source: of_answer("source", (*HeardBy, "dreamt")),
    customer_actions.write_told_odometer: of_answer("odometer_told", READINGS),
    customer_actions.write_answer_words: of_answer("words", None),
    customer_actions.take_answer_out: lambda s: using(s.one(CustomerAsked)),
    window_actions.promise_of_shop: lambda s: using(s.of(PROMISES)),
    window_actions.promise_for_kind: kind_promise,
    window_actions.change_window: window,
}
