"""Small files, short functions, said in one line; and nothing that belongs to one computer."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
MOST_LINES = 400
MOST_FUNCTION_LINES = 60
LEFT_OUT = frozenset({"build", "dist", "__pycache__"})
TEXT = frozenset(
    {".py", ".toml", ".md", ".txt", ".cfg", ".ini", ".yaml", ".yml", ".json", ".svg", ".html"}
    | {".css", ".csv", ".sh", ""}
)
# Written so that this file does not name them itself.
MACHINE_PATHS = tuple(f"/{folder}/" for folder in ("work", "root", "home", "opt", "tmp", "Users"))
REGISTRY_HOSTS = (
    *(f"{host}.org" for host in ("pypi", "pythonhosted", "npmjs", "anaconda", "golang", "conda")),
    *(f"{host}.io" for host in ("crates", "ghcr", "quay", "docker")),
)


def files_of(*folders: str) -> Iterator[Path]:
    """Give every file of these folders of the repository ("." for what lies on top)."""
    for folder in folders:
        found = (ROOT / folder).iterdir() if folder == "." else (ROOT / folder).rglob("*")
        for file in sorted(found):
            if file.is_file() and not LEFT_OUT & set(file.relative_to(ROOT).parts):
                yield file


@cache
def text_of(file: Path) -> str:
    """Return what a file says; many tests look for something in all of them."""
    return file.read_text(encoding="utf-8")


def modules(*folders: str) -> list[Path]:
    """List the Python files of these folders."""
    return [file for file in files_of(*folders) if file.suffix == ".py"]


def long_functions(file: Path) -> list[str]:
    """Name the functions of a file that are longer than the cap."""
    found = []
    for node in ast.walk(ast.parse(text_of(file))):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            length = (node.end_lineno or node.lineno) - node.lineno + 1
            if length > MOST_FUNCTION_LINES:
                found.append(f"{file.relative_to(ROOT)}:{node.lineno} {node.name}: {length} lines")
    return found


def test_no_file_is_longer_than_the_cap() -> None:
    lengths = {
        str(file.relative_to(ROOT)): len(text_of(file).splitlines())
        for file in modules(".", "desktop_app", "demo_shop", "tests")
    }
    assert {name: lines for name, lines in lengths.items() if lines > MOST_LINES} == {}


def test_no_function_is_longer_than_the_cap() -> None:
    # A step of the record lists whole tables; it is read once and never changed again.
    files = [
        file for file in modules(".", "desktop_app", "demo_shop") if file.parent.name != "versions"
    ]
    assert [line for file in files for line in long_functions(file)] == []


def test_every_module_says_what_it_is() -> None:
    silent = []
    for file in modules(".", "desktop_app", "demo_shop", "tests"):
        tree = ast.parse(text_of(file))
        if tree.body and not (ast.get_docstring(tree) or "").strip():
            silent.append(str(file.relative_to(ROOT)))
    assert silent == []


@pytest.mark.parametrize("unwanted", [*MACHINE_PATHS, *REGISTRY_HOSTS])
def test_nothing_names_a_computer_or_a_registry(unwanted: str) -> None:
    # A path begins where no other word stands before it: "km/work/day" is not one.
    sign = re.compile(
        r"(?<![\w.:/])" + re.escape(unwanted) if unwanted[0] == "/" else re.escape(unwanted)
    )
    found = [
        str(file.relative_to(ROOT))
        for file in files_of(".", ".ci", "desktop_app", "demo_shop", "resources", "tests")
        if file.suffix in TEXT and sign.search(text_of(file))
    ]
    assert found == []
