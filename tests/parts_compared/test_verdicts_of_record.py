"""The verdicts on all pairs of a record are those that each page shows."""

from __future__ import annotations

import pytest

from desktop_app.parts_compared import actions, stored_many
from desktop_app.parts_compared.pair_view import judge
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored_many import pairs_by_kind, verdicts_of_record
from desktop_app.parts_compared.stored_pairs import drawer, pairs_of_job, read_pair
from desktop_app.shop_record.record import ShopRecord
from tests.parts_compared.sheet_story import RotorStory, a_rotor, kinds

HOSE = {
    "bore-one": ("31.9; 32.0", "32.1; 32.0"),
    "bore-two": ("27.8", "31.2"),
    "length": ("410", "412; 411"),
}


def measured(record: ShopRecord, job: int, kind: str, readings: dict[str, tuple[str, str]]) -> int:
    """Lay a pair of a kind side by side in the job and measure it."""
    pair = actions.lay_side_by_side(record, job, kind).made
    assert pair is not None
    for name, sides in readings.items():
        known = kinds()[kind].dimension(name)
        assert known is not None
        actions.write_readings(record, pair, known, "removed", sides[0])
        actions.write_readings(record, pair, known, "replacement", sides[1])
    return pair


@pytest.fixture
def story(shop: ShopRecord) -> RotorStory:
    """Pairs of several kinds in one job: some good, some damaged, explained or barely begun."""
    first = a_rotor(shop)
    job = first.job
    rotor = kinds()["distributor-rotor"]
    damaged = measured(shop, job, rotor.id, {"bore": ("14.02", "14.04")})
    actions.see_condition(shop, damaged, "replacement", "hairline crack", seen=True)
    off = measured(shop, job, rotor.id, {"bore": ("14.02", "15.02")})
    actions.explain_difference(shop, off, "bore", "a new number", "the supplier")
    hose = measured(shop, job, "coolant-hose", HOSE)
    actions.see_condition(shop, hose, "removed", "swollen", seen=True)
    measured(shop, job, "alternator", {"plug-angle": ("359; 1", "2; 358"), "grooves": ("6", "5")})
    measured(shop, job, "alternator", {"pulley-type": ("one-way", "solid")})
    limited = measured(shop, job, "alternator", {"ripple": ("0.3", "0.1; 0.12")})
    actions.enter_limits(shop, limited, "ripple", None, 0.5, "the maker's manual")
    measured(shop, job, "relay", {})
    return first


def one_by_one(story: RotorStory, known: dict[str, PartKind]) -> dict[int, str]:
    """What every page says, each pair read and judged by itself."""
    with story.record.reading() as connection:
        pairs = [read_pair(connection, pair) for pair in pairs_of_job(connection, story.job)]
        tools = drawer(connection)
    return {
        pair.id: judge(pair, known[pair.part_kind], tools).verdict
        for pair in pairs
        if pair.part_kind in known
    }


def all_at_once(
    story: RotorStory, known: dict[str, PartKind], only: str | None = None
) -> dict[int, str]:
    """What judging the whole record says."""
    with story.record.reading() as connection:
        return dict(verdicts_of_record(connection, known, drawer(connection), only=only))


def test_every_pair_has_the_verdict_of_its_page(story: RotorStory) -> None:
    known = kinds()
    verdicts = all_at_once(story, known)
    assert verdicts == one_by_one(story, known)
    assert set(verdicts.values()) == {"fits", "stop and look", "not enough measured"}


def test_some_at_a_time_comes_to_the_same(
    story: RotorStory, monkeypatch: pytest.MonkeyPatch
) -> None:
    expected = all_at_once(story, kinds())
    monkeypatch.setattr(stored_many, "PAIRS_AT_ONCE", 3)
    assert all_at_once(story, kinds()) == expected
    assert list(all_at_once(story, kinds())) == sorted(expected)


def test_one_kind_alone(story: RotorStory) -> None:
    every = one_by_one(story, {"alternator": kinds()["alternator"]})
    assert len(every) == 3
    assert all_at_once(story, kinds(), only="alternator") == every


def test_a_pair_of_an_unknown_kind_is_left_out(story: RotorStory) -> None:
    known = {name: kind for name, kind in kinds().items() if name != "distributor-rotor"}
    verdicts = all_at_once(story, known)
    assert story.pair not in verdicts
    assert verdicts == one_by_one(story, known)


def test_a_changed_kind_judges_the_same_readings_anew(story: RotorStory) -> None:
    rotor = kinds()["distributor-rotor"]
    strict = tuple(one._replace(essential=True) for one in rotor.dimensions)
    narrow = tuple(
        one._replace(allowed=(-0.001, 0.001)) if one.name == "bore" else one for one in strict
    )
    changed = kinds() | {rotor.id: rotor._replace(dimensions=narrow[::-1])}
    verdicts = all_at_once(story, changed)
    assert verdicts == one_by_one(story, changed)
    assert verdicts != all_at_once(story, kinds())


def test_an_empty_record_has_no_pairs(shop: ShopRecord) -> None:
    with shop.reading() as connection:
        assert list(pairs_by_kind(connection, kinds())) == []
        assert verdicts_of_record(connection, kinds(), {}) == {}
