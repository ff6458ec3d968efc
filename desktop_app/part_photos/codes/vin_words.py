"""What is said beside the VIN's field of a VIN that a photo shows."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.part_photos.codes.code_meaning import CodeMeaning
from desktop_app.repair_jobs.vin import matching_vin, vin_question


def vin_offer_words(seen: CodeMeaning, photo: str, kept: str) -> str | None:
    """Return the offer of a VIN, None where the field has that one already.

    `photo` is the photo's name, `kept` what the field has now.
    """
    if seen.what != "VIN" or matching_vin(kept) == seen.value:
        return None
    vin = seen.value
    said = [
        tr(
            "The photo “{photo}” shows the VIN {vin}.",
            photo=photo,
            vin=f"{vin[:3]} {vin[3:9]} {vin[9:]}",
        )
    ]
    doubt = None if seen.sure else vin_question(vin)
    said += [doubt] if doubt else []
    said += [tr("The field has {kept} now.", kept=kept)] if kept.strip() else []
    return " ".join(said)
