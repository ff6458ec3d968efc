"""The one place where the pieces are put together: the window, the record, the places."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QApplication, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.in_sight import held_in_sight
from desktop_app.shop_window.keys_offered import offer_keys
from desktop_app.shop_window.last_resort import LastResort, keep_log
from desktop_app.shop_window.look import dress
from desktop_app.shop_window.main_window import MainWindow
from desktop_app.shop_window.window_memory import window_memory

if TYPE_CHECKING:
    from desktop_app.shop_record.record import Clock, ShopRecord
    from desktop_app.shop_window.desk import Desk
    from desktop_app.shop_window.errands import Errands
    from desktop_app.shop_window.others_heard import OthersHeard
    from desktop_app.shop_window.server_door import ServerDoor
    from desktop_app.shop_window.server_page import Wanted
    from desktop_app.shop_window.unsent import Unsent

WELCOME, BACKUP = tr("Which shop?"), tr("From a Backup")
NEVER_SEEN_MS = 3000
LOOK_AFTER_MS = 1_000


class Program(QObject):
    """The window, and the shop that is open in it; the frame is painted before the record is read.

    `clock` is handed on to the record; tests hand in their own. The day's backup is made so many
    milliseconds after the shop was opened, where any are said; before it is looked whether the
    shop is whole. With `ahead` the places are made before they are wanted; with `ask` it is asked
    which shop, whichever was open last.
    """

    opened = Signal(object)  # Path: the folder of the shop that is open in the window now

    def __init__(
        self,
        folder: Path | None,
        clock: Clock | None = None,
        backup_after_ms: int | None = None,
        *,
        ahead: bool = False,
        ask: bool = False,
    ) -> None:
        super().__init__()
        self.window = MainWindow(window_memory())
        self.desk: Desk | None = None
        self._folder = folder
        self._clock = clock
        self._backup_after_ms = backup_after_ms
        self._ahead, self._ask = ahead, ask
        self._making: Errands | None = None
        self._others: OthersHeard | None = None
        self._door: ServerDoor | None = None
        self._seen: int | None = None  # the last entry of the history before the pages read any
        self._closed = False
        self._other: Program | None = None  # the window that went on with another shop
        self._refused: Path | None = None  # the folder of a shop that could not be opened
        self._close_log: Callable[[], None] = lambda: None
        offer_keys(self.window)
        self.last_resort = LastResort(self)
        self.last_resort.happened.connect(self.window.strip.tell)
        self.window.shop_wanted.connect(self._go_on_with)
        self.window.strip.way_back_wanted.connect(self._from_backup)

    def start(self) -> None:
        """Show the frame, then open the shop as soon as it is painted."""
        self.window.painted.connect(self.open_shop)
        QTimer.singleShot(NEVER_SEEN_MS, self, self._open_unseen)
        self.window.show()

    @Slot()
    def _open_unseen(self) -> None:
        """Open the shop in a window that was started out of sight and is not painted."""
        if self.desk is None and not self.window.has_place(WELCOME) and not self.is_connecting():
            self.open_shop()

    @Slot()
    def come_forward(self) -> None:
        """Bring the window to the front, where the system lets a program do that."""
        window = self._other.window if self._other is not None else self.window
        window.setWindowState(window.windowState() & ~Qt.WindowState.WindowMinimized)
        window.raise_()
        window.activateWindow()

    def open_at_last(self) -> Path | None:
        """Return the folder of the shop that is open in the last window; None before one is."""
        if self._other is not None:
            return self._other.open_at_last()
        return None if self.desk is None else self.desk.record.folder

    def is_connecting(self) -> bool:
        """Tell whether a server is waited for."""
        return self._door is not None and self._door.busy()

    @Slot()
    def open_shop(self) -> None:
        """Open the shop that was named, or the last one; else show how to begin."""
        from desktop_app.commands.shop_place import last_own_shop

        folder = self._folder or (None if self._ask else last_own_shop())
        if folder is None:
            self._welcome()
            return
        self._open(folder)

    @Slot(object)
    def _open(self, folder: Path) -> None:
        from desktop_app.commands import shop_place
        from desktop_app.shop_record.record_name import FILE_NAME, is_server_folder
        from desktop_app.shop_record.upgrade import is_older

        if is_server_folder(folder):
            self._refused = folder
            self._to_server().open_folder(folder)
            return
        if is_older(folder / FILE_NAME):
            self._update(folder)
            return
        try:
            record = shop_place.open_place(folder, self._clock or shop_place.now)
        except ShopTrouble as trouble:
            self._welcome_after(folder)
            self.window.strip.tell(trouble)
            return
        self._go_in(record)

    @Slot(object)
    def _go_in(self, record: ShopRecord) -> None:
        """Furnish the window with a shop that is open."""
        from desktop_app.commands import shop_place
        from desktop_app.places import Places
        from desktop_app.shop_record.past.clock_behind import clock_behind
        from desktop_app.shop_record.past.history import last_number
        from desktop_app.shop_window.garbage import watch_garbage

        self._close_log = keep_log(record.folder)
        shop_place.remember(record.folder)
        self.opened.emit(record.folder)
        if self.window.has_place(WELCOME):
            self.window.strip.shop_opened()
        places = Places(self.window, record, ahead=self._ahead)
        self.desk = places.desk
        self._seen = self.desk.ask(last_number)
        self.desk.changed.connect(self._dress_again)
        self._dress()
        self.window.take_place_away(WELCOME)
        self.window.take_place_away(BACKUP)
        places.left.go_in(is_new=self._is_to_be_set_up(self.desk))
        watch_garbage(self)
        behind = self.desk.ask(clock_behind, self.desk.now())
        if behind is not None:
            self.window.strip.tell(behind)
        self._look_and_back_up(self.desk)

    def _is_to_be_set_up(self, desk: Desk) -> bool:
        """Tell whether it is known that nothing is written in a shop yet, wherever it was made."""
        from desktop_app.commands.demo import is_demo

        is_empty = self._seen == 0  # None where that could not be read
        return is_empty and not (desk.why_shut or is_demo(desk.record.folder))

    def _update(self, folder: Path) -> None:
        """Back an older shop up and bring its record to today's form, beside the window."""
        from desktop_app.commands import shop_place

        clock = self._clock or shop_place.now
        words = tr("Backing the shop up and bringing its record up to date")
        errand = self._beside().run(
            words,
            lambda: shop_place.open_place(folder, clock).close(),
            lambda _: self._open(folder),
        )
        errand.failed.connect(lambda _trouble: self._welcome_after(folder))

    def _to_server(self) -> ServerDoor:
        """Return the way to shops on a server."""
        from desktop_app.commands.shop_place import now, open_place
        from desktop_app.shop_window.server_door import ServerDoor

        if self._door is None:
            clock = self._clock or now
            self._door = ServerDoor(
                self.window,
                self._beside(),
                lambda folder: open_place(folder, clock),
                self._opened_there,
            )
            self._door.opened.connect(self._go_in)
            self._door.refused.connect(self._welcome)
        return self._door

    def _opened_there(self, wanted: Wanted) -> tuple[ShopRecord, bool | None]:
        """Open a shop on a server, or make it; beside the window."""
        from desktop_app.commands.server_place import open_wanted
        from desktop_app.commands.shop_place import now

        clock = self._clock or now
        return open_wanted(wanted.address, wanted.password, wanted.photos, clock, new=wanted.new)

    @Slot()
    def _show_server(self) -> None:
        self._to_server().show()

    def _welcome_after(self, refused: Path) -> None:
        self._refused = refused
        self._welcome()

    def _beside(self) -> Errands:
        """Return what runs while no shop is open."""
        from desktop_app.shop_window.errands import Errands

        if self._making is None:
            self._making = making = Errands(self)
            making.started.connect(self.window.strip.watch)
            making.over.connect(self.window.strip.leave)
            making.told.connect(self.window.strip.tell)
        return self._making

    def _look_and_back_up(self, desk: Desk) -> None:
        if self._backup_after_ms is None:
            return
        QTimer.singleShot(min(LOOK_AFTER_MS, self._backup_after_ms), self, self._hear_others)
        from desktop_app.commands.demo import is_demo
        from desktop_app.shop_window.daily_backup import DailyBackup
        from desktop_app.shop_window.first_look import FirstLook

        FirstLook(desk, min(LOOK_AFTER_MS, self._backup_after_ms))
        if not is_demo(desk.record.folder):  # an invented shop is made again
            DailyBackup(desk, self._backup_after_ms)

    @Slot()
    def _hear_others(self) -> None:
        from desktop_app.shop_window.drafts_left import forget_left
        from desktop_app.shop_window.others_heard import OthersHeard

        if self.desk is not None and self._others is None and not self._closed:
            self._others = OthersHeard(self.desk, self.window.pages, self._seen)
            self._show_unsent(self._others.unsent)
            forget_left(self.desk)

    def _show_unsent(self, unsent: Unsent) -> None:
        """Offer what was typed while the server was away, before this program was started."""
        from desktop_app.shop_window.unsent_page import NOT_SENT, UnsentPage

        texts = unsent.before()
        if not texts:
            return
        page = UnsentPage(texts)
        page.done.connect(unsent.forget_before)
        self.window.add_place(NOT_SENT, lambda: page, by_key=False)
        self.window.strip.tell(
            ShopTrouble(
                tr(
                    "Something was typed while the server was away, and not sent before "
                    "the program ended."
                ),
                kept=tr("It is kept on this computer."),
                do=tr("Look under “{place}” on the left.", place=NOT_SENT),
            )
        )

    @Slot(object)
    def _make(self, folder: Path) -> None:
        from desktop_app.commands import shop_place

        try:
            shop_place.new_place(folder, self._clock or shop_place.now).close()
        except ShopTrouble as trouble:
            self.window.strip.tell(trouble)
            return
        self._open(folder)

    @Slot()
    def _make_demo(self) -> None:
        from desktop_app.commands.demo import fill_steps
        from desktop_app.commands.shop_place import own_folder

        folder = own_folder() / "demo-shop"
        self._beside().run(tr("Making the demo shop"), lambda: fill_steps(folder), self._open)

    def _take_demo_away(self, folder: Path, gone: Callable[[Any], None]) -> None:
        from desktop_app.commands.demo import take_away

        self._beside().run(tr("Taking the demo shop away"), lambda: take_away(folder), gone)

    @Slot()
    def _welcome(self) -> None:
        from desktop_app.commands import demo, shop_place
        from desktop_app.shop_window.garbage import watch_garbage
        from desktop_app.shop_window.welcome_page import WelcomePage

        if self.window.has_place(WELCOME):
            return
        named = self._refused  # one that was open before is somewhere else now, and not to be made
        if named is not None and str(named.resolve()) == shop_place.last_shop():
            named = None
        page = WelcomePage(shop_place.shops_opened(), named, demo.is_demo)
        page.new_wanted.connect(self._make)
        page.open_wanted.connect(self._open)
        page.server_wanted.connect(self._show_server)
        page.demo_wanted.connect(self._make_demo)
        page.demo_unwanted.connect(lambda one: self._take_demo_away(one, page.take_off(one)))
        page.backup_wanted.connect(self._from_backup)
        self.window.add_place(WELCOME, lambda: page, by_key=False)
        self.window.go_to(WELCOME)
        watch_garbage(self)

    @Slot()
    def _from_backup(self) -> None:
        """Show where a backup comes back from; with a shop open its own place does that."""
        if self.desk is not None:
            return
        if not self.window.has_place(BACKUP):
            self.window.add_place(BACKUP, self._backup_page, by_key=False)
        self.window.go_to(BACKUP)

    def _backup_page(self) -> QWidget:
        from desktop_app.commands.shop_place import last_shop, now
        from desktop_app.records_exchanged.screen.restore_page import RestorePage
        from desktop_app.shop_record.backups.last_good import OWN_FOLDER

        last = self._refused or last_shop()
        folders = [Path(last) / OWN_FOLDER] if last else []
        page = RestorePage(self._beside(), folders, self._clock or now)
        page.open_wanted.connect(self._open)
        return page

    @Slot(object)
    def _go_on_with(self, folder: Path | None) -> None:
        """Open another shop in a window of its own, or ask there which; and close this one.

        Where something is typed here that is not kept, this window stays and says so.
        """
        other = self._other = Program(
            folder, self._clock, self._backup_after_ms, ahead=self._ahead, ask=folder is None
        )
        other.setParent(self)
        other.opened.connect(self.opened)
        self.last_resort.happened.connect(other.window.strip.tell)
        other.window.resize(self.window.size())
        other.start()
        if self.window.close():
            self._close_record()
            self.window.let_all_go()

    @Slot(object)
    def _dress_again(self, done: object) -> None:
        if "setting" in getattr(done, "touched", ()):
            self._name_window()
            QTimer.singleShot(0, self, self._dress)  # what goes with that deed is gone by then

    @Slot()
    def _dress(self) -> None:
        if self.desk is not None:
            rules = self.desk.rules
            app = QApplication.instance()
            assert isinstance(app, QApplication)
            with held_in_sight(app.focusWidget()):
                dress(app, rules.look, rules.text_size)
            self._name_window()

    def _name_window(self) -> None:
        if self.desk is not None:
            self.window.setWindowTitle(f"{self.desk.rules.shop_name} - Benchwitness")

    def close(self) -> None:
        """Close the window, the record and the log."""
        self.window.close()
        if self._door is not None:
            self._door.close()
        if self._making is not None:
            self._making.finish()
        self._close_record()
        if self._other is not None:
            self._other.close()
            self._other.window.deleteLater()  # here, and not in whatever thread looks for garbage

    def _close_record(self) -> None:
        self._closed = True
        if self._others is not None:
            self._others.stop()
        if self.desk is not None:
            self.desk.record.close()
        self._close_log()
        self._close_log = lambda: None
