"""A plugin of pytest: the whole run speaks another language, from before the program is loaded.

BENCHWITNESS_LANGUAGE says which; "marked" puts a sign before each text that can be translated, so
that what is shown without the sign was forgotten. BENCHWITNESS_DECIMAL_SIGN may
give figures a comma.
"""

from __future__ import annotations

import os

from desktop_app.figures_shown import VARIABLE as DECIMAL_SIGN
from desktop_app.figures_shown import speak_figures
from desktop_app.language import VARIABLE, speak
from desktop_app.shop_window.own_language import speak_language

SIGN = "§"
SPOKEN = os.environ[VARIABLE]

if SPOKEN == "marked":
    speak(lambda text: SIGN + text)
else:
    assert speak_language(SPOKEN) is None, f"no words of {SPOKEN}"

if os.environ.get(DECIMAL_SIGN) == ",":
    speak_figures(",")
