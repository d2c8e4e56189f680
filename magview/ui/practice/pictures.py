"""The four pictures of a room side by side: without numbers while it is worked in, with them afterwards."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSplitter

from magview.drawing.contact_faces import faces_grade
from magview.practice.screen_words import drawn_aside_deg, hidden_parts
from magview.practice.state import Practice
from magview.ui.kit.look import Look
from magview.ui.kit.panes import column
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.contact_view import ContactView
from magview.ui.pictures.crank_view import CrankView
from magview.ui.pictures.drive_view import DriveView
from magview.ui.pictures.picture_view import PictureView


class Pictures(QSplitter):
    """Breaker end over the contacts; on an engine the drive end over the crank beside them."""

    def __init__(self, model: Pictured, practice: Practice, look: Look, *, inside: bool, engine: bool) -> None:
        """`inside`, `engine`: whether true numbers may stand on the magneto's pictures, and on the engine's."""
        super().__init__(Qt.Orientation.Horizontal)
        self.breaker = BreakerView(model, look, numbers=inside)
        self.contact = ContactView(model, self.breaker, look)
        self.drive = DriveView(model, look, numbers=engine)
        self.crank = CrankView(model, look, numbers=engine)
        for view, least in ((self.breaker, 180), (self.contact, 60), (self.drive, 160), (self.crank, 80)):
            view.setMinimumSize(min(least, 160), least)  # there is much beside them, also on a small screen
        self._scales = inside
        self.on_engine = practice.bench.engaged is not None
        left, self._right = column(self.breaker, self.contact), column(self.drive, self.crank)
        for i, part in enumerate((left, self._right)):
            self.addWidget(part)
            self.setStretchFactor(i, (3, 2)[i])
            self.setCollapsible(i, False)
        self._right.setVisible(self.on_engine)
        self.show_practice(practice)

    @property
    def views(self) -> tuple[PictureView, ...]:
        """Those that are there."""
        inside: tuple[PictureView, ...] = (self.breaker, self.contact)
        return (*inside, self.drive, self.crank) if self.on_engine else inside

    def show_practice(self, practice: Practice) -> None:
        """Tell the pictures what the bench's state does not: what lies on, what is painted, how the disc sits."""
        hidden = hidden_parts(practice)
        if self._scales:
            hidden -= {"rotor scale", "plate scale"}
        if hidden != self.breaker.scene_of_parts.hidden:
            self.breaker.scene_of_parts.hide(hidden)
            self.drive.scene_of_parts.hide(hidden)
            for view in (self.breaker, self.contact, self.drive):
                view.viewport().update()
        self.breaker.set_eye(practice.eye_deg)
        if self._scales:  # afterwards the faces are shown as they were, looked at or not
            self.contact.grade = faces_grade(practice.seat.faces)
        if self.on_engine:
            self.drive.set_marked(practice.seat.marked)
            self.drive.set_aside(drawn_aside_deg(practice))
            self.crank.set_disc_error(practice.disc_error_deg)
