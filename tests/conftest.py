"""What every test stands on: no screen needed, no warning overlooked, no user's file touched."""

from __future__ import annotations

import gc
import importlib
import importlib.util
import logging
import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
from hypothesis import HealthCheck, settings

from tests import servers
from tests.servers import Server, running

if TYPE_CHECKING:
    from desktop_app.shop_record.record import ShopRecord

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("QT_SCALE_FACTOR", "1")

# Shops are written by the thousand: where memory holds files they cost no waiting for a disk.
MEMORY = Path("/dev/shm")
ROOM = 4 << 30  # bytes free; a whole run never needs a fourth of it
if os.access(MEMORY, os.W_OK) and shutil.disk_usage(MEMORY).free >= ROOM:
    os.environ.setdefault("TMPDIR", str(MEMORY))
    tempfile.tempdir = None  # it was asked for before; now it is looked up again

# Workers side by side have a core each; more threads would only stand in each other's way.
SIDE_BY_SIDE = "PYTEST_XDIST_WORKER" in os.environ
if SIDE_BY_SIDE:
    for library in ("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "OPENCV_FOR_THREADS_NUM"):
        os.environ.setdefault(library, "1")

# Files that read the one demo shop stay together: building it takes long.
ONE_DEMO = "tests/demo_shop/test_demo_"
LONG_FILES = frozenset({"built", "demo_shop", "shop_stories", "weekly_report"})

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
        "embedded: the test looks into the file of the embedded database, or damages it",
        "needs_tool(*names): the test runs these programs; it is skipped without, except in CI",
    ):
        config.addinivalue_line("markers", line)
    # An errand that ends after its shop was closed lets its connection go then.
    late = "ignore:<psycopg.Connection .* was deleted while still open:ResourceWarning"
    config.addinivalue_line("filterwarnings", late)
    if servers.wanted() and servers.programs() is None:
        lacking = "Nothing was run on a server: this computer lacks PostgreSQL."
        pytest.exit(lacking, returncode=1 if IN_CI else 0)


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config: pytest.Config, log: Any) -> Any:
    """Give each worker a file at a time, so that what a file sets up is set up once."""
    from xdist.scheduler import LoadScopeScheduling

    class ByFile(LoadScopeScheduling):
        def _split_scope(self, nodeid: str) -> str:
            file = nodeid.partition("::")[0]
            return ONE_DEMO if file.startswith(ONE_DEMO) else file

    config.option.loadscopereorder = False
    return ByFile(config, log)


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Let workers begin with the folders of long files: then they end at about the same time."""
    if servers.wanted():
        for item in items:
            if item.get_closest_marker("embedded") is not None:
                item.add_marker(pytest.mark.skip(reason="there is no such file on a server"))
    if SIDE_BY_SIDE:
        items.sort(key=lambda item: LONG_FILES.isdisjoint(item.path.parts))


def pytest_collection_finish() -> None:
    """Spare the collector what stays for the whole run: it would walk all of it again and again."""
    gc.collect()
    gc.freeze()


@pytest.hookimpl(wrapper=True)
def pytest_runtest_protocol(item: pytest.Item) -> Iterator[Any]:
    """Look for garbage after a test with a window, on its thread, as the program itself does.

    The interpreter would look wherever something is made: widgets that it finds on the thread of
    an errand take the whole run down with them.
    """
    if "qapp" not in getattr(item, "fixturenames", ()):
        return (yield)
    before = gc.get_threshold()
    gc.set_threshold(0)
    try:
        return (yield)
    finally:
        gc.set_threshold(*before)
        gc.collect(1)


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


@pytest.fixture(scope="session", autouse=True)
def record_built_once(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """The steps make the same empty record for every shop: they run once, then it is copied."""
    from desktop_app.shop_record import upgrade

    run_the_steps = upgrade.build
    built = tmp_path_factory.mktemp("built") / "shop.sqlite"

    def build(path: Path) -> None:
        if not built.exists():
            run_the_steps(path)
            shutil.copyfile(path, built)
        shutil.copyfile(built, path)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(upgrade, "build", build)
        yield


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    """A PostgreSQL server of this run's own."""
    with running() as started:
        yield started


@pytest.fixture(scope="session")
def empty_shop(server: Server) -> str:
    """The name of a database that a new shop was made in; others are copied from it."""
    from desktop_app.shop_record import upgrade
    from desktop_app.shop_record.databases.dialect_postgres import open_server
    from desktop_app.shop_record.server.server_address import read_address

    name = server.new_database()
    engine = open_server(read_address(server.address(name))[0], None)
    with engine.connect() as plain:
        connection = plain.execution_options(building=True, one_by_one=True)
        with connection.begin():
            upgrade.build_on(connection)
            connection.exec_driver_sql("INSERT INTO set_up VALUES ('photos', 'in the database')")
    engine.dispose()
    return name


@pytest.fixture
def server_folder(server: Server, empty_shop: str, tmp_path: Path) -> Iterator[Path]:
    """The folder of a new shop on the server."""
    from desktop_app.shop_record.server.server_address import read_address
    from desktop_app.shop_record.server.server_folder import ServerPlace, write_place

    name = server.new_database(empty_shop)
    folder = tmp_path / "on-server"
    write_place(folder, ServerPlace(read_address(server.address(name))[0]))
    yield folder
    server.drop(name)


@pytest.fixture(scope="session", autouse=servers.wanted())
def all_shops_on_the_server(server: Server, empty_shop: str) -> Iterator[None]:
    """Every new shop is a database of the server, and its folder names it."""
    from desktop_app.shop_record import new_record
    from desktop_app.shop_record.server.server_address import read_address
    from desktop_app.shop_record.server.server_folder import ServerPlace, write_place

    def make_file(path: Path) -> None:
        servers.MADE.append(server.new_database(empty_shop))
        write_place(path.parent, ServerPlace(read_address(server.address(servers.MADE[-1]))[0]))

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(new_record, "_make_file", make_file)
        yield


@pytest.fixture(autouse=servers.wanted())
def databases_go_with_their_test(server: Server, all_shops_on_the_server: None) -> Iterator[None]:
    """What a test made is dropped after it; what several tests share was there before, or stays."""
    before = len(servers.MADE)
    yield
    for name in servers.MADE[before:]:
        if name not in servers.SHARED:
            server.drop(name)
    del servers.MADE[before:]


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[ShopRecord]:
    """A new shop's record in a folder of the test's own; its clock stands still."""
    from desktop_app.shop_record.record import create_shop

    record = create_shop(tmp_path / "shop", lambda: NOON)
    yield record
    record.close()
