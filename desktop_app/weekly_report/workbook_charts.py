"""The workbook's charts: native ones, over the cells of its tables."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from desktop_app.weekly_report.sheet_form import Chart, Table

if TYPE_CHECKING:
    from xlsxwriter import Workbook
    from xlsxwriter.chart import Chart as DrawnChart

# Colours of the Okabe-Ito palette; each also has a pattern and a marker of its own, for print in
# black.
_COLOURS = ("#0072B2", "#E69F00", "#555555", "#56B4E9")
_PATTERNS = ("wide_upward_diagonal", "dark_horizontal", "small_grid", "dotted_grid")
_MARKERS = ("circle", "square", "diamond", "triangle")
_LIMIT = {"color": "#555555", "width": 1, "dash_type": "dash"}
WIDTH, HEIGHT = 860, 250  # pixels; two stand on a page
_KINDS = {
    "bars": {"type": "bar"},
    "lines": {"type": "line"},
    "steps": {"type": "scatter", "subtype": "straight"},
}


@dataclass(frozen=True, slots=True)
class Placed:
    """Where a table stands: its sheet, and the rows of its header and of its last cells."""

    sheet: str
    header: int
    last: int
    table: Table

    def cells(self, header: str) -> list[Any]:
        """Return the range of a column's cells, as the writer wants it."""
        at = self.table.place(header)
        return [self.sheet, self.header + 1, at, self.last, at]


def drawn_chart(book: Workbook, chart: Chart, placed: Placed) -> DrawnChart:
    """Return the chart over the cells of its table."""
    drawn = book.add_chart(_KINDS[chart.style])
    plain = [header for header in chart.headers if header not in chart.limits]
    for header in chart.headers:
        name = [placed.sheet, placed.header, placed.table.place(header)]
        series: dict[str, Any] = {
            "name": name,
            "categories": placed.cells(chart.over),
            "values": placed.cells(header),
        }
        look = _limit() if header in chart.limits else _look(chart, plain.index(header))
        drawn.add_series({**series, **look})
    drawn.set_title({"name": chart.title, "overlay": False, "name_font": {"size": 12}})
    if chart.style == "bars":  # the format calls the axis that stands up the first one
        # From the top down, and yet with the scale beneath them.
        drawn.set_y_axis({"reverse": True, "crossing": "max"})
        money = chart.currency.replace('"', "")
        drawn.set_x_axis({"name": chart.upwards, "min": 0, "num_format": f'"{money}"#,##0'})
        drawn.set_legend({"none": True})
        drawn.set_size({"width": WIDTH, "height": HEIGHT})
        return drawn
    across: dict[str, Any] = {"name": chart.across}
    upwards: dict[str, Any] = {"name": chart.upwards, "min": 0}
    if chart.share:
        upwards["num_format"] = "0%"
    if chart.style == "steps":
        across |= {"min": 0, "max": max(_numbers(placed.table, chart.over), default=1) or 1}
    else:
        across["num_font"] = {"rotation": -60, "size": 8}
    drawn.set_x_axis(across)
    drawn.set_y_axis(upwards)
    drawn.set_legend({"none": True} if len(chart.headers) == 1 else {"position": "bottom"})
    drawn.set_size({"width": WIDTH, "height": HEIGHT})
    return drawn


def _look(chart: Chart, place: int) -> dict[str, Any]:
    colour = _COLOURS[place % len(_COLOURS)]
    if chart.style == "bars":
        pattern = _PATTERNS[place % len(_PATTERNS)]
        fill = {"pattern": pattern, "fg_color": colour, "bg_color": "white"}
        return {"pattern": fill, "border": {"color": colour}}
    marker: dict[str, Any] = {"type": "none"}
    if chart.style == "lines":
        marker = {"type": _MARKERS[place % len(_MARKERS)], "size": 5}
        marker |= {"border": {"color": colour}, "fill": {"color": colour}}
    return {"line": {"color": colour, "width": 1.75}, "marker": marker}


def _limit() -> dict[str, Any]:
    return {"line": dict(_LIMIT), "marker": {"type": "none"}}


def _numbers(table: Table, header: str) -> list[float]:
    return [cell for cell in table.column(header) if isinstance(cell, (int, float))]
