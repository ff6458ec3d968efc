"""One pair on the sheet: photos, verdict, what follows, the table, what was seen and noted."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from desktop_app.part_photos.kept_photo import SAME_PICTURE, same_picture
from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.parts_compared.comparison import DimensionComparison, PairComparison
from desktop_app.parts_compared.condition_check import check_conditions
from desktop_app.parts_compared.pair_view import ORIGINS, PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.sheet_blocks import (
    Block,
    Heading,
    LaidOver,
    Listed,
    PhotoRow,
    Rows,
    TwoLists,
    VerdictBox,
    Words,
)
from desktop_app.parts_compared.sheet_facts import (
    OverlayPrinted,
    PairPrinted,
    PhotoPrinted,
    ViewPrinted,
)
from desktop_app.parts_compared.sheet_overlay import BLENDED
from desktop_app.parts_compared.sheet_values import (
    allowed_cell,
    clipped,
    difference_cell,
    label_cell,
    side_cell,
    verdict_cell,
)
from desktop_app.parts_compared.signs import PAIR_SIGNS
from desktop_app.repair_jobs.job_view import JobView

SAME_HEAD = "The same where it must be the same"
RESTORED_HEAD = "Restored where the old one was worn"
UNCERTAINTY = (
    "± is the expanded uncertainty at 95 % coverage: what instrument and scatter leave open. "
    "A difference is replacement minus removed; what an instrument gets wrong on both cancels."
)
OWN_FIGURES = "Judged by the shop's own figures for this kind of part, as they are on this day."
MARKED = "± is what the photo leaves open at 95 % coverage: pointing, camera, height and print."
BARS = "Bars: at marks' height."
UNSAID = "Where no height was said, a size holds only for what lies on the card itself."
LINES = (
    f"{SIDE_SIGNS['removed']} solid line: removed part; "
    f"{SIDE_SIGNS['replacement']} dashed line: replacement."
)
SINGLE = "What was read once rests on what such an instrument usually scatters."
LEAST_LAID = 46.0  # mm; less high, nobody reads the sizes on it
LONGEST_SENTENCE = 400  # characters; a sentence in a list can hold a word somebody typed
LONGEST_NOTE = 6000

_MEANS = {
    "fits": "Everything essential on the list speaks for this replacement.",
    "stop and look": "Something speaks against this replacement.",
    "not enough measured": "What was measured is not enough to say that it fits.",
}


def pair_blocks(printed: PairPrinted, job: JobView, crowded: bool = False) -> Iterator[Block]:
    """Give the blocks of one pair; `crowded` where many pairs share the sheet: one view each."""
    pair, kind, compared = printed.pair, printed.kind, printed.compared
    yield Heading(_name(pair, kind), first=True)
    if kind is not None and compared is not None:
        against = _against(pair, kind, compared)
        yield _verdict(compared, against)
        if printed.own_kind:
            yield Words(OWN_FIGURES, look="quiet")
    yield from _photos(printed, crowded)
    yield Words(_replacement(pair, job), "Replacement")
    if kind is None or compared is None:
        yield from _unjudged(pair)
    else:
        yield from _what_follows(compared, against)
        yield from _table(compared, printed.instruments, pair.marks)
        yield from _seen(pair, kind)
    yield from _notes(pair)


def _name(pair: PairView, kind: PartKind | None) -> str:
    name = kind.name if kind else clipped(pair.part_kind, 40)
    position = clipped(pair.position, 60)
    start = name[:1].upper() + name[1:]
    return f"{start}, {position}" if position else start


def _against(pair: PairView, kind: PartKind, compared: PairComparison) -> tuple[str, ...]:
    measured = [one.sentence for one in compared.dimensions if one.settled_against]
    return (*measured, *check_conditions(kind, pair.conditions).against)


def _verdict(compared: PairComparison, against: tuple[str, ...]) -> VerdictBox:
    means = _MEANS[compared.verdict]
    if against:
        means = f"{means} {clipped(against[0], LONGEST_SENTENCE)}"
    elif compared.verdict == "stop and look" and compared.reasons:
        means = f"{means} {clipped(compared.reasons[0], LONGEST_SENTENCE)}"
    elif compared.next_steps and compared.verdict == "not enough measured":
        means = f"{means} Next: {compared.next_steps[0]}"
    return VerdictBox(PAIR_SIGNS[compared.verdict], compared.verdict, means)


def _photos(printed: PairPrinted, crowded: bool) -> Iterator[Block]:
    views = printed.views[:1] if crowded else printed.views
    laid = any(view.overlay is not None for view in views)
    height = 36.0 if crowded else 62.0 if len(views) == 1 and not laid else 48.0
    for view in views:
        yield PhotoRow(
            captions=(_caption("removed", view), _caption("replacement", view)),
            photos=(view.removed, view.replacement),
            words=(_instead(view.removed), _instead(view.replacement)),
            height=height,
            below=SAME_PICTURE if _is_same(view) else "",
        )
        if view.overlay is not None:
            yield _laid_over(view.overlay, height)
    scaled = _scaled_by(views)
    if scaled:
        said = [scaled, MARKED, *_of_heights(views)]
        yield Words(" ".join(said), "Marks on the photos", "quiet")
    for words in _surfaces(views):
        yield Words(words, "Surface on the photo", "quiet")
    if not printed.views:
        yield Words("No photos were put to these parts.", look="quiet")


def _laid_over(overlay: OverlayPrinted, height: float) -> Block:
    if overlay.jpeg is None:
        return Words(overlay.words, "The new part laid over the old one")
    words = overlay.words if overlay.words == BLENDED else f"{LINES} {overlay.words}"
    room = max(height, LEAST_LAID)
    return LaidOver(overlay.jpeg, "The new part laid over the old one", words, room)


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


def _caption(side: str, view: ViewPrinted) -> str:
    name = "Removed part" if side == "removed" else "Replacement"
    photo = view.removed if side == "removed" else view.replacement
    note = f" · {clipped(photo.note, 40)}" if photo is not None and photo.note.strip() else ""
    return f"{SIDE_SIGNS[side]} {name} · {clipped(view.view, 44)}{note}"


def _instead(photo: PhotoPrinted | None) -> str:
    if photo is None:
        return "No photo of this part in this view."
    return photo.trouble


def _is_same(view: ViewPrinted) -> bool:
    old, new = view.removed, view.replacement
    return old is not None and new is not None and same_picture(old.sha256, new.sha256)


def _replacement(pair: PairView, job: JobView) -> str:
    origin = dict(ORIGINS).get(pair.origin or "", pair.origin or "")
    parts = [origin or "where it comes from was not said yet"]
    if pair.supplier.strip():
        parts.append(f"supplied by {clipped(pair.supplier)}")
    numbers = (
        ("number on the removed part", pair.number_removed),
        ("number on the box", pair.number_on_box),
        ("number on the part", pair.number_on_part),
    )
    parts += [f"{where} {clipped(number, 40)}" for where, number in numbers if number.strip()]
    said = "; ".join(parts)
    said = f"{said[:1].upper()}{said[1:]}."
    if not pair.fitted:
        return f"{said} Stopped before fitting: it was not fitted."
    return f"{said} It was fitted." if job.left_on is not None else said


def _what_follows(compared: PairComparison, against: tuple[str, ...]) -> Iterator[Block]:
    judged = compared.dimensions
    same = _said(one for one in judged if one.verdict == "same")
    restored = _said(one for one in judged if one.verdict == "restored")
    yield TwoLists((SAME_HEAD, RESTORED_HEAD), (_some(same), _some(restored)), ("=", "↥"))
    named = (
        ("Within the limits", [one for one in judged if one.verdict == "within limits"], "⊢⊣"),
        ("Different, and explained", [one for one in judged if one.verdict == "explained"], "✎"),
    )
    for name, ones, sign in named:
        if ones:
            yield Listed(name, tuple(clipped(one.sentence, LONGEST_NOTE) for one in ones), sign)
    if against:
        cut = tuple(clipped(each, LONGEST_SENTENCE) for each in against)
        yield Listed("Speaks against it", cut, "☞")
    still_open = _said(one for one in judged if _is_open(one))
    if still_open:
        yield Listed("Still open", still_open, "◌")
    if compared.next_steps:
        yield Listed("To measure next", compared.next_steps, "→")


def _table(
    compared: PairComparison, instruments: tuple[str, ...], marks: Collection[tuple[str, Side]]
) -> Iterator[Block]:
    shown = [one for one in compared.dimensions if one.essential or one.removed or one.replacement]
    head = (
        "What was measured",
        f"{SIDE_SIGNS['removed']} removed",
        f"{SIDE_SIGNS['replacement']} replacement",
        "difference",
        "allowed",
        "verdict",
    )
    rows = tuple(
        (
            label_cell(one),
            side_cell(one.removed),
            side_cell(one.replacement),
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
        yield Words(f"{'; '.join(instruments)}. {once}".rstrip(), "Measured with", "quiet")
    left_out = [one.label for one in compared.dimensions if one not in shown]
    if left_out:
        yield Words(", ".join(left_out) + ".", "Not needed and not measured", "quiet")


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
        yield Listed("Seen", tuple(clipped(note, LONGEST_SENTENCE) for note in notes))


def _notes(pair: PairView) -> Iterator[Block]:
    if pair.note_removed.strip():
        yield Words(_cut(pair.note_removed), "Note on the removed part")
    if pair.note_replacement.strip():
        yield Words(_cut(pair.note_replacement), "Note on the replacement")
    if pair.fate.strip():
        yield Words(clipped(pair.fate, 200), "Where the removed part went")


def _unjudged(pair: PairView) -> Iterator[Block]:
    yield Words(
        "This part kind is not on the shelf, so these parts were not judged. "
        "What was read stands here as it was typed.",
        look="strong",
    )
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
        head = ("What was read", f"{SIDE_SIGNS['removed']} removed")
        yield Rows((*head, f"{SIDE_SIGNS['replacement']} replacement"), rows, (0.4, 0.3, 0.3))
    seen = [f"{side}: {', '.join(pair.terms(side))}" for side in SIDES if pair.terms(side)]
    if seen:
        yield Listed("Seen", tuple(clipped(each, LONGEST_SENTENCE) for each in seen))


def _is_open(one: DimensionComparison) -> bool:
    if one.verdict == "too close to tell":
        return True
    started = one.essential or one.removed is not None or one.replacement is not None
    return one.verdict == "not measured" and started


def _said(ones: Iterator[DimensionComparison]) -> tuple[str, ...]:
    return tuple(clipped(one.sentence, LONGEST_SENTENCE) for one in ones)


def _some(items: tuple[str, ...]) -> tuple[str, ...]:
    return items or ("Nothing is settled here.",)


def _cut(note: str) -> str:
    note = note.strip()
    return note if len(note) <= LONGEST_NOTE else f"{note[:LONGEST_NOTE]}…"
