"""Modules put off at the start load by themselves when something of them is asked for."""

import subprocess
import sys

import pytest

CODE = """
import sys
from magview.ui.kit.start_order import bring_forward
bring_forward()
assert not any(name.startswith("PySide6") for name in sys.modules)
actions = sys.modules["magview.bench.actions"]
assert "TurnRotor" not in object.__getattribute__(actions, "__dict__"), "loaded at the start"

from magview.bench.placing import new_bench
from magview.bench.store import Store
from magview.spec.library import find_magneto
store = Store(new_bench(find_magneto("seven-radial")))
store.send(actions.TurnRotor(5.0))
from magview.bench.actions import TurnRotor
assert isinstance(store.journal[0][0], TurnRotor) and store.state.rotor_deg == 5.0 and store.undo_name
"""


@pytest.mark.process
def test_actions_are_loaded_at_their_first_use():
    done = subprocess.run([sys.executable, "-c", CODE], capture_output=True, text=True, timeout=120, check=False)
    assert done.returncode == 0, done.stderr
