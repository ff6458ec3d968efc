"""The process that draws photos beside the story: orders come in, JPEG files go out."""

from __future__ import annotations

import os
import pickle
import signal
import sys
from contextlib import suppress


def main() -> None:
    """Draw until nobody orders any more."""
    with suppress(ValueError):
        signal.signal(signal.SIGINT, signal.SIG_IGN)  # it ends with its input
    # Keeps two such processes on two cores from fighting; it counts only before NumPy is loaded.
    for name in ("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "MKL_NUM_THREADS"):
        os.environ[name] = "1"
    from demo_shop.darkroom import draw

    with suppress(EOFError):
        while True:
            order = pickle.load(sys.stdin.buffer)  # from the process that started this one
            pickle.dump(draw(order), sys.stdout.buffer)
            sys.stdout.buffer.flush()


if __name__ == "__main__":
    main()
