"""With a decimal comma the sheet has it, in its words and as a PDF; files for machines do not."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from desktop_app.__main__ import main
from desktop_app.figures_shown import VARIABLE, DecimalSign
from desktop_app.shop_record.record import ShopRecord
from tests.figures_said import figures_with
from tests.parts_compared.sheet_story import a_rotor, words_in
from tests.records_exchanged.test_in_any_language import TABLE

NAMES = {".": "by-point", ",": "by-comma"}
GAPS = ("--rotor-gap-mm", "0.55", "--plug-gap-mm", "1.0", "--compression-ratio", "9.5")


def test_the_sheet_has_the_comma(shop: ShopRecord) -> None:
    story = a_rotor(shop)
    with figures_with("."):
        by_point = words_in(story.pdf())
    with figures_with(","):
        by_comma = words_in(story.pdf())
    assert "0.55 mm" in by_point
    assert "0,55 mm" in by_comma
    assert "0.55" not in by_comma
    assert "33,42" in by_comma


def test_an_export_and_commands_keep_the_point(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv(VARIABLE, ",")
    shop, out = str(tmp_path / "shop"), {}
    (tmp_path / "jobs.csv").write_text(TABLE, encoding="utf-8")
    signs: tuple[DecimalSign, ...] = (".", ",")
    for sign in signs:
        with figures_with(sign):
            if sign == ".":
                assert main(["new-shop", shop]) == 0
                assert main(["import", str(tmp_path / "jobs.csv"), "--shop", shop]) == 0
            assert main(["export", str(tmp_path / NAMES[sign]), "--shop", shop]) == 0
        out[sign] = (tmp_path / NAMES[sign] / "jobs.csv").read_bytes()
    assert out["."] == out[","]
    assert b"1120.50,1.5" in out[","]
    capsys.readouterr()
    assert main(["spark", *GAPS]) == 0
    assert "2.9 kV" in capsys.readouterr().out
    assert main(["spark", *GAPS, "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["sum_kv"] > 1
