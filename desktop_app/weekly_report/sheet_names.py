"""What the sheets of the workbook are called: at most 31 characters, and none of []:*?/\\."""

from __future__ import annotations

from desktop_app.language import tr

READ_FIRST = tr("Read first")
LEFT_THIS_WEEK, CAME_BACK, WINDOWS = tr("Left this week"), tr("Came back"), tr("Windows")
RATE, KINDS_OF_PART, WHERE_FROM = tr("Rate"), tr("Kinds of part"), tr("Where from")
SYMPTOMS, PROOF, PEOPLE = tr("Symptoms"), tr("Proof"), tr("People")
COSTS, MONEY_OWED, CHAINS = tr("Costs"), tr("Money owed"), tr("Chains")
CHANGES, RAW, DEFINITIONS = tr("Changes"), tr("Raw"), tr("Definitions")
