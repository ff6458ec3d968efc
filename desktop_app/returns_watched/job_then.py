"""One job of a return as it stands beside the other: what was heard, found, done and proved."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from desktop_app.figures_shown import figure
from desktop_app.language import marked, tr
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.parts_compared.pair_view import ORIGINS, PairView
from desktop_app.parts_compared.part_kinds.kind_names import kind_words, place_words
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof import ProofLevel, level_reached, worth_saying
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.proof_said import proof_reached

_ORIGIN_WORDS = dict(ORIGINS)


@dataclass(frozen=True, slots=True)
class JobThen:
    """What is known of one job; `verdicts` are those of its pairs, by pair id, with their sign.

    Days are ISO dates, the odometer comes with its unit. `photos` are those of its pairs, `proof`
    is what is kept of the proof beside the job, `kinds` name the parts.
    """

    job: JobView
    pairs: tuple[PairView, ...]
    verdicts: Mapping[int, str]
    photos: tuple[KeptPhoto, ...] = ()
    proof: ProofKept = field(default_factory=ProofKept)
    kinds: Mapping[str, PartKind] = field(default_factory=dict)

    @property
    def job_id(self) -> int:
        """The id of the job."""
        return self.job.id

    @property
    def number(self) -> str:
        """The number of the job."""
        return self.job.number

    def lines(self) -> tuple[tuple[str, str], ...]:
        """Return name and words, in the order of the work; what nobody wrote says so."""
        job = self.job
        came, left, odometer = job.came_on, job.left_on, self._odometer()
        stay = (
            tr("{came_on} to {left_on}, {odometer}", came_on=came, left_on=left, odometer=odometer)
            if left
            else tr("{came_on} to now, {odometer}", came_on=came, odometer=odometer)
        )
        return (
            (tr("In the shop"), stay),
            (tr("Concern"), self._concern()),
            (tr("Happens"), self._conditions() or tr("nobody asked")),
            (tr("Codes"), self._codes()),
            (
                tr("Cause"),
                tr("not caught") if job.cause_found is False else job.cause or tr("not named"),
            ),
            (tr("Correction"), self._correction()),
            (tr("Parts"), "\n".join(map(self._part, self.pairs)) or tr("none written down")),
            (tr("Proved"), self._proved()),
            (tr("Declined"), job.declined or tr("nobody said")),
        )

    def _odometer(self) -> str:
        job = self.job
        read = job.odometer_in if job.odometer_out is None else job.odometer_out
        return (
            tr("odometer not read")
            if read is None
            else f"{figure(read, ',')} {job.vehicle.odometer_unit}"
        )

    def _concern(self) -> str:
        same = tr(" (the customer says: the same again)") if self.job.says_same else ""
        return (self.job.concern or tr("not written")) + same

    def _conditions(self) -> str:
        happens, never = (
            ", ".join(condition_words(c) for c, h in self.job.conditions.items() if h is state)
            for state in (True, False)
        )
        said = (happens, tr("never: {conditions}", conditions=never) if never else "")
        return "; ".join(part for part in said if part)

    def _codes(self) -> str:
        found, after = (self._codes_of(stage) for stage in ("found", "after repair"))
        if not found:
            found = tr("read, none") if self._were_read_at_first() else tr("nobody said")
        if after:
            return tr("{found}; after the repair: {after}", found=found, after=after)
        if self.job.codes_were_read:
            return tr("{found}; after the repair: read, none", found=found)
        return (
            found
            if self.job.left_on is None
            else tr("{found}; after the repair: not read", found=found)
        )

    def _were_read_at_first(self) -> bool:
        return bool(self.proof.found.states) or "saved" in self.proof.steps

    def _codes_of(self, stage: str) -> str:
        codes = {
            code.code if code.kind == "stored" else f"{code.code} ({tr(code.kind)})"
            for code in self.job.codes
            if code.stage == stage
        }
        return ", ".join(sorted(codes))

    def _correction(self) -> str:
        who = (
            tr(" Done by {technician}.", technician=self.job.technician)
            if self.job.technician
            else ""
        )
        done = self.job.correction.strip().rstrip(".") if who else self.job.correction
        return (done or tr("not written")) + ("." if who else "") + who

    def _part(self, pair: PairView) -> str:
        place = place_words(pair.position, pair.part_kind, self.kinds)
        where = f", {place}" if place.strip() else ""
        name = f"{kind_words(pair.part_kind, self.kinds)}{where}"
        facts = [
            _named(marked("off {number}"), number=pair.number_removed),
            _named(marked("on {number}"), number=pair.number_on_part or pair.number_on_box),
            tr("origin not said")
            if pair.origin is None
            else _ORIGIN_WORDS.get(pair.origin, pair.origin),
            _named(marked("from {supplier}"), supplier=pair.supplier),
            _named(marked("lot {lot}"), lot=pair.lot),
            "" if pair.fitted else tr("not fitted"),
        ]
        verdict = self.verdicts.get(pair.id)
        said = f"{name}: {', '.join(fact for fact in facts if fact)}."
        return f"{said} {verdict}." if verdict else said

    def _proved(self) -> str:
        job = self.job
        if job.proof_level is None:
            return tr("nobody said")
        reached = proof_reached(job, self.proof, ProofLevel(job.proof_level))
        said = (level_reached(reached), job.proof_words.strip(), *worth_saying(reached))
        return " ".join(part for part in said if part)


def _named(words: str, **values: str) -> str:
    bare = {name: value.strip() for name, value in values.items()}
    return tr(words, **bare) if any(bare.values()) else ""
