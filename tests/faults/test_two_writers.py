"""Two programs write into one shop at once: none of what either said was saved is lost."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from desktop_app.commands.shop_place import new_place
from desktop_app.shop_record.checks.check import check_shop
from tests.conftest import NOON
from tests.faults.busy_shop import opened, photos_of
from tests.faults.test_backup_faults import ROOT

EACH = 40  # photos and deeds that each must have written


@pytest.mark.skipif(os.name == "nt", reason="there is no kill -9")
def test_what_two_programs_write_is_all_there(tmp_path: Path) -> None:
    shop = tmp_path / "shop"
    new_place(shop, lambda: NOON).close()
    words = (sys.executable, "-m", "tests.faults.writer_to_kill", str(shop))
    pipe = subprocess.PIPE
    writers = [
        subprocess.Popen(words, stdin=pipe, stdout=pipe, text=True, cwd=ROOT) for _ in range(2)
    ]
    children, said = [], set()
    for writer in writers:
        assert writer.stdin is not None
        writer.stdin.write("begin\n")
        writer.stdin.close()
    for writer in writers:
        assert writer.stdout is not None
        children.append(int(writer.stdout.readline().split()[1]))
        said |= {writer.stdout.readline().strip() for _ in range(2 * EACH)}
    for writer, child in zip(writers, children, strict=True):
        os.kill(child, signal.SIGKILL)
        assert writer.stdout is not None
        said |= {line.strip() for line in writer.stdout if not line.startswith("gone")}
        writer.wait()
        writer.stdout.close()
    assert len(said) >= 4 * EACH
    with opened(shop) as record:
        photos = photos_of(record)
        with record.reading() as connection:
            people = connection.exec_driver_sql("SELECT name FROM person").scalars().all()
        assert check_shop(record, photos).problems == ()
    kept = {f"photo {sha256}" for sha256, _ in photos} | {f"person {name}" for name in people}
    assert said <= kept
    assert all(any(f"person {child}-" in one for one in said) for child in children)
