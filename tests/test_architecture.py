"""This tree keeps its fences and its import contracts; a planted stranger is seen by each."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import partial
from pathlib import Path

import pytest

from tests.fences import (
    FENCES,
    HEAVY,
    MOST_BROAD_CATCHES,
    ROOT,
    Fence,
    broad_catches,
    clocks_and_files,
    empty_names,
    event_pumps,
    pointed_figures,
    sources,
    strangers,
    unnamed_folders,
)


def lint_imports(root: Path) -> subprocess.CompletedProcess[str]:
    """Run the import contracts on the tree below root."""
    order = [str(Path(sys.executable).with_name("lint-imports")), "--no-logo", "--no-cache"]
    return subprocess.run(order, cwd=root, capture_output=True, text=True, check=False)


@pytest.fixture(scope="module")
def clean_tree(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of the tree, for all tests that plant something."""
    root = tmp_path_factory.mktemp("tree")
    for folder in ("desktop_app", "demo_shop"):
        leave_out = shutil.ignore_patterns("__pycache__")
        shutil.copytree(ROOT / folder, root / folder, ignore=leave_out)
    (root / "tests").mkdir()
    shutil.copy(ROOT / ".importlinter", root)
    return root


@dataclass(frozen=True)
class Garden:
    """The copied tree, and what was planted in it."""

    root: Path
    taken_out: list[Callable[[], object]]

    def plant(self, path: str, text: str) -> None:
        """Put a module into the tree, perhaps in another's place."""
        file = self.root / path
        new_folders = [folder for folder in file.parents if not folder.exists()]
        file.parent.mkdir(parents=True, exist_ok=True)
        self.taken_out.extend(folder.rmdir for folder in reversed(new_folders))
        before = file.read_bytes() if file.exists() else None
        self.taken_out.append(partial(file.write_bytes, before) if before else file.unlink)
        file.write_text(text, encoding="utf-8")


@pytest.fixture
def garden(clean_tree: Path) -> Iterator[Garden]:
    """The copied tree; what is planted in it is taken out again."""
    garden = Garden(clean_tree, [])
    yield garden
    while garden.taken_out:
        garden.taken_out.pop()()


@pytest.mark.parametrize("fence", FENCES)
def test_the_tree_keeps_its_fences(fence: Fence) -> None:
    assert fence(ROOT) == []


def test_the_tree_keeps_its_import_contracts() -> None:
    ran = lint_imports(ROOT)
    assert ran.returncode == 0, ran.stdout + ran.stderr


WEAR, AGE, DEEDS = "parts_compared/wear.py", "repair_jobs/age.py", "weekly_report/actions.py"
SWALLOW = "try:\n    pass\nexcept Exception:\n    pass\n"


@pytest.mark.parametrize(
    ("fence", "path", "text"),
    [
        (strangers, WEAR, "from PySide6.QtCore import QObject"),
        (strangers, WEAR, "def f():\n    import PySide6"),
        (strangers, WEAR, "import importlib\nimportlib.import_module('PySide6.QtCore')"),
        (strangers, WEAR, "import sqlalchemy.orm"),
        (strangers, WEAR, "import sqlite3"),
        (strangers, WEAR, "import requests"),
        (strangers, WEAR, "import numpy as np"),
        (strangers, WEAR, "def f():\n    import pandas"),
        (strangers, WEAR, "from desktop_app.repair_jobs import stored"),
        (strangers, WEAR, "from desktop_app import shop_window"),
        (strangers, WEAR, "import desktop_app.parts_compared.stored_reading"),
        (
            strangers,
            "repair_jobs/stored_x.py",
            "from desktop_app.repair_jobs.actions import hand_over",
        ),
        (strangers, DEEDS, "from desktop_app.shop_window import look"),
        (strangers, DEEDS, "from desktop_app.repair_jobs.screen import page"),
        (strangers, DEEDS, "def f():\n    import demo_shop"),
        (strangers, "weekly_report/workbook.py", "import xlsxwriter"),
        (strangers, "repair_jobs/screen/page.py", "import sqlalchemy"),
        (clocks_and_files, AGE, "from datetime import date as d\nd.today()"),
        (clocks_and_files, AGE, "import datetime as dt\nnow = dt.datetime.now"),
        (clocks_and_files, AGE, "import time\ntime.time()"),
        (clocks_and_files, AGE, "open('x')"),
        (clocks_and_files, DEEDS, "import datetime\ndatetime.date.today()"),
        (broad_catches, AGE, SWALLOW),
        (broad_catches, AGE, SWALLOW.replace(" Exception", "")),
        (broad_catches, "shop_window/errand.py", SWALLOW * (MOST_BROAD_CATCHES + 1)),
        (event_pumps, "shop_window/busy.py", "QApplication.processEvents()"),
        (empty_names, "repair_jobs/utils.py", ""),
        (empty_names, "common/vin.py", ""),
        (unnamed_folders, "oil_cellar/actions.py", ""),
        (pointed_figures, WEAR, 'f"{gap:.2f} mm"'),
        (pointed_figures, AGE, 'f"{far:,} miles"'),
        (pointed_figures, AGE, 'f"{gap:.{places}f}"'),
    ],
)
def test_a_planted_stranger_is_seen(garden: Garden, fence: Fence, path: str, text: str) -> None:
    before = fence(garden.root)
    garden.plant(f"desktop_app/{path}", text + "\n")
    assert len(fence(garden.root)) > len(before)


def test_a_handler_that_passes_the_error_on_is_no_stranger(garden: Garden) -> None:
    text = "try:\n    pass\nexcept BaseException:\n    print('undone')\n    raise\n"
    garden.plant("desktop_app/repair_jobs/age.py", text)
    assert broad_catches(garden.root) == []


@pytest.mark.parametrize(
    ("path", "imported"),
    [
        (WEAR, "desktop_app.returns_watched"),
        ("shop_record/wear.py", "desktop_app.repair_jobs"),
        ("returns_watched/wear.py", "desktop_app.symptom_search"),
        ("symptom_search/wear.py", "desktop_app.returns_watched"),
        ("repair_jobs/stored.py", "desktop_app.repair_jobs.actions"),
        (DEEDS, "desktop_app.weekly_report.screen"),
    ],
)
def test_a_planted_stranger_breaks_a_contract(garden: Garden, path: str, imported: str) -> None:
    garden.plant("desktop_app/repair_jobs/actions.py", "")
    garden.plant(f"desktop_app/{path}", f"import {imported}\n")
    ran = lint_imports(garden.root)
    importer = f"desktop_app.{path.removesuffix('.py').replace('/', '.')}"
    assert ran.returncode == 1
    assert f"{importer} -> {imported}" in ran.stdout


def test_a_folder_that_no_contract_names_breaks_one(garden: Garden) -> None:
    garden.plant("desktop_app/oil_cellar/__init__.py", "")
    ran = lint_imports(garden.root)
    assert ran.returncode == 1
    assert "desktop_app.oil_cellar" in ran.stdout


def loaded_by(statements: str, unwanted: set[str]) -> list[str]:
    """Run statements in a fresh Python and name which of the unwanted libraries got loaded."""
    asked = f"{statements}\nimport sys\nprint(*sorted({unwanted!r} & set(sys.modules)))"
    order = [sys.executable, "-c", asked]
    ran = subprocess.run(order, cwd=ROOT, capture_output=True, text=True, check=False)
    assert ran.returncode == 0, ran.stderr
    return ran.stdout.split()


def test_the_commands_start_without_the_window_and_the_heavy_libraries() -> None:
    assert loaded_by("import desktop_app.commands", {"PySide6", *HEAVY}) == []


def test_a_shop_is_opened_without_what_saves_objects(tmp_path: Path) -> None:
    statements = (
        "from pathlib import Path; from desktop_app.commands import shop_place\n"
        f"shop_place.new_place(Path({str(tmp_path / 'shop')!r}), shop_place.now).close()"
    )
    assert loaded_by(statements, {"sqlalchemy.orm"}) == []


def test_numpy_starts_no_threads_of_its_own() -> None:
    tasks = Path("/proc/self/task")
    if not tasks.is_dir():
        pytest.skip("threads are counted on Linux")
    statements = "from desktop_app.__main__ import main; main(['no-command']); import numpy"
    asked = f"{statements}; import os; print(len(os.listdir({str(tasks)!r})))"
    environ = {key: value for key, value in os.environ.items() if key != "OPENBLAS_NUM_THREADS"}
    order = [sys.executable, "-c", asked]
    ran = subprocess.run(order, cwd=ROOT, env=environ, capture_output=True, text=True, check=True)
    assert ran.stdout.split()[-1] == "1"


def test_the_rules_load_neither_qt_nor_the_database() -> None:
    paths = [source.path for source in sources(ROOT) if source.is_rule()]
    names = [path.removesuffix(".py").removesuffix("/__init__").replace("/", ".") for path in paths]
    statements = "\n".join(f"import {name}" for name in names)
    assert loaded_by(statements, {"PySide6", "sqlalchemy", "alembic", *HEAVY}) == []
