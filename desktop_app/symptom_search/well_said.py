"""Well-being put plainly: "fine" for each way of saying it, and nothing for what only sounds so."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache, lru_cache

# Most texts speak of no well-being; they are read as they are.
_PERHAPS = re.compile(
    r"\b(?:fine|ok|okay|good|well|al ?right|all right|perfect|normal|smooth|proper|nice|great|"
    r"trouble|problem|issue|bother|complaint|fault|symptom|wrong|amiss|unusual)",
    re.I,
)
IN_CLAUSE = r"[^.;:!?,\n()]"
_FROM_FINE = rf"\bfine\b(?:(?!\bfine\b){IN_CLAUSE})*?"
_ENDS = r"(?=\s*(?:$|[.;:,!?\n)]|but\b))"
_DOES = (
    r"(?:r[au]n(?:s|ning)?|go(?:es|ing)?|went|start(?:s|ed|ing)?|dr[io]v(?:es?|ing|en)"
    r"|work(?:s|ed|ing)?|pull(?:s|ed|ing)?|idl(?:es?|ed|ing)|behav(?:es?|ed|ing)"
    r"|perform(?:s|ed|ing)?|brak(?:es?|ed|ing)|feels?|felt|shift(?:s|ed|ing)?|stop(?:s|ped)?"
    r"|handl(?:es?|ed|ing)|crank(?:s|ed|ing)?|do(?:es|ing)?|sounds?)"
)
_IS = r"(?:is|are|was|were|been|be|it['’]?s|that['’]?s|seems?|looks?|all|back to)"
_VERY = r"(?:(?:very|quite|perfectly|really|so|just|pretty|absolutely|completely|totally)\s+)*"
_NO = (
    r"(?:no|without|zero|never (?:had )?(?:any|a)"
    r"|(?:not|\w+n['’]?t)(?: (?:give|have|cause|show))? (?:any|a))"
)
_TROUBLE = "(?:trouble|problem|issue|bother|complaint|fault|symptom)s?"
_ADVERB = r"(?:well|smooth(?:ly)?|normal(?:ly)?|properly|perfectly|nicely|beautifully|great)"
_NO_ADVERB = (
    r"(?!\s+(?:below|above|over|under|past|after|before|into|within|beyond|worn|known|road))"
)
_WELL_ALONE = (
    rf"\s*(?:(?:then|and|so)\s+)?(?:(?:it|she|he|(?:the )?(?:car|engine)|everything|that)\b)?"
    rf"(?:['’]?s\b|\s*(?:was|has been|will be)\b)?\s*(?:{_DOES}\s+)?(?:always\s+|usually\s+)?"
    rf"fine(?:\s+(?:again|too|then|now))?{_ENDS}"
)
_STATE = "(?:cold|hot|warm|dry|wet|damp)"
_WHEN = r"(?:when|if|once|whenever|while|(?:as|so) long as)"
UNDER = (
    r"(?:when|whenever|if|once|in|at|on|with|after|during|while|whilst|under|over|from|as soon as"
    r"|cold|hot|warm|dry|wet|damp|uphill|braking|turning|mornings)"
)
_NOT_BEFORE = r"(?<!not )(?<!never )(?<!n't )(?<!n’t )"
_NOT_OVER = r"(?<!than )(?<!above )(?<!below )"
_GOOD_NOUNS = "deal|bit|while|few|many|half|hour|job|idea|luck|news|thing"
_FINE_NOUNS = "rain|drizzle|mist|spray|dust|powder|snow|weather|line|thread|crack|mesh"

# In this order: what sounds like well-being goes, then every way of saying it becomes "fine".
_TURNS: tuple[tuple[str, str], ...] = (
    (r"\bas well(?: as)?\b|(?:^|(?<=[.;!?\n]))[ \t]*(?:oh |ah )?well\b", " "),
    (r"\b(?:good|nice) (?:and|&) ", ""),
    (rf"{_NOT_BEFORE}\ba (?:very |really )?(?:good|fine|perfect|great)\b", "a"),
    (rf"\b(?:for good|as good as|good (?:{_GOOD_NOUNS}))\b", " "),
    (rf"\b({_DOES})\s+(?:fine|good|perfect)\b", r"\1 okay"),
    (rf"\b(?:fine|good|perfect) (?={_FINE_NOUNS})", ""),
    (
        rf"\b{_NO}\s+(?:(?:more|further|such|real|other)\s+)?{_TROUBLE}\b"
        r"(?!\s+(?:codes?|lamp|light))(?: (?:at all|whatsoever))?",
        "fine",
    ),
    (r"\bnothing (?:wrong|amiss|unusual|odd)\b", "fine"),
    (rf"\b({_DOES}|{_IS})\s+{_VERY}{_ADVERB}\b{_NO_ADVERB}", r"\1 fine"),
    (rf"{_NOT_OVER}\bnormal(?= (?:{_WHEN}|in|at|on)\b)", "fine"),
    (rf"\b{_VERY}(?:all right|al ?right|okay|ok|fine|good|perfect)\b", "fine"),
    (r"\b(?:is|are|all)\s+fine\b", "fine"),  # "is fine" would be read as "is gone"
    # "It shifts fine" names no change of gear.
    (r"\b(?:idles|brakes|pulls|shifts) fine\b", "runs fine"),
    (rf"\b({_STATE}),(?= {_STATE} (?:weather|days?|mornings?|or)\b)", r"\1"),
    # "Fine when the clutch is hot": what is hot matters not.
    (rf"\b(fine {_WHEN}) (?:the|my|her|his) \w+ (?:is|are|gets?|has|have|was)\b", r"\1"),
    # "When dry, it is fine" and "fine, even when damp" are one clause, "cold: fine" too.
    (
        rf"((?:^|[.;:!?,\n(]|\bbut\b)[ \t]*(?:(?:but|and|also|then)\s+)?{UNDER}\b{IN_CLAUSE}*)"
        rf",(?={_WELL_ALONE})",
        r"\1 ",
    ),
    (rf"((?:^|[.;!?,\n(])[ \t]*(?:\w+ ){{0,3}}\w+\s?):(?={_WELL_ALONE})", r"\1 "),
    (r"\bfine\s*,(?=\s*(?:even|whether|both|no matter)\b)", "fine "),
    # What comes after is told for itself.
    (rf"({_FROM_FINE})\bthen\b", r"\1;"),
    (rf"({_FROM_FINE})\band (?=(?:idles|brakes|pulls)\b)", r"\1; "),
    (rf"\b(?:and|but) (?=(?:then |it |she )*{_DOES}\s+fine\b)", "; "),
)


@lru_cache(256)  # a text is read again for each of its words while it is typed
def well_plain(text: str) -> str:
    """Return the text with "fine" for each way of saying that all is well."""
    if not _PERHAPS.search(text):
        return text
    for put in _turns():
        text = put(text)
    return text


@cache
def _turns() -> tuple[Callable[[str], str], ...]:
    """Return what puts each turn plainly; made when it is first asked for, not at the start."""

    def turn(pattern: str, plain: str) -> Callable[[str], str]:
        found = re.compile(pattern, re.I)
        return lambda text: found.sub(plain, text)

    return tuple(turn(pattern, plain) for pattern, plain in _TURNS)
