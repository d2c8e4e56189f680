"""Files as bad luck makes them: bytes flipped, cut, doubled; values, names and shapes that no program wrote."""

from __future__ import annotations

import copy
import json
import random
from typing import Any

ODD: tuple[Any, ...] = (
    None, True, False, 0, -1, 1e308, -1e308, 5e-324, 2**63, 10**400, float("nan"), float("inf"), "", "x" * 5000,
    "\x00", "\ud800", "'; <script>alert(1)</script>", "2026-02-30", "done", "skipped", [], {}, [[]], [0.0] * 300,
    {"": {}}, [None], {"format": "magview-job/1"}, "=1+1", "../../etc/passwd", "\u202e", 1.5, "1.5",
)  # fmt: skip


def mutant(data: Any, rng: random.Random) -> bytes:
    """A file's bytes from its data, changed in one to four ways."""
    if rng.random() < 0.3:
        data = json.loads(json.dumps(data))
        for _ in range(rng.randrange(1, 4)):
            _nudge(data, rng)
        return json.dumps(data).encode()
    if rng.random() < 0.6:
        data = json.loads(json.dumps(data))
        for _ in range(rng.randrange(1, 4)):
            _change(data, rng)
        raw = json.dumps(data, ensure_ascii=rng.random() < 0.5).encode("utf-8", "surrogatepass")
        return raw if rng.random() < 0.9 else _scratch(raw, rng)
    raw = json.dumps(data, ensure_ascii=False).encode()
    for _ in range(rng.randrange(1, 4)):
        raw = _scratch(raw, rng)
    return raw


def _change(data: Any, rng: random.Random) -> None:
    """Change one value somewhere in the data."""
    here = data
    while True:
        keys = list(here) if isinstance(here, dict) else list(range(len(here)))
        if not keys:
            return
        key = rng.choice(keys)
        inner = here[key]
        if isinstance(inner, dict | list) and inner and rng.random() < 0.85:
            here = inner
            continue
        break
    what = rng.random()
    if what < 0.55:
        here[key] = copy.deepcopy(rng.choice(ODD))
    elif what < 0.65:
        del here[key]
    elif what < 0.75 and isinstance(here, dict):
        here[rng.choice((f"{key}x", "format", "history", str(key).upper()))] = copy.deepcopy(here[key])
    elif what < 0.85 and isinstance(inner, int | float) and not isinstance(inner, bool) and abs(inner) < 1e300:
        here[key] = inner * rng.choice((-1, 0, 1e-9, 1e9, 25.4, 1 + 1e-12))
    elif what < 0.92 and isinstance(here, list):
        here.extend(copy.deepcopy(here[:1] * rng.choice((1, 50, 2000))))
    else:
        deep: Any = copy.deepcopy(rng.choice(ODD))
        for _ in range(rng.choice((3, 80, 3000))):
            deep = [deep]
        here[key] = deep if _depth_fits(deep) else 0


def _nudge(data: Any, rng: random.Random) -> None:
    """Change one number or text as a slip of the pen would: most of these are still files."""
    leaves: list[tuple[Any, Any]] = []
    heap = [data]
    while heap:
        here = heap.pop()
        for key in here if isinstance(here, dict) else range(len(here)):
            if isinstance(here[key], dict | list):
                heap.append(here[key])
            elif key != "format" and isinstance(here[key], int | float | str) and not isinstance(here[key], bool):
                leaves.append((here, key))
    here, key = rng.choice(leaves)
    if isinstance(here[key], str):
        here[key] += rng.choice(("", " ", "é", "<b>", "&", "\u202e", "x" * 60))
    elif isinstance(here[key], int):
        here[key] += rng.choice((-1, 1, 2))
    else:
        here[key] *= rng.choice((-1.0, 0.5, 0.9, 1.1, 2.0, 25.4))


def _depth_fits(value: Any) -> bool:
    try:
        json.dumps(value)
    except RecursionError:
        return False
    return True


def _scratch(raw: bytes, rng: random.Random) -> bytes:
    """Damage the bytes themselves."""
    if not raw:
        return b"\x00"
    at, length = rng.randrange(len(raw)), rng.choice((1, 2, 8, 200, 5000))
    match rng.randrange(7):
        case 0:
            return raw[:at]
        case 1:
            return raw[:at] + raw[at + length :]
        case 2:
            return raw[:at] + raw[at : at + length] * rng.choice((2, 30)) + raw[at + length :]
        case 3:
            return raw[:at] + bytes(rng.randrange(256) for _ in range(length)) + raw[at + length :]
        case 4:
            return raw[:at] + rng.choice((b"[" * 100_000, b'{"a":' * 5000, b"9" * 5000, b"1e999", b"NaN")) + raw[at:]
        case 5:
            return raw[:at] + bytes((raw[at] ^ (1 << rng.randrange(8)),)) + raw[at + 1 :]
        case _:
            return rng.choice((b"\xef\xbb\xbf", b"\xff\xfe", b"\x00")) + raw
