"""`sealed-copy`: the evidence of one job, to be handed to somebody who doubts it."""

from __future__ import annotations

from desktop_app.commands.exporting import walked
from desktop_app.commands.named_file import at_home
from desktop_app.commands.opened_shop import shop_of, symptom_names
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import kinds_of
from desktop_app.language import tr
from desktop_app.shop_record.counted_words import entries_counted, photos_counted


def sealed_copy(asked: Asked) -> Outcome:
    """Write the sealed copy of a job into a new folder or a new ZIP file."""
    from desktop_app.job_history.sealing_actions import make_sealed_copy
    from desktop_app.repair_jobs.stored_reading import job_by_number

    to = at_home(asked.out).absolute()
    with shop_of(asked) as record:
        with record.reading() as connection:
            job = job_by_number(connection, asked.job)
        made = walked(make_sealed_copy(record, job, kinds_of(record), symptom_names(), to))
    facts = made.facts
    lines = [
        tr(
            "Wrote {place}: {photos}, {entries} about the job, and the chain from entry "
            "{first:,} to {last:,}.",
            place=to,
            photos=photos_counted(len(facts.photos)),
            entries=entries_counted(facts.shown),
            first=facts.first,
            last=facts.head_number,
        ),
        tr("Its seal is {seal}. Note it where nobody can change it.", seal=made.seal),
        tr("“python3 verify.py” in it says whether it is whole; READ ME.txt, what that proves."),
    ]
    lines += [
        tr("Not in it, because it is gone or damaged in the shop: photo {photo}.", photo=one)
        for one in facts.missing_photos
    ]
    said = {
        "out": str(to),
        "job": facts.job,
        "seal": made.seal,
        "photos": len(facts.photos),
        "entries": facts.shown,
        "first": facts.first,
        "head": {"number": facts.head_number, "hash": facts.head_hash},
        "missing_photos": list(facts.missing_photos),
    }
    return Outcome(said, tuple(lines))
