"""The signs of the program: shapes with words that read in black and white."""

from __future__ import annotations

from desktop_app.language import marked, tr

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


def signed(signs: dict[str, str], word: str) -> str:
    """Return the sign and the word; the word alone where it has no sign."""
    sign = signs.get(word)
    return f"{sign}  {tr(word)}" if sign else tr(word)
