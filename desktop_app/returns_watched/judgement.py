"""What a person decides about a return, why it came back, and the chain it hangs on."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum


class Judgement(StrEnum):
    """The eight things a person may decide; the first four are comebacks."""

    SAME_SYMPTOM = "same symptom"
    SAME_SYSTEM = "same system"
    SAME_PART = "same part"
    FROM_OUR_HANDS = "from our hands"
    FORETOLD = "foretold"
    OTHER_HANDS = "other hands"
    UNRELATED = "unrelated"
    CANNOT_TELL = "cannot tell"

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
    Judgement.SAME_SYMPTOM: "The car does again what it came for.",
    Judgement.SAME_SYSTEM: "Told in other words, but it is the system we worked on.",
    Judgement.SAME_PART: "The part we fitted failed or did not sit right.",
    Judgement.FROM_OUR_HANDS: "New trouble in something we touched, moved or had to get past.",
    Judgement.FORETOLD: "The work that was declined did what we had said it would.",
    Judgement.OTHER_HANDS: "Someone else worked on it, or it was in an accident, since.",
    Judgement.UNRELATED: "A new concern that has nothing to do with our repair.",
    Judgement.CANNOT_TELL: "Nobody can say, and it stays written down as that.",
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
    ReturnCause("wrong-place", "looked in the wrong place", "The part we took off was good."),
    ReturnCause("not-the-whole", "right, but not the whole", "A second fault or the root stayed."),
    ReturnCause("wrong-part", "wrong part fitted", "The part was not the one for this car."),
    ReturnCause("part-died-early", "part died early", "The part was right and failed too soon."),
    ReturnCause("fitted-badly", "fitted badly", "Torque, clamp, seal, which way round, connector."),
    ReturnCause("neighbour", "disturbed a neighbour", "Something beside the work was upset."),
    ReturnCause("not-set-up", "set-up not done", "Learning, coding, bleeding or alignment left."),
    ReturnCause("left-unproven", "left unproven", "A full proof would have shown it here."),
    ReturnCause("sublet", "sublet work", "It was done for us by someone else."),
    ReturnCause("badly-told", "badly told", "A limit or an advice was not said."),
    ReturnCause("other-use", "other hands or use after", "What happened after it left us.", False),
    ReturnCause("bad-information", "bad information", "A wrong diagram, figure or part number."),
    ReturnCause("new", "new and unrelated", "Not ours, and not to be known before.", False),
    ReturnCause("unknown", "cannot tell", "Nobody can say why."),
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

    def root_of(self, number: str) -> str:
        """Return the first job of the chain that this job hangs on; itself where there is none."""
        seen = {number}
        while (before := self._before.get(number)) is not None and before not in seen:
            seen.add(before)
            number = before
        return number

    def chain_of(self, number: str) -> tuple[str, ...]:
        """Return the jobs from the root to this one."""
        if number not in self._before:
            return (number,)
        chain = [number]
        while (before := self._before.get(chain[-1])) is not None and before not in chain:
            chain.append(before)
        return tuple(reversed(chain))
