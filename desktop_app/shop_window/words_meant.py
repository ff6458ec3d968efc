"""What the words mean that are used here in a sense of their own, for whoever reads them first."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.shop_window.place_names import ASK, BACK, DRAWER, HEARD, MONDAY, WATCH

WORDS = {
    HEARD: tr("what the customer says, in the customer's own words: here a job begins"),
    ASK: tr("the search: a few words of a symptom find the jobs that had it, and what helped"),
    WATCH: tr("every job that left and whose promise has not ended"),
    BACK: tr("cars that came again, or of which that was told, for a person to judge"),
    MONDAY: tr("the figures of a week, written to a spreadsheet"),
    DRAWER: tr("what the shop measures with, and how finely each can see"),
    tr("Promise, or window"): tr(
        "how long a repair is watched after the hand-over: days, months, a distance, or both"
    ),
    tr("Return"): tr("a later visit of the same car that may be for the same fault"),
    tr("Comeback"): tr("a return that a person judged to be about the same fault or our work"),
    tr("Pair"): tr("one part as it came off, beside the one that goes on"),
    tr("same, restored"): tr(
        "no different by more than is allowed; different the way that wear is made good"
    ),
    "± 0.1": tr("how far the reading can be off, 19 times of 20, by the tool and by the hand"),
    tr("too close for this tool"): tr(
        "the difference and its doubt lie on both sides of the limit"
    ),
    tr("Unproven"): tr("the repair left without a test that would have shown the fault"),
    tr("Too few to tell"): tr("so few jobs that luck alone could make the number"),
}
