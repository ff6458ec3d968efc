"""Which of the car's own tests speak of a system, and whether they ran through after the repair."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.language import tr
from desktop_app.repair_jobs.self_tests import SelfTestState, monitor_words, monitors_of
from desktop_app.repair_jobs.self_tests_compared import (
    OF_SYSTEM,
    StageTests,
    is_compression,
    not_run,
)

_NONE_KNOWN = tr(
    "The car is not known to have a test of its own for this system: what it tested "
    "says nothing of this repair."
)
_NO_SYSTEM = tr(
    "Which system it was is not written down: nobody can tell which of its tests counts."
)


def own_test_ran(system: str, after: StageTests) -> bool | None:
    """Tell whether the car's own tests for a system (an id) ran through after the repair.

    Each of them was read: at least one as complete, the others as complete or not fitted. None
    where no test is known to speak of this system, such as brakes or steering: the tests of the
    engine say nothing of those.
    """
    asked = _of_system(system, after)
    if asked is None:
        return None
    states = [after.states.get(one) for one in asked]
    told = {SelfTestState.COMPLETE, SelfTestState.NOT_FITTED}
    return SelfTestState.COMPLETE in states and told.issuperset(states)


def own_test_doubts(system: str, after: StageTests, claimed: bool) -> Iterator[str]:
    """Yield what is missing before anybody may say that the car's own test passed.

    `claimed` is True where the level says so by itself: then a system of which no test is known
    to speak is doubted too.
    """
    asked = _of_system(system, after)
    if asked is None and not claimed:
        return
    waits = [one for one in not_run(after) if asked is None or one in asked]
    if waits:
        yield (
            tr("The car's own test has not run: {test}. Not run is not passed.", test=_named(waits))
            if len(waits) == 1
            else tr(
                "The car's own tests have not run: {tests}. Not run is not passed.",
                tests=_named(waits),
            )
        )
    elif not after.states:
        yield tr("How the car's own tests stand after the repair is not written down.")
    elif asked is None:
        yield _NONE_KNOWN if system else _NO_SYSTEM
    elif not own_test_ran(system, after):
        unread = [one for one in asked if one not in after.states]
        if unread and len(unread) < len(asked):
            yield tr(
                "Of the car's own tests for this repair nobody read: {tests}.", tests=_named(unread)
            )
        else:
            yield tr(
                "No test of the car's own that was read speaks of this repair: {tests}.",
                tests=_named(asked),
            )


def _of_system(system: str, after: StageTests) -> list[str] | None:
    """Return the tests that speak of a system in this kind of engine; None where none is known."""
    kind = is_compression(StageTests(), after)
    asked = OF_SYSTEM.get(system, ())
    return [one.id for one in monitors_of(kind) if one.id in asked] or None


def _named(tests: list[str]) -> str:
    return ", ".join(map(monitor_words, tests))
