"""Marks on photos as an instrument: with the doubt of these very marks, not with usual figures."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.language import tr
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.photo_doubt import PhotoDoubt, of_the_mean

PHOTO = "photo"
#: How that instrument is called where no mark stands behind a reading.
BY_EYE = tr("photo, by eye")
#: How well the pointing's spread is known: to a tenth of itself, half of 0.1**-2 (JCGM 100, G.4.2,
#: eq. G.3). It was found from some hundred marks on rendered photos of known truth; a person's
#: clicks may scatter otherwise.
POINTING_DOF = 50.0


def instrument_of_marks(doubts: Sequence[PhotoDoubt], unit: str) -> Instrument:
    """Return what stands for the marks of one side: their pointing is its repeatability.

    It reads without steps, and its permitted error is the photo's own doubt.
    """
    doubt = of_the_mean(doubts)
    return Instrument(PHOTO, unit, 0.0, 0.0, doubt.pointing, POINTING_DOF, photo=doubt)
