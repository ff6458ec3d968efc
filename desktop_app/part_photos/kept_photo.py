"""A photo that is kept with a job, as the screens and sheets see it."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.language import tr

SAME_PICTURE = tr(
    "These are the same picture: the file on both sides is one and the same, so it "
    "shows one part, not two."
)


@dataclass(frozen=True, slots=True)
class KeptPhoto:
    """One photo of a job; width and height in pixels of the upright picture."""

    id: int
    job_id: int
    sha256: str
    name: str
    media_type: str
    size_bytes: int
    width: int
    height: int
    taken_at: str | None
    note: str

    def caption(self) -> str:
        """Return the name, the minute it was taken and the note, as far as they are known."""
        moment = self.taken_at[:16].replace("T", " ") if self.taken_at else ""
        return " · ".join(part for part in (self.name, moment, self.note) if part)


def same_picture(removed_sha256: str, replacement_sha256: str) -> bool:
    """Tell whether two photos are the same file, byte for byte, by their SHA-256."""
    return removed_sha256.lower() == replacement_sha256.lower()
