"""What a command hands on to other programs keeps its terms, whatever language it speaks."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.own_language import AS_WRITTEN, LANGUAGES, VARIABLE
from tests import servers
from tests.spoken.spoken_files import ROOT
from tests.watched_shop import a_week_of_returns, judge_return

ASKED = (
    ("returns",),
    ("watch", "--today", "2026-07-01"),
    ("rates", "--by", "technician", "--today", "2026-11-16"),
    ("rates", "--by", "verdict", "--today", "2026-11-16"),
)
OTHERS = [code for code in LANGUAGES if code != AS_WRITTEN]


def said(folder: Path, code: str) -> list[str]:
    """What is handed on for each question, and last what the third one tells a person."""
    shop = ("--shop", str(folder))
    words = [*((*asked, "--json", *shop) for asked in ASKED), (*ASKED[2], *shop)]
    ask = f"from desktop_app.__main__ import main\nfor one in {words}: main(one), print('=====')"
    done = subprocess.run(
        (sys.executable, "-c", ask),
        cwd=ROOT,
        env={**os.environ, VARIABLE: code},
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    return done.stdout.split("=====")[: len(words)]


@pytest.mark.skipif(servers.wanted(), reason="a process of its own is not told of the server")
@pytest.mark.parametrize("code", OTHERS)
def test_terms_are_handed_on_as_they_are_written(code: str, shop: ShopRecord) -> None:
    a_week_of_returns(shop)
    judge_return(shop, 1, 2, "from our hands", cause_class="new")
    other, english = said(shop.folder, code), said(shop.folder, AS_WRITTEN)
    assert other[:-1] == english[:-1]
    assert other[-1] != english[-1]
