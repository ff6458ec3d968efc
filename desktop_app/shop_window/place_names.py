"""What the window's places are called: on the rail, as a page's title, and where one is led to."""

from __future__ import annotations

from desktop_app.language import tr

ASK, HEARD, JOB = tr("Ask the Old Jobs"), tr("Heard"), tr("Job")
WATCH, BACK, MONDAY = tr("Under Watch"), tr("It's Back"), tr("Monday Book")
KINDS, DRAWER, RULES = tr("Part Kinds"), tr("Tool Drawer"), tr("House Rules")
CARD, BENCH, RECORDS = tr("Bench Card"), tr("Photo Bench"), tr("Records In and Out")
FIRST_RULES = tr("Set This Shop Up")
# As they stand there, and are numbered (Alt+1 to Alt+0: an eleventh would have no key). The others
# are led to from a job or at the start.
ON_RAIL = (ASK, HEARD, WATCH, BACK, MONDAY, KINDS, DRAWER, CARD, RECORDS, RULES)
