"""Looks for a bench card in a photo and tells the photo's scale from it, or why it can't."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from statistics import median
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import card_words
from desktop_app.part_photos.bench_card.ruler_length import UNMEASURED_U
from desktop_app.part_photos.camera import card_refusals as cannot
from desktop_app.part_photos.camera.camera_fit import USUAL_SIGMA_PX, CameraFit, fit_camera
from desktop_app.part_photos.camera.camera_model import ARCH_AT_MM, USUAL_ARCH_MM, Priors, outward
from desktop_app.part_photos.camera.card_scale import FLAT_U_MM, CardScale, View, view_of
from desktop_app.part_photos.camera.card_warnings import camera_covariance, card_warnings
from desktop_app.part_photos.camera.focal_prior import LensPrior, contradicted, lens_prior
from desktop_app.part_photos.camera.lens import CAMERA
from desktop_app.part_photos.camera.markers_found import (
    FoundMarker,
    FoundMarkers,
    find_markers,
    mirrored_markers,
)
from desktop_app.part_photos.photo_pixels import PhotoPixels

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]


def card_scale(
    pixels: PhotoPixels,
    layouts: Sequence[CardLayout],
    card_scale: float = 1.0,
    card_scale_u: float | None = None,
) -> CardScale:
    """Find one of these cards in the photo and fit the camera to it; see `found_card`."""
    return found_card(pixels, layouts, card_scale, card_scale_u)[0]


def found_card(
    pixels: PhotoPixels,
    layouts: Sequence[CardLayout],
    card_scale: float = 1.0,
    card_scale_u: float | None = None,
) -> tuple[CardScale, CardLayout]:
    """Find one of these cards in the photo and fit the camera to it; return which card it is, too.

    `card_scale` is the ruler's measured length divided by its nominal one, `card_scale_u` its
    relative standard uncertainty; None: nobody measured it. Of several cards the one with the most
    markers counts. Raises PhotoCannot where there is no card, where fewer than three markers are
    clearly seen (all of them on a card that carries fewer), and where the photo is mirrored,
    blurred, taken from too far or too much from aside, or the card bent.
    """
    found = _found(pixels, layouts)
    if len(found.twice) >= cannot.LEAST_MARKERS:
        raise cannot.two_alike(len(found.twice))
    if not found.markers:
        words = card_words(layouts[0]) if len(layouts) == 1 else tr("a bench card")
        mirrored = mirrored_markers(pixels.rgb, _dictionaries(layouts)) >= cannot.LEAST_MARKERS
        raise cannot.no_card(words, mirrored)
    blur_px = _blur(found.markers)
    _refuse_by_looks(found, blur_px)
    prior = lens_prior(pixels.width, pixels.height, pixels.focal_35_mm, pixels.as_taken)
    card = _best_card(layouts, found, prior, card_scale)
    card, prior = _through_what_lens(card, prior, card_scale)
    fit = card.fit
    view = view_of(fit.values[:CAMERA], card.middle_mm)
    _refuse_by_fit(fit, view, blur_px, prior)
    print_u = UNMEASURED_U if card_scale_u is None else card_scale_u
    scale = CardScale(
        theta=fit.values[:CAMERA].copy(),
        covariance=camera_covariance(fit, prior),
        print_u=print_u,
        tilt_deg=view.tilt_deg,
        distance_mm=view.distance_mm,
        mm_per_px=view.mm_per_px,
        middle_mm=(float(card.middle_mm[0]), float(card.middle_mm[1])),
        card=card.layout.name,
        markers_seen=tuple(marker.id for marker in card.markers),
        residual_px=fit.rms_px,
        blur_px=blur_px,
        flat_u_mm=_flat_u_mm(card),
        warnings=(*card_warnings(fit, prior, blur_px), *_other_cards(card.layout, layouts, found)),
    )
    return scale, card.layout


@dataclass(frozen=True, slots=True, eq=False)
class _Card:
    """One card that may lie in the photo: its clear markers, their middle, and the fit to them."""

    layout: CardLayout
    markers: list[FoundMarker]
    middle_mm: Floats
    fit: CameraFit


def _found(pixels: PhotoPixels, layouts: Sequence[CardLayout]) -> FoundMarkers:
    """All markers that belong to one of the cards."""
    most = max((len(layout.markers) for layout in layouts), default=0)
    found = find_markers(pixels.rgb, _dictionaries(layouts), most)
    known = {(layout.dictionary, one) for layout in layouts for one in layout.ids}
    markers = tuple(one for one in found.markers if (one.dictionary, one.id) in known)
    return FoundMarkers(markers, found.twice & known)


def _dictionaries(layouts: Sequence[CardLayout]) -> set[str]:
    return {layout.dictionary for layout in layouts}


def _of(layout: CardLayout, found: FoundMarkers) -> list[FoundMarker]:
    """The markers of one card, covered ones included."""
    ids = layout.ids
    return [one for one in found.markers if one.dictionary == layout.dictionary and one.id in ids]


def _clear(layout: CardLayout, found: FoundMarkers) -> list[FoundMarker]:
    return [one for one in _of(layout, found) if one.clear]


def _best_card(
    layouts: Sequence[CardLayout],
    found: FoundMarkers,
    prior: LensPrior,
    scale: float,
) -> _Card:
    """The card with the most clear markers; of several such, the one that fits best."""
    most = max(len(_clear(layout, found)) for layout in layouts)
    alike = [layout for layout in layouts if len(_clear(layout, found)) == most]
    needed = min(cannot.LEAST_MARKERS, *(len(layout.markers) for layout in alike))
    if most < needed:
        raise cannot.too_few(most, needed, len(alike[0].markers))
    tried = [_fitted(layout, _clear(layout, found), prior, scale) for layout in alike]
    return min(tried, key=lambda card: card.fit.spread_px)


def _through_what_lens(card: _Card, prior: LensPrior, scale: float) -> tuple[_Card, LensPrior]:
    """The fit and what it may take for known: not a named lens that the card contradicts.

    It does where the fit has pulled the lens far, or where another lens leaves half as much: by
    trials bent paper mostly leaves nine tenths through any lens, a cut picture less than half.
    """
    strained = prior.strained(card.fit.values)
    if not prior.sure or not (strained or card.fit.spread_px > USUAL_SIGMA_PX):
        return card, prior
    any_lens = contradicted(prior)
    again = _fitted(card.layout, card.markers, any_lens, scale)
    if strained or again.fit.spread_px < card.fit.spread_px / 2:
        return again, any_lens
    return card, prior


def _fitted(
    layout: CardLayout,
    markers: list[FoundMarker],
    prior: LensPrior,
    scale: float,
) -> _Card:
    import numpy as np

    printed = {marker.id: marker.corners_mm for marker in layout.markers}
    corners = np.array([printed[one.id] for one in markers]) * scale
    seen = np.concatenate([one.edges.corners_px for one in markers])
    priors = Priors(
        focal_px=prior.focal_px,
        focal_rel_u=prior.focal_rel_u,
        centre_px=prior.centre_px,
        centre_u_px=prior.centre_u_px,
    )
    flat = corners.reshape(-1, 2)
    try:
        fit = fit_camera(flat, seen, priors, outward(corners).reshape(-1, 2))
    except np.linalg.LinAlgError as error:
        raise cannot.no_pose() from error
    return _Card(layout, markers, flat.mean(0), fit)


def _flat_u_mm(card: _Card) -> float:
    """How far the paper in the card's middle may lie off the plane of the seen markers.

    That plane is known where these are; further on the paper arches as it usually does.
    """
    import numpy as np

    whole = np.array([marker.corners_mm for marker in card.layout.markers]).reshape(-1, 2)
    away = (card.middle_mm - whole.mean(0)) / ARCH_AT_MM
    return float(np.hypot(FLAT_U_MM, USUAL_ARCH_MM * np.linalg.norm(away**2)))


def _blur(markers: Sequence[FoundMarker]) -> float:
    """The middle blur of all edges, px: of those looked across sideways or upright, the worse."""
    import numpy as np

    blur = np.concatenate([one.edges.blur_px for one in markers])
    across = np.concatenate([one.edges.across for one in markers])
    there = np.isfinite(blur)
    ways = (blur[there & across], blur[there & ~across])
    return max((float(np.median(way)) for way in ways if len(way)), default=0.0)


def _refuse_by_looks(found: FoundMarkers, blur_px: float) -> None:
    """What is seen without knowing where the camera stood."""
    module_px = median(one.module_px for one in found.markers)
    if module_px < cannot.LEAST_MODULE_PX:
        raise cannot.too_small(module_px)
    if blur_px > cannot.MOST_BLUR_PX:
        raise cannot.blurred(blur_px)


def _refuse_by_fit(fit: CameraFit, view: View, blur_px: float, prior: LensPrior) -> None:
    """What is known once the camera's place is."""
    off_mm = fit.spread_px * view.mm_per_px
    if off_mm > cannot.MOST_OFF_MM or fit.arch_mm > cannot.MOST_ARCH_MM:
        raise cannot.bent(off_mm, fit.arch_mm, prior.sure)
    if view.tilt_deg > cannot.MOST_TILT_DEG:
        raise cannot.tilted(view.tilt_deg)
    if view.mm_per_px > cannot.MOST_MM_PER_PX:
        raise cannot.too_coarse(view.mm_per_px)
    if blur_px * view.mm_per_px > cannot.MOST_BLUR_MM:
        raise cannot.blurred(blur_px)


def _other_cards(
    used: CardLayout, layouts: Sequence[CardLayout], found: FoundMarkers
) -> tuple[str, ...]:
    """Say so where a second, different card lies in the photo."""
    counted = {one.id for one in _of(used, found)}
    others = {
        card_words(layout)
        for layout in layouts
        if layout.dictionary != used.dictionary or not layout.ids & counted
        if len(_of(layout, found)) >= cannot.LEAST_MARKERS
    }
    return tuple(
        tr(
            "Another card lies in the photo too ({name}); “{used}” counts, with more markers.",
            name=name,
            used=card_words(used),
        )
        for name in sorted(others)
    )
