"""The pairs of the written jobs: the comparison says of each what its story says."""

from __future__ import annotations

import pytest

from demo_shop.darkroom import pair_view
from demo_shop.job_story import JobStory, PairStory
from demo_shop.people import DRAWER
from demo_shop.written_jobs import JOBS
from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.parts_compared.reading import SIDES, ConditionSeen, Explanation, Reading
from desktop_app.parts_compared.readings_typed import read_readings
from desktop_app.shop_record.own_program.resource_folder import resource_path

KINDS = load_kinds([resource_path("part_kinds")]).kinds
TOOLS = {t.name: Instrument(t.name, t.unit, t.resolution, t.max_error) for t in DRAWER}
PAIRS = [
    pytest.param(job, pair, id=f"{job.key} {pair.kind} {place}")
    for job in JOBS
    for place, pair in enumerate(job.pairs)
]


def judged(pair: PairStory) -> PairComparison:
    kind = KINDS[pair.kind]
    readings = []
    for one in pair.measured:
        dimension = kind.dimension(one.dimension)
        assert dimension is not None, f"{pair.kind} has no {one.dimension}"
        for side, text in zip(SIDES, (one.removed, one.replacement), strict=True):
            read = read_readings(text, dimension, "mm")
            values = tuple(word if value is None else value for value, word, _ in read)
            if values:
                readings.append(Reading(side, one.dimension, values, one.instrument or None))
    conditions = [
        ConditionSeen("removed", pair.seen_old),
        ConditionSeen("replacement", pair.seen_new),
    ]
    explained = [Explanation(dimension, by, why) for dimension, why, by in pair.explained]
    return compare(kind, readings, conditions, TOOLS, explained)


def verdicts(key: str, place: int = 0) -> dict[str, str]:
    job = next(job for job in JOBS if job.key == key)
    return {one.name: one.verdict for one in judged(job.pairs[place]).dimensions}


@pytest.mark.parametrize(("job", "pair"), PAIRS)
def test_the_verdict_is_that_of_the_story(job: JobStory, pair: PairStory) -> None:
    found = judged(pair)
    assert found.verdict == pair.verdict, found.reasons
    assert pair.fitted == (pair.verdict != "stop and look")
    if job.left and pair.fitted:
        assert pair.verdict == "fits"


@pytest.mark.parametrize(("job", "pair"), PAIRS)
def test_terms_and_views_are_the_kinds_own(job: JobStory, pair: PairStory) -> None:
    kind = KINDS[pair.kind]
    assert all(kind.condition(term) for term in (*pair.seen_old, *pair.seen_new))
    assert all(pair_view(kind, view) in kind.views for view in pair.views)


def test_the_lines_that_the_stories_turn_on() -> None:
    first = verdicts("1")
    assert first["tip-radius"] == first["tip-protrusion"] == "restored"
    assert first["bore"] == first["tip-height"] == "same"
    assert verdicts("1", 1)["towers"] == "same"
    assert verdicts("4")["body-length"] == "differs"
    assert verdicts("5")["plug-angle"] == "turned"
    assert verdicts("7")["jiggle-pin"] == "explained"
    assert verdicts("10")["thickness"] == "restored"
    assert verdicts("10")["hat-height"] == "same"
    assert verdicts("11")["shape"] == "differs"
    assert verdicts("14")["tube-bore"] == "same"
    assert verdicts("15")["contact-drop"] == "restored"
    assert verdicts("17")["cord"] == "restored"
    assert verdicts("20", 1)["tower-one-angle"] == "same"


def test_the_protractor_could_not_tell_what_the_photo_settled() -> None:
    job = next(job for job in JOBS if job.key == "20")
    cap = job.pairs[1]
    angle = next(one for one in cap.measured if one.dimension == "tower-one-angle")
    assert angle.first is not None
    removed, replacement, tool = angle.first
    dimension = KINDS[cap.kind].dimension("tower-one-angle")
    assert dimension is not None
    read = [
        Reading(
            side,
            dimension.name,
            tuple(v for v, _, _ in read_readings(text, dimension, "mm") if v),
            tool,
        )
        for side, text in zip(SIDES, (removed, replacement), strict=True)
    ]
    found = compare(KINDS[cap.kind], read, (), TOOLS)
    turned = next(one for one in found.dimensions if one.name == "tower-one-angle")
    assert turned.verdict == "too close to tell"
