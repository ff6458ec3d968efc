"""The pieces of a text that tell of nothing: which they are, and which of them are left out."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator

from desktop_app.symptom_search.nothing_said import Told

# What does nothing, or gives none, has that fault: "cold: nothing, just clicks".
_WAITED_FOR = re.compile(
    r"\b(?:(?:re)?start|crank|click|dead|keys?\b|button|turn\w*(?: it)? over|batter|switch|lever"
    r"|heat|demist|blow|fan\b|a/?c\b|air|wiper|horn|radio|power|assist|pressure|charg|boost)",
    re.I,
)
# What is well, or lacking already, is no trouble that could be gone: "no first gear cold".
_NO_TROUBLE = re.compile(
    r"\b(?:fine|ok|okay|good|well|all ?right|perfect|normal|smooth|works?|bites?"
    r"|nothing|none|no|not|never|without|cannot|\w+n['’]?t)\b",
    re.I,
)
_APART = re.compile(
    r"([.;:!?,\n()]+|\s[-–]\s|\bbut\b"
    r"|\band\b(?=\s+(?:nothing|none|gone|in|on|at|when|if|once)\b))",
    re.I,
)
_SENTENCE_ENDS = re.compile(r"[.;!?\n]")
_SAY_LITTLE = re.compile(r"\b(?:days?|weather|all|then|once|(?:as|so) (?:soon|long) as)\b", re.I)

_HAS_NOT = r"(?:has|have|had)(?:n['’]?t| not)(?: ever)?"
_DENIED = rf"(?:never|(?:do|does|did|wo|would)(?:n['’]?t| not)(?: ever)?|will not|{_HAS_NOT})"
_DO_IT = r"\s+(?:happens?|happened|(?:do|does|did|done)\s+(?:it|that|this))(?: at all| once)?"
_NEVER_DOES_IT = re.compile(rf"\b{_DENIED}{_DO_IT}(?=\s*(?:$|[.;:!?,\n()]))", re.I)

_NOTHING = (
    r"(?:there(?:['’]?s| is| was) )?(?:nothing|none|not a thing)(?: of (?:it|that))?"
    r"(?: happens)?(?: at all| whatsoever)?"
)
_NO = r"(?:no|never|not at all|not once|(?:it|she|he) (?:does|did)(?:n['’]?t| not))"
_GONE = r"(?:goes away|went away|(?:(?:is|has|['’]s) )?gone|disappear(?:s|ed)?|vanish(?:es|ed)?)"
_TROUBLE = (
    r"(?P<trouble>it|this|that|(?:the|this|that|its) (?:noise|sound|smell|smoke|vibration|shak\w+"
    r"|wobble|shudder|judder|rattl\w+|knock\w*|squeal\w*|squeak\w*|whine|hum|misfire|trouble"
    r"|problem|issue|fault|symptom)s?)"
)
_WAYS = (
    re.compile(
        rf"(?P<when>.{{1,60}}?)(?<!then)\s+(?:{_NOTHING}|{_NO}|{_TROUBLE}\s*{_GONE})\s*", re.I
    ),
    re.compile(
        rf"\s*(?:{_NOTHING}|(?:{_TROUBLE}\s*)?(?:{_GONE}|\b{_HAS_NOT}{_DO_IT}))"
        r"\s+(?P<when>.{1,60})",
        re.I,
    ),
)
# "Cold: nothing" is one piece.
_JOINED = re.compile(rf"[ ]*[,:–-][ ]+(?=(?:{_NOTHING}|{_NO})\s*(?:$|[.;:!?,\n()]|but\b))", re.I)


def without_nothing(text: str, read: Callable[[str], Told]) -> str:
    """Return the text without those pieces; "never does it" becomes "fine"."""
    text = _NEVER_DOES_IT.sub("fine", text)
    if _WAITED_FOR.search(text):
        return text
    pieces = _APART.split(_JOINED.sub(" ", text))  # every other one is what parts them
    nothing = [next(filter(None, (way.fullmatch(one) for way in _WAYS)), None) for one in pieces]
    return "".join(_kept(pieces, nothing, read)) if any(nothing) else text


def _kept(
    pieces: Iterable[str], nothing: Iterable[re.Match[str] | None], read: Callable[[str], Told]
) -> Iterator[str]:
    """Yield the pieces, but not those of nothing that come first, or after when it does happen.

    After anything else ("horn: nothing when wet") it is another thing that does nothing.
    """
    in_text: bool | None = None  # whether it was told when it happens; None before anything is
    in_sentence: bool | None = None
    well = False
    for piece, told in zip(pieces, nothing, strict=True):
        before = in_text if in_sentence is None else in_sentence
        of_trouble = told and (before is not False or (told["trouble"] and not well))
        if told and of_trouble and read(_SAY_LITTLE.sub(" ", told["when"])).alone:
            continue
        yield piece
        if _APART.fullmatch(piece):
            in_sentence = None if _SENTENCE_ENDS.search(piece) else in_sentence
        elif piece.strip():
            is_well = _NO_TROUBLE.search(piece) is not None
            happens, well = read(piece).when and not is_well, well or is_well
            in_sentence, in_text = happens or bool(in_sentence), happens or bool(in_text)
