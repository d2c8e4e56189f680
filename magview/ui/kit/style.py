"""One widget style everywhere, with outlines that can be seen (WCAG 2.2, 1.4.11: 3:1)."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import QLabel, QProxyStyle, QStyle, QStyleOption, QStyleOptionComplex, QWidget

LEAST_TARGET_PX = 24
"""Smallest size in both directions of what is pressed (WCAG 2.2, 2.5.8)."""

_PRESSED = frozenset(
    {
        QStyle.ContentsType.CT_PushButton,
        QStyle.ContentsType.CT_ToolButton,
        QStyle.ContentsType.CT_CheckBox,
        QStyle.ContentsType.CT_RadioButton,
        QStyle.ContentsType.CT_SpinBox,
        QStyle.ContentsType.CT_ComboBox,
    }
)


class Outlined(QProxyStyle):
    """Fusion, which derives its outlines from the window's colour and so loses them on a dark one."""

    def __init__(self) -> None:
        super().__init__("Fusion")

    def sizeFromContents(
        self, kind: QStyle.ContentsType, option: QStyleOption, size: QSize, widget: QWidget | None = None
    ) -> QSize:
        """Never smaller than can be hit, where it is pressed."""
        found = super().sizeFromContents(kind, option, size, widget)  # type: ignore[arg-type]  # None is allowed
        return found.expandedTo(QSize(LEAST_TARGET_PX, LEAST_TARGET_PX)) if kind in _PRESSED else found

    def drawPrimitive(
        self,
        element: QStyle.PrimitiveElement,
        option: QStyleOption,
        painter: QPainter,
        widget: QWidget | None = None,
    ) -> None:
        """Check boxes and radio buttons in the text's colour; a frame round buttons and lines for typing."""
        kinds = QStyle.PrimitiveElement
        if element in (kinds.PE_IndicatorCheckBox, kinds.PE_IndicatorRadioButton):
            _indicator(painter, option, round_one=element == kinds.PE_IndicatorRadioButton)
            return
        super().drawPrimitive(element, option, painter, widget)
        if element in (kinds.PE_PanelButtonCommand, kinds.PE_FrameLineEdit):
            _frame(painter, option)

    def drawComplexControl(
        self,
        control: QStyle.ComplexControl,
        option: QStyleOptionComplex,
        painter: QPainter,
        widget: QWidget | None = None,
    ) -> None:
        """A frame round entry fields and lists of choices."""
        super().drawComplexControl(control, option, painter, widget)
        if control in (QStyle.ComplexControl.CC_SpinBox, QStyle.ComplexControl.CC_ComboBox):
            _frame(painter, option)


def _frame(painter: QPainter, option: QStyleOption) -> None:
    focused = bool(option.state & QStyle.StateFlag.State_HasFocus)
    role = QPalette.ColorRole.Highlight if focused else QPalette.ColorRole.PlaceholderText
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(option.palette.color(role), 2.0 if focused else 1.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(QRectF(option.rect).adjusted(1, 1, -1, -1), 2.0, 2.0)
    painter.restore()


def _indicator(painter: QPainter, option: QStyleOption, round_one: bool) -> None:
    box = QRectF(option.rect).adjusted(1.5, 1.5, -1.5, -1.5)
    enabled = bool(option.state & QStyle.StateFlag.State_Enabled)
    group = QPalette.ColorGroup.Active if enabled else QPalette.ColorGroup.Disabled
    ink = option.palette.color(group, QPalette.ColorRole.Text)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(ink, 1.2))
    painter.setBrush(option.palette.color(QPalette.ColorRole.Base))
    on = bool(option.state & QStyle.StateFlag.State_On)
    if round_one:
        painter.drawEllipse(box)
        if on:
            inner = box.width() * 0.25
            painter.setBrush(ink)
            painter.drawEllipse(box.adjusted(inner, inner, -inner, -inner))
    else:
        painter.drawRect(box)
        if on:
            painter.setPen(QPen(ink, max(2.0, box.width() * 0.16)))
            x, y, w, h = box.x(), box.y(), box.width(), box.height()
            tick = [(0.2, 0.52), (0.42, 0.76), (0.82, 0.24)]
            painter.drawPolyline(QPolygonF([QPointF(x + w * a, y + h * b) for a, b in tick]))
    painter.restore()


def tint(label: QLabel, colour: str, bold: bool = False) -> None:
    """Colour a label's words; its size of type goes on following the application's."""
    palette = QPalette()
    palette.setColor(QPalette.ColorRole.WindowText, QColor(colour))
    label.setPalette(palette)
    font = QFont()
    font.setBold(bold)
    label.setFont(font)
