"""What was measured of a plain job's parts: a written pair's readings at another size."""

from __future__ import annotations

import random
import re
from collections.abc import Mapping

from demo_shop.job_story import PairStory
from demo_shop.written_jobs import JOBS
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES
from desktop_app.parts_compared.readings_typed import read_readings
from desktop_app.parts_compared.stored import Reading
from desktop_app.shop_record.deed import Deed

MEASURED, HALF_MEASURED = 0.7, 0.12
_DECIMAL = re.compile(r"[0-9]+\.[0-9]+")


def _patterns() -> dict[str, PairStory]:
    """Return for each kind a written pair that was measured whole and fits."""
    found: dict[str, PairStory] = {}
    for job in JOBS:
        for pair in job.pairs:
            plain = not pair.explained and not pair.limits
            if pair.verdict == "fits" and plain and all(not m.first for m in pair.measured):
                found.setdefault(pair.kind, pair)
    return found


PATTERNS = _patterns()


def measure_pair(
    deed: Deed, pair: int, kind: PartKind, chance: random.Random, taken_at: str
) -> None:
    """Measure a pair whole, by half or not at all, as it falls out."""
    pattern, fate = PATTERNS.get(kind.id), chance.random()
    size = 1 + chance.randrange(-30, 31) / 1000
    if pattern is None or fate >= MEASURED:
        return
    measured = pattern.measured[:2] if fate < HALF_MEASURED else pattern.measured
    for one in measured:
        dimension = kind.dimension(one.dimension)
        assert dimension is not None
        typed: Mapping[str, str] = dict(zip(SIDES, (one.removed, one.replacement), strict=True))
        for side, text in typed.items():
            sized = _sized(text, size) if dimension.unit == "mm" else text
            for value, word, said in read_readings(sized, dimension, "mm"):
                deed.add(
                    Reading,
                    pair_id=pair,
                    side=side,
                    dimension=dimension.name,
                    instrument=one.instrument or dimension.instrument,
                    value=value,
                    word=word,
                    typed=said,
                    taken_at=taken_at,
                )


def _sized(text: str, size: float) -> str:
    """Give readings of another size of the same part, with as many decimals."""

    def other(found: re.Match[str]) -> str:
        decimals = len(found[0].partition(".")[2])
        return f"{float(found[0]) * size:.{decimals}f}"

    return _DECIMAL.sub(other, text)
