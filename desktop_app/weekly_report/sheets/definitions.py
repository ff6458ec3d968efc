"""The last sheet: what each word and figure means, with the source of each formula."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.weekly_report import sheet_names
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import CAUSE, COUNTS, JUDGEMENT
from desktop_app.weekly_report.sheet_form import Sheet, Table
from desktop_app.weekly_report.sheets.definition_words import DEFINITIONS
from desktop_app.weekly_report.sheets.sheet_words import about, columns


def definitions_sheet(figures: WeekFigures) -> Sheet:
    """Return the words of the workbook, the kinds of return, and the causes."""
    words = Table(
        "Definitions",
        columns(
            (tr("Word"), "words"),
            (tr("Where"), "words"),
            (tr("What it means"), "long words"),
            (tr("Source"), "words"),
        ),
        tuple(tuple(one) for one in DEFINITIONS),
        title=tr("Words and figures"),
    )
    kinds = Table(
        "KindsOfReturn",
        columns((JUDGEMENT, "words"), (COUNTS, "words"), (tr("What it means"), "long words")),
        tuple(
            (
                tr(each.value),
                tr("comeback") if each.is_comeback else tr("not counted"),
                each.means,
            )
            for each in Judgement
        ),
        title=tr("What a person may decide about a return"),
    )
    causes = Table(
        "Causes",
        columns((CAUSE, "words"), (COUNTS, "words"), (tr("What it means"), "long words")),
        tuple(
            (each.words, tr("yes") if each.ours else tr("not ours: leaves the rate"), each.means)
            for each in RETURN_CAUSES
        ),
        title=tr("Why it came back"),
    )
    return Sheet(sheet_names.DEFINITIONS, about(figures, None), tables=(words, kinds, causes))
