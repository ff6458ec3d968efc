"""What a comparison sheet is made from: the job, its pairs as judged, and the photos to print."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TypeAlias

from desktop_app.parts_compared.bench_sums.bench_sum import SumKept
from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_sets.set_verdict import SetComparison
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.shop_record.past.anchor import anchor_words

Spot: TypeAlias = tuple[float, float]


@dataclass(frozen=True, slots=True)
class MarkPrinted:
    """A mark as it is printed over its photo; spots are shares of the photo's width and height.

    `lines` are open polylines, `sizes` have a tick at both ends, `arrows` end in a head. `words`
    stand at `label_at`. `height_unsaid` where its size rests on a height that nobody said.
    """

    lines: tuple[tuple[Spot, ...], ...]
    sizes: tuple[tuple[Spot, Spot], ...]
    arrows: tuple[tuple[Spot, Spot], ...]
    label_at: Spot
    words: str
    height_unsaid: bool = False


@dataclass(frozen=True, slots=True)
class SurfacePrinted:
    """What was counted of a surface, in words, with how it was counted; never a judgement."""

    name: str
    words: str


@dataclass(frozen=True, slots=True)
class BarPrinted:
    """A bar of a known length in a picture's corner, as a share of the picture's width."""

    share: float
    words: str


@dataclass(frozen=True, slots=True)
class PhotoPrinted:
    """A photo, or the piece of it around its marks, as it is printed: without the camera's notes.

    `jpeg` is None where the original can't be read; `trouble` then says why. `scaled_by` says
    what gives the marks their millimetres, "" where nothing does. `surfaces` are those counted.
    `mm_wide` is how much of the part the picture's width shows, where that is known.
    """

    sha256: str
    note: str
    jpeg: bytes | None
    trouble: str = ""
    marks: tuple[MarkPrinted, ...] = ()
    scaled_by: str = ""
    surfaces: tuple[SurfacePrinted, ...] = ()
    bar: BarPrinted | None = None
    mm_wide: float | None = None


@dataclass(frozen=True, slots=True)
class OverlayPrinted:
    """The new part's photo laid over the old one's; `jpeg` is None where it can't be drawn."""

    jpeg: bytes | None
    words: str


@dataclass(frozen=True, slots=True)
class ViewPrinted:
    """One view of a pair: what there is of the removed part and of the replacement."""

    view: str
    removed: PhotoPrinted | None
    replacement: PhotoPrinted | None
    overlay: OverlayPrinted | None = None


@dataclass(frozen=True, slots=True)
class PairPrinted:
    """A pair with its judgement; both are None where its part kind is not on the shelf.

    `own_kind` says that the shop judges by its own form of the kind. `compared` is in the shop's
    unit of length; `instruments` describes those that were used.
    """

    pair: PairView
    kind: PartKind | None
    compared: PairComparison | None
    views: tuple[ViewPrinted, ...]
    instruments: tuple[str, ...]
    own_kind: bool = False


@dataclass(frozen=True, slots=True)
class SheetFacts:
    """Everything that stands on one sheet; the same facts always give the same pages.

    `sets` are the parts that meet, each with its position; their lengths are in mm and told in
    `length_unit`. `made_at` is an ISO moment; `history_seq` and `history_hash` name the last
    entry of the history at that moment, so that a printed sheet can be held against the record
    later.
    """

    shop_name: str
    paper: str
    job: JobView
    pairs: tuple[PairPrinted, ...]
    made_at: str
    history_seq: int
    history_hash: str
    sums: tuple[SumKept, ...] = ()
    sets: tuple[tuple[str, SetComparison], ...] = ()
    length_unit: str = "mm"
    proof: ProofKept = field(default_factory=ProofKept)

    @property
    def anchor(self) -> str:
        """The place in the history as it is printed: the number and 16 characters of the hash."""
        return anchor_words(self.history_seq, self.history_hash)

    @property
    def file_name(self) -> str:
        """The name proposed for the file, without signs that a file name can't hold."""
        kept = "".join(each if each.isalnum() or each in "-_." else "-" for each in self.job.number)
        return f"sheet-{kept}.pdf"
