"""The fences: who may import whom, where each library lives, what a rule may not do.

Each names what it finds in a tree; test_architecture.py holds them to this one and to planted
strangers.
"""

from __future__ import annotations

import ast
import configparser
import re
import sys
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from fnmatch import fnmatch
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
JOB_FOLDERS = (
    "repair_jobs",
    "part_photos",
    "parts_compared",
    "returns_watched",
    "symptom_search",
    "weekly_report",
    "records_exchanged",
    "job_history",
)
# What stands above the rules and what is kept: deeds, questions to the record, printed pages.
ABOVE_STORED = frozenset({"actions", "find", "sheet", "workbook"})
# Deeds of a narrower sort, and what opens files, and processes for them, and writes no deed.
OPENS_OR_WRITES = ("_actions", "_files")

SCREENS = ("desktop_app/*/screen/*", "desktop_app/program*.py", "desktop_app/*place*.py")
SCREENS += ("desktop_app/left_again.py",)
WINDOW = (*SCREENS, "desktop_app/shop_window/*", "desktop_app/__main__.py")
WINDOW += ("desktop_app/spoken_module.py",)
RECORD = ("desktop_app/shop_record/*",)
FIGURES = (*(f"desktop_app/{folder}/*" for folder in JOB_FOLDERS[1:]), "demo_shop/*")
# Where each thing from outside may be imported; what is not named here may be imported nowhere.
HOMES: dict[str, tuple[str, ...]] = {
    "PySide6": (*WINDOW, "demo_shop/pictures*.py"),
    "shiboken6": WINDOW,
    "sqlite3": RECORD,
    "sqlalchemy": (*RECORD, "desktop_app/*/stored*.py"),
    "alembic": RECORD,
    "psycopg": RECORD,
    "keyring": RECORD,
    "xlsxwriter": ("desktop_app/*/workbook.py", "desktop_app/*/workbook_charts.py"),
    "numpy": FIGURES,
    "scipy": FIGURES,
    "PIL": ("desktop_app/part_photos/*", "demo_shop/*"),
    "pillow_heif": ("desktop_app/part_photos/*", "demo_shop/*"),
    "cv2": ("desktop_app/part_photos/*",),
    "reportlab": ("desktop_app/*/sheet*.py",),
    "pypdfium2": (*WINDOW, "demo_shop/pictures.py"),
    "cryptography": ("desktop_app/part_photos/phone/own_certificate.py",),
    "segno": ("desktop_app/part_photos/screen/phone_code.py",),
    "zxingcpp": ("desktop_app/part_photos/codes/codes_in_picture.py",),
    "platformdirs": (*RECORD, "desktop_app/commands/*", *WINDOW),
    "tomli_w": (*RECORD, "desktop_app/parts_compared/*", "demo_shop/*"),
    "demo_shop": ("desktop_app/commands/*", "desktop_app/program.py", "demo_shop/*"),
    "desktop_app.shop_window": (*WINDOW, "demo_shop/pictures.py"),
}
HEAVY = frozenset(
    {"xlsxwriter", "scipy", "numpy", "PIL", "pillow_heif", "reportlab", "cv2"}
    | {"pypdfium2", "segno", "cryptography", "zxingcpp", "demo_shop"}
)
CLOCKS = frozenset(
    {f"datetime.datetime.{name}" for name in ("now", "utcnow", "today")}
    | {f"time.{name}" for name in ("time", "time_ns", "localtime", "gmtime")}
    | {"datetime.date.today"}
)
EMPTY_NAMES = frozenset(
    {"utils", "util", "helpers", "helper", "common", "core", "base", "manager", "managers", "misc"}
)
BROAD_CATCH_HOMES = (
    "desktop_app/shop_window/*",
    "desktop_app/program.py",
    "desktop_app/__main__.py",
)
MOST_BROAD_CATCHES = 3
BROAD = frozenset({"Exception", "BaseException"})


def level(module: str) -> int | None:
    """Return 0 for a rule, 1 for what is kept, 2 for deeds, 3 for a screen; None elsewhere."""
    first, folder, name = (*module.split("."), "", "")[:3]
    if first != "desktop_app" or folder not in JOB_FOLDERS:
        return None
    if name == "screen" or name in ABOVE_STORED or name.endswith(OPENS_OR_WRITES):
        return 3 if name == "screen" else 2
    return 1 if name.startswith("stored") else 0


@dataclass(frozen=True, slots=True)
class Source:
    """One module: its path from the root and its syntax tree."""

    path: str
    tree: ast.Module
    text: str

    def is_rule(self) -> bool:
        """Whether the module belongs to the rules of a job folder."""
        return self.level() == 0

    def level(self) -> int | None:
        """How high the module stands inside its job folder; None outside of these."""
        return level(self.path.removesuffix(".py").replace("/", "."))

    def lives_in(self, homes: tuple[str, ...]) -> bool:
        """Whether the path matches one of the homes."""
        return any(fnmatch(self.path, home) for home in homes)


@cache
def parsed(text: str) -> ast.Module:
    """Return a file's syntax tree; the same text in a copied tree is not taken apart again."""
    return ast.parse(text)


def sources(root: Path) -> Iterator[Source]:
    """Read every module of the program and of the demo."""
    for folder in ("desktop_app", "demo_shop"):
        for file in sorted((root / folder).rglob("*.py")):
            text = file.read_text(encoding="utf-8")
            yield Source(file.relative_to(root).as_posix(), parsed(text), text)


def called(node: ast.AST) -> str:
    """Return a name as it is written, dots and all; of what is no plain name only its end."""
    if isinstance(node, ast.Attribute):
        return f"{called(node.value)}.{node.attr}"
    return node.id if isinstance(node, ast.Name) else ""


def imports(node: ast.AST, at_top: bool = True) -> Iterator[tuple[str, bool]]:
    """Give each imported name with its folder, and whether the import happens at start-up."""
    for child in ast.iter_child_nodes(node):
        if isinstance(child, ast.Import):
            yield from ((alias.name, at_top) for alias in child.names)
        elif isinstance(child, ast.ImportFrom):
            yield from ((f"{child.module}.{alias.name}", at_top) for alias in child.names)
        elif isinstance(child, ast.Call) and called(child.func).endswith("import_module"):
            yield from ((str(ast.literal_eval(word)), at_top) for word in child.args[:1])
        typing_only = isinstance(child, ast.If) and "TYPE_CHECKING" in ast.unparse(child.test)
        later = isinstance(child, ast.FunctionDef | ast.AsyncFunctionDef | ast.Lambda)
        yield from imports(child, at_top and not later and not typing_only)


def home_of(name: str) -> tuple[str, ...] | None:
    """Return where this name may be imported, or None where it is denied to all."""
    for outside, homes in HOMES.items():
        if name == outside or name.startswith(outside + "."):
            return homes
    first = name.split(".")[0]
    if first in sys.stdlib_module_names or first == "desktop_app":
        return ("*",)
    return None


def reaches_up(importer: int | None, imported: int | None) -> bool:
    """Whether a module of a job folder imports what stands above it, in whichever folder."""
    return importer is not None and imported is not None and imported > importer


def strangers(root: Path) -> list[str]:
    """Name every import that is not at home where it stands."""
    return [said for source in sources(root) for said in strangers_of(source)]


@cache
def strangers_of(source: Source) -> tuple[str, ...]:
    """Name those of one module; one that was copied with the tree is not looked at again."""
    found = []
    for name, at_top in imports(source.tree):
        first = name.split(".")[0]
        homes = home_of(name)
        if homes is None or not source.lives_in(homes):
            found.append(f"{source.path} imports {name}, which has no home there")
        elif at_top and first in HEAVY and source.path.startswith("desktop_app/"):
            found.append(f"{source.path} imports {name} at start-up; do it where it is used")
        elif first == "desktop_app" and "screen" in name.split(".")[2:3]:
            if not source.lives_in(SCREENS):
                found.append(f"{source.path} imports the screen {name}")
        elif reaches_up(source.level(), level(name)):
            found.append(f"{source.path} imports {name}, which stands above it")
    return tuple(found)


def full_names(tree: ast.Module) -> dict[str, str]:
    """Map each imported name of a module to what it stands for."""
    names = {}
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            for alias in node.names:
                names[alias.asname or alias.name] = alias.name
        elif isinstance(node, ast.ImportFrom):
            for alias in node.names:
                names[alias.asname or alias.name] = f"{node.module}.{alias.name}"
    return names


def clocks_and_files(root: Path) -> list[str]:
    """Name every rule that opens a file, and every rule or deed that looks at the clock."""
    return [said for source in sources(root) for said in clocks_and_files_of(source)]


@cache
def clocks_and_files_of(source: Source) -> tuple[str, ...]:
    """Name those of one module; one that was copied with the tree is not looked at again."""
    found = []
    rule = source.is_rule()
    if source.level() not in (0, 1, 2):
        return ()
    names = full_names(source.tree)
    for node in ast.walk(source.tree):
        if isinstance(node, ast.Attribute | ast.Name):
            first, dot, rest = called(node).partition(".")
            name = names.get(first, first) + dot + rest
            if name in CLOCKS:
                found.append(f"{source.path}:{node.lineno} looks at the clock ({name})")
            if rule and name in ("open", "io.open", "os.open"):
                found.append(f"{source.path}:{node.lineno} opens a file")
    return tuple(found)


def broad_catches(root: Path) -> list[str]:
    """Name every handler that catches whatever comes and does not pass it on."""
    found: list[str] = []
    at_home: list[str] = []
    for source in sources(root):
        place = at_home if source.lives_in(BROAD_CATCH_HOMES) else found
        place.extend(broad_catches_of(source))
    return found + at_home[MOST_BROAD_CATCHES:]


@cache
def broad_catches_of(source: Source) -> tuple[str, ...]:
    """Name those of one module; one that was copied with the tree is not looked at again."""
    found = []
    for node in ast.walk(source.tree):
        if not isinstance(node, ast.ExceptHandler):
            continue
        caught = ast.unparse(node.type).strip("()").split(", ") if node.type else BROAD
        last = node.body[-1]
        passed_on = isinstance(last, ast.Raise) and last.exc is None
        if not passed_on and BROAD.intersection(caught):
            found.append(f"{source.path}:{node.lineno} catches everything")
    return tuple(found)


def event_pumps(root: Path) -> list[str]:
    """Name every module that pumps Qt's events by hand."""
    return [source.path for source in sources(root) if "processEvents" in source.text]


def empty_names(root: Path) -> list[str]:
    """Name every module or folder whose name says nothing about the trade."""
    places = [root / "desktop_app", root / "demo_shop", root / "tests"]
    files = [file.relative_to(root) for place in places for file in place.rglob("*.py")]
    return [str(file) for file in files if EMPTY_NAMES & {*file.parts[:-1], file.stem}]


def unnamed_folders(root: Path) -> list[str]:
    """Name every folder with deeds that the contract inside the folders does not know."""
    contracts = configparser.ConfigParser()
    contracts.read(root / ".importlinter", encoding="utf-8")
    named = contracts["importlinter:contract:inside-folders"]["containers"].split()
    deeds = sorted((root / "desktop_app").rglob("actions.py"))
    folders = [".".join(file.parent.relative_to(root).parts) for file in deeds]
    return [folder for folder in folders if folder not in named]


#: Figures that nobody reads with a comma: what commands print, the record, hashes, files for
#: machines (tables, workbook cells, TOML), file names, what is parsed again at once.
POINTED = (
    "desktop_app/commands/*", "desktop_app/figures_shown.py", "demo_shop/*",
    "desktop_app/records_exchanged/*", "desktop_app/weekly_report/long_rows.py",
    "desktop_app/part_photos/kept_json.py", "desktop_app/parts_compared/mark_doubt.py",
    "desktop_app/repair_jobs/provocation.py", "desktop_app/repair_jobs/odometer_slip.py",
    # Here a text is looked at first and then goes through shown().
    "desktop_app/parts_compared/shown_value.py",
    "desktop_app/parts_compared/screen/gauge_readings_grid.py",
)  # fmt: skip
_FIGURE_FORM = re.compile(r"[+]?,|.*[.][^%]*[eEfFgG%]$|[+,]*[gG]$")


def pointed_figures(root: Path) -> list[str]:
    """Name every figure that is written into a text past figure(), shown() and tr()."""
    return [said for source in sources(root) for said in pointed_figures_of(source)]


@cache
def pointed_figures_of(source: Source) -> tuple[str, ...]:
    """Name those of one module; one that was copied with the tree is not looked at again."""
    if source.lives_in(POINTED):
        return ()
    allowed: set[ast.AST] = set()
    for node in ast.walk(source.tree):  # shown(f"..."), as it is shown; float(f"..."), rounded
        if isinstance(node, ast.Call) and called(node.func) in ("shown", "as_shown", "float"):
            allowed.update(inner for word in node.args for inner in ast.walk(word))
    found = []
    for node in ast.walk(source.tree):
        if isinstance(node, ast.FormattedValue) and node.format_spec and node not in allowed:
            form = "".join(
                str(one.value) if isinstance(one, ast.Constant) else "0"
                for one in getattr(node.format_spec, "values", ())
            )
            if _FIGURE_FORM.match(form) and "%Y" not in form and "%H" not in form:
                found.append(f"{source.path}:{node.lineno} writes a figure with a point ({form})")
    return tuple(found)


Fence = Callable[[Path], list[str]]
FENCES: tuple[Fence, ...] = (
    strangers,
    clocks_and_files,
    broad_catches,
    event_pumps,
    empty_names,
    unnamed_folders,
    pointed_figures,
)
