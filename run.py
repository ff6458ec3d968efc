"""Sets Benchwitness up on this computer the first time, then starts what was asked for.

    python3 run.py              open the window
    python3 run.py demo         open the window on an invented shop
    python3 run.py test         check the program: style, types, layers, tests
    python3 run.py build        build it for computers without Python, into the folder dist
    python3 run.py COMMAND ...  any other command of the program

Needs Python 3.11 or newer and nothing else.
"""

from __future__ import annotations

import ctypes
import hashlib
import importlib.util
import os
import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent
OLDEST_PYTHON = (3, 11)

# Debian's names; where a name changed with a release, the newer one stands first.
QT_PACKAGES = (
    ("libgl1",),
    ("libegl1",),
    ("libglib2.0-0t64", "libglib2.0-0"),
    ("libxkbcommon0",),
    ("libdbus-1-3",),
    ("libfontconfig1",),
)
WINDOW_LIBRARIES = {
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libX11-xcb.so.1": "libx11-xcb1",
}
# Published as source alone, and plain Python: nothing has to be compiled.
SOURCE_ALONE = ("autograd-gamma",)
# How tests run on all cores, which of them run on a PostgreSQL server of their own too, and the
# word that lets all of them, or those that are named after it, run there.
SIDE_BY_SIDE = ("-n", "auto", "--maxprocesses", "4")
ALSO_THERE = "tests/on_a_server/also_there.txt"
ON_A_SERVER = {"BENCHWITNESS_TESTS_ON": "postgresql"}
ALL_THERE = "--on-a-server"
# What is left out of a build, and what goes into it.
RECIPE = "resources/packed/benchwitness.spec"
# pip says one of these when a pinned release does not exist for this Python.
NO_SUCH_RELEASE = (
    "No matching distribution found",
    "Could not find a version that satisfies",
    "ResolutionImpossible",
    "Requires-Python",
)


class CannotSetUp(Exception):
    """This computer lacks something; the message says what and which line to type."""


def say(words: str) -> None:
    """Tell the user, on standard error: standard output belongs to the command."""
    print(words, file=sys.stderr, flush=True)


def check_python(version: tuple[int, int]) -> None:
    """Refuse a Python that is too old, naming the one that is needed."""
    if version < OLDEST_PYTHON:
        raise CannotSetUp(
            f"Benchwitness needs Python 3.11 or newer; this is Python {version[0]}.{version[1]}. "
            "Install a newer Python and start run.py with it, for example: python3.11 run.py"
        )


def is_root() -> bool:
    """Whether system packages may be installed without asking for a password."""
    return hasattr(os, "geteuid") and os.geteuid() == 0


def venv_python(root: Path) -> Path:
    """Where the program's own Python lies below root."""
    folder = root / ".venv"
    return folder / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def known_name(names: tuple[str, ...]) -> str:
    """Return the first of a package's names that this release of the system knows."""
    for name in names[:-1]:
        seen = subprocess.run(["apt-cache", "show", name], capture_output=True, check=False)
        if seen.returncode == 0 and seen.stdout:
            return name
    return names[-1]


def install_packages(alternatives: list[tuple[str, ...]], why: str) -> None:
    """Install Debian packages as root, or raise with the one line that a person would type."""
    if shutil.which("apt-get") is None:
        names = " ".join(names[-1] for names in alternatives)
        raise CannotSetUp(
            f"{why} Debian calls the missing packages: {names}. Install what this system calls "
            "them, then start run.py again."
        )
    if not is_root():
        names = " ".join(known_name(names) for names in alternatives)
        raise CannotSetUp(
            f"{why} Type this line once, then start run.py again:\n"
            f"  sudo apt-get install -y --no-install-recommends {names}"
        )
    quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    subprocess.run(["apt-get", "update", "-q"], stdout=sys.stderr, check=False, env=quiet)
    wanted = [known_name(names) for names in alternatives]
    say(f"{why} Installing {' '.join(wanted)} ...")
    order = ["apt-get", "install", "-y", "-q", "--no-install-recommends", *wanted]
    if subprocess.run(order, stdout=sys.stderr, check=False, env=quiet).returncode != 0:
        raise CannotSetUp(
            f"{why} apt-get could not install: {' '.join(wanted)}. It said why above."
        )


def make_venv(root: Path) -> None:
    """Make root/.venv, replacing one that was left half made."""
    python = venv_python(root)
    if python.exists():
        works = subprocess.run([python, "-m", "pip", "--version"], capture_output=True, check=False)
        if works.returncode == 0:
            return
    if importlib.util.find_spec("ensurepip") is None:
        name = f"python{sys.version_info[0]}.{sys.version_info[1]}-venv"
        install_packages([(name, "python3-venv")], "This Python cannot make a .venv yet.")
    say(f"Making {root / '.venv'} ...")
    made = subprocess.run(
        [sys.executable, "-m", "venv", "--clear", str(root / ".venv")],
        stdout=sys.stderr,
        check=False,
    )
    if made.returncode != 0:
        raise CannotSetUp(f"Python could not make {root / '.venv'}. It said why above.")


def run_pip(root: Path, arguments: list[str]) -> tuple[int, str]:
    """Run the .venv's pip, showing its lines on standard error; return its status and its words."""
    order = [
        str(venv_python(root)),
        "-m",
        "pip",
        "install",
        "--disable-pip-version-check",
        *arguments,
    ]
    lines = []
    with subprocess.Popen(
        order, cwd=root, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True
    ) as pip:
        assert pip.stdout is not None
        for line in pip.stdout:
            lines.append(line)
            if not line.startswith("Requirement already satisfied"):
                say(line.rstrip())
    return pip.returncode, "".join(lines)


def install(root: Path, extras: str) -> None:
    """Install the program and what it stands on into .venv, at the tested releases if possible."""
    what = ["-e", f".{extras}"]
    ready_made = ["--only-binary", ":all:"]
    for name in SOURCE_ALONE:
        ready_made += ["--no-binary", name]
    status, words = run_pip(root, [*ready_made, "-c", "constraints.txt", *what])
    if status != 0 and any(sign in words for sign in NO_SUCH_RELEASE):
        say("The tested releases are not all to be had for this Python; taking newer ones.")
        status, words = run_pip(root, what)
    if status != 0:
        raise CannotSetUp(
            "The libraries could not be installed; pip said why above. Nothing of yours was "
            "touched. With the network back, start run.py again: it goes on from here."
        )


def fingerprint(root: Path, extras: str) -> str:
    """Return a hash that changes when the set-up has to be done again."""
    seen = hashlib.sha256(f"{root}\n{extras}\n".encode())
    for name in ("pyproject.toml", "constraints.txt"):
        seen.update((root / name).read_bytes())
    return seen.hexdigest()


def stamp_file(root: Path, extras: str) -> Path:
    """Where it is noted that the set-up with these extras was finished."""
    return root / ".venv" / f"set-up{extras.replace('[', '-').replace(']', '')}"


def is_set_up(root: Path, extras: str) -> bool:
    """Whether nothing is left to do; what was set up for the tests serves the program too."""
    for done in {extras, "[test]"}:
        stamp = stamp_file(root, done)
        if stamp.exists() and stamp.read_text(encoding="ascii") == fingerprint(root, done):
            return venv_python(root).exists()
    return False


def qt_loads(root: Path) -> subprocess.CompletedProcess[str]:
    """Try to load Qt's widgets in the .venv, without a window."""
    return subprocess.run(
        [venv_python(root), "-c", "import PySide6.QtWidgets"],
        capture_output=True,
        text=True,
        check=False,
    )


def provide_qt_libraries(root: Path) -> None:
    """On Linux, install the system libraries that Qt needs, if it cannot be loaded without."""
    if not sys.platform.startswith("linux") or qt_loads(root).returncode == 0:
        return
    wanted: list[tuple[str, ...]] = list(QT_PACKAGES)
    wanted += [(name,) for name in WINDOW_LIBRARIES.values()]
    install_packages(wanted, "The window needs system libraries that are not here yet.")
    tried = qt_loads(root)
    if tried.returncode != 0:
        raise CannotSetUp(f"Qt still cannot be loaded: {tried.stderr.strip().splitlines()[-1]}")


def provide_window_libraries() -> None:
    """Where a window will open on an X display, install the libraries that only a window needs."""
    on_x = os.environ.get("DISPLAY") and not os.environ.get("WAYLAND_DISPLAY")
    if not sys.platform.startswith("linux") or not on_x:
        return
    missing: list[tuple[str, ...]] = []
    for library, package in WINDOW_LIBRARIES.items():
        try:
            ctypes.CDLL(library)
        except OSError:
            missing.append((package,))
    if missing:
        install_packages(missing, "The window needs system libraries that are not here yet.")


def set_up(root: Path, extras: str = "") -> None:
    """Do whatever is left of the set-up; finished already, it costs a few milliseconds."""
    if is_set_up(root, extras):
        return
    say("Setting Benchwitness up; this is done once and may take some minutes.")
    make_venv(root)
    install(root, extras)
    provide_qt_libraries(root)
    stamp_file(root, extras).write_text(fingerprint(root, extras), encoding="ascii")


def checks(python: Path, arguments: list[str]) -> list[list[str]]:
    """Return what `run.py test` runs: everything, or only pytest when something is chosen."""
    if ALL_THERE in arguments:
        return []
    tests = [str(python), "-m", "pytest", *arguments]
    if arguments:
        return [tests]
    beside = python.parent
    return [
        [str(python), "-m", "ruff", "check", "."],
        [str(python), "-m", "ruff", "format", "--check", "."],
        [str(python), "-m", "mypy"],
        [str(beside / "lint-imports")],
        [*tests, *SIDE_BY_SIDE],
    ]


def checks_on_a_server(python: Path, arguments: list[str]) -> list[list[str]]:
    """Return what runs with all shops on a server; without its programs it says so."""
    tests = [str(python), "-m", "pytest"]
    if ALL_THERE in arguments:
        chosen = [one for one in arguments if one != ALL_THERE]
        return [[*tests, *(chosen or SIDE_BY_SIDE)]]
    return [] if arguments else [[*tests, f"@{ALSO_THERE}", *SIDE_BY_SIDE]]


def run_checks(root: Path, arguments: list[str]) -> int:
    """Run every check, even after one has failed; return the first status that is not 0."""
    failed: list[tuple[str, int]] = []
    # The tests start the program again and again: compiled once, it starts in half the time.
    compiled = {**os.environ, "PYTHONDONTWRITEBYTECODE": ""}
    python = venv_python(root)
    orders = [(order, {}) for order in checks(python, arguments)]
    orders += [(order, ON_A_SERVER) for order in checks_on_a_server(python, arguments)]
    for order, more in orders:
        set_to = [f"{name}={value}" for name, value in more.items()]
        title = " ".join([*set_to, Path(order[0]).name, *order[1:]])
        say(f"--- {title}")
        status = subprocess.run(order, cwd=root, check=False, env=compiled | more).returncode
        if status != 0:
            failed.append((title, status))
    for title, status in failed:
        say(f"Failed with status {status}: {title}")
    return failed[0][1] if failed else 0


def provide_build_tools(root: Path) -> None:
    """On Linux, install what a build takes of the system: its linker's tools, Python's library."""
    if not sys.platform.startswith("linux"):
        return
    missing: list[tuple[str, ...]] = []
    if shutil.which("objcopy") is None:
        missing.append(("binutils",))
    asked = "from PyInstaller.depend import bindepend; bindepend.get_python_library_path() or 1 / 0"
    found = subprocess.run([venv_python(root), "-c", asked], capture_output=True, check=False)
    if found.returncode != 0:
        missing.append((f"libpython{sys.version_info[0]}.{sys.version_info[1]}",))
    if missing:
        install_packages(missing, "A build needs something of the system that is not here yet.")


def build(root: Path, arguments: list[str]) -> int:
    """Build the program for computers like this one that have no Python; return the status."""
    order = [str(venv_python(root)), "-m", "PyInstaller", "--noconfirm", "--log-level", "ERROR"]
    say("Building; this takes some minutes.")
    status = subprocess.run([*order, *arguments, RECIPE], cwd=root, check=False).returncode
    say(f"The build failed with status {status}." if status else "Built into the folder dist.")
    return status


def start(root: Path, arguments: list[str]) -> int:
    """Hand the arguments on to the program and return its exit status."""
    # -P: a folder of the same name where the user happens to stand must not be taken for ours.
    order = [str(venv_python(root)), "-P", "-m", "desktop_app", *arguments]
    if os.name != "nt":
        os.execv(order[0], order)
    return subprocess.run(order, check=False).returncode


def main(arguments: list[str], root: Path = ROOT) -> int:
    """Set up, then do what was asked; return the exit status."""
    try:
        check_python(sys.version_info[:2])
        if arguments[:1] == ["test"]:
            set_up(root, "[test]")
            return run_checks(root, arguments[1:])
        if arguments[:1] == ["build"]:
            set_up(root, "[build]")
            provide_build_tools(root)
            return build(root, arguments[1:])
        set_up(root)
        if arguments[:1] in ([], ["demo"]):
            provide_window_libraries()
    except CannotSetUp as trouble:
        say(str(trouble))
        return 2
    return start(root, arguments)


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except KeyboardInterrupt:
        sys.exit(130)
