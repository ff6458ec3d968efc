"""Nothing else in the program reads picture files: no plugin of Qt, no reader of OpenCV."""

from __future__ import annotations

import re
import subprocess
import sys

import pytest

from tests.faults.hostile_pictures.bombs import one_bit
from tests.test_sizes import ROOT, modules, text_of

# What takes a file's name, or its bytes, and finds out by itself what they are.
READERS = re.compile(
    r"\b(?:QImageReader|QMovie|QSvgRenderer|QSvgWidget|loadFromData|fromData|imread\w*|imdecode\w*)\b"
    r"|\bQ(?:Image|Pixmap)\((?:str\(|path|f?[\"'])"
    r"|\bImage\.open\("
)
GATE = "desktop_app/part_photos/upright_picture.py"


def readers_in(text: str) -> list[str]:
    """Name what reads pictures by itself."""
    return READERS.findall(text)


def test_no_picture_is_read_past_the_gate() -> None:
    found = {
        file.relative_to(ROOT).as_posix(): readers_in(text_of(file))
        for file in modules("desktop_app")
    }
    assert {name: readers for name, readers in found.items() if readers} == {GATE: ["Image.open("]}


@pytest.mark.parametrize(
    "line",
    [
        *("QImageReader(path)", "QPixmap(str(path))", "QImage('a.png')", "cv2.imread(name)"),
        *("pixmap.loadFromData(content)", "Image.open(file)"),
    ],
)
def test_a_planted_reader_is_seen(line: str) -> None:
    assert readers_in(line) != []


@pytest.mark.parametrize("reading", ["cv2.imread(sys.argv[1])", "cv2.imdecode(bytes_of, 1)"])
def test_opencv_would_refuse_a_bomb(reading: str, tmp_path_factory: pytest.TempPathFactory) -> None:
    file = tmp_path_factory.mktemp("phone") / "bomb.png"
    file.write_bytes(one_bit())
    words = (
        "import sys, numpy, desktop_app.part_photos.camera.markers_found, cv2\n"
        "bytes_of = numpy.fromfile(sys.argv[1], numpy.uint8)\n"
        f"try:\n    print({reading} is None)\nexcept cv2.error:\n    print('refused')\n"
    )
    ran = subprocess.run(
        [sys.executable, "-c", words, str(file)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    assert ran.stdout.strip() in ("True", "refused")
