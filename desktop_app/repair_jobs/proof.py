"""How far a repair was proved before the car left, and what is worth saying at hand-over."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import IntEnum

from desktop_app.language import marked, tr
from desktop_app.repair_jobs.concern_conditions import condition_words


class ProofLevel(IntEnum):
    """The ladder of proof; 0 to 4 are recorded at hand-over and each includes the ones below.

    TIME is not recorded: it comes by itself, once the car was seen fine after its window.
    """

    UNPROVEN = 0
    BAY = 1
    ROAD = 2
    FULL_TRIP = 3
    SAME_CONDITIONS = 4
    TIME = 5

    @property
    def word(self) -> str:
        """The level in a word or two."""
        return _LADDER[self][0]

    @property
    def means(self) -> str:
        """What must have been done for this level."""
        return _LADDER[self][1]


_LADDER = {
    ProofLevel.UNPROVEN: (tr("unproven"), tr("This repair was not proved before the car left.")),
    ProofLevel.BAY: (
        tr("bay"),
        tr("It works in the bay: no leak, no code, measured again and good."),
    ),
    ProofLevel.ROAD: (tr("road"), tr("It was driven on the road.")),
    ProofLevel.FULL_TRIP: (
        tr("full trip"),
        tr("The car's own test for this system ran and passed, with no pending code."),
    ),
    ProofLevel.SAME_CONDITIONS: (
        tr("same conditions"),
        tr("It was driven under the conditions the customer told us of."),
    ),
    ProofLevel.TIME: (tr("time"), tr("The car was seen fine after its window had ended.")),
}

RECORDED_LEVELS = tuple(level for level in ProofLevel if level is not ProofLevel.TIME)


@dataclass(frozen=True, slots=True)
class WhyNot:
    """Why a level is not offered, and what would change that."""

    what: str
    do: str


def why_not_offered(
    level: ProofLevel, told: Sequence[str], not_met: Sequence[str] = ()
) -> WhyNot | None:
    """Return why a level cannot be chosen, given the conditions told of; None where it can.

    Without a condition told of there are none to drive it under, and one that was not met (of
    `not_met`) was not. What else is missing for a level stands beside it as a doubt: the person
    who proved it decides.
    """
    if level is not ProofLevel.SAME_CONDITIONS:
        return None
    if not told:
        return WhyNot(
            tr("“Same conditions” is not offered: nobody has told us of a condition."),
            tr("Under Heard, tick when it happens."),
        )
    missed = [name for name in told if name in not_met]
    if missed:
        what = (
            tr("“Same conditions” is not offered: {condition} was not met.")
            if len(missed) == 1
            else tr("“Same conditions” is not offered: {conditions} were not met.")
        )
        return WhyNot(
            what.format(condition=_listed(missed), conditions=_listed(missed)),
            tr("Drive it there and turn the button to met, or choose another level."),
        )
    return None


# "At random" says how it comes: there is nothing to drive it under.
_NOTHING_TO_MEET = "random"


def conditions_to_meet(conditions: Mapping[str, bool]) -> tuple[str, ...]:
    """Return the conditions under which it happens and which a drive can have."""
    return tuple(
        name for name, happens in conditions.items() if happens and name != _NOTHING_TO_MEET
    )


# The check without which "no pending code" is nobody's word; kept so, and shown by tr().
CODES_READ = marked("the codes read again afterwards, the pending ones too: none is left")


@dataclass(frozen=True, slots=True)
class ProofChecks:
    """What proves a repair of one system. The maker's procedure comes first.

    The checks are kept as they are written here; tr() says them in the language spoken.
    """

    system: str
    bay: tuple[str, ...]
    road: tuple[str, ...]
    enough: str


@dataclass(frozen=True, slots=True)
class ProofReached:
    """What was recorded about the proof of one job.

    Of the conditions told of, some were recreated, some were not; of the rest nobody said. `done`
    are the checks ticked as done, `unticked` those never left out that nobody answered, both as
    they are said. `doubts`
    say what speaks against the level or is missing for it; `own_test` is whether the car's own
    test for the system ran through, None where the car is not known to have one.
    """

    level: ProofLevel
    recreated: Sequence[str] = ()
    not_recreated: Sequence[str] = ()
    unticked: Sequence[str] = ()
    codes_were_read: bool = False
    not_said: Sequence[str] = ()
    done: Sequence[str] = ()
    doubts: Sequence[str] = ()
    own_test: bool | None = False
    drive_is_written: bool = False

    @property
    def all_met(self) -> bool:
        """Whether conditions were told of and every one of them was met."""
        return bool(self.recreated) and not self.not_recreated and not self.not_said

    @property
    def chosen_beyond(self) -> bool:
        """Whether "same conditions" was chosen without every condition being met."""
        return self.level is ProofLevel.SAME_CONDITIONS and not self.all_met

    @property
    def borne_out(self) -> bool:
        """Whether what was written down bears out what the level means.

        What the bay's level means in full has no list to tick: nobody's ticks say all of it. And
        "unproven" claims nothing, so there is nothing to bear out.
        """
        if self.doubts:
            return False
        if self.level is ProofLevel.FULL_TRIP:
            return bool(self.own_test) and self.codes_were_read
        if self.level is ProofLevel.SAME_CONDITIONS:
            return self.all_met
        return self.level is ProofLevel.ROAD

    @property
    def means(self) -> str:
        """What the level means, where it is borne out; else nothing may be claimed."""
        return self.level.means if self.borne_out else ""

    @property
    def in_doubt(self) -> bool:
        """Whether the level was chosen, and what is written down does not bear all of it out."""
        return not self.borne_out and (self.level >= ProofLevel.FULL_TRIP or bool(self.doubts))


def level_reached(proof: ProofReached) -> str:
    """Return the level with what it means, or that not all of it is written down."""
    level = proof.level
    if proof.in_doubt:
        return tr(
            "{level_name} ({level} of 4) was chosen. What is written down does not bear all of it "
            "out.",
            level_name=level.word,
            level=int(level),
        )
    said = tr("{level_name} ({level} of 4).", level_name=level.word, level=int(level))
    return f"{said} {proof.means}" if proof.means else said


def worth_saying(proof: ProofReached) -> tuple[str, ...]:
    """Return the sentences to say and print at hand-over; they never call a car safe to drive."""
    said = list(_BY_LEVEL[proof.level](proof)) if proof.level in _BY_LEVEL else []
    said.extend(proof.doubts)
    claims_codes = proof.level in (ProofLevel.FULL_TRIP, ProofLevel.SAME_CONDITIONS)
    if claims_codes and not proof.codes_were_read:
        said.append(tr("That no code was pending afterwards is not written down."))
    if proof.recreated:
        said.append(tr("Tried: {conditions}.", conditions=_listed(proof.recreated)))
    if proof.not_recreated:
        said.append(tr("Not tried: {conditions}.", conditions=_listed(proof.not_recreated)))
    if proof.not_said:
        said.append(tr("Not said whether tried: {conditions}.", conditions=_listed(proof.not_said)))
    if proof.unticked:
        left = "; ".join(check.rstrip(".") for check in proof.unticked)
        said.append(tr("Never left out, and not ticked: {checks}.", checks=left))
    return tuple(said)


def _unproven(_proof: ProofReached) -> Iterator[str]:
    yield ProofLevel.UNPROVEN.means


def _bay(proof: ProofReached) -> Iterator[str]:
    if proof.drive_is_written or proof.recreated:
        yield tr("Proved in the bay only; what was driven is written down as no proof.")
    else:
        yield tr("Proved in the bay only; it was not driven.")
    if proof.done:
        done = "; ".join(check.rstrip(".") for check in proof.done)
        yield tr("Ticked as done: {checks}.", checks=done)
    else:
        yield tr("Which checks were made is not written down.")


def _road(proof: ProofReached) -> Iterator[str]:
    if proof.own_test is False:
        yield tr("Driven, but the car's own test for this system was not seen to pass.")
    elif proof.own_test and not proof.codes_were_read:
        yield tr("Driven; that no code was pending afterwards is not written down.")


def _full_trip(proof: ProofReached) -> Iterator[str]:
    if not proof.borne_out:
        return
    if proof.not_recreated or proof.not_said:
        yield tr("The car's own test passed; the conditions you told us of were not all tried.")
    else:
        yield tr("The car's own test passed.")


def _same_conditions(proof: ProofReached) -> Iterator[str]:
    if proof.all_met:
        return
    if proof.recreated or proof.not_recreated or proof.not_said:
        yield tr("Not every condition you told us of is written down as met.")
    else:
        yield tr("No condition was told of, so there was none to meet.")


_BY_LEVEL: dict[ProofLevel, Callable[[ProofReached], Iterator[str]]] = {
    ProofLevel.UNPROVEN: _unproven,
    ProofLevel.BAY: _bay,
    ProofLevel.ROAD: _road,
    ProofLevel.FULL_TRIP: _full_trip,
    ProofLevel.SAME_CONDITIONS: _same_conditions,
}


def _listed(conditions: Sequence[str]) -> str:
    return ", ".join(condition_words(condition) for condition in conditions)
