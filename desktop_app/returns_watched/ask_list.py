"""Whom to ask how the car does: a list for the telephone, whatever answer is hoped for."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from desktop_app.language import tr
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid
from desktop_app.returns_watched.waiting import seen_in_words
from desktop_app.returns_watched.watch_words import days_in_words, ends_in_words
from desktop_app.returns_watched.watching import WatchedJob

ENDS_SOON = 7  # days; common practice, no source

WHY_ALL = tr(
    "Ask everyone here, in this order: whom you ask must not depend on the answer you "
    "hope for, or the shop's numbers lie. This is a list only; no message is sent."
)


@dataclass(frozen=True, slots=True)
class JobBeside:
    """What the list needs to know of a job besides its window."""

    customer: str = ""
    phone: str = ""
    now_and_then: bool = False
    proof_level: int | None = None
    promise: str = ""
    answers: tuple[CustomerSaid, ...] = ()

    @property
    def proved(self) -> bool:
        """True where it was driven under the conditions the customer told of."""
        return self.proof_level is not None and self.proof_level >= ProofLevel.SAME_CONDITIONS


@dataclass(frozen=True, slots=True)
class ToAsk:
    """A job whose customer is to be asked, and why."""

    job: WatchedJob
    beside: JobBeside
    why: str

    @property
    def phone(self) -> str:
        """The number, or that there is none."""
        return self.beside.phone or tr("no number written down")

    @property
    def tried(self) -> str:
        """When it was tried in vain; nothing where it was not."""
        days = [said.on for said in self.beside.answers if said.answer is Answer.NOT_REACHED]
        return tr("Not reached on {day}.", day=day_in_words(max(days))) if days else ""

    @property
    def told_same(self) -> bool:
        """True where the customer told of the same trouble, and no visit speaks for the car."""
        return self.job.told_since is not None

    @property
    def question(self) -> str:
        """What to ask, in words that lean to no answer."""
        concern = self.job.concern.strip().rstrip(".")
        about = f"“{concern}”" if concern else tr("what it was here for")
        return tr(
            "Has it happened again since {day}: {about}? If so, when and how "
            "often? Is anything else the matter? What does the odometer say today?",
            day=day_in_words(self.job.left_on),
            about=about,
        )


def whom_to_ask(
    jobs: Iterable[WatchedJob], beside: Mapping[int, JobBeside], today: date, after_days: int
) -> tuple[ToAsk, ...]:
    """Return the jobs on watch whose customer is to be asked, in the order of the jobs given.

    A fault that came now and then and was not proved under its conditions is asked about once
    `after_days` have gone; any job whose window will probably end within a week, where nothing was
    heard. Who has answered is not asked again; who was tried today comes again tomorrow. A job that
    came back or waits for a judgement needs no asking. Who told of the same trouble stands before
    all others until a visit of the car waits for a judgement of that, or is judged.
    """
    found = []
    for job in jobs:
        own = beside.get(job.job_id, JobBeside())
        why = _why(job, own, today, after_days)
        if why:
            found.append(ToAsk(job, own, why))
    return tuple(sorted(found, key=lambda ask: not ask.told_same))


def _why(job: WatchedJob, own: JobBeside, today: date, after_days: int) -> str:
    if job.told_since is not None:
        seen = seen_in_words(job.told_since, job.seen_on)
        told = tr("Told: the same trouble, on {day}", day=day_in_words(job.told_since))
        do = tr("have the car in, or judge under It's Back what was told")
        return f"{told}. {seen[0].upper()}{seen[1:]}: {do}."
    if job.came_back or job.waits or _answered(own, today):
        return ""
    said = []
    if own.now_and_then and not own.proved and job.days_gone >= after_days:
        said.append(
            tr(
                "It came now and then, was not proved under its conditions, and left {days} ago.",
                days=days_in_words(job.days_gone),
            )
        )
    soon = job.ends is not None and job.ends.on <= today + timedelta(days=ENDS_SOON)
    if soon and job.seen_on is None:
        said.append(
            tr(
                "Its window ends: {when}. Nothing was heard since.",
                when=ends_in_words(job.ends),
            )
        )
    return " ".join(said)


def _answered(own: JobBeside, today: date) -> bool:
    return any(said.answer is not Answer.NOT_REACHED or said.on == today for said in own.answers)
