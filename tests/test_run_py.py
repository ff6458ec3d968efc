"""run.py: what it promises on a new computer and on the second start."""

from __future__ import annotations

import importlib.util
import os
import shutil
import subprocess
import sys
from pathlib import Path
from types import ModuleType, SimpleNamespace

import pytest

ROOT = Path(__file__).resolve().parents[1]
posix_only = pytest.mark.skipif(os.name == "nt", reason="the stand-in for Python is a shell script")


@pytest.fixture
def run_py() -> ModuleType:
    """run.py, loaded without starting anything."""
    spec = importlib.util.spec_from_file_location("run_py", ROOT / "run.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def checkout(tmp_path: Path, run_py: ModuleType) -> Path:
    """A copy of what run.py needs, with a stand-in for Python that says how it was called."""
    root = tmp_path / "a shop's folder"
    root.mkdir()
    for name in ("run.py", "pyproject.toml", "constraints.txt"):
        shutil.copy(ROOT / name, root)
    python = run_py.venv_python(root)
    python.parent.mkdir(parents=True)
    python.write_text('#!/bin/sh\nprintf "%s|" "$PWD" "$@"\nexit 7\n', encoding="ascii")
    python.chmod(0o755)
    run_py.stamp_file(root, "").write_text(run_py.fingerprint(root, ""), encoding="ascii")
    return root


def call(root: Path, *arguments: str, where: Path) -> subprocess.CompletedProcess[str]:
    order = [sys.executable, str(root / "run.py"), *arguments]
    plain = {name: value for name, value in os.environ.items() if name != "DISPLAY"}
    return subprocess.run(order, cwd=where, capture_output=True, text=True, check=False, env=plain)


def test_an_old_python_is_refused_with_the_version_that_is_needed(run_py: ModuleType) -> None:
    with pytest.raises(run_py.CannotSetUp, match=r"3\.11 or newer; this is Python 3\.9"):
        run_py.check_python((3, 9))
    run_py.check_python((3, 11))


def test_a_python_of_ten_years_ago_can_still_read_the_refusal() -> None:
    compile_as = "import ast, sys; ast.parse(open(sys.argv[1]).read(), feature_version=(3, 7))"
    subprocess.run([sys.executable, "-c", compile_as, str(ROOT / "run.py")], check=True)


def test_run_py_needs_the_standard_library_alone() -> None:
    order = [sys.executable, "-I", "-S", str(ROOT / "run.py"), "--none"]
    script = "import runpy, sys; runpy.run_path(sys.argv[1], run_name='loaded')"
    subprocess.run([*order[:3], "-c", script, order[3]], check=True)


@posix_only
def test_everything_is_handed_on_from_wherever_one_stands(checkout: Path, tmp_path: Path) -> None:
    ran = call(checkout, "demo", "my shop", "--json", where=tmp_path)
    assert ran.stdout == f"{tmp_path}|-P|-m|desktop_app|demo|my shop|--json|"
    assert ran.returncode == 7
    assert ran.stderr == ""


@posix_only
def test_alone_it_opens_the_window(checkout: Path, tmp_path: Path) -> None:
    assert call(checkout, where=tmp_path).stdout == f"{tmp_path}|-P|-m|desktop_app|"


@posix_only
def test_a_build_is_made_of_the_recipe(
    checkout: Path, run_py: ModuleType, capfd: pytest.CaptureFixture[str]
) -> None:
    assert run_py.build(checkout, ["--distpath", "there"]) == 7
    said = capfd.readouterr()
    begun, *words = said.out.rstrip("|").split("|")
    assert begun == str(checkout)
    assert words[:2] == ["-m", "PyInstaller"]
    assert words[-3:] == ["--distpath", "there", run_py.RECIPE]
    assert (ROOT / run_py.RECIPE).is_file()
    assert "failed with status 7" in said.err


@pytest.mark.parametrize("lacks", [True, False])
def test_what_a_build_takes_of_the_system_is_provided(
    run_py: ModuleType, monkeypatch: pytest.MonkeyPatch, lacks: bool
) -> None:
    wanted: list[list[tuple[str, ...]]] = []
    monkeypatch.setattr(run_py.sys, "platform", "linux")
    monkeypatch.setattr(run_py, "install_packages", lambda names, _why: wanted.append(names))
    monkeypatch.setattr(run_py.shutil, "which", lambda name: None if lacks else f"there/{name}")
    answer = SimpleNamespace(returncode=int(lacks))
    monkeypatch.setattr(run_py.subprocess, "run", lambda *_, **__: answer)
    run_py.provide_build_tools(Path("."))
    library = f"libpython{sys.version_info[0]}.{sys.version_info[1]}"
    assert wanted == ([[("binutils",), (library,)]] if lacks else [])


def test_a_changed_pyproject_is_set_up_again(checkout: Path, run_py: ModuleType) -> None:
    assert run_py.is_set_up(checkout, "")
    assert not run_py.is_set_up(checkout, "[test]")
    with (checkout / "pyproject.toml").open("a", encoding="utf-8") as file:
        file.write("# one more line\n")
    assert not run_py.is_set_up(checkout, "")


def test_what_was_set_up_for_the_tests_serves_the_program(
    checkout: Path, run_py: ModuleType
) -> None:
    run_py.stamp_file(checkout, "").unlink()
    done = run_py.fingerprint(checkout, "[test]")
    run_py.stamp_file(checkout, "[test]").write_text(done, encoding="ascii")
    assert run_py.is_set_up(checkout, "")


def test_a_folder_that_was_moved_is_set_up_again(checkout: Path, run_py: ModuleType) -> None:
    moved = checkout.with_name("elsewhere")
    checkout.rename(moved)
    assert not run_py.is_set_up(moved, "")


def test_without_root_the_one_line_to_type_is_printed(
    run_py: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(run_py, "is_root", lambda: False)
    monkeypatch.setattr(run_py.shutil, "which", lambda name: f"/usr/bin/{name}")
    monkeypatch.setattr(run_py, "known_name", lambda names: names[0])
    with pytest.raises(run_py.CannotSetUp) as refused:
        run_py.install_packages([("libglib2.0-0t64", "libglib2.0-0"), ("libgl1",)], "Missing.")
    lines = str(refused.value).splitlines()
    assert [line for line in lines if "sudo" in line] == [
        "  sudo apt-get install -y --no-install-recommends libglib2.0-0t64 libgl1"
    ]


@pytest.mark.parametrize(("known", "name"), [(0, "libglib2.0-0t64"), (100, "libglib2.0-0")])
def test_a_renamed_package_is_found_under_the_name_that_the_system_knows(
    run_py: ModuleType, monkeypatch: pytest.MonkeyPatch, known: int, name: str
) -> None:
    answer = SimpleNamespace(returncode=known, stdout=b"Package: ...")
    monkeypatch.setattr(run_py.subprocess, "run", lambda *_, **__: answer)
    assert run_py.known_name(("libglib2.0-0t64", "libglib2.0-0")) == name


def test_the_checks_are_style_types_layers_and_tests(run_py: ModuleType) -> None:
    orders = [" ".join(order) for order in run_py.checks(Path("bin/python"), [])]
    for wanted in ("ruff check", "ruff format --check", "mypy", "lint-imports", "pytest -n auto"):
        assert any(wanted in order for order in orders)


def test_a_chosen_test_runs_alone(run_py: ModuleType) -> None:
    python = Path("bin/python")
    assert run_py.checks(python, ["-k", "vin"]) == [[str(python), "-m", "pytest", "-k", "vin"]]
    assert run_py.checks_on_a_server(python, ["-k", "vin"]) == []


def test_all_tests_or_chosen_ones_run_on_a_server_by_hand(run_py: ModuleType) -> None:
    python = Path("bin/python")
    pytest_alone = [str(python), "-m", "pytest"]
    assert run_py.checks(python, ["--on-a-server"]) == []
    [everything] = run_py.checks_on_a_server(python, ["--on-a-server"])
    assert everything == [*pytest_alone, *run_py.SIDE_BY_SIDE]
    chosen = ["--on-a-server", "tests/screens", "-x"]
    assert run_py.checks(python, chosen) == []
    assert run_py.checks_on_a_server(python, chosen) == [[*pytest_alone, "tests/screens", "-x"]]


@posix_only
def test_what_runs_on_a_server_is_told_so(checkout: Path, run_py: ModuleType) -> None:
    python = run_py.venv_python(checkout)
    python.write_text('#!/bin/sh\necho "$BENCHWITNESS_TESTS_ON" > told\n', encoding="ascii")
    assert run_py.run_checks(checkout, ["--on-a-server"]) == 0
    assert (checkout / "told").read_text("ascii") == "postgresql\n"


def test_what_runs_on_a_server_too_is_there(run_py: ModuleType) -> None:
    """A file that was renamed would be missed only where the server's programs are installed."""
    root = Path(run_py.__file__).parent
    [order] = run_py.checks_on_a_server(Path("bin/python"), [])
    [listed] = [one.removeprefix("@") for one in order if one.startswith("@")]
    for place in (root / listed).read_text("utf-8").splitlines():
        assert (root / place).exists(), place


@posix_only
def test_one_failed_check_does_not_hide_the_others(
    checkout: Path, run_py: ModuleType, capfd: pytest.CaptureFixture[str]
) -> None:
    shutil.copy(run_py.venv_python(checkout), checkout / ".venv/bin/lint-imports")
    assert run_py.run_checks(checkout, []) == 7
    said = capfd.readouterr()
    assert said.out.count("-m|") == 5
    assert said.err.count("Failed with status 7") == 6


def test_pinned_releases_that_a_new_python_lacks_give_way_to_the_ranges(
    run_py: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    calls: list[list[str]] = []

    def pip(root: Path, arguments: list[str]) -> tuple[int, str]:
        calls.append(arguments)
        pinned = "constraints.txt" in arguments
        return (1, "ERROR: No matching distribution found for numpy") if pinned else (0, "")

    monkeypatch.setattr(run_py, "run_pip", pip)
    run_py.install(Path("."), "")
    assert ["constraints.txt" in arguments for arguments in calls] == [True, False]


def test_what_is_published_as_source_alone_does_not_undo_the_pins(
    run_py: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    calls: list[list[str]] = []
    monkeypatch.setattr(run_py, "run_pip", lambda _root, said: calls.append(said) or (0, ""))
    run_py.install(Path("."), "[test]")
    [words] = [" ".join(said) for said in calls]
    pins = (ROOT / "constraints.txt").read_text(encoding="utf-8")
    for name in run_py.SOURCE_ALONE:
        assert f"\n{name}==" in pins
        assert f"--only-binary :all: --no-binary {name}" in words


def test_a_dead_network_is_told_and_not_tried_twice(
    run_py: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    calls: list[list[str]] = []

    def pip(root: Path, arguments: list[str]) -> tuple[int, str]:
        calls.append(arguments)
        return 1, "ERROR: Connection refused"

    monkeypatch.setattr(run_py, "run_pip", pip)
    with pytest.raises(run_py.CannotSetUp, match="could not be installed"):
        run_py.install(Path("."), "")
    assert len(calls) == 1


def test_the_constraints_are_exact_and_name_no_address() -> None:
    lines = (ROOT / "constraints.txt").read_text(encoding="utf-8").splitlines()
    pins = [line for line in lines if line and not line.startswith("#")]
    assert len(pins) > 20
    assert [pin for pin in pins if pin.count("==") != 1 or "/" in pin or "@" in pin] == []
