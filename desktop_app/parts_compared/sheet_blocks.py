"""The pieces that a sheet is laid out from, in plain words and without any of the printing."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, TypeAlias

from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.sheet_facts import PhotoPrinted

Look: TypeAlias = Literal["plain", "small", "quiet", "strong"]


@dataclass(frozen=True, slots=True)
class Title:
    """The head of the sheet: whose it is, and what it is."""

    shop: str
    says: str


@dataclass(frozen=True, slots=True)
class Named:
    """Short facts, each under its name, side by side."""

    facts: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Heading:
    """A heading; `first` where a new pair begins."""

    words: str
    first: bool = False


@dataclass(frozen=True, slots=True)
class NextPage:
    """What follows begins on a new page, under a line that says what it is.

    Where `room` is given it may begin on this page, if so many millimetres of it are left.
    """

    says: str
    room: float | None = None


@dataclass(frozen=True, slots=True)
class Room:
    """What follows needs so many millimetres of the page, or goes overleaf."""

    height: float


@dataclass(frozen=True, slots=True)
class Words:
    """A paragraph, with a bold word before it where `name` is given."""

    words: str
    name: str = ""
    look: Look = "plain"


@dataclass(frozen=True, slots=True)
class VerdictBox:
    """The verdict on a pair: its sign, its words, and what they mean."""

    sign: str
    word: str
    means: str


@dataclass(frozen=True, slots=True)
class PhotoRow:
    """Both parts in one view: the removed one left, the replacement right.

    `height` is the most that a photo may take, in millimetres; `words` replace a missing one.
    """

    captions: tuple[str, str]
    photos: tuple[PhotoPrinted | None, PhotoPrinted | None]
    words: tuple[str, str]
    height: float
    below: str = ""


@dataclass(frozen=True, slots=True)
class PairShort:
    """One of several pairs on a page: photos and verdict beside each other, words below.

    `beside` and `below` are paragraphs, each with its name.
    """

    name: str
    verdict: VerdictBox | None
    photos: PhotoRow | None
    beside: tuple[tuple[str, str], ...]
    below: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class LaidOver:
    """The picture of both parts laid over each other, `height` mm high, and words beside it."""

    jpeg: bytes
    caption: str
    words: str
    height: float


@dataclass(frozen=True, slots=True)
class TwoLists:
    """Two short lists side by side."""

    heads: tuple[str, str]
    items: tuple[tuple[str, ...], tuple[str, ...]]
    signs: tuple[str, str]


@dataclass(frozen=True, slots=True)
class Listed:
    """A list under its name."""

    name: str
    items: tuple[str, ...]
    sign: str = "•"


@dataclass(frozen=True, slots=True)
class Rows:
    """A table; every row has one cell for each column, `widths` are shares of the page's width."""

    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    widths: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class SparkBar:
    """What one side asks of the coil, in kV: a bar from low to high, or a point where they agree.

    `least` and `most` are the ends that the measured uncertainty leaves open.
    """

    side: Side
    name: str
    low: float
    high: float
    least: float
    most: float
    words: str


@dataclass(frozen=True, slots=True)
class SparkPicture:
    """Old and new parts on one axis of kilovolts."""

    axis: str
    bars: tuple[SparkBar, ...]


@dataclass(frozen=True, slots=True)
class Cautions:
    """Boxed cautions; the last one says to whom they defer."""

    items: tuple[str, ...]


Block: TypeAlias = (
    Title
    | Named
    | Heading
    | NextPage
    | Room
    | Words
    | VerdictBox
    | PhotoRow
    | PairShort
    | LaidOver
    | TwoLists
    | Listed
    | Rows
    | SparkPicture
    | Cautions
)
