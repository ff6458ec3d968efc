"""This computer's addresses, as the system tells them."""

from __future__ import annotations

from desktop_app.part_photos.phone.addresses import Address, worth_offering


def addresses_here() -> list[Address]:
    """Return the addresses that the page for phones may be opened at, the likeliest first."""
    from PySide6.QtNetwork import QNetworkInterface

    found = []
    for way in QNetworkInterface.allInterfaces():
        flags = way.flags()
        if flags & QNetworkInterface.InterfaceFlag.IsUp:
            found += [
                Address(entry.ip().toString(), way.humanReadableName())
                for entry in way.addressEntries()
            ]
    return worth_offering(found)
