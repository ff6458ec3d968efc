"""The program built for a computer without Python: it starts alone, and so do its processes."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import zipfile
from io import BytesIO
from pathlib import Path
from typing import Any

import pypdf
import pytest
import xlsxwriter
from PIL import Image

from desktop_app.part_photos.picture_kind import JPEG
from desktop_app.part_photos.read_apart.photo_reader import PhotoReader
from desktop_app.records_exchanged.large_files import FROM_ROWS
from tests.built.building import PATIENCE, Built, built_program, needs_a_build
from tests.shop_stories.real_screen import until
from tests.shop_stories.x_server import display, xdo

__all__ = ["display"]  # a fixture

pytestmark = needs_a_build

HEAD = ("job number", "opened on", "plate", "concern", "correction")


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Built:
    """The program, with an empty home and no way to any Python."""
    return built_program(tmp_path_factory.mktemp("home"))


@pytest.fixture(scope="module")
def demo(built: Built, tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    """What `demo` said; the demo's photos are drawn by processes of their own."""
    folder = tmp_path_factory.mktemp("demo") / "shop"
    said: dict[str, Any] = json.loads(built("demo", str(folder), "--json"))
    return said


def test_it_says_the_version_of_this_tree(built: Built) -> None:
    source = (sys.executable, "-m", "desktop_app", "--version")
    here = subprocess.run(source, capture_output=True, text=True, check=True)
    assert built("--version") == here.stdout


def test_the_demo_writes_what_the_window_shows(demo: dict[str, Any]) -> None:
    sheet, week, window = map(Path, demo["files"])
    assert "distributor" in "".join(page.extract_text() for page in pypdf.PdfReader(sheet).pages)
    assert zipfile.ZipFile(week).testzip() is None
    with Image.open(window) as picture:
        assert picture.size == (1366, 900)
        assert len(picture.convert("RGB").getcolors(1 << 24) or ()) > 100


def test_the_demo_can_be_asked_and_is_whole(built: Built, demo: dict[str, Any]) -> None:
    assert json.loads(built("find", "misses when damp", "--shop", demo["shop"], "--json"))["jobs"]
    checked = json.loads(built("check", "--shop", demo["shop"], "--json"))
    assert checked["ok"], checked


def test_a_workbook_is_read_by_a_process_of_its_own(built: Built, tmp_path: Path) -> None:
    table = tmp_path / "old jobs.xlsx"
    with xlsxwriter.Workbook(table) as book:
        sheet = book.add_worksheet()
        sheet.write_row(0, 0, HEAD)
        sheet.write_row(1, 0, ("R-1", "2024-03-02", "TH 1042", "misses when damp", "coil renewed"))
    built("new-shop", str(tmp_path / "shop"))
    told = json.loads(built("import", str(table), "--shop", str(tmp_path / "shop"), "--json"))
    assert told["added"] == 1


def test_a_large_table_is_read_beside(built: Built, tmp_path: Path) -> None:
    table, shop = tmp_path / "old.csv", tmp_path / "shop"
    rows = (f"R-{number},2024-03-02,TH {number},stalls,cap renewed" for number in range(FROM_ROWS))
    table.write_text("\n".join([",".join(HEAD), *rows]), encoding="utf-8")
    built("new-shop", str(shop))
    assert json.loads(built("import", str(table), "--shop", str(shop), "--json"))["added"]


def test_a_photo_is_decoded_by_its_process(built: Built, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "frozen", True, raising=False)
    monkeypatch.setattr(sys, "executable", str(built.program))
    file = BytesIO()
    Image.new("RGB", (640, 480), "peru").save(file, "JPEG")
    reader = PhotoReader()
    try:
        opened = reader.opened(file.getvalue(), JPEG)
        used = Path(f"/proc/{reader.process_id()}/maps").read_text("utf-8")
    finally:
        reader.end()
    assert (opened.width, opened.height) == (640, 480)
    assert str(built.inside) in used
    assert f"{sys.prefix}/lib" not in used  # nothing of the Python that runs this test


def test_the_drivers_of_a_server_are_in_it(built: Built, tmp_path: Path) -> None:
    said = built("new-shop", "postgresql+psycopg://nobody@127.0.0.1:9/none", status=2)
    assert "127.0.0.1" in said
    assert "pip install" not in said


def test_no_test_and_no_reader_of_foreign_pictures_is_in_it(built: Built) -> None:
    inside = {file.relative_to(built.inside).as_posix() for file in built.inside.rglob("*")}
    readers = {name for name in inside if "/imageformats/" in name}
    assert {Path(name).stem.removeprefix("lib") for name in readers} == {"qjpeg"}
    tops = {name.split("/")[0] for name in inside}
    assert tops.isdisjoint({"pytest", "pandas", "matplotlib", "statsmodels", "tests"})
    assert [name for name in inside if Path(name).name.startswith(("libgtk", "qsvg"))] == []


@pytest.mark.needs_tool("Xvfb", "xdotool")
def test_its_window_opens_the_shop_on_a_real_screen(
    built: Built, display: str, tmp_path: Path
) -> None:
    built("new-shop", str(tmp_path / "shop"))
    order = [built.program, "--shop", str(tmp_path / "shop")]
    around = built.environ(DISPLAY=display)
    with subprocess.Popen(order, env=around, cwd=built.home, stderr=subprocess.PIPE) as program:
        try:
            asked = ("search", "--onlyvisible", "--name", "Our shop")
            until(lambda: xdo(display, *asked), "the shop to open")
            program.terminate()
            assert b"Traceback" not in program.communicate(timeout=PATIENCE)[1]
        finally:
            program.kill()


def test_what_can_be_sent_tells_that_it_was_built(built: Built) -> None:
    said = json.loads(built("problem-report", "--json"))["program.txt"]
    assert "built to run without Python" in said
    assert "sqlalchemy 2." in said.lower()


def test_what_goes_wrong_is_said_in_one_line(built: Built, tmp_path: Path) -> None:
    said = built("check", "--shop", str(tmp_path / "nothing"), status=2)
    assert len(said.splitlines()) == 1
    assert os.fspath(tmp_path) in said
