"""Keep what earlier class codes draw from: exercises that were changed since the edition frozen in tests/old.

    python .ci/retire_exercises.py

Run it after an exercise, or a magneto or engine it stands on, was changed, and again after a field was added that
says what silence meant. An old revision gets what it meant then: where pulling the switch lead was taken to ground
the magneto, its file says so, as soon as files can.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from magview.classroom.sets import work_id  # noqa: E402  (needs the path above)
from magview.practice.library import find_exercise, shipped_exercises  # noqa: E402
from magview.spec.magneto import Magneto  # noqa: E402

FROZEN = ROOT / "tests" / "old" / "exercises"
TARGET = ROOT / "resources" / "exercises" / "old" / "1"


def main() -> None:
    """Write the old revision of each exercise that is another now."""
    now = {name: work_id(find_exercise(name)) for name in shipped_exercises()}
    for path in sorted(FROZEN.glob("*.json")):
        name, known_by = path.stem.rsplit(".", 1)
        target = TARGET / path.name
        if now.get(name) == known_by:
            continue
        data = json.loads(path.read_text(encoding="utf-8"))
        magneto = data.get("magneto") or data["installation"]["magneto"]
        if "grounding_tab" in Magneto.model_fields:
            magneto.setdefault("grounding_tab", True)
        TARGET.mkdir(parents=True, exist_ok=True)
        target.write_text(json.dumps(data, ensure_ascii=False, indent=2) + "\n", encoding="utf-8")
        sys.stdout.write(f"{target.relative_to(ROOT)}\n")


if __name__ == "__main__":
    main()
