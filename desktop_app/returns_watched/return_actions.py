"""The deeds that are done alike on a return that was seen and on one that was only told."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from desktop_app.returns_watched import actions, judging_actions, told_actions
from desktop_app.returns_watched.judging import Judging
from desktop_app.shop_record.deed import Done

Deed = Callable[..., Done]


@dataclass(frozen=True, slots=True)
class ReturnDeeds:
    """Each takes the record, the earlier job, and the later job or the customer's answer."""

    judge: Deed
    take_back: Deed
    say_why: Deed
    name_cause: Deed
    say_dangerous: Deed


_SEEN = ReturnDeeds(
    judge=actions.judge_return,
    take_back=actions.take_judgement_back,
    say_why=actions.say_why,
    name_cause=actions.name_cause_class,
    say_dangerous=judging_actions.say_dangerous,
)
_TOLD = ReturnDeeds(
    judge=told_actions.judge_told,
    take_back=told_actions.take_told_judgement_back,
    say_why=told_actions.say_why_told,
    name_cause=told_actions.name_told_cause,
    say_dangerous=told_actions.say_told_dangerous,
)


def deeds_of(judging: Judging) -> ReturnDeeds:
    """Return the deeds for one return."""
    return _TOLD if judging.is_told else _SEEN
