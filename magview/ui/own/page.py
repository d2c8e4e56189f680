"""One page of the guided editor: what to have at hand, and the entries that are measured with it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from magview.own.drafts import asked, needed
from magview.own.fields import Kind, Page, on_page
from magview.own.measured import WORKED_OUT
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.own.field_row import FieldRow
from magview.ui.own.model import OwnModel


class PageView(QScrollArea):
    """A page that scrolls up and down; built when it is first turned to."""

    table_wanted = Signal()
    """The user has a table of lift readings."""
    trials_wanted = Signal()
    """The user wants lift and setting from the bench's trials."""

    def __init__(self, model: OwnModel, kind: Kind, page: Page, look: Look) -> None:
        super().__init__()
        self.page, self.kind = page, kind
        self._model, self.look = model, look
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(self.focusPolicy().NoFocus)
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(10, 4, 10, 4)
        lead = QLabel(tr(page.lead))
        lead.setWordWrap(True)
        column.addWidget(lead)
        shown = on_page(kind, page)
        if "cam.profile.kind" in shown:
            column.addLayout(self._build_measuring())
        self.rows: dict[str, FieldRow] = {}
        for entry in shown.values():
            row = self.rows[entry.path] = FieldRow(entry, look, WORKED_OUT.get(entry.path, ""))
            row.entered.connect(self._entered)
            row.noted.connect(self._noted)
            column.addWidget(row)
        column.addStretch(1)
        self.setWidget(inside)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def _build_measuring(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.table_button = QPushButton(tr("Lift from a &table…"))
        self.trials_button = QPushButton(tr("Lift from the t&rials"))
        self.table_button.setToolTip(tr("Angles and dial readings of one lobe become its lift, marked measured"))
        self.trials_button.setToolTip(
            tr("Lift, rise and setting as the trials noted on the bench tell them, marked measured")
        )
        self.table_button.clicked.connect(self.table_wanted)
        self.trials_button.clicked.connect(self.trials_wanted)
        for button in (self.table_button, self.trials_button):
            button.setAutoDefault(False)
            row.addWidget(button)
        row.addStretch(1)
        return row

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Beside one another where there is room, else one below the other."""
        narrow = self.viewport().width() < 86 * self.fontMetrics().averageCharWidth()
        for row in self.rows.values():
            row.set_narrow(narrow)
        super().resizeEvent(event)

    def _entered(self, path: str, value: object) -> None:
        self._model.give(self.kind, path, value)  # type: ignore[arg-type]

    def _noted(self, field: str, note: object) -> None:
        self._model.note(self.kind, field, note)  # type: ignore[arg-type]

    def show_drafts(self, inches: bool) -> None:
        """Show the entries as the draft has them, and only those that are asked for."""
        draft, checked = self._model.own.draft(self.kind), self._model.checked(self.kind)
        shown, must = asked(draft), needed(draft)
        for path, row in self.rows.items():
            row.setVisible(path in shown)
            refusal = checked.refused.get(path, "")
            row.show_value(draft.values.get(path), draft.note(row.entry), refusal, path in must, inches)

    def commit(self) -> None:
        """Take what is being typed."""
        for row in self.rows.values():
            if row.isVisible():
                row.commit()

    def go_to(self, path: str) -> None:
        """Put the keyboard into an entry's field and bring it into sight."""
        row = self.rows[path]
        row.field.setFocus()
        self.ensureWidgetVisible(row)
