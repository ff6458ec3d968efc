"""Tables declared as classes, each column as an attribute of its class, and nothing more.

SQLAlchemy's own declarative classes are made for objects that are loaded, changed and saved; here
rows are read as rows and changed by deeds. Reading their declarations, what they put around each
column and what each question then costs took a fifth of a start. The declarations are spelt as
SQLAlchemy spells them, so that type checkers know them.
"""

from __future__ import annotations

import re
from inspect import get_annotations
from threading import RLock
from typing import Any, ClassVar, Generic, TypeVar

from sqlalchemy.schema import Column, MetaData, Table
from sqlalchemy.types import TypeEngine

_T = TypeVar("_T")

_DECLARED = re.compile(r"Mapped\[(\w+)( \| None)?\]")


class Mapped(Generic[_T]):
    """The annotation of a column: `Mapped[str]`, or `Mapped[int | None]` where it may be empty."""


class MappedColumn:
    """What more is said of a column than its type; asked for, the column of the table itself."""

    def __init__(self, *arguments: Any, **options: Any) -> None:
        self.arguments = arguments
        self.options = options
        self._name = ""

    def __set_name__(self, owner: type, name: str) -> None:
        """Hear which column it is."""
        self._name = name

    def __get__(self, row: object, declared: type[DeclarativeBase]) -> Any:
        """Return the column, in whichever table it stands."""
        return declared.__table__.columns[self._name]


def mapped_column(*arguments: Any, **options: Any) -> Any:
    """Say more of a column, in the words of SQLAlchemy's Column."""
    return MappedColumn(*arguments, **options)


class _Tables:
    """The tables that were declared, each made when it is first asked for."""

    def __init__(self, metadata: MetaData) -> None:
        self._metadata = metadata
        self._declared: dict[str, type[DeclarativeBase]] = {}
        self._making = RLock()  # several threads read the record

    def all_made(self) -> MetaData:
        """Return what knows all tables, with all of them made."""
        for one in tuple(self._declared.values()):
            self.made(one)
        return self._metadata

    def add(self, declared: type[DeclarativeBase]) -> None:
        """Take in a class; its table is not made yet."""
        self._declared[declared.__tablename__] = declared

    def made(self, declared: type[DeclarativeBase]) -> Table:
        """Return the table of a class, made with those that it points to."""
        with self._making:
            name = declared.__tablename__
            if name in self._metadata.tables:
                return self._metadata.tables[name]
            rules = declared.__table_args__
            *constraints, options = rules if isinstance(rules, tuple) else (rules,)
            table = Table(name, self._metadata, *_columns(declared), *constraints, **options)
            for key in table.foreign_keys:
                there = self._declared.get(key.target_fullname.partition(".")[0])
                if there is not None:
                    self.made(there)
            # All of it is made: from now on nothing stands between the class and its table.
            for column in table.columns:
                setattr(declared, column.name, column)
            declared.__table__ = table
            return table


class _MadeTable:
    """The table of a class: a start asks for few of them, and makes no others."""

    def __init__(self, tables: _Tables) -> None:
        self._tables = tables

    def __get__(self, row: object, declared: type[DeclarativeBase]) -> Table:
        return self._tables.made(declared)


class _AllMade:
    """All tables that were declared, made where they were not yet."""

    def __init__(self, tables: _Tables) -> None:
        self._tables = tables

    def __get__(self, row: object, declared: type[DeclarativeBase]) -> MetaData:
        return self._tables.all_made()


class DeclarativeBase:
    """The base of tables; a class with a `__tablename__` is one, with its bases' columns first."""

    metadata: ClassVar[MetaData]
    type_annotation_map: ClassVar[dict[Any, TypeEngine[Any]]]
    __tablename__: ClassVar[str]
    __table_args__: ClassVar[Any] = {}
    __table__: ClassVar[Table]
    _tables: ClassVar[_Tables]

    def __init_subclass__(cls) -> None:
        """Take the table in, and what is said of its columns."""
        if "metadata" in cls.__dict__:
            cls._tables = _Tables(cls.metadata)
            cls.metadata = _AllMade(cls._tables)  # type: ignore[assignment]
        for name, said in get_annotations(cls).items():
            if "Mapped[" not in said:
                continue
            _kind(cls, name, said)  # a wrong one is refused where it is written
            if name not in cls.__dict__:
                column = MappedColumn()
                column.__set_name__(cls, name)
                setattr(cls, name, column)
        if "__tablename__" in cls.__dict__:
            cls.__table__ = _MadeTable(cls._tables)  # type: ignore[assignment]
            cls._tables.add(cls)

    @classmethod
    def __clause_element__(cls) -> Table:
        """Let SQLAlchemy take the class for its table, as in `select(Job)`."""
        return cls.__table__


class _Alias:
    """A table a second time in the same question, with its columns as attributes."""

    def __init__(self, declared: type[DeclarativeBase]) -> None:
        self._alias = declared.__table__.alias()
        for column in self._alias.columns:
            setattr(self, column.key, column)

    def __clause_element__(self) -> Any:
        return self._alias


def aliased(declared: type[DeclarativeBase]) -> Any:
    """Return a table under another name."""
    return _Alias(declared)


def _columns(declared: type[DeclarativeBase]) -> list[Column[Any]]:
    return [
        _column(declared, name, said, one.__dict__[name])
        for one in reversed(declared.__mro__)
        for name, said in get_annotations(one).items()
        if "Mapped[" in said
    ]


def _column(declared: type[DeclarativeBase], name: str, said: str, more: Any) -> Column[Any]:
    kind, may_be_empty = _kind(declared, name, said)
    return Column(name, kind, *more.arguments, nullable=may_be_empty, **more.options)


def _kind(declared: type[DeclarativeBase], name: str, said: str) -> tuple[TypeEngine[Any], bool]:
    """Return the type of a column, and whether it may be empty; TypeError where it says none."""
    match = _DECLARED.fullmatch(said)
    types = {one.__name__: kind for one, kind in declared.type_annotation_map.items()}
    if match is None or match[1] not in types:
        raise TypeError(f"{name}: {said} says no kind of column.")
    return types[match[1]], bool(match[2])
