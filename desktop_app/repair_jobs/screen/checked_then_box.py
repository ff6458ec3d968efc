"""What was checked on an earlier job, kept in view while a job like it is written up."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QVBoxLayout

from desktop_app.language import tr
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.shop_window.texts import plain_label


class CheckedThenBox(QFrame):
    """A list of things to check; what was found to be the cause then is not among them."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("question")
        self._words = plain_label("", wrap=True)
        QVBoxLayout(self).addWidget(self._words)
        self.hide()

    def words(self) -> str:
        """Return what is shown, to be kept in a draft."""
        return self._words.text()

    def show_words(self, words: str) -> None:
        """Show a list that was kept, or nothing."""
        self._words.setText(words)
        self.setVisible(bool(words))

    def show_job(self, job: JobView) -> None:
        """Show what was looked at on a job, in its order, and the codes to look for."""
        looked = [one.words for one in job.checks if one.kind == "inspection" and one.words]
        codes = dict.fromkeys(code.code for code in job.codes if code.stage == "found")
        lines = [f"–  {words}" for words in dict.fromkeys(looked)]
        lines += [tr("–  Codes read: {codes}", codes=", ".join(codes))] if codes else []
        head = tr("Checked then, on {number}:", number=job.number) if lines else ""
        self.show_words("\n".join(filter(None, [head, *lines])))
