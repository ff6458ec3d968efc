"""`barcodes`: what the codes in photos of labels say; nothing is entered anywhere."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from desktop_app.commands.named_file import PHOTO, read_named
from desktop_app.commands.outcome import Asked, Outcome, one_or_list
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.part_photos.codes.code_meaning import CodeMeaning


def barcodes(asked: Asked) -> Outcome:
    """Read the codes in one or more photos."""
    if not all(name.strip() for name in asked.labels):
        raise ShopTrouble("A file's name is empty.", do=PHOTO)
    paths = [Path(name) for name in asked.labels]
    found = [_photo(path) for path in paths]
    lines = []
    for path, (_, meant) in zip(paths, found, strict=True):
        lines += [f"{path.name}: {_line(one)}" for one in meant] or [f"{path.name}: nothing of use"]
    return Outcome(one_or_list([said for said, _ in found]), tuple(lines))


def _photo(path: Path) -> tuple[dict[str, Any], tuple[CodeMeaning, ...]]:
    from desktop_app.part_photos.codes.code_meaning import meanings_of
    from desktop_app.part_photos.intake import kind_before_decoding
    from desktop_app.part_photos.photo_trouble import PhotoTrouble, Unfit
    from desktop_app.part_photos.read_apart import photo_reader

    content = read_named(path, PHOTO)
    try:
        codes = photo_reader.READER.codes(content, kind_before_decoding(content))
    except Unfit as unfit:
        raise PhotoTrouble(path.name, unfit.reason, unfit.do) from unfit
    meant = meanings_of(codes)
    said = {
        "photo": path.name,
        "codes": [{"form": code.print_form, "text": code.text} for code in codes],
        "says": [
            {
                "what": one.what,
                "value": one.value,
                "check_digit_ok": None if one.what == "part number" else one.sure,
            }
            for one in meant
        ],
    }
    return said, meant


def _line(one: CodeMeaning) -> str:
    doubt = "" if one.sure else " (its check digit is another)"
    return f"{one.what} {one.value}{doubt}"
