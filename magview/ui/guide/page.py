"""The guide: contents and search at the left, the page at the right."""

from __future__ import annotations

from functools import partial
from html import escape
from typing import Any

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, QUrl, Signal
from PySide6.QtGui import QAction, QColor, QKeySequence, QPalette
from PySide6.QtWidgets import (
    QApplication,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QSplitter,
    QStackedWidget,
    QToolBar,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from magview.guide.pages import chapters, pages
from magview.guide.search import Hit, Index, guide_index
from magview.spec.language import tr, tr_n
from magview.ui.guide.find import FindBar
from magview.ui.guide.page_view import PageView
from magview.ui.guide.results import RichItems
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page
from magview.ui.kit.theme import LIGHT, THEMES, Theme

_ADDRESS = Qt.ItemDataRole.UserRole
_ZOOMS = (50, 67, 80, 100, 125, 150, 175, 200, 250, 300)
_SEARCH_MS = 120


class GuidePage(Page):
    """Contents, search, history, find in page, zoom. It follows colours and type of the application."""

    left = Signal()
    """Back to what was in front before."""

    def __init__(self, look: Look) -> None:
        self.address = ""
        """Address shown: ``page`` or ``page#anchor``."""
        super().__init__(look)
        self.setWindowTitle(tr("Guide"))
        self._past: list[tuple[str, int]] = []
        self._future: list[tuple[str, int]] = []
        self._index: Index | None = None
        self._coloured: Theme | None = None
        self._search_soon = QTimer(self)
        self._search_soon.setSingleShot(True)
        self._search_soon.setInterval(_SEARCH_MS)
        self._search_soon.timeout.connect(self.search_now)
        self._build_left()
        self._build_page()
        self._build_bar()
        split = QSplitter(Qt.Orientation.Horizontal)
        split.addWidget(self._left)
        split.addWidget(self._right)
        split.setStretchFactor(0, 0)
        split.setStretchFactor(1, 1)
        split.setChildrenCollapsible(False)
        wide = 44 * self.fontMetrics().averageCharWidth()
        split.setSizes([wide, 10_000])
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.bar)
        column.addWidget(split, 1)
        self.fill(whole)
        self._show_history()
        self.search.setFocus()

    # -------------------------------------------------------------- building

    def _build_left(self) -> None:
        self.search = QLineEdit()
        self.search.setPlaceholderText(tr("Search the guide"))
        self.search.setAccessibleName(tr("Search the guide"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self._search_soon.start)
        self.search.returnPressed.connect(self._open_first)
        self.search.installEventFilter(self)
        self.contents = QTreeWidget()
        self.contents.setHeaderHidden(True)
        self.contents.setAccessibleName(tr("Contents of the guide"))
        for chapter in chapters():
            top = QTreeWidgetItem([chapter.title])
            top.setFlags(Qt.ItemFlag.ItemIsEnabled)
            self.contents.addTopLevelItem(top)
            top.setExpanded(True)
            for page in chapter.pages:
                item = QTreeWidgetItem(top, [page.title])
                item.setData(0, _ADDRESS, page.name)
                item.setToolTip(0, page.title)
                for section in page.sections[1:]:
                    inner = QTreeWidgetItem(item, [section.title])
                    inner.setData(0, _ADDRESS, section.address)
                    inner.setToolTip(0, section.title)
        self.contents.itemClicked.connect(self._open_item)
        self.contents.itemActivated.connect(self._open_item)
        self.results = QListWidget()
        self.results.setAccessibleName(tr("What was found"))
        self.results.setItemDelegate(RichItems(self.results))
        self.results.setResizeMode(QListWidget.ResizeMode.Adjust)
        self.results.setVerticalScrollMode(QListWidget.ScrollMode.ScrollPerPixel)
        self.results.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.results.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)  # so that widths stay
        self.results.itemClicked.connect(self._open_result)
        self.results.itemActivated.connect(self._open_result)
        self.lists = QStackedWidget()
        self.lists.addWidget(self.contents)
        self.lists.addWidget(self.results)
        self._left = QWidget()
        column = QVBoxLayout(self._left)
        column.setContentsMargins(6, 6, 0, 6)
        column.addWidget(self.search)
        column.addWidget(self.lists, 1)

    def _build_page(self) -> None:
        self.page = PageView()
        self.page.anchorClicked.connect(self._follow)
        self.find_bar = FindBar(self.page)
        self.find_bar.hide()
        self._right = QWidget()
        column = QVBoxLayout(self._right)
        column.setContentsMargins(0, 6, 6, 6)
        column.addWidget(self.page, 1)
        column.addWidget(self.find_bar)

    def _build_bar(self) -> None:
        keys = QKeySequence.StandardKey
        bar = self.bar = QToolBar(tr("Guide"))
        bar.setMovable(False)
        bar.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextOnly)

        def act(text: str, slot: Any, *shortcuts: Any, shown: bool = True) -> QAction:
            action = QAction(text, self)
            # The platform's own key may be the same: twice the same key would be none.
            action.setShortcuts(list({QKeySequence(s).toString(): QKeySequence(s) for s in shortcuts}.values()))
            action.triggered.connect(slot)
            first = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
            action.setToolTip(f"{text} ({first})" if first else text)
            self.addAction(action)
            if shown:
                bar.addAction(action)
            return action

        self.back_action = act(tr("◀ Back"), self.back, "Alt+Left", keys.Back)
        self.forward_action = act(tr("Forward ▶"), self.forward, "Alt+Right", keys.Forward)
        act(tr("Contents"), self.show_contents, "Ctrl+T")
        bar.addSeparator()
        act(tr("Search"), self.begin_search, "Ctrl+K")
        act(tr("Find in page"), self.find_bar.begin, keys.Find)
        bar.addSeparator()
        act(tr("Smaller"), partial(self.zoom_by, -1), keys.ZoomOut)
        act(tr("Larger"), partial(self.zoom_by, 1), keys.ZoomIn, "Ctrl+=")
        act(tr("Usual size"), partial(self.set_zoom, 100), "Ctrl+0")
        act(tr("Find next"), self.find_bar.find_next, "F3", shown=False)
        act(tr("Find previous"), self.find_bar.find_previous, "Shift+F3", shown=False)
        act(tr("End searching, or leave the guide"), self.escape, "Esc", shown=False)
        act(tr("Leave the guide"), self.left.emit, keys.Close, shown=False)

    # -------------------------------------------------------------- going about

    def go_to(self, address: str, remember: bool = True) -> None:
        """Show a page, or a section of it; one that is not there shows the first page."""
        name, _, anchor = address.partition("#")
        page = pages().get(name) or next(iter(pages().values()))
        if remember and self.address and self.address != address:
            self._past.append((self.address, self.page.verticalScrollBar().value()))
            self._future.clear()
        fresh = page.name != self.address.partition("#")[0]
        self.address = f"{page.name}#{anchor}" if anchor and page.name == name else page.name
        if fresh:
            self.page.show_page(page, self._style())
            self.find_bar.says.clear()
        self.page.go_to(anchor)
        self.setWindowTitle(tr("{page} – guide", page=page.title))
        self._show_history()
        self._mark_contents()

    def back(self) -> None:
        """To where one was before."""
        self._step(self._past, self._future)

    def forward(self) -> None:
        """To where one was before going back."""
        self._step(self._future, self._past)

    def _step(self, taken: list[tuple[str, int]], given: list[tuple[str, int]]) -> None:
        if not taken:
            return
        given.append((self.address, self.page.verticalScrollBar().value()))
        address, scrolled = taken.pop()
        self.go_to(address, remember=False)
        self.page.scroll_to(scrolled)

    def _show_history(self) -> None:
        self.back_action.setEnabled(bool(self._past))
        self.forward_action.setEnabled(bool(self._future))

    def _follow(self, url: QUrl) -> None:
        address = url.toString()
        if address.partition("#")[0] in pages():
            self.go_to(address)

    def _open_item(self, item: QTreeWidgetItem) -> None:
        address = item.data(0, _ADDRESS)
        if address:
            self.go_to(address)

    def _open_result(self, item: QListWidgetItem) -> None:
        if item.data(_ADDRESS):
            self.go_to(item.data(_ADDRESS))
            self.mark_words()

    def _mark_contents(self) -> None:
        """The contents stand at what is shown, its page unfolded."""
        name = self.address.partition("#")[0]
        for top in _children(self.contents.invisibleRootItem()):
            for item in _children(top):
                inner = _children(item)
                at = next((i for i in (item, *inner) if i.data(0, _ADDRESS) == self.address), None)
                if at is not None:
                    item.setExpanded(True)
                    self.contents.setCurrentItem(at)
                elif item.data(0, _ADDRESS) != name:
                    item.setExpanded(False)

    def show_contents(self) -> None:
        """The contents in place of what was found, with the keyboard."""
        self.search.clear()
        self.search_now()
        self.contents.setFocus()

    # -------------------------------------------------------------- searching

    def begin_search(self) -> None:
        """To the search field."""
        self.search.setFocus()
        self.search.selectAll()

    def search_now(self) -> None:
        """Find what is typed; without words the contents come back."""
        self._search_soon.stop()
        query = self.search.text().strip()
        self.lists.setCurrentWidget(self.results if query else self.contents)
        self.results.clear()
        if not query:
            self.say("")
            return
        if self._index is None:
            self._index = guide_index()
        hits = self._index.search(query)
        for hit in hits:
            self._add_result(hit)
        if hits:
            self.results.setCurrentRow(0)
            self.say(tr_n("{count} section found.", "{count} sections found.", count=len(hits)))
        else:
            advice = tr("Nothing found. Try fewer words, or the beginning of one.")
            if not self._index.ranked:
                advice += " " + tr("Words are found only as typed: this Python's SQLite has no FTS5.")
            item = QListWidgetItem(escape(advice))
            item.setFlags(Qt.ItemFlag.NoItemFlags)
            self.results.addItem(item)
            self.say(tr("Nothing found."))

    def _add_result(self, hit: Hit) -> None:
        section = hit.section
        item = QListWidgetItem(_result_html(hit))
        item.setData(_ADDRESS, section.address)
        item.setData(Qt.ItemDataRole.AccessibleTextRole, f"{section.page_title}, {section.title}: {hit.excerpt}")
        self.results.addItem(item)

    def _open_first(self) -> None:
        self.search_now()
        item = self.results.currentItem()
        if item is not None:
            self._open_result(item)

    def mark_words(self) -> None:
        """Show where, on this page, the words that were searched for stand."""
        words = self.search.text().split()
        cursor = self.page.textCursor()
        cursor.setPosition(self.page.cursorForPosition(self.page.viewport().rect().topLeft()).position())
        for word in words:
            found = self.page.document().find(word, cursor)
            if not found.isNull():
                at = self.page.verticalScrollBar().value()
                self.page.setTextCursor(found)
                if not self.page.viewport().rect().contains(self.page.cursorRect(found)):
                    self.page.scroll_to(at)
                return

    def escape(self) -> None:
        """End finding, then searching, then leave."""
        if self.find_bar.isVisible():
            self.find_bar.end()
        elif self.search.text():
            self.show_contents()
        else:
            self.left.emit()

    # -------------------------------------------------------------- looks

    def zoom_by(self, steps: int) -> None:
        """A size larger or smaller."""
        at = min(range(len(_ZOOMS)), key=lambda i: abs(_ZOOMS[i] - self.page.zoom))
        self.set_zoom(_ZOOMS[min(max(at + steps, 0), len(_ZOOMS) - 1)])

    def set_zoom(self, percent: int) -> None:
        """Show the page at a share of the application's type [%]."""
        self.page.zoom = percent
        font = QApplication.font()
        font.setPointSizeF(font.pointSizeF() * percent / 100.0)
        self.page.setFont(font)
        self.page.fit_lines()
        self.page.fit_pictures()
        self.say(tr("{percent} %", percent=percent))

    def _theme(self) -> Theme:
        ground = QApplication.palette().color(QPalette.ColorRole.Window)
        return next((t for t in THEMES.values() if QColor(t.window) == ground), LIGHT)

    def _style(self) -> str:
        theme = self._coloured = self._theme()
        return (
            f"body {{ color: {theme.text}; }} a {{ color: {theme.hand}; }} "
            f"table {{ border-collapse: collapse; border: 1px solid {theme.faint}; margin-top: 4px; "
            f"margin-bottom: 0px; }} th, td {{ padding: 4px; }} th {{ background-color: {theme.button}; }} "
            f"table.caution {{ border: 2px solid {theme.bad}; }} "
            f"table.formula {{ border: none; }} table.formula td {{ background-color: {theme.button}; }} "
            f'code, pre {{ font-family: "DejaVu Sans Mono", monospace; background-color: {theme.button}; '
            f"white-space: pre-wrap; }}"
        )

    def changeEvent(self, event: QEvent) -> None:
        """Other colours, or type of another size."""
        super().changeEvent(event)
        if not self.address:
            return
        kinds = QEvent.Type
        if event.type() in (kinds.PaletteChange, kinds.ApplicationPaletteChange) and self._coloured != self._theme():
            at = self.page.verticalScrollBar().value()
            self.page.show_page(pages()[self.address.partition("#")[0]], self._style())
            self.page.scroll_to(at)
            self.search_now()
        elif event.type() == kinds.ApplicationFontChange:
            self.set_zoom(self.page.zoom)
            self.search_now()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """From the search field down into what was found."""
        kinds = QEvent.Type
        if watched is self.search and event.type() == kinds.KeyPress and event.key() == Qt.Key.Key_Down:  # type: ignore[attr-defined]
            (self.results if self.results.isVisible() else self.contents).setFocus()
            return True
        return super().eventFilter(watched, event)


def _children(item: QTreeWidgetItem) -> list[QTreeWidgetItem]:
    return [child for i in range(item.childCount()) if (child := item.child(i)) is not None]


def _result_html(hit: Hit) -> str:
    section, out, at = hit.section, "", 0
    for start, end in hit.marks:
        out += f"{escape(hit.excerpt[at:start])}<b>{escape(hit.excerpt[start:end])}</b>"
        at = end
    out += escape(hit.excerpt[at:])
    inner = "" if section.title == section.page_title else f"<br/>{escape(section.title)}"
    return f"<b>{escape(section.page_title)}</b>{inner}{'<br/>' if out else ''}{out}"
