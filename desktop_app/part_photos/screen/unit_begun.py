"""A length that is half typed when the shop's unit changes keeps the unit it was begun in."""

from __future__ import annotations

from desktop_app.shop_window.fields import LineField


def keep_unit(field: LineField, begun_in: str) -> None:
    """Write the unit ("mm" or "inch") behind a bare number that is not saved yet.

    Read in another unit it would mean another length, and nobody would see it.
    """
    text = field.text().strip()
    if field.unsaved() and text and not any(letter.isalpha() for letter in text):
        field.setText(f"{text} {'in' if begun_in == 'inch' else 'mm'}")
