"""Work kept on disk while it is done, and found again after a kill; the bench as ``magview-bench/1``."""

from __future__ import annotations

import contextlib
import json
import math
import uuid
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any, Generic, TypeVar

from pydantic import TypeAdapter, ValidationError

from magview.bench.state import BenchState, By
from magview.physics.cam.setting import internal_timing
from magview.spec.base import SpecError
from magview.spec.files import read_json, write_text
from magview.spec.language import tr
from magview.spec.lock import Held, Lock

FORMAT = "magview-bench/1"

T = TypeVar("T")


@cache
def _states() -> TypeAdapter[BenchState]:
    # Built when a bench is first kept, not while the window waits to be shown.
    return TypeAdapter(BenchState)


class Keeper(Generic[T]):
    """One file a running piece of work, in a folder shared by all of them.

    A lock beside it, held as long as the program lives, tells the files of the living from those of the dead;
    a process number would not, as numbers come again.
    """

    def __init__(self, folder: Path, kind: str, dump: Callable[[T], str], load: Callable[[Path], T]) -> None:
        """`kind`: what the file's name begins with. `load` raises SpecError for a file that is damaged."""
        self.folder = folder
        self._kind, self._dump, self._load = kind, dump, load
        self._path = folder / f"{kind}-{uuid.uuid4().hex}.json"
        self._lock: Lock | None = None

    def keep(self, work: T) -> None:
        """Write it. Raises SpecError where the disk does not take it; the last good file then stands."""
        try:
            self.folder.mkdir(parents=True, exist_ok=True)
            if self._lock is None:
                self._lock = Lock(_lock_of(self._path))
        except OSError as error:
            raise SpecError(
                tr("{name}: cannot be used: {reason}", name=self.folder.name, reason=error.strerror or error)
            ) from error
        write_text(self._path, self._dump(work))

    def forget(self) -> None:
        """The program ends as it should: nothing needs to be found again."""
        with contextlib.suppress(OSError):  # the folder may be gone by now, or locked; the end comes all the same
            self._path.unlink(missing_ok=True)
        if self._lock is not None:
            self._lock.release()
            self._lock = None

    def leave(self) -> None:
        """The program ends, and what was last kept is to be found again."""
        if self._lock is not None:
            self._lock.let_go()
            self._lock = None

    def recover(self) -> T | None:
        """The newest work that a program no longer running left behind, kept from now on as this one's own.

        A damaged or strange file is passed over and left where it is, and so is one
        that cannot be made this one's own.
        """
        others = [p for p in self.folder.glob(f"{self._kind}-*.json") if p != self._path]
        for path in sorted(others, key=_age, reverse=True):
            try:
                lock = Lock(_lock_of(path))
            except (Held, OSError):
                continue  # its program is alive, or nothing can be written here
            if not lock.held:
                continue  # a drive without locks does not tell
            try:
                work = self._load(path)
                self.keep(work)  # before the old file goes: a second kill must not lose it
                path.unlink(missing_ok=True)
                lock.release()
            except (SpecError, OSError):
                continue
            finally:
                lock.let_go()
            return work
        return None


class Autosave(Keeper[BenchState]):
    """The bench, kept."""

    def __init__(self, folder: Path) -> None:
        super().__init__(folder, "bench", dump_state, load_state)


def _lock_of(path: Path) -> Path:
    return path.with_suffix(".lock")


def dump_state(state: BenchState) -> str:
    """The state as text, to the last bit."""
    data: dict[str, Any] = _states().dump_python(state, mode="json")
    del data["touched"]  # no part of the bench itself; what differs from a new one tells it again
    for trial in data["trials"]:  # JSON knows no infinity: no blade was too thick
        if trial["gap_high_mm"] == math.inf:
            trial["gap_high_mm"] = None
    return json.dumps({"format": FORMAT, "state": data}, ensure_ascii=False)


def load_state(path: Path) -> BenchState:
    """Read a state. Raises SpecError for a file that is not one."""
    data = read_json(path)
    if not isinstance(data, dict) or data.get("format") != FORMAT:
        raise SpecError(
            tr('{name}: is not a kept bench; its format must be "{wanted}"', name=path.name, wanted=FORMAT)
        )
    try:
        state = _states().validate_python(_completed(data.get("state")))
    except ValidationError as error:
        raise SpecError(
            tr("{name}: is damaged: {reason}", name=path.name, reason=error.errors()[0]["msg"])
        ) from error

    if len(state.inspected_at) != len(state.inspections):
        raise SpecError(tr("{name}: is damaged: an inspection lacks the setting it was noted at", name=path.name))

    def not_finite(_: str) -> None:
        raise SpecError(tr("{name}: is damaged: an angle is not a finite number", name=path.name))

    json.loads(dump_state(state), parse_constant=not_finite)
    internal_timing(state.magneto)
    return replace(state, touched=_seen(state))


def _seen(state: BenchState) -> frozenset[By]:
    """The parts that hands must have set: those that differ from a new bench."""
    begun = state.backplate_deg == state.magneto.designed_setting.backplate_deg and state.screw_deg == 0.0
    hands: dict[By, bool] = {
        "setting": not begun or state.lock_tight or state.clamps_tight,
        "lead": state.lead.switch_on or not state.lead.plug_in,
    }
    return frozenset(hand for hand, seen in hands.items() if seen)


def _completed(data: Any) -> Any:
    """With open ends of trials' gaps, which JSON does not know, and where an older bench's inspections were noted."""
    if not isinstance(data, dict):
        return data
    data = dict(data)
    # The model refuses anything that is no list at all.
    if isinstance(trials := data.get("trials"), tuple):
        data["trials"] = tuple(
            {**t, "gap_high_mm": math.inf} if isinstance(t, dict) and t.get("gap_high_mm", 0) is None else t
            for t in trials
        )
    if isinstance(seen := data.get("inspections"), tuple) and "inspected_at" not in data:
        present = data.get("backplate_deg", 0.0), data.get("screw_deg", 0.0)
        data["inspected_at"] = (present,) * len(seen)
    return data


def _age(path: Path) -> float:
    try:
        return path.stat().st_mtime
    except OSError:
        return 0.0
