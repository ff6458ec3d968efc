"""Runs a module of the program in a process of its own, in the language of who started it."""

from __future__ import annotations

import sys


def main() -> None:
    """Speak the language said first, then be the module said behind it, with the words left."""
    import runpy

    from desktop_app.shop_window.own_language import speak_language

    code, module = sys.argv[1:3]
    del sys.argv[1:3]
    speak_language(code)
    runpy.run_module(module, run_name="__main__", alter_sys=True)


if __name__ == "__main__":
    main()
