"""The car's own tests as they were found and as they stand after the repair, side by side."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Literal

from desktop_app.language import marked, tr
from desktop_app.repair_jobs.self_tests import (
    COMPRESSION,
    SPARK,
    Monitor,
    SelfTestsRead,
    SelfTestState,
    decode,
    monitor_words,
    monitors_of,
    read_bytes,
)

Stage = Literal["found", "after repair"]
STAGES: tuple[Stage, Stage] = (marked("found"), marked("after repair"))
STAGE_WORDS: dict[Stage, str] = {"found": tr("As found"), "after repair": tr("After the repair")}
ONLY_COMPRESSION = {one.id for one in COMPRESSION if one} - {one.id for one in SPARK if one}

# Which of the car's own tests speak of a system; common practice, no source.
OF_SYSTEM: dict[str, tuple[str, ...]] = {
    "ignition": ("misfire",),
    "fuel": ("fuel-system",),
    "engine-control": ("components",),
    "evaporative": ("evaporative",),
    "exhaust": (
        *("catalyst", "heated-catalyst", "secondary-air", "oxygen-sensor", "oxygen-sensor-heater"),
        *("nmhc-catalyst", "nox", "exhaust-gas-sensor", "particulate-filter"),
    ),
}


@dataclass(frozen=True, slots=True)
class StageTests:
    """What was read at one stage: the four bytes as typed, and tests that a person entered.

    Where bytes are there they count; what a person entered beside them is only held against them.
    """

    typed: str = ""
    by_hand: Mapping[str, SelfTestState] = field(default_factory=dict)

    @property
    def read(self) -> SelfTestsRead | None:
        """What the bytes say; None where none were typed."""
        return decode(read_bytes(self.typed)) if self.typed else None

    @property
    def states(self) -> Mapping[str, SelfTestState]:
        """How each test stands; one that nobody read is left out."""
        read = self.read
        return dict(self.by_hand) if read is None else read.states


@dataclass(frozen=True, slots=True)
class SelfTestRow:
    """One test at both stages; None where nobody read it."""

    monitor: Monitor
    found: SelfTestState | None
    after: SelfTestState | None

    @property
    def became_complete(self) -> bool:
        """Whether it ran through between the two readings."""
        return self.found is SelfTestState.NOT_RUN and self.after is SelfTestState.COMPLETE


def is_compression(found: StageTests, after: StageTests) -> bool:
    """Tell whether the tests are those of a compression ignition engine, as far as it was read."""
    for stage in (after, found):
        if stage.read is not None:
            return stage.read.compression
    return any(identity in ONLY_COMPRESSION for one in (found, after) for identity in one.by_hand)


def side_by_side(
    found: StageTests, after: StageTests, compression: bool | None = None
) -> tuple[SelfTestRow, ...]:
    """Return a row for every test of this kind of engine."""
    kind = is_compression(found, after) if compression is None else compression
    before, later = found.states, after.states
    return tuple(
        SelfTestRow(one, before.get(one.id), later.get(one.id)) for one in monitors_of(kind)
    )


def self_tests_in_words(found: StageTests, after: StageTests) -> tuple[str, ...]:
    """Return how the tests stand after the repair, for the sheet; nothing where none was read."""
    rows = side_by_side(found, after)
    said = []
    for state, words in (
        (SelfTestState.COMPLETE, tr("Complete")),
        (SelfTestState.NOT_RUN, tr("Not run")),
    ):
        named = [row.monitor.words for row in rows if row.after is state]
        if named:
            said.append(f"{words}: {', '.join(named)}.")
    became = [row.monitor.words for row in rows if row.became_complete]
    if became:
        said.append(
            tr("Not run when it came and complete since: {tests}.", tests=", ".join(became))
        )
    return tuple(said)


def not_run(after: StageTests) -> tuple[str, ...]:
    """Return the ids of the tests that are fitted and have not run after the repair."""
    return tuple(name for name, state in after.states.items() if state is SelfTestState.NOT_RUN)


def readings_at_odds(
    found: StageTests, after: StageTests, stored_codes: Mapping[str, int]
) -> tuple[str, ...]:
    """Return what is odd about the readings; `stored_codes` counts those written down by stage."""
    return tuple(_doubts(found, after, stored_codes))


def _doubts(found: StageTests, after: StageTests, stored_codes: Mapping[str, int]) -> Iterator[str]:
    for name, stage in zip(STAGES, (found, after), strict=True):
        read = stage.read
        if read is None:
            continue
        words = STAGE_WORDS[name]
        if read.free_bits:
            yield tr(
                "{stage}: bits are set that the standard keeps free. Look at the typing again.",
                stage=words,
            )
        if all(state is SelfTestState.NOT_FITTED for state in read.states.values()):
            yield tr(
                "{stage}: not one test is fitted by these bytes. Look at the typing again.",
                stage=words,
            )
        written = stored_codes.get(name, 0)
        if read.codes > written:
            yield tr(
                "{stage}: the bytes count {codes}, and {number_or_none} is written down as stored.",
                stage=words,
                codes=_codes(read.codes),
                number_or_none=written or tr("none"),
            )
        yield from _against_hand(words, stage.by_hand, read)
    yield from _changed(found.read, after.read)


def _against_hand(
    words: str, by_hand: Mapping[str, SelfTestState], read: SelfTestsRead
) -> Iterator[str]:
    for identity, state in by_hand.items():
        told = read.states.get(identity)
        if told is not None and told is not state:
            yield tr(
                "{stage}: {test} was entered as {entered}, and the bytes say "
                "{told}. The bytes count.",
                stage=words,
                test=monitor_words(identity),
                entered=tr(state.value),
                told=tr(told.value),
            )


def _changed(found: SelfTestsRead | None, after: SelfTestsRead | None) -> Iterator[str]:
    if found is None or after is None:
        return
    if found.compression is not after.compression:
        yield tr("The two readings are of different kinds of engine: one is mistyped.")
        return
    changed = [
        monitor_words(name)
        for name, state in found.states.items()
        if (state is SelfTestState.NOT_FITTED)
        is not (after.states[name] is SelfTestState.NOT_FITTED)
    ]
    if changed:
        yield tr(
            "Fitted in one reading and not in the other: {tests}. One is mistyped.",
            tests=", ".join(changed),
        )


def _codes(count: int) -> str:
    return tr("1 code") if count == 1 else tr("{count} codes", count=count)
