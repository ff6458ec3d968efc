"""A file of jobs looked through before it is brought in, with the map from the last one like it."""

from __future__ import annotations

from contextlib import ExitStack
from dataclasses import dataclass, replace
from pathlib import Path

from desktop_app.language import tr
from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.map_files import kept_map
from desktop_app.records_exchanged.survey import Survey, survey
from desktop_app.records_exchanged.table_files import open_source
from desktop_app.records_exchanged.table_source import Progress, TableSource
from desktop_app.shop_record.trouble import ShopTrouble


class OpenedFile:
    """A file that is held so that it can be read again and again; a workbook is turned once."""

    def __init__(self, path: Path, sheet: str = "", progress: Progress | None = None) -> None:
        self.path, self.sheet = path, sheet
        self._held = ExitStack()
        self.source: TableSource = self._held.enter_context(open_source(path, sheet, progress))

    def close(self) -> None:
        """Let go of it, and of what a workbook was turned into."""
        self._held.close()


@dataclass(frozen=True, slots=True)
class Looked:
    """What was found out about a file, read as `laid_down` says.

    `key` is what its headers are remembered by as they were found first. `kept` is the map of the
    last file like it, where one was taken; `said` why one was not.
    """

    opened: OpenedFile
    laid_down: ColumnMap
    found: Survey
    key: str
    kept: ColumnMap | None = None
    said: str = ""


def look(
    path: Path,
    laid_down: ColumnMap,
    maps: Path,
    opened: OpenedFile | None = None,
    progress: Progress | None = None,
    *,
    kept_too: bool = True,
) -> Looked:
    """Look through a file; `opened` is taken where it is the same sheet of the same file.

    With `kept_too` the columns, and where the headers stand, are taken from the map in the folder
    `maps`; its answers about days and numbers are not laid down, for this file may tell otherwise.
    Raises ShopTrouble, and what `progress` raises; a file that was opened here is closed then.
    """
    sheet = laid_down.sheet or ""
    same = opened is not None and (opened.path, opened.sheet) == (path, sheet)
    with ExitStack() as given_up:
        if same and opened is not None:
            held = opened
        else:
            held = OpenedFile(path, sheet, progress)
            given_up.callback(held.close)
        found = survey(held.source, laid_down, progress)
        first = Looked(held, laid_down, found, found.key)
        looked = _as_kept(first, maps, progress) if kept_too else first
        if looked.opened is held:
            given_up.pop_all()
    return looked


def _as_kept(first: Looked, maps: Path, progress: Progress | None) -> Looked:
    """Look once more with the kept map; where it doesn't fit, say so and leave it."""
    try:
        kept = kept_map(maps, first.key)
        if kept is None:
            return first
        laid = first.laid_down
        sheet = kept.sheet if kept.sheet in first.opened.source.sheets else None
        wanted = replace(
            laid,
            columns=kept.columns,
            left_out=kept.left_out,
            header_row=laid.header_row or kept.header_row,
            delimiter=laid.delimiter or kept.delimiter,
            sheet=laid.sheet or sheet,
        )
        again = look(first.opened.path, wanted, maps, first.opened, progress, kept_too=False)
    except ShopTrouble as trouble:
        return replace(
            first, said=tr("The map kept from before was not taken: {why}", why=trouble.what)
        )
    return replace(again, key=first.key, kept=kept)
