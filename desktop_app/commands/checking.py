"""`check`: is the shop's record whole, and are its photos as they came?"""

from __future__ import annotations

from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.watching import shop_of


def check(asked: Asked) -> Outcome:
    """Check database, history and photos; status 1 where something was found."""
    from desktop_app.part_photos.stored_names import photos_named
    from desktop_app.shop_record.check import check_shop

    with shop_of(asked) as record:
        with record.reading() as connection:
            photos = photos_named(connection)
        checked = check_shop(record, photos)
    lines = [
        f"{checked.photos_checked} photos and {checked.history_entries_checked} history entries "
        f"checked: {'all is whole' if checked.ok else f'{len(checked.problems)} problems'}."
    ]
    lines.extend(f"{p.where}: {p.what} {p.do}" for p in checked.problems)
    return Outcome(checked.as_json(), tuple(lines), 0 if checked.ok else 1)
