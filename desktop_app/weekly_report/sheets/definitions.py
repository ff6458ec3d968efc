"""The last sheet: what each word and figure means, with the source of each formula."""

from __future__ import annotations

from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Sheet, Table
from desktop_app.weekly_report.sheets.sheet_words import about, columns

_COMMON = "common practice, no source"
_WORDS = (
    ("Job", "One concern of a visit with one cause, one correction and one hand-over.", _COMMON),
    ("Counted", "A job with a cause and a correction. “Not caught” is not counted.", _COMMON),
    (
        "Window",
        "The shop's promise after the hand-over. It starts when the car leaves and is still open "
        "on its last day and at its last mile. A job keeps the window it was handed over with.",
        _COMMON,
    ),
    (
        "Settled",
        "The window is over and every visit inside it is judged. Open windows are never counted "
        "as successes.",
        _COMMON,
    ),
    ("Waiting", "A visit inside the window that nobody has judged: neither good nor bad.", ""),
    (
        "Comeback",
        "A later visit inside the window that a person judged a comeback, unless its cause is not "
        "ours. One visit counts once.",
        _COMMON,
    ),
    ("Rate", "Comebacks of settled jobs, divided by settled jobs.", ""),
    (
        "Low, High",
        "The bounds that hold the true rate 19 times of 20.",
        "E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212",
    ),
    (
        "By the curve, Came back",
        "The share that has come back by a number of days, open windows counted as far as they "
        "were watched.",
        "E. L. Kaplan and P. Meier, J. Am. Stat. Assoc. 53 (1958) 457-481",
    ),
    (
        "Returns per job",
        "How often a job has come back by a number of days, on the average.",
        "W. B. Nelson, J. Quality Technology 20 (1988) 24-35",
    ),
    (
        "Expected",
        "What jobs of this kind of work have in this shop on the average: indirect "
        "standardisation over part kinds and systems.",
        "N. E. Breslow and N. E. Day, Statistical Methods in Cancer Research II (1987), ch. 2",
    ),
    (
        "Drawn in",
        "The rate as it is believed once the other groups are known (beta-binomial).",
        "A. Gelman and others, Bayesian Data Analysis, 3rd ed. (2013), section 5.1",
    ),
    (
        "Stands out",
        "Further from the expected than luck explains, although several are compared.",
        "Y. Benjamini and Y. Hochberg, J. R. Stat. Soc. B 57 (1995) 289-300",
    ),
    (
        "Limits by week",
        "What luck makes of as many jobs as were under watch, exceeded once in 740 weeks: exact "
        "limits of a Poisson count.",
        "D. C. Montgomery, Introduction to Statistical Quality Control, ch. 7 (from memory)",
    ),
    (
        "Slow rise",
        "The running evidence that comebacks have doubled (cusum of the likelihood ratio).",
        "E. S. Page, Biometrika 41 (1954) 100-115; G. Lorden, Ann. Math. Stat. 42 (1971) 1897",
    ),
    ("Too few to tell", "Fewer than 20 settled jobs, or bounds wider than 20 points.", _COMMON),
    ("Week", "Monday to Sunday.", "ISO 8601"),
)


def definitions_sheet(figures: WeekFigures) -> Sheet:
    """Return the words of the workbook, the kinds of return, and the causes."""
    words = Table(
        "Definitions",
        columns(("Word", "words"), ("What it means", "long words"), ("Source", "long words")),
        _WORDS,
        title="Words and figures",
    )
    kinds = Table(
        "KindsOfReturn",
        columns(("Judgement", "words"), ("What it means", "long words"), ("Counts", "words")),
        tuple(
            (each.value, each.means, "comeback" if each.is_comeback else "not counted")
            for each in Judgement
        ),
        title="What a person may decide about a return",
    )
    causes = Table(
        "Causes",
        columns(("Cause", "words"), ("What it means", "long words"), ("Counts", "words")),
        tuple(
            (each.words, each.means, "yes" if each.ours else "not ours: leaves the rate")
            for each in RETURN_CAUSES
        ),
        title="Why it came back",
    )
    return Sheet("Definitions", about(figures, None), tables=(words, kinds, causes))
