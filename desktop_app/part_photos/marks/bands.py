"""Bright and dark bands along a line of light: how many, or why nobody should say."""

from __future__ import annotations

from itertools import groupby
from typing import TYPE_CHECKING, NamedTuple

from desktop_app.language import tr

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

FEWEST = 3  # fewer tell no rhythm; a person counts them at a glance
LEAST_PERIOD_PX = 5.0
LEAST_CONTRAST = 0.1  # of bright to dark over their sum, as a rule over all bands
WEAKEST = 0.35  # share of the usual contrast that each band must have
MOST_OFF = 0.25  # share of a period, by which a band may lie off its place in the rhythm
MOST_STEP_OFF = 0.2  # share, by which a step from band to band may differ from those beside it
MARGINS = (0.15, 0.4)  # shares of half the contrast, within which light is neither bright nor dark


class Uncountable(Exception):
    """Why the bands can't be counted, as the end of a sentence."""


class Bands(NamedTuple):
    """How many bands lie between the ends, and whether these are the bright ones."""

    number: int
    bright: bool


def bands_along(profiles: Floats) -> Bands:
    """Count the bands along rows of linear light, shape (rows, n), that lie side by side.

    Light is judged against the middle between its brightest and darkest within a period and a
    half, so a shade over the part changes nothing. The count stands where it is the same for
    three strips of the rows and for a narrow and a wide margin, and where the bands keep a rhythm
    (their middles lie on a smooth curve over their number: a period may change with perspective).
    Raises Uncountable.
    """
    import numpy as np
    from scipy.ndimage import gaussian_filter1d

    mean = gaussian_filter1d(profiles.mean(0), 1.0)
    period = _period(mean)
    thirds = np.array_split(profiles, 3)
    strips = [mean, *(gaussian_filter1d(third.mean(0), 1.0) for third in thirds if len(third))]
    found = {_counted(_relative(strip, period), margin) for strip in strips for margin in MARGINS}
    if len(found) > 1:
        raise Uncountable(tr("the bands are not clear enough to count them twice alike"))
    bands = found.pop()
    if bands.number < FEWEST:
        raise Uncountable(
            tr(
                "there are fewer than {fewest} bands with a rhythm; count them by eye",
                fewest=FEWEST,
            )
        )
    relative = _relative(mean, period)
    middles, heights = _middles(relative, bands)
    _refuse_weak(mean, period, heights)
    _refuse_uneven(middles)
    # Else the first or the last band could be lost in a glint, and nobody would know.
    before, after = middles[0], len(mean) - 1 - middles[-1]
    if before > middles[1] - middles[0] or after > middles[-1] - middles[-2]:
        raise Uncountable(tr("the line must begin and end in the gaps right beside the bands"))
    if abs(float(np.median(np.diff(middles))) - period) > MOST_OFF * period:
        raise Uncountable(tr("the bands have no even rhythm"))
    return bands


def _period(light: Floats) -> float:
    """The period with which the light repeats best: the first high top of its autocorrelation."""
    import numpy as np
    from scipy.ndimage import gaussian_filter1d
    from scipy.signal import find_peaks

    n = len(light)
    if n < FEWEST * LEAST_PERIOD_PX:
        raise Uncountable(tr("the line is too short"))
    level = np.log(light + 0.01)
    level = level - gaussian_filter1d(level, n / 6, mode="reflect")
    spectrum = np.abs(np.fft.rfft(level, 2 * n)) ** 2
    alike = np.fft.irfft(spectrum)[: n // 2 + 1]
    if alike[0] <= 1e-9 * n:
        raise Uncountable(tr("there is nothing to see along the line"))
    alike = alike / alike[0] * n / (n - np.arange(len(alike)))
    tops, _ = find_peaks(alike, height=0.1, prominence=0.1)
    if not len(tops):
        raise Uncountable(tr("nothing repeats along the line"))
    first = int(tops[alike[tops] >= 0.7 * alike[tops].max()][0])
    if first < LEAST_PERIOD_PX:
        raise Uncountable(tr("the bands are too fine for this photo; go nearer"))
    return float(first)


def _relative(light: Floats, period: float) -> Floats:
    """Light from -1 (dark) to 1 (bright) within a period and a half round each place."""
    low, high = _envelope(light, period)
    return (2 * light - low - high) / (high - low + 1e-6)


def _envelope(light: Floats, period: float) -> tuple[Floats, Floats]:
    import numpy as np
    from scipy.ndimage import maximum_filter1d, minimum_filter1d

    size = max(round(1.5 * period), 3)
    low = minimum_filter1d(light, size, mode="nearest")
    high = maximum_filter1d(light, size, mode="nearest")
    return np.asarray(low), np.asarray(high)


def _states(relative: Floats, margin: float) -> list[tuple[bool, int, int]]:
    """Runs of bright and dark: which, first and last place; what lies between keeps its state."""
    decided = [(k, value > 0) for k, value in enumerate(relative) if abs(value) > margin]
    runs = [(bright, list(run)) for bright, run in groupby(decided, key=lambda one: one[1])]
    return [(bright, run[0][0], run[-1][0]) for bright, run in runs]


def _counted(relative: Floats, margin: float) -> Bands:
    runs = _states(relative, margin)
    if len(runs) < 3:
        raise Uncountable(tr("fewer than two edges are seen along the line"))
    if runs[0][0] != runs[-1][0]:
        raise Uncountable(tr("one end of the line lies in a gap and the other doesn't"))
    return Bands(len(runs) // 2, not runs[0][0])


def _middles(relative: Floats, bands: Bands) -> tuple[Floats, list[tuple[int, int]]]:
    import numpy as np

    runs = [run for run in _states(relative, MARGINS[0]) if run[0] == bands.bright]
    places = [(start, end) for _, start, end in runs]
    return np.array([(start + end) / 2 for start, end in places]), places


def _refuse_weak(light: Floats, period: float, places: list[tuple[int, int]]) -> None:
    """Each band must stand out from both neighbours nearly as well as the others do."""
    import numpy as np

    contrasts = []
    for start, end in places:
        inside = light[start : end + 1]
        middle = float(np.median(inside))
        reach = round(period)
        left, right = light[max(start - reach, 0) : start], light[end + 1 : end + 1 + reach]
        sides = [side for side in (left, right) if len(side)]
        off = [max((float(v) for v in side), key=lambda v: abs(v - middle)) for side in sides]
        contrasts.append(min(abs(v - middle) / (v + middle + 1e-3) for v in off))
    usual = float(np.median(contrasts))
    if usual < LEAST_CONTRAST:
        raise Uncountable(tr("the bands hardly differ in brightness"))
    if min(contrasts) < WEAKEST * usual:
        number = int(np.argmin(contrasts)) + 1
        raise Uncountable(tr("band {number} hardly shows", number=number))


def _refuse_uneven(middles: Floats) -> None:
    """Middles of bands follow a smooth curve over their number."""
    import numpy as np

    numbers = np.arange(len(middles))
    period = float(np.median(np.diff(middles)))
    degree = 1 if len(middles) < 6 else 2
    curve = np.polyval(np.polyfit(numbers, middles, degree), numbers)
    off = np.abs(middles - curve) / period
    if off.max() > MOST_OFF:
        raise Uncountable(
            tr("band {number} is out of the rhythm of the others", number=int(off.argmax()) + 1)
        )
    # One lost in a glint leaves steps unlike their neighbours, whatever curve a few can bend to.
    steps = np.diff(middles)
    for k, step in enumerate(steps):
        beside = np.concatenate([steps[max(k - 2, 0) : k], steps[k + 1 : k + 3]])
        if abs(step / beside.mean() - 1) > MOST_STEP_OFF:
            raise Uncountable(
                tr("the step after band {number} is unlike those beside it", number=k + 1)
            )
