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
    """Colours by role: parts of a window, verdicts, and (fill, line) of each material and each idea."""

    name: str
    window: str
    paper: str
    """Under pictures and plots."""
    base: str
    """Under panels, lists and fields."""
    button: str
    text: str
    faint: str
    """Second ink."""
    hair: str
    """Thin outlines that must be seen: of a scale, of a card."""
    grid: str
    """Decoration: nothing is lost where it is not seen."""
    line: str
    """Outlines of parts."""
    good: str
    good_fill: str
    bad: str
    bad_fill: str
    warn: str
    hand: str
    """Colour of plans, the cursor, the part in hand, and where the keyboard is."""
    hand_fill: str
    on_hand: str
    """Words on the colour of the hand."""
    materials: dict[str, tuple[str, str]]

    def hatching(self, name: str) -> QColor:
        """Colour of a material's hatching."""
        colour = self.material(name)[1]
        colour.setAlpha(110)
        return colour

    def ink(self, idea: str) -> str:
        """The colour of an idea's words and lines: of lift, current or flux."""
        return self.materials[idea][1]

    def material(self, name: str) -> tuple[QColor, QColor]:
        """Fill and line colour of a material or an idea."""
        fill, line = self.materials.get(name, (self.base, self.line))
        return QColor(fill), QColor(line)


LIGHT = Theme(
    name="light",
    window="#e9ecf0",
    paper="#f8f9fb",
    base="#ffffff",
    button="#e4e8ed",
    text="#17202b",
    faint="#4a5766",
    hair="#7c8896",
    grid="#dce1e7",
    line="#303b47",
    good="#136b33",
    good_fill="#d6ebdb",
    bad="#ae2a20",
    bad_fill="#f7d9d6",
    warn="#8a5a00",
    hand="#1259b5",
    hand_fill="#cfe0f6",
    on_hand="#ffffff",
    materials={
        "lift": ("#86cec3", "#00695d"),
        "current": ("#f4bb88", "#a34705"),
        "flux": ("#b79fe0", "#6a3fb0"),
        "paint": ("#f2be22", "#3a2e00"),
        "north": ("#eba69f", "#7a1f17"),
        "south": ("#a5bee6", "#1f3f78"),
        "index": ("#000000", "#303b47"),
        "shoe-a": ("#c9d1da", "#303b47"),
        "shoe-b": ("#aebac6", "#303b47"),
        "housing": ("#dde2e8", "#67737f"),
        "plate": ("#efe7d1", "#6d5f2b"),
        "bracket": ("#d9c489", "#6a5622"),
        "screw": ("#e6ebf0", "#303b47"),
        "eccentric": ("#94a1af", "#303b47"),
        "slot": ("#303b47", "#303b47"),
        "cam": ("#94a1af", "#303b47"),
        "boss": ("#c4cdd7", "#303b47"),
        "step": ("#94a1af", "#303b47"),
        "fibre": ("#b7824b", "#4f3413"),
        "arm": ("#c4cdd7", "#303b47"),
        "contact": ("#f4f1ea", "#3a3226"),
        "spring": ("#000000", "#4a5766"),
        "coil": ("#de9a62", "#552a0a"),
        "core": ("#b4bdc8", "#3a4653"),
        "mark": ("#17202b", "#17202b"),
        "scale": ("#17202b", "#303b47"),
        "straightedge": ("#cfe0f6", "#1259b5"),
        "drive-flange": ("#c6d0db", "#3c4b5b"),
        "disc": ("#eadfc2", "#6b5a2c"),
        "magneto-flange": ("#bad0bc", "#2d5134"),
        "timing-disc": ("#ffffff", "#303b47"),
        "pointer": ("#17202b", "#17202b"),
    },
)

DARK = Theme(
    name="dark",
    window="#101418",
    paper="#181d23",
    base="#20262d",
    button="#2b333c",
    text="#e9edf2",
    faint="#aab6c2",
    hair="#74808d",
    grid="#2b333c",
    line="#e3e9ef",
    good="#7bd88f",
    good_fill="#1f3f2a",
    bad="#ff9d94",
    bad_fill="#4f2724",
    warn="#f2c46d",
    hand="#7db4ff",
    hand_fill="#1f3a5e",
    on_hand="#12161b",
    materials={
        "lift": ("#1f6f65", "#57d1bf"),
        "current": ("#7a4616", "#ffb067"),
        "flux": ("#56408a", "#c3a6ff"),
        "paint": ("#ffd24a", "#1a1500"),
        "north": ("#8c423b", "#ffd0ca"),
        "south": ("#3a568c", "#bbd0f5"),
        "index": ("#ffffff", "#e3e9ef"),
        "shoe-a": ("#46515c", "#e3e9ef"),
        "shoe-b": ("#5b6773", "#e3e9ef"),
        "housing": ("#2c343d", "#8d99a6"),
        "plate": ("#4a4331", "#d9c988"),
        "bracket": ("#7e6c38", "#ebdca4"),
        "screw": ("#5e6975", "#e3e9ef"),
        "eccentric": ("#525e6a", "#e3e9ef"),
        "slot": ("#12161b", "#12161b"),
        "cam": ("#525e6a", "#e3e9ef"),
        "boss": ("#3b4550", "#e3e9ef"),
        "step": ("#5e6975", "#e3e9ef"),
        "fibre": ("#8e6234", "#ebcba2"),
        "arm": ("#525e6a", "#e3e9ef"),
        "contact": ("#ede7d8", "#1a1500"),
        "spring": ("#ffffff", "#aab6c2"),
        "coil": ("#7c481f", "#ffd9b3"),
        "core": ("#56626f", "#dfe6ed"),
        "mark": ("#e9edf2", "#e9edf2"),
        "scale": ("#e9edf2", "#e3e9ef"),
        "straightedge": ("#1f3a5e", "#7db4ff"),
        "drive-flange": ("#4c5967", "#dce4ec"),
        "disc": ("#554a2e", "#e6d7a4"),
        "magneto-flange": ("#3a5740", "#c6e5c9"),
        "timing-disc": ("#20262d", "#e3e9ef"),
        "pointer": ("#e9edf2", "#e9edf2"),
    },
)

HIGH_CONTRAST = Theme(
    name="high contrast",
    window="#000000",
    paper="#000000",
    base="#000000",
    button="#1a1a1a",
    text="#ffffff",
    faint="#e0e0e0",
    hair="#c8c8c8",
    grid="#333333",
    line="#ffffff",
    good="#90ff9c",
    good_fill="#0b3315",
    bad="#ffb0a8",
    bad_fill="#4a0f0a",
    warn="#ffd98a",
    hand="#9cc8ff",
    hand_fill="#0e2c55",
    on_hand="#000000",
    # Black parts with white outlines, but for what a colour tells apart; letters, hatching and place tell it too.
    materials=dict.fromkeys(LIGHT.materials, ("#000000", "#ffffff"))
    | {
        "lift": ("#00574d", "#6fffe9"),
        "current": ("#5a2e00", "#ffc080"),
        "flux": ("#3a2070", "#dcc8ff"),
        "paint": ("#ffe14d", "#000000"),
        "north": ("#5a1410", "#ffd8d2"),
        "south": ("#12306a", "#d2e2ff"),
        "contact": ("#ffffff", "#000000"),
        "cam": ("#3a3a3a", "#ffffff"),
        "step": ("#5a5a5a", "#ffffff"),
        "arm": ("#2a2a2a", "#ffffff"),
        "straightedge": ("#0e2c55", "#9cc8ff"),
        "index": ("#ffffff", "#ffffff"),
        "mark": ("#ffffff", "#ffffff"),
        "pointer": ("#ffffff", "#ffffff"),
        "slot": ("#ffffff", "#ffffff"),
    },
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
        (role.Highlight, theme.hand),
        (role.HighlightedText, theme.on_hand),
        (role.ToolTipBase, theme.base),
        (role.ToolTipText, theme.text),
        (role.PlaceholderText, theme.faint),
        (role.Link, theme.hand),
    ):
        palette.setColor(which, QColor(colour))
    for which in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, which, QColor(theme.faint))
    QApplication.setPalette(palette)
