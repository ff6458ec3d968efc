"""The photos of a pair: by view, old beside new, with a tray for each side."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import marked, tr
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.part_photos.screen.dropped import may_hold_photos
from desktop_app.part_photos.screen.locked_views import LockedViews
from desktop_app.part_photos.screen.photo_tray import PhotoTray
from desktop_app.part_photos.signs import SIDE_NAMES, SIDE_SIGNS
from desktop_app.part_photos.stored_reading import photos_by_id
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.phone_photo_actions import put_dropped
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.screen.phone_of_pair import take_by_phone
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.copied_by_drop import take_a_copy
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.off_where_shut import off_where_shut
from desktop_app.shop_window.texts import plain_label, tooltip

ANY_VIEW = marked("whole part")
WHAT_FOR = tr("Measure in these photos, and lay the new part's photo over the old one's.")
BY_PHONE = tr("Take photos of this part, in this view, with a phone on the shop's Wi-Fi.")
DROP_IT = tr("No photo of the {} here yet. Click to choose one, or drop it here.")
NO_PHOTO = tr("Put a photo to one of the parts first.")


class PairPhotos(QWidget):
    """A button for each view, both photos side by side once there is one, a tray for each side.

    What is dropped beside a tray is for the side that it is dropped on: removed left, new right.
    `bench_wanted` carries the pair and the photo of the removed part and of the replacement that
    are shown (None where there is none), to measure in.
    """

    bench_wanted = Signal(int, object, object)

    def __init__(self, desk: Desk, pair_id: int, kind: PartKind) -> None:
        super().__init__()
        self.setAcceptDrops(True)
        self._desk = desk
        self._pair_id = pair_id
        self._kind, self._name = kind, kind.name
        self._pair: PairView | None = None
        self._kept: dict[int, KeptPhoto] = {}
        self._views: list[str] = []
        self._known = kind.views or (ANY_VIEW,)
        self._view = self._known[0]
        self._group = QButtonGroup(self)
        self._row_box = QWidget()
        self._row = FlowRow(self._row_box)
        self._stage: LockedViews | None = None
        self._on_stage: dict[Side, KeptPhoto | None] = {}
        self._bench = QPushButton(tr("Photo bench"))
        self._bench.setAccessibleName(
            tr("Photo bench: measure in these photos, {name}", name=kind.name)
        )
        self._bench.clicked.connect(self._want_bench)
        self._outs: dict[Side, QPushButton] = {}
        self._trays = {side: self._tray(side) for side in SIDES}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        above = QHBoxLayout()
        above.addWidget(self._row_box, 1)
        above.addWidget(self._bench, 0, Qt.AlignmentFlag.AlignTop)
        self._column.addLayout(above)
        trays = QHBoxLayout()
        for side, tray in self._trays.items():
            half = QVBoxLayout()
            half.addWidget(plain_label(f"{SIDE_SIGNS[side]} {SIDE_NAMES[side]}"))
            half.addWidget(tray)
            out = QPushButton(tr("Take out of this view"))
            out.setAccessibleName(
                tr(
                    "Take the chosen photo out of this view, {side}, {name}",
                    side=tr(side),
                    name=kind.name,
                )
            )
            out.setProperty("side", side)
            out.clicked.connect(self._take_out)
            out.hide()
            self._outs[side] = out
            half.addWidget(out, 0, Qt.AlignmentFlag.AlignLeft)
            half.addStretch(1)
            trays.addLayout(half, 1)
        self._column.addLayout(trays)

    def show_photos(self, pair: PairView) -> None:
        """Show the photos of the pair."""
        before = self._pair
        self._pair = pair
        if before is not None and before.photos == pair.photos:
            return
        self._kept = self._desk.ask(photos_by_id, [p.photo_id for p in pair.photos]) or {}
        self._show_views()
        self._show_trays()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if self._pair is not None and may_hold_photos(event.mimeData()):
            take_a_copy(event)

    def dropEvent(self, event: QDropEvent) -> None:
        left = event.position().x() < self.width() / 2
        self._trays["removed" if left else "replacement"].dropEvent(event)

    def _show_views(self) -> None:
        assert self._pair is not None
        views = list(dict.fromkeys((*self._known, *(p.view for p in self._pair.photos))))
        if views != self._views:
            self._views = views
            self._row.clear()
            for view in views:
                button = QPushButton()
                button.setCheckable(True)
                button.setProperty("view", view)
                button.setAccessibleName(tr("view {view}, {name}", view=tr(view), name=self._name))
                button.clicked.connect(self._choose_view)
                self._group.addButton(button)
                self._row.addWidget(button)
        for choice in self._group.buttons():
            view = str(choice.property("view"))
            there = "".join(SIDE_SIGNS[s] for s in SIDES if self._pair.photo(s, view))
            choice.setText(f"{tr(view)}  {there}".rstrip())
            choice.setChecked(view == self._view)
        self._row_box.updateGeometry()

    def _show_trays(self) -> None:
        assert self._pair is not None
        for side, tray in self._trays.items():
            here = [
                self._kept[one.photo_id]
                for one in self._pair.photos
                if one.side == side and one.view == self._view and one.photo_id in self._kept
            ]
            tray.show_photos(self._pair.job_id, here)
            self._outs[side].setVisible(bool(here))
        self._show_stage()

    @Slot()
    def _show_stage(self) -> None:
        """Show the chosen photo of each side, or the newest one."""
        shown = self._on_stage
        for side, tray in self._trays.items():
            photos = tray.photos()
            shown[side] = tray.chosen_photo() or (photos[-1] if photos else None)
        there = any(shown.values())
        self._bench.setEnabled(there)
        self._bench.setToolTip(tooltip(WHAT_FOR if there else NO_PHOTO))
        if self._stage is None and any(shown.values()):
            self._stage = LockedViews(self._desk, empty=DROP_IT)
            self._column.addWidget(self._stage)  # below: it pushes away nothing that is pressed
            self._stage.removed.photo_wanted.connect(self._trays["removed"].choose_files)
            self._stage.replacement.photo_wanted.connect(self._trays["replacement"].choose_files)
        if self._stage is not None:
            self._stage.setVisible(any(shown.values()))
            self._stage.show_pair(shown["removed"], shown["replacement"])

    def _tray(self, side: Side) -> PhotoTray:
        def put_here(record: ShopRecord, _job_id: int, taken: Sequence[PhotoTaken]) -> Done:
            return put_dropped(record, self._pair_id, taken, side, self._view)

        name = tr("photos of the {said}, {name}", said=SIDE_NAMES[side], name=self._name)
        tray = PhotoTray(self._desk, name, add=put_here)
        tray.setProperty("side", side)
        tray.photo_chosen.connect(self._show_stage)
        phone = QPushButton(tr("From a phone…"))
        phone.setAccessibleName(
            tr("From a phone: photos of the {said}, {name}", said=SIDE_NAMES[side], name=self._name)
        )
        phone.setToolTip(tooltip(BY_PHONE))
        phone.setProperty("side", side)
        phone.clicked.connect(self._by_phone)
        off_where_shut(self._desk, phone)
        tray.add_way(phone)
        return tray

    @Slot()
    def _take_out(self) -> None:
        side: Side = self.sender().property("side")
        tray = self._trays[side]
        chosen = tray.chosen_photo() or (tray.photos()[-1] if tray.photos() else None)
        for one in self._pair.photos if self._pair and chosen else ():
            if (one.side, one.view, one.photo_id) == (side, self._view, chosen and chosen.id):
                self._desk.do(actions.take_from_pair, one.link_id)

    @Slot()
    def _by_phone(self) -> None:
        """Let a phone take photos of this side in this view, and show what it has to open."""
        side: Side = self.sender().property("side")
        if self._pair is not None:
            take_by_phone(self, self._desk, self._pair, self._kind, self._views, side, self._view)

    @Slot()
    def _want_bench(self) -> None:
        old, new = (shown.id if shown else None for shown in map(self._on_stage.get, SIDES))
        self.bench_wanted.emit(self._pair_id, old, new)

    @Slot()
    def _choose_view(self) -> None:
        self._view = str(self.sender().property("view"))
        self._show_views()
        self._show_trays()
