"""What the words and columns of the workbook mean, sheet by sheet, with the source of each."""

from __future__ import annotations

from typing import NamedTuple
from zlib import crc32

from desktop_app.returns_watched.honest_numbers.elsewhere import LIKE_JOBS, WIDER_WORTH
from desktop_app.returns_watched.honest_numbers.few_a_week import TAIL
from desktop_app.returns_watched.honest_numbers.group_rates import FEW_JOBS, WIDEST_INTERVAL
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.weekly_report.sheets.beside_words import BESIDE
from desktop_app.weekly_report.sheets.changes import SPAN_WEEKS

_COMMON = "common practice, no source"


class Definition(NamedTuple):
    """The headers or words that it explains, with commas between, and where they stand."""

    words: str
    on: str
    means: str
    source: str = ""


COUNTING = (
    Definition(
        "Job, Jobs",
        "everywhere",
        "One concern of a visit with one cause, one correction and one hand-over.",
        _COMMON,
    ),
    Definition(
        "Counted",
        "Left this week, Raw",
        "A repair with a cause and a correction. “Not caught”, inspections and maintenance are not "
        "counted, and enter no rate.",
        _COMMON,
    ),
    Definition(
        "Window, Window ends, Window days, Window miles, Window kilometres",
        "Left this week, Raw",
        "The shop's promise after the hand-over. It starts when the car leaves and is still open "
        "on its last day and at its last mile. A job keeps the window it was handed over with. "
        "Where both limits are written, “or” says that the first of them ends it, “and” that both "
        "must; 0 is no such limit. Calendar months are counted out in days when the car leaves: "
        "they end on the same date, or on the last day of a month that has no such date.",
        _COMMON,
    ),
    Definition(
        "Settled",
        "Rate, tables of rates, Raw",
        "A job whose window is over by its days, and that came back or was quiet in it: no visit "
        "that waits for a judgement or that nobody can tell, no cause that is not ours, and the "
        "car in sight. A window that distance has ended is settled when its "
        "days are over too: a quick comeback then enters together with its quiet neighbours. Where "
        "both limits must end it, or it has none in time, it is over once an odometer reading says "
        "so. Open windows are never counted as successes.",
        _COMMON,
    ),
    Definition(
        "Not settled",
        "tables of rates",
        "The other jobs of the row: a window that is still open, a visit that waits, a car that is "
        "out of sight, or one that came back for a reason that is not ours or that nobody can "
        "tell. They are no successes and enter no rate.",
    ),
    Definition(
        "Nothing heard",
        "Windows, Rate, Read first",
        "A settled job that did not come back, and whose car nobody saw, read or asked about after "
        "its window. The rate takes it for well; Read first says beside it what those show of "
        "which something was heard.",
        _COMMON,
    ),
    Definition(
        "Not ours, cannot tell",
        "Windows, Rate, tables of rates",
        "A visit inside the window whose main cause is not ours, whatever it was judged, and no "
        "comeback: the job leaves the rate, above and below the line. One judged “cannot tell” "
        "leaves it too: neither return nor success. “Cannot tell” as the cause of a comeback "
        "stays in.",
        _COMMON,
    ),
    Definition(
        "Waiting, Waits",
        "everywhere",
        "A visit inside the window that nobody has judged, or a job with such a visit, or whose "
        "customer tells of the same trouble, and no comeback: neither good nor bad.",
    ),
    Definition(
        "Lost sight",
        "Windows, tables of rates",
        "The car was sold or is gone, so that nobody can say any more how it is: neither a success "
        "nor a comeback, unless it came back before that day.",
        _COMMON,
    ),
    Definition(
        "Comebacks, Comeback, Came back, Counts, Counts as",
        "everywhere",
        "A later visit inside the window that a person judged the same symptom, the same system, "
        "the same part or from our hands, unless its main cause is not ours. A visit counts once, "
        "however many earlier jobs it meets; a job that came back twice counts once in a rate.",
        _COMMON,
    ),
)
VISITS = (
    Definition(
        "Days, Miles, Kilometres",
        "Came back, Raw",
        "From the hand-over of the earlier job to the day on which the later one was written up, "
        "or the return was told. "
        "“Days only”: the odometer cannot say how far.",
    ),
    Definition(
        "Days waiting",
        "Came back",
        "Days from the visit, or the telling, to the last day that the sheet looks at.",
    ),
    Definition(
        "Window used, Decided by",
        "Came back, Windows",
        "The larger of the shares of days and of distance that are used up (the smaller where both "
        "must end), and which of them it is; beyond 100% the window was over.",
        _COMMON,
    ),
    Definition(
        "told, on paper",
        "Came back, Chains, Raw",
        "In place of the later job: this shop never saw that return. Its customer told of the same "
        "trouble on that day, or another shop's bill was seen. Told again it is the same, until "
        "the car was here, the customer said something else, or it was judged no comeback. It "
        "waits until a person has judged it, and then counts like a visit; a comeback of the car "
        "itself takes its place, a visit for something else does not. No cost is written.",
        _COMMON,
    ),
    Definition(
        "Dangerous",
        "Came back",
        "Whether somebody could have been hurt by what came back, as a person said: yes, no, or "
        "not said. It says nothing of how the car is now.",
        _COMMON,
    ),
    Definition(
        "Reasons",
        "Came back",
        "Why the program asked whether it is a return. It never decides: a person does.",
    ),
    Definition(
        "First job",
        "Came back, Chains, Raw",
        "The job on which a chain of comebacks hangs; a return of a return hangs on the same.",
        _COMMON,
    ),
    Definition(
        "Also, Helped by",
        "Came back",
        "Further kinds of return that it is as well, and causes beside the main one. They are not "
        "counted a second time.",
    ),
    Definition(
        "Days so far, Days left, Miles left (last read), Kilometres left (last read), Read on",
        "Windows",
        "Days since the hand-over, and what is left of both limits: days to the last day that the "
        "sheet looks at, distance as last read: by the last reading of the odometer since the car "
        "left, which was on the day under Read on. “May have ended”: the expected end is gone by, "
        "and nobody knows.",
    ),
    Definition(
        "Expected end, Ends by",
        "Windows",
        "The day on which the window will probably end, and by which limit, reckoned from how much "
        "the car is driven by its own readings, drawn towards the shop's other cars.",
    ),
    Definition(
        "Last known well",
        "Windows",
        "The last day on which the car was here or its customer said that all is well, before any "
        "visit that is a comeback or waits.",
    ),
    Definition(
        "Hours, Unbilled hours, Price",
        "Left this week, Raw",
        "As written on the jobs; an empty cell is not a nought, and is not in the sum.",
    ),
)
RATES = (
    Definition(
        "Rate",
        "Rate by month, tables of rates",
        "Comebacks of settled jobs, divided by settled jobs.",
    ),
    Definition(
        "Low, High",
        "Rate, tables of rates",
        "The bounds that hold the true figure 19 times of 20.",
        "E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212; on Rate's curves the log-log bounds: "
        "J. D. Kalbfleisch and R. L. Prentice, The Statistical Analysis of Failure Time Data "
        "(1980) (from memory)",
    ),
    Definition(
        "Too few to tell",
        "everywhere",
        f"Fewer than {FEW_JOBS} settled jobs, or bounds more than {WIDEST_INTERVAL * 100:.0f} "
        "points apart: no rate, no bounds and no likely rate are printed, and nothing is ranked. "
        "“Anything from … to” is all that is known.",
        _COMMON,
    ),
    Definition(
        "By the curve, Still watched",
        "Rate",
        "The share that has come back by a number of days, with open windows as far as they were "
        "watched; and the jobs that were still watched just before.",
        "E. L. Kaplan and P. Meier, J. Am. Stat. Assoc. 53 (1958) 457-481",
    ),
    Definition(
        "Curve while known well",
        "Rate",
        "By the curve, but a job of which nothing was heard counts only up to the last day on "
        "which its car was known to be well. The truth lies between the two.",
    ),
    Definition(
        "Returns per 100 jobs",
        "Rate",
        "How many returns 100 jobs have had by a number of days, the second and third of one job "
        "too (mean cumulative function).",
        "W. B. Nelson, J. Quality Technology 20 (1988) 24-35",
    ),
    Definition(
        "Handed over, Under watch",
        "Rate, by week",
        "Jobs that left in the week; counted jobs whose window was not over by its days when the "
        "week began. ",
    ),
    Definition(
        "Of those under watch",
        "Rate, by week",
        "The week's comebacks for each job under watch: small, because most cars come in no given "
        "week, and not the rate of the year.",
    ),
    Definition(
        "Low limit, High limit",
        "Rate, by week",
        "What luck makes of as many jobs as were under watch: passed on either side less than once "
        f"in {1 / TAIL:.0f} weeks. Exact limits of a Poisson count.",
        "D. C. Montgomery, Introduction to Statistical Quality Control, ch. 7 (from memory)",
    ),
    Definition(
        "Slow rise",
        "Rate, by week",
        "The evidence that comebacks have become twice as many since some earlier week: 0 is none. "
        "Where it is enough, Read first says so.",
        "E. S. Page, Biometrika 41 (1954) 100-115",
    ),
    Definition(
        "Expected, Above expected",
        "tables of rates, People",
        "Expected: the comebacks that the same work has outside the row (indirect standardisation "
        "over part kinds and systems, but for what the rows are made by). Where fewer than "
        f"{FEW_JOBS} others are alike, those few count together with the other work of the same "
        f"system, which weighs as {WIDER_WORTH:.0f} jobs at most and less, the more the kinds of "
        "work differ; where the system is too little, with all other work. Beneath each table "
        "stands how many jobs are held against which; the range of luck is wider there. Empty "
        f"where half of the row's jobs or more have fewer than {LIKE_JOBS} others of their kind or "
        "system: hard work is not held against easy work; or where fewer than "
        f"{FEW_JOBS} jobs are outside the row. Above expected: the row's comebacks less the "
        "expected; below 0 is fewer.",
        "N. E. Breslow and N. E. Day, Statistical Methods in Cancer Research II (1987), ch. 2; "
        "C. N. Morris, J. Am. Stat. Assoc. 78 (1983) 47-55 (from memory)",
    ),
    Definition(
        "Fewest by luck, Most by luck",
        "tables of rates, People",
        "The fewest and most comebacks that luck alone makes of what is expected, 19 times of 20: "
        "the limits of a funnel for whole jobs, wider where few others say what to expect.",
        "D. J. Spiegelhalter, Statistics in Medicine 24 (2005) 1185-1202",
    ),
    Definition(
        "Likely rate",
        "tables of rates, People",
        "The rate as it is believed once all rows are weighed; a row of few jobs is drawn towards "
        "the others (beta-binomial).",
        "A. Gelman and others, Bayesian Data Analysis, 3rd ed. (2013), section 5.1",
    ),
    Definition(
        "Read it as",
        "tables of rates, People",
        "What the figures of the row allow to be said. More or fewer than luck explains: further "
        "from the expected than luck makes, though several rows are compared.",
        "Y. Benjamini and Y. Hochberg, J. R. Stat. Soc. B 57 (1995) 289-300",
    ),
)
GROUPS = (
    Definition(
        "Came back as",
        "Kinds of part",
        "As what the comebacks of the row were judged; one may be several. “Too early to count”: "
        "jobs that came back already, while their windows are still open.",
    ),
    Definition(
        "Died early, Wrong part",
        "Where from",
        "Comebacks whose main cause is “part died early” or “wrong part fitted”, of windows that "
        "are open too.",
    ),
    Definition(
        "Not caught, Hours on the average, What fixed it",
        "Symptoms",
        "Repairs in which nothing was found; the hours of all jobs with written hours; the "
        "corrections of settled jobs that did not come back, the commonest first.",
    ),
    Definition(
        "Caught here",
        "Proof",
        "How often the fault showed itself again before the car left: never a return, a good sign.",
        _COMMON,
    ),
    Definition(
        "Intermittent",
        "People, Raw",
        "Of the settled jobs, those whose fault did not come every time: the hard ones.",
    ),
)
MONEY = (
    Definition(
        "Work, Cash out, In one sum, Got back, Total, Cost, Amount",
        "Costs, Came back, Money owed",
        "Work: unbilled hours at what an hour costs the shop. Cash out: parts, work given out, "
        "towing, loan car, goodwill. In one sum: nobody has split it. Got back: what suppliers "
        "paid. Total and Cost: the first three less what was got back. Amount: what is still "
        "owed. What was written for one visit with several earlier jobs is added up; the very "
        "same amounts written twice count once. An hour is taken at what it cost when the return "
        "was judged, as the history of the house rule has it.",
        _COMMON,
    ),
    Definition(
        "52 weeks to then",
        "Costs",
        "What the comebacks cost in the 52 weeks that end with this one; those from before the "
        "book's own year stand in the last table of the sheet.",
    ),
    Definition(
        "Return visits, Days in all, Miles in all, Kilometres in all",
        "Chains",
        "How often the car came back, and how far from the first hand-over to the last return.",
    ),
    Definition(
        f"Last {SPAN_WEEKS} weeks, The {SPAN_WEEKS} before",
        "Changes",
        "Comebacks by main cause, in the quarter that ends with this week and in the one before.",
    ),
    Definition(
        "Comebacks since, Days since, Comebacks before, Days before",
        "Changes",
        "Comebacks of the same main cause since the day on which the change was done, and before "
        "it; and how many days these are. The days before can be fewer: the book reads one year.",
    ),
    Definition(
        "More or fewer",
        "Changes",
        "Clearly: luck alone makes such a difference less than once in a hundred times.",
        "J. Przyborowski and H. Wilenski, Biometrika 31 (1940) 313-323",
    ),
    Definition(
        "Days to the return, Miles to the return, Kilometres to the return, Miles known, "
        "Kilometres known, Days to the waiting visit, Days since",
        "Raw",
        "From the hand-over to the first comeback, to the last reading that can be trusted, to the "
        "first visit that waits or the same trouble told, and to the last day that the sheet looks "
        "at.",
    ),
    Definition(
        "In window, Weeks ago, Proof",
        "Raw",
        "In window: 1 where the visit lay in the earlier job's window. Weeks ago: 0 for this week. "
        "Proof: 0 unproven, 1 bay, 2 road, 3 full trip, 4 same conditions.",
    ),
    Definition("Week", "everywhere", "Monday to Sunday.", "ISO 8601"),
)
DEFINITIONS = (*COUNTING, *VISITS, *RATES, *GROUPS, *(Definition(*one) for one in BESIDE), *MONEY)


def edition() -> str:
    """Return six characters that stay the same for as long as no definition changes."""
    kinds = [(each.value, each.means, each.is_comeback) for each in Judgement]
    return f"{crc32(repr((DEFINITIONS, kinds, RETURN_CAUSES)).encode()) & 0xFFFFFF:06x}"
