"""One pair on the file's pages: further photos, marks, the table, readings, what was seen."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from desktop_app.language import tr
from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.parts_compared.comparison import DimensionComparison, PairComparison
from desktop_app.parts_compared.condition_check import check_conditions
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.sheet_blocks import Block, Heading, LaidOver, Listed, Rows, Words
from desktop_app.parts_compared.sheet_facts import (
    OverlayPrinted,
    PairPrinted,
    ViewPrinted,
)
from desktop_app.parts_compared.sheet_overlay import BLENDED
from desktop_app.parts_compared.sheet_pair import LONGEST_SENTENCE, pair_name, photo_row
from desktop_app.parts_compared.sheet_readings import readings_blocks
from desktop_app.parts_compared.sheet_values import (
    allowed_cell,
    clipped,
    difference_cell,
    label_cell,
    side_cell,
    verdict_cell,
)

UNCERTAINTY = tr(
    "± is the expanded uncertainty at 95 % coverage: what instrument and scatter leave "
    "open. A difference is replacement minus removed; what an instrument gets wrong on "
    "both cancels. A verdict weighs these doubts and the limits; ± alone does not decide it."
)
MARKED = tr("± is what the photo leaves open at 95 % coverage: pointing, camera, height and print.")
BARS = tr("Bars: at marks' height.")
UNSAID = tr("Where no height was said, a size holds only for what lies on the card itself.")
LINES = tr(
    "{removed} solid line: removed part; {replacement} dashed line: replacement.",
    removed=SIDE_SIGNS["removed"],
    replacement=SIDE_SIGNS["replacement"],
)
SINGLE = tr("What was read once rests on what such an instrument usually scatters.")
LEAST_LAID = 46.0  # mm; less high, nobody reads the sizes on it
LONGEST_NOTE = 6000
FURTHER_HIGH = 44.0  # mm, of views after the first


def pair_file_blocks(printed: PairPrinted, crowded: bool = False) -> Iterator[Block]:
    """Give what is kept of one pair beside the customer's page; `crowded` leaves views out."""
    pair, kind, compared = printed.pair, printed.kind, printed.compared
    blocks = [*_photos(printed, crowded)]
    if kind is None or compared is None:
        blocks += _unjudged(pair)
    else:
        blocks += _table(compared, kind, printed.instruments, pair.marks)
        blocks += readings_blocks(pair, kind, compared)
        blocks += _seen(pair, kind)
    blocks += _notes(pair)
    yield Heading(pair_name(pair, kind), first=True)
    yield from blocks


def _photos(printed: PairPrinted, crowded: bool) -> Iterator[Block]:
    """Give the views that the first page has no room for, and what is said of the photos."""
    shown = printed.views[:1] if crowded else printed.views
    for place, view in enumerate(shown):
        if place:
            yield photo_row(view, FURTHER_HIGH)
        if view.overlay is not None:
            yield _laid_over(view.overlay, LEAST_LAID)
    scaled = _scaled_by(shown)
    if scaled:
        said = [scaled, MARKED, *_of_heights(shown)]
        yield Words(" ".join(said), tr("Marks on the photos"), "quiet")
    for words in _surfaces(shown):
        yield Words(words, tr("Surface on the photo"), "quiet")


def _laid_over(overlay: OverlayPrinted, height: float) -> Block:
    if overlay.jpeg is None:
        return Words(overlay.words, tr("The new part laid over the old one"))
    words = overlay.words if overlay.words == BLENDED else f"{LINES} {overlay.words}"
    return LaidOver(overlay.jpeg, tr("The new part laid over the old one"), words, height)


def _scaled_by(views: Sequence[ViewPrinted]) -> str:
    said = {side: dict.fromkeys(_of_marked(views, side)) for side in SIDES}
    parts = [f"{SIDE_SIGNS[side]} {' / '.join(words)}" for side, words in said.items() if words]
    return f"{'; '.join(parts)}." if parts else ""


def _of_heights(views: Sequence[ViewPrinted]) -> Iterator[str]:
    photos = [photo for view in views for photo in (view.removed, view.replacement) if photo]
    if any(photo.bar is not None for photo in photos):
        yield BARS
    if any(mark.height_unsaid for photo in photos for mark in photo.marks):
        yield UNSAID


def _surfaces(views: Sequence[ViewPrinted]) -> Iterator[str]:
    """Give what was counted of surfaces; old and new of one name follow each other."""
    for view in views:
        sides = (("removed", view.removed), ("replacement", view.replacement))
        both = [(side, one) for side, photo in sides if photo for one in photo.surfaces]
        first = {one.name.casefold(): n for n, (_, one) in reversed([*enumerate(both)])}
        for side, one in sorted(both, key=lambda each: first[each[1].name.casefold()]):
            name = f"{one.name}: " if one.name else ""
            yield f"{SIDE_SIGNS[side]} {name}{one.words}"


def _of_marked(views: Sequence[ViewPrinted], side: Side) -> Iterator[str]:
    for view in views:
        photo = view.removed if side == "removed" else view.replacement
        if photo is not None and photo.marks and photo.scaled_by:
            yield photo.scaled_by


def _table(
    compared: PairComparison,
    kind: PartKind,
    instruments: tuple[str, ...],
    marks: Collection[tuple[str, Side]],
) -> Iterator[Block]:
    shown = [one for one in compared.dimensions if one.essential or one.removed or one.replacement]
    head = (
        tr("What was measured"),
        tr("{sign} removed", sign=SIDE_SIGNS["removed"]),
        tr("{sign} replacement", sign=SIDE_SIGNS["replacement"]),
        tr("difference"),
        tr("allowed"),
        tr("verdict"),
    )
    rows = tuple(
        (
            label_cell(one),
            *(side_cell(one, side, kind.dimension(one.name)) for side in SIDES),
            difference_cell(one),
            allowed_cell(one),
            verdict_cell(one),
        )
        for one in shown
    )
    if rows:
        yield Rows(head, rows, (0.205, 0.15, 0.16, 0.175, 0.14, 0.17))
        yield Words(UNCERTAINTY, look="quiet")
    if instruments:
        once = SINGLE if any(_read_once(one, marks) for one in shown) else ""
        yield Words(f"{'; '.join(instruments)}. {once}".rstrip(), tr("Measured with"), "quiet")
    left_out = [one.label for one in compared.dimensions if one not in shown]
    if left_out:
        yield Words(", ".join(left_out) + ".", tr("Not needed and not measured"), "quiet")


def _read_once(one: DimensionComparison, marks: Collection[tuple[str, Side]]) -> bool:
    """Whether a side was read once, and not from a mark, which has its own doubt."""
    sides = zip(SIDES, (one.removed, one.replacement), strict=True)
    return any(
        seen and seen.expanded_uncertainty and seen.readings == 1 and (one.name, side) not in marks
        for side, seen in sides
    )


def _seen(pair: PairView, kind: PartKind) -> Iterator[Block]:
    notes = check_conditions(kind, pair.conditions).notes
    if notes:
        yield Listed(tr("Seen"), tuple(clipped(note, LONGEST_SENTENCE) for note in notes))


def _notes(pair: PairView) -> Iterator[Block]:
    if pair.note_removed.strip():
        yield Words(_cut(pair.note_removed), tr("Note on the removed part"))
    if pair.note_replacement.strip():
        yield Words(_cut(pair.note_replacement), tr("Note on the replacement"))
    if pair.fate.strip():
        yield Words(clipped(pair.fate, 200), tr("Where the removed part went"))


def _unjudged(pair: PairView) -> Iterator[Block]:
    yield Words(tr("What was read stands here as it was typed."))
    names = dict.fromkeys(name for name, _ in pair.typed)
    rows = tuple(
        (
            clipped(name),
            clipped("; ".join(pair.typed.get((name, "removed"), ()))),
            clipped("; ".join(pair.typed.get((name, "replacement"), ()))),
        )
        for name in names
    )
    if rows:
        head = (tr("What was read"), tr("{sign} removed", sign=SIDE_SIGNS["removed"]))
        yield Rows(
            (*head, tr("{sign} replacement", sign=SIDE_SIGNS["replacement"])),
            rows,
            (0.4, 0.3, 0.3),
        )
    seen = [f"{tr(side)}: {', '.join(pair.terms(side))}" for side in SIDES if pair.terms(side)]
    if seen:
        yield Listed(tr("Seen"), tuple(clipped(each, LONGEST_SENTENCE) for each in seen))


def _cut(note: str) -> str:
    note = note.strip()
    return note if len(note) <= LONGEST_NOTE else f"{note[:LONGEST_NOTE]}…"
