"""Each lesson gone through at the real window, by mouse and by keys: judged on release, and nothing moves."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QAbstractSpinBox, QComboBox, QGraphicsView, QLabel, QWidget

from magview.bench import actions as bench
from magview.practice import actions as do
from magview.practice.library import find_lesson, shipped_lessons
from tests.counts import sampled
from tests.hands import click, what_is_due
from tests.lesson_hands import Learner, Way
from tests.lesson_ways import ways
from tests.wording import says

CASES = [(name, way) for name in shipped_lessons() for way in ("mouse", "keys")]


def places(page) -> dict[int, tuple[QWidget, QRect]]:
    """Where every control and picture stands that is to be seen."""
    kinds = (QAbstractButton, QAbstractSpinBox, QComboBox, QGraphicsView)
    shown = [w for w in page.findChildren(QWidget) if isinstance(w, kinds) and w.isVisible()]
    return {id(w): (w, QRect(w.mapTo(page, QPoint()), w.size())) for w in shown}


def still(page, before: dict[int, tuple[QWidget, QRect]]) -> None:
    """Nothing stands elsewhere than before."""
    now = places(page)
    moved = [key for key in now.keys() & before.keys() if now[key][1] != before[key][1]]
    said = [(type(now[key][0]).__name__, before[key][1], now[key][1]) for key in moved]
    assert not moved, f"moved at step {page.model.run.at}: {said}"
    before.update(now)


def open_lesson(open_window, name: str, size=(1280, 660)):
    window = open_window(size=size)
    page = window.learn.begin(find_lesson(name))
    page.model.reduced_motion = True
    what_is_due()
    return page


@pytest.mark.parametrize(("name", "way"), sampled(CASES, 3))
def test_a_lesson_is_gone_through_to_its_end_and_nothing_moves(open_window, name: str, way: Way):
    page = open_lesson(open_window, name)
    learner, stood = Learner(page, way), {}
    for number, deeds in enumerate(ways(name)):
        run = page.model.run
        assert run.at == number, f"{run.step.title}: {page.strip.feedback.head}"
        still(page, stood)
        if not run.step_done:
            learner.answer()
            for deed in deeds(page.model.run) if callable(deeds) else deeds:
                learner.do(deed)
                still(page, stood)
                if page.model.run.step_done:
                    break
        what_is_due()
        assert page.model.run.step_done, f"step {number}, {run.step.title}: {page.strip.feedback.head}"
        assert page.strip.feedback.role == "good"
        still(page, stood)
        learner.go_on()
    assert page.model.run.done
    still(page, stood)
    learnt = page.learnt.text()
    assert all(step.done in learnt for step in page.model.run.lesson.steps if step.done)
    learn = page.parent()
    assert page not in learn.open_pages, "a lesson that is done is under way no more"
    course = shipped_lessons()
    following = course[course.index(name) + 1] if name != course[-1] else None
    learner.go_on()
    what_is_due()
    assert learn.front.windowTitle() == (
        f"{find_lesson(following).number}. {find_lesson(following).name}" if following else "Learn"
    )


def test_a_rotor_to_be_let_go_is_asked_of_the_box_that_holds_it_alone(open_window):
    page = open_lesson(open_window, "neutral-and-e-gap")
    learner = at_step(page, "neutral-and-e-gap", 1)
    assert page.controls.needed == ("hold",)
    how = page.strip.how
    three = 3 * how.fontMetrics().lineSpacing()
    assert max(three, how.heightForWidth(how.width())) <= how.height(), "the whole of the warning is to be read"
    assert how.geometry().bottom() <= page.strip.feedback.geometry().top()
    assert not page.readings.gauges, "where the rotor stands is the matter: no setting is told beside it"
    assert page.readings.height() < page.beside.height() / 3, "and the room of the gauges is the plot's"
    note = page.pictures.view("pull").sheet.note
    assert not note.isVisible(), "the plot does not say beforehand where the rotor swings"
    learner.answer()
    assert note.isVisible()


def test_an_answer_is_left_behind_with_its_step(open_window):
    page = open_lesson(open_window, "contacts-and-lamp")
    learner = at_step(page, "contacts-and-lamp", 1)
    said = page.readings.lines["said"]
    assert said.text() == ""
    learner.answer()
    learner.do(ways("contacts-and-lamp")[1][0])
    assert "dark all the way round" in said.text()
    learner.go_on()
    assert said.text() == ""


def test_the_worth_of_a_tooth_is_told_after_the_guess_and_rows_are_read_whole(open_window):
    page = open_lesson(open_window, "one-vernier-step")
    learner = at_step(page, "one-vernier-step", 2)
    drive = page.pictures.view("drive")
    worth = says("One tooth, of crank:")
    assert worth not in corner_words(drive)
    for name in ("toothed-disc", "magneto-flange"):
        label = page.controls.controls[name].findChild(QLabel)
        assert label.fontMetrics().horizontalAdvance(label.text()) <= label.width(), label.text()
    learner.answer()
    assert worth in corner_words(drive)


def test_the_crank_tells_no_true_angle_before_the_disc_is_set(open_window):
    page = open_lesson(open_window, "top-dead-centre")
    learner = at_step(page, "top-dead-centre", 3)
    learner.do(do.WriteReading("disc-zero", -9.0))
    assert not page.model.run.step_done, "before and after the zero are told apart"
    told = page.strip.feedback
    assert says("half the sum of both readings written down, minus before zero, plus after it") in told.head
    learner.do(do.WriteReading("disc-zero", 9.0))
    learner.go_on()
    crank = page.pictures.view("crank")
    blind = says("No. 1 cut open. Its stroke is felt at the plug hole.")
    assert crank.shown_foot() == blind
    deeds = ways("top-dead-centre")[4]
    for deed in deeds(page.model.run) if callable(deeds) else deeds:
        learner.do(deed)
    assert page.model.run.step_done and crank.shown_foot() != blind


def corner_words(view) -> str:
    """All wordings in the corners of a drive end's picture."""
    return " ".join(w for corner in view.picture.corners for line in corner.lines for w in line.wordings)


def at_step(page, name: str, number: int) -> Learner:
    """A learner who has got to a step by the mouse."""
    learner = Learner(page, "mouse")
    for deeds in ways(name)[:number]:
        learner.answer()
        for deed in deeds(page.model.run) if callable(deeds) else deeds:
            learner.do(deed)
        learner.go_on()
    assert page.model.run.at == number
    return learner


def test_wrong_refused_and_part_way_acts_are_told_apart_and_undone(open_window):
    page = open_lesson(open_window, "plate-and-screw")
    learner, told = at_step(page, "plate-and-screw", 2), page.strip.feedback
    stood = places(page)
    learner.drag("screw", 2.0)
    assert (told.role, told.head) == ("warn", "Answer first, a guess is good.")
    learner.answer()
    assert not page.strip.next.isEnabled()
    learner.drag("screw", 2.0)
    assert told.role == "faint" and "of 4° so far" in told.head
    learner.press(page.controls.controls["clamps"])
    assert told.role == "bad" and told.head.startswith("Not asked for: ")
    assert page.strip.undo.isEnabled()
    click(page.strip.undo)
    assert page.model.practice.bench.clamps_tight and page.controls.controls["clamps"].isChecked()
    QTest.keyClick(page, Qt.Key.Key_H)
    assert told.head == "Hint" and told.more == page.model.run.step.hint
    learner.drag("screw", 2.0)
    assert told.role == "good" and page.strip.next.isEnabled()
    chips = page.strip.asked[0].chips
    assert chips[0].isChecked() and chips[0].sign == "✓"
    assert [c.sign for c in page.strip.asked[1].chips] == ["✗", "", ""] and page.strip.asked[1].chips[2].right
    learner.drag("screw", 2.0)
    assert (told.role, told.head) == ("good", "This step is done: press Next step.")
    assert page.model.run.lesson.steps[2].done in told.more, "the outcome stays to be read"
    still(page, stood)


def test_passing_a_place_with_the_button_down_is_not_being_there(open_window):
    page = open_lesson(open_window, "neutral-and-e-gap")
    Learner(page, "mouse").drag("rotor", 70.0)
    assert not page.model.run.step_done
    assert page.strip.feedback.head == "The rotor stands 25° past full register."


def test_turning_until_something_happens_is_seen_and_a_hand_stops_it(open_window, qtbot):
    page = open_lesson(open_window, "plate-and-screw")
    page.model.reduced_motion = False
    start = page.model.practice.bench.rotor_deg
    Learner(page, "mouse").do(do.TurnUntil("widest"))
    assert page.model.turning and page.model.run.practice.bench.rotor_deg == start
    page.model.tick(0.1)
    shown = page.model.state.rotor_deg
    assert shown == pytest.approx(start + 12.0), "medium: 120° a second"
    page.model.stop()
    assert not page.model.turning
    assert page.model.run.practice.bench.rotor_deg == pytest.approx(shown)
    assert "short of the largest gap" in page.strip.feedback.head
    page.model.do(do.TurnUntil("widest"))
    while page.model.turning:
        page.model.tick(0.1)
    assert page.model.run.step_done


def test_progress_is_kept_and_the_list_is_ticked(open_window):
    page = open_lesson(open_window, "plate-and-screw")
    learn = page.parent()
    at_step(page, "plate-and-screw", 2)
    page.close()
    learn.go_home()
    what_is_due()
    listed = [learn.home.lists[0].item(i).text() for i in range(learn.home.lists[0].count())]
    assert [line for line in listed if "left at step 3 of 8" in line]
    page = learn.begin(find_lesson("what-the-parts-are"))
    learner = Learner(page, "mouse")
    for deeds in ways("what-the-parts-are"):
        learner.answer()
        for deed in deeds:
            learner.do(deed)
        learner.go_on()
    assert learn.under_way() == [] and learn.under_way_at() is None
    learn.go_home()
    what_is_due()
    assert learn.home.lists[0].item(0).text().startswith("✓ 1. What the parts are")
    click(learn.home.buttons[0])
    assert learn.front.windowTitle() == "6. Plate and screw", "the one that was left comes first"


def test_the_strip_is_as_high_as_its_type_asks_whatever_it_says(open_window):
    page = open_lesson(open_window, "plate-and-screw")
    em = page.strip.fontInfo().pixelSize()
    assert page.strip.height() == round(15.2 * em)
    page.model.do(bench.TightenLock(False))
    assert page.strip.height() == round(15.2 * em)


def test_the_adjustment_window_stands_beside_plate_and_screw_and_follows_the_hand(open_window):
    page = open_lesson(open_window, "plate-and-screw")
    learner = at_step(page, "plate-and-screw", 2)
    what_is_due()
    plot = page.beside.currentWidget()
    assert plot is page.pictures.view("window") and plot.isVisible()
    before = plot.sheet.summary()
    learner.answer()
    learner.drag("screw", 4.0)
    assert plot.sheet.summary() != before, "the point goes with the contact screw"
    under = plot.childAt(plot.sheet.canvas.geometry().center())
    assert under is not plot.sheet.canvas.viewport(), "no hand works at the plot: a click passes it by"


def test_a_lesson_that_was_left_goes_on_at_its_step_in_a_window_opened_anew(open_window):
    page = open_lesson(open_window, "plate-and-screw")
    at_step(page, "plate-and-screw", 4)
    left = page.model.run
    assert left.at == 4
    learn = page.parent()
    page.close()
    what_is_due()
    again = learn.begin(find_lesson("plate-and-screw"))
    assert again is not page
    assert (again.step_at, again.model.practice) == (4, left.practice)
    assert again.model.run.answers == left.answers
