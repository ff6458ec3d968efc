"""Invented identities of cars: VINs with a valid check digit under a code nobody was given."""

from __future__ import annotations

import random

from desktop_app.repair_jobs.vin import expected_check_digit

# Country codes that begin with 0 are not given out, so no maker can own this one.
_NOBODY = "0TH"
_LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ"
_YEARS = "ABCDEFGHJKLMNPRSTVWXY123456789"  # 49 CFR 565.15, Table VII: 1980 to 2009, again from 2010


def invented_vin(chance: random.Random, year: int) -> str:
    """Return a VIN of 17 characters for a model year (1980 to 2039); its check digit holds."""
    described = "".join(chance.choice(_LETTERS) for _ in range(2))
    described += "".join(str(chance.randrange(10)) for _ in range(2))
    # In place 7 a letter stands for the later thirty years, a digit for the earlier ones.
    described += chance.choice(_LETTERS) if year >= 2010 else str(chance.randrange(10))
    plant = chance.choice(_LETTERS)
    serial = "".join(str(chance.randrange(10)) for _ in range(6))
    bare = f"{_NOBODY}{described}0{_YEARS[(year - 1980) % 30]}{plant}{serial}"
    return f"{bare[:8]}{expected_check_digit(bare)}{bare[9:]}"
