"""Parts that meet: the room that a set of pairs leaves."""
