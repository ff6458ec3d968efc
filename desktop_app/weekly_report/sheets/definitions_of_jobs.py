"""What the book's words for jobs, their windows and their visits mean."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.weekly_report.sheets.definition import COMMON_PRACTICE, Definition

COUNTING = (
    Definition(
        tr("Job, Jobs"),
        tr("everywhere"),
        tr("One concern of a visit with one cause, one correction and one hand-over."),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Counted"),
        tr("Left this week, Raw"),
        tr(
            "A repair with a cause and a correction. “Not caught”, inspections and "
            "maintenance are not counted, and enter no rate."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Window, Window ends, Window days, Window miles, Window kilometres"),
        tr("Left this week, Raw"),
        tr(
            "The shop's promise after the hand-over. It starts when the car leaves and is "
            "still open on its last day and at its last mile. A job keeps the window it "
            "was handed over with. Where both limits are written, “or” says that the first "
            "of them ends it, “and” that both must; 0 is no such limit. Calendar months "
            "are counted out in days when the car leaves: they end on the same date, or on "
            "the last day of a month that has no such date."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Settled"),
        tr("Rate, tables of rates, Raw"),
        tr(
            "A job whose window is over by its days, and that came back or was quiet in "
            "it: no visit that waits for a judgement or that nobody can tell, no cause "
            "that is not ours, and the car in sight. A window that distance has ended is "
            "settled when its days are over too: a quick comeback then enters together "
            "with its quiet neighbours. Where both limits must end it, or it has none in "
            "time, it is over once an odometer reading says so. Open windows are never "
            "counted as successes."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Not settled"),
        tr("tables of rates"),
        tr(
            "The other jobs of the row: a window that is still open, a visit that waits, a "
            "car that is out of sight, or one that came back for a reason that is not ours "
            "or that nobody can tell. They are no successes and enter no rate."
        ),
    ),
    Definition(
        tr("Nothing heard"),
        tr("Windows, Rate, Read first"),
        tr(
            "A settled job that did not come back, and whose car nobody saw, read or asked "
            "about after its window. The rate takes it for well; Read first says beside it "
            "what those show of which something was heard."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Not ours, cannot tell"),
        tr("Windows, Rate, tables of rates"),
        tr(
            "A visit inside the window whose main cause is not ours, whatever it was "
            "judged, and no comeback: the job leaves the rate, above and below the line. "
            "One judged “cannot tell” leaves it too: neither return nor success. “Cannot "
            "tell” as the cause of a comeback stays in."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Waiting, Waits"),
        tr("everywhere"),
        tr(
            "A visit inside the window that nobody has judged, or a job with such a visit, "
            "or whose customer tells of the same trouble, and no comeback: neither good "
            "nor bad."
        ),
    ),
    Definition(
        tr("Lost sight"),
        tr("Windows, tables of rates"),
        tr(
            "The car was sold or is gone, so that nobody can say any more how it is: "
            "neither a success nor a comeback, unless it came back before that day."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Comebacks, Comeback, Came back, Counts, Counts as"),
        tr("everywhere"),
        tr(
            "A later visit inside the window that a person judged the same symptom, the "
            "same system, the same part or from our hands, unless its main cause is not "
            "ours. A visit counts once, however many earlier jobs it meets; a job that "
            "came back twice counts once in a rate."
        ),
        COMMON_PRACTICE,
    ),
)
VISITS = (
    Definition(
        tr("Days, Miles, Kilometres"),
        tr("Came back, Raw"),
        tr(
            "From the hand-over of the earlier job to the day on which the later one was "
            "written up, or the return was told; 0 where it came back on that very day. "
            "Jobs of one car that came on one day are one visit, unless the clock knows that "
            "the car had left before it came again. “Days only”: the odometer cannot say how "
            "far."
        ),
    ),
    Definition(
        tr("Days waiting"),
        tr("Came back"),
        tr("Days from the visit, or the telling, to the last day that the sheet looks at."),
    ),
    Definition(
        tr("Window used, Decided by"),
        tr("Came back, Windows"),
        tr(
            "The larger of the shares of days and of distance that are used up (the "
            "smaller where both must end), and which of them it is; beyond 100% the window "
            "was over."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("told, on paper"),
        tr("Came back, Chains, Raw"),
        tr(
            "In place of the later job: this shop never saw that return. Its customer told "
            "of the same trouble on that day, or another shop's bill was seen. Told again "
            "it is the same, until the car was here, the customer said something else, or "
            "it was judged no comeback. It waits until a person has judged it, and then "
            "counts like a visit; a comeback of the car itself takes its place, a visit "
            "for something else does not. No cost is written."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Dangerous"),
        tr("Came back"),
        tr(
            "Whether somebody could have been hurt by what came back, as a person said: "
            "yes, no, or not said. It says nothing of how the car is now."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Reasons"),
        tr("Came back"),
        tr("Why the program asked whether it is a return. It never decides: a person does."),
    ),
    Definition(
        tr("First job"),
        tr("Came back, Chains, Raw"),
        tr("The job on which a chain of comebacks hangs; a return of a return hangs on the same."),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Also, Helped by"),
        tr("Came back"),
        tr(
            "Further kinds of return that it is as well, and causes beside the main one. "
            "They are not counted a second time."
        ),
    ),
    Definition(
        tr("Days so far, Days left, Miles left (last read), Kilometres left (last read), Read on"),
        tr("Windows"),
        tr(
            "Days since the hand-over, and what is left of both limits: days to the last "
            "day that the sheet looks at, distance as last read: by the last reading of "
            "the odometer since the car left, which was on the day under Read on. “May "
            "have ended”: the expected end is gone by, and nobody knows."
        ),
    ),
    Definition(
        tr("Expected end, Ends by"),
        tr("Windows"),
        tr(
            "The day on which the window will probably end, and by which limit, reckoned "
            "from how much the car is driven by its own readings, drawn towards the shop's "
            "other cars."
        ),
    ),
    Definition(
        tr("Last known well"),
        tr("Windows"),
        tr(
            "The last day on which the car was here or its customer said that all is well, "
            "before any visit that is a comeback or waits."
        ),
    ),
    Definition(
        tr("Hours, Unbilled hours, Price"),
        tr("Left this week, Raw"),
        tr("As written on the jobs; an empty cell is not a nought, and is not in the sum."),
    ),
)
