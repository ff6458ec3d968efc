"""The photo bench: both photos of a pair, the marks on them, one photo laid on the other."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QStackedLayout,
    QVBoxLayout,
    QWidget,
)

from desktop_app.part_photos.bench_readings import BenchReadings
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.mark_words import COMMON_POINTS, KNOWN_LENGTH, MarkTool
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.screen.bench_mark_details import MarkDetails
from desktop_app.part_photos.screen.bench_marks_list import MarksList
from desktop_app.part_photos.screen.bench_overlay import OverlayPanel
from desktop_app.part_photos.screen.bench_photo import BenchPhoto
from desktop_app.part_photos.screen.bench_scale_line import ScaleLine
from desktop_app.part_photos.screen.bench_stage import MOVES, BenchStage
from desktop_app.part_photos.screen.bench_tools import ToolsRow
from desktop_app.part_photos.screen.bench_work import BenchWork
from desktop_app.part_photos.screen.locked_views import LockedViews
from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.tab_order import next_stop
from desktop_app.shop_window.texts import plain_label

_SAID = {"removed": "removed part", "replacement": "replacement"}
_DETAILS_AT = 3  # in the panel: under its heading, the list, and what is said where it is empty
_START = "Choose a tool, then click on a photo. Esc gives up, Delete takes a chosen mark out."


class PhotoBench(QWidget):
    """Opened for one photo of each side; either may be missing."""

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
            side: ScaleLine(desk, SIDE_SIGNS[side], words, follow) for side, words in _SAID.items()
        }
        self._help = plain_label(_START, "quiet", wrap=True)
        # Room for two lines from the start: a stage that moves under the mouse spoils a click.
        self._help.setFixedHeight(2 * self._help.fontMetrics().lineSpacing() + 2)
        self._help.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._list = MarksList()
        self._details: dict[int, MarkDetails] = {}
        self._lay_out()
        self._wire()
        self._views.show_pair(old, new)
        for side, photo in self._photos.items():
            self._scales[side].show_photo(photo)
            photo.open()
        for side in given.keys() - self._photos.keys():
            self._scales[side].hide()
        self._work.read()
        self._overlay.read()

    def stages(self) -> dict[str, BenchStage]:
        """Return the stage of each side."""
        found = {"removed": self._views.removed, "replacement": self._views.replacement}
        return {side: one for side, one in found.items() if isinstance(one, BenchStage)}

    def keep_draft(self) -> None:
        """Keep what was moved a moment ago."""
        self._work.flush()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        number = event.key() - Qt.Key.Key_0
        if 1 <= number <= 9 and not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier:
            self._tools.take(number)
        else:
            super().keyPressEvent(event)

    def focusNextPrevChild(self, onward: bool) -> bool:
        """Let Tab follow the bench as it is laid out."""
        there = next_stop(self, onward)
        if there is None:
            return super().focusNextPrevChild(onward)
        reason = Qt.FocusReason.TabFocusReason if onward else Qt.FocusReason.BacktabFocusReason
        there.setFocus(reason)
        return True

    def _lay_out(self) -> None:
        back = QPushButton("← Back to the pair")
        back.clicked.connect(self._go_back)
        head = QHBoxLayout()
        head.addWidget(back)
        head.addWidget(plain_label("Photo Bench", "heading"))
        head.addSpacing(12)
        head.addWidget(self._overlay.modes, 1)
        marking = QWidget()
        beside = QVBoxLayout(marking)
        beside.setContentsMargins(0, 0, 0, 0)
        beside.addWidget(self._tools)
        beside.addWidget(self._views, 1)
        beside.addWidget(self._help)
        self._pages = QStackedLayout()
        self._pages.addWidget(marking)
        self._pages.addWidget(self._overlay)
        main = QHBoxLayout()
        main.addLayout(self._pages, 1)
        main.addWidget(self._side_panel())
        whole = QVBoxLayout(self)
        whole.addLayout(head)
        whole.addLayout(main, 1)

    def _side_panel(self) -> QWidget:
        inside = QWidget()
        self._panel = QVBoxLayout(inside)
        self._panel.setContentsMargins(8, 0, 8, 0)
        self._panel.addWidget(plain_label("Marks"))
        self._panel.addWidget(self._list)
        self._empty = plain_label("No mark yet.", "quiet", wrap=True)
        self._panel.addWidget(self._empty)
        self._panel.addWidget(plain_label("Scale"))
        for line in self._scales.values():
            self._panel.addWidget(line)
        self._panel.addStretch(1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setFixedWidth(340)
        area.setWidget(inside)
        return area

    def _wire(self) -> None:
        self._tools.taken.connect(self._take_tool)
        self._list.chosen.connect(self._choose)
        self._list.opened.connect(self._go_to_mark)
        self._list.unwanted.connect(self._work.remove)
        self._work.changed.connect(self._show_marks)
        self._work.said.connect(self._help.setText)
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
            stage.tool_dropped.connect(self._put_tool_down)
            self._scales[side].setProperty("side", side)
            self._scales[side].points_wanted.connect(self._ask_points)
        for photo in self._photos.values():
            photo.news.connect(self._show_marks)

    # --- what is heard ---

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if done.touched & {"photo_scale"}:
            for photo in self._photos.values():
                photo.read()
        if done.touched & {"mark", "photo_scale", "reading", "photo_reading", "setting"}:
            self._work.read()
        if "overlay" in done.touched:
            self._overlay.read()

    @Slot(object)
    def _take_tool(self, tool: MarkTool | None) -> None:
        self._work.flush()
        self._tool = tool
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
            self._scales[side].wait_for_points()
            self.stages()[side].take_tool(KNOWN_LENGTH)
            self.stages()[side].setFocus()
            self._help.setText(KNOWN_LENGTH.next_click(0))

    @Slot()
    def _ask_common(self) -> None:
        """Ask for two points that both photos show, side by side."""
        self._pages.setCurrentIndex(0)
        self._tools.show_tool(None)
        self._common.clear()
        self._take_tool(COMMON_POINTS)
        self.stages()["removed"].setFocus()

    def _common_given(self, side: str, points: tuple[Pixel, ...]) -> None:
        self._common[side] = points
        self.stages()[side].show_known(points, "common points")
        self.stages()[side].take_tool(None)
        if len(self._common) == 2:
            self._put_tool_down()
            self._show_marks()
            self._overlay.common_points(self._common["removed"], self._common["replacement"])
        else:
            self._help.setText("The same two points in the other photo, in the same order.")

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
        if tool.type == "note" and made in self._details:
            self._details[made].go_to_name()

    @Slot(int, object)
    def _edited(self, mark_id: int, points: tuple[Pixel, ...]) -> None:
        self._work.move(mark_id, points)
        side, label = self._work.side_of(mark_id), self._work.label(mark_id)
        self.stages()[side].label_mark(mark_id, label)
        self._list.say(mark_id, self._work.line(mark_id))
        if mark_id == self._chosen:
            self._details[mark_id].show_mark(
                self._work.marks[mark_id], *self._work.said_now(mark_id)
            )

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
        self._put_tool_down()
        self._choose_everywhere(mark_id)
        self.stages()[self._work.side_of(mark_id)].setFocus()

    @Slot()
    def _say_next(self) -> None:
        tool = self._tool
        placed = max(stage.half_drawn() for stage in self.stages().values())
        if tool is not None:
            by_key = " By keys: arrows move a cross, Space places a point."
            self._help.setText(tool.next_click(placed) + (by_key if not placed else ""))
        elif any(stage.chosen_point() for stage in self.stages().values()):
            self._help.setText(f"{MOVES} Tab goes to the next point.")
        else:
            self._help.setText(_START)

    @Slot(bool)
    def _show_page(self, laid: bool) -> None:
        self._pages.setCurrentIndex(1 if laid else 0)

    @Slot()
    def _go_back(self) -> None:
        self._work.flush()
        self.done.emit()

    # --- what is shown ---

    def _choose_everywhere(self, mark_id: int | None, point: int | None = None) -> None:
        self._chosen = mark_id if mark_id in self._work.marks else None
        for stage in self.stages().values():
            stage.choose_mark(self._chosen, point)
        self._list.choose(self._chosen)
        self._show_details()
        self._say_next()

    @Slot()
    def _show_marks(self) -> None:
        marks = self._work.marks
        if self._chosen not in marks:
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
            known = photo.known_points() if photo is not None else ((), "")
            stage.show_known(*known)
        lines = [(mark_id, self._work.line(mark_id)) for mark_id in self._work.listed()]
        self._list.show_marks(lines, self._chosen)
        self._empty.setVisible(not lines)
        self._show_details()

    def _show_details(self) -> None:
        """Show the fields of the chosen mark; those of the others wait with what is typed."""
        for gone in [one for one in self._details if one not in self._work.marks]:
            details = self._details.pop(gone)
            details.hide()
            details.deleteLater()
        chosen = self._chosen
        if chosen is not None and chosen not in self._details:
            side = self._work.side_of(chosen)
            made = MarkDetails(self._desk, self._work.marks[chosen], side, self._readings)
            made.unwanted.connect(self._work.remove)
            made.snap_wanted.connect(self._work.look_closely)
            self._panel.insertWidget(_DETAILS_AT, made)
            self._details[chosen] = made
        for mark_id, details in self._details.items():
            details.setVisible(mark_id == chosen)
        if chosen is not None:
            self._details[chosen].show_mark(self._work.marks[chosen], *self._work.said_now(chosen))
