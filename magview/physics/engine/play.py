"""Play between crank and rotor, with friction: what stays where it is until something pushes it.

From the crank the drive train's own play comes first, then the coupling's. Friction holds the drive flange where it
was left, so that a crank turned back crosses the train's play with the flange at rest, then the coupling's with the
rotor at rest, and only then takes the rotor along. Led on with rotation, it crosses both again in this order. The
magnet can move the rotor through the coupling's play alone, if it pulls harder than the rotor's friction holds
(`magnet.rest_deg`); the train it never moves. Loading the train against rotation takes out both (TM 1-1500-204-23-1,
General Aircraft Maintenance Manual, power plant; from memory).
"""

from __future__ import annotations

from dataclasses import dataclass

from magview.physics.engine.coupling import rotor_ahead_deg


@dataclass(frozen=True)
class Play:
    """Lead of each part over the one that drives it [rotor deg], 0 to its whole play."""

    flange_ahead_deg: float = 0.0
    """The drive flange ahead of the crank, within the drive train's play."""
    rotor_ahead_deg: float = 0.0
    """The rotor ahead of the drive flange, within the coupling's."""

    @property
    def deg(self) -> float:
        """The rotor ahead of where the crank, leading it with rotation, would have it [rotor deg]."""
        return self.flange_ahead_deg + self.rotor_ahead_deg

    def turned(self, step_deg: float, train_deg: float, coupling_deg: float) -> Play:
        """After a step of the crank.

        Parameters
        ----------
        step_deg : the crank's step, as rotor degrees by the gears [rotor deg], positive with rotation.
        train_deg, coupling_deg : whole play of drive train and coupling [rotor deg], ≥ 0.
        """
        flange = rotor_ahead_deg(self.flange_ahead_deg, step_deg, train_deg)
        # Angle that the flange itself was moved by: the crank's step less the play it crossed.
        moved = step_deg + (flange - self.flange_ahead_deg)
        return Play(flange, rotor_ahead_deg(self.rotor_ahead_deg, moved, coupling_deg))
