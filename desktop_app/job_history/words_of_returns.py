"""What the rows of returns, answers of customers and money owed are called in the history."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.job_history.table_words import (
    TableWords,
    above,
    chosen,
    row,
    term,
    told,
    words,
)
from desktop_app.language import marked, tr

# Words of the record that are shown in the language spoken; those of judgements are marked there.
TERMS = (
    *(marked("fine"), marked("same trouble"), marked("other trouble")),
    *(marked("not reached"), marked("car is gone")),
    *(marked("open"), marked("asked"), marked("paid"), marked("refused")),
)

_DANGEROUS: Mapping[object, str] = {1: tr("yes"), 0: tr("no")}

RETURN_TABLES: Mapping[str, TableWords] = {
    "return_link": TableWords(
        tr("Return"),
        {
            "earlier_job_id": row("job", tr("Earlier job")),
            "later_job_id": row("job", tr("Later job")),
            "judgement": term(tr("Judged")),
            "judged_by": words(tr("Judged by")),
            "judged_at": told(tr("Judged at"), "moment"),
            "why": words(tr("Why")),
            "cause_class": told(tr("It came back because"), "cause"),
            "cost_cents": told(tr("Cost"), "money"),
            "change_promised": words(tr("What will change")),
            "same_vehicle": told(tr("The same car"), "yes"),
            "also": told(tr("Also"), "causes"),
            "helping_causes": told(tr("What helped"), "causes"),
            "evidence": words(tr("Evidence")),
            "first_view": words(tr("The first technician says")),
            "second_look": words(tr("Second look")),
            "unbilled_hours": told(tr("Hours not billed"), "hours"),
            "parts_cents": told(tr("Parts"), "money"),
            "sublet_cents": told(tr("Sublet work"), "money"),
            "tow_cents": told(tr("Tow"), "money"),
            "loan_car_cents": told(tr("Loan car"), "money"),
            "goodwill_cents": told(tr("Goodwill"), "money"),
            "recovered_cents": told(tr("Got back"), "money"),
            "change_by": words(tr("Who changes it")),
            "change_due": told(tr("To be changed by"), "moment"),
            "change_done_on": told(tr("Changed on"), "moment"),
            "change_check_on": told(tr("To be looked at again on"), "moment"),
            "dangerous": chosen(tr("Could somebody have been hurt"), _DANGEROUS),
        },
        ("earlier_job_id", "later_job_id"),
    ),
    "customer_asked": TableWords(
        tr("Customer asked"),
        {
            "job_id": above("job", tr("Job")),
            "asked_on": told(tr("On"), "moment"),
            "answer": term(tr("Answer")),
            "odometer_told": told(tr("Odometer told"), "odometer"),
            "words": words(tr("Words")),
            "asked_by": words(tr("Asked by")),
            "source": words(
                tr("Known from"), told=tr("what was told"), paper=tr("another shop's bill")
            ),
            "judgement": term(tr("Judged")),
            "judged_by": words(tr("Judged by")),
            "judged_at": told(tr("Judged at"), "moment"),
            "why": words(tr("Why")),
            "cause_class": told(tr("It came back because"), "cause"),
            "dangerous": chosen(tr("Could somebody have been hurt"), _DANGEROUS),
        },
        ("asked_on",),
    ),
    "money_owed": TableWords(
        tr("Money owed"),
        {
            "pair_id": above("pair", tr("Pair")),
            "what": words(tr("For"), core=tr("the old part"), claim=tr("a claim")),
            "amount_cents": told(tr("Amount"), "money"),
            "since": told(tr("Since"), "moment"),
            "state": term(tr("It is")),
            "next_step": words(tr("Next")),
            "ended_on": told(tr("Ended on"), "moment"),
        },
        ("what",),
    ),
}
