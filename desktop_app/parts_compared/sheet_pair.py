"""One pair on the sheet: photos, verdict, what follows, the table, what was seen and noted."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.language import tr
from desktop_app.part_photos.kept_photo import SAME_PICTURE, same_picture
from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.parts_compared.comparison import DimensionComparison, PairComparison
from desktop_app.parts_compared.condition_check import check_conditions
from desktop_app.parts_compared.pair_view import ORIGINS, PairView
from desktop_app.parts_compared.part_kinds.kind_names import kind_words
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.sheet_blocks import (
    Block,
    Heading,
    Listed,
    PhotoRow,
    TwoLists,
    VerdictBox,
    Words,
)
from desktop_app.parts_compared.sheet_facts import (
    PairPrinted,
    PhotoPrinted,
    ViewPrinted,
)
from desktop_app.parts_compared.sheet_seen import found_words, photos_give, seen_words
from desktop_app.parts_compared.sheet_values import (
    clipped,
)
from desktop_app.parts_compared.signs import PAIR_SIGNS
from desktop_app.repair_jobs.job_view import JobView

SAME_HEAD = tr("The same where it must be the same")
RESTORED_HEAD = tr("Restored where such a part wears")
OWN_FIGURES = tr("Judged by the shop's own figures for this kind of part, as they are on this day.")
NOT_JUDGED = tr("This part kind is not on the shelf, so these parts were not judged.")
LONGEST_EXPLAINED = 6000
LEAST_HIGH = 36.0  # mm of a photo; less high, nobody sees on it what is told
LONGEST_SENTENCE = 400  # characters; a sentence in a list can hold a word somebody typed

PAIR_MEANS = {
    "fits": tr("Everything essential on the list speaks for this replacement."),
    "stop and look": tr("Something speaks against this replacement."),
    "not enough measured": tr("What was measured is not enough to say that it fits."),
}


def pair_blocks(
    printed: PairPrinted, job: JobView, photo_high: float | None = None, give: float = 0.0
) -> Iterator[Block]:
    """Give what the customer reads of one pair; `photo_high` in mm, where several share a page.

    `give` is how many mm its photos leave to the other words of the page.
    """
    pair, kind, compared = printed.pair, printed.kind, printed.compared
    yield Heading(pair_name(pair, kind), first=True)
    if kind is not None and compared is not None:
        against = _against(pair, kind, compared)
        yield _verdict(compared, against, job)
        if printed.own_kind:
            yield Words(OWN_FIGURES, look="quiet")
    seen = "" if kind is None else seen_words(pair, kind)
    if printed.views:
        alone = len(printed.views) == 1 and printed.views[0].overlay is None
        most = (62.0 if alone else 48.0) - photos_give(found_words(job), seen) - give
        yield photo_row(printed.views[0], photo_high or max(most, LEAST_HIGH))
    else:
        yield Words(tr("No photos were put to these parts."), look="quiet")
    yield Words(_replacement(pair, job), tr("Replacement"))
    if kind is None or compared is None:
        yield Words(NOT_JUDGED, look="strong")
    else:
        if seen:
            yield Words(seen, tr("Seen"))
        yield from _what_follows(compared, against, job)


def pair_name(pair: PairView, kind: PartKind | None) -> str:
    """Return what a pair is called on the sheet: its kind and its position."""
    name = kind.name if kind else clipped(kind_words(pair.part_kind), 40)
    position = clipped(kind.place_said(pair.position) if kind else pair.position, 60)
    start = name[:1].upper() + name[1:]
    return f"{start}, {position}" if position else start


def _against(pair: PairView, kind: PartKind, compared: PairComparison) -> tuple[str, ...]:
    measured = [one.sentence for one in compared.dimensions if one.settled_against]
    return (*measured, *check_conditions(kind, pair.conditions).against)


def _verdict(compared: PairComparison, against: tuple[str, ...], job: JobView) -> VerdictBox:
    means = PAIR_MEANS[compared.verdict]
    if against:
        means = f"{means} {clipped(against[0], LONGEST_SENTENCE)}"
    elif compared.verdict == "stop and look" and compared.reasons:
        means = f"{means} {clipped(compared.reasons[0], LONGEST_SENTENCE)}"
    elif compared.verdict == "not enough measured":
        means = _and_what_is_missing(means, compared, job)
    return VerdictBox(PAIR_SIGNS[compared.verdict], tr(compared.verdict), means)


def _and_what_is_missing(means: str, compared: PairComparison, job: JobView) -> str:
    """Add what to measure next; what was never measured, once the car has left."""
    if job.left_on is None:
        steps = compared.next_steps
        return tr("{means} Next: {step}", means=means, step=steps[0]) if steps else means
    labels = ", ".join(one.label for one in compared.dimensions if _is_missing(one))
    return tr("{means} Not measured: {labels}.", means=means, labels=labels) if labels else means


def _is_missing(one: DimensionComparison) -> bool:
    on_one_side = one.replacement is None or (one.removed is None and one.role != "limit")
    return one.essential and one.verdict == "not measured" and on_one_side


def photo_row(view: ViewPrinted, height: float) -> PhotoRow:
    """Return the photos of one view beside each other, so many millimetres high."""
    return PhotoRow(
        captions=(_caption("removed", view), _caption("replacement", view)),
        photos=(view.removed, view.replacement),
        words=(_instead(view.removed), _instead(view.replacement)),
        height=height,
        below=SAME_PICTURE if _is_same(view) else "",
    )


def _caption(side: str, view: ViewPrinted) -> str:
    name = tr("Removed part") if side == "removed" else tr("Replacement")
    photo = view.removed if side == "removed" else view.replacement
    note = f" · {clipped(photo.note, 40)}" if photo is not None and photo.note.strip() else ""
    said = tr(view.view)
    if said == view.view:  # else it is none that somebody typed, and as long as it needs to be
        said = clipped(said, 44)
    return f"{SIDE_SIGNS[side]} {name} · {said}{note}"


def _instead(photo: PhotoPrinted | None) -> str:
    if photo is None:
        return tr("No photo of this part in this view.")
    return photo.trouble


def _is_same(view: ViewPrinted) -> bool:
    old, new = view.removed, view.replacement
    return old is not None and new is not None and same_picture(old.sha256, new.sha256)


def _replacement(pair: PairView, job: JobView) -> str:
    origin = dict(ORIGINS).get(pair.origin or "", pair.origin or "")
    parts = [origin or tr("where it comes from was not said yet")]
    if pair.supplier.strip():
        parts.append(tr("supplied by {supplier}", supplier=clipped(pair.supplier)))
    numbers = (
        (tr("number on the removed part"), pair.number_removed),
        (tr("number on the box"), pair.number_on_box),
        (tr("number on the part"), pair.number_on_part),
    )
    parts += [f"{where} {clipped(number, 40)}" for where, number in numbers if number.strip()]
    said = "; ".join(parts)
    said = f"{said[:1].upper()}{said[1:]}."
    if not pair.fitted:
        return tr("{said} Stopped before fitting: it was not fitted.", said=said)
    return tr("{said} It was fitted.", said=said) if job.left_on is not None else said


def _what_follows(
    compared: PairComparison, against: tuple[str, ...], job: JobView
) -> Iterator[Block]:
    judged = compared.dimensions
    same = _said(one for one in judged if one.verdict == "same")
    restored = _said(one for one in judged if one.verdict == "restored")
    yield TwoLists((SAME_HEAD, RESTORED_HEAD), (_some(same), _some(restored)), ("=", "↥"))
    named = (
        (tr("Within the limits"), [one for one in judged if one.verdict == "within limits"], "⊢⊣"),
        (
            tr("Different, and explained"),
            [one for one in judged if one.verdict == "explained"],
            "✎",
        ),
    )
    for name, ones, sign in named:
        if ones:
            yield Listed(
                name, tuple(clipped(one.sentence, LONGEST_EXPLAINED) for one in ones), sign
            )
    if against:
        cut = tuple(clipped(each, LONGEST_SENTENCE) for each in against)
        yield Listed(tr("Speaks against it"), cut, "☞")
    left = job.left_on is not None
    open_ones = [one for one in judged if _is_open(one)]
    still_open = tuple(
        clipped(one.as_left if left else one.sentence, LONGEST_SENTENCE) for one in open_ones
    )
    if still_open:
        yield Listed(tr("Still open"), still_open, "◌")
    if compared.next_steps and not left:
        yield Listed(tr("To measure next"), compared.next_steps, "→")


def _is_open(one: DimensionComparison) -> bool:
    if one.verdict == "too close to tell":
        return True
    started = one.essential or one.removed is not None or one.replacement is not None
    return one.verdict == "not measured" and started


def _said(ones: Iterator[DimensionComparison]) -> tuple[str, ...]:
    return tuple(clipped(one.sentence, LONGEST_SENTENCE) for one in ones)


def _some(items: tuple[str, ...]) -> tuple[str, ...]:
    return items or (tr("Nothing is settled here."),)
