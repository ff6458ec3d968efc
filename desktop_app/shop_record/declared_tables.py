"""Tables declared as classes, each column as an attribute of its class, and nothing more.

SQLAlchemy's own declarative classes are made for objects that are loaded, changed and saved; here
rows are read as rows and changed by deeds. Reading their declarations, what they put around each
column and what each question then costs took a fifth of a start. The declarations are spelt as
SQLAlchemy spells them, so that type checkers know them.
"""

from __future__ import annotations

import re
from inspect import get_annotations
from typing import Any, ClassVar, Generic, TypeVar

from sqlalchemy.schema import Column, MetaData, Table
from sqlalchemy.types import TypeEngine

_T = TypeVar("_T")

_DECLARED = re.compile(r"Mapped\[(\w+)( \| None)?\]")


class Mapped(Generic[_T]):
    """The annotation of a column: `Mapped[str]`, or `Mapped[int | None]` where it may be empty."""


class MappedColumn:
    """What more is said of a column than its type."""

    def __init__(self, *arguments: Any, **options: Any) -> None:
        self.arguments = arguments
        self.options = options


def mapped_column(*arguments: Any, **options: Any) -> Any:
    """Say more of a column, in the words of SQLAlchemy's Column."""
    return MappedColumn(*arguments, **options)


class DeclarativeBase:
    """The base of tables; a class with a `__tablename__` is one, with its bases' columns first."""

    metadata: ClassVar[MetaData]
    type_annotation_map: ClassVar[dict[Any, TypeEngine[Any]]]
    __table_args__: ClassVar[Any] = {}

    def __init_subclass__(cls) -> None:
        """Make the table and put its columns onto the class."""
        if "__tablename__" not in cls.__dict__:
            return
        rules = cls.__table_args__
        *constraints, options = rules if isinstance(rules, tuple) else (rules,)
        table = Table(
            cls.__dict__["__tablename__"], cls.metadata, *_columns(cls), *constraints, **options
        )
        cls.__table__ = table
        for column in table.columns:
            setattr(cls, column.name, column)

    @classmethod
    def __clause_element__(cls) -> Table:
        """Let SQLAlchemy take the class for its table, as in `select(Job)`."""
        return cls.__table__

    __table__: ClassVar[Table]


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
    types = {one.__name__: kind for one, kind in declared.type_annotation_map.items()}
    return [
        _column(name, said, one.__dict__.get(name), types)
        for one in reversed(declared.__mro__)
        for name, said in get_annotations(one).items()
        if "Mapped[" in said
    ]


def _column(name: str, said: str, more: Any, types: dict[str, TypeEngine[Any]]) -> Column[Any]:
    match = _DECLARED.fullmatch(said)
    if match is None or match[1] not in types:
        raise TypeError(f"{name}: {said} says no kind of column.")
    arguments = more.arguments if isinstance(more, MappedColumn) else ()
    options = more.options if isinstance(more, MappedColumn) else {}
    return Column(name, types[match[1]], *arguments, nullable=bool(match[2]), **options)
