"""What is shipped: found from a clone, read without complaint, fit for use together."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from magview.physics.cam.setting import internal_timing
from magview.spec.base import SpecError
from magview.spec.files import read_engine, read_installation, read_magneto, write_model
from magview.spec.library import (
    DEFAULT_MAGNETO,
    find_engine,
    find_installation,
    find_magneto,
    resources,
    shipped_installation_of,
    shipped_names,
)

FINDERS = {"magnetos": find_magneto, "engines": find_engine, "installations": find_installation}
READERS = {"magnetos": read_magneto, "engines": read_engine, "installations": read_installation}
SHIPPED = [(kind, name) for kind in FINDERS for name in shipped_names(kind)]
ROOT = Path(__file__).parents[2]


def test_clone_has_its_resources_beside_the_package():
    assert resources() == ROOT / "resources"
    for kind in FINDERS:
        assert shipped_names(kind) == sorted(p.stem for p in (ROOT / "resources" / kind).iterdir())
        assert shipped_names(kind)
    assert DEFAULT_MAGNETO in shipped_names("magnetos")


@pytest.mark.process
def test_resources_are_found_from_any_folder(tmp_path):
    code = "from magview.spec.library import *; print(find_magneto(DEFAULT_MAGNETO).name)"
    run = subprocess.run(
        [sys.executable, "-c", code],
        cwd=tmp_path,
        env={"PYTHONPATH": str(ROOT), "PYTHONIOENCODING": "utf-8"},
        capture_output=True,
        text=True,
        check=True,
    )
    assert run.stdout.strip() == find_magneto(DEFAULT_MAGNETO).name


@pytest.mark.parametrize(("kind", "name"), SHIPPED)
def test_shipped_files_read_alike_by_name_and_by_path_and_survive_a_round_trip(tmp_path, kind, name):
    path = resources() / kind / f"{name}.json"
    model = FINDERS[kind](name)
    assert FINDERS[kind](str(path)) == model
    write_model(tmp_path / "again.json", model)
    assert READERS[kind](tmp_path / "again.json") == model
    assert json.loads((tmp_path / "again.json").read_text(encoding="utf-8"))["format"] == model.format


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_shipped_magnetos_say_that_they_are_invented_and_work(name):
    magneto = find_magneto(name)
    assert "Invented" in magneto.notes
    timing = internal_timing(magneto)
    wanted = sum(magneto.gap_limits_mm) / 2
    setting = timing.adjust(wanted)
    assert setting.reachable
    assert timing.readings(setting.backplate_deg, setting.screw_deg).max_gap_mm[0] == pytest.approx(wanted)


@pytest.mark.parametrize("name", shipped_names("installations"))
def test_shipped_installations_fit_together(name):
    """A four-stroke engine fires each cylinder once in two crank turns, a magneto `poles` sparks a rotor turn."""
    whole = find_installation(name)
    sparks_per_crank_turn = whole.magneto.poles * whole.rotor_turns_per_crank_turn
    assert sparks_per_crank_turn == pytest.approx(whole.engine.cylinders / 2)


@pytest.mark.parametrize(
    "name", ["nothing-such", "", ".", "..", "x" * 5000, "a\0b", "a\nb", "a\nb.json", "\ud800", "/", "nothing.json"]
)
@pytest.mark.parametrize("kind", FINDERS)
def test_what_is_not_there_is_refused_in_one_sentence(kind, name):
    with pytest.raises(SpecError) as caught:
        FINDERS[kind](name)
    text = str(caught.value)
    assert text.isprintable() and len(text) <= 600
    if name == "nothing-such":
        assert all(shipped in text for shipped in shipped_names(kind))


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_each_shipped_magneto_has_an_installation_and_its_left_one_where_there_are_two(name):
    found = shipped_installation_of(name)
    assert found is not None
    assert find_installation(found).magneto == find_magneto(name)
    assert find_installation(found).position in ("left", "single")
    assert shipped_installation_of("no-such") is None
