"""Everything that a person reads on the phone, by the names that the page has for it."""

from __future__ import annotations

from desktop_app.language import code_spoken, tr


def page_words() -> dict[str, str]:
    """Return the words of the page; what stands in braces is put in by the page itself."""
    return {
        "lang": code_spoken() or "en",
        "title": tr("Photos for the bench"),
        **_place_words(),
        **_photo_words(),
        **_trouble_words(),
    }


def _place_words() -> dict[str, str]:
    return {
        "asking": tr("Asking the shop’s computer …"),
        "which_part": tr("Which part is it?"),
        "side0": tr("removed part"),
        "side1": tr("replacement"),
        "view": tr("What the photo shows"),
        "of0": tr("of the removed part, {view}"),
        "of1": tr("of the replacement, {view}"),
        "job": tr("Job {number}"),
        "no_part": tr("No part is chosen"),
        "choose_part": tr(
            "Choose one in the window. Photos that are taken now wait there for a place."
        ),
        "shoot": tr("Take a photo"),
        "pick": tr("Choose photos"),
        "watched": tr(
            "Photos go to the shop’s computer over this Wi-Fi, not locked: others on it could "
            "watch."
        ),
        "locked": tr(
            "Photos travel locked. Go on only if the certificate's SHA-256 in this browser is the "
            "one in the window."
        ),
    }


def _photo_words() -> dict[str, str]:
    return {
        "photo": tr("Photo {number}"),
        "row": tr("{photo}, {size} MB: {words}"),
        "waits": tr("waits for its turn"),
        "is_read": tr("is read"),
        "goes": tr("on its way"),
        "part_sent": tr("{percent} % sent"),
        "is_saved": tr("is being saved"),
        "not_sent": tr("not sent"),
        "again": tr("not sent yet. {why} It is tried again by itself."),
        "refused": tr("✕ not taken. {why}"),
        "one_done": tr("✓ One photo is with the shop."),
        "done": tr("✓ {photos} photos are with the shop."),
    }


def _trouble_words() -> dict[str, str]:
    return {
        "no_script": tr("This page needs JavaScript. Switch it on in the browser."),
        "too_large": tr("it has more than 40 MB."),
        "empty": tr("The photo is empty. Take it again."),
        "not_given": tr("The phone does not give it. Choose it again."),
        "closes": tr("Closes in {minutes} min unless a photo is sent."),
        "silent": tr(
            "The shop’s computer does not answer. Is this phone on the shop’s Wi-Fi? What was "
            "taken waits here and is sent as soon as it answers; leave this page open."
        ),
        "old_code": tr("This code is no longer good"),
        "scan": tr("Scan the code that the window shows now."),
        "one_unsent": tr(
            "Not sent: one photo. Keep them on this phone, then scan the new code and choose them "
            "there."
        ),
        "unsent": tr(
            "Not sent: {photos} photos. Keep them on this phone, then scan the new code and choose "
            "them there."
        ),
        "keep": tr("Keep photo {number} on this phone"),
    }
