"""Results of a draft: the bench's own pictures of it, its readings, and how it differs from a shipped file."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QLabel,
    QSplitter,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from magview.bench.actions import PlaceInstallation, PlaceMagneto
from magview.bench.placing import new_bench
from magview.own.compare import differences, nearest, results, shipped_item, warnings
from magview.own.drafts import Item, shipped_kind
from magview.own.fields import Kind, entries
from magview.own.measured import on_an_engine
from magview.spec.engine import Installation
from magview.spec.language import tr
from magview.spec.library import DEFAULT_MAGNETO, find_magneto
from magview.spec.magneto import Magneto
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint
from magview.ui.kit.table import Table
from magview.ui.own.model import OwnModel
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.crank_view import CrankView
from magview.ui.pictures.drive_view import DriveView

_ROOMY = 34
"""From this height on [lines of type] picture and readings have room together."""


class PicturesPane(QTabWidget):
    """The draft drawn, with its readings; and beside the shipped file that is nearest."""

    def __init__(self, model: OwnModel, look: Look) -> None:
        super().__init__()
        self._model, self.look = model, look
        self._kind: Kind = "magneto"
        self._drawn: dict[Kind, Item] = {}
        self.setDocumentMode(True)
        # A bench of its own: parts can be turned in the picture without anything happening to the real one.
        self.bench = BenchModel(new_bench(find_magneto(DEFAULT_MAGNETO)), self)
        self.breaker = BreakerView(self.bench, look)
        self.drive, self.crank = DriveView(self.bench, look), CrankView(self.bench, look)
        self._roomy = True
        self.comparison = self._build_compared()
        self.addTab(self._build_drawn(), tr("Dra&wn"))
        self.addTab(self.comparison, tr("&Compared"))
        self.currentChanged.connect(self._show_now)
        look.changed.connect(self._show_now)

    # -------------------------------------------------------------- building

    def _build_drawn(self) -> QWidget:
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 4, 0, 0)
        self.state_label = QLabel()
        self.state_label.setWordWrap(True)
        self.state_label.setMargin(4)
        column.addWidget(self.state_label)
        self.split = QSplitter(Qt.Orientation.Vertical)
        for view in (self.breaker, self.drive, self.crank):
            view.hide()  # before its height can make the window taller than it is asked to be
            self.split.addWidget(view)
        self.readings = Table(tr("What the draft comes to"), (tr("Reading as designed"), tr("comes to")), wide=(0,))
        self.split.addWidget(self.readings)
        for i, stretch in enumerate((4, 3, 2, 2)):
            self.split.setStretchFactor(i, stretch)
            self.split.setCollapsible(i, False)
        column.addWidget(self.split, 1)
        self.warning = QLabel()
        self.warning.setWordWrap(True)
        self.warning.setMargin(4)
        column.addWidget(self.warning)
        return page

    def _build_compared(self) -> QWidget:
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 4, 0, 0)
        self.others = QuietCombo()
        self.others.setAccessibleName(tr("Shipped file to compare with"))
        self.others.activated.connect(self._show_now)
        column.addWidget(self.others)
        self.fields = Table(tr("Fields that differ"), (tr("Field"), tr("yours"), tr("shipped")), wide=(0,))
        heads = (tr("Reading as designed"), tr("yours"), tr("shipped"))
        self.compared = Table(tr("Readings that differ"), heads, wide=(0,))
        column.addWidget(self.fields, 3)
        column.addWidget(self.compared, 2)
        self.compared_label = QLabel()
        self.compared_label.setWordWrap(True)
        self.compared_label.setMargin(4)
        column.addWidget(self.compared_label)
        return page

    def resizeEvent(self, event: QResizeEvent) -> None:
        """On a low screen the readings have a page of their own."""
        roomy = self.height() >= _ROOMY * self.fontMetrics().height()
        if roomy != self._roomy:
            self._roomy = roomy
            if roomy:
                self.removeTab(self.indexOf(self.readings))
                self.split.addWidget(self.readings)
            else:
                self.insertTab(1, self.readings, tr("&Readings"))
            self._show_now()
        super().resizeEvent(event)

    # -------------------------------------------------------------- showing

    def show_kind(self, kind: Kind) -> None:
        """Show one of the three drafts."""
        if kind != self._kind or not self.others.count():
            self.others.clear()
            self.others.addItem(tr("The nearest shipped file"), "")
            for name in shipped_kind(kind):
                item = shipped_item(kind, name)
                self.others.addItem(str(getattr(item, "name", name)), name)
        self._kind = kind
        self._show_now()

    def _show_now(self, _: object = None) -> None:
        if self.currentWidget() is self.comparison:
            self._show_compared()
        else:
            self._show_drawn()

    def _show_drawn(self) -> None:
        kind, checked = self._kind, self._model.checked(self._kind)
        if checked.item is not None:
            self._drawn[kind] = checked.item
        item = self._drawn.get(kind)
        by_manual = item is not None and _by_manual(item)
        if checked.item is not None and by_manual:
            words = tr("✓ Complete, and known by its manual only: nothing is drawn or computed of it here.")
        elif checked.item is not None:
            words = tr("✓ Complete: drawn as designed to be set.")
        elif item is not None:
            words = tr("Drawn as it last was complete; what is missing or refused is marked at its field.")
        else:
            words = tr("Nothing to draw yet: it is drawn once everything needed is there.")
        self.state_label.setText(words)
        tint(self.state_label, self.look.theme.good if checked.item is not None else self.look.theme.text, bold=True)
        for view, kinds in (
            (self.breaker, ("magneto",)), (self.drive, ("installation",)), (self.crank, ("engine", "installation"))
        ):  # fmt: skip
            view.setVisible(
                item is not None and not by_manual and kind in kinds and (self._roomy or kinds[0] == kind)
            )
        if self._roomy:  # else they are a page, which shows itself
            self.readings.setVisible(item is not None and not by_manual)
        if item is not None and not by_manual:
            self._place(item)
            _fill(self.readings, [(r.label, r.words(self.look.inches)) for r in results(item)])
        told = warnings(checked.item) if checked.item is not None else []
        self.warning.setText("\n".join(tr("⚠ {sentence}.", sentence=w) for w in told))
        self.warning.setVisible(bool(told))

    def _place(self, item: Item) -> None:
        state = self.bench.state
        if isinstance(item, Magneto):
            if state.magneto != item or state.engaged is not None:
                self.bench.send(PlaceMagneto(item))
            return
        # The picture is of No. 1, whichever cylinder the engine is timed to.
        engaged = on_an_engine(item)
        installation = engaged.model_copy(update={"engine": engaged.engine.model_copy(update={"timing_cylinder": 1})})
        if state.engaged is None or state.engaged.installation != installation:
            self.bench.send(PlaceInstallation(installation))

    def _show_compared(self) -> None:
        kind, draft = self._kind, self._model.own.draft(self._kind)
        if not draft.values:
            for table in (self.fields, self.compared):
                _fill(table, [])
            self.compared_label.setText(tr("Nothing to compare yet."))
            return
        name = self.others.currentData() or nearest(draft)
        other = shipped_item(kind, name)
        known = [d for d in differences(draft, name, self.look.inches) if d.own != "–"]
        _fill(self.fields, [(d.entry.label, d.own, d.other) for d in known])
        item = self._model.checked(kind).item
        rows: list[tuple[str, ...]] = []
        if item is not None:
            mine, theirs = results(item), results(other) if results(item) else []
            pairs = [
                (r.label, r.words(self.look.inches), o.words(self.look.inches))
                for r, o in zip(mine, theirs, strict=True)
            ]
            rows = [row for row in pairs if row[1] != row[2]]
        _fill(self.compared, rows)
        told = len(entries(kind))
        given = len(draft.values)
        self.compared_label.setText(
            tr("Compared with “{name}”. Fields that differ: {differ}; given so far: {given} of {all}.",
               name=str(getattr(other, "name", name)), differ=len(known), given=given, all=told)
        )  # fmt: skip

    def halt(self) -> None:
        """The window closes: time stands still."""
        self.bench.halt()


def _by_manual(item: Item) -> bool:
    magneto = item.magneto if isinstance(item, Installation) else item
    return isinstance(magneto, Magneto) and magneto.assumed


def _fill(table: Table, rows: list[tuple[str, ...]]) -> None:
    """Long words are cut, and stand whole in the tip."""
    cut = [tuple(text if len(text) <= 40 else f"{text[:39]}…" for text in row) for row in rows]
    table.fill(cut, tips=["\n".join(text[:600] for text in row) for row in rows])
