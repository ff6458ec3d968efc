"""`backup` and `restore`: a whole shop in one file, and back from it."""

from __future__ import annotations

from desktop_app.commands.exporting import walked
from desktop_app.commands.named_file import at_home
from desktop_app.commands.opened_shop import shop_of
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.shop_record.counted_words import entries_counted, photos_counted


def backup(asked: Asked) -> Outcome:
    """Write the whole shop into a new file, and read it again before it counts."""
    from desktop_app.shop_record.backups.backup import make_backup
    from desktop_app.shop_record.backups.backups_made import remember

    to = at_home(asked.file).absolute()
    with shop_of(asked) as record:
        made = walked(make_backup(record.folder, to, record.clock()))
        remember(record.folder, "file", made.manifest)
    manifest = made.manifest
    photos = manifest.photos()
    line = (
        f"Wrote {to}: {photos_counted(photos)} and {entries_counted(manifest.entries)}, "
        f"{made.size / 1e6:,.1f} MB. It was read again and is whole."
    )
    gone = [
        f"Not in it, because it is gone or damaged in the shop: photo {sha256}."
        for sha256 in manifest.missing_photos
    ]
    found = {
        "file": str(to),
        "bytes": made.size,
        "photos": photos,
        "history_entries": manifest.entries,
        "head": manifest.head,
        "missing_photos": list(manifest.missing_photos),
    }
    return Outcome(found, (line, *gone))


def restore(asked: Asked) -> Outcome:
    """Bring a shop back from a backup into a new folder."""
    from desktop_app.commands.shop_place import now
    from desktop_app.shop_record.backups.restore import restore_backup

    place, folder = (at_home(said).absolute() for said in (asked.file, asked.folder))
    manifest = walked(restore_backup(place, folder, now())).manifest
    photos = manifest.photos()
    lines = [
        f"Brought back {folder}, as it was on {manifest.made_at}: {photos_counted(photos)} and "
        f"{entries_counted(manifest.entries)}. All of it is whole.",
    ]
    lines += [
        f"It was missing in the shop already when the backup was made: photo {sha256}."
        for sha256 in manifest.missing_photos
    ]
    found = {
        "shop": str(folder),
        "made_at": manifest.made_at,
        "photos": photos,
        "history_entries": manifest.entries,
        "head": manifest.head,
        "missing_photos": list(manifest.missing_photos),
    }
    return Outcome(found, tuple(lines))
