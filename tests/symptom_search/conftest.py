"""A small shop with jobs that can be found, and the ways to write more of them."""

from __future__ import annotations

from typing import Any

import pytest

from desktop_app.commands.shop_place import follow
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import Pair, PartCondition
from desktop_app.repair_jobs.stored import (
    Job,
    JobCondition,
    JobSymptom,
    Person,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.returns_watched.stored import CustomerAsked, ReturnLink
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search.find import Found, find
from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

SETTLED = "2026-03-02T16:00:00+00:00"
OPEN = "2026-11-02T16:00:00+00:00"


class OldJobs:
    """Writes jobs into a record as deeds, and finds them again."""

    def __init__(self, record: ShopRecord, words: Vocabulary, kinds: dict[str, PartKind]) -> None:
        self.record, self.words, self.kinds = record, words, kinds
        self._written = 0

    def find(self, text: str, limit: int = 20) -> Found:
        return find(self.record, self.words, self.kinds, text, limit)

    def numbers(self, text: str) -> list[str]:
        """Return the numbers of the jobs shown, those with but a word in common last."""
        found = self.find(text)
        return [hit.number for hit in (*found.hits, *found.weak)]

    def car(
        self,
        plate: str = "",
        vin: str | None = None,
        description: str = "",
        tag: str | None = None,
    ) -> int:
        def work(deed: Deed) -> None:
            deed.add(
                Vehicle,
                plate=plate or None,
                vin=vin,
                tag=tag,
                description=description,
                odometer_unit="mi",
            )

        return _made(self.record.do("Add a car", work).made)

    def person(self, name: str) -> int:
        def work(deed: Deed) -> None:
            deed.add(Person, name=name)

        return _made(self.record.do("Add a person", work).made)

    def job(
        self,
        concern: str,
        *,
        car: int | None = None,
        parts: tuple[str, ...] = (),
        codes: tuple[str, ...] = (),
        happens: tuple[str, ...] = (),
        never: tuple[str, ...] = (),
        seen: tuple[str, ...] = (),
        left: str | None = SETTLED,
        here: bool = False,
        **more: Any,
    ) -> int:
        """Write a job as the counter would, its symptoms read from the words; return its id."""
        vehicle = car or self.car()
        self._written += 1
        made: list[int] = []

        def work(deed: Deed) -> None:
            visit = deed.add(
                Visit,
                vehicle_id=vehicle,
                customer_id=None,
                came_at=left or OPEN,
                left_at=None if here else left,
                odometer_in=90_000,
                odometer_out=None,
                odometer_unread=None,
            )
            values = {"technician_id": None, "number": f"J-{self._written:03}", "left_at": left}
            windows = {"window_days": 90, "window_miles": 3000, "window_rule": "first"}
            values |= {"cause": "Shown.", "correction": "Mended."}  # a repair, where none is told
            job = deed.add(Job, visit_id=visit, concern=concern, **(values | windows | more))
            made.append(job)
            for group in self.words.groups_in(concern):
                deed.add(JobSymptom, job_id=job, symptom=group.id)
            for ticks, state in ((happens, 1), (never, 0)):
                for one in ticks:
                    deed.add(JobCondition, job_id=job, condition=one, happens=state)
            for code in codes:
                deed.add(TroubleCode, job_id=job, code=code, kind="stored", stage="found")
            for kind in parts:
                pair = deed.add(Pair, job_id=job, part_kind=kind, origin="new-other")
                for term in seen:
                    deed.add(PartCondition, pair_id=pair, side="removed", term=term)

        self.record.do("Write a job", work)
        return made[0]

    def came_back(self, earlier: int, later: int, judgement: str) -> None:
        def work(deed: Deed) -> None:
            deed.add(ReturnLink, earlier_job_id=earlier, later_job_id=later, judgement=judgement)

        self.record.do("Judge a return", work)

    def told(self, job: int, answer: str, on: str, judgement: str | None = None) -> None:
        """Write what a customer said when asked, and how it was judged."""

        def work(deed: Deed) -> None:
            deed.add(CustomerAsked, job_id=job, answer=answer, asked_on=on, judgement=judgement)

        self.record.do("Ask a customer", work)


def _made(made: int | None) -> int:
    assert made is not None
    return made


@pytest.fixture(scope="session")
def words() -> Vocabulary:
    return shop_vocabulary()


@pytest.fixture(scope="session")
def kinds() -> dict[str, PartKind]:
    return load_kinds([resource_path("part_kinds")]).kinds


@pytest.fixture
def old_jobs(shop: ShopRecord, words: Vocabulary, kinds: dict[str, PartKind]) -> OldJobs:
    """An empty shop whose index follows every deed."""
    follow(shop)
    return OldJobs(shop, words, kinds)
