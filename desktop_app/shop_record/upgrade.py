"""Bringing a record to the newest form: numbered steps, a copy first, newer ones refused."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from sqlalchemy import Engine, inspect, text

from desktop_app.shop_record import dialect
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble

if TYPE_CHECKING:
    from alembic.config import Config

NEWEST = "0001"
STEPS = ("0001",)


def build(path: Path) -> None:
    """Run all steps on a record file that was just made."""
    engine = dialect.open_engine(path)
    try:
        _run_steps(engine)
    finally:
        engine.dispose()


def bring_up_to_date(engine: Engine, path: Path, now: datetime) -> None:
    """Run the steps that an older record lacks; refuse a newer one.

    The check of the version is one small query; the migration library is loaded only when it is
    needed.
    """
    found = _version(engine)
    if found == NEWEST:
        return
    if found not in STEPS:
        raise ShopTrouble(
            f"This shop's record was written by a newer program (form {found}, this one knows "
            f"{NEWEST}).",
            kept="The record was not touched.",
            do="Install the newer program on this computer too.",
        )
    aside = path.with_name(f"shop-before-{NEWEST}-{now:%Y%m%d-%H%M%S}.sqlite")
    with engine.connect() as connection:
        dialect.copy_whole(connection, aside)
    _run_steps(engine)


def _version(engine: Engine) -> str:
    with engine.connect() as connection:
        if not inspect(connection).has_table("alembic_version"):
            raise ShopDamaged(
                "The shop's record has no version in it; it is empty or cut short.",
                kept="The file was left as it is.",
                do="Put your last good copy in its place, under the same name.",
            )
        return str(connection.execute(text("SELECT version_num FROM alembic_version")).scalar())


def _run_steps(engine: Engine) -> None:
    from alembic import command

    with engine.connect() as connection:
        config = _configuration()
        config.attributes["connection"] = connection.execution_options(writing=True)
        command.upgrade(config, "head")


def _configuration() -> Config:
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent / "migrations"))
    config.set_main_option("path_separator", "os")
    return config
