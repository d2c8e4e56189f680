"""The four pictures of a room side by side: without numbers while it is worked in, with them afterwards."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSplitter, QWidget

from magview.drawing.breaker_end import ByEye
from magview.drawing.contact_faces import faces_grade
from magview.drawing.things import Burns, Laid, burning
from magview.practice import instruments
from magview.practice.by_eye import by_eye
from magview.practice.instruments import MAX_EYE_DEG
from magview.practice.screen_words import drawn_aside_deg, hidden_parts
from magview.practice.state import Feel, Practice
from magview.practice.tray import stop_in_no_1
from magview.ui.kit.look import Look
from magview.ui.kit.panes import column
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.contact_view import ContactView
from magview.ui.pictures.crank_view import CrankView
from magview.ui.pictures.drive_view import DriveView
from magview.ui.pictures.eye import Eye
from magview.ui.pictures.picture_view import PictureView


class Pictures(QSplitter):
    """Breaker end, and the contacts beside it; on an engine the drive end over contacts and crank."""

    def __init__(self, model: Pictured, practice: Practice, look: Look, *, inside: bool, engine: bool) -> None:
        """`inside`, `engine`: whether true numbers may stand on the magneto's pictures, and on the engine's."""
        super().__init__(Qt.Orientation.Horizontal)
        self.breaker = BreakerView(model, look, numbers=inside)
        self.contact = ContactView(model, self.breaker, look)
        self.drive = DriveView(model, look, numbers=engine)
        self.crank = CrankView(model, look, numbers=engine)
        for view, least in ((self.breaker, 124), (self.contact, 60), (self.drive, 96), (self.crank, 60)):
            view.setMinimumSize(min(least, 120), least)  # there is much beside them, also on a small screen
        self.on_engine = practice.bench.engaged is not None
        lower = QSplitter(Qt.Orientation.Horizontal)
        for view in (self.contact, self.crank) if self.on_engine else (self.contact,):
            lower.addWidget(view)
            lower.setStretchFactor(lower.count() - 1, 1)
        lower.setSizes([1000] * lower.count())
        if not self.on_engine:
            away = QWidget(self.breaker)  # what is a splitter's own child would take room in it
            away.hide()
            for view in (self.drive, self.crank):
                view.setParent(away)
        self._right = column(self.drive, lower) if self.on_engine else lower
        if self.on_engine:
            self._right.setSizes([3000, 2000])
        for i, part in enumerate((self.breaker, self._right)):
            self.addWidget(part)
            self.setStretchFactor(i, (4, 3)[i])
            self.setCollapsible(i, False)
        self.setSizes([4000, 3000])
        self.held_blades = ""
        """The blades in the right hand, as they are marked."""
        self._scales, self._practice = inside, practice
        self.eye = Eye(self.breaker, look, MAX_EYE_DEG)
        self.breaker.laid = self._laid
        if not inside:
            self.breaker.eyes, self.breaker.lets_go = self._by_eye, True
        self.breaker.show_state(practice.bench)
        self.show_practice(practice)

    @property
    def views(self) -> tuple[PictureView, ...]:
        """Those that are there."""
        inside: tuple[PictureView, ...] = (self.breaker, self.contact)
        return (*inside, self.drive, self.crank) if self.on_engine else inside

    def show_practice(self, practice: Practice) -> None:
        """Tell the pictures what the bench's state does not: what lies on, what is painted, how the disc sits."""
        self._practice = practice
        hidden = hidden_parts(practice)
        if self._scales:
            hidden -= {"rotor scale", "plate scale"}
        else:
            hidden |= _RING
        if hidden != self.breaker.scene_of_parts.hidden:
            self.breaker.scene_of_parts.hide(hidden)
            self.breaker.fit()
            self.drive.scene_of_parts.hide(hidden)
            for view in (self.breaker, self.contact, self.drive):
                view.viewport().update()
        self.breaker.set_eye(practice.eye_deg)
        self.eye.show_at(practice.eye_deg, practice.edge_laid)
        self.breaker.show_state(practice.bench)
        self.contact.grade = faces_grade(practice.seat.faces)
        if self.on_engine:
            self.drive.set_marked(practice.seat.marked)
            self.drive.set_aside(drawn_aside_deg(practice))
            self.crank.set_disc_error(practice.disc_error_deg)
            self.crank.set_stop(stop_in_no_1(practice))

    def _by_eye(self) -> ByEye:
        return by_eye(self._practice)

    def _laid(self) -> Laid:
        practice = self._practice
        burns = instruments.light(practice)
        buzzes = practice.exercise.tray.lamp_kind == "buzzer"
        lamp: Burns = "" if burns is None else burning(buzzes, burns)
        said = practice.said
        return Laid(
            lamp,
            practice.bench.lead.jumper,
            self.held_blades,
            said is not None and said.instrument == "blades" and said.words != Feel.NO_GO,
        )


_RING = frozenset({"rotor", "pole shoe"})
"""Parts that nobody sees from the breaker end: in practice the ring round it is not drawn."""
