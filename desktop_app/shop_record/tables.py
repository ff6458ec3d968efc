"""The base of every kept table, and the two tables that belong to the record itself."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, ClassVar

from sqlalchemy import BigInteger, Double, ForeignKey, Integer, Text
from sqlalchemy.dialects.sqlite import REAL
from sqlalchemy.schema import MetaData
from sqlalchemy.types import TypeEngine

if TYPE_CHECKING:
    from sqlalchemy.orm import DeclarativeBase, Mapped, aliased, mapped_column
else:
    from desktop_app.shop_record.declared_tables import (
        DeclarativeBase,
        Mapped,
        aliased,
        mapped_column,
    )

__all__ = [
    "KEPT",
    "NAMING",
    "Base",
    "HistoryEntry",
    "Kept",
    "Mapped",
    "Real",
    "Setting",
    "Whole",
    "aliased",
    "mapped_column",
]

# SQLite's STRICT tables know INTEGER, REAL, TEXT and BLOB only; PostgreSQL's REAL is too short.
# A whole number has eight bytes in both.
Real: TypeEngine[float] = Double().with_variant(REAL(), "sqlite")
Whole: TypeEngine[int] = BigInteger().with_variant(Integer(), "sqlite")

NAMING = {
    "ix": "ix_%(table_name)s_%(column_0_N_name)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "ck": "ck_%(table_name)s_%(constraint_name)s",
    "fk": "fk_%(table_name)s_%(column_0_name)s",
    "pk": "pk_%(table_name)s",
}

# Options that every table carries: typed columns, and ids that are never given out twice,
# so that an undone removal can come back under its own id.
KEPT = {"sqlite_strict": True, "sqlite_autoincrement": True}


class Base(DeclarativeBase):
    """All tables of the record."""

    metadata = MetaData(naming_convention=NAMING)
    type_annotation_map: ClassVar[dict[Any, Any]] = {str: Text(), int: Whole, float: Real}


class Kept(Base):
    """A table whose rows are changed by deeds only; each row has a whole number as its id."""

    __abstract__ = True
    __table_args__: Any = KEPT

    id: Mapped[int] = mapped_column(primary_key=True)


class HistoryEntry(Base):
    """One deed: who, when, what, and the rows before and after, chained to the entry before it."""

    __tablename__ = "history"
    __table_args__: Any = KEPT

    seq: Mapped[int] = mapped_column(primary_key=True)
    at: Mapped[str]
    who: Mapped[str]
    words: Mapped[str]
    body: Mapped[str]
    reverses: Mapped[int | None] = mapped_column(ForeignKey("history.seq"))
    hash: Mapped[str]


class Setting(Kept):
    """One house rule that differs from its default; the value is JSON."""

    __tablename__ = "setting"

    name: Mapped[str] = mapped_column(unique=True)
    value: Mapped[str]
