"""What a person decides about a return, why it came back, and the chain it hangs on."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from desktop_app.language import marked, tr


class Judgement(StrEnum):
    """The eight things a person may decide; the first four are comebacks."""

    SAME_SYMPTOM = marked("same symptom")
    SAME_SYSTEM = marked("same system")
    SAME_PART = marked("same part")
    FROM_OUR_HANDS = marked("from our hands")
    FORETOLD = marked("foretold")
    OTHER_HANDS = marked("other hands")
    UNRELATED = marked("unrelated")
    CANNOT_TELL = marked("cannot tell")

    @property
    def is_comeback(self) -> bool:
        """True for the four that count against the earlier repair."""
        return self in _COMEBACKS

    @property
    def means(self) -> str:
        """What the judgement says, in one sentence."""
        return _MEANS[self]


_COMEBACKS = frozenset(
    (
        Judgement.SAME_SYMPTOM,
        Judgement.SAME_SYSTEM,
        Judgement.SAME_PART,
        Judgement.FROM_OUR_HANDS,
    )
)
_MEANS = {
    Judgement.SAME_SYMPTOM: tr("The car does again what it came for."),
    Judgement.SAME_SYSTEM: tr("Told in other words, but it is the system we worked on."),
    Judgement.SAME_PART: tr("The part we fitted failed or did not sit right."),
    Judgement.FROM_OUR_HANDS: tr("New trouble in something we touched, moved or had to get past."),
    Judgement.FORETOLD: tr("The work that was declined did what we had said it would."),
    Judgement.OTHER_HANDS: tr("Someone else worked on it, or it was in an accident, since."),
    Judgement.UNRELATED: tr("A new concern that has nothing to do with our repair."),
    Judgement.CANNOT_TELL: tr("Nobody can say, and it stays written down as that."),
}


@dataclass(frozen=True, slots=True)
class ReturnCause:
    """One class of reasons why a car came back; `ours` is False where it leaves the count."""

    id: str
    words: str
    means: str
    ours: bool = True


# The division follows common practice, no source; the words are ours.
RETURN_CAUSES = (
    ReturnCause(
        "wrong-place", tr("looked in the wrong place"), tr("The part we took off was good.")
    ),
    ReturnCause(
        "not-the-whole", tr("right, but not the whole"), tr("A second fault or the root stayed.")
    ),
    ReturnCause(
        "wrong-part", tr("wrong part fitted"), tr("The part was not the one for this car.")
    ),
    ReturnCause(
        "part-died-early", tr("part died early"), tr("The part was right and failed too soon.")
    ),
    ReturnCause(
        "fitted-badly", tr("fitted badly"), tr("Torque, clamp, seal, which way round, connector.")
    ),
    ReturnCause(
        "neighbour", tr("disturbed a neighbour"), tr("Something beside the work was upset.")
    ),
    ReturnCause(
        "not-set-up", tr("set-up not done"), tr("Learning, coding, bleeding or alignment left.")
    ),
    ReturnCause("left-unproven", tr("left unproven"), tr("A full proof would have shown it here.")),
    ReturnCause("sublet", tr("sublet work"), tr("It was done for us by someone else.")),
    ReturnCause("badly-told", tr("badly told"), tr("A limit or an advice was not said.")),
    ReturnCause(
        "other-use", tr("other hands or use after"), tr("What happened after it left us."), False
    ),
    ReturnCause(
        "bad-information", tr("bad information"), tr("A wrong diagram, figure or part number.")
    ),
    ReturnCause("new", tr("new and unrelated"), tr("Not ours, and not to be known before."), False),
    ReturnCause("unknown", tr("cannot tell"), tr("Nobody can say why.")),
)
UNRELATED_CAUSE = "new"
_CAUSES = {cause.id: cause for cause in RETURN_CAUSES}


def return_cause(identity: str) -> ReturnCause | None:
    """Return the cause with this id, or None."""
    return _CAUSES.get(identity)


def counts_against(judgement: Judgement | None, cause_class: str | None) -> bool:
    """Tell whether a judged return counts against the earlier repair.

    It does where it is a comeback, unless its main cause is not ours: such a return stays in the
    log and leaves the rate. A cause that nobody named is ours.
    """
    cause = return_cause(cause_class or "")
    return judgement is not None and judgement.is_comeback and (cause is None or cause.ours)


@dataclass(frozen=True, slots=True)
class ReturnJudged:
    """A later job that a person has judged against an earlier one; both by job number.

    `cause_class` is why it came back, where a person said so.
    """

    earlier: str
    later: str
    judgement: Judgement
    cause_class: str | None = None


class Chains:
    """The chains of comebacks: each that counts against the job before it hangs on that job."""

    def __init__(self, judged: Iterable[ReturnJudged]) -> None:
        """Take judged returns in the order of their earlier jobs, oldest first.

        Where a job came back for several, it hangs on the first of them.
        """
        self._before: dict[str, str] = {}
        for one in judged:
            if counts_against(one.judgement, one.cause_class):
                self._before.setdefault(one.later, one.earlier)

    def chain_of(self, number: str) -> tuple[str, ...]:
        """Return the jobs from the root to this one."""
        if number not in self._before:
            return (number,)
        chain = [number]
        while (before := self._before.get(chain[-1])) is not None and before not in chain:
            chain.append(before)
        return tuple(reversed(chain))
