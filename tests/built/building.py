"""The built program in the hands of a test: built where it must be, and started all alone."""

from __future__ import annotations

import os
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.fences import ROOT

#: Names a program that was built before; what it is may be old then.
VARIABLE = "BENCHWITNESS_BUILT"
PATIENCE = 600.0  # seconds; drawing the demo's photos takes longest

needs_a_build = pytest.mark.skipif(
    os.environ.get("CI") != "true" and VARIABLE not in os.environ,
    reason=f"building takes minutes: it is done in CI, or {VARIABLE} names what run.py build made",
)


@dataclass(frozen=True, slots=True)
class Built:
    """A built program, and the home that it has while it is tried."""

    program: Path
    home: Path

    @property
    def inside(self) -> Path:
        """Where everything else of it lies."""
        return self.program.parent / "_internal"

    def __call__(self, *words: str, status: int = 0) -> str:
        """Run a command that ends with this status; return what it said, else why it refused."""
        ran = subprocess.run(
            [self.program, *words],
            env=self.environ(),
            cwd=self.home,
            capture_output=True,
            text=True,
            timeout=PATIENCE,
            check=False,
        )
        assert ran.returncode == status, ran.stdout + ran.stderr
        return ran.stderr if status else ran.stdout

    def environ(self, **more: str) -> dict[str, str]:
        """Return all that the program finds around it: a home, and no program on its path."""
        return {"HOME": str(self.home), "PATH": "", "LANG": "C.UTF-8", **more}


def built_program(home: Path) -> Built:
    """Return the program that was named, or build it."""
    if named := os.environ.get(VARIABLE):
        return Built(Path(named).resolve(), home)
    order = [sys.executable, str(ROOT / "run.py"), "build"]
    made = subprocess.run(order, capture_output=True, text=True, check=False)
    assert made.returncode == 0, made.stderr
    return Built(ROOT / "dist" / "benchwitness" / "benchwitness", home)
