"""Which of the car's own tests speak of a system, and whether they ran through after the repair."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.repair_jobs.self_tests import SelfTestState, monitor_words
from desktop_app.repair_jobs.self_tests_compared import OF_SYSTEM, StageTests, not_run


def own_test_ran(system: str, after: StageTests) -> bool | None:
    """Tell whether the car's own tests for a system (an id) ran through after the repair.

    Of those that are fitted at least one was read as complete and none as not run. None where no
    test is known to speak of this system and nobody read any.
    """
    states = after.states
    asked = OF_SYSTEM.get(system)
    if asked is None:
        return None if not states else _through(list(states.values()))
    return _through([states[one] for one in asked if one in states])


def own_test_doubts(system: str, after: StageTests, claimed: bool) -> Iterator[str]:
    """Yield what is missing before anybody may say that the car's own test passed.

    `claimed` is True where the level says so by itself: then a system of which no test is known
    to speak is doubted too.
    """
    states = after.states
    asked = OF_SYSTEM.get(system)
    waits = not_run(after) if asked is None else [one for one in asked if one in not_run(after)]
    if waits and (asked is not None or claimed):
        verb = "test has" if len(waits) == 1 else "tests have"
        named = ", ".join(map(monitor_words, waits))
        yield f"The car's own {verb} not run: {named}. Not run is not passed."
    elif not states and (asked is not None or claimed):
        yield "How the car's own tests stand after the repair is not written down."
    elif asked is not None and not own_test_ran(system, after):
        named = ", ".join(map(monitor_words, asked))
        yield f"No test of the car's own that was read speaks of this repair: {named}."


def _through(states: list[SelfTestState]) -> bool:
    return SelfTestState.COMPLETE in states and SelfTestState.NOT_RUN not in states
