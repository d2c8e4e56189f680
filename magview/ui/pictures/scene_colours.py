"""Colours of the roles that scenes are drawn in, one table for each look of the window."""

from __future__ import annotations

from collections.abc import Mapping

from magview.ui.kit.theme import Theme

_LIGHT = {
    "paper": "#F8F9FB", "panel": "#FFFFFF", "ink": "#17202B", "second_ink": "#4A5766", "hair": "#7C8896",
    "rim": "#D3DAE1", "rim_shade": "#B9C3CE", "plate": "#EFE7D1", "plate_shade": "#E3D8BA", "plate_line": "#8A7A4C",
    "steel_high": "#E6EBF0", "steel": "#C4CDD7", "steel_low": "#94A1AF", "steel_line": "#303B47",
    "fibre": "#B7824B", "fibre_line": "#5B3A17", "bracket": "#D9C489", "bracket_line": "#6A5622",
    "contact": "#F4F1EA", "contact_line": "#3A3226", "north": "#EBA69F", "north_line": "#7A1F17",
    "south": "#A5BEE6", "south_line": "#1F3F78", "shoe": "#C9D1DA", "shoe_b": "#AEBAC6", "case": "#DDE2E8",
    "case_line": "#505B67",
    "drive": "#C6D0DB", "drive_line": "#303B47", "disc": "#EADFC2", "disc_line": "#6A5622", "hub": "#BAD0BC",
    "hub_line": "#2C4A2E", "coil": "#DE9A62", "coil_line": "#5A2C08", "core": "#B4BDC8", "core_line": "#303B47",
    "flux": "#6A3FB0", "paint": "#F2BE22", "paint_line": "#3A2E00", "bronze": "#D9C489", "bronze_line": "#5A4A16",
    "light": "#FFFFFF",
    "lift": "#00695D", "lift_fill": "#86CEC3", "opening": "#A34705", "opening_fill": "#F4BB88",
    "planned": "#1259B5", "planned_fill": "#CFE0F6", "good": "#136B33", "bad": "#AE2A20", "shadow": "#000000",
}  # fmt: skip

_DARK = {
    "paper": "#181D23", "panel": "#20262D", "ink": "#E9EDF2", "second_ink": "#AAB6C2", "hair": "#74808D",
    "rim": "#3A444F", "rim_shade": "#2C353E", "plate": "#4A4331", "plate_shade": "#3D3728", "plate_line": "#B7A56C",
    "steel_high": "#5E6975", "steel": "#525E6A", "steel_low": "#3B4550", "steel_line": "#E3E9EF",
    "fibre": "#8E6234", "fibre_line": "#EBCBA2", "bracket": "#7E6C38", "bracket_line": "#EBDCA4",
    "contact": "#EDE7D8", "contact_line": "#1A1500", "north": "#8C423B", "north_line": "#FFD0CA",
    "south": "#3A568C", "south_line": "#BBD0F5", "shoe": "#46515C", "shoe_b": "#5B6773", "case": "#2C343D",
    "case_line": "#B8C3CE",
    "drive": "#4C5967", "drive_line": "#DCE4EC", "disc": "#554A2E", "disc_line": "#EBDCA4", "hub": "#3A5740",
    "hub_line": "#CBE6CF", "coil": "#7C481F", "coil_line": "#F6CBA4", "core": "#56626F", "core_line": "#E3E9EF",
    "flux": "#C3A6FF", "paint": "#FFD24A", "paint_line": "#1A1500", "bronze": "#7E6C38", "bronze_line": "#EBDCA4",
    "light": "#FFFFFF",
    "lift": "#57D1BF", "lift_fill": "#1F6F65", "opening": "#FFB067", "opening_fill": "#7A4616",
    "planned": "#7DB4FF", "planned_fill": "#1F3A5E", "good": "#7BD88F", "bad": "#FF9D94", "shadow": "#000000",
}  # fmt: skip

_HIGH_CONTRAST = {
    "paper": "#000000", "panel": "#000000", "ink": "#FFFFFF", "second_ink": "#FFFFFF", "hair": "#C8C8C8",
    "rim": "#1C1C1C", "rim_shade": "#101010", "plate": "#1E1B10", "plate_shade": "#14120A", "plate_line": "#FFE9A0",
    "steel_high": "#3A3A3A", "steel": "#2A2A2A", "steel_low": "#141414", "steel_line": "#FFFFFF",
    "fibre": "#4A2E10", "fibre_line": "#FFD8A0", "bracket": "#4A3E08", "bracket_line": "#FFE97A",
    "contact": "#FFFFFF", "contact_line": "#000000", "north": "#5A1410", "north_line": "#FFD8D2",
    "south": "#12306A", "south_line": "#D2E2FF", "shoe": "#202020", "shoe_b": "#303030", "case": "#0A0A0A",
    "case_line": "#FFFFFF",
    "drive": "#1E2630", "drive_line": "#FFFFFF", "disc": "#2E2608", "disc_line": "#FFE97A", "hub": "#10280F",
    "hub_line": "#B6FFC0", "coil": "#4A2608", "coil_line": "#FFCBA0", "core": "#202020", "core_line": "#FFFFFF",
    "flux": "#D9C6FF", "paint": "#FFD24A", "paint_line": "#1A1500", "bronze": "#4A3E08", "bronze_line": "#FFE97A",
    "light": "#FFFFFF",
    "lift": "#6FFFE9", "lift_fill": "#00574D", "opening": "#FFC080", "opening_fill": "#5A2E00",
    "planned": "#9CC8FF", "planned_fill": "#0E2C55", "good": "#90FF9C", "bad": "#FFB0A8", "shadow": "#000000",
}  # fmt: skip

_BY_THEME = {"light": _LIGHT, "dark": _DARK, "high contrast": _HIGH_CONTRAST}


def scene_colours(theme: Theme) -> Mapping[str, str]:
    """The colours of every role in a look."""
    return _BY_THEME[theme.name]
