"""A mark that is being drawn: its points so far, and the cross that the keys move."""

from __future__ import annotations

import math

from desktop_app.part_photos.mark_words import MOST_POINTS, MarkTool
from desktop_app.part_photos.marks.mark import Mark, Pixel


class HalfDrawn:
    """Gathers points for one tool until the mark is whole."""

    def __init__(self) -> None:
        self.tool: MarkTool | None = None
        self.points: list[Pixel] = []
        self.cross: Pixel | None = None

    def take(self, tool: MarkTool | None) -> None:
        """Draw with this tool from now on; what another one has begun is dropped."""
        if tool is not self.tool:
            self.points.clear()
        self.tool = tool
        self.cross = None

    def place(self, pixel: Pixel, size: tuple[int, int], least_way: float) -> bool:
        """Place a point inside a photo of `size` pixels and tell whether the mark is whole.

        One nearer than `least_way` pixels to the last one is the second half of a double click.
        """
        if self.tool is None or len(self.points) >= MOST_POINTS:
            return False
        inside = (
            min(max(pixel[0], -0.5), size[0] - 0.5),
            min(max(pixel[1], -0.5), size[1] - 0.5),
        )
        if self.points and math.dist(self.points[-1], inside) < least_way:
            return False
        self.points.append(inside)
        return self.tool.is_whole(len(self.points))

    def is_enough(self) -> bool:
        """Tell whether Enter would end the mark."""
        return self.tool is not None and len(self.points) >= len(self.tool.clicks)

    def drop(self) -> tuple[Pixel, ...]:
        """Give the points up and return them."""
        points = tuple(self.points)
        self.points.clear()
        self.cross = None
        return points

    def mark(self) -> Mark:
        """Return what is drawn so far."""
        return Mark(self.tool.type if self.tool is not None else "length", tuple(self.points))
