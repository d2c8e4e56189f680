"""Limits cards: a list by registration at the left, one card's entries at the right."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from magview.forms.draft import made
from magview.forms.entry import Kind
from magview.forms.typed import unit_words
from magview.job.limits_cards import FIELDS, CardShelf, card_document
from magview.spec.base import SpecError
from magview.spec.files import write_model
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import marked, tr
from magview.spec.limits import LimitsCard, file_stem, read_limits
from magview.ui.kit.asking import DESTROY, REJECT, ask, ask_open, ask_save
from magview.ui.kit.forms import ChoiceEdit, LineEdit
from magview.ui.kit.home_page import Chooser
from magview.ui.kit.look import Look
from magview.ui.kit.model_form import ModelForm
from magview.ui.kit.place import Page
from magview.ui.kit.strip import Foot
from magview.ui.kit.style import tint
from magview.ui.paper.pdf import print_pdf
from magview.ui.work.card_plan import CardPlanDialog


class CardsPage(Page):
    """The cards of all aircraft. A card is kept by its button; what was typed is asked about before it goes."""

    sheet_wanted = Signal(object)
    """A job sheet is to be begun with this card's limits."""

    def __init__(self, look: Look, shelf: CardShelf) -> None:
        super().__init__(look)
        self.shelf = shelf
        self._basis = ""
        """Registration of the kept card in the entries; nothing for a new one."""
        self.setWindowTitle(tr("Limits cards"))
        self.form = ModelForm(LimitsCard, FIELDS)
        for path, entry in self.form.entries.items():
            if path in self.form.labels and entry.unit and entry.kind is not Kind.CHOICE:
                self.form.name_unit(path, unit_words(entry))
        for label in self.form.labels.values():
            label.setWordWrap(False)  # a line each, so that the whole card is seen at once
        way = self.form.edits["rotation"]
        assert isinstance(way, ChoiceEdit)
        way.insert_nothing(tr("not chosen yet"))
        way.show_value(None)
        right = self.form.edits["right_btdc_deg"]
        assert isinstance(right, LineEdit)
        right.setPlaceholderText(tr("as the left one"))
        self._empty: dict[str, Any] = self.form.data()
        self._shown = self._empty
        self.said_here = QLabel()
        self.said_here.setWordWrap(True)
        self.said_here.setAccessibleName(tr("What came of it"))
        whole = QWidget()
        column, row = QVBoxLayout(whole), QHBoxLayout()
        em = self.fontMetrics().height()
        column.setContentsMargins(em, em // 2, em, em // 2)
        column.addLayout(row, 1)
        column.addWidget(Foot(look))
        row.setSpacing(2 * em)
        column.setSpacing(em // 3)
        row.addLayout(self._left(), 2)
        row.addLayout(self._right(), 5)
        self.fill(whole)
        look.changed.connect(lambda: self._say("", True))

    def _left(self) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(self.fontMetrics().height() // 3)
        title = QLabel(tr("By re&gistration"))
        self.list = Chooser(tr("By re&gistration").replace("&", ""), self._listed)
        self.list.picked.connect(self._picked)
        title.setBuddy(self.list)
        column.addWidget(title)
        column.addWidget(self.list, 1)
        self.new_button = self._button(column, tr("&New card"), self.ask_new)
        self.open_button = self._button(column, tr("&Open a card's file…"), self.ask_open)
        return column

    def _right(self) -> QVBoxLayout:
        column, buttons = QVBoxLayout(), QHBoxLayout()
        column.setSpacing(self.fontMetrics().height() // 3)
        buttons.setSpacing(self.fontMetrics().height())
        told = QLabel(tr("As the manual of this one aircraft has it: nothing is filled in for you."))
        told.setWordWrap(True)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(self.form)
        for widget in (told, area, self.said_here):
            column.addWidget(widget, 1 if widget is area else 0)
        column.addLayout(buttons)
        self.keep_button = self._button(buttons, tr("&Keep the card"), self.keep)
        self.sheet_button = self._button(buttons, tr("&Job sheet with it…"), self._sheet)
        self.plan_button = self._button(buttons, tr("&Teeth to move…"), self.show_plan)
        self.print_button = self._button(buttons, tr("&Print to PDF…"), self.ask_pdf)
        self.save_button = self._button(buttons, tr("Save as a &file…"), self.ask_save)
        return column

    def _button(self, where: QVBoxLayout | QHBoxLayout, words: str, slot: Callable[[], object]) -> QPushButton:
        button = QPushButton(words)
        button.setAutoDefault(False)
        button.clicked.connect(lambda: slot())
        where.addWidget(button)
        return button

    # -------------------------------------------------------------- the list

    def _listed(self) -> list[tuple[str, object]]:
        return [(card.registration, card) for card in self.shelf.cards()]

    def _picked(self, card: object) -> None:
        if isinstance(card, LimitsCard):
            self._after_asking(partial(self.show_card, card, kept=True))

    def show_card(self, card: LimitsCard, *, kept: bool = False) -> None:
        """Put a card into the entries; `kept`: one of the list, which keeping it replaces."""
        self._show({name: getattr(card, name) for name in FIELDS}, card.registration if kept else "")

    def _show(self, values: dict[str, Any], basis: str) -> None:
        self._basis = basis
        self.form.show_value(values)
        self._shown = self.form.data()
        self._say("", True)
        next(iter(self.form.edits.values())).setFocus()

    # -------------------------------------------------------------- what the buttons do

    def ask_new(self) -> None:
        """Begin an empty card; what was typed and not kept is asked about."""
        self._after_asking(partial(self._show, self._empty, ""))

    def ask_open(self) -> None:
        """Ask for a card's file."""
        path = ask_open(self, tr("Open a limits card"), file_filter(tr("Limits cards")))
        if path is not None:
            self.open_path(path)

    def open_path(self, path: Path) -> None:
        """Put a file's card into the entries, to be looked at and kept, or say in one sentence why not."""
        try:
            card = read_limits(path)
        except SpecError as error:
            self._say(str(error), False)
            return
        self._after_asking(partial(self._opened, card, path))

    def _opened(self, card: LimitsCard, path: Path) -> None:
        self.show_card(card)
        self._shown = self._empty  # it is not in the list yet
        self._say(tr("{file} is read. Compare it with the manual, then keep it.", file=path.name), True)

    def card(self) -> LimitsCard | None:
        """The card in the entries; None where it is not whole or not right, which is then said."""
        typed = self.focusWidget()
        if typed is not None:
            typed.clearFocus()  # what is being typed is taken first
        data = self.form.data()
        for name, entry in self.form.entries.items():
            if self.form.refusals[name].text():
                self._say(tr("“{field}” could not be read: put it right first", field=entry.label), False)
                self.form.edits[name].setFocus()
                return None
            if not entry.optional and data[name] in (None, "", ()):
                words = marked("“{field}” is empty: write it as the manual has it. {rule}")
                self._say(tr(words, field=entry.label, rule=entry.rule), False)
                self.form.edits[name].setFocus()
                return None
        try:
            return made(LimitsCard, {"format": "magview-limits/1", **data})
        except SpecError as error:
            self._say(str(error), False)
            return None

    def keep(self) -> bool:
        """Keep the card in the list. Another card of the same aircraft is not replaced."""
        card = self.card()
        if card is None:
            return False
        other = self.shelf.named(card.registration)
        if other is not None and other.registration.casefold() != self._basis.casefold():
            self._say(
                tr(
                    "There is a card of {registration} already: choose it in the list to change it, or write another "
                    "registration, such as {registration} right",
                    registration=other.registration,
                ),
                False,
            )
            return False
        try:
            self.shelf.keep(card)
        except SpecError as error:
            self._say(str(error), False)
            return False
        self._basis, self._shown = card.registration, self.form.data()
        self.list.again()
        self._say(tr("The card of {registration} is kept.", registration=card.registration), True)
        return True

    def show_plan(self) -> CardPlanDialog | None:
        """Plan teeth from the card in the entries; None where it is not whole."""
        card = self.card()
        if card is None:
            return None
        dialog = CardPlanDialog(card, self.look, self)
        dialog.open()
        return dialog

    def _sheet(self) -> None:
        card = self.card()
        if card is not None:
            self.sheet_wanted.emit(card)

    def ask_save(self) -> None:
        """Ask where, and write the card as a file to pass on."""
        card = self.card()
        if card is None:
            return
        name = f"{file_stem(card)}-limits{ENDING}"
        path = ask_save(self, tr("Save the limits card"), name, file_filter(tr("Limits cards")))
        if path is None:
            return
        try:
            write_model(path, card)
        except SpecError as error:
            self._say(str(error), False)
            return
        self._say(tr("Saved {file}.", file=path.name), True)

    def ask_pdf(self) -> None:
        """Ask where, and print the card."""
        card = self.card()
        if card is None:
            return
        path = ask_save(self, tr("Print the limits card"), f"{file_stem(card)}-limits.pdf", tr("PDF (*.pdf)"))
        if path is None:
            return
        try:
            print_pdf(path, card_document(card))
        except SpecError as error:
            self._say(str(error), False)
            return
        self._say(tr("Saved {file}.", file=path.name), True)

    # -------------------------------------------------------------- not losing anything

    @property
    def changed(self) -> bool:
        """Whether something was typed that is not kept."""
        return self.form.data() != self._shown

    def _after_asking(self, does: Callable[[], object]) -> None:
        if not self.changed:
            does()
            return
        ask(
            self,
            tr("This card has entries that are not kept. Put them away?"),
            (tr("&Put them away"), DESTROY, does),
            (tr("&Go on with them"), REJECT, None),
        )

    def may_close(self) -> bool:
        """Whether nothing would be lost; asks if something would."""
        if self.changed:
            self._after_asking(self._give_up)
            return False
        return True

    def _give_up(self) -> None:
        self._show(self._empty, "")
        self.close()

    def discard(self) -> None:
        """Close and keep nothing of what was typed."""
        self._shown = self.form.data()
        self.close()

    def _say(self, sentence: str, good: bool) -> None:
        refused = self.shelf.refused if good and not sentence else ()
        text = sentence if good else f"✗ {sentence}"
        self.said_here.setText(text if not refused else f"✗ {refused[0]}")
        tint(self.said_here, self.look.theme.good if good and not refused else self.look.theme.bad)
