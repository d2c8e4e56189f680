"""`frozen` against the standard library's own frozen dataclass."""

from __future__ import annotations

import copy
import inspect
import pickle
from dataclasses import FrozenInstanceError, asdict, dataclass, field, fields, replace

import pytest
from pydantic import TypeAdapter

from magview.spec.frozen import frozen


@frozen
class Ours:
    """Every kind of field."""

    name: str
    angle_deg: float = 1.5
    parts: list[int] = field(default_factory=lambda: [1, 2])
    kept: float = field(default=0.0, repr=False, compare=False)


@dataclass(frozen=True)
class Standard:
    """The same."""

    name: str
    angle_deg: float = 1.5
    parts: list[int] = field(default_factory=lambda: [1, 2])
    kept: float = field(default=0.0, repr=False, compare=False)


@frozen
class Checked:
    """Refuses what it should."""

    value: float

    def __post_init__(self) -> None:
        if self.value < 0.0:
            raise ValueError("below zero")


@pytest.mark.parametrize("arguments", [{"name": "a"}, {"name": "b", "angle_deg": -2.0, "parts": [], "kept": 3.0}])
def test_it_behaves_as_the_standard_one(arguments):
    ours, standard = Ours(**arguments), Standard(**arguments)
    assert asdict(ours) == asdict(standard)
    assert repr(ours) == repr(standard).replace("Standard", "Ours")
    assert [f.name for f in fields(ours)] == [f.name for f in fields(standard)]
    assert Ours.__match_args__ == Standard.__match_args__
    assert list(inspect.signature(Ours).parameters) == list(inspect.signature(Standard).parameters)
    assert replace(ours, name="c") == Ours(**arguments | {"name": "c"})
    assert replace(ours, kept=9.0) == ours != replace(ours, name="c")
    assert ours != standard
    assert copy.deepcopy(ours) == ours == pickle.loads(pickle.dumps(ours))
    adapter = TypeAdapter(Ours)
    assert adapter.validate_json(adapter.dump_json(ours)) == ours


def test_hashes_follow_equality_and_each_instance_has_its_own_default():
    assert hash(Checked(2.0)) == hash(Checked(2.0))
    assert len({Checked(2.0), Checked(2.0), Checked(3.0)}) == 2
    assert Ours("a").parts is not Ours("a").parts
    with pytest.raises(TypeError, match="unhashable"):
        hash(Ours("a"))


def test_nothing_can_be_changed_and_wrong_calls_are_refused():
    made = Ours("a")
    for change in (lambda: setattr(made, "name", ""), lambda: setattr(made, "new", 1), lambda: delattr(made, "name")):
        with pytest.raises(FrozenInstanceError):
            change()
    for call in (lambda: Ours(), lambda: Ours("a", surname="b"), lambda: Ours("a", 1.0, [], 0.0, 5)):
        with pytest.raises(TypeError):
            call()
    with pytest.raises(ValueError, match="below zero"):
        Checked(-1.0)
    with pytest.raises(ValueError, match="below zero"):
        replace(Checked(1.0), value=-1.0)


def test_a_subclass_has_its_own_fields():
    @frozen
    class Sub(Checked):
        """One field more."""

        unit: str = "mm"

    made = Sub(1.0)
    assert (made.value, made.unit) == (1.0, "mm")
    assert made != Checked(1.0)
    assert Sub(1.0, "in") == Sub(1.0, unit="in")


def test_a_method_of_the_class_s_own_is_kept():
    @frozen
    class Named:
        value: float

        def __repr__(self) -> str:
            return "mine"

    assert repr(Named(1.0)) == "mine"
    assert Named(1.0) == Named(1.0) != Named(2.0), "the others are the usual ones"
    with pytest.raises(FrozenInstanceError):
        Named(1.0).value = 2.0
