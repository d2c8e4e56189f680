"""The bench as text, ``magview-bench/1``: written and read to the last bit."""

from __future__ import annotations

import json
import math
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

from pydantic import TypeAdapter, ValidationError

from magview.bench.state import BenchState, By
from magview.physics.cam.setting import internal_timing
from magview.spec.base import SpecError
from magview.spec.files import read_json
from magview.spec.language import tr

FORMAT = "magview-bench/1"


@cache
def _states() -> TypeAdapter[BenchState]:
    # Built when a bench is first kept, not while the window waits to be shown.
    return TypeAdapter(BenchState)


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
