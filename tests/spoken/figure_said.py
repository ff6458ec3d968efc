"""A module that is run in a process of its own and says a figure."""

from __future__ import annotations

import sys

from desktop_app.figures_shown import figure

if __name__ == "__main__":
    sys.stdout.buffer.write(figure(1234.5, ",.1f").encode())
