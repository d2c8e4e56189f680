"""Contrast as WCAG 2.2 has it."""

from __future__ import annotations

from PySide6.QtGui import QColor


def luminance(colour: QColor) -> float:
    """Relative luminance, WCAG 2.2."""

    def linear(c: float) -> float:
        return c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4

    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF())


def contrast(a: str | QColor, b: str | QColor) -> float:
    """Contrast ratio, WCAG 2.2."""
    bright, dark = sorted((luminance(QColor(a)), luminance(QColor(b))), reverse=True)
    return (bright + 0.05) / (dark + 0.05)
