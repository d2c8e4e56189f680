"""The numbers that must be found nowhere before an attempt is handed in."""

from magview.bench.state import crank_deg
from magview.practice import instruments
from magview.practice.state import Practice, true_firing_deg, true_gap_mm, true_readings, view


def secrets(practice: Practice) -> dict[str, float]:
    """The true numbers of a state by name, of both magnetos."""
    found: dict[str, float] = {}
    for side in practice.sides:
        room = view(practice, side)
        bench, now = room.bench, true_readings(room.bench)
        values = {
            "rotor_deg": bench.rotor_deg,
            "backplate_deg": bench.backplate_deg,
            "screw_deg": bench.screw_deg,
            "gap_mm": true_gap_mm(bench),
            "mark_offset_mm": float(now.mark_offset_mm),
            "pip_mm": bench.magneto.condition.pip_height_mm,
            "face_burn_mm": bench.magneto.condition.face_burn_mm,
            "creep_deg": bench.magneto.condition.screw_creep_deg,
        }
        for i, (opens, gap) in enumerate(zip(now.opens_deg.tolist(), now.max_gap_mm.tolist(), strict=True)):
            values |= {f"opens_deg[{i}]": opens, f"max_gap_mm[{i}]": gap}
        if bench.engaged is not None:
            values |= {
                "crank_deg": crank_deg(bench),
                "firing_deg": true_firing_deg(bench),
                "disc_error_deg": room.disc_error_deg,
                "true_disc_deg": instruments.true_disc_deg(room),
                "phase_deg": bench.engaged.mounting.phase_deg,
            }
        found |= {f"{side}.{name}": value for name, value in values.items()}
    return found
