"""The deeds about a removed part and its replacement, sets, sums and what suppliers owe."""

from __future__ import annotations

from functools import cache

from desktop_app.commands.shop_place import kinds_of
from desktop_app.part_photos.stored import Photo
from desktop_app.parts_compared import actions, set_actions, sum_actions
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.reading import SIDES
from desktop_app.parts_compared.stored import KeptSum, Pair, PairPhoto
from desktop_app.parts_compared.stored_sets import part_sets
from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched import money_owed_actions as owed
from desktop_app.returns_watched.owed import State, What
from desktop_app.returns_watched.stored import MoneyOwed
from tests.undo_machine.deeds_to_do import CENTS, Deeds, Given, Seen, using

KINDS = ("distributor-rotor", "distributor-cap", "brake-pads", "brake-disc", "something else")
POSITIONS = ("", "front left", "front")
TYPED = (
    "33.41; 33.43",
    "14.02",
    "14.02; 14.03; 14.02",
    "",
    "5",
    "round",
    "12,5 mm",
    "1e99",
    "0.5 in",
)
TERMS = ("burned tip", "worn", "cracked")
LIMITS = (None, 0.0, 12.5, -3.0, 2e9, float("nan"))
TEXTS = (*sorted(actions.PAIR_TEXTS),)
ORIGINS = (None, "new, other maker's", "used")


@cache
def built_in() -> dict[str, PartKind]:
    """The part kinds that come with the program."""
    return kinds_of()


@cache
def a_sum() -> BenchSum:
    """A sum, worked out."""
    return work_out("road-test-worth", {"once_in": "40", "driven": "120"})


def dimension_of(seen: Seen, pair: int) -> Dimension:
    """Choose a dimension of the pair's kind."""
    kind = seen.row(Pair, pair).get("part_kind", "")
    return seen.of(built_in().get(kind, built_in()["distributor-rotor"]).dimensions)


def readings(seen: Seen) -> Given:
    """Type readings of one side."""
    pair = seen.one(Pair)
    dimension = dimension_of(seen, pair)
    tool = seen.of(("", "calliper 2"))
    return using(pair, dimension, seen.of(SIDES), seen.of(TYPED), tool, seen.of(("mm", "inch")))


def explained(seen: Seen) -> Given:
    """Say why a difference is as it should be."""
    pair = seen.one(Pair)
    return using(pair, dimension_of(seen, pair).name, seen.words(), seen.words())


def limits(seen: Seen) -> Given:
    """Enter the maker's limits."""
    pair = seen.one(Pair)
    ends = seen.of(LIMITS), seen.of(LIMITS)
    return using(pair, dimension_of(seen, pair).name, *ends, seen.words())


def photos_shown(seen: Seen) -> Given:
    """Put photos to a side of a pair."""
    chosen = [seen.one(Photo) for _ in range(seen.of((1, 1, 2, 0)))]
    return using(seen.one(Pair), chosen, seen.of(SIDES), seen.of(("top", "side")))


def for_set(seen: Seen) -> Given:
    """Enter a figure of the car for parts that meet."""
    part_set = seen.of([one for one in part_sets() if one.given])
    name = seen.of((*(term.name for term in part_set.given), "none such"))
    job = seen.one(Job)
    return using(job, part_set, seen.of(POSITIONS), name, seen.of(TYPED), seen.of(("mm", "inch")))


def owed_amount(seen: Seen) -> Given:
    """Write how much is owed."""
    row = seen.one(MoneyOwed)
    return using(row, seen.of(CENTS), seen.shown(MoneyOwed, row, "amount_cents"))


def next_step(seen: Seen) -> Given:
    """Write what is to be done to get it."""
    row = seen.one(MoneyOwed)
    return using(row, seen.words(), seen.shown(MoneyOwed, row, "next_step"))


DEEDS: Deeds = {
    actions.lay_side_by_side: lambda s: using(s.one(Job), s.of(KINDS), s.of(POSITIONS)),
    actions.take_pair_away: lambda s: using(s.one(Pair)),
    actions.write_readings: readings,
    actions.see_condition: lambda s: using(s.one(Pair), s.of(SIDES), s.of(TERMS), seen=s.yes()),
    actions.explain_difference: explained,
    actions.enter_limits: limits,
    actions.write_about_pair: lambda s: using(s.one(Pair), s.of(TEXTS), s.words()),
    actions.say_origin: lambda s: using(s.one(Pair), s.of(ORIGINS)),
    actions.say_fitted: lambda s: using(s.one(Pair), fitted=s.yes()),
    actions.show_in_pair: photos_shown,
    actions.take_from_pair: lambda s: using(s.one(PairPhoto)),
    set_actions.enter_for_set: for_set,
    sum_actions.keep_sum: lambda s: using(s.one(Job), "road-test-worth", a_sum()),
    sum_actions.print_sum: lambda s: using(s.one(KeptSum), s.yes()),
    sum_actions.take_sum_out: lambda s: using(s.one(KeptSum)),
    owed.write_owed: lambda s: using(s.one(Pair), s.of((*What, "thanks")), s.of(CENTS)),
    owed.write_owed_amount: owed_amount,
    owed.write_next_step: next_step,
    owed.set_owed_state: lambda s: using(s.one(MoneyOwed), s.of((*State, "lost"))),
    owed.take_owed_out: lambda s: using(s.one(MoneyOwed)),
}
