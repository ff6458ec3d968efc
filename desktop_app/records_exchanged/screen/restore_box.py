"""Bringing a backup back: one is chosen, what it holds is said, it comes into a new folder."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QListWidget, QPushButton

from desktop_app.language import tr
from desktop_app.records_exchanged.screen.long_work_box import LongWorkBox
from desktop_app.records_exchanged.screen.new_name import new_name
from desktop_app.records_exchanged.screen.telling import RunsErrands, Tell, walked
from desktop_app.shop_record.backups.backups_found import BackupFound, backups_found, look_at
from desktop_app.shop_record.backups.restore import Restored, restore_backup
from desktop_app.shop_record.backups.restore_drill import Drill
from desktop_app.shop_record.counted_words import entries_counted, photos_counted
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.texts import plain_label

_WHAT = tr(
    "A backup comes back into a new folder, as a shop of its own: every byte is held "
    "against its checksum first. Nothing that is there is written over, and this shop "
    "stays as it is."
)
_FILES = tr("Backups (*.zip manifest.json);;All files (*)")
_NONE = tr("No backup was found. If you have one on another disk, press “Another backup…”.")

_UNCHOSEN = tr("Choose a backup first: in the list, or with “Another backup…”.")


@dataclass(frozen=True, slots=True)
class BackupsToShow:
    """Where generations are looked for, and what is known of the monthly trial."""

    folders: Sequence[Path]
    drill: Drill | None = None


class RestoreBox(LongWorkBox):
    """The backups within reach in a list; `open_wanted` names the folder of a shop that is back.

    `known` says, beside the window, where to look; `now` is the moment by the shop's clock.
    """

    open_wanted = Signal(object)  # Path

    def __init__(
        self, host: RunsErrands, known: Callable[[], BackupsToShow], now: Callable[[], datetime]
    ) -> None:
        press = tr("Bring it back into a new folder…")
        super().__init__(
            host, tr("Bring a backup back"), _WHAT, press, tr("bringing a backup back")
        )
        self._known, self._now = known, now
        self._folder = Path.home()
        self._back: Path | None = None
        self._shown: list[BackupFound] = []
        self._drill = Drill()
        self._list = QListWidget()
        self._list.setAccessibleName(tr("The backups of this shop"))
        self._list.setWordWrap(True)
        self._list.setMinimumHeight(6 * self.fontMetrics().height())
        self._list.currentRowChanged.connect(self._chosen)
        self._holds = plain_label("", wrap=True)
        self._trial = plain_label("", "quiet", wrap=True)
        self._other = QPushButton(tr("Another backup…"))
        self._other.setAccessibleName(
            tr("Choose another backup: a file, or the manifest in a folder")
        )
        self._other.clicked.connect(self._choose)
        self._open = QPushButton(tr("Open it"))
        self._open.setObjectName("next")
        self._open.setAccessibleName(tr("Open the shop that was brought back"))
        self._open.clicked.connect(self._press_open)
        self._lay_out()

    def _lay_out(self) -> None:
        at = self.column.indexOf(self._begin)
        buttons = QHBoxLayout()
        buttons.addWidget(self._other)
        buttons.addWidget(self._begin)
        buttons.addStretch(1)
        for widget in (self._trial, self._list, self._holds):
            self.column.insertWidget(at, widget)
            at += 1
        self.column.insertLayout(at, buttons)
        self.column.addWidget(self._open, alignment=Qt.AlignmentFlag.AlignLeft)
        self._allow()
        for hidden in (self._holds, self._trial, self._open):
            hidden.hide()

    def look(self) -> None:
        """Look which backups there are, beside the window; what is chosen stays chosen."""

        def work() -> tuple[BackupsToShow, list[BackupFound]]:
            known = self._known()
            return known, backups_found(known.folders)

        self._host.errands.run(tr("Looking for backups"), work, self._found)

    @Slot(object)
    def _found(self, came: tuple[BackupsToShow, list[BackupFound]]) -> None:
        known, found = came
        others = [one for one in self._shown if one.place not in {each.place for each in found}]
        kept = self._chosen_one()
        if known.drill is not None:
            self._drill = known.drill
            self._trial.setText(known.drill.words())
            self._trial.show()
        self._show([*(one for one in others if one.place.exists()), *found], kept)
        if not self._shown:
            self._say(_NONE)

    def _show(self, found: list[BackupFound], chosen: BackupFound | None) -> None:
        self._shown = found
        self._list.blockSignals(True)
        self._list.clear()
        self._list.addItems([one.line(self._now()) for one in found])
        self._list.blockSignals(False)
        self._list.setVisible(bool(found))
        places = [one.place for one in found]
        if chosen is not None and chosen.place in places:
            self._list.setCurrentRow(places.index(chosen.place))
        self._chosen()

    def _chosen_one(self) -> BackupFound | None:
        row = self._list.currentRow()
        return self._shown[row] if 0 <= row < len(self._shown) else None

    def _allow(self) -> None:
        super()._allow()
        off_because(self._other, super()._why_not())

    def _why_not(self) -> str:
        none = "" if self._chosen_one() is not None else _UNCHOSEN
        return super()._why_not() or none

    @Slot()
    def _chosen(self) -> None:
        one = self._chosen_one()
        self._allow()
        self._holds.setText("\n".join(one.lines(self._drill)) if one is not None else "")
        self._holds.setVisible(one is not None)

    @Slot()
    def _choose(self) -> None:
        title = tr("A backup: its file, or the manifest in its folder")
        name, _ = QFileDialog.getOpenFileName(self, title, str(self._folder), _FILES)
        if not name or self._under_way is not None:
            return
        self._folder = Path(name).parent

        def work(_tell: Tell) -> BackupFound:
            return look_at(Path(name))

        self._start(tr("Looking at {file}", file=Path(name).name), work, self._looked_at)

    def _looked_at(self, one: BackupFound) -> None:
        self._over("")
        rest = [each for each in self._shown if each.place != one.place]
        self._show([one, *rest], one)

    @Slot()
    def _pressed(self) -> None:
        one = self._chosen_one()
        if one is None or self._under_way is not None:
            return
        title = tr("Where is the new folder of the shop to lie?")
        name = QFileDialog.getExistingDirectory(self, title, str(Path.home()))
        if not name:
            return
        to = _new_folder(Path(name), one)

        def work(tell: Tell) -> Restored:
            return walked(restore_backup(one.place, to, self._now()), tell)

        self._open.hide()
        self._start(tr("Bringing the shop back into {folder}", folder=to), work, self._restored)

    def _restored(self, back: Restored) -> None:
        said = back.manifest
        self._over(
            tr(
                "The shop is back in {folder}, as it was on {made_at}: {photos} and {entries}, "
                "all whole. What was done since is not in it.",
                folder=back.folder,
                made_at=said.made_at[:16].replace("T", " "),
                photos=photos_counted(said.photos()),
                entries=entries_counted(said.entries),
            )
        )
        self._back = back.folder
        self._open.show()
        self._open.setFocus()

    def _over(self, words: str) -> None:
        super()._over(words)
        self._said.setVisible(bool(words))
        self._chosen()

    def _say(self, words: str) -> None:
        self._said.setText(words)
        self._said.show()

    @Slot()
    def _press_open(self) -> None:
        if self._back is not None:
            self.open_wanted.emit(self._back)


def _new_folder(chosen: Path, backup: BackupFound) -> Path:
    """Return an empty folder as it was chosen, else a new one inside it."""
    try:
        if not any(chosen.iterdir()):
            return chosen
    except OSError:
        return chosen  # the restore says what is wrong with it
    return new_name(chosen, f"shop-of-{backup.manifest.made_at[:10]}")
