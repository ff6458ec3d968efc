"""`align`: the new part's photo laid on the old part's, and a picture of where they differ."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING, Any

from desktop_app.commands.named_file import PHOTO, read_named, read_named_text
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.file_actions import check_place, put_files
from desktop_app.part_photos.marks.mark import HIGHEST_MM, is_height
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.part_photos.camera.card_scale import CardScale
    from desktop_app.part_photos.overlay.alignment import Alignment
    from desktop_app.part_photos.overlay.difference import Difference
    from desktop_app.part_photos.overlay.not_compared import NotCompared
    from desktop_app.part_photos.photo_pixels import PhotoPixels

_WANTED = "Accepted: a layout that the card command wrote."


@dataclass(frozen=True, slots=True, eq=False)
class _OnCard:
    """One photo, and its scale and card where there is one; else why not."""

    pixels: PhotoPixels
    scale: CardScale | None = None
    card: CardLayout | None = None
    why_not: str = ""


def align(asked: Asked) -> Outcome:
    """Lay one photo on the other; with --out, write the picture of both."""
    from desktop_app.part_photos.overlay.align import align as lay
    from desktop_app.part_photos.overlay.difference import differences
    from desktop_app.part_photos.overlay.not_compared import not_compared

    if not asked.old.strip() or not asked.new.strip():
        raise ShopTrouble("A file's name is empty.", do="Accepted: two photos, the old one first.")
    old_file, new_file = Path(asked.old), Path(asked.new)
    out = None if asked.out is None else Path(asked.out)
    if out is not None:
        read = [old_file, new_file, *([] if asked.layout is None else [Path(asked.layout)])]
        check_place(out, ".png", "overlay.png", read)
    height = _height(asked.height_mm)
    layouts = _layouts(asked.layout)
    old, new = (_on_card(file, layouts) for file in (old_file, new_file))
    laid = lay(
        *(old.pixels, new.pixels, old.scale, new.scale, height),
        old_card=old.card,
        new_card=new.card,
    )
    found, left_out = differences(laid), not_compared(laid)
    notes = _notes(old, new, laid)
    lines = [*_lines(laid, found, left_out), *(one for one in notes if one != laid.caution())]
    if out is not None and not laid.aligned:
        lines.append(f"{out} was not written: there is nothing to show.")
    elif out is not None:
        put_files({out: _picture(old.pixels, new.pixels, laid, found)})
        lines.append(f"Wrote {out}.")
    return Outcome(_as_json(laid, found, left_out, notes), tuple(lines))


def _as_json(
    laid: Alignment,
    found: Sequence[Difference],
    left_out: Sequence[NotCompared],
    notes: Sequence[str],
) -> dict[str, Any]:
    return {
        "aligned": laid.aligned,
        "why": laid.why,
        "method": laid.method,
        "transform": None if laid.transform is None else laid.transform.tolist(),
        "residual_px": laid.residual_px,
        "residual_mm": laid.residual_mm,
        "height_mm": laid.height_mm,
        "differences": [
            {
                "kind": one.side,
                "size_mm": one.size_mm,
                "expanded_uncertainty_mm": one.expanded_u_mm,
                "coverage": 0.95,
                "where": one.where,
                "polygon_px": [list(point) for point in one.polygon_px],
            }
            for one in found
        ],
        "not_compared": [
            {
                "because_of": one.reason,
                "share": one.share,
                "sides": list(one.sides),
                "framed_above_mm": one.framed_above_mm and list(one.framed_above_mm),
            }
            for one in left_out
        ],
        "notes": list(notes),
    }


def _lines(
    laid: Alignment, found: Sequence[Difference], left_out: Sequence[NotCompared]
) -> tuple[str, ...]:
    if not laid.aligned:
        return ("Not aligned.", laid.why)
    said = ["Aligned.", *filter(None, [laid.caution()]), laid.why]
    if laid.residual_mm is None and laid.residual_px is not None:
        said.append(f"Residual: {laid.residual_px:.2f} px.")
    said += [one.words() for one in found]
    if laid.outlines is not None and not found:
        said.append("Nothing that was compared differs by more than its uncertainty.")
    said += [one.words() for one in left_out]
    return tuple(said)


def _notes(old: _OnCard, new: _OnCard, laid: Alignment) -> tuple[str, ...]:
    """Say what the answer leans on; first what makes it coarse."""
    notes = [laid.caution()] if laid.caution() else []
    for which, one in (("old", old), ("new", new)):
        if one.scale is not None:
            notes += [f"The {which} photo: {words}" for words in one.scale.warnings]
        else:
            notes.append(f"The {which} photo has no scale: {one.why_not}")
    return tuple(notes)


def _height(said: str | None) -> float | None:
    if said is None:
        return None
    try:
        height = float(said.replace(",", ".")) if "_" not in said else -1.0
    except ValueError:
        height = -1.0
    if not is_height(height):
        raise ShopTrouble(
            f"--height-mm “{said[:40]}” is not understood.",
            do=f"Accepted: millimetres above the card, 0 to {HIGHEST_MM:g}.",
        )
    return height


def _layouts(said: str | None) -> tuple[CardLayout, ...]:
    from desktop_app.part_photos.bench_card.card_file import read_card
    from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, bench_card

    if said is None:
        return tuple(bench_card(paper) for paper in PAGES_MM)
    file = Path(said)
    return (read_card(read_named_text(file, _WANTED), file.name),)


def _on_card(file: Path, layouts: Sequence[CardLayout]) -> _OnCard:
    from desktop_app.part_photos.camera.find_scale import found_card
    from desktop_app.part_photos.intake import look_at
    from desktop_app.part_photos.photo_pixels import photo_pixels

    content = read_named(file, PHOTO)
    taken = look_at(file.name, content)
    pixels = photo_pixels(content, taken.media_type)
    try:
        return _OnCard(pixels, *found_card(pixels, layouts))
    except PhotoCannot as trouble:
        return _OnCard(pixels, why_not=trouble.sentence())


def _picture(
    old: PhotoPixels, new: PhotoPixels, laid: Alignment, found: Sequence[Difference]
) -> bytes:
    """Return the differences as PNG where outlines were laid, else both photos blended."""
    from desktop_app.part_photos.overlay.picture import blend, difference_picture

    if laid.outlines is not None:
        picture = difference_picture(old, laid, found)
    else:
        assert laid.transform is not None
        picture = blend(old, new, laid.transform)
    file = BytesIO()
    picture.save(file, "PNG")
    return file.getvalue()
