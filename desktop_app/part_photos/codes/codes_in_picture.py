"""The barcodes in a photo. It decodes what strangers sent: run by `read_apart`, nowhere else."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.codes.seen_code import SeenCode
from desktop_app.part_photos.photo_limits import too_large_words
from desktop_app.part_photos.photo_trouble import SMALLER, Unfit
from desktop_app.part_photos.upright_picture import (
    UNREADABLE,
    PictureTooLarge,
    open_picture,
    upright_rgb,
)

if TYPE_CHECKING:
    from PIL.Image import Image

LARGE, SMALL = 3000, 1600  # pixels of the longer side
# A bar code is scanned along lines near the rows and columns: held askew it shows when it is
# turned. These two close the gaps, in rendered photos (tests/part_photos/test_codes_read.py).
_TURNS = (30, -30)


def codes_in(content: bytes, media_type: str) -> tuple[SeenCode, ...]:
    """Return the codes of a photo; what shows first counts: small, then large, then turned.

    Raises Unfit.
    """
    from PIL.Image import Resampling

    try:
        grey = upright_rgb(open_picture(content, media_type), longest=LARGE).convert("L")
    except PictureTooLarge as error:
        raise Unfit(too_large_words(error.width, error.height), SMALLER) from error
    except UNREADABLE as error:
        raise Unfit(tr("the picture is damaged or incomplete.")) from error
    small = grey.copy()
    small.thumbnail((SMALL, SMALL))
    found = _read(small)
    if not found and small.size != grey.size:
        found = _read(grey)
    for turn in _TURNS:
        if not found:
            found = _read(small.rotate(turn, Resampling.BILINEAR, expand=True, fillcolor=128))
    return found


def _read(grey: Image) -> tuple[SeenCode, ...]:
    import zxingcpp
    from zxingcpp import BarcodeFormat, BarcodeFormats, ContentType, TextMode

    # Those on labels of parts and cars. Others, short and unchecked, are seen where there are none.
    forms = BarcodeFormats(
        [
            *(BarcodeFormat.Code39, BarcodeFormat.Code93, BarcodeFormat.Code128),
            *(BarcodeFormat.EANUPC, BarcodeFormat.ITF14, BarcodeFormat.DataBar),
            *(BarcodeFormat.DataMatrix, BarcodeFormat.QRCode, BarcodeFormat.PDF417),
            BarcodeFormat.Aztec,
        ]
    )
    plain = zxingcpp.read_barcodes(grey, formats=forms, text_mode=TextMode.Plain)
    if any(code.content_type == ContentType.GS1 for code in plain):  # "(01)...": as it is printed
        plain = zxingcpp.read_barcodes(grey, formats=forms, text_mode=TextMode.HRI)
    return tuple(dict.fromkeys(SeenCode(str(code.format), code.text) for code in plain))
