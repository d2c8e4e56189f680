"""Colours of the roles that scenes are drawn in: the look's own, and what only drawing needs.

One idea has one colour everywhere; see the theme for lift, current, flux, what is planned, and the materials.
"""

from __future__ import annotations

from collections.abc import Mapping

from magview.ui.kit.theme import Theme

_MATERIALS = {
    "north": "north", "south": "south", "fibre": "fibre", "bracket": "bracket", "contact": "contact", "coil": "coil",
    "core": "core", "paint": "paint", "plate": "plate", "drive": "drive-flange", "disc": "disc",
    "hub": "magneto-flange",
}  # fmt: skip
"""Roles that are a material's fill, with the role's name and "_line" for its outline."""

_LIGHT = {
    "rim": "#D3DAE1", "rim_shade": "#B9C3CE", "plate_shade": "#E3D8BA", "steel_high": "#E6EBF0", "steel": "#C4CDD7",
    "steel_low": "#94A1AF", "steel_line": "#303B47", "shoe": "#C9D1DA", "shoe_b": "#AEBAC6", "case": "#DDE2E8",
    "case_line": "#505B67", "bronze": "#D9C489", "bronze_line": "#5A4A16", "light": "#FFFFFF", "shadow": "#000000",
}  # fmt: skip

_DARK = {
    "rim": "#3A444F", "rim_shade": "#2C353E", "plate_shade": "#3D3728", "steel_high": "#5E6975", "steel": "#525E6A",
    "steel_low": "#3B4550", "steel_line": "#E3E9EF", "shoe": "#46515C", "shoe_b": "#5B6773", "case": "#2C343D",
    "case_line": "#B8C3CE", "bronze": "#7E6C38", "bronze_line": "#EBDCA4", "light": "#FFFFFF", "shadow": "#000000",
}  # fmt: skip

_HIGH_CONTRAST = {
    "rim": "#1C1C1C", "rim_shade": "#101010", "plate_shade": "#14120A", "steel_high": "#3A3A3A", "steel": "#2A2A2A",
    "steel_low": "#141414", "steel_line": "#FFFFFF", "shoe": "#202020", "shoe_b": "#303030", "case": "#0A0A0A",
    "case_line": "#FFFFFF", "bronze": "#4A3E08", "bronze_line": "#FFE97A", "light": "#FFFFFF", "shadow": "#000000",
}  # fmt: skip

_OWN = {"light": _LIGHT, "dark": _DARK, "high contrast": _HIGH_CONTRAST}


def scene_colours(theme: Theme) -> Mapping[str, str]:
    """The colours of every role in a look."""
    colours = _OWN[theme.name] | {
        "paper": theme.paper, "panel": theme.base, "ink": theme.text, "second_ink": theme.faint, "hair": theme.hair,
        "good": theme.good, "bad": theme.bad, "planned": theme.hand, "planned_fill": theme.hand_fill,
        "lift": theme.ink("lift"), "lift_fill": theme.materials["lift"][0],
        "opening": theme.ink("current"), "opening_fill": theme.materials["current"][0],
        "flux": theme.ink("flux"),
    }  # fmt: skip
    for role, material in _MATERIALS.items():
        colours[role], colours[f"{role}_line"] = theme.materials[material]
    return colours
