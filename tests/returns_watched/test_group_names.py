"""By what jobs are grouped: each thing is read from where it is written, and of fitted parts."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.parts_compared.stored import Pair, Reading
from desktop_app.repair_jobs.stored import Job, Person
from desktop_app.returns_watched.honest_numbers.group_names import NOT_COMPARED
from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID, By
from desktop_app.returns_watched.stored_rates import read_counted_jobs
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from tests.watched_shop import job, vehicle

TODAY = date(2026, 11, 16)
ROTOR = resource_path("part_kinds") / "distributor-rotor.toml"
KINDS = {"distributor-rotor": read_kind(ROTOR.read_text(encoding="utf-8"), ROTOR.name)}
NAMES = {"stalls": "dies", "no-idle": "dies"}


@pytest.fixture
def three(shop: ShopRecord) -> ShopRecord:
    """Three jobs: two parts and two symptoms at one, a part that was not fitted, nothing said."""
    car = vehicle(shop)
    kinds = ["distributor-rotor", "distributor-cap"]
    first = job(
        shop, car, "J-1", "2026-01-05", "2026-01-05", kinds=kinds, symptoms=["stalls", "no-idle"]
    )
    second = job(shop, car, "J-2", "2026-03-05", "2026-03-05", kinds=["alternator"], system="fuel")
    job(shop, car, "J-3", "2026-05-05", "2026-05-05", system="", symptoms=["misfire"])
    with shop.deed("Say whose and what") as deed:
        deed.change(Job, first, technician_id=deed.add(Person, name="Ana"))
        deed.change(Job, second, technician_id=deed.add(Person, name="ANA "))
        deed.change(Pair, 1, supplier="North", origin="reman")
        deed.change(Pair, 2, supplier="Mill", origin="reman")
        deed.change(Pair, 3, supplier="East", origin="used", fitted=0)
    return shop


@pytest.mark.parametrize(
    ("by", "groups"),
    [
        ("technician", (("Ana",), ("Ana",), (NOT_SAID,))),
        ("system", (("ignition",), ("fuel",), (NOT_SAID,))),
        ("part-kind", (("distributor-cap", "distributor-rotor"), (NOT_SAID,), (NOT_SAID,))),
        ("supplier", (("Mill", "North"), (NOT_SAID,), (NOT_SAID,))),
        ("part-origin", (("reman",), (NOT_SAID,), (NOT_SAID,))),
        ("symptom", (("dies",), (NOT_SAID,), ("misfire",))),
        ("verdict", ((NOT_COMPARED,),) * 3),
    ],
)
def test_each_job_counts_under_what_is_written_of_it(
    three: ShopRecord, by: By, groups: tuple[tuple[str, ...], ...]
) -> None:
    with three.reading() as connection:
        found = read_counted_jobs(connection, by, TODAY, names=NAMES, part_kinds=KINDS)
        since = date(2026, 3, 5)
        later = read_counted_jobs(connection, by, TODAY, since, names=NAMES, part_kinds=KINDS)
    assert found.groups == groups
    expected = groups[1:]
    if by == "technician":
        expected = (("ANA",), (NOT_SAID,))  # as it was first written among those that are read
    assert later.groups == expected


def test_only_fitted_pairs_with_a_reading_and_a_known_kind_are_compared(
    three: ShopRecord,
) -> None:
    with three.deed("Measure the parts") as deed:
        for pair in (1, 2, 3):
            deed.add(
                Reading,
                pair_id=pair,
                side="removed",
                dimension="overall height",
                instrument="calliper",
                value=40.0,
                typed="40.0",
                taken_at="2026-01-05T10:00:00+00:00",
            )

    def verdicts(kinds: dict[str, PartKind]) -> list[tuple[str, ...]]:
        with three.reading() as connection:
            return list(read_counted_jobs(connection, "verdict", TODAY, part_kinds=kinds).groups)

    assert verdicts(KINDS) == [("not enough measured",), (NOT_COMPARED,), (NOT_COMPARED,)]
    assert verdicts({}) == [(NOT_COMPARED,)] * 3
