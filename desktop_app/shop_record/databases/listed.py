"""A list of ids or words inside a statement, as one value to bind, however many there are."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any

from sqlalchemy import ColumnElement, Integer, Select, cast, column, select
from sqlalchemy.ext.compiler import compiles
from sqlalchemy.sql.functions import GenericFunction
from sqlalchemy.types import TypeEngine


class OneByOne(GenericFunction[Any]):
    """The values of a JSON list, each as a row."""

    name = "one_by_one"
    inherit_cache = True


@compiles(OneByOne, "sqlite")
def _one_by_one(one: OneByOne, compiler: Any, **more: Any) -> str:
    return f"json_each({compiler.process(one.clauses, **more)})"


@compiles(OneByOne, "postgresql")
def _one_by_one_on_a_server(one: OneByOne, compiler: Any, **more: Any) -> str:
    listed = compiler.process(one.clauses, **more)
    return f"json_array_elements_text(CAST({listed} AS json))"


def as_listed(values: Iterable[int | str]) -> str:
    """Return values as they are bound."""
    return json.dumps(list(values))


def taken_apart(listed: str | ColumnElement[str], kind: TypeEngine[Any]) -> Select[tuple[Any]]:
    """Return something to select from: what `as_listed` made, or a name that is bound to it."""
    value = OneByOne(listed).table_valued(column("value")).c.value
    return select(cast(value, kind))


def among(ids: Iterable[int]) -> Select[tuple[int]]:
    """Return ids as something to select from."""
    return taken_apart(as_listed(ids), Integer())


def among_words(words: Iterable[str]) -> Select[tuple[str]]:
    """Return texts as something to select from."""
    value = OneByOne(as_listed(words)).table_valued(column("value")).c.value
    return select(value)
