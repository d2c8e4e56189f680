"""The sheet as it would be printed, page under page."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPixmap, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from magview.job.document import document
from magview.job.history import Drift
from magview.job.sheet import Job
from magview.paper.sizes import PAPERS, PaperSize
from magview.paper.text import plain_text
from magview.spec.base import SpecError
from magview.spec.language import tr, tr_n
from magview.ui.kit.inputs import QuietCombo
from magview.ui.paper.pdf import PrintedPages
from magview.ui.work.model import JobModel
from magview.ui.work.page import Page

_NARROWEST, _WIDEST = 440, 900
"""Of a page on the screen [px]."""


class _Paper(QWidget):
    """One page. Kept as a picture: its words are laid out once for each size."""

    def __init__(self, pages: PrintedPages, number: int, parent: QWidget) -> None:
        super().__init__(parent)
        self._pages, self._number, self._kept = pages, number, QPixmap()
        self.setAccessibleName(tr("Page {number} of {count}", number=number, count=len(pages)))

    def fit(self, width: int) -> None:
        """Take a width; the height follows the paper's."""
        self.setFixedSize(QSize(width, round(width * self._pages.size.height() / self._pages.size.width())))

    def paintEvent(self, event: QPaintEvent) -> None:
        """White paper whatever the window's colours, as it comes out of a printer."""
        ratio = self.devicePixelRatioF()
        wanted = self.size() * ratio
        if self._kept.size() != wanted:
            self._kept = QPixmap(wanted)
            self._kept.fill(QColor("#ffffff"))
            painter = QPainter(self._kept)
            painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
            painter.scale(wanted.width() / self._pages.size.width(), wanted.height() / self._pages.size.height())
            self._pages.paint(painter, self._number)
            painter.end()
            self._kept.setDevicePixelRatio(ratio)
        painter = QPainter(self)
        painter.drawPixmap(0, 0, self._kept)
        painter.setPen(QColor("#888888"))
        painter.drawRect(self.rect().adjusted(0, 0, -1, -1))


class PreviewPage(Page):
    """Pages made when they are looked at, and made anew when the sheet has changed."""

    print_wanted = Signal(str)
    """Print on this paper."""

    def __init__(self, model: JobModel) -> None:
        super().__init__(tr("As printed"))
        self.model = model
        self._stale = True
        self.drift: Drift | None = None
        """Earlier sheets to be printed, too."""
        row = QHBoxLayout()
        self.paper = QuietCombo()
        for name, words in zip(PAPERS, ("A4", tr("Letter")), strict=True):
            self.paper.addItem(words, name)
        self.paper.currentIndexChanged.connect(self.show_pages)
        label = QLabel(tr("Paper"))
        label.setBuddy(self.paper)
        self.print_button = QPushButton(tr("Print to PDF…"))
        self.print_button.setAutoDefault(False)
        self.print_button.clicked.connect(self._print)
        self.count = QLabel()
        for widget in (label, self.paper, self.print_button, self.count):
            row.addWidget(widget)
        row.addStretch(1)
        self.column.addLayout(row)
        self._place = QVBoxLayout()
        self.column.addLayout(self._place)
        self.column.addStretch(1)
        self.sheets: list[_Paper] = []
        model.changed.connect(self._changed)

    @property
    def chosen_paper(self) -> PaperSize:
        """Size of the paper to print on."""
        return PAPERS[self.paper.currentIndex()]

    def _print(self) -> None:
        self.print_wanted.emit(self.chosen_paper)

    def _changed(self, job: Job, old: Job) -> None:
        if self.isVisible():
            self.show_pages()
        else:
            self._stale = True

    def showEvent(self, event: QShowEvent) -> None:
        """Seen: made, if the sheet is another one now."""
        super().showEvent(event)
        if self._stale:
            self.show_pages()

    def show_drift(self, drift: Drift | None) -> None:
        """Earlier sheets to be shown, too."""
        self.drift, self._stale = drift, True

    def show_pages(self) -> None:
        """Lay the sheet out anew."""
        self._stale = False
        for sheet in self.sheets:
            self._place.removeWidget(sheet)
            sheet.hide()
            sheet.deleteLater()
        self.sheets = []
        printed = document(self.model.job, self.chosen_paper, self.drift, self.model.store.path.parent)
        try:
            pages = PrintedPages(printed)
        except SpecError as error:
            self.count.setText(str(error))
            return
        self.count.setText(tr_n("{count} page", "{count} pages", count=len(pages)))
        for number in range(1, len(pages) + 1):
            sheet = _Paper(pages, number, self.inner)
            sheet.fit(self._width())
            self._place.addWidget(sheet, 0, Qt.AlignmentFlag.AlignHCenter)
            sheet.show()
            self.sheets.append(sheet)
        self.inner.setAccessibleDescription(plain_text(printed))

    def _width(self) -> int:
        # The scroll bar has its room from the start: it comes with the pages, and they must not be too wide then.
        room = self.width() - self.verticalScrollBar().sizeHint().width() - 30
        return max(_NARROWEST, min(_WIDEST, room))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Pages as wide as there is room for."""
        super().resizeEvent(event)
        for sheet in self.sheets:
            sheet.fit(self._width())
