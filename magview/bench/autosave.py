"""The bench kept on disk while it is in use, and found again after a kill (``magview-bench/1``)."""

from __future__ import annotations

import json
import os
from functools import cache
from pathlib import Path
from typing import Any

from pydantic import TypeAdapter, ValidationError

from magview.bench.state import BenchState
from magview.physics.setting import internal_timing
from magview.spec.base import SpecError
from magview.spec.files import read_json, write_text

FORMAT = "magview-bench/1"


@cache
def _states() -> TypeAdapter[BenchState]:
    # Built when a bench is first kept, not while the window waits to be shown.
    return TypeAdapter(BenchState)


class Autosave:
    """One file a running program, named by its process, in a folder shared by all of them."""

    def __init__(self, folder: Path, process: int | None = None) -> None:
        self._folder = folder
        self._path = folder / f"bench-{process or os.getpid()}.json"

    def keep(self, state: BenchState) -> None:
        """Write the state. Raises SpecError where the disk does not take it; the last good file then stands."""
        try:
            self._folder.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            raise SpecError(f"{self._folder.name}: cannot be made: {error.strerror or error}") from error
        write_text(self._path, dump_state(state))

    def forget(self) -> None:
        """The program ends as it should: nothing needs to be found again."""
        self._path.unlink(missing_ok=True)

    def recover(self) -> BenchState | None:
        """The newest bench that a program no longer running left behind; its file is taken away.

        A damaged or strange file is passed over and left where it is.
        """
        files = [p for p in self._folder.glob("bench-*.json") if not _running(_process(p)) and p != self._path]
        for path in sorted(files, key=_age, reverse=True):
            try:
                state = load_state(path)
            except SpecError:
                continue
            path.unlink(missing_ok=True)
            return state
        return None


def dump_state(state: BenchState) -> str:
    """The state as text, to the last bit."""
    data: dict[str, Any] = _states().dump_python(state, mode="json")
    return json.dumps({"format": FORMAT, "state": data}, ensure_ascii=False)


def load_state(path: Path) -> BenchState:
    """Read a state. Raises SpecError for a file that is not one."""
    data = read_json(path)
    if not isinstance(data, dict) or data.get("format") != FORMAT:
        raise SpecError(f'{path.name}: is not a kept bench; its format must be "{FORMAT}"')
    try:
        state = _states().validate_python(data.get("state"))
    except ValidationError as error:
        raise SpecError(f"{path.name}: is damaged: {error.errors()[0]['msg']}") from error
    internal_timing(state.magneto)
    return state


def _process(path: Path) -> int:
    number = path.stem.removeprefix("bench-")
    return int(number) if number.isascii() and number.isdigit() and len(number) < 10 else 0


def _running(process: int) -> bool:
    if process <= 0:
        return False
    if os.name == "nt":  # os.kill would end the process there; take it as gone only when it is this one's
        return process != os.getpid() and _windows_process_exists(process)
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    except OSError:
        return True
    return True


def _windows_process_exists(process: int) -> bool:
    import ctypes

    kernel = ctypes.windll.kernel32  # type: ignore[attr-defined, unused-ignore]
    handle = kernel.OpenProcess(0x1000, False, process)
    if handle:
        kernel.CloseHandle(handle)
    return bool(handle)


def _age(path: Path) -> float:
    try:
        return path.stat().st_mtime
    except OSError:
        return 0.0
