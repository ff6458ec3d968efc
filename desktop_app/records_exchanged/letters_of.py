"""In which encoding a text was written, told from its bytes."""

from __future__ import annotations

import codecs
import re
from collections import Counter
from collections.abc import Callable, Iterable

# The letters beyond ASCII of languages that the two usual encodings of old files were made for.
_LANGUAGES = (
    ("cp1252", "äöüßÄÖÜ"),
    ("cp1252", "éèêëàâçùûîïôœÉÈÀÇ"),
    ("cp1252", "áéíóúñüÁÉÍÓÚÑ"),
    ("cp1252", "àèéìòùÀÈÉ"),
    ("cp1252", "ãõáéíóúâêôçàÃÕÇ"),
    ("cp1252", "åäöøæéÅÄÖØÆ"),
    ("cp1250", "ąćęłńóśźżĄĆĘŁŃÓŚŹŻ"),
    ("cp1250", "áčďéěíňóřšťúůýžľĺŕôäÁČĎÉŘŠŤÚŽ"),
    ("cp1250", "áéíóöőúüűÁÉÍÓÖŐÚÜŰ"),
    ("cp1250", "čćđšžČĆĐŠŽ"),
    ("cp1250", "ăâîşţĂÂÎŞŢ"),
)
# Those letters, signs of money, degrees, quotation marks and dashes as UTF-8 writes them: such
# sequences hardly occur in the old encodings.
_IN_UTF8 = re.compile(
    rb"[\xc3-\xc5][\x80-\xbf]|\xc2[\xa3\xb0\xa7]|\xe2\x80[\x93-\x9e\xa6]|\xe2\x82\xac"
)
_OLD = ("cp1252", "cp1250", "latin-1")
_MIXED, _HANDLER = "utf-8, else ", "benchwitness else "
_MARKS = (
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF32_LE, "utf-32"),
    (codecs.BOM_UTF32_BE, "utf-32"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)


def guessed_encoding(pieces: Iterable[bytes]) -> str:
    """Return the name of the encoding of a text that comes in pieces, the whole being looked at.

    A byte order mark decides, then zeros where UTF-16 has them, then whether all of it is UTF-8.
    Else it is cp1252, cp1250 or Latin-1, by whose letters it has: a guess, to be shown. Where
    letters in UTF-8 stand beside them it is "utf-8, else" that one (`decoding`).
    """
    decoder = codecs.getincrementaldecoder("utf-8")()
    high: Counter[int] = Counter()
    utf8, has_utf8 = True, False
    first = True
    for piece in pieces:
        if first:
            first = False
            marked = _by_its_beginning(piece)
            if marked is not None:
                return marked
        if piece.isascii() and utf8 and not decoder.getstate()[0]:
            continue
        has_utf8 = has_utf8 or _IN_UTF8.search(piece) is not None
        high.update(_IN_UTF8.sub(b"", piece).translate(None, bytes(range(128))))
        if utf8:
            try:
                decoder.decode(piece)
            except UnicodeDecodeError:
                utf8 = False
    if utf8:
        try:
            decoder.decode(b"", final=True)
        except UnicodeDecodeError:
            utf8 = False
    if utf8:
        return "utf-8"
    return f"{_MIXED}{_by_letters(high)}" if has_utf8 else _by_letters(high)


def decoding(encoding: str) -> tuple[str, str]:
    """Return the codec and the way with errors, as `open` takes them, for an encoding's name.

    "utf-8, else cp1252" is what files joined from two have: each byte that is no UTF-8 is read as
    the other says.
    """
    if not encoding.startswith(_MIXED):
        return encoding, "strict"
    return "utf-8", f"{_HANDLER}{encoding.removeprefix(_MIXED)}"


def is_mixed(encoding: str) -> bool:
    """Whether the name is of a text in two encodings."""
    return encoding.startswith(_MIXED)


def is_guess(encoding: str) -> bool:
    """Whether the name is one that is only told by letters, and may be wrong."""
    return is_mixed(encoding) or encoding in _OLD


def _else(encoding: str) -> Callable[[UnicodeError], tuple[str, int]]:
    def read(error: UnicodeError) -> tuple[str, int]:
        if not isinstance(error, UnicodeDecodeError):
            raise error
        return error.object[error.start : error.end].decode(encoding), error.end

    return read


for _name in _OLD:
    codecs.register_error(f"{_HANDLER}{_name}", _else(_name))


def _by_its_beginning(piece: bytes) -> str | None:
    for mark, name in _MARKS:
        if piece.startswith(mark):
            return name
    even, odd = piece[0:4096:2], piece[1:4096:2]
    if len(odd) >= 2:
        if odd.count(0) > 0.4 * len(odd) and even.count(0) < 0.05 * len(even):
            return "utf-16-le"
        if even.count(0) > 0.4 * len(even) and odd.count(0) < 0.05 * len(odd):
            return "utf-16-be"
    return None


def _by_letters(high: Counter[int]) -> str:
    """Return the encoding one of whose languages has the most of these letters."""
    best, most = "latin-1", 0
    for encoding in ("cp1252", "cp1250"):
        if all(_defined(byte, encoding) for byte in high):
            for name, letters in _LANGUAGES:
                if name == encoding:
                    count = sum(high[byte] for byte in letters.encode(encoding))
                    if count > most or best == "latin-1":
                        best, most = encoding, count
    return best


def _defined(byte: int, encoding: str) -> bool:
    try:
        bytes([byte]).decode(encoding)
    except UnicodeDecodeError:
        return False
    return True
