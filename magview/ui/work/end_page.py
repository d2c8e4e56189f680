"""The last page of the job sheet: what is missing, the next check, and the signature."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QGroupBox, QLabel, QPushButton, QVBoxLayout

from magview.forms.entry import Kind
from magview.job import judge
from magview.job.entries import entries_in
from magview.job.offered import KIND
from magview.job.parts import Signature
from magview.job.readings import unjudged_words
from magview.job.sheet import Job, change, signature_holds, title_of
from magview.job.signing import sign
from magview.job.status import dangers, earlier
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.forms import DayEdit, LineEdit
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint
from magview.ui.work.form import Form
from magview.ui.work.model import JobModel, plain
from magview.ui.work.offered import Offer
from magview.ui.work.page import Page


def standing(job: Job) -> list[str]:
    """Obstacles between the sheet and its end, a sentence each; empty if there are none."""
    found = judge.progress(job)
    told = [*earlier(job), *dangers(job)]
    if found.open:
        told.append(tr("Not done yet: {stages}.", stages=", ".join(tr(title_of(n)) for n in found.open)))
    told += [tr("Missing in {what}.", what=sentence) for sentence in found.missing]
    for stage in dict.fromkeys(v.stage for v in found.out):
        told.append(tr("Out of limits, or not as it must be: see {stage}.", stage=tr(title_of(stage))))
    told += [tr("To be cleared up: see {stage}.", stage=tr(title_of(name))) for name in found.doubtful]
    if found.signature is None:
        told.append(tr("Not signed."))
    elif not found.signature:
        told.append(tr("Changed since it was signed: the signature does not cover this sheet; sign again."))
    return told


class EndPage(Page):
    """Progress in words; next check; who signs."""

    def __init__(self, model: JobModel, look: Look) -> None:
        super().__init__(tr("What is missing, next check, signature"))
        self.model, self.look = model, look
        self.told = QLabel()
        self.told.setWordWrap(True)
        self.told.setAccessibleName(tr("What is missing"))
        self.column.addWidget(self.told)
        self.unjudged = QLabel()
        self.unjudged.setWordWrap(True)
        self.unjudged.setAccessibleName(tr("Not judged"))
        self.column.addWidget(self.unjudged)
        box = QGroupBox(tr(title_of("next_check")))
        column = QVBoxLayout(box)
        column.addWidget(Form(model, "next_check", look))
        self.late = QLabel()
        self.late.setWordWrap(True)
        self.late.hide()
        column.addWidget(self.late)
        self.column.addWidget(box)
        self.column.addWidget(self._build_signature())
        self.column.addStretch(1)
        model.changed.connect(self._changed)
        look.changed.connect(self._look_changed)
        self._seen: Signature | None = None
        self._show_signature(model.job.signature)
        self._changed(model.job, model.job)

    def _build_signature(self) -> QGroupBox:
        box = QGroupBox(tr(title_of("signature")))
        grid = QGridLayout(box)
        self.edits: dict[str, LineEdit] = {}
        letter = self.fontMetrics().averageCharWidth()
        for row, entry in enumerate(entries_in("signature", Signature)):
            label = QLabel(entry.label)
            day = DayEdit() if entry.kind is Kind.DAY else None
            line = self.edits[entry.name] = day.line if day is not None else LineEdit()
            line.setMinimumWidth(30 * letter)
            if entry.name in KIND:
                Offer(line, entry.name, lambda: self.model.job)
            label.setBuddy(line)
            line.setAccessibleName(entry.label)
            if day is not None:
                day.line.entered.connect(self._day)
                self.today = day.today
            grid.addWidget(label, row, 0)
            grid.addWidget(day or line, row, 1, Qt.AlignmentFlag.AlignLeft)
        grid.setColumnStretch(2, 1)
        self.sign_button, self.clear_button = (
            QPushButton(tr("Sign the sheet")),
            QPushButton(tr("Take the signature back")),
        )
        self.sign_button.clicked.connect(self.sign)
        self.clear_button.clicked.connect(self._clear)
        for column, button in enumerate((self.sign_button, self.clear_button)):
            button.setAutoDefault(False)
            grid.addWidget(button, 10, column, Qt.AlignmentFlag.AlignLeft)
        self.refusal = QLabel()
        self.signed = QLabel()
        for row, label in ((11, self.refusal), (12, self.signed)):
            label.setWordWrap(True)
            grid.addWidget(label, row, 0, 1, 3)
        return box

    def show_late(self, sentence: str) -> None:
        """Say that the next check entered comes after what earlier sheets foretell; nothing where it does not."""
        self.late.setText(f"⚠ {sentence}" if sentence else "")
        self.late.setVisible(bool(sentence))
        tint(self.late, self.look.theme.bad, bold=True)

    def _day(self, day: str) -> None:
        line = self.edits["day"]
        line.setText(day)
        line.setModified(True)

    def _changed(self, job: Job, old: Job) -> None:
        told = standing(job)
        good = not told
        unjudged = unjudged_words(job)
        self.told.setText(
            "\n".join(f"○ {sentence}" for sentence in told)
            or tr("✓ Finished: every stage is done or skipped, in limits as left, and signed.")
        )
        self.unjudged.setText(unjudged)
        self.unjudged.setVisible(bool(unjudged))
        tint(self.told, self.look.theme.good if good else self.look.theme.text)
        if job.signature != self._seen:
            self._show_signature(job.signature)
        holds = signature_holds(job)
        self.signed.setText(
            "" if holds is None
            else tr("✓ Signed; the sheet is as it was signed.") if holds
            else tr("✗ Changed since it was signed.")
        )  # fmt: skip
        tint(self.signed, self.look.theme.good if holds else self.look.theme.bad, bold=True)
        writable = self.model.writable
        for button in (self.sign_button, self.today):
            button.setEnabled(writable)
        self.clear_button.setEnabled(writable and job.signature is not None)
        for line in self.edits.values():
            line.setReadOnly(not writable)

    def _show_signature(self, signature: Signature | None) -> None:
        self._seen = signature
        for field, line in self.edits.items():
            line.setText("" if signature is None else getattr(signature, field))
            line.setModified(False)

    def sign(self) -> None:
        """Sign the sheet as it stands, or say what a signature takes."""
        values = {field: line.text().strip() for field, line in self.edits.items()}
        self.refusal.setText("")
        try:
            signed = sign(self.model.job, **values)
        except SpecError as error:
            self._refuse(plain(error))
            return
        sentence = self.model.commit(lambda _: signed, tr("Signed by {who}", who=values["who"]))
        if sentence:
            self._refuse(sentence)

    def _refuse(self, sentence: str) -> None:
        self.refusal.setText(f"✗ {sentence[0].upper()}{sentence[1:]}.")
        tint(self.refusal, self.look.theme.bad)

    def _clear(self) -> None:
        self.model.step(lambda job: change(job, signature=None), tr("Signature taken back"))

    def _look_changed(self) -> None:
        self._changed(self.model.job, self.model.job)
