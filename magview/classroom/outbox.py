"""Files that could not be put into the shared folder yet: kept on the pupil's own machine, and tried again.

An attempt is first kept here, then delivered, then taken away here; a kill at any moment leaves it in one of the two
places, or in both with the same name and text, which counts as delivered.
"""

from __future__ import annotations

import contextlib
import json
from dataclasses import dataclass
from pathlib import Path

from magview.classroom.handed import write_new
from magview.spec.base import SpecError
from magview.spec.files import read_json
from magview.spec.language import tr

FORMAT = "magview-outbox/1"


@dataclass(frozen=True)
class Waiting:
    """One file that waits: where it is kept, where it belongs, under which name, with which text."""

    kept: Path | None
    folder: Path
    name: str
    text: str


@dataclass(frozen=True)
class Delivery:
    """Outcome for a file: its place now, or why it waits."""

    name: str
    folder: Path
    path: Path | None
    why: str = ""

    @property
    def delivered(self) -> bool:
        """Whether it stands in the shared folder."""
        return self.path is not None


class Outbox:
    """A folder of one's own; several programs may share it."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def hand_in(self, folder: Path, name: str, text: str) -> Delivery:
        """Put a file into a folder, or keep it here. Raises SpecError where neither takes it."""
        try:
            kept: Path | None = self._keep(folder, name, text)
        except SpecError as error:
            kept, here = None, str(error)
        sent = self._deliver(Waiting(kept, folder, name, text))
        if kept is None and not sent.delivered:
            raise SpecError(
                tr("{why}; and it cannot be kept on this machine either ({here}): save the attempt by hand",
                   why=sent.why, here=here)
            )  # fmt: skip
        return sent

    def waiting(self) -> list[Waiting]:
        """Files that wait, by name. A damaged file is passed over and left where it is."""
        found = []
        for path in sorted(self.folder.glob("*.json")):
            with contextlib.suppress(SpecError):
                data = read_json(path)
                if isinstance(data, dict) and data.get("format") == FORMAT:
                    folder, text = data.get("folder"), data.get("text")
                    if isinstance(folder, str) and isinstance(text, str):
                        found.append(Waiting(path, Path(folder), path.name, text))
        return found

    def retry(self) -> list[Delivery]:
        """Try to deliver everything that waits."""
        return [self._deliver(w) for w in self.waiting()]

    def send_elsewhere(self, folder: Path) -> list[Delivery]:
        """Deliver everything that waits into another folder than it was meant for."""
        return [self._deliver(Waiting(w.kept, folder, w.name, w.text)) for w in self.waiting()]

    def _keep(self, folder: Path, name: str, text: str) -> Path:
        with contextlib.suppress(OSError):
            self.folder.mkdir(parents=True, exist_ok=True)
        data = {"format": FORMAT, "folder": str(folder.absolute()), "text": text}
        return write_new(self.folder, name, json.dumps(data, ensure_ascii=False) + "\n")

    def _deliver(self, waiting: Waiting) -> Delivery:
        try:
            path = write_new(waiting.folder, waiting.name, waiting.text)
        except SpecError as error:
            return Delivery(waiting.name, waiting.folder, None, str(error))
        if waiting.kept is not None:
            with contextlib.suppress(OSError):
                waiting.kept.unlink(missing_ok=True)
        return Delivery(waiting.name, waiting.folder, path)
