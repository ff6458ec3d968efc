"""A shop's record: opened or created here, read anywhere, written through deeds only."""

from __future__ import annotations

import platform
from collections.abc import Callable, Iterator, Sequence
from contextlib import AbstractContextManager, contextmanager
from datetime import datetime
from pathlib import Path

from sqlalchemy import Connection, Engine
from sqlalchemy.exc import DBAPIError, IntegrityError

from desktop_app.language import tr
from desktop_app.shop_record import upgrade
from desktop_app.shop_record.bulk import BulkRows
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.databases.by_database import PATIENCE, SERVER
from desktop_app.shop_record.databases.dialect_search import room_to_write
from desktop_app.shop_record.deed import Deed, Done, RowChange
from desktop_app.shop_record.new_record import make_record
from desktop_app.shop_record.one_look import OneLook
from desktop_app.shop_record.past import history
from desktop_app.shop_record.past.deed_words import deed_words
from desktop_app.shop_record.past.long_reverse import Tell, is_long, nobody_waits
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.record_name import FILE_NAME, is_server_folder
from desktop_app.shop_record.server.server_trouble import (
    NotKnown,
    ServerLost,
    not_known_whether_kept,
    server_lost,
)
from desktop_app.shop_record.trouble import NotSaved, ShopDamaged, ShopTrouble
from desktop_app.shop_record.under_way import LongWriting, forget, under_way

Clock = Callable[[], datetime]
Follower = Callable[[Connection, Sequence[RowChange]], None]
BulkFollower = Callable[[Connection, Sequence[BulkRows]], None]


class ShopRecord:
    """The open record of one shop.

    `followers` are called inside each deed's transaction with the rows it changed; they keep what
    is derived (the search index) in step; `bulk_followers` with the ranges of rows that it added
    or took out. `know_tables` is called before an undo, which meets
    tables that nothing else may have loaded yet. `who` is the person at the desk now. `refuses` is
    told to whoever wants to write, once the record was found damaged. `folder` is what stays on
    this computer where the record is on a server; `away` is told to everybody, at once, while that
    can't be reached and somebody watches for it to come back (`is_watched`).
    """

    def __init__(
        self, folder: Path, engine: Engine, clock: Clock, photos: PhotoFiles | None = None
    ) -> None:
        self.folder = folder
        self.clock = clock
        self.who = ""
        self.refuses: ShopTrouble | None = None
        self.photos = photos or PhotoFiles(folder / "photos")
        self.followers: list[Follower] = []
        self.bulk_followers: list[BulkFollower] = []
        self.know_tables: Callable[[], None] = lambda: None
        self.away: ServerLost | None = None
        self.is_watched = False
        self._engine = engine
        self._closed = False
        self._look = OneLook()

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """Give a connection to read from; its whole use sees one state of the record."""
        with self._told(), self._look.reading(self._begun, self._told) as connection:
            yield connection

    def one_look(self) -> AbstractContextManager[None]:
        """Let all that this thread reads meanwhile be read in one go, and see one state.

        For a page that asks in many places: to begin takes as long as to ask, and over a network
        is a wait of its own. Whoever takes a look waits for nobody. A deed ends it, and reads on
        its own connection alone.
        """
        return self._look.taken(self._told)

    @property
    def on_server(self) -> bool:
        """Tell whether the record is on a server and not in the folder."""
        return self._engine.dialect.name == SERVER

    @property
    def undoes_of(self) -> str | None:
        """Return the computer whose deeds undo takes back; None for all, where there is but one."""
        return platform.node() if self.on_server else None

    def hurry(self, *, everybody: bool = False) -> None:
        """Let nobody wait long who asks from this thread, the window's; at its end `everybody`."""
        patience = self._engine.get_execution_options().get(PATIENCE)
        if patience is not None:
            patience.hurry(everybody)

    def forget_idle(self) -> None:
        """Ask nothing more on connections that lie idle: their server was lost."""
        patience = self._engine.get_execution_options().get(PATIENCE)
        if patience is not None:
            patience.forget_idle()

    def listening(self) -> Connection:
        """Return a connection for who watches; it is to be closed before the record is."""
        return self._engine.connect()

    @contextmanager
    def deed(self, words: str) -> Iterator[Deed]:
        """Open a deed; when the block ends well it is committed with its entry, else nothing is."""
        with self._writing(words) as deed:
            yield deed
            self._finish(deed, None)

    def do(self, words: str, work: Callable[[Deed], None]) -> Done:
        """Carry out `work` as one deed and say what was done."""
        with self._writing(words) as deed:
            work(deed)
            seq = self._finish(deed, None)
        return _done(deed, seq)

    def undo_and_redo(self) -> tuple[str | None, str | None]:
        """Return the words of the deeds that undo would take back and redo bring back, or None."""
        with self.reading() as connection:
            undo, redo = history.stacks(connection, self.undoes_of)
        return (undo[-1].words if undo else None, redo[-1].words if redo else None)

    def can_undo(self) -> str | None:
        """Return the words of the deed that undo would take back, or None."""
        return self.undo_and_redo()[0]

    def can_redo(self) -> str | None:
        """Return the words of the deed that redo would bring back, or None."""
        return self.undo_and_redo()[1]

    def undo(self, tell: Tell = nobody_waits) -> Done:
        """Take back the last deed; refused where its values were changed since.

        `tell` hears how far it is and may raise, which leaves all as it was.
        """
        return self._reverse(0, tell)

    def redo(self, tell: Tell = nobody_waits) -> Done:
        """Bring back the last deed that was undone."""
        return self._reverse(1, tell)

    def take_back(self, seq: int) -> Done:
        """Take back the one deed of an entry, however old; refused as undo is."""
        self.know_tables()
        with self._writing("") as deed:
            entry = history.entry_of(deed.connection, seq)
            if entry is None:
                raise ShopTrouble(tr("There is no entry {seq} in the history.", seq=seq))
            return self._reverse_entry(deed, entry)

    def close(self) -> None:
        """Close all connections; who still comes later leaves none open either."""
        self._closed = True
        self._engine.dispose()

    def _reverse(self, which: int, tell: Tell) -> Done:
        self.know_tables()
        with LongWriting(self.folder) as long, self._writing("", tell) as deed:
            stack = history.stacks(deed.connection, self.undoes_of)[which]
            if not stack:
                nothing = (tr("There is nothing to undo."), tr("There is nothing to redo."))
                raise ShopTrouble(nothing[which])
            entry = stack[-1]
            if not is_long(deed.connection, entry):
                return self._reverse_entry(deed, entry)
            words = deed_words(entry.words)
            undone = tr("Undo: {words}", words=words)
            long.say(tr("Redo: {words}", words=words) if which else undone)
            with room_to_write(deed.connection):
                return self._reverse_entry(deed, entry)

    def _reverse_entry(self, deed: Deed, entry: history.Entry) -> Done:
        deed.words = entry.words
        try:
            history.reverse(deed, entry.seq)
            dialect.hear_refusals(deed.connection)
        except IntegrityError as error:
            raise ShopTrouble(
                tr(
                    "“{words}” can't be undone: something else hangs on it by now.",
                    words=deed_words(entry.words),
                ),
                kept=tr("Nothing was changed."),
                do=tr("Undo the later changes first."),
            ) from error
        return _done(deed, self._finish(deed, entry.seq))

    @contextmanager
    def _writing(self, words: str, tell: Tell = nobody_waits) -> Iterator[Deed]:
        """Open a deed, committed at the end; where nobody answers that it is, it is asked after."""
        if self.refuses is not None:
            raise self.refuses
        deed: Deed | None = None
        self._look.end(self._told)  # a record that is being read can't be written
        with self._told():
            try:
                with self._begun(writing=True) as connection:
                    forget(self.folder)
                    deed = Deed(connection, words, tell=tell)
                    yield deed
            except DBAPIError as error:
                if deed is None or deed.entry is None or not error.connection_invalidated:
                    raise
                if getattr(error.orig, "gave_up", False):  # who asks would wait once more
                    raise not_known_whether_kept() from error
                self._ask_after(deed.entry, error)

    @contextmanager
    def _begun(self, *, writing: bool = False) -> Iterator[Connection]:
        """Begin on a connection; where something long is under way nobody waits for it."""
        away = self.away  # asked once: whoever watches may find the server meanwhile
        if away is not None:
            raise away.anew()
        waits = 0.05 if under_way(self.folder) else None
        try:
            with self._engine.connect() as plain:
                dialect.wait_at_most(plain, waits)
                connection = plain.execution_options(writing=writing)
                with connection.begin():
                    yield connection
        finally:
            if self._closed:
                self._engine.dispose()

    def _ask_after(self, entry: tuple[int, str], error: DBAPIError) -> None:
        """Find out whether a deed was kept whose commit nobody confirmed; raise where it was not.

        Its hash can stand in no other entry. Who asks takes the lock of writers first, so the
        deed is over by then, one way or the other.
        """
        try:
            with self._begun(writing=True) as connection:
                kept = history.hash_of(connection, entry[0]) == entry[1]
        except (DBAPIError, ServerLost) as away:  # whoever watches may have been told first
            raise not_known_whether_kept() from away
        if not kept:
            raise error

    @contextmanager
    def _told(self) -> Iterator[None]:
        try:
            with _told(self.folder):
                yield
        except ServerLost as lost:
            if self.is_watched:
                self.away = server_lost() if isinstance(lost, NotKnown) else lost.anew()
            raise

    def _finish(self, deed: Deed, reverses: int | None) -> int | None:
        if not deed.changes and not deed.bulk:
            return None
        for follow in self.followers:
            follow(deed.connection, deed.changes)
        for follow_bulk in self.bulk_followers if deed.bulk else ():
            follow_bulk(deed.connection, deed.bulk)
        return history.write_entry(deed, self.clock(), self.who, platform.node(), reverses)


def create_shop(folder: Path, clock: Clock) -> ShopRecord:
    """Make a new shop in an empty or new folder and open it.

    Raises ShopTrouble where the folder holds something already or cannot be written.
    """
    make_record(folder)
    return open_shop(folder, clock)


def open_shop(folder: Path, clock: Clock) -> ShopRecord:
    """Open the shop in a folder, bringing an older record up to date after a copy was set aside.

    Raises ShopTrouble where there is no shop, the file is another program's, damaged or newer.
    """
    if is_server_folder(folder):
        from desktop_app.shop_record.server.server_shop import open_on_server

        with _told(folder):
            return open_on_server(folder, clock)
    path = folder / FILE_NAME
    try:
        if folder.is_file():
            raise ShopTrouble(
                tr("{folder} is a file.", folder=folder),
                do=tr("Name the folder that the shop lies in."),
            )
        if not path.is_file():
            if (folder / "backups").is_dir():
                raise ShopDamaged(tr("{path} is gone.", path=path), do=_way_back(folder))
            raise ShopTrouble(
                tr("There is no shop in {folder}.", folder=folder),
                do=tr(
                    "Make one with “benchwitness new-shop {folder}”, or choose another folder.",
                    folder=folder,
                ),
            )
        if not dialect.carries_our_mark(path):
            raise ShopDamaged(
                tr("{path} is not a shop's record, or its beginning is damaged.", path=path),
                kept=tr("The file was left as it is."),
                do=_way_back(folder),
            )
    except OSError as error:
        raise ShopTrouble(
            tr("{what} cannot be read: {error}.", what=path, error=error.strerror),
            do=tr("Ask for the right to read it."),
        ) from error
    engine = dialect.open_engine(path)
    try:
        with _told(folder):
            upgrade.bring_up_to_date(engine, path, clock())
    except UnicodeDecodeError as error:  # the database names what is damaged in it, in odd bytes
        engine.dispose()
        raise _damaged(dialect.damaged_record(), folder) from error
    except ShopDamaged as damage:
        engine.dispose()
        raise _damaged(damage, folder) from damage
    except ShopTrouble:
        engine.dispose()
        raise
    return ShopRecord(folder, engine, clock)


def _damaged(damage: ShopDamaged, folder: Path) -> ShopDamaged:
    return ShopDamaged(damage.what, damage.kept, _way_back(folder))


def _way_back(folder: Path) -> str:
    from desktop_app.shop_record.backups.last_good import way_back

    return way_back(folder)


def _done(deed: Deed, seq: int | None) -> Done:
    return Done(deed.words, deed.touched(), seq, deed.first_made())


@contextmanager
def _told(folder: Path) -> Iterator[None]:
    """Turn the database's foreseen errors into words."""
    try:
        yield
    except dialect.ERRORS as error:
        trouble = dialect.as_trouble(error, under_way(folder))
        if trouble is None:
            raise
        if isinstance(trouble, NotSaved) and not folder.is_dir():
            trouble = dialect.record_moved()
        raise trouble from error
