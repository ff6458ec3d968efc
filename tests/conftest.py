"""What every test stands on: no screen needed, no warning overlooked, no user's file touched."""

from __future__ import annotations

import importlib
import importlib.util
import logging
import os
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, settings

if TYPE_CHECKING:
    from desktop_app.shop_record.record import ShopRecord

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("QT_SCALE_FACTOR", "1")

# What the clock of the tests says: a Monday at noon.
NOON = datetime(2026, 11, 16, 12, 0, tzinfo=UTC)

IN_CI = os.environ.get("CI") == "true"

settings.register_profile(
    "shop",
    deadline=None,
    max_examples=60,
    derandomize=IN_CI,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.load_profile("shop")


def pytest_configure(config: pytest.Config) -> None:
    """Declare the marks that tests of this program may carry."""
    for line in (
        "expects_trouble_log: the test provokes a logged warning or error on purpose",
        "needs_tool(*names): the test runs these programs; it is skipped without, except in CI",
    ):
        config.addinivalue_line("markers", line)


class _TroubleLog(logging.Handler):
    """Keeps what was logged as a warning or worse."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.lines: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.lines.append(f"{record.levelname} {record.name}: {record.getMessage()}")


@contextmanager
def _no_trouble_logged(item: pytest.Item) -> Iterator[None]:
    """Fail the test when something was logged that nobody expected."""
    log = _TroubleLog()
    logging.getLogger().addHandler(log)
    try:
        yield
    finally:
        logging.getLogger().removeHandler(log)
    if log.lines and item.get_closest_marker("expects_trouble_log") is None:
        pytest.fail("Logged, but not expected:\n" + "\n".join(log.lines), pytrace=False)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_setup(item: pytest.Item) -> Iterator[None]:
    """Look for the programs that a test needs, and watch the log while it is prepared."""
    for mark in item.iter_markers("needs_tool"):
        missing = [name for name in mark.args if shutil.which(name) is None]
        if missing:
            reason = f"needs {', '.join(missing)}, which this computer lacks"
            (pytest.fail if IN_CI else pytest.skip)(reason)
    with _no_trouble_logged(item):
        return (yield)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_call(item: pytest.Item) -> Iterator[None]:
    """Watch the log while a test runs."""
    with _no_trouble_logged(item):
        return (yield)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_teardown(item: pytest.Item) -> Iterator[None]:
    """Watch the log while a test is tidied up."""
    with _no_trouble_logged(item):
        return (yield)


@pytest.fixture(autouse=True)
def strange_home(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A user's folder of the test's own, so that no test reads or changes the real one."""
    home = tmp_path_factory.mktemp("home")
    for name in ("HOME", "USERPROFILE", "APPDATA", "LOCALAPPDATA"):
        monkeypatch.setenv(name, str(home))
    for name in ("XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME"):
        monkeypatch.setenv(name, str(home / name.lower()))
    monkeypatch.delenv("BENCHWITNESS_SHOP", raising=False)
    return home


@pytest.fixture(scope="session")
def qapp(qapp):  # type: ignore[no-untyped-def]
    """The one QApplication, with the program's own fonts where it brings any."""
    if importlib.util.find_spec("desktop_app.shop_window.look") is not None:
        importlib.import_module("desktop_app.shop_window.look").load_fonts()
    return qapp


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[ShopRecord]:
    """A new shop's record in a folder of the test's own; its clock stands still."""
    from desktop_app.shop_record.record import create_shop

    record = create_shop(tmp_path / "shop", lambda: NOON)
    yield record
    record.close()
