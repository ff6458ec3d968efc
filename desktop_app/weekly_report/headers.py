"""The headers by which formulas, charts, totals and buttons speak of columns: one name each.

A formula holds the header as it is spoken, so the same word has to stand over the column.
"""

from __future__ import annotations

from desktop_app.language import tr

JOB, EARLIER_JOB, LATER_JOB = tr("Job"), tr("Earlier job"), tr("Later job")
FIRST_JOB, OF_JOB, RETURN = tr("First job"), tr("Of job"), tr("Return")
#: Those that hold a job's number, in the order in which they are looked for.
JOB_COLUMNS = (JOB, LATER_JOB, RETURN, EARLIER_JOB, OF_JOB, FIRST_JOB)

# What jobs and visits are counted by.
COUNTED, COUNTS, COUNTS_AS = tr("Counted"), tr("Counts"), tr("Counts as")
SETTLED, NOT_SETTLED, WAITING = tr("Settled"), tr("Not settled"), tr("Waiting")
BACK, COMEBACKS = tr("Came back"), tr("Comebacks")
STATE, NOTHING_HEARD, NOT_CAUGHT = tr("State"), tr("Nothing heard"), tr("Not caught")
KEPT_OUT, WHY = tr("Kept out"), tr("Why")
JUDGEMENT, CAUSE, PROOF_REACHED = tr("Judgement"), tr("Cause"), tr("Proof")
FIRST_TRIES = tr("First tries")
NOT_CAUGHT_THEN, BACK_THEN = tr("Not caught then"), tr("Came back then")

# Shares with their bounds.
LOW, HIGH = tr("Low"), tr("High")
LOW_LIMIT, HIGH_LIMIT = tr("Low limit"), tr("High limit")
UNDER_WATCH, OF_THOSE_UNDER_WATCH = tr("Under watch"), tr("Of those under watch")
RETURNS_PER_100 = tr("Returns per 100 jobs")

# Days and weeks.
DAYS, DAYS_LEFT, CAME_ON = tr("Days"), tr("Days left"), tr("Came on")
WEEK, WEEKS_AGO, TO = tr("Week"), tr("Weeks ago"), tr("To")

# Hours and money.
HOURS, UNBILLED_HOURS = tr("Hours"), tr("Unbilled hours")
PRICE, COST = tr("Price"), tr("Cost")
WORK, CASH_OUT, IN_ONE_SUM = tr("Work"), tr("Cash out"), tr("In one sum")
NO_COST = tr("Without a cost")
GOT_BACK, TOTAL = tr("Got back"), tr("Total")
