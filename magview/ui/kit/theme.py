"""Colours: one theme object for widgets and drawing. Meaning never rests on colour alone."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

PATTERNS = {
    "north": (45.0,),
    "south": (-45.0,),
    "shoe-b": (90.0,),
    "fibre": (45.0, -45.0),
    "magneto-flange": (45.0,),
}
"""Hatchings, by the bearings of their lines [deg]: they tell a material from its neighbours without colour."""


@dataclass(frozen=True)
class Theme:
    """Colours by role: window parts, and (fill, line) of each material in the drawing."""

    name: str
    window: str
    base: str
    text: str
    button: str
    highlight: str
    highlight_text: str
    paper: str
    line: str
    faint: str
    good: str
    bad: str
    hand: str
    """Outline of the part in hand."""
    materials: dict[str, tuple[str, str]]

    def hatching(self, name: str) -> QColor:
        """Colour of a material's hatching."""
        colour = self.material(name)[1]
        colour.setAlpha(110)
        return colour

    def material(self, name: str) -> tuple[QColor, QColor]:
        """Fill and line colour of a material."""
        fill, line = self.materials.get(name, (self.base, self.line))
        return QColor(fill), QColor(line)


LIGHT = Theme(
    name="light",
    window="#f1f2f4",
    base="#ffffff",
    text="#16191d",
    button="#e4e7eb",
    highlight="#1a5fa8",
    highlight_text="#ffffff",
    paper="#fbfbf9",
    line="#24282d",
    faint="#5f666e",
    good="#146c2e",
    bad="#b3261e",
    hand="#1a5fa8",
    materials={
        "shoe-a": ("#d5dae0", "#4b535c"),
        "shoe-b": ("#b4bcc6", "#4b535c"),
        "north": ("#efb9b3", "#7a2a22"),
        "south": ("#b5c9ea", "#26457a"),
        "index": ("#000000", "#24282d"),
        "housing": ("#dfe2e5", "#4b535c"),
        "plate": ("#efe6c8", "#6d5f2b"),
        "bracket": ("#d8c27c", "#5c4d16"),
        "screw": ("#c9ced4", "#3a4148"),
        "eccentric": ("#aeb6bf", "#24282d"),
        "slot": ("#3a4148", "#3a4148"),
        "cam": ("#a9b2bc", "#24282d"),
        "boss": ("#c8ced5", "#24282d"),
        "step": ("#8a949f", "#24282d"),
        "fibre": ("#b98a54", "#4f3413"),
        "arm": ("#d4d9de", "#24282d"),
        "contact": ("#f3d35c", "#4a3b00"),
        "spring": ("#000000", "#4f5a66"),
        "mark": ("#16191d", "#16191d"),
        "scale": ("#16191d", "#3a4148"),
        "straightedge": ("#000000", "#8a2be2"),
        "drive-flange": ("#cfd6dd", "#3a4148"),
        "disc": ("#efe6c8", "#5c4d16"),
        "magneto-flange": ("#b9cbb8", "#2f4a2e"),
        "paint": ("#000000", "#c0261c"),
        "timing-disc": ("#ffffff", "#3a4148"),
        "pointer": ("#16191d", "#16191d"),
    },
)

DARK = Theme(
    name="dark",
    window="#1f2226",
    base="#17191c",
    text="#e8eaed",
    button="#32373d",
    highlight="#6aaeff",
    highlight_text="#08131f",
    paper="#1a1c1f",
    line="#d5d9de",
    faint="#9aa2ab",
    good="#7bd88f",
    bad="#ff9d94",
    hand="#6aaeff",
    materials={
        "shoe-a": ("#3c434b", "#aab2bb"),
        "shoe-b": ("#525b65", "#aab2bb"),
        "north": ("#7d3a34", "#f2b8b1"),
        "south": ("#31497a", "#b9cdf2"),
        "index": ("#ffffff", "#f2f4f7"),
        "housing": ("#30353b", "#aab2bb"),
        "plate": ("#474026", "#d9c988"),
        "bracket": ("#7a6a30", "#eadca0"),
        "screw": ("#69727c", "#e3e7eb"),
        "eccentric": ("#7f8994", "#f2f4f7"),
        "slot": ("#101214", "#101214"),
        "cam": ("#77818c", "#f0f2f5"),
        "boss": ("#5d666f", "#f0f2f5"),
        "step": ("#7b8590", "#f0f2f5"),
        "fibre": ("#8a6032", "#f0cfa4"),
        "arm": ("#5a626b", "#f0f2f5"),
        "contact": ("#a07f14", "#fff2bf"),
        "spring": ("#ffffff", "#c3ccd6"),
        "mark": ("#f2f4f7", "#f2f4f7"),
        "scale": ("#f2f4f7", "#cfd5db"),
        "straightedge": ("#ffffff", "#d3a6ff"),
        "drive-flange": ("#4b535c", "#dfe3e8"),
        "disc": ("#474026", "#eadca0"),
        "magneto-flange": ("#37503a", "#c4e3c3"),
        "paint": ("#ffffff", "#ff8177"),
        "timing-disc": ("#26292d", "#cfd5db"),
        "pointer": ("#f2f4f7", "#f2f4f7"),
    },
)

_BRIGHT = {
    "contact": "#7a6200", "cam": "#3a3a3a", "step": "#707070", "arm": "#2a2a2a",
    "north": "#5a1410", "south": "#12306a", "index": "#ffffff",
    "mark": "#ffffff", "pointer": "#ffffff", "slot": "#ffffff",
}  # fmt: skip

HIGH_CONTRAST = Theme(
    name="high contrast",
    window="#000000",
    base="#000000",
    text="#ffffff",
    button="#1a1a1a",
    highlight="#ffff00",
    highlight_text="#000000",
    paper="#000000",
    line="#ffffff",
    faint="#e0e0e0",
    good="#6dff8a",
    bad="#ffb0a8",
    hand="#ffff00",
    materials={name: (_BRIGHT.get(name, "#000000"), "#ffffff") for name in LIGHT.materials}
    | {"straightedge": ("#ffffff", "#ff9dff"), "paint": ("#ffffff", "#ff8177")},
)

THEMES = {theme.name: theme for theme in (LIGHT, DARK, HIGH_CONTRAST)}


def system_theme() -> Theme:
    """The theme that goes with the desktop's own."""
    return DARK if QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark else LIGHT


def colours(theme: Theme) -> None:
    """Give the whole application a theme's palette."""
    palette = QPalette()
    role = QPalette.ColorRole
    for which, colour in (
        (role.Window, theme.window),
        (role.WindowText, theme.text),
        (role.Base, theme.base),
        (role.AlternateBase, theme.window),
        (role.Text, theme.text),
        (role.Button, theme.button),
        (role.ButtonText, theme.text),
        (role.Highlight, theme.highlight),
        (role.HighlightedText, theme.highlight_text),
        (role.ToolTipBase, theme.base),
        (role.ToolTipText, theme.text),
        (role.PlaceholderText, theme.faint),
        (role.Link, theme.highlight),
    ):
        palette.setColor(which, QColor(colour))
    for which in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, which, QColor(theme.faint))
    QApplication.setPalette(palette)
