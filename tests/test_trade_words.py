"""What no text that people read may say: sentences of the trade that could hurt somebody, or that are not so.

The facts are common practice where no source stands beside them.
"""

from __future__ import annotations

import ast
import json
import re
from collections.abc import Iterator
from fractions import Fraction
from functools import cache

import pytest

from magview.practice.library import find_lesson, shipped_lessons
from magview.spec.library import find_installation, resources
from tests.source_words import strings, trees

FORBIDDEN = {
    # Pulling a lead grounds a magneto only where a tab inside does (fact 1).
    "a pulled lead called safe": re.compile(
        r"\bpulling the (?:switch )?lead (?:makes (?:it|the magneto) safe"
        r"|grounds (?:it|the (?:coil|magneto|primary)))(?! only)",
        re.I,
    ),
    # A tab with paper under it grounds nothing (fact 1).
    "paper called safe": re.compile(
        r"paper[^.]{0,60}\b(?:is|stays|leaves it|makes it) (?:safe|dead|grounded)\b", re.I
    ),
    # One plug of each cylinder takes away compression, not the spark (fact 3).
    "plugs out called enough": re.compile(
        r"plugs out (?:is (?:safe|enough)\b|ends? the danger|makes? (?:it|the propeller) safe)", re.I
    ),
    # A drop of nothing: the magneto that was switched off is probably not grounded (fact 5).
    "no drop called good": re.compile(r"\bno drop[^.]{0,30}\b(?:is good|in limits|is ideal|is best)", re.I),
    # A late magneto is hard to start; it is the early one that kicks back (fact 8).
    "late called kicking back": re.compile(r"\blate(?: magneto| one)? (?:kicks|can kick|makes it kick)\b", re.I),
    # A sheet, a plan, a program releases nothing.
    "a sheet called a release": re.compile(r"\b(?:sheet|plan|program) (?:is a release|releases the)\b", re.I),
    # The stop belongs in the cylinder that the timing is read on, also where that has a link rod (fact 15).
    "the stop in another cylinder": re.compile(r"use the master rod's", re.I),
}

PLANTED = {
    "a pulled lead called safe": "Pulling the switch lead makes it safe.",
    "paper called safe": "With paper under the tab it stays dead.",
    "plugs out called enough": "Plugs out is enough.",
    "no drop called good": "No drop at all is best.",
    "late called kicking back": "A late magneto kicks back.",
    "a sheet called a release": "The signed sheet is a release.",
    "the stop in another cylinder": "Exact on the crank pin: use the master rod's.",
}

ROOT = resources()


@cache
def texts() -> tuple[tuple[str, str], ...]:
    """Every page of the guide, lesson, exercise and word of the program, by where it stands; read once."""
    return tuple(_texts())


def _texts() -> Iterator[tuple[str, str]]:
    for path in sorted(ROOT.glob("guide/*.md")):
        yield path.name, " ".join(path.read_text(encoding="utf-8").split())
    for kind in ("lessons", "exercises"):
        for path in sorted(ROOT.glob(f"{kind}/*.json")):
            yield f"{kind}/{path.name}", "\n".join(strings(json.loads(path.read_text(encoding="utf-8"))))
    for path, tree in trees().items():
        words = [n.value for n in ast.walk(tree) if isinstance(n, ast.Constant) and isinstance(n.value, str)]
        yield path.name, "\n".join(words)


@pytest.mark.parametrize("what", FORBIDDEN)
def test_no_text_says_what_could_hurt(what: str) -> None:
    found = [(name, match[0]) for name, text in texts() for match in FORBIDDEN[what].finditer(text)]
    assert found == []
    assert FORBIDDEN[what].search(PLANTED[what])


def test_a_caution_that_names_a_part_of_the_list_leads_to_the_whole_list() -> None:
    """Making safe is a list, not one act (fact 3; FAA-H-8083-32B, ch. 4, and common practice)."""
    for path in sorted(ROOT.glob("guide/*.md")):
        for line in path.read_text(encoding="utf-8").splitlines():
            if line.startswith("> **Take care.**") and re.search(r"plugs out|switch off|wheels chocked", line):
                assert "whole list" in line or path.name in ("switch-lead.md", "cautions.md"), path.name


@pytest.mark.parametrize("name", shipped_lessons())
def test_hands_go_to_the_coupling_only_with_the_switch_off(name: str) -> None:
    """The switch is on for a reading alone (fact 1): off again before marks are painted and nuts come off."""
    for step in find_lesson(name).steps:
        if any(until.that == "marked" for until in step.until):
            assert any(until.that == "switch-on" and not until.yes for until in step.until), step.title


@pytest.mark.parametrize("name", ["one-vernier-step", "several-teeth"])
def test_a_lesson_names_the_step_of_its_own_coupling(name: str) -> None:
    """One tooth with rotation and one against: 360°·(1/N_m − 1/N_d) of rotor, over k at the crank (arithmetic)."""
    lesson = find_lesson(name)
    assert lesson.exercise.installation is not None
    item = find_installation("seven-radial-left")
    n_m, n_d = item.coupling.magneto_teeth, item.coupling.drive_teeth
    crank = float(abs(Fraction(360, n_m) - Fraction(360, n_d))) / item.rotor_turns_per_crank_turn
    hints = [step.hint for step in lesson.steps if step.hint and "pair of teeth" in step.hint]
    assert hints and all(f"about {crank:.1f}° of crank" in hint for hint in hints)


def _lessons() -> Iterator[tuple[str, str, str]]:
    for path in sorted(ROOT.glob("lessons/*.json")):
        for step in json.loads(path.read_text(encoding="utf-8"))["steps"]:
            yield path.name, step["text"], f"{step.get('how', '')} {step.get('done', '')}"


def test_a_lesson_warns_before_a_rotor_is_let_go_and_before_the_switch_is_at_on_with_the_lead_in() -> None:
    """A rotor that the magnet snaps round can make kilovolts at the outlets (common practice)."""
    letting = [(name, how) for name, text, how in _lessons() if text.startswith("Let go of the rotor")]
    live = [
        (n, how) for n, t, how in _lessons() if t.startswith("Switch the ignition on") and n != "live-or-safe.json"
    ]
    assert letting and live
    assert not [name for name, how in letting + live if not how.startswith("WARNING: ")]
    assert not [name for name, how in letting if "kilovolts" not in how.split(". ")[0]]


def test_a_lesson_that_turns_the_propeller_has_warned_of_its_arc() -> None:
    """A propeller counts as live, also on an engine that was made safe (common practice)."""
    warned: set[str] = set()
    turning = []
    for name, text, how in _lessons():
        if "WARNING" in how and "arc" in how:
            warned.add(name)
        if text.startswith("Turn the propeller"):
            turning.append((name, text, name in warned))
    assert turning
    assert [(name, text) for name, text, told in turning if not told] == []


def test_a_lesson_says_to_hold_the_rotor_once_the_nuts_are_off() -> None:
    """The magnet pulls a rotor that the coupling lets go to a neutral (common practice)."""
    drawn = [(name, how) for name, text, how in _lessons() if text.startswith("Take the nuts off")]
    assert drawn and not [name for name, how in drawn if "Hold the rotor" not in how]


def test_the_lesson_on_the_stroke_brings_the_crank_to_where_its_engine_fires() -> None:
    lesson = find_lesson("several-teeth")
    wanted = lesson.exercise.installation.engine.firing_btdc_deg.left if lesson.exercise.installation else None
    at = {until.value for step in lesson.steps for until in step.until if until.that in ("disc-near", "crank-near")}
    assert at == {wanted}


def test_advice_on_proving_a_lead_ends_at_off_before_the_plug_goes_in() -> None:
    """A plug pushed in at ON, and the jumper taken off, make a live magneto (common practice)."""
    proofs = [line for _, text in texts() for line in text.splitlines() if "prove the lead: " in line]
    assert len(proofs) == 2
    for words in proofs:
        assert words.index("then off") < words.index("plug in,")
    assert any(words.index("plug in,") < words.index("jumper off") for words in proofs if "jumper" in words)
