"""Runs a module of the program in a process of its own, speaking as who started it does."""

from __future__ import annotations

import sys


def main() -> None:
    """Speak the language said first, with the decimal sign; then be the module said behind them."""
    import runpy

    from desktop_app.figures_shown import speak_figures
    from desktop_app.shop_window.own_language import speak_language

    code, decimal, module = sys.argv[1:4]
    del sys.argv[1:4]
    speak_figures("," if decimal == "," else ".")
    speak_language(code)
    runpy.run_module(module, run_name="__main__", alter_sys=True)


if __name__ == "__main__":
    main()
