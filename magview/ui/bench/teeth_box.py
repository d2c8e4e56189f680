"""The coupling's teeth: moved one at a time on either face, and its paint marks."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton

from magview.bench.actions import MoveTeeth, PaintMarks
from magview.bench.state import BenchState, Engaged, Mounting
from magview.bench.tooth_steps import coupling_words, far_apart, marks_words, tooth_degrees
from magview.bench.words import short_words
from magview.spec.language import tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.section import Section
from magview.ui.kit.steady_label import SteadyLabel


class TeethBox(Section):
    """A row for each face of the disc: how far it was moved from as found, and a tooth on or back."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__(tr("Teeth moved from as found"), look)
        self._model = model
        grid = QGridLayout()
        grid.setContentsMargins(0, 0, 0, 0)
        self.body.addLayout(grid)
        self.teeth: dict[str, QLabel] = {}
        self.step_buttons: dict[tuple[str, int], QPushButton] = {}
        for row, (key, name) in enumerate(
            (("disc", tr("A disc on the drive flange")), ("magneto", tr("B magneto flange on the disc")))
        ):
            grid.addWidget(QLabel(name), row, 0)
            value = QLabel()
            value.setAccessibleName(name)
            value.setAlignment(Qt.AlignmentFlag.AlignCenter)
            against, along = QPushButton("−1"), QPushButton("+1")
            against.setAccessibleName(tr("{name}: one tooth against rotation", name=name))
            along.setAccessibleName(tr("{name}: one tooth with rotation", name=name))
            for button, way in ((against, -1), (along, 1)):
                self.step_buttons[key, way] = button
            grid.addWidget(against, row, 1)
            grid.addWidget(value, row, 2)
            grid.addWidget(along, row, 3)
            self.teeth[key] = value
        self.step_buttons["magneto", -1].clicked.connect(self._magneto_back)
        self.step_buttons["magneto", 1].clicked.connect(self._magneto_on)
        self.step_buttons["disc", -1].clicked.connect(self._disc_back)
        self.step_buttons["disc", 1].clicked.connect(self._disc_on)
        grid.setColumnStretch(2, 1)
        self.coupling = SteadyLabel()
        grid.addWidget(self.coupling, 2, 0, 1, 4)
        self.degrees = QLabel()
        self.degrees.setWordWrap(True)
        grid.addWidget(self.degrees, 4, 0, 1, 4)
        back = QPushButton(tr("&As found"))
        back.clicked.connect(self._as_found)
        grid.addWidget(back, 3, 0, Qt.AlignmentFlag.AlignLeft)
        paint = QPushButton(tr("Paint new &marks"))
        paint.setToolTip(tr("Marks in line across drive flange, disc and magneto flange, as they stand now"))
        paint.clicked.connect(self._paint)
        grid.addWidget(paint, 3, 1, 1, 3, Qt.AlignmentFlag.AlignRight)
        self.fit_rows()

    def show_teeth(self, state: BenchState, engaged: Engaged) -> None:
        """Show the coupling of the magneto in view."""
        at = engaged.mounting
        self.teeth["magneto"].setText(short_words(at.magneto_teeth))
        self.teeth["disc"].setText(short_words(at.disc_teeth))
        coupling = engaged.installation.disc
        self.degrees.setText(tooth_degrees(coupling.magneto_teeth, coupling.drive_teeth, engaged.ratio))
        self.coupling.setText(_words(engaged, at))
        self.coupling.keep_room_for(_words(engaged, far) for far in far_apart(engaged))

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange and hasattr(self, "step_buttons"):
            self.fit_rows()

    def fit_rows(self) -> None:
        """Buttons as wide as their words at the present size of type."""
        for button in self.step_buttons.values():
            button.setFixedWidth(self.fontMetrics().horizontalAdvance("  +1  ") + 16)

    def _magneto_back(self) -> None:
        self._step(-1, 0)

    def _magneto_on(self) -> None:
        self._step(1, 0)

    def _disc_back(self) -> None:
        self._step(0, -1)

    def _disc_on(self) -> None:
        self._step(0, 1)

    def _paint(self) -> None:
        self._model.send(PaintMarks())

    def _as_found(self) -> None:
        self._model.send(MoveTeeth(0, 0))

    def _step(self, magneto: int, disc: int) -> None:
        engaged = self._model.state.engaged
        if engaged is not None:
            at = engaged.mounting
            self._model.send(MoveTeeth(at.magneto_teeth + magneto, at.disc_teeth + disc))


def _words(engaged: Engaged, at: Mounting) -> str:
    return f"{coupling_words(engaged)} {marks_words(at)}"
