"""The printed card, looked at as a photo would see it: rasterised, and its markers found again."""

from __future__ import annotations

from functools import cache
from typing import Any

import cv2
import numpy as np
import pytest
from pypdfium2 import PdfDocument

from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, bench_card, white_patches
from desktop_app.part_photos.bench_card.card_page import card_page, ruler_ends
from desktop_app.part_photos.bench_card.drawing import TINT, Area
from desktop_app.part_photos.bench_card.how_to import SIZE_MM, how_to
from desktop_app.part_photos.sheet_card import card_pdf
from desktop_app.shop_record.trouble import ShopTrouble

PAPERS = ("a4", "letter")
DPI = 300


@cache
def printed(paper: str) -> bytes:
    """The card as PDF."""
    return card_pdf(bench_card(paper))


@cache
def rasterised(paper: str, dpi: float = DPI) -> Any:
    """Page 1, (h, w, 3), blue first."""
    document = PdfDocument(printed(paper))
    picture = document[0].render(scale=dpi / 72).to_numpy()[:, :, :3].copy()
    document.close()
    return picture


def pixels(mm: float) -> float:
    """Return where a place of the page is in the picture; pixel centres at whole numbers."""
    return mm * DPI / 25.4 - 0.5


@pytest.mark.parametrize("paper", PAPERS)
def test_every_marker_is_found_where_the_layout_says(paper: str) -> None:
    layout = bench_card(paper)
    detector = cv2.aruco.ArucoDetector(
        cv2.aruco.getPredefinedDictionary(getattr(cv2.aruco, layout.dictionary))
    )
    found, ids, _ = detector.detectMarkers(rasterised(paper))
    corners = {int(one): where[0] for one, where in zip(ids.ravel(), found, strict=True)}
    assert set(corners) == layout.ids
    for marker in layout.markers:
        where = (corners[marker.id] + 0.5) * 25.4 / DPI
        assert np.abs(where - np.array(marker.corners_mm)).max() < 0.15


@pytest.mark.parametrize("paper", PAPERS)
def test_there_is_one_page_of_the_papers_exact_size(paper: str) -> None:
    document = PdfDocument(printed(paper))
    assert len(document) == 1
    size = [side * 25.4 / 72 for side in document[0].get_size()]
    document.close()
    assert size == pytest.approx(PAGES_MM[paper], abs=0.001)


@pytest.mark.parametrize("paper", PAPERS)
def test_the_ruler_is_150_mm_long(paper: str) -> None:
    ends, fine = ruler_ends(bench_card(paper)), 2400
    assert ends[1] - ends[0] == pytest.approx(150, abs=1e-9)
    # A thin strip of the page above the ruler's base line, where only the end lines are.
    top = max(marker.corners_mm[2][1] for marker in bench_card(paper).markers) + 4
    high = PAGES_MM[paper][1] * 72 / 25.4
    strip = (0, high - (top + 0.3) * 72 / 25.4, 0, top * 72 / 25.4)
    document = PdfDocument(printed(paper))
    drawn = document[0].render(scale=fine / 72, crop=strip).to_numpy()
    document.close()
    dark = 255.0 - drawn[:, : round((ends[1] + 1.5) * fine / 25.4), 0].mean(axis=0)
    across = (np.arange(len(dark)) + 0.5) * 25.4 / fine
    middles = []
    for end in ends:
        near = np.abs(across - end) < 0.5
        middles.append((across[near] * dark[near]).sum() / dark[near].sum())
        dark[near] = 0
    assert middles == pytest.approx(ends, abs=0.015)
    assert dark.max() == 0


@pytest.mark.parametrize("paper", PAPERS)
def test_the_words_on_the_page_can_be_read_out(paper: str) -> None:
    document = PdfDocument(printed(paper))
    text = document[0].get_textpage().get_text_bounded()
    document.close()
    for words in (
        "Benchwitness",
        "bench card",
        {"a4": "A4", "letter": "Letter"}[paper],
        "Print at 100 %, not fitted to the page. Lay it flat on a board.",
        "with a calliper",
        "150 mm",
    ):
        assert words in text


def test_the_same_card_gives_the_same_bytes_and_asks_not_to_be_fitted() -> None:
    assert card_pdf(bench_card("a4")) == printed("a4")
    assert b"/PrintScaling /None" in printed("a4")
    assert b"/Subtype /Image" not in printed("a4")
    assert len(printed("a4")) < 80_000


@pytest.mark.parametrize("dpi", [97, 211])
def test_no_hairline_shows_between_black_modules(dpi: float) -> None:
    # The border on top of a marker is seven black modules and no seam between them.
    page = rasterised("a4", dpi)
    for marker in bench_card("a4").markers:
        (left, top), _, (right, bottom), _ = marker.corners_mm
        inside = [round(place * dpi / 25.4) for place in (left + 0.6, top + 0.6)]
        across, down = (round(place * dpi / 25.4) for place in (right - 0.6, bottom - 0.6))
        thick = round(1.2 * dpi / 25.4)
        assert page[inside[1] : inside[1] + thick, inside[0] : across].max() == 0
        assert page[inside[1] : down, inside[0] : inside[0] + thick].max() == 0


@pytest.mark.parametrize("paper", PAPERS)
def test_white_is_bare_paper_and_the_field_is_one_pale_tint(paper: str) -> None:
    layout = bench_card(paper)
    page = rasterised(paper)
    for left, top, right, bottom in white_patches(layout):
        patch = page[
            round(pixels(top)) : round(pixels(bottom)), round(pixels(left)) : round(pixels(right))
        ]
        assert patch.min() == 255
    assert layout.free_field_mm is not None
    left, top, right, bottom = (round(pixels(place)) for place in layout.free_field_mm)
    field = page[top + 3 : bottom - 3, left + 3 : right - 3]
    assert (field == np.array(TINT[::-1])).all()


def test_a_foreign_card_is_not_drawn() -> None:
    ours = bench_card("a4")
    foreign = CardLayout("theirs", ours.dictionary, "a4", ours.markers[:3], 150.0)
    with pytest.raises(ShopTrouble, match="not a card of this program"):
        card_pdf(foreign)


def test_nothing_is_drawn_outside_the_page_or_across_a_marker() -> None:
    for paper in PAPERS:
        layout = bench_card(paper)
        wide, high = PAGES_MM[paper]
        for shape in card_page(layout):
            lines = shape.pieces if isinstance(shape, Area) else (getattr(shape, "points", ()),)
            for x, y in (point for line in lines for point in line):
                assert 9 <= x <= wide - 9
                assert 9 <= y <= high - 9


def test_the_three_pictures_stay_in_their_boxes() -> None:
    assert [step.words for step in how_to()] == [
        "Card flat on a board",
        "Part in the tinted field",
        "Camera roughly above, all of it sharp",
    ]
    for step in how_to():
        for shape in step.shapes:
            lines = shape.pieces if isinstance(shape, Area) else (getattr(shape, "points", ()),)
            for x, y in (point for line in lines for point in line):
                assert 0 <= x <= SIZE_MM[0]
                assert 0 <= y <= SIZE_MM[1]
