"""Maps kept for the next file with the same headers: one TOML file each, in one folder."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from desktop_app.language import tr
from desktop_app.part_photos.file_actions import put_files
from desktop_app.records_exchanged.column_map import ALL_OTHERS, ColumnMap, map_toml, read_map
from desktop_app.shop_record.trouble import ShopTrouble

_ACCEPTED = tr("Accepted: a map in TOML, UTF-8.")
_MOST_BYTES = 1_000_000
MAPS = "import_maps"  # the folder of a shop that they lie in


def read_map_file(path: Path) -> ColumnMap:
    """Read a map that a person names; a ShopTrouble says what is wrong with it and where."""
    try:
        if path.is_file() and path.stat().st_size > _MOST_BYTES:
            raise ShopTrouble(tr("{file} is too large for a map.", file=path.name), do=_ACCEPTED)
        text = path.read_text(encoding="utf-8-sig")
    except UnicodeDecodeError as error:
        raise ShopTrouble(
            tr("{file} is not a UTF-8 text file.", file=path.name), do=_ACCEPTED
        ) from error
    except OSError as error:
        raise ShopTrouble(
            tr(
                "{file} can't be read: {reason}.",
                file=str(path)[:200],
                reason=error.strerror or error,
            ),
            do=_ACCEPTED,
        ) from error
    return read_map(text, path.name)


def kept_map(folder: Path, key: str) -> ColumnMap | None:
    """Return the map kept for the headers with this key (`Survey.key`), or None.

    It names all columns that a person wanted to be read.
    """
    path = _path(folder, key)
    return replace(read_map_file(path), left_out=ALL_OTHERS) if path.is_file() else None


def keep_map(folder: Path, key: str, column_map: ColumnMap) -> None:
    """Keep a map for the next file with these headers, in place of the one from before."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise ShopTrouble(
            tr(
                "{folder} can't be made: {reason}.",
                folder=folder,
                reason=error.strerror or error,
            ),
            kept=tr("How the file was read is not remembered."),
            do=tr("Ask for the right to write there."),
        ) from error
    put_files({_path(folder, key): map_toml(column_map).encode("utf-8")})


def forget_map(folder: Path, key: str) -> None:
    """Let go of the map kept for these headers, if there is one."""
    _path(folder, key).unlink(missing_ok=True)


def _path(folder: Path, key: str) -> Path:
    return folder / f"{key}.toml"
