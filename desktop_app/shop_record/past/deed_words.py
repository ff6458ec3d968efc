"""A deed's words as they are shown: kept in the language of whoever did it, read in one's own.

The record keeps a deed's words as they were written, and only those in English are known again.
"""

from __future__ import annotations

import re
from functools import cache

from desktop_app.language import code_spoken, tr

# The deeds that name something: in place of each name stands what was kept.
NAMING = (
    *("Add {name}", "Add {photos} photos", "Change the house rule “{words}”"),
    *("Change the part kind {name}", "Change the window for {kind}"),
    *("Change the window of {number}", "Draw a mark: {label}", "Enter the {label}"),
    *("Import {file}", "Judge the return “{judgement}”"),
    "Judge the return that was told “{judgement}”",
    *("Keep the sum {name}", "Keep the {name}", "Let a phrase mean {symptom} here"),
    *("Let “{phrase}” mean {symptom} here", "Make {name} our own"),
    *("Note that the customer says “{answer}”", "Note “{term}”", "Note: {kind}"),
    *("Say that it is {state}", "Say that the odometer counts in {unit}"),
    "Set the day of a change: {which_day}",
    "Put {photos} photos from the phone to a part",
    *("Take our own {name} off the shelf", "Take “{phrase}” away"),
    *("Write down what is owed: {what}", "Write down the {label}", "Write down {code}"),
    "Write the cost of the return: {amount}",
)
_OUR_TERMS = {"answer", "judgement", "state", "unit", "what"}  # the rest may be a shop's own words


def deed_words(kept: str) -> str:
    """Return a deed's kept words in the language spoken; as they were written where it can't be."""
    if not code_spoken():
        return kept
    said = tr(kept)
    if said != kept:
        return said
    for template in NAMING:
        if found := _pattern(template).fullmatch(kept):
            named = found.groupdict()
            return tr(
                template, **{of: tr(one) if of in _OUR_TERMS else one for of, one in named.items()}
            )
    return kept


@cache
def _pattern(template: str) -> re.Pattern[str]:
    return re.compile(re.sub(r"\\{(\w+)\\}", r"(?P<\1>.+)", re.escape(template)), re.DOTALL)
