"""The program started: with its window on the screen, or drawn off screen into a picture."""

from __future__ import annotations

import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEventLoop, QTimer
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication

from desktop_app.language import tr
from desktop_app.program import Program
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window import started_anew
from desktop_app.shop_window.look import application, dress
from desktop_app.shop_window.own_language import speak_in_dialogs

if TYPE_CHECKING:
    from desktop_app.shop_window.desk import Desk
    from desktop_app.shop_window.main_window import MainWindow

_WAIT_MS, _MOST_WAITS = 600, 10  # before the window is drawn into a picture
BACKUP_AFTER_MS = 20_000  # what somebody opened the window for comes first


def open_window(folder: Path | None, trouble: ShopTrouble | None = None) -> int:
    """Open the window and stay until it is closed; one that has the shop open comes forward.

    `trouble` is what went wrong on the way here, to be told in the window.
    """
    from desktop_app.commands.shop_place import last_own_shop
    from desktop_app.shop_window.one_window import OneWindow, brought_forward

    app = _application()
    wanted = folder or last_own_shop()
    if wanted is not None and brought_forward(wanted):
        return 0
    program, one = Program(folder, backup_after_ms=BACKUP_AFTER_MS, ahead=True), OneWindow()
    program.opened.connect(one.hold_later)
    one.wanted.connect(program.come_forward)
    program.last_resort.install()
    if trouble is not None:
        program.window.strip.tell(trouble)
    program.start()
    status = app.exec()
    one.close()
    program.close()
    if not started_anew.is_wanted():
        return status
    from desktop_app.shop_record.own_program.own_start import start_anew

    return start_anew(program.open_at_last())


def draw_window(folder: Path, picture: Path) -> None:
    """Draw the window with a job of the shop off screen into a PNG."""
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    _keep = _application()
    program = Program(folder)
    program.last_resort.install()
    program.window.resize(1366, 900)
    program.window.show()
    program.open_shop()
    while program.is_connecting():
        _turn_for(_WAIT_MS)
    show_for_a_picture(program.window, program.desk)
    _let_it_come_to_rest(program)
    if not program.window.grab().save(str(picture)):
        raise ShopTrouble(tr("{file} cannot be written.", file=picture))
    program.close()


def show_for_a_picture(window: MainWindow, desk: Desk | None) -> None:
    """Open the newest finished job with photos, so that a picture of the window shows the work."""
    if desk is None:
        return
    from desktop_app.parts_compared.stored_pairs import job_to_show
    from desktop_app.places import Places

    found = desk.ask(job_to_show)
    places = desk.parent()
    if found is not None and isinstance(places, Places):
        places.open_job(found[0])


def _let_it_come_to_rest(program: Program) -> None:
    """Wait until what a page asks for a moment after it opened is there, at most some seconds."""
    for _ in range(_MOST_WAITS):
        _turn_for(_WAIT_MS)
        if program.desk is None or not program.desk.errands.busy():
            return


def _turn_for(milliseconds: int) -> None:
    loop = QEventLoop()
    QTimer.singleShot(milliseconds, loop.quit)
    loop.exec()


def _application() -> QApplication:
    app = QApplication.instance() or application(sys.argv)
    assert isinstance(app, QApplication)
    app.setApplicationName("Benchwitness")
    app.setDesktopFileName("benchwitness")
    app.setWindowIcon(QIcon(str(resource_path("icon", "benchwitness.png"))))
    dress(app)
    speak_in_dialogs(app)
    return app
