"""What the words and columns of the workbook mean, sheet by sheet, with the source of each."""

from __future__ import annotations

from zlib import crc32

from desktop_app.language import tr
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.weekly_report.sheets.beside_words import BESIDE
from desktop_app.weekly_report.sheets.changes import SPAN_WEEKS
from desktop_app.weekly_report.sheets.definition import COMMON_PRACTICE, Definition
from desktop_app.weekly_report.sheets.definitions_of_jobs import COUNTING, VISITS
from desktop_app.weekly_report.sheets.definitions_of_rates import GROUPS, RATES

MONEY = (
    Definition(
        tr("Work, Cash out, In one sum, Got back, Total, Cost, Amount"),
        tr("Costs, Came back, Money owed"),
        tr(
            "Work: unbilled hours at what an hour costs the shop. Cash out: parts, work "
            "given out, towing, loan car, goodwill. In one sum: nobody has split it. Got "
            "back: what suppliers paid. Total and Cost: the first three less what was got "
            "back. Amount: what is still owed. What was written for one visit with several "
            "earlier jobs is added up; the very same amounts written twice count once. An "
            "hour is taken at what it cost when the return was judged, as the history of "
            "the house rule has it."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("52 weeks to then"),
        tr("Costs"),
        tr(
            "What the comebacks cost in the 52 weeks that end with this one; those from "
            "before the book's own year stand in the last table of the sheet."
        ),
    ),
    Definition(
        tr("Without a cost"),
        tr("Costs"),
        tr(
            "Comebacks of which no cost is written, with whichever earlier job: the sums "
            "beside them are too low by those, and a nought may mean that nobody wrote one."
        ),
    ),
    Definition(
        tr("Return visits, Days in all, Miles in all, Kilometres in all"),
        tr("Chains"),
        tr("How often the car came back, and how far from the first hand-over to the last return."),
    ),
    Definition(
        tr("Last {span_weeks} weeks, The {span_weeks} before", span_weeks=SPAN_WEEKS),
        tr("Changes"),
        tr(
            "Comebacks by main cause, in the quarter that ends with this week and in the "
            "one before."
        ),
    ),
    Definition(
        tr("Comebacks since, Days since, Comebacks before, Days before"),
        tr("Changes"),
        tr(
            "Comebacks of the same main cause since the day on which the change was done, "
            "and before it; and how many days these are. The days before can be fewer: the "
            "book reads one year."
        ),
    ),
    Definition(
        tr("More or fewer"),
        tr("Changes"),
        tr("Clearly: luck alone makes such a difference less than once in a hundred times."),
        "J. Przyborowski and H. Wilenski, Biometrika 31 (1940) 313-323",
    ),
    Definition(
        tr(
            "Days to the return, Miles to the return, Kilometres to the return, Miles "
            "known, Kilometres known, Days to the waiting visit, Days since"
        ),
        tr("Raw"),
        tr(
            "From the hand-over to the first comeback, to the last reading that can be "
            "trusted, to the first visit that waits or the same trouble told, and to the "
            "last day that the sheet looks at."
        ),
    ),
    Definition(
        tr("In window, Weeks ago, Proof"),
        tr("Raw"),
        tr(
            "In window: 1 where the visit lay in the earlier job's window. Weeks ago: 0 "
            "for this week. Proof: 0 unproven, 1 bay, 2 road, 3 full trip, 4 same "
            "conditions."
        ),
    ),
    Definition(tr("Week"), tr("everywhere"), tr("Monday to Sunday."), "ISO 8601"),
)
DEFINITIONS = (*COUNTING, *VISITS, *RATES, *GROUPS, *(Definition(*one) for one in BESIDE), *MONEY)


def edition() -> str:
    """Return six characters that stay the same for as long as no definition is worded anew."""
    kinds = [(each.value, each.means, each.is_comeback) for each in Judgement]
    return f"{crc32(repr((DEFINITIONS, kinds, RETURN_CAUSES)).encode()) & 0xFFFFFF:06x}"
