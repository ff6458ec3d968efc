"""The car's own tests, as the four bytes of SAE J1979 / ISO 15031-5 service 01, PID 01 tell them.

The layout is from memory of the standard; tests/outside/test_self_tests.py names what was checked.
Byte A: lamp (bit 7) and number of codes. Byte B: the three tests that run all the time (bits 0 to
2 fitted, 4 to 6 not complete) and the kind of ignition (bit 3). Bytes C (fitted) and D (not
complete): the tests that run once a trip, other ones for spark than for compression ignition.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from desktop_app.language import marked, tr
from desktop_app.shop_record.trouble import ShopTrouble

_DAY = re.compile(r"[0-9]{4}([-./])[0-9]{1,2}\1[0-9]{1,2}|[0-9]{1,2}([-./])[0-9]{1,2}\2[0-9]{2,4}")
ACCEPTED = tr("Type four bytes in hex, such as 41 01 00 07 E5 00 or 0007E500.")


class SelfTestState(StrEnum):
    """How one of the car's own tests stands, as it is kept. What has not run has not passed."""

    COMPLETE = marked("complete")
    NOT_RUN = marked("not run")
    NOT_FITTED = marked("not fitted")


@dataclass(frozen=True, slots=True)
class Monitor:
    """One of the car's own tests: the id that is kept and the words that are shown."""

    id: str
    words: str


ALL_THE_TIME = (
    Monitor("misfire", tr("misfire")),
    Monitor("fuel-system", tr("fuel system")),
    Monitor("components", tr("sensors and outputs")),
)
# By bit, from 0; None where the standard keeps a bit free.
SPARK: tuple[Monitor | None, ...] = (
    Monitor("catalyst", tr("catalyst")),
    Monitor("heated-catalyst", tr("heated catalyst")),
    Monitor("evaporative", tr("evaporative system")),
    Monitor("secondary-air", tr("secondary air")),
    Monitor("filter-or-refrigerant", tr("particulate filter (older cars: A/C refrigerant)")),
    Monitor("oxygen-sensor", tr("oxygen sensor")),
    Monitor("oxygen-sensor-heater", tr("oxygen sensor heater")),
    Monitor("egr-vvt", tr("exhaust gas recirculation or valve timing")),
)
COMPRESSION: tuple[Monitor | None, ...] = (
    Monitor("nmhc-catalyst", tr("hydrocarbon catalyst")),
    Monitor("nox", tr("nitrogen oxide treatment")),
    None,
    Monitor("boost-pressure", tr("boost pressure")),
    None,
    Monitor("exhaust-gas-sensor", tr("exhaust gas sensor")),
    Monitor("particulate-filter", tr("particulate filter")),
    Monitor("egr-vvt", tr("exhaust gas recirculation or valve timing")),
)
_WORDS = {one.id: one.words for one in (*ALL_THE_TIME, *SPARK, *COMPRESSION) if one is not None}
MONITOR_IDS = frozenset(_WORDS)


@dataclass(frozen=True, slots=True)
class SelfTestsRead:
    """What four bytes say; `states` has every test of this kind of engine, by id.

    `free_bits` is True where bits are set that the standard keeps free: worth a second look.
    """

    lamp_on: bool
    codes: int
    compression: bool
    states: Mapping[str, SelfTestState]
    free_bits: bool = False


def monitors_of(compression: bool) -> tuple[Monitor, ...]:
    """Return the tests of a kind of engine, those that run all the time first."""
    once = COMPRESSION if compression else SPARK
    return (*ALL_THE_TIME, *(one for one in once if one is not None))


def monitor_words(identity: str) -> str:
    """Return the words of a test; an unknown id is shown as it is."""
    return _WORDS.get(identity, identity)


def decode(four: bytes) -> SelfTestsRead:
    """Return what the bytes A, B, C, D say."""
    a, b, c, d = four
    compression = bool(b & 0x08)
    once = COMPRESSION if compression else SPARK
    states = {
        one.id: _state(b >> bit & 1, b >> bit + 4 & 1) for bit, one in enumerate(ALL_THE_TIME)
    }
    free = b & 0x80
    for bit, monitor in enumerate(once):
        if monitor is None:
            free |= (c | d) >> bit & 1
        else:
            states[monitor.id] = _state(c >> bit & 1, d >> bit & 1)
    return SelfTestsRead(bool(a & 0x80), a & 0x7F, compression, states, bool(free))


def encode(read: SelfTestsRead) -> bytes:
    """Return the four bytes that say this; a test that is not named counts as not fitted."""
    a = (0x80 if read.lamp_on else 0) | read.codes
    b = 0x08 if read.compression else 0
    c = d = 0
    for bit, one in enumerate(ALL_THE_TIME):
        fitted, waits = _bits(read.states.get(one.id))
        b |= fitted << bit | waits << bit + 4
    for bit, monitor in enumerate(COMPRESSION if read.compression else SPARK):
        fitted, waits = _bits(read.states.get(monitor.id) if monitor else None)
        c |= fitted << bit
        d |= waits << bit
    return bytes((a, b, c, d))


def read_bytes(text: str) -> bytes:
    """Return the four bytes A to D from what was typed, with or without the reply's head.

    The head is 41 01, also with the sender and the length before it (7E8 06). Raises ShopTrouble.
    """
    bare = re.sub(r"0[xX]|[\s,;:.\-_>]|(?<=[0-9A-Fa-f])[hH]", "", text)
    if not re.fullmatch(r"[0-9A-Fa-f]+", bare):
        raise ShopTrouble(
            tr("“{text}” holds signs that are no hex digits.", text=text.strip()), do=ACCEPTED
        )
    framed = re.fullmatch(
        r"(?:7E[89A-F]|18DAF1[0-9A-F]{2})06(4101[0-9A-F]{8})(?:[0-9A-F]{2})?", bare.upper()
    )
    if framed:
        bare = framed[1]
    if len(bare) == 12 and bare.startswith("4101"):
        return bytes.fromhex(bare[4:])
    if len(bare) != 8:
        raise ShopTrouble(
            tr("“{text}” holds {what}, not four bytes.", text=text.strip(), what=_bytes_in(bare)),
            do=ACCEPTED,
        )
    if bare.startswith("4101"):
        raise ShopTrouble(
            tr(
                "“{text}” begins with the reply's head 41 01, and two bytes are missing.",
                text=text.strip(),
            ),
            do=ACCEPTED,
        )
    return bytes.fromhex(bare)


def bytes_typed(text: str) -> bytes:
    """Return the four bytes that a person types; what looks like a day is refused.

    "2026-11-16" has eight hex digits too. Raises ShopTrouble.
    """
    if _DAY.fullmatch(text.strip()):
        raise ShopTrouble(tr("“{text}” looks like a day.", text=text.strip()), do=ACCEPTED)
    return read_bytes(text)


def _bytes_in(bare: str) -> str:
    whole, half = divmod(len(bare), 2)
    return (
        tr("{count} hex digits", count=len(bare))
        if half or not whole
        else tr("{count} bytes", count=whole)
    )


def _state(fitted: int, waits: int) -> SelfTestState:
    if not fitted:
        return SelfTestState.NOT_FITTED
    return SelfTestState.NOT_RUN if waits else SelfTestState.COMPLETE


def _bits(state: SelfTestState | None) -> tuple[int, int]:
    fitted = state in (SelfTestState.COMPLETE, SelfTestState.NOT_RUN)
    return int(fitted), int(state is SelfTestState.NOT_RUN)
