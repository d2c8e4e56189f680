"""The documentation of the physics: everything public has it, names the parameters as they are, and runs."""

import doctest
import importlib
import inspect
import pkgutil
import re
from collections.abc import Callable, Iterator
from types import ModuleType

import pytest

import magview.physics

MODULES = [
    importlib.import_module(m.name)
    for m in pkgutil.walk_packages(magview.physics.__path__, "magview.physics.")
    if not m.ispkg
]
# Under "Parameters", a line at the section's own indentation: "name : text" or "one, other : text".
ENTRY = re.compile(r"^(\w+(?:, \w+)*) :", re.MULTILINE)
SECTION = re.compile(r"^Parameters\n-+\n(.*?)(?=^\w[^\n]*\n---|\Z)", re.MULTILINE | re.DOTALL)


def public(module: ModuleType) -> Iterator[tuple[str, Callable]]:
    """Functions, classes and methods that a module defines, by dotted name."""
    for name, thing in vars(module).items():
        if name.startswith("_") or getattr(thing, "__module__", None) != module.__name__:
            continue
        if inspect.isclass(thing):
            yield name, thing
            for part, member in vars(thing).items():
                called = member.fget if isinstance(member, property) else inspect.unwrap(member)
                if not part.startswith("_") and inspect.isfunction(called):
                    yield f"{name}.{part}", called
        elif callable(thing):
            yield name, inspect.unwrap(thing)


THINGS = [pytest.param(thing, id=f"{m.__name__}.{name}") for m in MODULES for name, thing in public(m)]


def documented(thing: Callable) -> list[str]:
    section = SECTION.search(inspect.getdoc(thing) or "")
    return [name for match in ENTRY.findall(section[1]) for name in match.split(", ")] if section else []


@pytest.mark.parametrize("thing", THINGS)
def test_everything_public_is_documented(thing):
    text = thing.__doc__
    assert text and text.strip()
    # A dataclass without a docstring gets its own signature as one.
    assert not text.startswith(f"{thing.__name__}(")


@pytest.mark.parametrize("thing", [t for t in THINGS if documented(t.values[0])])
def test_documented_parameters_are_those_of_the_signature(thing):
    assert documented(thing) == [name for name in inspect.signature(thing).parameters if name != "self"]


def test_the_two_checks_above_have_something_to_check():
    names = {t.id: documented(t.values[0]) for t in THINGS}
    assert names["magview.physics.cam.motion.motion"] == ["law", "x"]
    assert names["magview.physics.cam.breaker.LiftCurve"] == ["rise", "fall"]
    assert "magview.physics.cam.setting.InternalTiming.readings" in names
    assert "magview.physics.cam.breaker.lift_curve" in names  # behind its cache


@pytest.mark.parametrize("module", MODULES, ids=lambda m: m.__name__)
def test_examples_in_the_documentation_run(module):
    assert doctest.testmod(module).failed == 0


def test_there_are_examples():
    assert sum(len(found.examples) for module in MODULES for found in doctest.DocTestFinder().find(module)) > 0
