"""What stands above every place: a car is here, find, and who works at this desk.

In the demo shop one's own is one press away.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QPushButton

from desktop_app.commands.demo import is_demo
from desktop_app.language import tr
from desktop_app.repair_jobs.screen.who_is_here import WhoIsHere
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.keys import press_by
from desktop_app.shop_window.main_window import MainWindow
from desktop_app.shop_window.off_where_shut import off_where_shut
from desktop_app.shop_window.saved_again import SavedAgain
from desktop_app.shop_window.texts import tooltip


def stand_above(
    window: MainWindow,
    desk: Desk,
    take_in: Callable[[], object],
    find: Callable[[], object],
    ask_which: Callable[[], object],
) -> None:
    """Put it there.

    `take_in` begins with a car, `find` goes to the search field, `ask_which` leads to another shop.
    """
    if is_demo(desk.record.folder):
        own = QPushButton(tr("Your own shop…"))
        own.setToolTip(tooltip(tr("Everything in this shop is invented: it is there to be tried")))
        own.clicked.connect(ask_which)
        window.add_to_top(own)
    here = QPushButton(tr("A car is here"))
    here.setObjectName("next")
    press_by(here, "Ctrl+N")
    here.clicked.connect(take_in)
    off_where_shut(desk, here)
    search = QPushButton(tr("Find"))
    press_by(search, "Ctrl+F")
    search.setAccessibleName(tr("Find: to the search field"))
    search.clicked.connect(find)
    for button in (here, search):
        window.add_to_top(button)
        button.show()  # not with the next layout: keys typed meanwhile would find it hidden
    window.add_to_top(WhoIsHere(desk))
    SavedAgain(desk, window)
