"""The wheel: it carries everything and works without a checkout; Qt's signals keep it alive."""

from __future__ import annotations

import importlib.util
import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
PIP = [sys.executable, "-m", "pip", "--disable-pip-version-check"]


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The wheel, built from this tree."""
    folder = tmp_path_factory.mktemp("wheel")
    order = [*PIP, "wheel", str(ROOT), "--no-deps", "-w", str(folder)]
    if importlib.util.find_spec("hatchling") is not None:
        order.append("--no-build-isolation")
    built = subprocess.run(order, capture_output=True, text=True, check=False)
    assert built.returncode == 0, built.stderr
    (file,) = folder.glob("benchwitness-*.whl")
    return file


def names_in(wheel: Path) -> list[str]:
    """List the files in the wheel."""
    with zipfile.ZipFile(wheel) as files:
        return files.namelist()


def test_the_wheel_carries_the_resources_and_the_demo(wheel: Path) -> None:
    names = names_in(wheel)
    for folder in (ROOT / "resources", ROOT / "demo_shop"):
        files = [file for file in folder.rglob("*") if file.is_file() and file.suffix != ".pyc"]
        inside = "desktop_app/resources" if folder.name == "resources" else "demo_shop"
        assert files
        missing = {f"{inside}/{file.relative_to(folder).as_posix()}" for file in files} - set(names)
        assert missing == set()
    assert any(name.startswith("desktop_app/resources/part_kinds/") for name in names)


def test_the_wheel_carries_the_program_and_no_test(wheel: Path) -> None:
    names = names_in(wheel)
    program = {file.relative_to(ROOT).as_posix() for file in (ROOT / "desktop_app").rglob("*.py")}
    assert program - set(names) == set()
    tops = {name.split("/")[0] for name in names}
    assert {top for top in tops if not top.endswith(".dist-info")} == {"desktop_app", "demo_shop"}


def test_the_command_is_called_benchwitness(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as files:
        (name,) = (name for name in files.namelist() if name.endswith("entry_points.txt"))
        said = files.read(name).decode()
    assert "benchwitness = desktop_app.__main__:main" in said


@pytest.mark.skipif(
    not (ROOT / "desktop_app" / "__main__.py").exists(), reason="there are no commands yet"
)
def test_the_installed_copy_works_outside_a_checkout(wheel: Path, tmp_path: Path) -> None:
    place, elsewhere = tmp_path / "installed", tmp_path / "elsewhere"
    elsewhere.mkdir()
    order = [*PIP, "install", "--no-deps", "--target", str(place), str(wheel)]
    subprocess.run(order, capture_output=True, check=True)
    asked = [sys.executable, "-m", "desktop_app", "kinds", "--json"]
    ran = subprocess.run(
        asked,
        cwd=elsewhere,
        env={**os.environ, "PYTHONPATH": str(place)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert ran.returncode == 0, ran.stderr
    assert "distributor-rotor" in json.dumps(json.loads(ran.stdout))


def test_five_thousand_signals_leave_the_program_alive() -> None:
    # One release of PySide6 lost a reference at each emit and stopped Python after some hundreds.
    script = """
from PySide6.QtCore import QObject, Signal

class Bell(QObject):
    rung = Signal(bool)

heard = []
bell = Bell()
bell.rung.connect(heard.append)
for _ in range(5000):
    bell.rung.emit(True)
print(len(heard))
"""
    ran = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=False
    )
    assert (ran.returncode, ran.stdout) == (0, "5000\n"), ran.stderr
