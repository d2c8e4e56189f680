"""A line that offers what was entered before, on this sheet and on earlier ones; nothing is entered by itself."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QEvent, QObject, QStringListModel, Qt
from PySide6.QtWidgets import QCompleter

from magview.job.offered import KIND, offers
from magview.job.sheet import Job
from magview.spec.language import tr
from magview.ui.kit.forms import LineEdit
from magview.ui.kit.settings import keep, kept_texts

_MOST = 8


class Offer(QObject):
    """Down in an empty line, or its first letters, shows what was entered before."""

    def __init__(self, line: LineEdit, field: str, job: Callable[[], Job]) -> None:
        super().__init__(line)
        self._line, self._field, self._job = line, field, job
        self._texts = QStringListModel(self)
        completer = QCompleter(self._texts, self)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.activated.connect(self._taken)
        line.setCompleter(completer)
        line.entered.connect(self._keep)
        # Not at the loss of the keyboard: that comes to a line while it is being destroyed, too.
        line.editingFinished.connect(partial(line.setPlaceholderText, ""))
        line.installEventFilter(self)

    def _known(self) -> list[str]:
        return list(dict.fromkeys((*offers(self._job(), self._field), *kept_texts(self._key))))

    @property
    def _key(self) -> str:
        return f"offered-{KIND[self._field]}"

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The keyboard comes to the line: what is known now is offered."""
        if event.type() == QEvent.Type.FocusIn:
            known = self._known()
            self._texts.setStringList(known)
            self._line.setPlaceholderText(tr("Down: {first}", first=known[0]) if known else "")
        elif (
            event.type() == QEvent.Type.KeyPress
            and event.key() == Qt.Key.Key_Down  # type: ignore[attr-defined]
            and not self._line.text()
            and not self._line.isReadOnly()
        ):
            completer = self._line.completer()
            assert completer is not None
            completer.setCompletionPrefix("")
            completer.complete()
            return True
        return super().eventFilter(watched, event)

    def _taken(self, text: str) -> None:
        self._line.setText(text)
        self._line.setModified(True)
        self._line.finish()

    def _keep(self, text: object) -> None:
        if isinstance(text, str) and text.strip():
            keep(self._key, [text, *(other for other in kept_texts(self._key) if other != text)][:_MOST])
