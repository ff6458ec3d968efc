"""What is told not to happen, put plainly: "fine" for "nothing", "never does it" or "goes away"."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache, lru_cache

from desktop_app.symptom_search.well_said import IN_CLAUSE, UNDER

# Most texts have none of these; they are read as they are.
_PERHAPS = re.compile(
    r"\b(?:nothing|none|not|no|never|\w+n['’]?t|gone|away|disappear|vanish)", re.I
)
_SENTENCE = re.compile(r"[^.;!?\n]+")
_ENDS = r"(?=\s*(?:$|[:,()]))"
_OF_IT = r"(?:the|this|my|her|his) (?:car|vehicle|dash)\b|it\b"
_BEFORE = rf"(?=\s+{UNDER}\b(?!\s+(?:{_OF_IT})))"
_START = rf"(?:^|[:,(]|\bbut\b|\band\b)\s*{UNDER}\b"
# "Turn the key: nothing" tells of the fault, as does all else that a hand works and waits for.
_ANSWER = (
    r"\b(?:keys?|button|starter|crank\w*|turn(?:s|ed)? (?:it )?over|lever|reverse|switch\w*|beam"
    r"|demister|heater|blower|fan|a/?c|wipers?|(?:press|push|step|pump)\w*|foot down|floor it)\b"
    r"|\b(?:do|does|did|gets?|got|gives?|gave|shows?|says?|for|to|has|have|had|almost) nothing\b"
    r"|\b(?:then|and) nothing\s*(?:$|[:,()])"
)
_HAS_NOT = r"(?:has|have|had)(?:n['’]?t| not)(?: ever)?"
_DENIED = rf"(?:never|(?:do|does|did|wo|would)(?:n['’]?t| not)(?: ever)?|will not|{_HAS_NOT})"
_DO_IT = r"\s+(?:happens?|happened|(?:do|does|did|done)\s+(?:it|that|this))(?: at all| once)?"
_GONE = r"(?:goes away|went away|go away|is gone|has gone|disappear(?:s|ed)?|vanish(?:es|ed)?)"

_TURNS: tuple[tuple[str, str], ...] = (
    # "Cold it never does it"; of what comes after, "has not" alone is not read as a denial.
    (rf"\b(?:{_DENIED}{_DO_IT}{_ENDS}|{_HAS_NOT}{_DO_IT}{_BEFORE})", "fine"),
    # "Gone when dry" and "when dry it goes away", not "rattles cold and goes away".
    (rf"(^\s*|[:,(]\s*|\b(?:it|this|that)\s+)(?:{_GONE}|gone){_BEFORE}", r"\1fine"),
    (rf"({_START}{IN_CLAUSE}{{0,40}}\b(?:it|this|that)\s+){_GONE}{_ENDS}", r"\1fine"),
    # "In the dry no", "cold: never", "when it is dry it does not".
    (
        rf"({_START}(?:\s+[\w'’]+){{0,3}})\s*[:,]?\s+"
        rf"(?:no|never|not at all|not once|(?:it|she|he) (?:does|did)(?:n['’]?t| not)){_ENDS}",
        r"\1 fine",
    ),
)
_NOTHING = (
    rf"\b(?:(?:nothing|none)(?: at all| whatsoever)?(?:{_ENDS}|{_BEFORE})|not a thing{_ENDS})"
)


@lru_cache(256)  # a text is read again for each of its words while it is typed
def nothing_plain(text: str) -> str:
    """Return the text with "fine" for each way of saying that it does not happen then."""
    if not _PERHAPS.search(text):
        return text
    return _SENTENCE.sub(lambda sentence: _plain(sentence[0]), text)


def _plain(sentence: str) -> str:
    for put in _turns():
        sentence = put(sentence)
    return sentence


@cache
def _turns() -> tuple[Callable[[str], str], ...]:
    """Return what puts each turn plainly; made when it is first asked for, not at the start."""

    def turn(pattern: str, plain: str) -> Callable[[str], str]:
        found = re.compile(pattern, re.I)
        return lambda sentence: found.sub(plain, sentence)

    answer, nothing = re.compile(_ANSWER, re.I), turn(_NOTHING, "fine")
    return (
        *(turn(pattern, plain) for pattern, plain in _TURNS),
        lambda sentence: sentence if answer.search(sentence) else nothing(sentence),
    )
