"""The comparison sheet as PDF: its blocks laid out on A4 or Letter, in black, with our own font."""

from __future__ import annotations

from collections.abc import Mapping
from io import BytesIO
from pathlib import Path
from typing import Any, NamedTuple

from desktop_app.language import code_spoken, tr
from desktop_app.part_photos import file_actions
from desktop_app.part_photos.sheet_fonts import PLAIN, printing
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.sheet_blocks import Cautions
from desktop_app.parts_compared.sheet_facts import SheetFacts
from desktop_app.parts_compared.sheet_flowables import MM, flowables, printable
from desktop_app.parts_compared.sheet_job import foot_words, sheet_blocks
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.shop_record.record import ShopRecord

MARGIN = 15 * MM
FOOT = 17 * MM
PHOTOS_GIVE = (12.0, 24.0)  # mm, tried in turn until the customer's part takes one page


def write_sheet(record: ShopRecord, job_id: int, kinds: Mapping[str, PartKind], to: Path) -> None:
    """Write a job's sheet to a PDF file; one that was there is replaced only by a whole one.

    Raises ShopTrouble where there is no such job or the file can't be written. Takes its time:
    call it beside the window.
    """
    check_place(to)
    put_sheet(sheet_bytes(read_sheet(record, job_id, kinds)), to)


def sheet_bytes(sheet: SheetFacts) -> bytes:
    """Return the sheet as PDF; the same facts give the same bytes."""
    with printing():
        give, laid = 0.0, _laid_out(sheet, 0, 0.0)
        if laid.customers != 1 and len(sheet.pairs) == 1:
            for more in PHOTOS_GIVE:
                tried = _laid_out(sheet, 0, more)
                if tried.customers == 1:
                    give, laid = more, tried
                    break
        return _laid_out(sheet, laid.pages, give).pdf


def check_place(to: Path) -> None:
    """Raise a ShopTrouble where no sheet can be put."""
    file_actions.check_place(to, ".pdf", "sheet-J-104.pdf")


def put_sheet(content: bytes, to: Path) -> None:
    """Put a finished sheet in its place, whole or not at all."""
    file_actions.put_files({to: content})


class _LaidOut(NamedTuple):
    """The sheet as PDF, how many pages it has, and on which the customer's part ends."""

    pdf: bytes
    pages: int
    customers: int


def _laid_out(sheet: SheetFacts, pages: int, give: float) -> _LaidOut:
    """Lay the sheet out; the foot says "of `pages`", photos `give` so many mm to the words."""
    from reportlab.lib.pagesizes import A4, LETTER
    from reportlab.platypus import Flowable, SimpleDocTemplate

    ends: list[int] = []

    class Ends(Flowable):  # type: ignore[misc]
        """Takes no room, and notes the page on which it is drawn."""

        def wrap(self, *_: float) -> tuple[float, float]:
            return 0.0, 0.0

        def draw(self) -> None:
            ends.append(self.canv.getPageNumber())

    made = BytesIO()
    document = SimpleDocTemplate(
        made,
        pagesize=LETTER if sheet.paper == "Letter" else A4,
        leftMargin=MARGIN,
        rightMargin=MARGIN,
        topMargin=MARGIN,
        bottomMargin=FOOT,
        title=printable(tr("Job {number}: old part and new part", number=sheet.job.number)),
        author=printable(sheet.shop_name),
        lang=code_spoken() or "en",
        invariant=1,
        initialFontName=PLAIN,
    )
    # Frames keep 6 points of padding on each side.
    width = document.width - 12

    def foot(canvas: Any, laid: Any) -> None:
        _draw_foot(canvas, laid, sheet, pages)

    story: list[Any] = []
    for block in sheet_blocks(sheet, give):
        story += flowables(block, width)
        if isinstance(block, Cautions):
            story.append(Ends())
    document.build(story, onFirstPage=foot, onLaterPages=foot)
    return _LaidOut(made.getvalue(), document.page, ends[0])


def _draw_foot(canvas: Any, document: Any, sheet: SheetFacts, pages: int) -> None:
    left, right = MARGIN + 6, document.pagesize[0] - MARGIN - 6
    canvas.saveState()
    canvas.setLineWidth(0.5)
    canvas.line(left, 13 * MM, right, 13 * MM)
    canvas.setFont(PLAIN, 7.5)
    canvas.drawString(left, 9 * MM, printable(foot_words(sheet)))
    canvas.drawRightString(
        right, 9 * MM, tr("page {page} of {pages}", page=document.page, pages=pages)
    )
    canvas.restoreState()
