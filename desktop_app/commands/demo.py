"""`demo`: the demo shop in a folder of its own, opened in the window or written to three files."""

from __future__ import annotations

import os
import sys
import time
from pathlib import Path
from typing import TYPE_CHECKING

from desktop_app.commands.named_file import at_home
from desktop_app.commands.shop_place import kinds_of, now, open_place, own_folder
from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from collections.abc import Callable, Generator

    from desktop_app.commands.outcome import Asked
    from desktop_app.shop_record.step import Step

MARKER = "demo-shop.toml"
SAID_EACH = 50  # steps
GIVEN_UP = 3600  # seconds without a sign of life of a demo that was being made


def demo(
    asked: Asked,
    open_window: Callable[[Path | None], int],
    draw_window: Callable[[Path, Path], None],
) -> int:
    """Fill the folder once, then show it; without a screen write what the window would show."""
    from desktop_app.commands.command_line import say
    from desktop_app.commands.outcome import Outcome

    folder = at_home(asked.folder) if asked.folder else own_folder() / "demo-shop"
    fill(folder)
    if has_screen() and not asked.json:
        return open_window(folder)
    files = write_files(folder, draw_window)
    lines = ("There is no screen here: the window was not opened.", *(str(f) for f in files))
    say(Outcome({"shop": str(folder), "files": [str(f) for f in files]}, lines), as_json=asked.json)
    return 0


def fill(folder: Path) -> None:
    """Make the demo shop where the folder is new or empty; leave one that is there as it is."""
    for step in fill_steps(folder):
        if step.done % SAID_EACH == 0 or step.done == step.of:
            print(f"{step.done}/{step.of} {step.words}", file=sys.stderr)


def fill_steps(folder: Path) -> Generator[Step, None, Path]:
    """Make the demo shop step by step and return its folder; it is there when it is whole."""
    from desktop_app.shop_record.record_name import FILE_NAME

    folder = folder.resolve()
    if is_demo(folder) and (folder / FILE_NAME).is_file():
        return folder
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise ShopTrouble(
            f"{folder} is neither empty nor a demo shop.",
            kept="It was left as it is.",
            do="Name a new or an empty folder.",
        )
    import shutil

    from demo_shop.build import build_demo

    for left in folder.parent.glob(f".{folder.name}.being-made-*"):
        if time.time() - left.stat().st_mtime > GIVEN_UP:  # its maker was killed
            shutil.rmtree(left, ignore_errors=True)
    beside = folder.with_name(f".{folder.name}.being-made-{os.getpid()}")
    try:
        yield from build_demo(beside, now())
        if folder.exists():
            folder.rmdir()
        beside.rename(folder)
    finally:
        shutil.rmtree(beside, ignore_errors=True)
    return folder


def is_demo(folder: Path) -> bool:
    """Tell whether a folder holds the demo shop, in which everything is invented."""
    return (folder / MARKER).is_file()


def take_away(folder: Path) -> None:
    """Delete the demo shop, and no other."""
    import shutil

    if not is_demo(folder):
        return
    try:
        shutil.rmtree(folder)
    except OSError as error:
        raise ShopTrouble(
            tr("{folder} can't be taken away whole: {error}.", folder=folder, error=error.strerror),
            do=tr("Close what has it open, and try again."),
        ) from error


def has_screen() -> bool:
    """Tell whether a window can be shown here."""
    on_linux = sys.platform == "linux"
    if on_linux:
        drawn_by = os.environ.get("QT_QPA_PLATFORM", "")
        shown = os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY")
        return bool(shown) and drawn_by not in ("offscreen", "minimal")
    return True


def write_files(folder: Path, draw_window: Callable[[Path, Path], None]) -> tuple[Path, ...]:
    """Write the comparison sheet, the week and a picture of the window into the folder."""
    from datetime import date

    from desktop_app.commands.opened_shop import symptom_names
    from desktop_app.parts_compared.sheet import write_sheet
    from desktop_app.parts_compared.stored_pairs import job_to_show
    from desktop_app.weekly_report.actions import write_week
    from desktop_app.weekly_report.week import week_of

    sheet, week, picture = (
        folder / name for name in ("comparison-sheet.pdf", "week.xlsx", "window.png")
    )
    record = open_place(folder)
    try:
        with record.reading() as connection:
            job, left_on = job_to_show(connection)
        write_sheet(record, job, kinds_of(record), sheet)
        wanted = week_of(date.fromisoformat(left_on))
        for _ in write_week(record, wanted, week, symptom_names(), kinds_of(record)):
            pass
    finally:
        record.close()
    draw_window(folder, picture)
    return sheet, week, picture
