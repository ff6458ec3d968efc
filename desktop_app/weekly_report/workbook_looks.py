"""How the workbook looks: ink and hair lines, no colour; one look for each kind of cell."""

from __future__ import annotations

from typing import Any

from desktop_app.returns_watched.share_words import SHARE_FORMAT
from desktop_app.weekly_report.paper_fit import SIZE
from desktop_app.weekly_report.sheet_form import Kind

Look = dict[str, Any]
LETTERS: Look = {"font_name": "Arial", "font_size": SIZE}
_CELL: Look = {"valign": "top", "bottom": 7, "bottom_color": "#A6A6A6"}  # parts rows that wrap
_WORDS: Look = {"text_wrap": True, "align": "left", "indent": 1}
_QUIET: Look = {"font_color": "#555555"}
_HEAD: Look = {"bold": True, "valign": "top", "top": 1, "bottom": 1, "text_wrap": True}

NAMED: dict[str, Look] = {
    "beside numbers": {**_CELL, "align": "right", "text_wrap": True},
    "sentence": {"valign": "top", "text_wrap": True},
    "note": {**_QUIET, "valign": "top", "text_wrap": True},
    "about": _QUIET,
    "title": {"bold": True, "font_size": 16},
    "heading": {"bold": True, "font_size": 12, "valign": "bottom"},
    "over words": {**_HEAD, "align": "left", "indent": 1},
    "over numbers": {**_HEAD, "align": "right"},
}


def cell_looks(sign: str) -> dict[Kind, Look]:
    """Return the look of each kind of cell; `sign` stands before amounts."""
    forms: dict[Kind, Look] = {
        "words": _WORDS,
        "long words": _WORDS,
        "day": {"num_format": "yyyy-mm-dd", "align": "left", "indent": 1},
        "count": {"num_format": "#,##0"},
        "number": {"num_format": "#,##0.##"},
        "hours": {"num_format": "0.00"},
        "share": {"num_format": SHARE_FORMAT},
        "money": {"num_format": f'"{sign}"#,##0.00'},
    }
    return {kind: {**_CELL, **form} for kind, form in forms.items()}
