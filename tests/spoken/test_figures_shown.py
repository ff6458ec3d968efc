"""Figures for people follow the decimal sign of the system; what is kept keeps the point."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from datetime import UTC, datetime
from decimal import Decimal
from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.figures_shown import VARIABLE, decimal_sign, figure, with_point
from desktop_app.language import as_written, tr
from desktop_app.shop_record.own_program.own_process import own_process
from desktop_app.shop_window.own_language import wanted_decimal_sign
from tests.figures_said import figures_with
from tests.spoken.spoken_files import ROOT

NARROW = "\N{NARROW NO-BREAK SPACE}"
WANTED = """
from desktop_app.shop_window.own_language import wanted_decimal_sign
print(wanted_decimal_sign())
"""


@pytest.fixture
def by_comma() -> Iterator[None]:
    with figures_with(","):
        yield


def test_with_a_point_figures_are_as_python_writes_them() -> None:
    assert figure(41250.5, ",.2f") == "41,250.50"
    assert figure(0.45) == "0.45"
    assert tr("{x:,.1f} mm", x=1234.5) == "1,234.5 mm"


@pytest.mark.usefixtures("by_comma")
@pytest.mark.parametrize(
    ("value", "spec", "wanted"),
    [
        (41250, ",", f"41{NARROW}250"),
        (1234567.125, ",.2f", f"1{NARROW}234{NARROW}567,12"),
        (0.45, "", "0,45"),
        (-0.5, ".2f", "-0,50"),
        (0.5, "+g", "+0,5"),
        (1e-9, "g", "1e-09"),
        (0.123, ".1%", "12,3%"),
        (Decimal("1.50"), "f", "1,50"),
        (np.float64(1234.5), ",.1f", f"1{NARROW}234,5"),
        (np.int64(1234), ",", f"1{NARROW}234"),
    ],
)
def test_with_a_comma_groups_have_a_narrow_space(value: object, spec: str, wanted: str) -> None:
    assert figure(value, spec) == wanted
    template = "{x:" + spec + "}" if spec else "{x}"
    assert tr(template, x=value) == wanted


@pytest.mark.usefixtures("by_comma")
def test_only_numbers_in_a_text_are_written_anew() -> None:
    moment = datetime(2026, 11, 16, 14, 5, tzinfo=UTC)
    said = tr(
        "1.5, {words}: {n} of {year:04d}, {at:%Y-%m-%d %H:%M}, {yes}, {third}, {more[0].real:.1f}.",
        **{"words": "a, b.", "n": 1234, "year": 2026, "at": moment, "yes": True},
        **{"third": Fraction(1, 3), "more": [2.5]},
    )
    assert said == "1.5, a, b.: 1234 of 2026, 2026-11-16 14:05, True, 1/3, 2,5."
    assert tr("{as} it stands, 1.5") == "{as} it stands, 1.5"


@pytest.mark.usefixtures("by_comma")
def test_what_is_kept_has_the_point() -> None:
    with as_written():
        assert decimal_sign() == "."
        assert figure(41250.5, ",.1f") == tr("{x:,.1f}", x=41250.5) == "41,250.5"
    assert decimal_sign() == ","


@given(st.floats(-1e12, 1e12), st.sampled_from([",.3f", ".3f", ",.10g", "g"]))
@pytest.mark.parametrize("sign", [".", ","])
def test_what_is_shown_is_the_same_number(sign: str, value: float, spec: str) -> None:
    with figures_with("," if sign == "," else "."):
        assert float(with_point(figure(value, spec))) == float(format(value, spec).replace(",", ""))


@pytest.mark.parametrize(("said", "wanted"), [(",", ","), (".", "."), ("!", ".")])
def test_the_environment_may_say_the_sign(
    said: str, wanted: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv(VARIABLE, said)
    if said == "!":
        monkeypatch.setenv("LC_ALL", "C")
    assert wanted_decimal_sign() == wanted


@pytest.mark.skipif(sys.platform != "linux", reason="the system's form is set by the environment")
@pytest.mark.parametrize(("system", "wanted"), [("es_ES", ","), ("es_MX", "."), ("de_DE", ",")])
def test_else_the_system_says_it(system: str, wanted: str) -> None:
    environ = {name: value for name, value in os.environ.items() if not name.startswith("LC_")}
    environ |= {"LANG": f"{system}.UTF-8", "PYTHONPATH": str(ROOT), VARIABLE: ""}
    done = subprocess.run(
        [sys.executable, "-c", WANTED], env=environ, capture_output=True, text=True, check=True
    )
    assert done.stdout.strip() == wanted


@pytest.mark.parametrize("sign", [".", ","])
def test_a_process_of_its_own_writes_figures_alike(sign: str) -> None:
    with figures_with("," if sign == "," else "."):
        process = own_process("tests.spoken.figure_said")
    said, _ = process.communicate(timeout=60)
    assert said.decode().strip() == (f"1{NARROW}234,5" if sign == "," else "1,234.5")
