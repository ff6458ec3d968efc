"""A real browser in the shape of a phone, driven through its own pipe; nothing else is needed."""

from __future__ import annotations

import base64
import json
import os
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

# The browser speaks on its third and fourth file, which no shell gives it on every system.
_STARTER = (
    "import os, sys\n"
    "for given, high, wanted in ((sys.argv[1], 200, 3), (sys.argv[2], 201, 4)):\n"
    "    os.dup2(int(given), high)\n"
    "os.dup2(200, 3), os.dup2(201, 4), os.close(200), os.close(201)\n"
    "os.execvp(sys.argv[3], sys.argv[3:])\n"
)
_FLAGS = (
    *("--headless=new", "--no-sandbox", "--disable-gpu", "--no-first-run", "--no-proxy-server"),
    *("--disable-background-networking", "--disable-dev-shm-usage", "--mute-audio"),
)
PATIENCE = 40.0


class Phone:
    """One tab of the browser."""

    def __init__(self, to: int, back: int) -> None:
        self._to, self._back = to, back
        self._rest = b""
        self._number = 0
        self._session = ""
        self.said: list[str] = []  # on the console, and what the page's policy held back
        target = self._ask("Target.createTarget", url="about:blank")["targetId"]
        attached = self._ask("Target.attachToTarget", targetId=target, flatten=True)
        self._session = attached["sessionId"]
        for domain in ("Page", "Runtime", "Network", "DOM", "Log"):
            self._ask(f"{domain}.enable")

    def hold(self, width: int, height: int, *, dark: bool = True) -> None:
        """Be a phone of this size."""
        shape = {"width": width, "height": height, "deviceScaleFactor": 2, "mobile": True}
        self._ask("Emulation.setDeviceMetricsOverride", **shape)
        self._ask("Emulation.setTouchEmulationEnabled", enabled=True)
        look = {"name": "prefers-color-scheme", "value": "dark" if dark else "light"}
        self._ask("Emulation.setEmulatedMedia", features=[look])

    def open(self, url: str) -> None:
        """Open an address, as a camera does that has read a code."""
        went = self._ask("Page.navigate", url=url)
        assert "errorText" not in went, went
        self.wait_for(f"location.href === '{url}' && document.readyState === 'complete'")

    def go_on_past_warnings(self, wanted: bool) -> None:
        """Go on, or not, where nobody vouches for a certificate."""
        self._ask("Security.setIgnoreCertificateErrors", ignore=wanted)

    def network(self, *, there: bool = True, kilobytes_a_second: float = -1) -> None:
        """Let the Wi-Fi be slow, or be gone."""
        speed = kilobytes_a_second * 1000 if kilobytes_a_second > 0 else -1
        conditions = {"offline": not there, "latency": 20}
        through = {"downloadThroughput": speed, "uploadThroughput": speed}
        self._ask("Network.emulateNetworkConditions", **conditions, **through)

    def choose(self, field: str, *files: Path) -> None:
        """Give photos to one of the two ways of the page."""
        root = self._ask("DOM.getDocument")["root"]["nodeId"]
        node = self._ask("DOM.querySelector", nodeId=root, selector=f"#{field}")["nodeId"]
        self._ask("DOM.setFileInputFiles", nodeId=node, files=[str(file) for file in files])

    def tap(self, element: str) -> None:
        """Touch something where it is on the glass."""
        box = self.value(
            f"(function(b) {{ return [b.left + b.width / 2, b.top + b.height / 2]; }})"
            f"(document.getElementById('{element}').getBoundingClientRect())"
        )
        points = [{"x": box[0], "y": box[1]}]
        self._ask("Input.dispatchTouchEvent", type="touchStart", touchPoints=points)
        self._ask("Input.dispatchTouchEvent", type="touchEnd", touchPoints=[])

    def value(self, expression: str) -> Any:
        """Return what an expression is in the page."""
        asked = self._ask("Runtime.evaluate", expression=expression, returnByValue=True)
        assert "exceptionDetails" not in asked, asked["exceptionDetails"]
        return asked["result"].get("value")

    def reads(self) -> str:
        """Return what the page says."""
        return str(self.value("document.body ? document.body.innerText : ''"))

    def wait_for(self, expression: str) -> None:
        """Wait until an expression is true in the page."""
        until(lambda: bool(self.value(expression)), lambda: f"{expression}\n{self.reads()}")

    def wait_to_read(self, words: str) -> None:
        """Wait until the page says this."""
        until(lambda: words in self.reads(), lambda: f"“{words}” is not in\n{self.reads()}")

    def picture(self, file: Path) -> None:
        """Keep what the glass shows."""
        shot = self._ask("Page.captureScreenshot", format="png")
        file.write_bytes(base64.b64decode(shot["data"]))

    def _ask(self, method: str, **params: Any) -> dict[str, Any]:
        self._number += 1
        said: dict[str, Any] = {"id": self._number, "method": method, "params": params}
        if self._session:
            said["sessionId"] = self._session
        os.write(self._to, json.dumps(said).encode() + b"\0")
        while True:
            heard = self._hear()
            if heard.get("id") == self._number:
                assert "error" not in heard, (method, heard["error"])
                result = heard["result"]
                assert isinstance(result, dict)
                return result
            if heard.get("method") in ("Log.entryAdded", "Runtime.exceptionThrown"):
                self.said.append(json.dumps(heard["params"]))

    def _hear(self) -> dict[str, Any]:
        while b"\0" not in self._rest:
            piece = os.read(self._back, 1 << 16)
            assert piece, "the browser ended"
            self._rest += piece
        one, _, self._rest = self._rest.partition(b"\0")
        heard = json.loads(one)
        assert isinstance(heard, dict)
        return heard


def until(there: Callable[[], bool], say: Callable[[], str]) -> None:
    """Wait for a condition; say what is instead where it never comes."""
    end = time.monotonic() + PATIENCE
    while not there():
        assert time.monotonic() < end, say()
        time.sleep(0.02)


@contextmanager
def phone(program: str, home: Path) -> Iterator[Phone]:
    """Start the browser with a profile of its own, and end it."""
    theirs_in, to = os.pipe()
    back, theirs_out = os.pipe()
    start = [sys.executable, "-c", _STARTER, str(theirs_in), str(theirs_out), program]
    order = [*start, *_FLAGS, "--remote-debugging-pipe", f"--user-data-dir={home}"]
    process = subprocess.Popen(
        order,
        pass_fds=(theirs_in, theirs_out),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(theirs_in)
    os.close(theirs_out)
    try:
        yield Phone(to, back)
    finally:
        os.close(to)
        os.close(back)
        process.terminate()
        process.wait(20)
