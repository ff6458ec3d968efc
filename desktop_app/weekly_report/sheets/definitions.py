"""The last sheet: what each word and figure means, with the source of each formula."""

from __future__ import annotations

from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Sheet, Table
from desktop_app.weekly_report.sheets.definition_words import DEFINITIONS
from desktop_app.weekly_report.sheets.sheet_words import about, columns


def definitions_sheet(figures: WeekFigures) -> Sheet:
    """Return the words of the workbook, the kinds of return, and the causes."""
    words = Table(
        "Definitions",
        columns(
            ("Word", "words"),
            ("Where", "words"),
            ("What it means", "long words"),
            ("Source", "words"),
        ),
        tuple(tuple(one) for one in DEFINITIONS),
        title="Words and figures",
    )
    kinds = Table(
        "KindsOfReturn",
        columns(("Judgement", "words"), ("Counts", "words"), ("What it means", "long words")),
        tuple(
            (each.value, "comeback" if each.is_comeback else "not counted", each.means)
            for each in Judgement
        ),
        title="What a person may decide about a return",
    )
    causes = Table(
        "Causes",
        columns(("Cause", "words"), ("Counts", "words"), ("What it means", "long words")),
        tuple(
            (each.words, "yes" if each.ours else "not ours: leaves the rate", each.means)
            for each in RETURN_CAUSES
        ),
        title="Why it came back",
    )
    return Sheet("Definitions", about(figures, None), tables=(words, kinds, causes))
