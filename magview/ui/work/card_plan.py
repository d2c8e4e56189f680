"""Teeth planned from a limits card: one magneto, the lamp's reading, the first move in words and on paper."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from magview.bench.lamp_words import LOOK_FIRST, LOOK_FIRST_WHY, btdc_words
from magview.bench.shift_plan import ShiftPlan
from magview.bench.words import move_words
from magview.job.limits_cards import plan_of_card
from magview.job.shift_plan import all_warnings, shift_documents
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.spec.limits import LimitsCard, file_stem
from magview.spec.parse import parse_btdc_deg
from magview.ui.kit.asking import ask_save
from magview.ui.kit.forms import LineEdit
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.strip import Foot
from magview.ui.paper.pdf import print_pdf


class CardPlanDialog(QDialog):
    """Asks what the lamp reads and says which teeth to move."""

    def __init__(self, card: LimitsCard, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._card = card
        self.plan: ShiftPlan | None = None
        """The move that is told; None while there is none."""
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Tooth-shift plan: {magneto}", magneto=card.registration))
        self.side, self.reads = QuietCombo(), LineEdit()
        for side, words in (("left", tr("left")), ("right", tr("right"))):
            self.side.addItem(words, side)
        self.checked = QCheckBox(tr("&Stroke, mark and finger were looked at"))
        self.told = QLabel()
        self.told.setWordWrap(True)
        self.told.setAccessibleName(tr("Teeth to move"))
        form, column = QFormLayout(), QVBoxLayout(self)
        for label, field in (
            (tr("&Magneto"), self.side),
            (tr("&Lamp reads [crank ° before top dead centre]"), self.reads),
        ):
            form.addRow(label, field)
            field.setAccessibleName(label.replace("&", ""))
        form.addRow(self.checked)
        buttons = QDialogButtonBox()
        self.print_button = QPushButton(tr("&Print to PDF…"))
        self.print_button.setAutoDefault(False)
        buttons.addButton(self.print_button, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.addButton(QDialogButtonBox.StandardButton.Close).setAutoDefault(False)
        column.addLayout(form)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        area.setWidget(self.told)
        self.told.setAlignment(Qt.AlignmentFlag.AlignTop)
        for widget in (area, buttons, Foot(look)):
            column.addWidget(widget, 1 if widget is area else 0)
        buttons.rejected.connect(self.reject)
        self.print_button.clicked.connect(self.ask_pdf)
        self.side.currentIndexChanged.connect(self.show_plan)
        self.reads.textChanged.connect(self.show_plan)
        self.reads.setFocus()
        self.checked.toggled.connect(self.show_plan)
        letters = self.fontMetrics()
        self.resize(80 * letters.averageCharWidth(), 26 * letters.height())
        self.show_plan()

    def show_plan(self, _: object = None) -> None:
        """Say which teeth to move, or in one sentence why none can be named."""
        self.plan, text = None, self.reads.text().strip()
        if not text:
            self.told.setText(tr("Type what the lamp reads, such as 22; 3 ATDC is after top dead centre."))
        else:
            try:
                self.plan = plan_of_card(
                    self._card, self.side.currentData(), parse_btdc_deg(text), checked=self.checked.isChecked()
                )
            except SpecError as error:
                self.told.setText(f"✗ {error}")
            else:
                self.told.setText("\n\n".join(_sentences(self.plan)))
        self.print_button.setEnabled(self.plan is not None)

    def ask_pdf(self) -> None:
        """Ask where, and print the plan."""
        plan = self.plan
        if plan is None:
            return
        name = f"{file_stem(self._card)}-{plan.position}-teeth.pdf"
        path = ask_save(self, self.windowTitle(), name, tr("PDF (*.pdf)"))
        if path is None:
            return
        try:
            print_pdf(path, *shift_documents(plan))
        except SpecError as error:
            self.told.setText(f"✗ {error}")
            return
        self.told.setText(tr("Saved {file}.", file=path.name))


def _sentences(plan: ShiftPlan) -> list[str]:
    assert plan.rotation is not None
    disc, flange = move_words(plan.move, plan.rotation, "drive end")
    found = [f"{tr(LOOK_FIRST)} {tr(LOOK_FIRST_WHY)}"] if plan.far_off else []
    return [
        *found,
        *all_warnings(plan),
        f"{tr('A disc on the drive flange')}: {disc}",
        f"{tr('B magneto flange on the disc')}: {flange}",
        tr(
            "Then it should fire at {fires}, {off:+deg} from wanted. Read the lamp again: the new reading counts.",
            fires=btdc_words(plan.move.result_btdc_deg),
            off=plan.move.residual_deg,
        ),
    ]
