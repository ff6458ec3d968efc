"""What may stand beside the VIN's field of a job and put a VIN into it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from desktop_app.repair_jobs.job_view import JobView


class BesideVin(QWidget):
    """Shown with each job; `put_in` carries a VIN that a person chose here."""

    put_in = Signal(str)

    def show_job(self, job: JobView) -> None:
        """Show what belongs to this job."""
        raise NotImplementedError
