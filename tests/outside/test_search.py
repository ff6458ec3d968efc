"""Search against published values: BM25 as SQLite scores it, edit distances, stems, intervals."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Iterator
from math import exp, log

import pytest

from desktop_app.repair_jobs.share_interval import wilson
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.symptom_search.told_words import stem as told_stem
from desktop_app.symptom_search.typing_mistake import distance
from desktop_app.symptom_search.word_forms import alike, forms_to_find
from desktop_app.symptom_search.word_index.entry import FIELDS, JobEntry
from desktop_app.symptom_search.word_index.porter import porter_stem
from desktop_app.symptom_search.word_index.weights import STEP, impact, rarity, share_of_field
from desktop_app.symptom_search.word_index.writing import arrays_of

ROWS = (
    "rotor tip burnt misfire under load",
    "misfire cold start",
    "cold start stall stall stall",
    "brake noise",
    "misfire misfire rotor air gap",
    "coolant leak",
)


@pytest.fixture
def rows() -> Iterator[sqlite3.Connection]:
    """The six rows in the kind of full-text index that the record uses, without stemming."""
    connection = sqlite3.connect(":memory:")
    connection.execute("CREATE VIRTUAL TABLE words USING fts5(line, tokenize = 'unicode61')")
    connection.executemany("INSERT INTO words VALUES (?)", [(row,) for row in ROWS])
    yield connection
    connection.close()


def bm25(connection: sqlite3.Connection, words: str) -> dict[int, float]:
    """Return the score that SQLite gives each row, the lower the better."""
    query = "SELECT rowid, bm25(words) FROM words WHERE words MATCH ?"
    return dict(connection.execute(query, (words,)))


def bm25_by_formula(words: str, row: int, k1: float = 1.2, b: float = 0.75) -> float:
    """Return the score by the formula of the SQLite FTS5 documentation (section 5.1.1)."""
    lines = [line.split() for line in ROWS]
    mean = sum(map(len, lines)) / len(lines)
    score = 0.0
    for word in words.split():
        having = sum(word in line for line in lines)
        rarity = max(log((len(lines) - having + 0.5) / (having + 0.5)), 1e-6)
        line = lines[row - 1]
        often = line.count(word)
        score += rarity * often * (k1 + 1) / (often + k1 * (1 - b + b * len(line) / mean))
    return -score


@pytest.mark.parametrize(
    ("words", "row", "score"),
    [
        # Worked with SQLite 3.40's own bm25(); the formula of its documentation gives the same.
        ("rotor", 1, -0.4773997631468255),
        ("rotor", 5, -0.5227065947987211),
        ("stall", 3, -1.9167265013700063),
        ("rotor gap", 5, -1.6781322362221167),
        ("cold stall", 3, -2.4394330961687274),
    ],
)
def test_bm25_is_the_documented_one(
    rows: sqlite3.Connection, words: str, row: int, score: float
) -> None:
    assert bm25(rows, words)[row] == pytest.approx(score, abs=1e-12)
    assert bm25_by_formula(words, row) == pytest.approx(score, abs=1e-12)


def test_a_word_in_half_of_the_rows_says_almost_nothing(rows: sqlite3.Connection) -> None:
    # SQLite FTS5: the rarity of a word is never taken below 1e-6.
    scores = bm25(rows, "misfire")
    assert set(scores) == {1, 2, 5}
    assert all(abs(score) < 1e-5 for score in scores.values())


@pytest.mark.parametrize("word", ["rotor", "stall", "gap", "cold", "brake"])
def test_impacts_in_the_arrays_are_those_of_sqlite(rows: sqlite3.Connection, word: str) -> None:
    # SQLite's score is rarity times impact; ours is kept in hundredths.
    nothing = ("",) * (len(FIELDS) - 1)
    jobs = [
        JobEntry(place, (row, *nothing), (), 1, 1, 1, 0, 0, 1, ())
        for place, row in enumerate(ROWS, 1)
    ]
    arrays = arrays_of(jobs)
    span = arrays.span_of(porter_stem(word))
    ours = dict(zip(arrays.ids[arrays.having[span]].tolist(), arrays.impacts[span], strict=True))
    theirs = bm25(rows, word)
    rarest = log((len(ROWS) - len(theirs) + 0.5) / (len(theirs) + 0.5))
    assert ours.keys() == theirs.keys()
    for row, score in theirs.items():
        assert int(ours[row]) / STEP == pytest.approx(-score / rarest, abs=0.005001)


@pytest.mark.parametrize(
    ("president", "lincoln", "published"),
    [(15, 25, 20.66), (15, 1, 12.74), (15, 0, 5.00), (1, 25, 18.2), (0, 25, 15.66)],
)
def test_bm25_of_the_textbook(president: int, lincoln: int, published: float) -> None:
    # Croft, Metzler and Strohman, Search Engines (2009), section 7.2.2 and Table 7.2, recalled:
    # 500,000 documents, "president" in 40,000, "lincoln" in 300, length 0.9 of the mean, k1 1.2,
    # b 0.75. The book rounds the parts it adds up. Its rarity lacks the 1 inside the logarithm.
    score = 0.0
    for often, having in ((president, 40_000), (lincoln, 300)):
        count = often * share_of_field(0.9, 1.0)
        said = impact(count) / STEP if often else 0.0
        score += log(exp(rarity(500_000, having)) - 1) * said
    assert score == pytest.approx(published, abs=0.05)


@pytest.mark.parametrize(
    ("one", "other", "steps"),
    [
        # The usual example that parts the restricted distance (3) from the unrestricted (2).
        ("ca", "abc", 3),
        # Teaching examples of Wagner and Fischer's algorithm (Journal of the ACM 21, 1974).
        ("kitten", "sitting", 3),
        ("saturday", "sunday", 3),
        ("", "abc", 3),
        ("a cat", "an abct", 4),
        ("mifsire", "misfire", 1),
        ("stal", "stall", 1),
        # Jurafsky and Martin, Speech and Language Processing, the chapter on edit distance.
        ("intention", "execution", 5),
        # Pairs of W. E. Winkler's studies of name matching, counted by hand.
        ("martha", "marhta", 1),
        ("dwayne", "duane", 2),
        ("dixon", "dicksonx", 4),
        # F. J. Damerau, Communications of the ACM 7 (1964): a letter wrong, missing, extra, and two
        # swapped; the words are ours.
        ("alphabet", "alphibet", 1),
        ("alphabet", "alphbet", 1),
        ("alphabet", "alphabbet", 1),
        ("alphabet", "alhpabet", 1),
    ],
)
def test_edit_distances(one: str, other: str, steps: int) -> None:
    assert distance(one, other) == steps


@pytest.mark.parametrize(
    ("k", "n", "low", "high"),
    [
        # R. G. Newcombe, Statistics in Medicine 17 (1998) 857-872, Table I (printed to 4 places).
        (81, 263, 0.2553, 0.3662),
        (15, 148, 0.0624, 0.1605),
        (0, 20, 0.0, 0.1611),
        (1, 29, 0.0061, 0.1718),
    ],
)
def test_wilson_intervals(k: int, n: int, low: float, high: float) -> None:
    assert wilson(k, n) == pytest.approx((low, high), abs=5e-5)


@pytest.mark.parametrize(
    ("k", "n", "low", "high"),
    [
        # The same formula worked to ten places by hand.
        (81, 263, 0.2552885199, 0.3662095770),
        (0, 10, 0.0, 0.2775327999),
        (7, 50, 0.0695083343, 0.2618619371),
        (50, 100, 0.4038315304, 0.5961684696),
    ],
)
def test_wilson_intervals_to_ten_places(k: int, n: int, low: float, high: float) -> None:
    assert wilson(k, n) == pytest.approx((low, high), abs=1e-10)


# M. F. Porter, Program 14 (1980) 130-137, and the algorithm applied to words of the trade.
PORTER = """caresses caress; ponies poni; agreed agre; plastered plaster; motoring motor;
conflated conflat; sized size; hopping hop; hissing hiss; failing fail; happy happi;
conditional condit; electrical electr; adjustable adjust; replacement replac; activate activ;
misfires misfir; misfiring misfir; stalling stall; stalled stall; stalls stall; idling idl;
sparks spark; hesitation hesit"""


def index_stem(word: str) -> str:
    """Return the stem under which the record's index keeps a word."""
    connection = sqlite3.connect(":memory:")
    connection.execute("CREATE VIRTUAL TABLE t USING fts5(x, tokenize = 'porter unicode61')")
    connection.execute("CREATE VIRTUAL TABLE v USING fts5vocab(t, 'row')")
    connection.execute("INSERT INTO t VALUES (?)", (word,))
    (stem,) = connection.execute("SELECT term FROM v").fetchone()
    connection.close()
    return str(stem)


@pytest.mark.parametrize("pair", [pair.split() for pair in PORTER.split(";")])
def test_stems_are_porters(pair: list[str]) -> None:
    word, stem = pair
    assert index_stem(word) == stem
    assert porter_stem(word) == stem


# The sample vocabulary on the page of the Porter stemmer of the Snowball project, from memory.
SNOWBALL = """consign consign; consigned consign; consigning consign; consignment consign;
consist consist; consisted consist; consistency consist; consistent consist;
consistently consist; consisting consist; consists consist; consolation consol;
consolations consol; consolatory consolatori; console consol; consoled consol; consoles consol;
consolidate consolid; consolidated consolid; consolidating consolid; consoling consol;
consolingly consolingli; consols consol; consonant conson; consort consort; consorted consort;
consorting consort; conspicuous conspicu; conspicuously conspicu; conspiracy conspiraci;
conspirator conspir; conspirators conspir; conspire conspir; conspired conspir;
conspiring conspir; constable constabl; constables constabl; constance constanc;
constancy constanc; constant constant; knack knack; knackeries knackeri; knacks knack;
knave knave; knaves knave; knavish knavish; kneaded knead; kneading knead; knee knee;
kneel kneel; kneeled kneel; kneeling kneel; kneels kneel; knees knee; knell knell; knelt knelt;
knew knew; knife knife; knight knight; knightly knightli; knights knight; knit knit; knits knit;
knitted knit; knitting knit; knives knive; knob knob; knobs knob; knock knock; knocked knock;
knocker knocker; knockers knocker; knocking knock; knocks knock; knot knot; knots knot"""


def test_stems_are_those_of_the_published_sample() -> None:
    pairs = [pair.split() for pair in SNOWBALL.split(";")]
    assert [(word, index_stem(word)) for word, _ in pairs] == [(w, stem) for w, stem in pairs]
    assert [(word, porter_stem(word)) for word, _ in pairs] == [(w, stem) for w, stem in pairs]


def test_the_arrays_and_the_full_text_index_agree_on_every_word_of_the_vocabulary() -> None:
    files = sorted(resource_path("symptoms").glob("*.toml"))
    files += sorted(resource_path("part_kinds").glob("*.toml"))
    texts = " ".join(path.read_text("utf-8") for path in files)
    words = sorted(set(re.findall("[a-z]+", texts.lower())))
    assert len(words) > 2000
    connection = sqlite3.connect(":memory:")
    connection.execute("CREATE VIRTUAL TABLE t USING fts5(x, tokenize = 'porter unicode61')")
    connection.execute("CREATE VIRTUAL TABLE v USING fts5vocab(t, 'instance')")
    connection.executemany("INSERT INTO t(rowid, x) VALUES (?, ?)", enumerate(words))
    theirs = {words[place]: stem for place, stem in connection.execute("SELECT doc, term FROM v")}
    connection.close()
    assert {word: porter_stem(word) for word in words} == theirs


# The words that customers use most: the symptom's words and the index part them alike.
@pytest.mark.parametrize("word", ["knock", "stall", "misfire", "squeal", "leak", "shake"])
def test_forms_of_a_word_are_one_for_the_vocabulary_and_for_the_index(word: str) -> None:
    base = word.removesuffix("e")
    forms = (word, f"{word}s", f"{base}ed", f"{base}ing")
    assert len({told_stem(form) for form in forms}) == 1
    assert len({index_stem(form) for form in forms}) == 1


@pytest.mark.parametrize("word", ["overheats", "overheating", "overheated", "overheat"])
def test_forms_that_porter_parts_are_looked_up_together(word: str) -> None:
    assert {index_stem(form) for form in ("overheats", "overheating")} == {"overheat", "overh"}
    assert {"overheat", "overh"} == set(map(porter_stem, forms_to_find(word, False).whole))
    assert alike(word, "overheating")
