"""What the columns mean that stand beside the rates: words, where, meaning and source of each."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.weekly_report.sheets.definition import COMMON_PRACTICE
from desktop_app.weekly_report.sheets.proof import BY_TIME

BESIDE: tuple[tuple[str, str, str, str], ...] = (
    (
        tr("Kept out, Why"),
        tr("Raw, Rate"),
        tr(
            "Why a job is in no rate. Not caught: handed over with nothing found. Nothing "
            "put right: no correction is written. No cause written: something was done and "
            "no cause named. Inspection only, maintenance: marked so on the job. New "
            "trouble from our hands: one of those two that came back inside its window and "
            "was judged to be from our hands; it is counted in that row alone, for it is "
            "no repair."
        ),
        COMMON_PRACTICE,
    ),
    (
        tr("Window used up"),
        tr("Rate"),
        tr(
            "The larger of the shares of days and of distance, each job by its own window; "
            "100% is its end. Where no odometer says how far, days alone."
        ),
        COMMON_PRACTICE,
    ),
    (
        tr("Call due"),
        tr("Windows"),
        tr(
            "From this day on the customer is on the list of whom to ask: a week before "
            "the window probably ends, where the car was not seen since; as many days "
            "after the hand-over as the house rule has for a fault that came now and then "
            "and was not proved; or the day since which the customer tells of the same "
            "trouble. Empty where nobody needs to be asked."
        ),
        COMMON_PRACTICE,
    ),
    (
        tr("Parts, Compared, Stop and look, Turned, Mirrored, Not fitted"),
        tr("Where from"),
        tr(
            "Replacements of the year's jobs, counted or not; those whose readings were "
            "judged; those of which something speaks against fitting; those with an angle "
            "that is not the old part's, or that looks like its mirror image; those that "
            "did not go into the car."
        ),
        "",
    ),
    (
        tr("Claims, Answered, Refused, Days to an answer, Paid"),
        tr("Where from"),
        tr(
            "Claims written in the year, as they stood on its last day; those paid or "
            "refused by then; the average of the days from writing one to its answer; what "
            "was paid of them. Where the day of the answer is not known, it is in no "
            "average."
        ),
        "",
    ),
    (
        tr("First tries, Not caught then, Came back then, First-time fixed"),
        tr("Symptoms"),
        tr(
            "First tries: jobs whose window is over, settled or not caught, that are no "
            "comeback of an earlier job. First-time fixed: the share of them that was put "
            "right and stayed away."
        ),
        COMMON_PRACTICE,
    ),
    (
        BY_TIME,
        tr("Proof"),
        tr(
            "Jobs whose car was seen, or its customer asked, after the window's end, and "
            "all was well. This proof comes by itself later and stands in for none of the "
            "levels 0 to 4."
        ),
        COMMON_PRACTICE,
    ),
    (
        tr("Search hours on the average, Search hours written, Search hours"),
        tr("Symptoms, Raw"),
        tr(
            "Of the hours of a job, those that went into finding the cause: their average "
            "over the jobs with written search hours, and how many these are. Empty where "
            "nobody wrote them."
        ),
        "",
    ),
    (
        tr("Part played"),
        tr("People"),
        tr(
            "What the person did in the jobs of the row: wrote up, searched, refitted or "
            "proved, where the job names them for it. Technician: the jobs in which nobody "
            "is named for at least one of searched, refitted and proved; that is their "
            "technician's."
        ),
        "",
    ),
    (
        tr("Class"),
        tr("Left this week, Raw"),
        tr(
            "The kind of vehicle: the words of its description before a comma and without "
            "figures. Empty where more than four are left: they describe one car."
        ),
        "",
    ),
    (
        tr("Kind of work"),
        tr("Raw"),
        tr("Repair, inspection only or maintenance, as marked on the job."),
        "",
    ),
)
