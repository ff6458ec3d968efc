"""The photo bench: both photos of a pair, the marks on them, one photo laid on the other."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QPushButton,
    QStackedLayout,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.part_photos.bench_readings import BenchReadings
from desktop_app.part_photos.drawing_words import START, next_common_step, next_step
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.mark_words import COMMON_POINTS, KNOWN_LENGTH, MarkTool
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.screen.bench_help import BenchHelp
from desktop_app.part_photos.screen.bench_opening import OpeningViews
from desktop_app.part_photos.screen.bench_overlay import OverlayPanel
from desktop_app.part_photos.screen.bench_photo import BenchPhoto
from desktop_app.part_photos.screen.bench_scale_line import ScaleLine
from desktop_app.part_photos.screen.bench_side_panel import SidePanel
from desktop_app.part_photos.screen.bench_stage import MOVES, BenchStage
from desktop_app.part_photos.screen.bench_tools import ToolsRow
from desktop_app.part_photos.screen.bench_work import BenchWork
from desktop_app.part_photos.screen.locked_views import LockedViews
from desktop_app.part_photos.signs import SIDE_NAMES, SIDE_SIGNS
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.in_sight import bring_up
from desktop_app.shop_window.look import larger
from desktop_app.shop_window.place_names import BENCH
from desktop_app.shop_window.tab_order import next_stop
from desktop_app.shop_window.texts import plain_label

_WITH_TITLE = 900  # screen pixels; below that the buttons of the head want the room


class PhotoBench(QWidget):
    """Opened for one photo of each side; either may be missing."""

    keys_said = (
        (tr("1 to 9"), tr("takes a tool of the photo bench")),
        (tr("Esc"), tr("lets go of the tool, or of the mark")),
    )

    done = Signal()

    def __init__(
        self,
        desk: Desk,
        old: KeptPhoto | None,
        new: KeptPhoto | None,
        readings: BenchReadings | None = None,
    ) -> None:
        super().__init__()
        self._desk, self._readings = desk, readings
        follow = readings.follow if readings is not None else None
        given = {"removed": old, "replacement": new}
        self._photos = {
            side: BenchPhoto(desk, photo, follow, self)
            for side, photo in given.items()
            if photo is not None
        }
        self._work = BenchWork(desk, self._photos, readings, self)
        self._chosen: int | None = None
        self._tool: MarkTool | None = None
        self._tools = ToolsRow(desk)
        self._views = LockedViews(desk, stage_type=BenchStage)
        self._overlay = OverlayPanel(desk, self._photos, self.stages(), self._work.usual_height)
        self._common: dict[str, tuple[Pixel, ...]] = {}
        self._scales = {
            side: ScaleLine(desk, SIDE_SIGNS[side], words, follow)
            for side, words in SIDE_NAMES.items()
        }
        self._help = BenchHelp()
        self._panel = SidePanel(desk, self._work, readings, self._scales.values())
        self._opening: OpeningViews | None = None
        self._views.setMinimumHeight(0)  # what is in them says it
        self._lay_out()
        self._wire()
        self._views.show_pair(old, new)
        for side, photo in self._photos.items():
            self._scales[side].show_photo(photo)
            photo.open()
        for side in given.keys() - self._photos.keys():
            self._scales[side].hide()
        self._work.read()
        self._open_views()
        self._overlay.read()

    def _open_views(self) -> None:
        opening = OpeningViews(self._photos, self.stages())
        for side in self._photos:
            there = [one for one in self._work.marks if self._work.side_of(one) == side]
            opening.begin(side, [self._work.now(one) for one in there])
        opening.card_came()
        self._opening = opening

    def stages(self) -> dict[str, BenchStage]:
        """Return the stage of each side."""
        found = {"removed": self._views.removed, "replacement": self._views.replacement}
        return {side: one for side, one in found.items() if isinstance(one, BenchStage)}

    def keep_draft(self) -> None:
        """Keep what was moved a moment ago."""
        self._work.flush()

    def came_here(self) -> None:
        """Show what is kept now, and the mark whose field holds something not accepted."""
        self._read_all()
        waiting = self._panel.not_accepted()
        if waiting is not None:
            self._choose(waiting)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        number = event.key() - Qt.Key.Key_0
        bare = not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if 1 <= number <= 9 and bare and self._pages.currentIndex() == 0:
            self._tools.take(number)
        elif event.key() != Qt.Key.Key_Escape or not self._give_up():
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_title()

    def _fit_title(self) -> None:
        self._title.setVisible(self.width() > _WITH_TITLE * larger(self))  # the rail names it too

    def changeEvent(self, event: QEvent) -> None:
        """Read again when the window comes to the front: another desk may have changed things."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._fit_title()
        if event.type() == QEvent.Type.ActivationChange and self.isActiveWindow():
            self._read_all()

    def focusNextPrevChild(self, onward: bool) -> bool:
        """Let Tab follow the bench as it is laid out."""
        there = next_stop(self, onward)
        if there is None:
            return super().focusNextPrevChild(onward)
        reason = Qt.FocusReason.TabFocusReason if onward else Qt.FocusReason.BacktabFocusReason
        there.setFocus(reason)
        bring_up(there, 0, 0)
        return True

    def _lay_out(self) -> None:
        self._title = plain_label(BENCH, "heading")
        back = QPushButton(tr("← Back to the pair"))
        back.clicked.connect(self._go_back)
        head = QHBoxLayout()
        head.addWidget(back, 0, Qt.AlignmentFlag.AlignTop)
        head.addWidget(self._title)
        head.addSpacing(12)
        head.addWidget(self._overlay.modes, 1)
        self._pages = QStackedLayout()
        self._pages.addWidget(self._views)
        self._pages.addWidget(self._overlay)
        main = QHBoxLayout()
        main.addLayout(self._pages, 2)
        main.addWidget(self._panel, 1)
        whole = QVBoxLayout(self)
        whole.addLayout(head)
        whole.addWidget(self._tools)
        whole.addLayout(main, 1)
        whole.addWidget(self._help)

    def _wire(self) -> None:
        self._tools.taken.connect(self._take_tool)
        self._panel.list.chosen.connect(self._choose)
        self._panel.list.opened.connect(self._go_to_mark)
        self._panel.list.unwanted.connect(self._work.remove)
        self._work.changed.connect(self._show_marks)
        self._work.said.connect(self._help.say)
        self._overlay.shown.connect(self._show_page)
        self._overlay.points_wanted.connect(self._ask_common)
        self._desk.changed.connect(self._hear)
        for side, stage in self.stages().items():
            stage.setProperty("side", side)
            stage.drawn.connect(self._drawn)
            stage.chose.connect(self._chosen_on_stage)
            stage.edited.connect(self._edited)
            stage.unwanted.connect(self._work.remove)
            stage.left.connect(self._work.flush)
            stage.went_on.connect(self._say_next)
            self._scales[side].setProperty("side", side)
            self._scales[side].points_wanted.connect(self._ask_points)
        for photo in self._photos.values():
            photo.news.connect(self._show_marks)
            photo.news.connect(self._look_at_card)

    # --- what is heard ---

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if done.touched & {"photo_scale", "printed_card", "setting"}:  # the unit is a setting
            for photo in self._photos.values():
                photo.read()
        if done.touched & {"mark", "photo_scale", "reading", "photo_reading", "setting"}:
            self._work.read()
        if "overlay" in done.touched:
            self._overlay.read()

    def _read_all(self) -> None:
        for photo in self._photos.values():
            photo.read()
        self._work.read()
        self._overlay.read()

    def _give_up(self) -> bool:
        """Give up the nearest thing: half-drawn points, else the tool, else the chosen mark."""
        if self._pages.currentIndex() != 0:
            return False
        stages = self.stages().values()
        if any(stage.give_up() for stage in stages):  # one at a time
            return True
        if any(stage.tool() is not None for stage in stages):
            self._put_tool_down()
            return True
        if self._chosen is None or not any(stage.hasFocus() for stage in stages):
            return False
        self._choose(None)
        return True

    @Slot(object)
    def _take_tool(self, tool: MarkTool | None) -> None:
        self._work.flush()
        if self._opening is not None:
            self._opening.leave_alone()  # a photo that moves under the mouse spoils a click
        self._tool = tool
        if self._common:
            self._common.clear()
            self._show_known()
        for line in self._scales.values():
            line.put_down()
        for stage in self.stages().values():
            stage.take_tool(tool)
        if tool is not None:
            self._choose_everywhere(None)
        self._say_next()

    @Slot(bool)
    def _ask_points(self, wanted: bool) -> None:
        side = self.sender().property("side")
        self._take_tool(None)
        self._tools.show_tool(None)
        if wanted:
            self._tool = KNOWN_LENGTH
            self._scales[side].wait_for_points()
            self.stages()[side].take_tool(KNOWN_LENGTH)
            self.stages()[side].setFocus()
            self._say_next()

    @Slot()
    def _ask_common(self) -> None:
        """Ask for two points that both photos show, side by side."""
        self._show_page(False)
        self._tools.show_tool(None)
        self._take_tool(COMMON_POINTS)
        self.stages()["removed"].setFocus()

    def _common_given(self, side: str, points: tuple[Pixel, ...]) -> None:
        self._common[side] = points
        self.stages()[side].show_known(points, tr("common points"))
        self.stages()[side].take_tool(None)
        if len(self._common) == 2:
            old, new = self._common["removed"], self._common["replacement"]
            self._put_tool_down()
            self._show_marks()
            self._overlay.common_points(old, new)
        else:
            self._say_next()

    @Slot()
    def _put_tool_down(self) -> None:
        self._tools.show_tool(None)
        self._take_tool(None)

    @Slot(object, object)
    def _drawn(self, tool: MarkTool, points: tuple[Pixel, ...]) -> None:
        side = self.sender().property("side")
        if tool is KNOWN_LENGTH:
            self._put_tool_down()
            self._scales[side].points_given((points[0], points[1]))
            return
        if tool is COMMON_POINTS:
            self._common_given(side, points)
            return
        made = self._work.draw(side, tool, points, snap=self._tools.snap.isChecked())
        if made is None:
            return
        if tool.type in ("note", "bare-metal"):
            self._put_tool_down()
        self._choose(made)
        if tool.type == "note":
            self._panel.go_to_name(made)

    @Slot(int, object)
    def _edited(self, mark_id: int, points: tuple[Pixel, ...]) -> None:
        if mark_id not in self._work.marks:
            return
        self._work.move(mark_id, points)
        side, label = self._work.side_of(mark_id), self._work.label(mark_id)
        self.stages()[side].label_mark(mark_id, label)
        self._panel.list.say(mark_id, self._work.line(mark_id))
        if mark_id == self._chosen:
            self._panel.show_details(mark_id)

    @Slot(object)
    def _choose(self, mark_id: int | None) -> None:
        """Choose a mark: on its photo, in the list, in words."""
        self._work.flush()
        self._choose_everywhere(mark_id)

    @Slot(object)
    def _chosen_on_stage(self, mark_id: int | None) -> None:
        self._work.flush()
        point = None
        chosen = self.stages()[self.sender().property("side")].chosen_point()
        if chosen is not None and chosen[0] == mark_id:
            point = chosen[1]
        self._choose_everywhere(mark_id, point)

    @Slot(int)
    def _go_to_mark(self, mark_id: int) -> None:
        self._put_tool_down()  # keeps what was moved, and reads what other desks did
        self._choose_everywhere(mark_id)
        if mark_id in self._work.marks:
            self.stages()[self._work.side_of(mark_id)].setFocus()

    @Slot()
    def _say_next(self) -> None:
        placed = {side: stage.half_drawn() for side, stage in self.stages().items()}
        if self._tool is COMMON_POINTS:
            placed |= {side: len(points) for side, points in self._common.items()}
            self._help.say(next_common_step(placed["removed"], placed["replacement"]))
        elif self._tool is not None:
            self._help.say(next_step(self._tool, max(placed.values())))
        elif any(stage.chosen_point() for stage in self.stages().values()):
            self._help.say(tr("{moves} Tab goes to the next point.", moves=MOVES))
        else:
            self._help.say(START)

    @Slot(bool)
    def _show_page(self, laid: bool) -> None:
        """Show the photos side by side with what is for marks, or the overlay alone."""
        self._pages.setCurrentIndex(1 if laid else 0)
        for widget in (self._tools, self._panel, self._help):
            widget.setVisible(not laid)

    @Slot()
    def _go_back(self) -> None:
        self._work.flush()
        self.done.emit()

    # --- what is shown ---

    def _choose_everywhere(self, mark_id: int | None, point: int | None = None) -> None:
        self._chosen = mark_id if self._work.has(mark_id) else None
        for stage in self.stages().values():
            stage.choose_mark(self._chosen, point)
        self._panel.list.choose(self._chosen)
        self._panel.show_details(self._chosen)
        self._say_next()

    @Slot()
    def _show_marks(self) -> None:
        marks = self._work.marks
        if not self._work.has(self._chosen):
            self._chosen = None
        for side, stage in self.stages().items():
            photo = self._photos.get(side)
            shown = {}
            for mark_id, kept in marks.items():
                if photo is None or kept.photo_id != photo.photo.id:
                    continue
                now, label = self._work.now(mark_id), self._work.label(mark_id)
                shown[mark_id] = (now, label, kept.clicks)
            plane = photo.plane if photo is not None else None
            stage.show_marks(shown, plane)
        self._show_known()
        self._panel.show_marks(self._chosen)

    @Slot()
    def _look_at_card(self) -> None:
        if self._opening is not None:
            self._opening.card_came()

    def _show_known(self) -> None:
        for side, stage in self.stages().items():
            photo = self._photos.get(side)
            known = photo.known_points() if photo is not None else ((), "")
            stage.show_known(*known)
