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
    """What is planned, the cursor, the part in hand, and where the keyboard is."""
    hand_fill: str
    on_hand: str
    """Words on the colour of the hand."""
    materials: dict[str, tuple[str, str]]

    def hatching(self, name: str) -> QColor:
        """Colour of a material's hatching."""
        colour = self.material(name)[1]
        colour.setAlpha(110)
        return colour

    def material(self, name: str) -> tuple[QColor, QColor]:
        """Fill and line colour of a material or an idea."""
        fill, line = self.materials.get(name, (self.base, self.line))
        return QColor(fill), QColor(line)


LIGHT = Theme(
    name="light",
    window="#E9ECF0",
    paper="#F8F9FB",
    base="#FFFFFF",
    button="#E4E8ED",
    text="#17202B",
    faint="#4A5766",
    hair="#7C8896",
    grid="#DCE1E7",
    line="#303B47",
    good="#136B33",
    good_fill="#D6EBDB",
    bad="#AE2A20",
    bad_fill="#F7D9D6",
    warn="#8A5A00",
    hand="#1259B5",
    hand_fill="#CFE0F6",
    on_hand="#FFFFFF",
    materials={
        "lift": ("#86CEC3", "#00695D"),
        "current": ("#F4BB88", "#A34705"),
        "flux": ("#B79FE0", "#6A3FB0"),
        "paint": ("#F2BE22", "#3A2E00"),
        "north": ("#EBA69F", "#7A1F17"),
        "south": ("#A5BEE6", "#1F3F78"),
        "index": ("#000000", "#303B47"),
        "shoe-a": ("#C9D1DA", "#303B47"),
        "shoe-b": ("#AEBAC6", "#303B47"),
        "housing": ("#DDE2E8", "#67737F"),
        "plate": ("#EFE7D1", "#6D5F2B"),
        "bracket": ("#D9C489", "#6A5622"),
        "screw": ("#E6EBF0", "#303B47"),
        "eccentric": ("#94A1AF", "#303B47"),
        "slot": ("#303B47", "#303B47"),
        "cam": ("#94A1AF", "#303B47"),
        "boss": ("#C4CDD7", "#303B47"),
        "step": ("#94A1AF", "#303B47"),
        "fibre": ("#B7824B", "#4F3413"),
        "arm": ("#C4CDD7", "#303B47"),
        "contact": ("#F4F1EA", "#3A3226"),
        "spring": ("#000000", "#4A5766"),
        "coil": ("#DE9A62", "#552A0A"),
        "core": ("#B4BDC8", "#3A4653"),
        "mark": ("#17202B", "#17202B"),
        "scale": ("#17202B", "#303B47"),
        "straightedge": ("#CFE0F6", "#1259B5"),
        "drive-flange": ("#C6D0DB", "#3C4B5B"),
        "disc": ("#EADFC2", "#6B5A2C"),
        "magneto-flange": ("#BAD0BC", "#2D5134"),
        "timing-disc": ("#FFFFFF", "#303B47"),
        "pointer": ("#17202B", "#17202B"),
    },
)

DARK = Theme(
    name="dark",
    window="#101418",
    paper="#181D23",
    base="#20262D",
    button="#2B333C",
    text="#E9EDF2",
    faint="#AAB6C2",
    hair="#74808D",
    grid="#2B333C",
    line="#E3E9EF",
    good="#7BD88F",
    good_fill="#1F3F2A",
    bad="#FF9D94",
    bad_fill="#4F2724",
    warn="#F2C46D",
    hand="#7DB4FF",
    hand_fill="#1F3A5E",
    on_hand="#12161B",
    materials={
        "lift": ("#1F6F65", "#57D1BF"),
        "current": ("#7A4616", "#FFB067"),
        "flux": ("#56408A", "#C3A6FF"),
        "paint": ("#FFD24A", "#1A1500"),
        "north": ("#8C423B", "#FFD0CA"),
        "south": ("#3A568C", "#BBD0F5"),
        "index": ("#FFFFFF", "#E3E9EF"),
        "shoe-a": ("#46515C", "#E3E9EF"),
        "shoe-b": ("#5B6773", "#E3E9EF"),
        "housing": ("#2C343D", "#8D99A6"),
        "plate": ("#4A4331", "#D9C988"),
        "bracket": ("#7E6C38", "#EBDCA4"),
        "screw": ("#5E6975", "#E3E9EF"),
        "eccentric": ("#525E6A", "#E3E9EF"),
        "slot": ("#12161B", "#12161B"),
        "cam": ("#525E6A", "#E3E9EF"),
        "boss": ("#3B4550", "#E3E9EF"),
        "step": ("#5E6975", "#E3E9EF"),
        "fibre": ("#8E6234", "#EBCBA2"),
        "arm": ("#525E6A", "#E3E9EF"),
        "contact": ("#EDE7D8", "#1A1500"),
        "spring": ("#FFFFFF", "#AAB6C2"),
        "coil": ("#7C481F", "#FFD9B3"),
        "core": ("#56626F", "#DFE6ED"),
        "mark": ("#E9EDF2", "#E9EDF2"),
        "scale": ("#E9EDF2", "#E3E9EF"),
        "straightedge": ("#1F3A5E", "#7DB4FF"),
        "drive-flange": ("#4C5967", "#DCE4EC"),
        "disc": ("#554A2E", "#E6D7A4"),
        "magneto-flange": ("#3A5740", "#C6E5C9"),
        "timing-disc": ("#20262D", "#E3E9EF"),
        "pointer": ("#E9EDF2", "#E9EDF2"),
    },
)

HIGH_CONTRAST = Theme(
    name="high contrast",
    window="#000000",
    paper="#000000",
    base="#000000",
    button="#1A1A1A",
    text="#FFFFFF",
    faint="#E0E0E0",
    hair="#C8C8C8",
    grid="#333333",
    line="#FFFFFF",
    good="#90FF9C",
    good_fill="#0B3315",
    bad="#FFB0A8",
    bad_fill="#4A0F0A",
    warn="#FFD98A",
    hand="#9CC8FF",
    hand_fill="#0E2C55",
    on_hand="#000000",
    # Black parts with white outlines, but for what a colour tells apart; letters, hatching and place tell it too.
    materials=dict.fromkeys(LIGHT.materials, ("#000000", "#FFFFFF"))
    | {
        "lift": ("#00574D", "#6FFFE9"),
        "current": ("#5A2E00", "#FFC080"),
        "flux": ("#3A2070", "#DCC8FF"),
        "paint": ("#FFE14D", "#000000"),
        "north": ("#5A1410", "#FFD8D2"),
        "south": ("#12306A", "#D2E2FF"),
        "contact": ("#FFFFFF", "#000000"),
        "cam": ("#3A3A3A", "#FFFFFF"),
        "step": ("#5A5A5A", "#FFFFFF"),
        "arm": ("#2A2A2A", "#FFFFFF"),
        "straightedge": ("#0E2C55", "#9CC8FF"),
        "index": ("#FFFFFF", "#FFFFFF"),
        "mark": ("#FFFFFF", "#FFFFFF"),
        "pointer": ("#FFFFFF", "#FFFFFF"),
        "slot": ("#FFFFFF", "#FFFFFF"),
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
