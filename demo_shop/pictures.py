"""Draws the documents' pictures from the demo: `python -m demo_shop.pictures [SHOP [NAME ...]]`.

Each screen in light and dark, at usual size and at twice that, as screens show them today. What a
look and a size hang on is said once to a process, so each pair has one of its own.
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
import tempfile
from collections.abc import Callable, Collection, Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from demo_shop.pictures_marked import MARKED, marked_picture

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication, QWidget

    from desktop_app.program import Program

OUT = Path(__file__).resolve().parent.parent / "resources" / "pictures"
# A Wednesday; the pictures show the same day whenever they are drawn.
NOW = datetime(2026, 11, 18, 10, 30, tzinfo=UTC)
SIZE = (1366, 900)
HIGHER = {"map-job": 1260}  # down to the first readings
LOOKS = ("light", "dark")
FACTORS = (1, 2)
SHEET = "sheet"  # the printed one


def draw_all(shop: Path, names: Collection[str]) -> None:
    """Draw these pictures from a demo shop that was made at NOW, in all looks and sizes."""
    for look in LOOKS:
        for factor in FACTORS:
            order = [sys.executable, "-m", "demo_shop.pictures", str(shop), *names]
            order += ["--look", look, "--factor", str(factor)]
            surroundings = os.environ | {
                "QT_QPA_PLATFORM": "offscreen",
                "QT_SCALE_FACTOR": str(factor),
            }
            subprocess.run(order, check=True, env=surroundings, cwd=OUT.parents[1])


def picture_name(name: str, look: str, factor: int) -> str:
    """Return the file's name of a screen in one look and size."""
    return f"{name}-{look}.png" if factor == 1 else f"{name}-{look}-{factor}x.png"


def _draw(shop: Path, names: Collection[str], look: str, factor: int) -> Iterator[Path]:
    """Draw these screens in the look and the size that this process was begun with."""
    from PySide6.QtWidgets import QApplication

    from desktop_app.program import Program
    from desktop_app.shop_window.left_here import LeftHere
    from desktop_app.shop_window.look import dress

    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    (shop / "drafts.json").unlink(missing_ok=True)
    LeftHere(shop).forget()
    program = Program(shop, lambda: NOW)
    program.window.resize(*SIZE)
    program.window.show()
    program.open_shop()
    dress(app, look)
    OUT.mkdir(parents=True, exist_ok=True)
    for name in (name for name in _PICTURES if name in names):
        yield _grab(app, program, name, OUT / picture_name(name, look, factor))
    if look == LOOKS[0] and SHEET in names:  # paper is white
        yield _sheet(program, shop, OUT / picture_name(SHEET, look, factor), factor)
    program.close()


def _grab(app: QApplication, program: Program, name: str, file: Path) -> Path:
    program.window.resize(SIZE[0], HIGHER.get(name, SIZE[1]))
    for _ in range(2):  # the second time the page has its whole height
        _PICTURES[name](program)
        _settle(app, program)
    marked_picture(program.window, MARKED.get(name, ())).save(str(file))
    _fewer_colours(file)
    return file


def _fewer_colours(file: Path) -> None:
    """Keep 256 colours of a picture: a third of the size, and nobody sees it."""
    from PIL import Image

    with Image.open(file) as drawn:
        few = drawn.convert("RGB").quantize(256, Image.Quantize.MEDIANCUT)
    few.save(file, optimize=True)


def _settle(app: QApplication, program: Program) -> None:
    """Let errands end and pages be laid out, as a person would wait."""
    from PySide6.QtCore import QEventLoop, QTimer

    quiet = 0
    while quiet < 16:
        loop = QEventLoop()
        QTimer.singleShot(40, loop.quit)
        loop.exec()
        busy = program.desk is not None and program.desk.errands.busy()
        quiet = 0 if busy else quiet + 1


def _heard(program: Program) -> None:
    from PySide6.QtWidgets import QLineEdit, QPlainTextEdit

    program.window.go_to("Heard")
    page = program.window.page("Heard")
    typed = {
        "Plate, or the shop's own tag": _a_plate(program),
        "Odometer": "131,900",
    }
    for line in page.findChildren(QLineEdit):
        if line.accessibleName() in typed:
            line.setText(typed[line.accessibleName()])
            line.textEdited.emit(line.text())
    words = next(iter(page.findChildren(QPlainTextEdit)))
    words.setPlainText("It misses again when it's wet, and it feels weak up the hill")


def _a_plate(program: Program) -> str:
    from desktop_app.parts_compared.stored_pairs import job_to_show
    from desktop_app.repair_jobs.stored_reading import read_job

    assert program.desk is not None
    job = program.desk.ask(job_to_show)[0]
    return str(program.desk.ask(read_job, job).vehicle.plate)


def _ask(program: Program) -> None:
    from PySide6.QtWidgets import QLineEdit

    program.window.go_to("Ask the Old Jobs")
    page = program.window.page("Ask the Old Jobs")
    field = next(
        f for f in page.findChildren(QLineEdit) if f.accessibleName() == "Ask the old jobs"
    )
    field.setText("missfire when its wet and pulling")


def _old_and_new(program: Program) -> None:
    from desktop_app.program_started import show_for_a_picture

    show_for_a_picture(program.window, program.desk)
    _press_jump(program.window.page("Job"), "Old & New")


def _photo_bench(program: Program) -> None:
    from PySide6.QtWidgets import QPushButton

    from desktop_app.parts_compared.stored_photo_readings import job_with_marks
    from desktop_app.places import Places

    assert program.desk is not None
    places = program.desk.parent()
    assert isinstance(places, Places)
    places.open_job(program.desk.ask(job_with_marks))
    page = program.window.page("Job")
    bench = (b for b in page.findChildren(QPushButton) if b.text() == "Photo bench")
    next(b for b in bench if b.isEnabled()).click()


def _whole_pair(program: Program) -> None:
    from PySide6.QtWidgets import QPushButton

    _old_and_new(program)
    named = program.window.page("Job").findChildren(QPushButton)
    views = [b for b in named if b.isVisible() and b.accessibleName().startswith("view ")]
    next(b for b in views if b.text() == "underside").click()  # no photo shows it: less to scroll
    program.window.strip.tell("Nothing to redo.")


def _press_jump(page: QWidget, name: str) -> None:
    from PySide6.QtWidgets import QPushButton

    next(b for b in page.findChildren(QPushButton) if b.accessibleName() == f"Go to {name}").click()


def _go(place: str) -> Callable[[Program], None]:
    return lambda program: program.window.go_to(place)


def _sheet(program: Program, shop: Path, file: Path, factor: int) -> Path:
    import pypdfium2

    from desktop_app.commands.shop_place import kinds_of
    from desktop_app.parts_compared.sheet import write_sheet
    from desktop_app.parts_compared.stored_pairs import job_to_show

    assert program.desk is not None
    with tempfile.TemporaryDirectory() as folder:
        pdf = Path(folder) / "sheet.pdf"
        job = program.desk.ask(job_to_show)[0]
        write_sheet(program.desk.record, job, kinds_of(program.desk.record), pdf)
        document = pypdfium2.PdfDocument(pdf)
        document[0].render(scale=1.3 * factor).to_pil().convert("RGB").save(file)
        document.close()
    _fewer_colours(file)
    return file


_PICTURES: dict[str, Callable[[Program], None]] = {
    "ask": _ask,
    "heard": _heard,
    "old-and-new": _old_and_new,
    "photo-bench": _photo_bench,
    "under-watch": _go("Under Watch"),
    "its-back": _go("It's Back"),
    "monday-book": _go("Monday Book"),
    "map-job": _whole_pair,
    "map-bench": _photo_bench,
}


def main() -> None:
    """Make a demo shop in a folder of its own, or use the one that was named, and draw."""
    asked = argparse.ArgumentParser(prog="demo_shop.pictures")
    asked.add_argument("shop", nargs="?", type=Path, help="a demo shop made for these pictures")
    asked.add_argument("names", nargs="*", help="only these pictures")
    asked.add_argument("--look", choices=LOOKS, help="in this process, in this look alone")
    asked.add_argument("--factor", type=int, default=1)
    said = asked.parse_args()
    drawn = (*_PICTURES, SHEET)
    if unknown := set(said.names) - set(drawn):
        asked.error(f"no picture is called {min(unknown)}; there are {', '.join(drawn)}")
    names = said.names or drawn
    shop = said.shop or _new_shop()
    if said.look is None:
        draw_all(shop, names)
        return
    for file in _draw(shop, names, said.look, said.factor):
        sys.stdout.write(f"{file}\n")


def _new_shop() -> Path:
    from demo_shop.build import build_demo

    shop = Path(tempfile.mkdtemp()) / "demo-shop"
    for _ in build_demo(shop, NOW):
        pass
    return shop


if __name__ == "__main__":
    main()
