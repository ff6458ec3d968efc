"""One job of a return as it stands beside the other: what was heard, found, done and proved."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.parts_compared.pair_view import ORIGINS, PairView
from desktop_app.parts_compared.part_kinds.kind_names import kind_words
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof import ProofLevel, worth_saying
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
        stay = f"{job.came_on} to {job.left_on or 'now'}, {self._odometer()}"
        return (
            ("In the shop", stay),
            ("Concern", self._concern()),
            ("Happens", self._conditions() or "nobody asked"),
            ("Codes", self._codes()),
            ("Cause", "not caught" if job.cause_found is False else job.cause or "not named"),
            ("Correction", self._correction()),
            ("Parts", "\n".join(map(self._part, self.pairs)) or "none written down"),
            ("Proved", self._proved()),
            ("Declined", job.declined or "nobody said"),
        )

    def _odometer(self) -> str:
        job = self.job
        read = job.odometer_in if job.odometer_out is None else job.odometer_out
        return "odometer not read" if read is None else f"{read:,} {job.vehicle.odometer_unit}"

    def _concern(self) -> str:
        same = " (the customer says: the same again)" if self.job.says_same else ""
        return f"{self.job.concern or 'not written'}{same}"

    def _conditions(self) -> str:
        said = []
        for word, state in (("", True), ("never: ", False)):
            met = [condition_words(c) for c, h in self.job.conditions.items() if h is state]
            if met:
                said.append(f"{word}{', '.join(met)}")
        return "; ".join(said)

    def _codes(self) -> str:
        found, after = (self._codes_of(stage) for stage in ("found", "after repair"))
        if not found:
            found = "read, none" if self._were_read_at_first() else "nobody said"
        if after:
            return f"{found}; after the repair: {after}"
        if self.job.codes_were_read:
            return f"{found}; after the repair: read, none"
        return found if self.job.left_on is None else f"{found}; after the repair: not read"

    def _were_read_at_first(self) -> bool:
        return bool(self.proof.found.states) or "saved" in self.proof.steps

    def _codes_of(self, stage: str) -> str:
        codes = {
            code.code if code.kind == "stored" else f"{code.code} ({code.kind})"
            for code in self.job.codes
            if code.stage == stage
        }
        return ", ".join(sorted(codes))

    def _correction(self) -> str:
        who = f" Done by {self.job.technician}." if self.job.technician else ""
        done = self.job.correction.strip().rstrip(".") if who else self.job.correction
        return f"{done or 'not written'}{'.' if who else ''}{who}"

    def _part(self, pair: PairView) -> str:
        place = f", {pair.position}" if pair.position.strip() else ""
        name = f"{kind_words(pair.part_kind, self.kinds)}{place}"
        facts = [
            _named("off", pair.number_removed),
            _named("on", pair.number_on_part or pair.number_on_box),
            "origin not said"
            if pair.origin is None
            else _ORIGIN_WORDS.get(pair.origin, pair.origin),
            _named("from", pair.supplier),
            _named("lot", pair.lot),
            "" if pair.fitted else "not fitted",
        ]
        verdict = self.verdicts.get(pair.id)
        said = f"{name}: {', '.join(fact for fact in facts if fact)}."
        return f"{said} {verdict}." if verdict else said

    def _proved(self) -> str:
        job = self.job
        if job.proof_level is None:
            return "nobody said"
        try:
            level = ProofLevel(job.proof_level)
        except ValueError:
            return f"level {job.proof_level}"
        said = (f"{level.word}: {level.means}", job.proof_words.strip())
        reached = proof_reached(job, self.proof, level)
        return " ".join(part for part in (*said, *worth_saying(reached)) if part)


def _named(word: str, value: str) -> str:
    return f"{word} {value.strip()}" if value.strip() else ""
