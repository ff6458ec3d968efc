"""The number under the bars of a trade package: EAN, UPC, and that of its carton."""

from __future__ import annotations

LENGTHS = (8, 12, 13, 14)


def is_article_number(digits: str) -> bool:
    """Tell whether these are 8, 12, 13 or 14 digits of which the last is their check digit."""
    return (
        len(digits) in LENGTHS
        and digits.isascii()
        and digits.isdigit()
        and check_digit(digits[:-1]) == digits[-1]
    )


def check_digit(digits: str) -> str:
    """Return the check digit that belongs behind some digits.

    GS1 General Specifications, 7.9: from the right the digits weigh 3, 1, 3, ...
    """
    weighed = sum(int(d) * (1 if n % 2 else 3) for n, d in enumerate(reversed(digits)))
    return str(-weighed % 10)


def as_printed(digits: str) -> str:
    """Return an article number as it stands under its bars: a UPC has 12 digits, no leading zero.

    GS1 General Specifications, 3.3: in longer fields shorter numbers are filled with zeros.
    """
    while len(digits) in (13, 14) and digits.startswith("0"):
        digits = digits[1:]
    return digits
