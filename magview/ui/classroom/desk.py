"""A pupil's side: a code and a name, the exercises in order, and what became of each."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QWidget,
)

from magview.classroom.desk import begin, place_of
from magview.classroom.handed import PLAINLY
from magview.classroom.outbox import Delivery
from magview.classroom.sets import ClassSet, read_set, set_id, set_of_code
from magview.practice.attempt import one_line, read_attempt
from magview.spec.base import SpecError
from magview.spec.formats import file_filter
from magview.spec.language import tr
from magview.ui.classroom.delivery import Place, delivery_words
from magview.ui.classroom.kept import ClassKept
from magview.ui.classroom.page import ClassPage, push_button
from magview.ui.kit.asking import ask_folder
from magview.ui.kit.look import Look
from magview.ui.kit.settings import keep, kept_text
from magview.ui.kit.table import Table
from magview.ui.practice.controls import wrapped
from magview.ui.practice.model import AttemptModel
from magview.ui.practice.page import PracticePage
from magview.ui.practice.place import ATTEMPTS


class ClassDesk(ClassPage):
    """Page on which a pupil begins. Exercises open on pages of their own beside it."""

    def __init__(self, room: ClassKept, look: Look) -> None:
        super().__init__(tr("Class"), look)
        self.room = room
        self._set: ClassSet | None = None
        self._states: dict[int, str] = {}
        self._open: dict[int, PracticePage] = {}
        self._waiting: dict[str, int] = {}
        self._code_taken = ""
        self._build_form()
        self.about = wrapped()
        heads = (tr("Exercise"), tr("How it stands"))
        self.exercises = Table(tr("Exercises of the class"), heads, wide=(1,))
        self.exercises.opened.connect(self._opened)
        self.column.addWidget(self.about)
        self.column.addWidget(self.exercises, 1)
        self.column.addWidget(self.message)
        buttons = QHBoxLayout()
        self.start = push_button(tr("&Begin"), self.begin)
        self.start.setDefault(True)
        self.saved = push_button(tr("Hand in a &saved attempt…"), self._ask_saved)
        self.again = push_button(tr("&Try again now"), self._retry)
        self.elsewhere = push_button(tr("Deliver to &another folder…"), self._ask_elsewhere)
        for button in (self.start, self.saved, self.again, self.elsewhere):
            buttons.addWidget(button)
        buttons.addStretch(1)
        self.column.addLayout(buttons)
        self.column.addWidget(wrapped(tr(PLAINLY)))
        courier = room.courier
        courier.arrived.connect(self._arrived)
        courier.failed.connect(self._failed)
        courier.retried.connect(self._retried)
        self._show()
        self._show_waiting()

    def _build_form(self) -> None:
        self.code, self.folder = QLineEdit(), QLineEdit()
        self.code.setPlaceholderText(tr("as the instructor gives it; capitals and hyphens do not matter"))
        self.code.editingFinished.connect(self.read_code)
        self.name = QComboBox()
        self.name.setEditable(True)
        self.name.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.name.setAccessibleName(tr("Name or number"))
        line = self.name.lineEdit()
        assert line is not None  # an editable list has one
        line.setMaxLength(120)
        self.name.setEditText(kept_text("class/pupil"))
        self.folder.setPlaceholderText(tr("the folder the whole class hands in to"))
        self.folder.setText(kept_text("class/folder"))
        form = QFormLayout()
        form.addRow(tr("&Code"), self._beside(self.code, tr("&Open file…"), self._ask_set))
        form.addRow(tr("&Name or number"), self.name)
        form.addRow(tr("&Hand in to"), self._beside(self.folder, tr("Choose &folder…"), self._ask_folder))
        self.column.addLayout(form)

    def _beside(self, field: QLineEdit, words: str, slot: Callable[[], object]) -> QWidget:
        whole = QWidget()
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(field, 1)
        row.addWidget(push_button(words, slot))
        whole.setFocusProxy(field)
        return whole

    # -------------------------------------------------------------- the set

    def read_code(self) -> None:
        """Take the code that is typed."""
        text = self.code.text().strip()
        if not text or (self._set is not None and text == self._code_taken):
            return
        try:
            self.take(set_of_code(text))
        except SpecError as error:
            self._set, self._states = None, {}
            self._show()
            self.say(str(error))
        self._code_taken = text

    def _ask_set(self) -> None:
        self.ask_file(tr("Open a class's file"), file_filter(tr("Class sets")), self.open_path)

    def open_path(self, path: Path) -> None:
        """Take a set from its file; the code field then is empty."""
        try:
            of = read_set(path)
        except SpecError as error:
            self.say(str(error))
            return
        self.code.clear()
        self.take(of)

    def take(self, of: ClassSet) -> None:
        """Show a set."""
        self._set, self._states, self._open, self._waiting = of, {}, {}, {}
        typed = self.name.currentText()
        self.name.clear()
        self.name.addItems(list(of.pupils))
        self.name.setEditText(typed)
        self.say("")
        self._show()

    def _show(self) -> None:
        of = self._set
        count = len(of.exercises) if of is not None else 0
        self._show_exercises()
        for button in (self.start, self.saved):
            button.setEnabled(count > 0)
        if of is None:
            self.about.setText(tr("Type the class's code, or open its file; then your name, and begin."))
            return
        told = [of.title] if of.title else []
        told.append(
            tr("Everyone has a fault of their own: it hangs on the name as you type it.")
            if of.each_their_own
            else tr("Everyone has the same fault.")
        )
        if not of.hints:
            told.append(tr("Hints are not given."))
        self.about.setText(" ".join(told))
        if self.exercises.chosen_row() < 0:
            self.exercises.choose_row(0)

    def _show_exercises(self) -> None:
        of, rows = self._set, []
        if of is not None:
            for number in range(1, len(of.exercises) + 1):
                exercise = of.exercise(number)
                words = tr("{number}. {name} (about {minutes} minutes)",
                           number=number, name=tr(exercise.name), minutes=f"{exercise.minutes:g}")  # fmt: skip
                rows.append((words, self._states.get(number, tr("not begun"))))
        self.exercises.fill(rows, range(len(rows)))

    def _opened(self, _: object) -> None:
        self.begin()

    def _mark(self, number: int, words: str) -> None:
        self._states[number] = words
        self._show_exercises()

    # -------------------------------------------------------------- working

    def begin(self) -> PracticePage | None:
        """Begin the exercise that is chosen, or go back to its page."""
        self.read_code()
        of, number = self._set, self.exercises.chosen_row() + 1
        if of is None or number < 1:
            if not self.message.text():
                self.say(tr("Type the class's code first"))
            return None
        place = self._place(of, number)
        if place is None:
            return None
        try:
            session = begin(of, number, place.pupil)
        except SpecError as error:
            self.say(str(error))
            return None
        page = self._standing(session.attempt.seed, number)
        if page is None:
            page = self.room.practice.begin(session.attempt.exercise, session.attempt.seed, place.pupil)
        if page is None:
            return None
        if self._open.get(number) is not page:
            self._open[number] = page
            self.room.courier.attach(place, page)
            page.closed.connect(self._page_closed)
        keep("class/pupil", place.pupil)
        keep("class/folder", str(place.folder))
        self._mark(number, tr("under way"))
        self.room.practice.show_page(page)
        return page

    def _place(self, of: ClassSet, number: int) -> Place | None:
        pupil, folder = one_line(self.name.currentText()), self.folder.text().strip()
        if not pupil:
            self.say(tr("Type your name or number first: the attempt is handed in under it"))
            self.name.setFocus()
            return None
        if not folder:
            self.say(tr("Choose the folder to hand in to first; your instructor knows it"))
            self.folder.setFocus()
            return None
        return Place(of, number, pupil, Path(folder).expanduser())

    def _standing(self, seed: int, number: int) -> PracticePage | None:
        """A page that is at this exercise already: opened here, or found again after a crash."""
        if self._set is None:
            return None
        wanted = self._set.exercise(number)
        for page in self.room.practice.attempts:
            model = page.model
            if isinstance(model, AttemptModel) and not model.practice.handed_in:
                attempt = model.session.attempt
                if attempt.seed == seed and attempt.exercise == wanted:
                    return page
        return None

    def _page_closed(self, page: object) -> None:
        for number, one in list(self._open.items()):
            if one is page:
                del self._open[number]
                if self._states.get(number) == tr("under way"):
                    self._mark(number, tr("closed without handing in"))

    def _ask_saved(self) -> None:
        self.ask_file(tr("Hand in a saved attempt"), file_filter(tr(ATTEMPTS)), self.hand_in_path)

    def hand_in_path(self, path: Path) -> None:
        """Hand in an attempt that was saved by hand."""
        if self._set is None:
            return
        try:
            attempt = read_attempt(path)
            number = place_of(self._set, attempt)
            place = self._place(self._set, number)
            if place is not None:
                self.room.courier.hand_in(place, attempt)
        except SpecError as error:
            self.say(str(error))

    # -------------------------------------------------------------- what became of it

    def _arrived(self, place: Place, delivery: Delivery) -> None:
        if self._set is not None and set_id(place.of) == set_id(self._set):
            self._mark(place.number, delivery_words(delivery))
            if not delivery.delivered:
                self._waiting[delivery.name] = place.number
        self.say(delivery_words(delivery))
        self._show_waiting()

    def _failed(self, place: Place, sentence: str) -> None:
        if self._set is not None and set_id(place.of) == set_id(self._set):
            self._mark(place.number, sentence)
        self.say(sentence)

    def _retried(self, deliveries: list[Delivery]) -> None:
        if deliveries:
            left = [d for d in deliveries if not d.delivered]
            sent = tr("{count} delivered.", count=len(deliveries) - len(left))
            self.say(sent if not left else tr("{count} still wait: {why}", count=len(left), why=left[0].why))
        for delivery in deliveries:
            if delivery.delivered and delivery.name in self._waiting:
                self._mark(self._waiting.pop(delivery.name), delivery_words(delivery))
        self._show_waiting()

    def _show_waiting(self) -> None:
        waiting = len(self.room.courier.outbox.waiting())
        for button in (self.again, self.elsewhere):
            button.setVisible(waiting > 0)
        if waiting and not self.message.text():
            self.say(tr("{count} attempts wait on this machine to be delivered.", count=waiting))

    def _retry(self) -> None:
        self.room.courier.retry()

    def _ask_folder(self) -> None:
        path = ask_folder(self, tr("Hand in to"), self.folder.text())
        if path is not None:
            self.folder.setText(str(path))

    def _ask_elsewhere(self) -> None:
        path = ask_folder(self, tr("Deliver to another folder"), self.folder.text())
        if path is not None:
            self.folder.setText(str(path))
            self.room.courier.retry(path)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Return begins."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.begin()
            return
        super().keyPressEvent(event)
