"""What the book's words for rates and for groups of jobs mean."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.elsewhere import LIKE_JOBS, WIDER_WORTH
from desktop_app.returns_watched.honest_numbers.few_a_week import TAIL
from desktop_app.returns_watched.honest_numbers.group_rates import FEW_JOBS, WIDEST_INTERVAL
from desktop_app.weekly_report.sheets.definition import COMMON_PRACTICE, Definition

RATES = (
    Definition(
        tr("Rate"),
        tr("Rate by month, tables of rates"),
        tr("Comebacks of settled jobs, divided by settled jobs."),
    ),
    Definition(
        tr("Low, High"),
        tr("Rate, tables of rates"),
        tr("The bounds that hold the true figure 19 times of 20."),
        tr(
            "E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212; on Rate's curves the "
            "log-log bounds: J. D. Kalbfleisch and R. L. Prentice, The Statistical "
            "Analysis of Failure Time Data (1980) (from memory)"
        ),
    ),
    Definition(
        tr("Too few to tell"),
        tr("everywhere"),
        tr(
            "Fewer than {few_jobs} settled jobs, or bounds more than {widest_interval:.0f} "
            "points apart: no rate, no bounds and no likely rate are printed, and nothing "
            "is ranked. “Anything from … to” is all that is known.",
            few_jobs=FEW_JOBS,
            widest_interval=WIDEST_INTERVAL * 100,
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("By the curve, Still watched"),
        tr("Rate"),
        tr(
            "The share that has come back by a number of days, with open windows as far as "
            "they were watched; and the jobs that were still watched just before."
        ),
        "E. L. Kaplan and P. Meier, J. Am. Stat. Assoc. 53 (1958) 457-481",
    ),
    Definition(
        tr("Curve while known well"),
        tr("Rate"),
        tr(
            "By the curve, but a job of which nothing was heard counts only up to the last "
            "day on which its car was known to be well. The truth lies between the two."
        ),
    ),
    Definition(
        tr("Returns per 100 jobs"),
        tr("Rate"),
        tr(
            "How many returns 100 jobs have had by a number of days, the second and third "
            "of one job too (mean cumulative function)."
        ),
        "W. B. Nelson, J. Quality Technology 20 (1988) 24-35",
    ),
    Definition(
        tr("Handed over, Under watch"),
        tr("Rate, by week"),
        tr(
            "Jobs that left in the week; counted jobs whose window was not over by its "
            "days when the week began. "
        ),
    ),
    Definition(
        tr("Of those under watch"),
        tr("Rate, by week"),
        tr(
            "The week's comebacks for each job under watch: small, because most cars come "
            "in no given week, and not the rate of the year."
        ),
    ),
    Definition(
        tr("Low limit, High limit"),
        tr("Rate, by week"),
        tr(
            "What luck makes of as many jobs as were under watch: passed on either side "
            "less than once in {weeks:.0f} weeks. Exact limits of a Poisson count.",
            weeks=1 / TAIL,
        ),
        tr("D. C. Montgomery, Introduction to Statistical Quality Control, ch. 7 (from memory)"),
    ),
    Definition(
        tr("Slow rise"),
        tr("Rate, by week"),
        tr(
            "The evidence that comebacks have become twice as many since some earlier "
            "week: 0 is none. Where it is enough, Read first says so."
        ),
        "E. S. Page, Biometrika 41 (1954) 100-115",
    ),
    Definition(
        tr("Expected, Above expected"),
        tr("tables of rates, People"),
        tr(
            "Expected: the comebacks that the same work has outside the row (indirect "
            "standardisation over part kinds and systems, but for what the rows are made "
            "by). Where fewer than {few_jobs} others are alike, those few count together "
            "with the other work of the same system, which weighs as {wider_worth:.0f} "
            "jobs at most and less, the more the kinds of work differ; where the system is "
            "too little, with all other work. Beneath each table stands how many jobs are "
            "held against which; the range of luck is wider there. Empty where half of the "
            "row's jobs or more have fewer than {like_jobs} others of their kind or "
            "system: hard work is not held against easy work; or where fewer than "
            "{few_jobs} jobs are outside the row. Above expected: the row's comebacks less "
            "the expected; below 0 is fewer.",
            few_jobs=FEW_JOBS,
            wider_worth=WIDER_WORTH,
            like_jobs=LIKE_JOBS,
        ),
        tr(
            "N. E. Breslow and N. E. Day, Statistical Methods in Cancer Research II "
            "(1987), ch. 2; C. N. Morris, J. Am. Stat. Assoc. 78 (1983) 47-55 (from memory)"
        ),
    ),
    Definition(
        tr("Fewest by luck, Most by luck"),
        tr("tables of rates, People"),
        tr(
            "The fewest and most comebacks that luck alone makes of what is expected, 19 "
            "times of 20: the limits of a funnel for whole jobs, wider where few others "
            "say what to expect."
        ),
        "D. J. Spiegelhalter, Statistics in Medicine 24 (2005) 1185-1202",
    ),
    Definition(
        tr("Likely rate"),
        tr("tables of rates, People"),
        tr(
            "The rate as it is believed once all rows are weighed; a row of few jobs is "
            "drawn towards the others (beta-binomial)."
        ),
        "A. Gelman and others, Bayesian Data Analysis, 3rd ed. (2013), section 5.1",
    ),
    Definition(
        tr("Read it as"),
        tr("tables of rates, People"),
        tr(
            "What the figures of the row allow to be said. More or fewer than luck "
            "explains: further from the expected than luck makes, though several rows are "
            "compared."
        ),
        "Y. Benjamini and Y. Hochberg, J. R. Stat. Soc. B 57 (1995) 289-300",
    ),
)
GROUPS = (
    Definition(
        tr("Came back as"),
        tr("Kinds of part"),
        tr(
            "As what the comebacks of the row were judged; one may be several. “Too early for "
            "a rate”: jobs that came back already, while their windows are still open."
        ),
    ),
    Definition(
        tr("Died early, Wrong part"),
        tr("Where from"),
        tr(
            "Comebacks whose main cause is “part died early” or “wrong part fitted”, of "
            "windows that are open too."
        ),
    ),
    Definition(
        tr("Not caught, Hours on the average, What fixed it"),
        tr("Symptoms"),
        tr(
            "Repairs in which nothing was found; the hours of all jobs with written hours; "
            "the corrections of settled jobs that did not come back, the commonest first."
        ),
    ),
    Definition(
        tr("Caught here"),
        tr("Proof"),
        tr(
            "How often the fault showed itself again before the car left: never a return, "
            "a good sign."
        ),
        COMMON_PRACTICE,
    ),
    Definition(
        tr("Intermittent"),
        tr("People, Raw"),
        tr("Of the settled jobs, those whose fault did not come every time: the hard ones."),
    ),
)
