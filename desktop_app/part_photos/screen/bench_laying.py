"""How the two photos of a pair lie on each other: asked for, found beside the window, kept."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal, Slot
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.overlay.align import align
from desktop_app.part_photos.overlay.alignment import Alignment
from desktop_app.part_photos.overlay.difference import Difference, differences
from desktop_app.part_photos.overlay.not_compared import NotCompared, not_compared
from desktop_app.part_photos.overlay.same_laying import is_same_laying
from desktop_app.part_photos.overlay_actions import forget_overlay, keep_overlay, show_on_sheet
from desktop_app.part_photos.screen.bench_photo import BenchPhoto
from desktop_app.part_photos.signs import SIDE_NAMES
from desktop_app.part_photos.stored_marks import KeptOverlay
from desktop_app.part_photos.stored_overlays import readable_overlay
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble
from desktop_app.shop_window.desk import Desk

Clicks = tuple[tuple[Pixel, Pixel], ...]
OPENING = tr("One moment: the photos are being opened.")
WORKING = tr("Laying the new photo on the old one …")
GONE = tr(
    "The photos don't lie on each other any more. Lay them on each other again, or click points."
)
BROKEN = tr(
    "How the photos lie on each other is damaged in the record. Lay them on each other "
    "again, or take them apart."
)
FAILED = tr("Laying the photos on each other did not work. Nothing was changed.")
OTHERWISE = tr(
    "Where the parts differ is not shown: the scale of a photo, or the program, has "
    "changed since they were laid on each other. Lay them on each other again."
)


@dataclass(frozen=True, slots=True)
class _Wanted:
    """A height in mm (None where nobody says one) and clicks; `keep` where it was asked for."""

    height: float | None
    clicks: Clicks
    keep: bool


@dataclass(frozen=True, slots=True, eq=False)
class Compared:
    """An alignment with where the parts differ and what was left out.

    `scales` are those it rests on.
    """

    alignment: Alignment
    differences: tuple[Difference, ...]
    not_compared: tuple[NotCompared, ...]
    wanted: _Wanted
    scales: tuple[object, ...]


class Laying(QObject):
    """Works beside the window; only what a person asked for is kept, and only that is shown."""

    changed = Signal()

    def __init__(self, desk: Desk, photos: Mapping[str, BenchPhoto], parent: QObject) -> None:
        super().__init__(parent)
        self.kept: KeptOverlay | None = None
        self.broken = False  # it is kept, but can't be read
        self.compared: Compared | None = None  # never other than what is kept
        self.words = ""
        self._desk, self._photos = desk, photos
        self._wanted: _Wanted | None = None
        self._running = False
        self._looked: tuple[object, ...] = ()  # looking twice for the same thing finds no more
        self._in_vain: tuple[object, ...] = ()  # what was looked for and not found, and why
        self._why_in_vain = ""
        for photo in photos.values():
            photo.news.connect(self._hear_photo)

    def read(self) -> None:
        """Read how the photos lie on each other, as it is kept now."""
        if len(self._photos) < 2:
            return
        was_kept = self.kept is not None or self.broken
        found = self._desk.ask(readable_overlay, *self._ids())
        self.broken = isinstance(found, ShopDamaged)
        self.kept = found if isinstance(found, KeptOverlay) else None
        if self.compared is not None and not self._is_kept(self.compared):
            self._let_go()
        if self.kept is not None:
            self.words = WORKING if self._running and self._wanted else self._said_kept()
        elif self.broken:
            self.words = BROKEN
        elif was_kept:
            self._wanted = None  # taken back: not to be laid anew by itself
            self.words = GONE
        self.changed.emit()

    def lay(self, height: float | None, clicks: Clicks) -> None:
        """Lay them on each other with the outline this high, in mm, and keep that."""
        self._looked = ()
        self._want(_Wanted(height or None, clicks, keep=True))

    def look(self) -> None:
        """Find the outlines of what is kept, unless they are there; nothing is written."""
        kept = self.kept
        if kept is None or self.compared is not None or self._wanted is not None:
            return
        there = self._there()
        if there != self._looked:
            self._looked = there
            self._want(_Wanted(kept.height_mm or None, kept.clicks, keep=False))

    def show_on_sheet(self, shown: bool) -> bool:
        """Let the comparison sheet show it, or not; False where that was refused."""
        if self.kept is None:
            return False
        return self._desk.do(show_on_sheet, *self._ids(), shown) is not None

    def take_apart(self) -> None:
        """Keep no longer how they lie on each other."""
        self._desk.do(forget_overlay, *self._ids())

    def _want(self, wanted: _Wanted) -> None:
        self._wanted = wanted
        self._start()

    def _start(self) -> None:
        wanted = self._wanted
        if wanted is None or self._running or len(self._photos) < 2:
            return
        old, new = self._photos["removed"], self._photos["replacement"]
        if old.pixels is None or new.pixels is None or old.looking or new.looking:
            why = self._why_not_open()
            self.words = why or OPENING
            if why:
                self._wanted = None
                self._note_in_vain(why)
            self.changed.emit()
            return
        there = (old.pixels, new.pixels, old.plane, new.plane)
        more = (wanted.height, wanted.clicks or None, _print_in(old), _print_in(new))
        scales = self._scales()

        def work() -> Compared:
            found = align(*there, *more)
            return Compared(found, differences(found), not_compared(found), wanted, scales)

        def guarded() -> Compared | tuple[_Wanted, ShopTrouble]:
            try:
                return work()
            except ShopTrouble as trouble:
                return wanted, trouble

        self._running = True
        self.words = WORKING
        errand = self._desk.errands.run(tr("Laying one photo on the other"), guarded, self._arrived)
        errand.failed.connect(self._failed)
        self.changed.emit()

    def _arrived(self, result: Compared | tuple[_Wanted, ShopTrouble]) -> None:
        if not isValid(self):
            return
        self._running = False
        wanted = result.wanted if isinstance(result, Compared) else result[0]
        stale = isinstance(result, Compared) and result.scales != self._scales()
        if wanted is not self._wanted or stale:
            self.words = self._said_kept() if self.kept is not None else GONE
            self._start()  # asked otherwise meanwhile, or not at all any more
            self.changed.emit()
            return
        self._wanted = None
        self.words = self._said(result)
        self.changed.emit()

    def _said(self, result: Compared | tuple[_Wanted, ShopTrouble]) -> str:
        """Keep what came where that was asked for; return what there is to say."""
        wanted = result.wanted if isinstance(result, Compared) else result[0]
        if self.kept is not None and isinstance(result, Compared) and self._is_kept(result):
            self.compared = result
            return self.kept.why
        if not wanted.keep:
            self._note_in_vain(OTHERWISE)
            return self._said_kept()
        if not isinstance(result, Compared):
            return self._refused(f"◌  {result[1].sentence()}")
        if not result.alignment.aligned:
            why = tr("These can't be aligned. {why}", why=result.alignment.why)
            return self._refused(f"◌  {why}")
        self.compared = None
        asked = (wanted.height, wanted.clicks)
        self._wanted = wanted  # nothing else is looked for while it is being kept
        done = self._desk.do(keep_overlay, *self._ids(), result.alignment, *asked)
        self._wanted = None
        if done is None:
            return self._still(tr("It was not kept."))
        self.read()
        self.compared = result
        return self._said_kept()

    def _refused(self, why: str) -> str:
        """Return what is said of a laying that came to nothing; it is not tried again by itself."""
        words = self._still(why)
        if self.compared is None:
            self._looked = self._there()
            self._note_in_vain(words)
        return words

    def _said_kept(self) -> str:
        """Return how the photos lie, and before it why the parts are not compared."""
        in_vain = self.compared is None and self._in_vain == self._there()
        kept = self.kept.why if self.kept is not None else ""
        return " ".join(part for part in (self._why_in_vain if in_vain else "", kept) if part)

    def _note_in_vain(self, why: str) -> None:
        self._in_vain, self._why_in_vain = self._there(), why

    def _there(self) -> tuple[object, ...]:
        """Return all that decides whether what is kept can be found again."""
        kept = self.kept
        how = () if kept is None else (kept.height_mm, kept.clicks, kept.transform)
        opened = tuple(photo.pixels is not None for photo in self._photos.values())
        return (*how, self._scales(), opened)

    def _let_go(self) -> None:
        """Show no comparison any more; it may be looked for anew."""
        self.compared, self._looked = None, ()

    def _why_not_open(self) -> str:
        """Return which photo can't be opened, and why; "" where both are there or will be."""
        for side, part in SIDE_NAMES.items():
            why = self._photos[side].why_not_open()
            if why:
                words = tr("The photo of the {part} can't be opened. {why}", part=part, why=why)
                return f"◌  {words}"
        return ""

    def _still(self, words: str) -> str:
        """Say after these words what is shown all the same."""
        before = tr("Shown is how they lay on each other before.")
        return words if self.kept is None else f"{words} {before}"

    def _is_kept(self, one: Compared) -> bool:
        """Tell whether this is what is kept: same height, same clicks, same place."""
        kept, moved = self.kept, one.alignment.transform
        if kept is None or moved is None:
            return False
        asked = (one.wanted.height, one.wanted.clicks)
        new = self._photos["replacement"].photo
        matrix = tuple(tuple(float(value) for value in line) for line in moved)
        same = is_same_laying(kept.transform, matrix, (new.width, new.height))
        return asked == (kept.height_mm or None, kept.clicks) and same

    @Slot(object)
    def _failed(self, _trouble: object) -> None:
        self._running, self._wanted = False, None
        self.words = f"◌  {FAILED}"
        self.changed.emit()

    @Slot()
    def _hear_photo(self) -> None:
        if self.compared is not None and self.compared.scales != self._scales():
            self._let_go()  # its sizes rest on a scale that is another one now
            if self.kept is not None:
                self.words = self._said_kept()
        self._start()
        self.changed.emit()

    def _ids(self) -> tuple[int, int]:
        return self._photos["removed"].photo.id, self._photos["replacement"].photo.id

    def _scales(self) -> tuple[object, ...]:
        return tuple(_figures(self._photos[side].plane) for side in ("removed", "replacement"))


def _print_in(photo: BenchPhoto) -> CardLayout | None:
    """Return the card that gives a photo its scale, as large as it was printed."""
    if photo.card is None or photo.kept is None:
        return None
    return photo.card.printed(photo.kept.card_scale)


def _figures(plane: PlaneScale | None) -> tuple[object, ...]:
    """Return what tells one scale from another."""
    if plane is None:
        return ()
    spread = tuple(float(value) for value in plane.covariance.ravel())
    return (plane.source, *map(float, plane.theta), plane.print_u, plane.flat_u_mm, *spread)
