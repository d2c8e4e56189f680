"""The store as a Qt object: one `changed` signal, and refusals as sentences."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from magview.bench.actions import Action
from magview.bench.state import BenchState
from magview.bench.store import Store
from magview.spec.base import SpecError


class BenchModel(QObject):
    """Owns the present state; views read `state`, send actions, and repaint on `changed(new, old)`."""

    changed = Signal(object, object)
    refused = Signal(str)

    def __init__(self, state: BenchState, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._store = Store(state)
        self._store.subscribe(self._tell)

    @property
    def state(self) -> BenchState:
        """The present state."""
        return self._store.state

    def send(self, action: Action) -> bool:
        """Take an action; False, with `refused` emitted, where it cannot be taken."""
        try:
            self._store.send(action)
        except SpecError as error:
            self.refused.emit(str(error))
            return False
        return True

    def _tell(self, new: BenchState, old: BenchState) -> None:
        self.changed.emit(new, old)
