"""`card`: a bench card to print, and its layout."""

from __future__ import annotations

from pathlib import Path

from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.language import tr


def card(asked: Asked) -> Outcome:
    """Write a bench card as PDF and its layout as JSON."""
    from desktop_app.part_photos.bench_card.card_layouts import bench_card
    from desktop_app.part_photos.card_actions import write_card

    pdf, json = Path(asked.out), Path(asked.layout)
    layout = bench_card(asked.paper)
    write_card(layout, pdf, json)
    said = {
        "name": layout.name,
        "paper": layout.paper,
        "pdf": str(pdf),
        "layout": str(json),
        "markers": len(layout.markers),
        "check_length_mm": layout.check_length_mm,
    }
    lines = (
        tr("Wrote {card} and {layout}.", card=pdf, layout=json),
        tr("Print it at 100 %, not fitted to the page, and lay it flat on a board."),
        tr(
            "Then measure its ruler with a calliper: it should be {length:g} mm.",
            length=layout.check_length_mm,
        ),
    )
    return Outcome(said, lines)
