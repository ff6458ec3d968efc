"""Starts the program where it was built into one that needs no Python."""

from __future__ import annotations

import sys


def main() -> int:
    """Be the program, or a process of its own that it started."""
    from desktop_app.shop_record.own_program.own_start import asked_module

    module = asked_module(sys.argv)
    if module is not None:
        import runpy

        runpy.run_module(module, run_name="__main__", alter_sys=True)
        return 0
    from desktop_app.__main__ import main as program

    return program()


if __name__ == "__main__":
    sys.exit(main())
