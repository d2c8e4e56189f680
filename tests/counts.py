"""How much a test tries: a sample in the short run, all in the thorough one (`--hypothesis-profile=thorough`)."""

from __future__ import annotations

from collections.abc import Iterable

import pytest
from hypothesis import settings

THOROUGH = settings.get_current_profile_name() != "short"


def examples(thorough: int) -> int:
    """So many of hypothesis's examples in the thorough run; a fifth of them, and five at least, in the short one."""
    return thorough if THOROUGH else max(5, thorough // 5)


def sampled(cases: Iterable[object], count: int) -> list[object]:
    """Cases for `parametrize`: `count` of them, evenly spread, for the short run, the others marked `sweep`."""
    cases = list(cases)
    kept = {round(i * (len(cases) - 1) / max(1, count - 1)) for i in range(count)}
    return [case if i in kept else swept(case) for i, case in enumerate(cases)]


def swept(case: object) -> object:
    """A case of `parametrize` that the short run leaves out."""
    values = case if isinstance(case, tuple) else (case,)
    return pytest.param(*values, marks=pytest.mark.sweep)
