"""Primary current and energy at opening against a circuit simulator (ngspice), solved in time step by step."""

from __future__ import annotations

import math
import re
import shutil
import subprocess

import numpy as np
import pytest

from magview.physics.cam.setting import internal_timing
from magview.physics.electric.coil import opening_energy_j, primary_current_a
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Electrical
from tests.counts import sampled
from tests.second_opinions.versions import told

NGSPICE = shutil.which("ngspice")
pytestmark = [pytest.mark.reference, pytest.mark.skipif(NGSPICE is None, reason="ngspice is not on this machine")]


@pytest.fixture(autouse=True, scope="module")
def _version():
    if NGSPICE is not None:
        first = subprocess.run([NGSPICE, "--version"], capture_output=True, text=True, check=False).stdout
        told("ngspice", " ".join(re.findall(r"ngspice-\S+", first)))


def simulated_a(coil: Electrical, poles: int, rpm: float, closes_deg: float, opens_deg: float, folder) -> float:
    """Current at opening [A]: the e.m.f. of the turning magnet on resistance and inductance in series."""
    omega = poles / 2 * rpm * 2 * math.pi / 60  # de/dt
    e0 = math.radians(poles / 2 * closes_deg)
    end = math.radians(opens_deg - closes_deg) * poles / 2 / omega
    peak = coil.coil_turns * coil.peak_flux_wb * omega
    angle = f"({omega!r}*time+({e0!r}))"
    force = f"{peak!r}*(cos({angle})+({3 * coil.third_harmonic!r})*cos(3*{angle}))"
    deck = f"""primary with the contacts closed
Bmagnet 1 0 V={force}
Rcoil 1 2 {coil.resistance_ohm!r}
Lcoil 2 0 {coil.inductance_h!r} IC=0
.options reltol=1e-7
.tran {end / 4000!r} {end!r} 0 {end / 4000!r} UIC
.meas tran at_opening FIND i(Lcoil) AT={end * (1 - 1e-12)!r}
.end
"""
    path = folder / "primary.cir"
    path.write_text(deck, encoding="ascii")
    ran = subprocess.run([str(NGSPICE), "-b", str(path)], capture_output=True, text=True, check=True, timeout=60)
    (found,) = re.findall(r"at_opening\s*=\s*(\S+)", ran.stdout)
    return float(found)


@pytest.mark.parametrize("rpm", [60.0, 300.0, 2000.0])
@pytest.mark.parametrize("name", [n for n in shipped_names("magnetos") if find_magneto(n).electrical])
def test_shipped_coils(name: str, rpm: float, tmp_path) -> None:
    magneto = find_magneto(name)
    coil = magneto.electrical
    assert coil is not None
    read = internal_timing(magneto).readings(magneto.designed_setting.backplate_deg, 0.0)
    opens, closed = float(read.opens_deg[0]), float(read.dwell_deg[0]) / magneto.cam.turns_per_rotor_turn
    theirs = simulated_a(coil, magneto.poles, rpm, opens - closed, opens, tmp_path)
    ours = float(primary_current_a(coil, magneto.poles, rpm, opens - closed, opens))
    assert ours == pytest.approx(theirs, rel=2e-4, abs=1e-6)
    energy = float(opening_energy_j(coil, magneto.poles, rpm, opens, closed))
    assert energy == pytest.approx(coil.inductance_h * theirs**2 / 2, rel=5e-4, abs=1e-9)


@pytest.mark.parametrize("seed", sampled(range(50), 5))
def test_random_coils(seed: int, tmp_path) -> None:
    rng = np.random.default_rng(seed)
    coil = Electrical(
        coil_turns=int(rng.integers(80, 300)), inductance_h=float(rng.uniform(2e-3, 3e-2)),
        resistance_ohm=float(rng.uniform(0.1, 3.0)), peak_flux_wb=float(rng.uniform(1e-4, 1e-3)),
        third_harmonic=float(rng.uniform(-0.1, 0.1)),
    )  # fmt: skip
    poles, rpm = int(rng.choice([2, 4, 6])), float(np.exp(rng.uniform(np.log(20), np.log(4000))))
    closes = float(rng.uniform(-180, 180))
    opens = closes + float(rng.uniform(5, 100))
    theirs = simulated_a(coil, poles, rpm, closes, opens, tmp_path)
    ours = float(primary_current_a(coil, poles, rpm, closes, opens))
    scale = coil.coil_turns * coil.peak_flux_wb / coil.inductance_h
    assert ours == pytest.approx(theirs, rel=2e-4, abs=2e-5 * scale)
