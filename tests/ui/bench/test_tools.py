"""The bench's tray: things go to the magneto by key or drag, stand in the picture there, and come back."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import LetGo, PullPlug, SlipPaper, TurnRotor
from magview.bench.state import gap_now_mm, lamp_burns_now, readings
from magview.bench.tray import Thing
from tests.hands import drag_rotor

KEYS = Qt.Key


def press(*keys) -> None:
    """Keys, each where the keyboard then is."""
    for key in keys:
        QTest.keyClick(QApplication.focusWidget(), key)


def at_the_picture(window):
    """The keyboard at the breaker end, the magneto not grounded, contacts wide open."""
    window.breaker.setFocus()
    window.model.send(PullPlug(True))
    window.model.send(SlipPaper(True))
    window.model.send(TurnRotor(24.0))
    return window.instruments


def test_a_light_put_there_by_keys_burns_in_the_picture_as_the_contacts_part(open_window):
    window = open_window("seven-radial")
    tools, model = at_the_picture(window), window.model
    assert tools.tray.things[Thing.LAMP].item.on == ""
    before = window.breaker.grab().toImage()
    press(KEYS.Key_T, KEYS.Key_2, KEYS.Key_Return)
    assert tools.lying.lamp
    assert window.breaker.grab().toImage() != before
    opens = float(readings(model.state).opens_deg[0])
    seen = []
    for rotor in (opens - 1.0, opens + 1.0):
        model.send(TurnRotor(rotor))
        seen.append(window.breaker.laid().lamp)
    assert set(seen) == {"dark", "light"}
    press(KEYS.Key_T, KEYS.Key_2)
    assert not tools.lying.lamp


def test_keys_one_to_three_at_the_picture_still_take_parts_in_hand(open_window):
    window = open_window("seven-radial")
    at_the_picture(window)
    for key, hand in ((KEYS.Key_2, "plate"), (KEYS.Key_3, "screw"), (KEYS.Key_1, "rotor")):
        press(key)
        assert window.breaker.hand == hand
    press(KEYS.Key_T, KEYS.Key_Escape, KEYS.Key_3)
    assert window.breaker.hand == "screw"


def test_blades_go_or_stop_by_the_gap_and_are_changed_by_arrows(open_window):
    window = open_window("seven-radial")
    tools = at_the_picture(window)
    gap = gap_now_mm(window.model.state)
    press(KEYS.Key_T, KEYS.Key_3)
    for key in [KEYS.Key_Left] * 25 + [KEYS.Key_Right] * 20:
        press(key, KEYS.Key_Return)
        (blade,) = tools.right_hand.hand.blades
        assert window.breaker.laid().went == (blade <= gap)
        assert window.contact.blade_mm == blade
    press(KEYS.Key_Escape)
    assert tools.lying.blades_mm is None and not window.breaker.laid().blades


def test_the_jumper_and_the_screws_are_steps_that_can_be_undone(open_window):
    window = open_window("seven-radial")
    at_the_picture(window)
    press(KEYS.Key_T, KEYS.Key_5, KEYS.Key_Return)
    assert window.model.state.lead.jumper
    press(KEYS.Key_T, KEYS.Key_6, KEYS.Key_Right, KEYS.Key_Return, KEYS.Key_Escape)
    assert window.model.state.clamps_tight
    window.model.undo()
    window.model.undo()
    assert not window.model.state.lead.jumper and not window.model.state.clamps_tight


def drag_to(card, goal: QPointF) -> None:
    """Drag a thing from the tray to a point of the screen, and let go there."""
    middle = QPointF(card.rect().center())
    steps = (
        (QEvent.Type.MouseButtonPress, card.mapToGlobal(middle)),
        (QEvent.Type.MouseMove, card.mapToGlobal(middle) + QPointF(30.0, 0.0)),
        (QEvent.Type.MouseMove, goal),
        (QEvent.Type.MouseButtonRelease, goal),
    )
    for kind, where in steps:
        left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
        button = none if kind == QEvent.Type.MouseMove else left
        held = none if kind == QEvent.Type.MouseButtonRelease else left
        event = QMouseEvent(kind, card.mapFromGlobal(where), where, button, held, Qt.KeyboardModifier.NoModifier)
        QApplication.sendEvent(card, event)


def test_the_straightedge_is_taken_away_and_dragged_back(open_window):
    """To the step's lit place, or anywhere near the cam, whose middle it is to lie over."""
    window = open_window("seven-radial")
    tools, view = at_the_picture(window), window.breaker
    card = tools.tray.things[Thing.STRAIGHTEDGE]
    middle = view.pixel(0.0, 0.0)
    for place in (view.place_of("step"), middle, middle + QPointF(30.0, -20.0)):
        QTest.mouseClick(card, Qt.MouseButton.LeftButton)
        assert "straightedge" in view.scene_of_parts.hidden
        drag_to(card, view.viewport().mapToGlobal(place))
        assert tools.lying.straightedge
        assert "straightedge" not in view.scene_of_parts.hidden


def test_what_is_let_go_of_where_it_does_not_belong_says_where_it_does(open_window):
    window = open_window("seven-radial")
    tools, view, said = at_the_picture(window), window.breaker, []
    window.model.refused.connect(said.append)
    corner = view.viewport().mapToGlobal(QPointF(view.width() - 6.0, 60.0))
    QTest.mouseClick(tools.tray.things[Thing.STRAIGHTEDGE], Qt.MouseButton.LeftButton)
    for thing, places in (
        (Thing.STRAIGHTEDGE, "“along the step”"),
        (Thing.LAMP, "“across the contacts”"),
        (Thing.METER, "“plug of the lead to case”, “terminal to case”"),
    ):
        drag_to(tools.tray.things[thing], corner)
        assert said.pop().endswith(f"does not go there: let go at a lit place, {places}")
        assert not said
        assert tools.right_hand.hand.thing is thing, "it stays in hand"
    assert not tools.lying.lamp
    assert not tools.lying.straightedge
    drag_to(tools.tray.things[Thing.LAMP], tools.tray.mapToGlobal(QPointF(10.0, 10.0)))
    assert not said, "what is put back on the tray belongs there"
    assert tools.right_hand.hand.thing is None


@pytest.mark.parametrize(("key", "part"), [(KEYS.Key_2, "backplate_deg"), (KEYS.Key_3, "screw_deg")])
def test_plate_and_screw_ease_until_the_light_changes(open_window, key, part):
    """The rotor at the opening: either way about it the light changes within a few steps."""
    window = open_window("seven-radial")
    tools, model = at_the_picture(window), window.model
    refused = []
    model.refused.connect(refused.append)
    press(key)
    QTest.keyClick(window.breaker, KEYS.Key_Right, Qt.KeyboardModifier.ControlModifier)
    assert len(refused) == 1 and "tray" in refused[0]
    press(KEYS.Key_T, KEYS.Key_2, KEYS.Key_Return)
    model.send(TurnRotor(float(readings(model.state).opens_deg[0]) + 0.1))
    burnt, before = lamp_burns_now(model.state), getattr(model.state, part)
    for forward in (True, False):
        tools_key = KEYS.Key_Right if forward else KEYS.Key_Left
        QTest.keyClick(window.breaker, tools_key, Qt.KeyboardModifier.ControlModifier)
        if lamp_burns_now(model.state) != burnt:
            break
    assert lamp_burns_now(model.state) != burnt
    assert abs(getattr(model.state, part) - before) < 20.0
    assert tools.lying.lamp


def test_a_rotor_that_was_free_is_let_go_of_with_the_mouse(open_window):
    window = open_window("seven-radial")
    at_the_picture(window)
    drag_rotor(window.breaker, 40.0, 50.0)
    assert window.model.state.held
    window.model.reduced_motion = True
    window.model.send(LetGo())
    drag_rotor(window.breaker, 40.0, 50.0)
    assert not window.model.state.held


def test_a_meter_is_seen_where_it_reads_as_long_as_it_is_in_hand(open_window):
    window = open_window("seven-radial")
    tools = at_the_picture(window)
    before = window.breaker.grab().toImage()
    tools.right_hand.press(4)
    for spot, shows in (("lead", "Ω"), ("terminal", "Ω")):
        next(s for s in tools.right_hand.spots if s.spot.name == spot).click()
        laid = window.breaker.laid()
        assert laid.meter.endswith(shows), laid.meter
    assert window.breaker.grab().toImage() != before
    tools.right_hand.put_away()
    assert not window.breaker.laid().meter


def test_stop_and_disc_are_used_at_the_crank_where_there_is_an_engine(open_window):
    window = open_window("seven-radial-left")
    at_the_picture(window)
    press(KEYS.Key_T, KEYS.Key_7)
    assert window.tabs.currentIndex() == 1
    assert window.timing.stop.isAncestorOf(QApplication.focusWidget())
    assert window.crank.picture.group("stop").pieces, "it is seen in the plug hole"
    card = window.instruments.tray.things[Thing.STOP]
    assert card.item.on == "in No. 1"
    QTest.mouseClick(card, Qt.MouseButton.LeftButton)
    assert not any(group.name == "stop" for group in window.crank.picture.groups), "taken out again"
    window.show_panel("setting")
    window.breaker.setFocus()
    press(KEYS.Key_T, KEYS.Key_8)
    assert QApplication.focusWidget() is window.crank


def test_the_tray_put_away_is_remembered_and_leaves_the_large_picture_as_large(open_window):
    window = open_window("seven-radial", (1280, 660))
    tools, size = window.instruments, window.breaker.size()
    assert size.height() >= 360 and size.width() >= 410
    window.menus.show_tray_action.trigger()
    assert not tools.tray.isVisible()
    assert window.breaker.size().height() == size.height()
    again = open_window("seven-radial", (1280, 660))
    assert not again.instruments.tray.isVisible()
    assert not again.menus.show_tray_action.isChecked()
    again.breaker.setFocus()
    press(KEYS.Key_T)
    assert again.instruments.tray.isVisible()
