"""What this shop's customers say, and what it means here: which phrases are accepted, and why not.

A phrase is compared as a search compares it: without endings and little words, slips mended.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import NamedTuple

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.symptom_search.little_words import LITTLE_WORDS
from desktop_app.symptom_search.vocabulary import Group, Vocabulary

MOST_LETTERS = 60
MOST_WORDS = 7  # as many as a question lets go of at one press
_NOTHING_KEPT = tr("Nothing was changed.")
_WORD = re.compile(r"[\w-]+")
_ENDS = " .,;:!?…-"


class PhraseKept(NamedTuple):
    """A phrase of the shop as it is kept; `symptom` is the id of the group that it means here."""

    id: int
    phrase: str
    symptom: str


def tidy(phrase: str) -> str:
    """Return a phrase as it is kept: one line, single spaces, no full stop behind it."""
    printable = "".join(letter if letter.isprintable() else " " for letter in phrase)
    return " ".join(printable.split()).strip(_ENDS)


def kept_as(phrase: str, words: Vocabulary, own: Iterable[PhraseKept]) -> PhraseKept | None:
    """Return the shop's phrase that is the same one, perhaps in other forms of its words."""
    compared = words.compared(phrase)
    return next((one for one in own if compared and words.compared(one.phrase) == compared), None)


def meant_until_now(phrase: str, symptom: str, words: Vocabulary) -> tuple[Group, ...]:
    """Return what a phrase is read as so far, besides the symptom that it shall mean."""
    return tuple(group for group in words.groups_in(phrase) if group.id != symptom)


def named_group(symptom: str, words: Vocabulary) -> Group:
    """Return a symptom group by its id; a ShopTrouble where there is none."""
    group = words.group(symptom)
    if group is None:
        raise ShopTrouble(
            tr("There is no symptom “{symptom}”.", symptom=symptom),
            kept=_NOTHING_KEPT,
            do=tr("Choose one from the list; a part of its name is enough."),
        )
    return group


def accepted(phrase: str, symptom: str, words: Vocabulary) -> str:
    """Return a new phrase as it will be kept; a ShopTrouble says why it is not accepted.

    `words` are the vocabulary with what the shop's phrases mean so far.
    """
    group = named_group(symptom, words)
    tidied = _in_bounds(tidy(phrase))
    _check_it_tells(tidied, words)
    if words.groups_in(tidied) == (group,):
        raise _refused(
            tr("“{phrase}” is read as {symptom} already.", phrase=tidied, symptom=group.shown),
            tr("There is nothing to do."),
        )
    if not words.can_mean(tidied):
        raise _refused(
            tr(
                "“{phrase}” would never be found in a concern: it says that something is "
                "over or is not so, or it is more than one piece of a sentence.",
                phrase=tidied,
            ),
            tr(
                "Take the words that tell the fault itself, without a comma or full stop "
                "in between."
            ),
        )
    return tidied


def _in_bounds(tidied: str) -> str:
    if not tidied:
        raise _refused(
            tr("No words were told."), tr("Type what customers say, such as “it bucks”.")
        )
    if len(tidied) > MOST_LETTERS:
        raise _refused(
            tr(
                "“{phrase}…” is too long: it has {letters} letters.",
                phrase=tidied[:MOST_LETTERS],
                letters=len(tidied),
            ),
            tr(
                "A phrase has {letters} letters at most; the words that tell most are enough.",
                letters=MOST_LETTERS,
            ),
        )
    return tidied


def _check_it_tells(tidied: str, words: Vocabulary) -> None:
    """Refuse a phrase whose words tell no fault, or that has more of them than a question reads."""
    compared = words.compared(tidied)
    told = [word for word in _WORD.findall(tidied.lower()) if word not in LITTLE_WORDS]
    if told and all(any(sign.isdigit() for sign in word) for word in told):
        raise _refused(
            tr(
                "“{phrase}” is a number, a code or a plate: those are found as they are.",
                phrase=tidied,
            ),
            tr("Type words that customers say."),
        )
    if len(told) == 1 and words.conditions_in(tidied):
        raise _refused(
            tr("“{phrase}” says when it happens, not what.", phrase=tidied),
            tr("Add the word that tells the fault."),
        )
    if not compared or not told:
        raise _refused(
            tr("“{phrase}” has only little words, which are in every concern.", phrase=tidied),
            tr("Add the word that tells the fault."),
        )
    if len(compared) > MOST_WORDS:
        raise _refused(
            tr("“{phrase}” has too many words.", phrase=tidied),
            tr(
                "{number} are the most, little words not counted; take those that tell most.",
                number=MOST_WORDS,
            ),
        )


def _refused(what: str, do: str) -> ShopTrouble:
    return ShopTrouble(what, kept=_NOTHING_KEPT, do=do)
