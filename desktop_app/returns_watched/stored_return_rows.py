"""Candidates written out as rows of the list of returns, with what persons said beside them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from desktop_app.returns_watched.candidate import Candidate
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored_facts import Facts
from desktop_app.returns_watched.stored_links import LinkKept

_NOTHING_SAID = LinkKept()


@dataclass(frozen=True, slots=True)
class ReturnsFound:
    """The returns that were found, in their order, made one by one while they are asked for.

    The record is read already when this is there: a car with thousands of visits makes millions of
    returns, and they need never be in memory together. They can be asked for again.
    """

    facts: Facts
    candidates: Iterable[Candidate]

    def rows(self) -> Iterator[ReturnRow]:
        """Yield each as a row of the list."""
        by_number = {job.number: job for job in self.facts.jobs}
        said, links = self.facts.said, self.facts.links
        for one in self.candidates:
            then, now = by_number[one.earlier], by_number[one.later]
            link = links.get((one.earlier, one.later), _NOTHING_SAID)
            assert then.handed_over_on is not None
            yield ReturnRow(
                candidate=one,
                earlier_id=said[one.earlier].id,
                later_id=said[one.later].id,
                vehicle=said[one.later].vehicle,
                left_on=then.handed_over_on,
                came_on=now.opened_on,
                concern_then=said[one.earlier].concern,
                concern_now=said[one.later].concern,
                why=link.why,
                cause_class=link.cause_class,
                cost_cents=link.cost_cents,
                judged_by=link.judged_by,
                judged_at=link.judged_at,
                change_promised=link.change_promised,
                dangerous=link.dangerous,
                vehicle_key=now.vehicle,
                arrival=now.arrival,
            )


def of_one_vehicle(facts: Facts, found: Iterable[Candidate]) -> list[Candidate]:
    """Leave out pairs of which somebody said that they are two vehicles."""
    links = facts.links
    return [
        one
        for one in found
        if (link := links.get((one.earlier, one.later))) is None or link.same_vehicle
    ]
