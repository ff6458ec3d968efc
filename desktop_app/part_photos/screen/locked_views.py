"""Old and new side by side: two stages that zoom and move together."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtGui import QColor, QResizeEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.part_photos.kept_photo import SAME_PICTURE, KeptPhoto, same_picture
from desktop_app.part_photos.screen.photo_stage import PhotoStage
from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.shop_window import look
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import plain_label, tooltip

_WITH_CAPTIONS = 10  # lines of text; where both photos are lower, they want the room
_MOVES = tr("So does a double click. Drag the photo, or press the arrow keys, to move it.")
_BY_KEYS = tr("Plus and minus enlarge and make smaller, arrow keys move, 0 shows the whole photo.")


class LockedViews(QWidget):
    """The removed part at left (◆), its replacement at right (●)."""

    def __init__(
        self,
        desk: Desk,
        parent: QWidget | None = None,
        *,
        stage_type: type[PhotoStage] = PhotoStage,
        empty: str = tr("No photo of the {} here yet"),
    ) -> None:
        super().__init__(parent)
        self.setMinimumHeight(400)
        self.removed = stage_type(desk, tr("Removed part"), empty.format(tr("removed part")))
        self.replacement = stage_type(desk, tr("Replacement"), empty.format(tr("replacement")))
        self._captions = (plain_label("", "quiet", wrap=True), plain_label("", "quiet", wrap=True))
        self._heads = (plain_label(tr("Removed part")), plain_label(tr("Replacement")))
        self._same = plain_label(f"=  {SAME_PICTURE}", wrap=True)
        self._same.hide()
        self._locked = QPushButton(tr("Locked together"))
        self._locked.setCheckable(True)
        self._locked.setChecked(True)
        self._locked.toggled.connect(self._turn_lock)
        self._lay_out()
        self._turn_lock(True)
        for stage, other in (
            (self.removed, self.replacement),
            (self.replacement, self.removed),
        ):
            self._tie(stage, other)

    def show_pair(self, removed: KeptPhoto | None, replacement: KeptPhoto | None) -> None:
        """Show one photo of each side; None leaves a side empty."""
        self.removed.show_photo(removed)
        self.replacement.show_photo(replacement)
        both = zip(self._captions, self._heads, (removed, replacement), strict=True)
        for caption, head, photo in both:
            caption.setText(photo.caption() if photo is not None else "")
            head.setToolTip(tooltip(caption.text()))
        self._same.setVisible(
            removed is not None
            and replacement is not None
            and same_picture(removed.sha256, replacement.sha256)
        )

    def hasHeightForWidth(self) -> bool:
        """Take what height there is: photos are seen in any."""
        return False

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Leave the captions to the heads' tooltips where they would take the photos' room."""
        super().resizeEvent(event)
        high = self.height() >= _WITH_CAPTIONS * self.fontMetrics().lineSpacing()
        for caption in self._captions:
            caption.setVisible(high)

    def _lay_out(self) -> None:
        sides = QGridLayout()  # both photos are as high, however long their captions are
        stages = (self.removed, self.replacement)
        colours = (("removed", look.REMOVED), ("replacement", look.REPLACEMENT))
        both = zip(self._heads, stages, colours, self._captions, strict=True)
        for column, (head, stage, (side, colour), caption) in enumerate(both):
            sides.addLayout(_head(SIDE_SIGNS[side], head, colour), 0, column)
            sides.addWidget(stage, 1, column)
            sides.addWidget(caption, 2, column)
            sides.setColumnStretch(column, 1)
        sides.setRowStretch(1, 1)
        buttons = QHBoxLayout()
        buttons.addWidget(self._locked)
        for words, name, more, pressed in (
            ("+", tr("Enlarge (+)"), tr("The wheel does it too."), self._enlarge),
            ("−", tr("Make smaller (−)"), tr("The wheel does it too."), self._reduce),
            (tr("Whole photo"), tr("Show the whole photo (0)"), _MOVES, self._make_whole),
        ):
            buttons.addWidget(_button(words, name, more, pressed))
        buttons.addStretch(1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addLayout(sides, 1)
        whole.addWidget(self._same)
        whole.addLayout(buttons)

    def _tie(self, stage: PhotoStage, other: PhotoStage) -> None:
        stage.zoomed_by.connect(self._zoomed)
        stage.moved_by.connect(self._moved)
        stage.made_whole.connect(self._whole)
        stage.setAccessibleDescription(_BY_KEYS)

    def _follower(self) -> PhotoStage | None:
        if not self._locked.isChecked():
            return None
        return self.replacement if self.sender() is self.removed else self.removed

    def _chosen(self) -> tuple[PhotoStage, ...]:
        """Return the stages that the buttons speak to: one is enough where both are locked."""
        first = self.removed if self.removed.photo() is not None else self.replacement
        return (first,) if self._locked.isChecked() else (self.removed, self.replacement)

    @Slot(bool)
    def _turn_lock(self, locked: bool) -> None:
        word = ("☑  " if locked else "☐  ") + tr("Locked together")
        self._locked.setText(word)
        self._locked.setAccessibleName(
            tr("Locked together") if locked else tr("Each moves on its own")
        )
        self._locked.setToolTip(
            tooltip(
                tr(
                    "Both photos zoom and move together. Unlock to line up a detail, then "
                    "lock again."
                )
            )
        )

    @Slot(float, float, float)
    def _zoomed(self, factor: float, across: float, down: float) -> None:
        follower = self._follower()
        if follower is not None:
            follower.follow_zoom(factor, across, down)

    @Slot(float, float)
    def _moved(self, right: float, down: float) -> None:
        follower = self._follower()
        if follower is not None:
            follower.follow_move(right, down)

    @Slot()
    def _whole(self) -> None:
        follower = self._follower()
        if follower is not None:
            follower.follow_whole()

    @Slot()
    def _enlarge(self) -> None:
        for stage in self._chosen():
            stage.enlarge()

    @Slot()
    def _reduce(self) -> None:
        for stage in self._chosen():
            stage.reduce()

    @Slot()
    def _make_whole(self) -> None:
        for stage in self._chosen():
            stage.make_whole()


def _head(sign: str, words: QLabel, colour: QColor) -> QHBoxLayout:
    mark: QLabel = plain_label(sign)
    mark.setStyleSheet(f"color: {colour.name()}; font-size: 16pt;")
    row = QHBoxLayout()
    row.addWidget(mark)
    row.addWidget(words)
    row.addStretch(1)
    return row


def _button(words: str, name: str, more: str, pressed: object) -> QPushButton:
    button = QPushButton(words)
    button.setAccessibleName(name)
    button.setToolTip(tooltip(f"{name}. {more}"))
    button.clicked.connect(pressed)
    return button
