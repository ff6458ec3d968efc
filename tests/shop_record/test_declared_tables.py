"""Tables declared as classes: what the declaration says is what the table has."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from threading import Barrier
from typing import Any, ClassVar

import pytest
from sqlalchemy import CheckConstraint, ForeignKey, create_engine, select
from sqlalchemy.exc import IntegrityError
from sqlalchemy.schema import CreateTable, MetaData
from sqlalchemy.types import Integer, Text

from desktop_app.shop_record.declared_tables import (
    DeclarativeBase,
    Mapped,
    aliased,
    mapped_column,
)


class Things(DeclarativeBase):
    """Tables of this test alone."""

    metadata = MetaData()
    type_annotation_map: ClassVar[dict[Any, Any]] = {str: Text(), int: Integer()}


class Numbered(Things):
    """What every table here begins with."""

    __table_args__: ClassVar[Any] = {"sqlite_strict": True}

    id: Mapped[int] = mapped_column(primary_key=True)


class Drawer(Numbered):
    """Where tools lie."""

    __tablename__ = "drawer"

    label: Mapped[str] = mapped_column(unique=True)


class Tool(Numbered):
    """What lies there."""

    __tablename__ = "tool"
    __table_args__ = (CheckConstraint("worth >= 0", name="worth"), {"sqlite_strict": True})

    drawer_id: Mapped[int] = mapped_column(ForeignKey("drawer.id"))
    name: Mapped[str] = mapped_column(default="unnamed")
    worth: Mapped[int | None]


@pytest.fixture
def bench():
    """A connection to two tools in one drawer."""
    engine = create_engine("sqlite://")
    Things.metadata.create_all(engine)
    with engine.connect() as connection:
        connection.execute(Drawer.__table__.insert().values(label="upper"))
        for worth in (3, None):
            connection.execute(Tool.__table__.insert().values(drawer_id=1, worth=worth))
        yield connection
    engine.dispose()


def test_the_bases_columns_come_first_and_each_is_as_it_was_declared() -> None:
    words = str(CreateTable(Tool.__table__))
    assert [column.name for column in Tool.__table__.columns] == [
        *("id", "drawer_id", "name", "worth"),
    ]
    assert "worth INTEGER," in words
    assert "name TEXT NOT NULL" in words
    assert "FOREIGN KEY(drawer_id) REFERENCES drawer (id)" in words
    assert "CHECK (worth >= 0)" in words
    assert Numbered not in (Drawer, Tool)
    assert set(Things.metadata.tables) == {"drawer", "tool"}


def test_a_class_stands_for_its_table_and_its_names_for_columns(bench) -> None:
    asked = select(Tool.name, Drawer.label).join(Drawer, Drawer.id == Tool.drawer_id)
    assert bench.execute(asked.where(Tool.worth == 3)).all() == [("unnamed", "upper")]
    assert [row.worth for row in bench.execute(select(Tool).order_by(Tool.id))] == [3, None]


def test_a_table_twice_in_a_question(bench) -> None:
    one, other = aliased(Tool), aliased(Tool)
    pairs = select(one.id, other.id).join(other, other.drawer_id == one.drawer_id)
    assert bench.execute(pairs.where(one.id < other.id)).all() == [(1, 2)]


def test_rules_hold(bench) -> None:
    with pytest.raises(IntegrityError):
        bench.execute(Tool.__table__.insert().values(drawer_id=1, worth=-1))
    with pytest.raises(IntegrityError):
        bench.execute(Drawer.__table__.insert().values(label="upper"))


def declared_anew() -> tuple[type[Things], type[Things]]:
    """Two tables of which none was asked for yet: the first points to the second."""

    class Apart(DeclarativeBase):
        metadata = MetaData()
        type_annotation_map: ClassVar[dict[Any, Any]] = {str: Text(), int: Integer()}

    key: Any = {"id": mapped_column(primary_key=True)}
    names = {"__annotations__": {"id": "Mapped[int]", "of": "Mapped[int]"}}
    to_shelf = {"of": mapped_column(ForeignKey("shelf.id"))}
    books = type("Book", (Apart,), {"__tablename__": "book", **key, **names, **to_shelf})
    shelves = type(
        "Shelf",
        (Apart,),
        {
            "__tablename__": "shelf",
            "id": mapped_column(primary_key=True),
            "__annotations__": {"id": "Mapped[int]"},
        },
    )
    return books, shelves


def test_a_table_is_made_with_those_that_it_points_to() -> None:
    books, shelves = declared_anew()
    assert books.__table__.join(shelves.__table__).onclause.compare(books.of == shelves.id)
    books, shelves = declared_anew()
    (key,) = books.__table__.foreign_keys
    assert key.column is shelves.id


def test_all_tables_are_known_without_one_being_asked_for() -> None:
    books, shelves = declared_anew()
    assert list(books.metadata.sorted_tables) == [shelves.__table__, books.__table__]


def test_threads_that_ask_at_once_get_the_same_table() -> None:
    books, _ = declared_anew()
    together = Barrier(8)

    def asked(_: int) -> object:
        together.wait()
        return books.of

    with ThreadPoolExecutor(8) as threads:
        assert len(set(threads.map(asked, range(8)))) == 1


def test_what_cannot_be_a_column_is_refused() -> None:
    with pytest.raises(TypeError, match=r"price: Mapped\[Decimal\]"):
        type(
            "Priced",
            (Numbered,),
            {"__tablename__": "priced", "__annotations__": {"price": "Mapped[Decimal]"}},
        )
