"""Rows keep their places on a server too, which puts a changed row behind the others."""

from __future__ import annotations

from pathlib import Path

from desktop_app.commands.shop_place import open_place
from desktop_app.parts_compared.stored import Instrument, Pair
from desktop_app.parts_compared.stored_kinds import jobs_of_pairs
from desktop_app.parts_compared.stored_pairs import drawer
from desktop_app.repair_jobs.stored import JobCondition
from desktop_app.repair_jobs.stored_reading import conditions_of
from desktop_app.shop_record.deed import Deed
from tests.conftest import NOON
from tests.watched_shop import job, vehicle


def test_what_was_changed_keeps_its_place(server_folder: Path) -> None:
    shop = open_place(server_folder, lambda: NOON)
    car = vehicle(shop)
    jobs = [job(shop, car, f"J-{n}", "2026-01-05") for n in (1, 2)]
    words, tools = ("cold", "damp", "uphill"), ("calliper", "gauge", "micrometer")

    def write(deed: Deed) -> None:
        for word in words:
            deed.add(JobCondition, job_id=jobs[0], condition=word, happens=1)
        for tool in tools:
            deed.add(Instrument, name=tool, unit="mm", resolution=0.01, max_error=0.02, in_use=1)
        for one in jobs:
            deed.add(Pair, job_id=one, part_kind="rotor")

    shop.do("Write them down", write)

    def change(deed: Deed) -> None:
        deed.change(JobCondition, 1, happens=0)
        deed.change(Instrument, 1, max_error=0.03)
        deed.change(Pair, 1, part_kind="cap")

    shop.do("Change the first of each", change)
    with shop.reading() as connection:
        assert tuple(conditions_of(connection, jobs[0])) == words
        assert tuple(drawer(connection)) == tools
        assert jobs_of_pairs(connection, (1, 2)) == ("J-2", "J-1")
    shop.close()
