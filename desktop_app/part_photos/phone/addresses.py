"""Which of this computer's addresses a phone can reach, the likeliest first."""

from __future__ import annotations

import ipaddress
from collections.abc import Iterable
from dataclasses import dataclass

from desktop_app.language import tr

ALONE = tr("this computer alone, to try it")


@dataclass(frozen=True, slots=True)
class Address:
    """An address of this computer, and what the system calls its way to the network."""

    number: str
    way: str

    def words(self) -> str:
        """Return it as it is chosen."""
        return f"{self.number}  ({ALONE if _is_loop(self.number) else self.way})"


def worth_offering(found: Iterable[Address]) -> list[Address]:
    """Return those that can be bound: shop networks first, this computer alone last.

    Never an address that stands for all of them, and none of IPv6: a phone's browser does not take
    those that a shop's network gives.
    """
    usable = {one.number: one for one in found if _rank(one.number) is not None}
    return sorted(usable.values(), key=lambda one: (_rank(one.number) or 0, one.number))


def _rank(number: str) -> int | None:
    try:
        address = ipaddress.IPv4Address(number)
    except ValueError:
        return None
    if address.is_unspecified or address.is_multicast or number == "255.255.255.255":
        return None
    if address.is_loopback:
        return 3
    if address.is_link_local:
        return 2
    return 0 if address.is_private else 1


def _is_loop(number: str) -> bool:
    return ipaddress.IPv4Address(number).is_loopback
