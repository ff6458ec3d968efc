"""What hangs on the job of a row: symptoms and conditions read, codes, a part, an earlier job."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache

from sqlalchemy import select

from desktop_app.parts_compared.stored import Pair
from desktop_app.records_exchanged.import_told import Outcome
from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.records_exchanged.row_words import Read, part_of, same_part
from desktop_app.records_exchanged.stored_known import JobKnown, PairKnown
from desktop_app.records_exchanged.stored_merge import symptoms_new
from desktop_app.records_exchanged.stored_room import Rooms, Values
from desktop_app.repair_jobs.stored import JobCondition, JobSymptom, TroubleCode
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.said_beside import also_kept
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_links import link_kept
from desktop_app.shop_record.deed import Deed

_REMEMBERED, _LONGEST_REMEMBERED = 20_000, 300


@dataclass(frozen=True, slots=True)
class ReadWith:
    """What the words of a row are read with: symptom groups, conditions, part kinds by name.

    `own_phrases`, the shop's own by what each means, are given where these and the program's
    vocabulary are all that the words are read with, so that another process can read them too.
    """

    symptoms: Read
    conditions: Read
    kinds: Mapping[str, str]
    own_phrases: Mapping[str, str] | None = None


class Hanging:
    """Hangs what rows say on their jobs; `now` is when their judgements are written down."""

    def __init__(self, deed: Deed, rooms: Rooms, reads: ReadWith, now: str) -> None:
        self._deed, self._rooms, self._reads, self._now = deed, rooms, reads, now
        self._pairs_seen = bytearray(rooms[Pair].first)  # those from before, by id
        self._heard_before = lru_cache(_REMEMBERED)(self._heard)

    def read_concern(self, job: JobKnown) -> None:
        """Read symptom groups and conditions out of the concern; what a person chose stays."""
        concern = job.values["concern"]
        if not concern:
            return
        heard = self._heard_before if len(concern) <= _LONGEST_REMEMBERED else self._heard
        symptoms, conditions = heard(concern)
        if not self._rooms.is_new(job):
            for symptom in symptoms_new(self._deed, job.id, symptoms):
                self._rooms.hang(JobSymptom, job, {"job_id": job.id, "symptom": symptom})
            return
        for symptom in symptoms:
            self._rooms[JobSymptom].add({"job_id": job.id, "symptom": symptom})
        job.conditions = conditions
        for condition in conditions:
            values = {"job_id": job.id, "condition": condition, "happens": 1}
            self._rooms[JobCondition].add(values)

    def recall(self, jobs: Iterable[JobKnown]) -> None:
        """Let jobs from before know what earlier rows hung on them, which isn't written yet."""
        for job in jobs:
            for kept, values in self._rooms.hung(job):
                if kept is TroubleCode:
                    job.codes.append(values["code"])
                elif kept is ReturnLink:
                    job.links[values["earlier_job_id"]] = (None, values["judgement"])

    def codes(self, row: JobRow, job: JobKnown) -> bool:
        """Add the codes that the job hasn't yet."""
        new = [code for code in row.codes if code not in job.codes]
        for code in new:
            values = {"job_id": job.id, "code": code, "kind": "stored", "stage": "found"}
            self._rooms.hang(TroubleCode, job, values)
            job.codes.append(code)
        return bool(new)

    def part(self, row: JobRow, job: JobKnown) -> Outcome:
        """Take a row's part: the same line again is known, one that says more is changed."""
        said = part_of(row, self._reads.kinds)
        if said is None:
            return "unchanged"
        free = [pair for pair in job.pairs if self._is_free(pair)]
        pair = next((one for one in free if one.said == said), None)
        if pair is None and (said[0] or said[1]):
            pair = next((one for one in free if same_part(one.said, said)), None)
        if pair is None or pair.id is None:
            kind, number, supplier, origin = said
            values = {"job_id": job.id, "part_kind": kind, "number_on_box": number}
            values |= {"supplier": supplier, "origin": origin or None}
            made = self._rooms.hang(Pair, job, values)
            job.pairs.append(PairKnown(made, said))
            return "added"
        self._pairs_seen[pair.id] = 1
        names = ("part_kind", "number_on_box", "supplier", "origin")
        news = {n: v for n, v, old in zip(names, said, pair.said, strict=True) if v and v != old}
        if news:
            self._rooms[Pair].change(pair.id, news)
        return "updated" if news else "unchanged"

    def link(self, job: JobKnown, earlier: JobKnown | None, judgement: str | None) -> Outcome:
        """Link a job with the earlier one whose return it is, and say what was decided."""
        if earlier is None:
            return "unchanged"
        said: Values = {"judgement": judgement, "judged_by": "import" if judgement else ""}
        said["judged_at"] = self._now if judgement else None
        if earlier.id not in job.links:
            jobs = {"earlier_job_id": earlier.id, "later_job_id": job.id}
            job.links[earlier.id] = (self._rooms.hang(ReturnLink, job, jobs | said), judgement)
            return "added"
        link, before = job.links[earlier.id]
        if link is None or judgement is None or judgement == before:
            return "unchanged"
        self._rooms[ReturnLink].change(link, said | self._beside(link, judgement))
        job.links[earlier.id] = (link, judgement)
        return "updated"

    def _beside(self, link: int, judgement: str) -> Values:
        """Return what stands beside another judgement: nobody confirmed it, nor repeats it."""
        if self._rooms[ReturnLink].is_new(link):
            return {}
        wanted = select(ReturnLink).where(ReturnLink.id == link)
        kept = link_kept(self._deed.connection.execute(wanted).one())
        return {"second_look": None, "also": also_kept(kept.also, Judgement(judgement))}

    def _is_free(self, pair: PairKnown) -> bool:
        """Tell whether a part was there before the import and no line of the file is about it."""
        if pair.id is None or self._rooms[Pair].is_new(pair.id):
            return False
        return not self._pairs_seen[pair.id]

    def _heard(self, concern: str) -> tuple[tuple[str, ...], tuple[str, ...]]:
        return self._reads.symptoms(concern), self._reads.conditions(concern)
