"""Guide: the guide, at the page that was asked for."""

from __future__ import annotations

from PySide6.QtCore import Signal

from magview.ui.guide.page import GuidePage
from magview.ui.kit.place import Page, Place


class GuidePlace(Place):
    """One page, which remembers where it was."""

    left = Signal()

    def build_home(self) -> Page:
        """The guide's first page, or the one asked for."""
        page = GuidePage(self.look)
        page.left.connect(self.left)
        page.go_to("first-minutes")
        return page

    def go_to(self, address: str) -> GuidePage:
        """Show a page of the guide."""
        page = self.home
        assert isinstance(page, GuidePage)
        page.go_to(address)
        self.show_page(page)
        return page
