"""All deeds of the shop, room by room."""

from __future__ import annotations

from tests.undo_machine import (
    at_the_counter,
    house_and_records,
    old_and_new,
    photo_bench,
    proof,
    returns,
    tools_and_kinds,
)
from tests.undo_machine.deeds_to_do import Deeds

ROOMS: dict[str, Deeds] = {
    "at_the_counter": at_the_counter.DEEDS,
    "proof": proof.DEEDS,
    "old_and_new": old_and_new.DEEDS,
    "tools_and_kinds": tools_and_kinds.DEEDS,
    "photo_bench": photo_bench.DEEDS,
    "returns": returns.DEEDS,
    "house_and_records": house_and_records.DEEDS,
}
EVERYTHING: Deeds = {deed: choose for deeds in ROOMS.values() for deed, choose in deeds.items()}
