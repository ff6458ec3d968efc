"""Printed cards in the record: noted, measured with a calliper, put away, undone."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.bench_card.print_scale import PrintScale
from desktop_app.part_photos.bench_card.ruler_length import (
    ruler_length,
    said_of_ruler,
    shown_length,
)
from desktop_app.part_photos.card_actions import (
    note_printed_card,
    note_ruler,
    put_card_away,
    write_card,
)
from desktop_app.part_photos.stored import PrintedCard
from desktop_app.part_photos.stored_cards import PrintedCardKept, printed_card, printed_cards
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble


def cards(record: ShopRecord, *, also_put_away: bool = False) -> tuple[PrintedCardKept, ...]:
    """Return the printed cards."""
    with record.reading() as connection:
        return printed_cards(connection, also_put_away=also_put_away)


def a_card(record: ShopRecord, paper: str = "a4") -> int:
    """Note a printed card and return its id."""
    made = note_printed_card(record, bench_card(paper)).made
    assert made is not None
    return made


def test_a_printed_card_keeps_the_layout_that_it_had(shop: ShopRecord) -> None:
    first, second = a_card(shop), a_card(shop, "letter")
    assert [card.id for card in cards(shop)] == [second, first]
    card = cards(shop)[1]
    assert card.layout == bench_card("a4")
    assert card.printed_on == date(2026, 11, 16)
    assert card.in_use


def test_an_unmeasured_card_is_taken_as_true_but_less_surely(shop: ShopRecord) -> None:
    a_card(shop)
    (card,) = cards(shop)
    assert (card.measured_mm, card.measured_on, card.print_scale) == (
        None,
        None,
        PrintScale(1.0, 0.003),
    )


def test_a_measured_ruler_corrects_the_scale(shop: ShopRecord) -> None:
    made = a_card(shop)
    note_ruler(shop, made, 150.3)
    (card,) = cards(shop)
    assert card.print_scale.factor == pytest.approx(1.002)
    assert card.print_scale.u == pytest.approx(0.05 / 150)
    assert card.measured_on == date(2026, 11, 16)
    note_ruler(shop, made, None)
    assert cards(shop)[0].measured_on is None
    shop.undo()
    shop.undo()
    assert cards(shop)[0].print_scale.factor == 1.0
    shop.redo()
    assert cards(shop)[0].measured_mm == 150.3


@pytest.mark.parametrize(
    ("measured", "said"),
    [
        (5.913, "Is that in inches? Then write 5.913 in."),
        (3815.08, "Is that in millimetres? Then write 150.2 mm."),
        (140.0, "Accepted: 145.5 to 154.5 mm."),
        (154.6, "print the card anew"),
    ],
)
def test_a_ruler_that_cannot_be_is_asked_about(
    shop: ShopRecord, measured: float, said: str
) -> None:
    made = a_card(shop)
    with pytest.raises(ShopTrouble) as caught:
        note_ruler(shop, made, measured)
    assert said in caught.value.sentence()
    assert cards(shop)[0].measured_mm is None


@pytest.mark.parametrize("measured", [145.5, 154.5])
def test_three_percent_either_way_is_believed(shop: ShopRecord, measured: float) -> None:
    made = a_card(shop)
    note_ruler(shop, made, measured)
    assert cards(shop)[0].measured_mm == measured


def test_a_card_put_away_is_still_known_to_its_photos(shop: ShopRecord) -> None:
    made = a_card(shop)
    put_card_away(shop, made)
    assert cards(shop) == ()
    assert [card.in_use for card in cards(shop, also_put_away=True)] == [False]
    with shop.reading() as connection:
        assert printed_card(connection, made).layout == bench_card("a4")
    shop.undo()
    assert [card.id for card in cards(shop)] == [made]


def test_a_card_that_is_gone_is_said(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="not in the record any more"):
        note_ruler(shop, 404, 150.0)
    with pytest.raises(ShopTrouble, match="no longer there"):
        put_card_away(shop, 404)


@pytest.mark.parametrize("column", ["layout", "printed_at", "measured_on"])
def test_a_card_changed_from_outside_is_told_as_damage(shop: ShopRecord, column: str) -> None:
    made, other = a_card(shop), a_card(shop)
    with shop.deed("change it") as deed:
        deed.change(PrintedCard, made, **{column: "scribble"})
    assert [card.id for card in cards(shop)] == [other]
    with pytest.raises(ShopDamaged), shop.reading() as connection:
        printed_card(connection, made)


@pytest.mark.parametrize(
    ("typed", "unit", "mm"),
    [
        ("150.2", "mm", 150.2),
        (" 150,2 mm ", "mm", 150.2),
        ("5.913 in", "mm", 5.913 * 25.4),
        ('5.913"', "mm", 5.913 * 25.4),
        ("5.913", "inch", 5.913 * 25.4),
        ("150.2 MM", "inch", 150.2),
        ("", "mm", None),
        ("  ", "inch", None),
    ],
)
def test_a_ruler_is_typed_in_mm_or_inches(typed: str, unit: str, mm: float | None) -> None:
    assert ruler_length(typed, unit) == (None if mm is None else pytest.approx(mm))


@pytest.mark.parametrize("typed", ["long", "-150", "150 cm", "1e3", "nan", "150.2.1", "9" * 400])
def test_what_is_no_length_is_refused(typed: str) -> None:
    with pytest.raises(ShopTrouble, match="Accepted: millimetres"):
        ruler_length(typed)


@given(st.floats(145.5, 154.5), st.sampled_from(["mm", "inch"]))
def test_a_shown_length_is_read_as_the_same_length(mm: float, unit: str) -> None:
    again = ruler_length(shown_length(mm, unit), unit)
    assert again == pytest.approx(mm, abs=0.0013)


def test_a_ruler_that_nobody_measured_leaves_its_field_empty() -> None:
    assert shown_length(None, "mm") == shown_length(None, "inch") == ""


def test_what_a_ruler_means_is_said_plainly() -> None:
    assert "half a percent" in said_of_ruler(None, 150, None)
    assert "common practice, no source" in said_of_ruler(None, 150, None)
    day = date(2026, 11, 16)
    assert "0.20 % larger" in said_of_ruler(150.3, 150, day)
    assert "0.13 % smaller" in said_of_ruler(149.8, 150, day)
    assert said_of_ruler(150, 150, day) == "✓ Measured on 2026-11-16: the print is true."


def test_a_card_is_written_whole_or_not_at_all(tmp_path: Path) -> None:
    pdf, layout = tmp_path / "card.pdf", tmp_path / "gone" / "card.json"
    with pytest.raises(ShopTrouble, match="There is no folder"):
        write_card(bench_card("a4"), pdf, layout)
    assert list(tmp_path.iterdir()) == []
    write_card(bench_card("a4"), pdf)
    assert [file.name for file in tmp_path.iterdir()] == ["card.pdf"]
