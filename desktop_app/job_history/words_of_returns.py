"""What the rows of returns, answers of customers and money owed are called in the history."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.job_history.table_words import TableWords, above, chosen, row, told, words

_DANGEROUS: Mapping[object, str] = {1: "yes", 0: "no"}

RETURN_TABLES: Mapping[str, TableWords] = {
    "return_link": TableWords(
        "Return",
        {
            "earlier_job_id": row("job", "Earlier job"),
            "later_job_id": row("job", "Later job"),
            "judgement": words("Judged"),
            "judged_by": words("Judged by"),
            "judged_at": told("Judged at", "moment"),
            "why": words("Why"),
            "cause_class": told("It came back because", "cause"),
            "cost_cents": told("Cost", "money"),
            "change_promised": words("What will change"),
            "same_vehicle": told("The same car", "yes"),
            "also": told("Also", "causes"),
            "helping_causes": told("What helped", "causes"),
            "evidence": words("Evidence"),
            "first_view": words("The first technician says"),
            "second_look": words("Second look"),
            "unbilled_hours": told("Hours not billed", "hours"),
            "parts_cents": told("Parts", "money"),
            "sublet_cents": told("Sublet work", "money"),
            "tow_cents": told("Tow", "money"),
            "loan_car_cents": told("Loan car", "money"),
            "goodwill_cents": told("Goodwill", "money"),
            "recovered_cents": told("Got back", "money"),
            "change_by": words("Who changes it"),
            "change_due": told("To be changed by", "moment"),
            "change_done_on": told("Changed on", "moment"),
            "change_check_on": told("To be looked at again on", "moment"),
            "dangerous": chosen("Could somebody have been hurt", _DANGEROUS),
        },
        ("earlier_job_id", "later_job_id"),
    ),
    "customer_asked": TableWords(
        "Customer asked",
        {
            "job_id": above("job", "Job"),
            "asked_on": told("On", "moment"),
            "answer": words("Answer"),
            "odometer_told": told("Odometer told", "odometer"),
            "words": words("Words"),
            "asked_by": words("Asked by"),
            "source": words("Known from", told="what was told", paper="another shop's bill"),
            "judgement": words("Judged"),
            "judged_by": words("Judged by"),
            "judged_at": told("Judged at", "moment"),
            "why": words("Why"),
            "cause_class": told("It came back because", "cause"),
            "dangerous": chosen("Could somebody have been hurt", _DANGEROUS),
        },
        ("asked_on",),
    ),
    "money_owed": TableWords(
        "Money owed",
        {
            "pair_id": above("pair", "Pair"),
            "what": words("For", core="the old part", claim="a claim"),
            "amount_cents": told("Amount", "money"),
            "since": told("Since", "moment"),
            "state": words("It is"),
            "next_step": words("Next"),
            "ended_on": told("Ended on", "moment"),
        },
        ("what",),
    ),
}
