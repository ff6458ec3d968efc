"""The signs of how a job stands: shapes that read in black and white, each beside its words."""

from __future__ import annotations

from desktop_app.language import marked

STANDING_SIGNS = {
    marked("heard"): "…",
    marked("on the bench"): "▤",
    marked("back on"): "⚙",
    marked("under watch"): "◔",
    marked("seen fine"): "◉",
    marked("nothing heard"): "○",
    marked("lost sight"): "◌",
    marked("came back"): "↩",
    marked("came back, not ours"): "↪",
    marked("came back, cannot tell"): "⁇",
    marked("came back after the window"): "⇥",
}
