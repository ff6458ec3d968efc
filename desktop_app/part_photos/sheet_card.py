"""A bench card as PDF: one page at true scale, drawn in lines and areas alone."""

from __future__ import annotations

from io import BytesIO
from typing import Any

from desktop_app.language import code_spoken
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, card_words
from desktop_app.part_photos.bench_card.card_page import card_page
from desktop_app.part_photos.bench_card.drawing import TINT, Area, Point, Shape, Stroke
from desktop_app.part_photos.sheet_fonts import BOLD, PLAIN, printing

MM = 72 / 25.4


def card_pdf(layout: CardLayout) -> bytes:
    """Return the card as PDF; the same card gives the same bytes.

    The page asks its viewer not to fit it to the paper and not to print on both sides
    (ISO 32000-1, 12.2). Raises ShopTrouble for a card that isn't one of ours.
    """
    shapes = card_page(layout)
    with printing():
        return _drawn(layout, shapes)


def _drawn(layout: CardLayout, shapes: tuple[Shape, ...]) -> bytes:
    from reportlab.pdfgen.canvas import Canvas

    wide, high = PAGES_MM[layout.paper]
    made = BytesIO()
    canvas = Canvas(
        made,
        (wide * MM, high * MM),
        invariant=1,
        lang=code_spoken() or "en",
        initialFontName=PLAIN,
        pdfVersion=(1, 7),
    )
    canvas.setTitle(card_words(layout))
    canvas.setAuthor("Benchwitness")
    canvas.setViewerPreference("PrintScaling", "None")
    canvas.setViewerPreference("Duplex", "Simplex")
    canvas.setStrokeGray(0)
    for shape in shapes:
        _draw(canvas, shape, high)
    canvas.showPage()
    canvas.save()
    return made.getvalue()


def _draw(canvas: Any, shape: Shape, high: float) -> None:
    def at(point: Point) -> Point:
        return (point[0] * MM, (high - point[1]) * MM)

    if isinstance(shape, Area):
        path = canvas.beginPath()
        for piece in shape.pieces:
            path.moveTo(*at(piece[0]))
            for point in piece[1:]:
                path.lineTo(*at(point))
            path.close()
        if shape.ink == "tint":
            canvas.setFillColorRGB(*(part / 255 for part in TINT))
        else:
            canvas.setFillGray(1 if shape.ink == "white" else 0)
        canvas.drawPath(path, stroke=0, fill=1)
    elif isinstance(shape, Stroke):
        path = canvas.beginPath()
        path.moveTo(*at(shape.points[0]))
        for point in shape.points[1:]:
            path.lineTo(*at(point))
        canvas.setLineWidth(shape.width * MM)
        canvas.drawPath(path, stroke=1, fill=0)
    else:
        canvas.setFillGray(0)
        canvas.setFont(BOLD if shape.bold else PLAIN, shape.size * MM)
        canvas.drawString(*at(shape.at), shape.words)
