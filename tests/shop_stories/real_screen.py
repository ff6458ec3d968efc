"""A person before a real screen: keys and mouse by the X server, words read off its picture.

The program is started as a user starts it and is never asked anything. Where a button lies is seen
by its words, all of them; what is said is what can be read.
"""

from __future__ import annotations

import os
import select
import signal
import struct
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from typing import Any, TypeVar

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image
from PySide6.QtCore import QPointF
from PySide6.QtGui import QFont, QFontMetricsF, QImage, QPainter

from desktop_app.shop_window.look import load_fonts

ROOT = Path(__file__).resolve().parents[2]
WIDE, HIGH = 1366, 900
PATIENCE = 90.0  # seconds for the slowest step: a first start compiles all modules

# Points and weight of the words in the window: text, what comes next, headings, titles.
SIZES = ((12, False), (12, True), (15, True), (20, True))
SHIFTS = tuple(eighth / 8 for eighth in range(8))  # a letter may begin between two pixels
LIKE, SAME = 0.8, 0.9  # the whole is like it; each letter is the same (another one gives 0.82)
MOST = 12  # places that look alike and are looked at closely

Answer = TypeVar("Answer")
Grey = NDArray[np.float32]

# What a file manager does when a file is copied: it holds the file's address until it ends.
HOLD_COPIED = """
import sys
from PySide6.QtCore import QMimeData, QUrl
from PySide6.QtGui import QGuiApplication
app = QGuiApplication([])
files = QMimeData()
files.setUrls([QUrl.fromLocalFile(sys.argv[1])])
QGuiApplication.clipboard().setMimeData(files)
print("copied", flush=True)
app.exec()
"""


def until(asked: Callable[[], Answer], what: str) -> Answer:
    """Ask again and again until there is an answer."""
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        answer = asked()
        if answer:
            return answer
        time.sleep(0.1)
    raise AssertionError(f"waited in vain for {what}")


class RealScreen:
    """The screen with the program on it, and the person's hands and eyes."""

    def __init__(self, display: str, frame: Path) -> None:
        self.env = {
            **os.environ,
            "DISPLAY": display,
            "QT_QPA_PLATFORM": "xcb",
            "LC_ALL": "C.UTF-8",
        }
        self._frame = frame

    def keys(self, *keys: str) -> None:
        """Press keys, one after the other."""
        self._xdo("key", "--clearmodifiers", *keys)

    def type(self, words: str, *then: str) -> None:
        """Type words, and perhaps press keys after them."""
        self._xdo("type", "--delay", "5", words)
        if then:
            self.keys(*then)

    def fill_in(self, words: str, *then: str) -> None:
        """Type over what a field says."""
        self.keys("ctrl+a")
        self.type(words, *then)

    def press(self, words: str, which: int = 0, *, turning: bool = False) -> None:
        """Press what bears these words with the mouse, once it is seen."""
        self.press_at(self.until_reads(words, which + 1, turning=turning)[which])

    def press_at(self, place: tuple[int, int]) -> None:
        """Press a place with the mouse."""
        self._xdo("mousemove", *map(str, place), "click", "1")

    def until_reads(
        self, words: str, times: int = 1, *, turning: bool = False
    ) -> list[tuple[int, int]]:
        """Wait until the words stand still so often, and return where, from left to right.

        `turning` the wheel over the scroll bar meanwhile, down the page.
        """
        before: list[tuple[int, int]] = []

        def still() -> list[tuple[int, int]]:
            found = places_of(words, self.seen())
            if turning and len(found) < times:
                self._xdo("mousemove", str(WIDE - 8), str(HIGH // 2), "click", "5")
            moved, before[:] = found != before, found
            return [] if moved or len(found) < times else found

        return until(still, f"“{words}” on the screen")

    def go_into(self, title: str) -> str:
        """Wait for a window whose title says this and give it the keys: nobody else does here."""
        find = ("search", "--onlyvisible", "--name", title)
        window = until(lambda: self._xdo(*find, must=False), f"a window “{title}”").split()[-1]
        self._xdo("windowfocus", "--sync", window)
        return window

    def fill(self, window: str) -> None:
        """Make a window as large as the screen, which is black where there is none."""
        self._xdo("windowsize", "--sync", window, str(WIDE), str(HIGH))
        until(lambda: self.seen()[HIGH - 1, WIDE - 1] > 0, "the window to fill the screen")

    def until_gone(self, title: str) -> None:
        """Wait until no window has this title any more."""
        find = ("search", "--onlyvisible", "--name", title)
        until(lambda: not self._xdo(*find, must=False), f"“{title}” to be gone")

    def answer_with_file(self, title: str, file: Path, back_in: str) -> None:
        """Answer a file dialog by the keyboard, and go on in the window that asked."""
        self.go_into(title)
        self.fill_in(str(file), "Return")
        self.until_gone(title)
        self.go_into(back_in)

    @contextmanager
    def copied(self, file: Path) -> Iterator[None]:
        """Let another program hold a copied file."""
        command = [sys.executable, "-c", HOLD_COPIED, str(file)]
        with subprocess.Popen(command, env=self.env, stdout=subprocess.PIPE, text=True) as other:
            try:
                assert other.stdout is not None
                assert other.stdout.readline() == "copied\n"
                yield
            finally:
                other.kill()

    def picture(self) -> Image.Image:
        """Return what the screen shows now; the server keeps it in a file, as a window dump."""
        raw = self._frame.read_bytes()
        head = struct.unpack(">25I", raw[:100])
        begin, size, line = head[0] + 12 * head[19], (head[4], head[5]), head[12]
        pixels = raw[begin : begin + line * size[1]]
        return Image.frombuffer("RGB", size, pixels, "raw", "BGRX", line, 1)

    def seen(self) -> Grey:
        """Return the brightness of what the screen shows now."""
        return np.asarray(self.picture().convert("L"), dtype=np.float32)

    def _xdo(self, *words: str, must: bool = True) -> str:
        said = subprocess.run(
            ["xdotool", *words],
            env=self.env,
            capture_output=True,
            text=True,
            check=False,
            timeout=PATIENCE,
        )
        assert not must or said.returncode == 0, f"xdotool {words}: {said.stderr}"
        return said.stdout.strip()


@contextmanager
def real_screen(shop: Path, pictures: Path) -> Iterator[RealScreen]:
    """Start a screen and the program on it, let a person work, and close the program by its key.

    What the screen shows at the end is kept, also of a story that came to a bad end.
    """
    with _server(pictures) as screen:
        command = [sys.executable, "-m", "desktop_app", "--shop", str(shop)]
        program = subprocess.Popen(command, cwd=ROOT, env=screen.env, stderr=subprocess.PIPE)
        try:
            # The title carries the shop's name once the shop is open.
            screen.fill(screen.go_into("Our shop - Benchwitness"))
            yield screen
            _keep(screen.picture(), pictures / "end.png")
            screen.go_into("Our shop - Benchwitness")
            screen.keys("ctrl+q")
            _, said = program.communicate(timeout=PATIENCE)
            assert said == b""
            assert program.returncode == 0
            log = (shop / "benchwitness.log").read_text("utf-8")
            assert not [level for level in ("WARNING", "ERROR", "CRITICAL") if level in log], log
        except BaseException:
            screen.picture().save(pictures / "bad-end.png")
            raise
        finally:
            program.kill()
            program.communicate()


@contextmanager
def _server(folder: Path) -> Iterator[RealScreen]:
    """Start an X server on a free display and stop it afterwards."""
    reading, writing = os.pipe()
    size, kept = ("-screen", "0", f"{WIDE}x{HIGH}x24"), ("-fbdir", str(folder))
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writing), *size, *kept, "-nolisten", "tcp"],
        pass_fds=[writing],
        stderr=subprocess.DEVNULL,
    )
    os.close(writing)
    try:
        ready, _, _ = select.select([reading], [], [], PATIENCE)
        assert ready, "the X server did not come up"
        display = f":{os.read(reading, 16).decode().strip()}"
        yield RealScreen(display, folder / "Xvfb_screen0")
    finally:
        os.close(reading)
        server.send_signal(signal.SIGTERM)
        server.wait(timeout=PATIENCE)


def _keep(picture: Image.Image, file: Path) -> None:
    """Keep a picture, which must show something."""
    picture.save(file)
    colours = picture.getcolors(1 << 24) or []
    assert len(colours) > 50, "the screen shows next to nothing"


def places_of(words: str, seen: Grey) -> list[tuple[int, int]]:
    """Return the middle of each place where the words stand, from left to right."""
    found = [place for size in SIZES for place in _places(words, size, seen)]
    return sorted(set(found))


def _places(words: str, size: tuple[int, bool], seen: Grey) -> Iterator[tuple[int, int]]:
    drawn = [_drawn(words, *size, shift) for shift in SHIFTS]
    high, wide = drawn[0].shape
    like = np.abs(cv2.matchTemplate(seen, drawn[0], cv2.TM_CCOEFF_NORMED))
    for _ in range(MOST):
        y, x = map(int, np.unravel_index(like.argmax(), like.shape))
        if like[y, x] < LIKE:
            return
        like[max(0, y - high // 2) : y + high // 2, max(0, x - high // 2) : x + high // 2] = 0
        there = seen[y : y + high, x : x + wide]
        if max(_least_alike(there, one) for one in drawn) >= SAME:
            yield x + wide // 2, y + high // 2


def _least_alike(there: Grey, drawn: Grey) -> float:
    """Return how much the least alike letter is alike: 1 where it is the same."""
    high, wide = drawn.shape
    letter = high * 3 // 4
    across = range(0, max(1, wide - letter + 1), 2)
    return min(_alike(there[:, x : x + letter], drawn[:, x : x + letter]) for x in across)


def _alike(one: Grey, other: Grey) -> float:
    """Return the correlation of two pictures, dark on light or light on dark."""
    a, b = one - one.mean(), other - other.mean()
    scale = float(np.sqrt((a * a).sum() * (b * b).sum()))
    return abs(float((a * b).sum())) / scale if scale else 0.0


@cache
def _drawn(words: str, points: int, bold: bool, shift: float) -> Grey:
    """Draw words as the window draws them, in black on white."""
    font = QFont(load_fonts(), points)
    font.setBold(bold)
    box = QFontMetricsF(font).tightBoundingRect(words)
    image = QImage(int(box.width()) + 5, int(box.height()) + 5, QImage.Format.Format_Grayscale8)
    image.fill(255)
    painter = QPainter(image)
    painter.setFont(font)
    painter.drawText(QPointF(2 - round(box.left()) + shift, 2 - round(box.top())), words)
    painter.end()
    lines: Any = np.frombuffer(image.constBits(), np.uint8)
    whole = lines.reshape(image.height(), image.bytesPerLine())[:, : image.width()]
    return np.asarray(whole, dtype=np.float32)
