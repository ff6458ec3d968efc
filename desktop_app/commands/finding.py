"""`find`: the shop's own past jobs by what a person would say."""

from __future__ import annotations

from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import kinds_of
from desktop_app.commands.watching import shop_of
from desktop_app.shop_record.trouble import ShopTrouble


def find(asked: Asked) -> Outcome:
    """Find past jobs and what fixed them."""
    from desktop_app.symptom_search.find import find as find_jobs
    from desktop_app.symptom_search.index_actions import renew_index
    from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

    if not 1 <= asked.limit <= 1000:
        raise ShopTrouble(
            f"--limit: {asked.limit} is too few or too many.", do="Accepted: 1 to 1000."
        )
    with shop_of(asked) as record:
        kinds = kinds_of(record)
        for _step in renew_index(record):
            pass  # only a long history without one waits here
        found = find_jobs(record, shop_vocabulary(), kinds, asked.text, asked.limit)
    said = found.as_json()
    lines = [f"Read as: {', '.join(said['read_as']) or 'nothing'}"]
    lines.extend(f"{j['number']}  {j['concern']}  ({'; '.join(j['why'])})" for j in said["jobs"])
    if not said["jobs"]:
        lines.append("No past job is about that.")
    lines.extend(
        f"What fixed it: {f['fix']}: {f['jobs']} jobs, {f['came_back']} came back"
        for f in said["fixes"]
    )
    return Outcome(said, tuple(lines))
