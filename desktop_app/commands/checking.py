"""`check`: is the shop's record whole, and are its photos as they came?"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.watching import shop_of

if TYPE_CHECKING:
    from desktop_app.shop_record.check import Checked


def check(asked: Asked) -> Outcome:
    """Check database, history, photos and own part kinds; status 1 where something was found."""
    from desktop_app.shop_record.check import Checked, Problem
    from desktop_app.shop_record.trouble import ShopDamaged

    try:
        checked = _checked(asked)
    except ShopDamaged as damage:
        problem = Problem("the database", damage.what, True, damage.do)
        checked = Checked((problem,), 0, 0)
    lines = [
        f"{checked.photos_checked} photos and {checked.history_entries_checked} history entries "
        f"checked: {'all is whole' if checked.ok else f'{len(checked.problems)} problems'}."
    ]
    lines.extend(f"{p.where}: {p.what} {p.do}" for p in checked.problems)
    return Outcome(checked.as_json(), tuple(lines), 0 if checked.ok else 1)


def _checked(asked: Asked) -> Checked:
    from desktop_app.commands.shop_place import shelf_of
    from desktop_app.part_photos.stored_names import photos_named
    from desktop_app.parts_compared.stored_check import bench_problems
    from desktop_app.returns_watched.stored_check import record_problems
    from desktop_app.returns_watched.stored_doubts import record_doubts
    from desktop_app.shop_record.check import Problem, check_shop

    with shop_of(asked) as record:
        with record.reading() as connection:
            photos = photos_named(connection)
            bench = tuple(
                Problem("the bench", words, True, "Go back to your last good copy.")
                for words in bench_problems(connection)
            )
            jobs = tuple(
                Problem(where, words, True, "Go back to your last good copy.")
                for where, words in record_problems(connection)
            )
            today = record.clock().date()
            doubts = tuple(
                Problem(doubt.where, doubt.what, False, doubt.do)
                for doubt in record_doubts(connection, today)
            )
        checked = check_shop(record, photos)
        kinds = tuple(
            Problem("the shop's own part kinds", trouble.what, False, trouble.do)
            for trouble in shelf_of(record).troubles
        )
    return replace(checked, problems=(*checked.problems, *bench, *jobs, *doubts, *kinds))
