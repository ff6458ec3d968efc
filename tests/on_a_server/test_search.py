"""A server's search finds the same jobs as the embedded one, whatever is asked."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import chain
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy import Connection

from demo_shop.plain_faults_chassis import FAULTS
from desktop_app.shop_record.databases.dialect import open_engine
from desktop_app.shop_record.databases.dialect_postgres import open_server
from desktop_app.shop_record.databases.dialect_search import (
    JobText,
    Wanted,
    best,
    jobs_indexed,
    jobs_with_stems,
    newest,
    read_texts,
    remove_range,
    remove_texts,
    stems_beginning,
    write_texts,
)
from desktop_app.shop_record.record import create_shop
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.symptom_search.word_forms import plain_words
from desktop_app.symptom_search.word_index.porter import porter_stem
from tests.conftest import NOON
from tests.on_a_server.shops import address_of
from tests.servers import Server, wanted

pytestmark = pytest.mark.skipif(wanted(), reason="the embedded search is what it is held against")
MOST = 1000
COLUMNS = ("", "concern", "cause", "codes", "vehicle", "people")
HOSTILE = (
    *(
        "'",
        "''",
        '"',
        "\\",
        "\\'",
        "%",
        "%s",
        "%(x)s",
        "&",
        "|",
        "!",
        "!!!",
        ":*",
        "a:*",
        "*",
        "<->",
    ),
    *("a & b", "(", ")", "' | 'a", "'; DROP TABLE job; --", "\x00", "a\x00b", "\t", "\n", " ", ""),
    *("NEAR(a b)", "concern : a", "a AND b", "-a", "^a", "_", "a_b", "é", "İ", "ﬁ", "漢字", "🙂"),
    *(
        "a" * 10_000,
        "a " * 5000,
        "é" * 3000,
        "\u202e",
        "http://a.b/c?d=e",
        "1.5e-3",
        "a@b.c",
        "/a/b",
    ),
)


def stems_alike(word: str) -> bool:
    """Tell whether both stem a word alike: the server follows the paper, without later additions.

    "assembly" and "assembled" are one word for the embedded search, and two for a server.
    """
    if word.endswith("s") and len(word) < 3:
        return False
    if re.search(r"\d+e\d", word):  # a number to the server, and what follows another word
        return False
    return not any(piece in word for piece in ("bli", "bly", "logi", "logy")) and word != "ay"


def of_the_trade() -> list[str]:
    """The words of the demo's faults."""
    said = [(*one.heads, *chain(*one.whens), *chain(*one.fixes), *one.codes) for one in FAULTS]
    return sorted({word for text in chain(*said) for word in plain_words(str(text)).split()})


ODD = st.text("abeilnorsty015é漢ж ß", min_size=1, max_size=7)
ANY = st.one_of(st.sampled_from(of_the_trade()), ODD.map(plain_words))
WORDS = ANY.filter(lambda said: bool(said) and all(map(stems_alike, said.split())))
SAID = st.lists(WORDS, max_size=4).map(" ".join)
TEXTS = st.builds(JobText, *([SAID] * 8))
JOBS = st.dictionaries(st.integers(1, 9), TEXTS, min_size=1, max_size=6)
ALONE = WORDS.map(lambda said: said.split()[0])
BEGUN = ALONE.flatmap(
    lambda word: st.integers(1, len(word)).map(lambda end: word[:end]).filter(stems_alike)
)
ONE_WANTED = st.builds(
    Wanted,
    st.lists(WORDS, max_size=2).map(tuple),
    st.lists(BEGUN, max_size=2).map(tuple),
    st.sampled_from(COLUMNS),
)


@dataclass
class Both:
    """The same shop's words in either database."""

    embedded: Connection
    server: Connection

    def fill(self, texts: dict[int, JobText]) -> None:
        """Let both have the words of these jobs, and of no others."""
        for connection in (self.embedded, self.server):
            if begun := connection.get_transaction():
                begun.rollback()
            connection.begin()
            assert jobs_indexed(connection) == set()
            write_texts(connection, texts)

    def asked(self, question: Any, *more: Any) -> tuple[Any, Any]:
        """Ask both the same."""
        return question(self.embedded, *more), question(self.server, *more)


@pytest.fixture(scope="module")
def both(
    server: Server, empty_shop: str, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Both]:
    """A shop in a folder and one on the server; what is written goes with the test's end."""
    folder = tmp_path_factory.mktemp("words") / "shop"
    create_shop(folder, lambda: NOON).close()
    name = server.new_database(empty_shop)
    with (
        writing(open_engine(Path(folder) / FILE_NAME)) as embedded,
        writing(open_server(address_of(server, name), None)) as on_server,
    ):
        yield Both(embedded, on_server)
    server.drop(name)


@contextmanager
def writing(engine: Any) -> Iterator[Connection]:
    """A connection that writes; all of it is taken back when it is closed."""
    with engine.connect() as plain:
        yield plain.execution_options(building=True)
    engine.dispose()


@given(texts=JOBS, wanted=st.lists(ONE_WANTED, min_size=1, max_size=3))
def test_the_same_jobs_are_found(
    both: Both, texts: dict[int, JobText], wanted: list[Wanted]
) -> None:
    both.fill(texts)
    embedded, server = both.asked(newest, wanted, MOST)
    assert embedded == server
    embedded, server = both.asked(best, wanted, MOST)
    assert set(embedded) == set(server)
    assert len(embedded) == len(server)


@given(texts=JOBS, word=st.data())
def test_what_stands_in_a_job_is_found_by_each_word_and_its_beginning(
    both: Both, texts: dict[int, JobText], word: st.DataObject
) -> None:
    both.fill(texts)
    job = word.draw(st.sampled_from(sorted(texts)))
    said = " ".join(getattr(texts[job], name) for name in COLUMNS if name).split()
    if not said:
        return
    chosen = word.draw(st.sampled_from(said))
    begun = porter_stem(chosen)[:3]
    for one in (Wanted((chosen,)), *([Wanted((), (begun,))] if stems_alike(begun) else ())):
        embedded, server = both.asked(newest, [one], MOST)
        assert embedded == server
        assert job in server or not one.whole  # what a stem begins with has a stem of its own


@given(texts=JOBS, words=st.lists(ALONE, max_size=5), begun=BEGUN, limit=st.integers(1, 20))
def test_the_same_stems_are_known(
    both: Both, texts: dict[int, JobText], words: list[str], begun: str, limit: int
) -> None:
    both.fill(texts)
    embedded, server = both.asked(jobs_with_stems, [*words, *map(porter_stem, words)])
    assert embedded == server
    embedded, server = both.asked(stems_beginning, begun, limit)
    assert embedded == server


@given(texts=JOBS, gone=st.lists(st.integers(1, 9), max_size=3), ends=st.integers(1, 9))
def test_what_is_taken_out_is_not_found(
    both: Both, texts: dict[int, JobText], gone: list[int], ends: int
) -> None:
    both.fill(texts)
    for connection in (both.embedded, both.server):
        remove_texts(connection, gone)
        remove_range(connection, ends, ends + 1)
    left = {job: text for job, text in texts.items() if job not in {*gone, ends, ends + 1}}
    assert both.asked(jobs_indexed) == (set(left), set(left))
    assert both.asked(read_texts, list(range(12))) == (left, left)


@pytest.mark.parametrize("word", HOSTILE, ids=lambda word: ascii(word)[:20])
def test_nothing_typed_is_a_command(both: Both, word: str) -> None:
    plain = JobText("a b c", "d", people="concern and near")
    both.fill({1: plain, 2: JobText("zink")})
    for column in COLUMNS:
        for one in (Wanted((word,), (), column), Wanted((), (word,), column)):
            for question in (best, newest):
                assert 2 not in question(both.server, [one], MOST)
                assert question(both.server, [one, Wanted(("nowhere",))], MOST) == []
    assert jobs_with_stems(both.server, [word, "b"]) == {"b": 1}
    assert all(stem.startswith(word.strip()) for stem, _ in stems_beginning(both.server, word, 9))
    texts = {3: JobText(word.replace("\x00", " "), vehicle="b")}
    write_texts(both.server, texts)
    assert read_texts(both.server, [3]) == texts
    assert newest(both.server, [Wanted(("b",), (), "vehicle")], MOST) == [3]


def test_a_word_that_no_index_keeps_finds_no_job(both: Both) -> None:
    both.fill({1: JobText("a b c")})
    long = Wanted(("x" * 10_000,))
    assert both.asked(newest, [Wanted(("a",)), long], MOST) == ([], [])
    either = Wanted(("x" * 10_000, "b"))
    assert both.asked(newest, [Wanted(("a",)), either], MOST) == ([1], [1])


def test_very_long_texts_are_kept_and_their_first_words_found(both: Both) -> None:
    words = " ".join(f"word{n}" for n in range(150_000))
    texts = {1: JobText(concern=words, vehicle=words), 2: JobText(cause="b")}
    both.fill(texts)
    assert read_texts(both.server, [1]) == {1: texts[1]}
    for column in ("", "vehicle"):
        assert newest(both.server, [Wanted(("word7",), (), column)], MOST) == [1]


def test_the_words_of_the_trade_are_stemmed_alike(both: Both) -> None:
    trade = of_the_trade()
    said = "SELECT word, ts_lexize('shop_stem', word) FROM unnest(%s::text[]) word"
    rows = both.server.exec_driver_sql(said, (trade,))
    unlike = {word for word, stems in rows if stems != [porter_stem(word)]}
    assert {word for word in unlike if stems_alike(word)} == set()
    assert len(unlike) <= len(trade) / 100
