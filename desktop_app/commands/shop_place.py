"""Which shop a command or the window works on, and how it is opened with all that follows it."""

from __future__ import annotations

import importlib
import os
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from desktop_app.commands.named_file import at_home
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from desktop_app.parts_compared.part_kinds.kind_shelf import Folder, KindShelf
    from desktop_app.parts_compared.part_kinds.part_kind import KindNames, PartKind
    from desktop_app.shop_record.bulk import BulkRows
    from desktop_app.shop_record.deed import RowChange
    from desktop_app.shop_record.record import Clock, ShopRecord
    from desktop_app.symptom_search.stored_index import JobIndex

VARIABLE = "BENCHWITNESS_SHOP"
_MOST_SHOPS = 8  # that are remembered


def now() -> datetime:
    """Return the moment by this computer's clock, with its offset: the program's only clock."""
    return datetime.now().astimezone()


def kinds_of(shop: ShopRecord | None = None, connection: Any = None) -> dict[str, PartKind]:
    """Return the built-in part kinds and those of a shop."""
    return shelf_of(shop, connection).kinds


def shelf_of(shop: ShopRecord | None, connection: Any = None) -> KindShelf:
    """Return the kinds of a shop, and what was wrong with those that had to be left out.

    They come from the program, from the folder `part_kinds` of the shop, and from its record,
    read through `connection` where a deed is open.
    """
    from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds

    return load_kinds(*_kind_texts(shop, connection))


def kind_names(shop: ShopRecord) -> dict[str, KindNames]:
    """Return what the kinds of a shop are called: enough for a search, and sooner there."""
    from desktop_app.parts_compared.part_kinds.kind_shelf import load_names

    return load_names(*_kind_texts(shop))


def _kind_texts(
    shop: ShopRecord | None, connection: Any = None
) -> tuple[list[Folder], dict[str, str]]:
    """Return the folders in which kinds lie, and the texts of those in the record."""
    built_in = resource_path("part_kinds")
    if shop is None:
        return [built_in], {}
    from desktop_app.parts_compared.stored_kinds import own_bodies

    if connection is not None:
        own = own_bodies(connection)
    else:
        with shop.reading() as reader:
            own = own_bodies(reader)
    return [built_in, shop.folder / "part_kinds"], own


def chosen_place(said: str | None) -> Path:
    """Return the shop's folder: as said, else by the environment, else the one opened last.

    A shop on a server has a folder of its own below the user's data, named by its address. Who
    names a shop's record means the shop.
    """
    place = said or os.environ.get(VARIABLE) or last_shop()
    if not place:
        raise ShopTrouble(
            "Which shop?", do=f"Say --shop FOLDER, or set {VARIABLE}, or make one with new-shop."
        )
    if "://" in place:
        from desktop_app.commands.server_place import folder_of

        return folder_of(place)
    named = at_home(place)
    return named.parent if named.name == FILE_NAME and named.is_file() else named


def open_place(folder: Path, clock: Clock = now) -> ShopRecord:
    """Open a shop with its search index kept in step."""
    from desktop_app.shop_record.record import open_shop

    record = open_shop(folder, clock)
    if record.on_server:
        from desktop_app.shop_record.server.server_folder import read_place
        from desktop_app.shop_record.server.server_password import keep_what_was_said

        keep_what_was_said(read_place(folder).address)
    follow(record)
    return record


def new_place(folder: Path, clock: Clock = now) -> ShopRecord:
    """Make a new shop with its search index kept in step."""
    from desktop_app.shop_record.record import create_shop

    record = create_shop(folder, clock)
    follow(record)
    return record


def follow(record: ShopRecord) -> None:
    """Let what is derived follow the record's deeds.

    What that takes is loaded with the first deed: reading needs none of it.
    """
    made: list[tuple[object, JobIndex]] = []

    def index_of(own: Mapping[str, str], connection: Any) -> JobIndex:
        from desktop_app.symptom_search.stored_index import JobIndex

        if not made or made[0][0] != own:  # another desk may have given a kind another name
            made[:] = [(own, JobIndex(kinds_of(record, connection)))]
        return made[0][1]

    def keep_index(connection: Any, changes: Sequence[RowChange]) -> None:
        from desktop_app.parts_compared.stored_kinds import own_bodies_ahead
        from desktop_app.symptom_search.stored_index import jobs_touched
        from desktop_app.symptom_search.stored_said import said_of

        if jobs := jobs_touched(connection, changes):
            own = own_bodies_ahead(connection)
            said = said_of(connection, jobs)
            index_of(own(), connection).write(connection, jobs, said)

    def keep_index_in_bulk(connection: Any, done: Sequence[BulkRows]) -> None:
        from desktop_app.parts_compared.stored_kinds import own_bodies_ahead
        from desktop_app.symptom_search.stored_bulk_index import follow_bulk

        own = own_bodies_ahead(connection)()
        follow_bulk(index_of(own, connection), connection, done)

    record.followers.append(keep_index)
    record.bulk_followers.append(keep_index_in_bulk)
    record.know_tables = _know_tables


def _know_tables() -> None:
    """Load every table there is: undo meets any of them."""
    importlib.import_module("desktop_app.part_photos.stored")
    importlib.import_module("desktop_app.parts_compared.stored")
    importlib.import_module("desktop_app.repair_jobs.stored")
    importlib.import_module("desktop_app.returns_watched.stored")


def last_shop() -> str | None:
    """Return the folder of the shop that the window opened last, if it is remembered."""
    said = _remembered().get("last_shop")
    return str(said) if said else None


def last_own_shop() -> Path | None:
    """Return the folder of the shop that was open last and is no demo: it opens by itself."""
    from desktop_app.commands.demo import is_demo

    said = last_shop()
    if said is None or not is_demo(Path(said)):
        return Path(said) if said else None
    return next((one for one in shops_opened() if not is_demo(one)), None)


def shops_opened() -> list[Path]:
    """Return the folders of the shops that the window opened, the last first, as far as there."""
    said = _remembered().get("shops")
    listed = [last_shop(), *said] if isinstance(said, list) else [last_shop()]
    folders = dict.fromkeys(Path(str(one)) for one in listed if one)
    return [folder for folder in folders if folder.is_dir()]


def _remembered() -> dict[str, Any]:
    import json

    try:
        said = json.loads(_memory().read_text("utf-8"))
    except (OSError, ValueError):
        return {}
    return said if isinstance(said, dict) else {}


def remember(folder: Path) -> None:
    """Remember the shop for the next start; a memory that can't be written is no trouble."""
    import json

    memory, here = _memory(), str(folder.resolve())
    before = [str(one) for one in shops_opened() if str(one) != here]
    said = {"last_shop": here, "shops": [here, *before][:_MOST_SHOPS]}
    try:
        memory.parent.mkdir(parents=True, exist_ok=True)
        beside = memory.with_suffix(".part")
        beside.write_text(json.dumps(said), "utf-8")
        beside.replace(memory)
    except OSError:
        return


def own_folder() -> Path:
    """Return the program's folder below the user's data folder."""
    from platformdirs import user_data_path

    return user_data_path("benchwitness", appauthor=False)


def _memory() -> Path:
    return own_folder() / "last.json"
