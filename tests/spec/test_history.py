"""Undo and redo against a plain list of the values there were."""

from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule

from magview.spec import history as history_module
from magview.spec.history import History, Step


def taken(history: History[int], *values: int, gesture: object = None) -> History[int]:
    for value in values:
        before = history.last.after if history.last else 0
        history = history.take(Step(f"to {value}", before, value, gesture=gesture))
    return history


def test_an_empty_history_has_nothing_to_undo_or_redo():
    empty: History[int] = History()
    assert empty.undo() == empty.redo() == empty
    assert empty.undo_name is None and empty.redo_name is None


def test_steps_of_one_gesture_are_one_step():
    history = taken(taken(History(), 1), 2, 3, 4, gesture="drag")
    assert [(s.name, s.before, s.after) for s in history.steps] == [("to 1", 0, 1), ("to 4", 1, 4)]


def test_a_gesture_that_ends_where_it_began_leaves_no_step():
    history = taken(taken(History(), 1), 2, 1, gesture="drag")
    assert history == taken(History(), 1)


def test_a_gesture_does_not_go_on_after_an_undo():
    history = taken(taken(History(), 1), 2, gesture="drag").undo().redo()
    assert history.joins("drag") is not None
    back = taken(taken(History(), 1, gesture="drag"), 2).undo()
    assert back.joins("drag") is None
    assert back.take(Step("to 5", 1, 5, gesture="drag")).steps[0].after == 1


def test_what_is_amended_belongs_to_the_last_step_and_keeps_what_can_be_redone():
    history = taken(History(), 1, 2)
    assert history.amend(3).steps[-1] == Step("to 2", 1, 3)
    assert history.undo().amend(3) == history.undo()
    assert History[int]().amend(3) == History()


def test_the_oldest_steps_are_forgotten_first(monkeypatch):
    monkeypatch.setattr(history_module, "MAX_STEPS", 3)
    assert [s.after for s in taken(History(), 1, 2, 3, 4, 5).steps] == [3, 4, 5]
    history = taken(History(), 1, 2, 3).undo()
    assert [s.after for s in history.shorter(1).steps] == [2, 3] and history.shorter(1).done == 1
    undone = history.undo().undo()
    assert [s.after for s in undone.shorter(2).steps] == [1] and undone.shorter(2).done == 0


class Work(RuleBasedStateMachine):
    """Steps, undo and redo against a list of values and a place in it."""

    def __init__(self) -> None:
        super().__init__()
        self.history: History[int] = History()
        self.value, self.values, self.at = 0, [0], 0

    @rule(value=st.integers(0, 5))
    def take(self, value: int) -> None:
        self.history = self.history.take(Step(str(value), self.value, value))
        if value != self.value:
            self.values = [*self.values[: self.at + 1], value]
            self.at += 1
        else:
            self.values = self.values[: self.at + 1]
        self.value = value

    @precondition(lambda self: self.history.last)
    @rule()
    def undo(self) -> None:
        self.value = self.history.last.before
        self.history = self.history.undo()
        self.at -= 1

    @precondition(lambda self: self.history.next)
    @rule()
    def redo(self) -> None:
        self.value = self.history.next.after
        self.history = self.history.redo()
        self.at += 1

    @invariant()
    def is_where_the_list_is(self) -> None:
        assert self.value == self.values[self.at]
        assert [s.after for s in self.history.steps] == self.values[1:]
        assert self.history.done == self.at


TestWork = Work.TestCase
