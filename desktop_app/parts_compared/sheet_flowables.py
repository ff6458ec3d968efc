"""What the pieces of a sheet become on paper: paragraphs, tables, photos, boxes."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import singledispatch
from io import BytesIO
from typing import Any
from xml.sax.saxutils import escape

from desktop_app.part_photos.sheet_fonts import BOLD, PLAIN
from desktop_app.parts_compared import sheet_blocks as blocks
from desktop_app.parts_compared.sheet_facts import PhotoPrinted
from desktop_app.parts_compared.sheet_marks import marked
from desktop_app.parts_compared.sheet_spark import spark_drawing

MM = 72 / 25.4
SHORT_LIST = 1500  # characters; a longer list is laid out in rows, which can go on overleaf
LEAST_DPI = 150  # a small photo is printed smaller rather than coarser
GREY = "#4A4A4A"
SMALL: dict[str, Any] = {"fontSize": 8, "leading": 9.8, "spaceAfter": 1.5}


def printable(text: str) -> str:
    """Return a text without what no page can show: control signs and torn halves of a sign."""
    text = text.replace("\r\n", "\n").replace("\t", "  ")
    return "".join(c if c == "\n" or (c >= " " and not _unprintable(c)) else " " for c in text)


def _unprintable(char: str) -> bool:
    return "\x7f" <= char <= "\x9f" or "\ud800" <= char <= "\udfff" or char in "\ufffe\uffff"


def _safe(text: str) -> str:
    """Return a text as the paragraph's markup takes it literally, line breaks kept."""
    together = printable(text).replace("± ", "±\xa0").replace(" ±", "\xa0±")
    return escape(together).replace("\n", "<br/>")


def _paragraph(text: str, *, name: str = "", sign: str = "", **look: Any) -> Any:
    from reportlab.lib.styles import ParagraphStyle
    from reportlab.platypus import Paragraph

    facts: dict[str, Any] = {
        "fontName": PLAIN,
        "fontSize": 9,
        "leading": 12,
        "spaceAfter": 3,
    } | look
    before = f'<font name="{BOLD}">{_safe(name)}:</font> ' if name else ""
    if sign:
        facts |= {"leftIndent": facts.get("leftIndent", 0) + 14}
        indent = facts["leftIndent"] - 14
        before = f'<bullet bulletIndent="{indent}">{_safe(sign)}</bullet>{before}'
    style = ParagraphStyle("sheet", bulletFontName=PLAIN, bulletFontSize=9, **facts)
    return Paragraph(before + _safe(text), style)


def _bold(text: str, **look: Any) -> Any:
    return _paragraph(text, **({"fontName": BOLD} | look))


def _table(cells: list[list[Any]], widths: Sequence[float], *style: Any, **more: Any) -> Any:
    from reportlab.platypus import Table

    plain = [
        ("FONTNAME", (0, 0), (-1, -1), PLAIN),
        ("VALIGN", (0, 0), (-1, -1), "TOP"),
        ("LEFTPADDING", (0, 0), (-1, -1), 0),
        ("RIGHTPADDING", (0, 0), (-1, -1), 6),
        ("TOPPADDING", (0, 0), (-1, -1), 1),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 1),
    ]
    return Table(cells, colWidths=list(widths), style=[*plain, *style], hAlign="LEFT", **more)


def _gap(points: float) -> Any:
    from reportlab.platypus import Spacer

    return Spacer(1, points)


@singledispatch
def flowables(block: Any, width: float) -> list[Any]:
    """Return what a block becomes on a page that is `width` points wide."""
    raise TypeError(f"no way to print a {type(block).__name__}")


@flowables.register
def _title(block: blocks.Title, width: float) -> list[Any]:
    left = _bold(block.shop, fontSize=15, leading=18)
    right = _paragraph(block.says, fontSize=10, leading=18, alignment=2)
    line = ("LINEBELOW", (0, 0), (-1, 0), 1.2, "black")
    row = _table([[left, right]], (width * 0.55, width * 0.45), line)
    return [row, _gap(5)]


@flowables.register
def _named(block: blocks.Named, width: float) -> list[Any]:
    names = [_paragraph(name, fontSize=7.5, leading=9, textColor=GREY) for name, _ in block.facts]
    values = [_paragraph(value) for _, value in block.facts]
    # Each column as wide as its words ask for, within reason.
    asked = [min(44, max(9, len(name), len(value))) for name, value in block.facts]
    widths = [width * each / sum(asked) for each in asked]
    return [_table([names, values], widths), _gap(4)]


@flowables.register
def _heading(block: blocks.Heading, width: float) -> list[Any]:
    from reportlab.platypus import CondPageBreak, HRFlowable

    words = _bold(block.words, fontSize=12, leading=15, spaceBefore=5, keepWithNext=1)
    if not block.first:
        return [CondPageBreak(28 * MM), words]
    line = HRFlowable(width, thickness=0.5, color="black", spaceBefore=4, spaceAfter=1)
    return [CondPageBreak(70 * MM), line, words]


@flowables.register
def _next_page(block: blocks.NextPage, width: float) -> list[Any]:
    from reportlab.platypus import CondPageBreak, PageBreak

    said = flowables(blocks.Words(block.says, look="quiet"), width)
    if block.room is None:
        return [PageBreak(), *said]
    return [CondPageBreak(block.room * MM), *said]


@flowables.register
def _room(block: blocks.Room, width: float) -> list[Any]:
    from reportlab.platypus import CondPageBreak

    return [CondPageBreak(block.height * MM)]


@flowables.register
def _words(block: blocks.Words, width: float) -> list[Any]:
    looks: dict[str, dict[str, Any]] = {
        "plain": {},
        "small": SMALL,
        "quiet": {"fontSize": 7.5, "leading": 9.5, "textColor": GREY},
        "strong": {"fontName": BOLD},
    }
    return [_paragraph(block.words, name=block.name, **looks[block.look])]


@flowables.register
def _verdict_box(block: blocks.VerdictBox, width: float) -> list[Any]:
    sign = _paragraph(block.sign, fontSize=20, leading=24, alignment=1)
    said = [_bold(block.word, fontSize=14, leading=17, spaceAfter=1), _paragraph(block.means)]
    style = (
        ("BOX", (0, 0), (-1, -1), 1.5, "black"),
        ("VALIGN", (0, 0), (-1, -1), "MIDDLE"),
        ("TOPPADDING", (0, 0), (-1, -1), 4),
    )
    return [_table([[sign, said]], (14 * MM, width - 14 * MM), *style), _gap(6)]


@flowables.register
def _photo_row(block: blocks.PhotoRow, width: float) -> list[Any]:
    from reportlab.platypus import KeepTogether

    half = width / 2
    wide = _at_one_scale(block.photos, half - 6, block.height * MM)
    pictures = [
        _photo(photo, words, wide, block.height * MM)
        for photo, words in zip(block.photos, block.words, strict=True)
    ]
    captions = [_bold(words, fontSize=8.5, leading=11) for words in block.captions]
    rows = [_table([captions, pictures], (half, half))]
    if block.below:
        rows.append(_paragraph(block.below, fontName=BOLD))
    return [KeepTogether([*rows, _gap(5)])]


def _photo(photo: PhotoPrinted | None, words: str, width: float, height: float) -> Any:
    from reportlab.lib.utils import ImageReader
    from reportlab.platypus import Image

    if photo is None or photo.jpeg is None:
        box = ("BOX", (0, 0), (-1, -1), 0.5, GREY)
        empty = _paragraph(words, alignment=1, textColor=GREY)
        middle = (("VALIGN", (0, 0), (-1, -1), "MIDDLE"), ("LEFTPADDING", (0, 0), (-1, -1), 6))
        return _table([[empty]], (width,), box, *middle, rowHeights=[min(height, 24 * MM)])
    across, down = ImageReader(BytesIO(photo.jpeg)).getSize()
    scale = min(width / across, height / down, 72 / LEAST_DPI)
    picture = Image(BytesIO(photo.jpeg), across * scale, down * scale, hAlign="LEFT")
    return marked(picture, photo.marks, PLAIN, photo.bar) if photo.marks else picture


def _at_one_scale(photos: Sequence[PhotoPrinted | None], width: float, height: float) -> float:
    """Return how wide photos may be: where all show as much of the part, the narrowest's width."""
    from reportlab.lib.utils import ImageReader

    shown = [(one.jpeg, one.mm_wide) for one in photos if one is not None]
    known = [(jpeg, mm) for jpeg, mm in shown if jpeg is not None and mm is not None]
    if len(known) < 2 or not math.isclose(known[0][1], known[1][1], rel_tol=0.01):
        return width
    wide = [width]
    for jpeg, _ in known:
        across, down = ImageReader(BytesIO(jpeg)).getSize()
        wide.append(across * min(width / across, height / down, 72 / LEAST_DPI))
    return min(wide)


@flowables.register
def _pair_short(block: blocks.PairShort, width: float) -> list[Any]:
    """Lay both photos and the verdict beside each other, and the words below in full lines."""
    from reportlab.platypus import HRFlowable, KeepTogether

    quarter = width / 4
    said: list[Any] = [_bold(block.name, fontSize=11, leading=13)]
    if block.verdict is not None:
        word = f"{block.verdict.sign} {block.verdict.word}"
        said += [_bold(word, fontSize=12, leading=15, spaceAfter=1)]
        said += [_paragraph(block.verdict.means, **SMALL)]
    said += [_paragraph(words, name=name, **SMALL) for name, words in block.beside]
    pictures: list[Any] = []
    for column in range(2):
        row = block.photos
        if row is None:
            break
        caption = _bold(row.captions[column], fontSize=7, leading=8.5, spaceAfter=1)
        wide = _at_one_scale(row.photos, quarter - 6, row.height * MM)
        photo = _photo(row.photos[column], row.words[column], wide, row.height * MM)
        pictures.append([caption, photo])
    widths = [quarter] * len(pictures)
    line = HRFlowable(width, thickness=0.5, color="black", spaceBefore=2, spaceAfter=3)
    rows = [line, _table([[*pictures, said]], [*widths, width - sum(widths)])]
    rows += [_paragraph(words, name=name, **SMALL) for name, words in block.below]
    return [KeepTogether([*rows, _gap(2)])]


@flowables.register
def _laid_over(block: blocks.LaidOver, width: float) -> list[Any]:
    from reportlab.platypus import KeepTogether

    half = width / 2
    picture = _photo(PhotoPrinted("", "", block.jpeg), "", half - 6, block.height * MM)
    said = [_bold(block.caption, fontSize=8.5, leading=11), _paragraph(block.words)]
    return [KeepTogether([_table([[picture, said]], (half, half)), _gap(5)])]


@flowables.register
def _two_lists(block: blocks.TwoLists, width: float) -> list[Any]:
    from reportlab.platypus import KeepTogether

    rows: list[list[Any]] = [[_bold(head) for head in block.heads]]
    if max(sum(map(len, items)) for items in block.items) < SHORT_LIST:
        lists = zip(block.items, block.signs, strict=True)
        rows.append([[_paragraph(one, sign=sign) for one in items] for items, sign in lists])
        return [KeepTogether([_table(rows, (width / 2, width / 2)), _gap(3)])]
    for index in range(max(len(items) for items in block.items)):
        cells: list[Any] = []
        for items, sign in zip(block.items, block.signs, strict=True):
            cells.append(_paragraph(items[index], sign=sign) if index < len(items) else "")
        rows.append(cells)
    return [_table(rows, (width / 2, width / 2)), _gap(3)]


@flowables.register
def _listed(block: blocks.Listed, width: float) -> list[Any]:
    name = _bold(block.name, keepWithNext=1, spaceBefore=2, spaceAfter=2)
    items = [_paragraph(words, sign=block.sign, spaceAfter=2) for words in block.items]
    return [name, *items, _gap(2)]


@flowables.register
def _rows(block: blocks.Rows, width: float) -> list[Any]:
    small: dict[str, Any] = {"fontSize": 8, "leading": 10, "spaceAfter": 0}
    cells = [[_bold(words, **small) for words in block.head]]
    cells += [[_paragraph(words, **small) for words in row] for row in block.rows]
    style = (
        ("LINEBELOW", (0, 0), (-1, 0), 1, "black"),
        ("LINEBELOW", (0, 1), (-1, -1), 0.25, GREY),
        ("TOPPADDING", (0, 0), (-1, -1), 2),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 2.5),
    )
    table = _table(cells, [width * share for share in block.widths], *style, repeatRows=1)
    return [_gap(2), table, _gap(3)]


@flowables.register
def _spark_picture(block: blocks.SparkPicture, width: float) -> list[Any]:
    return [spark_drawing(block, width, PLAIN, BOLD), _gap(3)]


@flowables.register
def _cautions(block: blocks.Cautions, width: float) -> list[Any]:
    from reportlab.platypus import KeepTogether

    small: dict[str, Any] = {"fontSize": 8, "leading": 10.5, "spaceAfter": 1}
    cells = [[_paragraph(words, sign="⚠", **small)] for words in block.items]
    style = (
        ("BOX", (0, 0), (-1, -1), 1, "black"),
        ("LEFTPADDING", (0, 0), (-1, -1), 6),
    )
    return [_gap(5), KeepTogether([_table(cells, (width,), *style)])]
