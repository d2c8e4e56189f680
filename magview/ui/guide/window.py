"""The guide in a window of its own, beside the work."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QApplication, QMainWindow, QWidget

from magview.spec.language import tr
from magview.ui.guide.page import GuidePage
from magview.ui.kit.look import Look


class GuideWindow(QMainWindow):
    """It is closed with the window that opened it."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setAttribute(Qt.WidgetAttribute.WA_QuitOnClose, False)
        self.page = GuidePage(look)
        self.page.left.connect(self.close)
        self.page.said.connect(self._say)
        self.page.windowTitleChanged.connect(self._name)
        self.setCentralWidget(self.page)
        self.statusBar()
        self._name(tr("Guide"))
        self.resize(QSize(1060, 720).boundedTo(QApplication.primaryScreen().availableGeometry().size()))

    def go_to(self, address: str) -> None:
        """Show a page of the guide."""
        self.page.go_to(address)

    def _say(self, sentence: str) -> None:
        self.statusBar().showMessage(sentence)

    def _name(self, title: str) -> None:
        self.setWindowTitle(f"{title} – magview")
