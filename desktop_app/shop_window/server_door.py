"""The way to a shop on a server: connecting beside the window, and the page where it is refused."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from platformdirs import user_data_path
from PySide6.QtCore import QObject, Signal, Slot

from desktop_app.language import tr
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_folder import read_place
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.errands import Errands
from desktop_app.shop_window.main_window import MainWindow
from desktop_app.shop_window.server_page import ServerPage, Wanted
from desktop_app.shop_window.waited import Waited

if TYPE_CHECKING:
    from desktop_app.shop_record.record import ShopRecord

SERVER = tr("On a Server")
CONNECTING = tr("Connecting to the shop's server")
STOPPED = tr("Stopped. No shop was opened.")
KEPT = tr("The password is kept in this system's keyring.")
NOT_KEPT = tr(
    "This system has no keyring that can be used: the password is known till the "
    "program ends, and is asked for again then."
)

# Open the shop of a folder, or the one that is wanted; with it whether a password is in the keyring
# now, None where none was said. Both wait for the server and are called beside the window.
OpenFolder = Callable[[Path], "ShopRecord"]
OpenWanted = Callable[[Wanted], "tuple[ShopRecord, bool | None]"]
Came = "tuple[ShopRecord, bool | None]"


class ServerDoor(QObject):
    """Opens one shop at a time; `opened` gives its record, `refused` says that there is none."""

    opened = Signal(object)  # ShopRecord
    refused = Signal()

    def __init__(
        self, window: MainWindow, errands: Errands, folder: OpenFolder, wanted: OpenWanted
    ) -> None:
        super().__init__(window)
        self._window, self._errands = window, errands
        self._by_folder, self._by_wish = folder, wanted
        self._waited: Waited[tuple[ShopRecord, bool | None]] | None = None
        self._page: ServerPage | None = None

    def busy(self) -> bool:
        """Tell whether a shop is being opened."""
        return self._waited is not None

    def open_folder(self, folder: Path) -> None:
        """Open the shop on a server that a folder names."""
        try:
            address = read_place(folder).address
        except ShopTrouble as trouble:
            self._refuse(trouble, None)
            return
        self._open(lambda: (self._by_folder(folder), None), address)

    def show(self) -> None:
        """Show the page on which an address is typed."""
        if not self._window.has_place(SERVER):
            self._window.add_place(SERVER, self._shown, by_key=False)
        self._window.go_to(SERVER)

    def close(self) -> None:
        """Wait for nothing any more."""
        waited, self._waited = self._waited, None
        if waited is not None:
            waited.give_up()

    @Slot(object)
    def _ask(self, wanted: Wanted) -> None:
        self._open(lambda: self._by_wish(wanted), wanted.address)

    def _open(
        self, work: Callable[[], tuple[ShopRecord, bool | None]], address: ServerAddress
    ) -> None:
        if self._waited is not None:
            return
        waited = self._waited = Waited(work, lambda came: came[0].close())
        self._wait(True)
        errand = self._errands.run(
            CONNECTING, lambda: waited.steps(CONNECTING), lambda _: self._came(address)
        )
        errand.failed.connect(lambda trouble: self._failed(trouble, address))

    def _came(self, address: ServerAddress) -> None:
        waited, self._waited = self._waited, None
        if waited is None:
            return
        self._wait(False)
        try:
            record, kept = waited.take()
        except ShopTrouble as trouble:
            self._refuse(trouble, address)
            return
        if self._page is not None:
            self._page.forget_password()
            self._window.take_place_away(SERVER)
        self.opened.emit(record)
        if kept is not None:
            self._window.strip.tell(KEPT if kept else NOT_KEPT)

    def _failed(self, mistake: object, address: ServerAddress) -> None:
        self.close()
        self._wait(False)
        self._refuse(ShopTrouble(STOPPED) if mistake is None else None, address)

    def _refuse(self, trouble: ShopTrouble | None, address: ServerAddress | None) -> None:
        """Show the page with what is known, and what was refused beside its field."""
        self.refused.emit()
        self.show()
        if self._page is not None:
            if address is not None:
                self._page.show_address(address)
            if trouble is not None:
                self._page.refuse(trouble)

    def _wait(self, yes: bool) -> None:
        if self._page is not None:
            self._page.wait(yes)

    def _shown(self) -> ServerPage:
        folder = user_data_path("benchwitness", appauthor=False, ensure_exists=True)
        self._page = ServerPage(Drafts(folder))
        self._page.wanted.connect(self._ask)
        return self._page
