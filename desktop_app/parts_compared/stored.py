"""How pairs of parts, their readings and the shop's instruments are kept: the tables."""

from __future__ import annotations

from sqlalchemy import CheckConstraint, ForeignKey, Index

from desktop_app.shop_record.tables import KEPT, Kept, Mapped, mapped_column

_SIDE = CheckConstraint("side IN ('removed', 'replacement')", name="side")


class Instrument(Kept):
    """A measuring instrument of the shop; resolution and permitted error in its unit.

    `repeatability` is the shop's own, a standard deviation; None until a gauge study gave one.
    """

    __tablename__ = "instrument"

    name: Mapped[str] = mapped_column(unique=True)
    unit: Mapped[str]
    resolution: Mapped[float]
    max_error: Mapped[float]
    checked_on: Mapped[str | None]
    in_use: Mapped[int] = mapped_column(default=1)
    repeatability: Mapped[float | None]


class Pair(Kept):
    """A removed part and its replacement in one position of one job.

    `origin` of the replacement has no default: it is the one question that must be answered.
    """

    __tablename__ = "pair"

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"), index=True)
    part_kind: Mapped[str] = mapped_column(index=True)
    position: Mapped[str] = mapped_column(default="")
    origin: Mapped[str | None]
    supplier: Mapped[str] = mapped_column(default="")
    lot: Mapped[str] = mapped_column(default="")
    number_removed: Mapped[str] = mapped_column(default="")
    number_on_box: Mapped[str] = mapped_column(default="")
    number_on_part: Mapped[str] = mapped_column(default="")
    price_cents: Mapped[int | None]
    fate: Mapped[str] = mapped_column(default="")
    note_removed: Mapped[str] = mapped_column(default="")
    note_replacement: Mapped[str] = mapped_column(default="")
    fitted: Mapped[int] = mapped_column(default=1)


class Reading(Kept):
    """One measured value in the dimension's unit, or a word; `typed` is what the person typed."""

    __tablename__ = "reading"
    __table_args__ = (Index("ix_reading_pair", "pair_id", "dimension", "side"), _SIDE, KEPT)

    pair_id: Mapped[int] = mapped_column(ForeignKey("pair.id"))
    side: Mapped[str]
    dimension: Mapped[str]
    instrument: Mapped[str]
    value: Mapped[float | None]
    word: Mapped[str | None]
    typed: Mapped[str]
    taken_at: Mapped[str]


class PhotoReading(Kept):
    """A reading that was taken from a mark on a photo.

    `doubt` (JSON) is what the mark's budget was when the reading was taken, and what it shares
    with the same reading of the other part.
    """

    __tablename__ = "photo_reading"

    reading_id: Mapped[int] = mapped_column(ForeignKey("reading.id"), unique=True)
    mark_id: Mapped[int] = mapped_column(ForeignKey("mark.id"), index=True)
    doubt: Mapped[str]


class PartCondition(Kept):
    """A condition term that somebody saw on a part."""

    __tablename__ = "part_condition"
    __table_args__ = (
        Index("uq_part_condition", "pair_id", "side", "term", unique=True),
        _SIDE,
        KEPT,
    )

    pair_id: Mapped[int] = mapped_column(ForeignKey("pair.id"))
    side: Mapped[str]
    term: Mapped[str]


class Explanation(Kept):
    """Why a difference is as it should be, and by whose word (a superseded number, a letter)."""

    __tablename__ = "explanation"
    __table_args__ = (Index("uq_explanation", "pair_id", "dimension", unique=True), KEPT)

    pair_id: Mapped[int] = mapped_column(ForeignKey("pair.id"))
    dimension: Mapped[str]
    why: Mapped[str]
    by_whom: Mapped[str]


class MakerLimit(Kept):
    """The maker's own limits for a dimension, typed by the shop; one end may be open."""

    __tablename__ = "maker_limit"
    __table_args__ = (Index("uq_maker_limit", "pair_id", "dimension", unique=True), KEPT)

    pair_id: Mapped[int] = mapped_column(ForeignKey("pair.id"))
    dimension: Mapped[str]
    low: Mapped[float | None]
    high: Mapped[float | None]
    source: Mapped[str]


class PairPhoto(Kept):
    """Which photo shows which side of a pair, and in which view, so that old and new line up."""

    __tablename__ = "pair_photo"
    __table_args__ = (Index("ix_pair_photo_pair", "pair_id"), _SIDE, KEPT)

    pair_id: Mapped[int] = mapped_column(ForeignKey("pair.id"))
    photo_id: Mapped[int] = mapped_column(ForeignKey("photo.id"), index=True)
    side: Mapped[str]
    view: Mapped[str]


class GaugeStudy(Kept):
    """Repeated readings with one instrument, to learn how well the shop repeats itself.

    `taken_over` is 1 where the instrument's repeatability comes from this study.
    """

    __tablename__ = "gauge_study"

    instrument_id: Mapped[int] = mapped_column(ForeignKey("instrument.id"), index=True)
    about: Mapped[str] = mapped_column(default="")
    begun_at: Mapped[str]
    taken_over: Mapped[int] = mapped_column(default=0)


class GaugeReading(Kept):
    """One reading of a gauge study: whose, of which part, the how manieth; in the study's unit."""

    __tablename__ = "gauge_reading"
    __table_args__ = (
        Index("uq_gauge_reading", "study_id", "person", "part", "trial", unique=True),
        KEPT,
    )

    study_id: Mapped[int] = mapped_column(ForeignKey("gauge_study.id"))
    person: Mapped[str]
    part: Mapped[int]
    trial: Mapped[int]
    value: Mapped[float]


class KeptSum(Kept):
    """A bench sum of a job: which, what was put in (JSON), what it said, and whether to print it.

    The sentence is kept as it was said then; a later program may word it otherwise.
    """

    __tablename__ = "kept_sum"

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"), index=True)
    sum: Mapped[str]
    inputs: Mapped[str]
    sentence: Mapped[str]
    on_sheet: Mapped[int] = mapped_column(default=1)


class OwnKind(Kept):
    """A part kind of the shop's own making, or its own form of a built-in one; `body` is TOML."""

    __tablename__ = "own_kind"

    kind: Mapped[str] = mapped_column(unique=True)
    body: Mapped[str]
