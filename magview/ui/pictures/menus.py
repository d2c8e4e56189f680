"""Entries of menus for what holds pictures."""

from __future__ import annotations

from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QMenu

from magview.spec.language import tr
from magview.ui.kit.menu_maker import MenuMaker
from magview.ui.pictures.picture_view import PictureView


class PictureMenuMaker(MenuMaker):
    """Builds entries for a window with pictures."""

    def zooming(self, menu: QMenu) -> None:
        """Entries that zoom the picture in hand."""
        keys = QKeySequence.StandardKey
        self.act(menu, tr("Zoom &in"), self._zoom_in, keys.ZoomIn)
        self.act(menu, tr("Zoom &out"), self._zoom_out, keys.ZoomOut)
        self.act(menu, tr("&Whole picture"), self._zoom_whole, QKeySequence("Ctrl+0"))

    def zoomed(self) -> PictureView:
        """The picture in hand."""
        raise NotImplementedError

    def _zoom_in(self) -> None:
        self.zoomed().zoom_by(1.25)

    def _zoom_out(self) -> None:
        self.zoomed().zoom_by(0.8)

    def _zoom_whole(self) -> None:
        self.zoomed().whole()
