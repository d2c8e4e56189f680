"""One word, one meaning; short sentences: every text of program, lessons, exercises and guide by the vocabulary."""

from __future__ import annotations

import re

import pytest

from magview.practice.library import find_lesson, shipped_lessons
from tests.prose import (
    DESCRIPTION_WORDS,
    FORBIDDEN,
    INSTRUCTION_WORDS,
    PLANTED,
    Sentence,
    all_sentences,
    kind,
    plain,
    sentences,
)

_THEORY_WORDS = 35
"""Most words of a sentence on the guide's pages of theory and in its reference of files, until these are mended."""
_NO_VERB = {"the", "a", "an", "this", "that", "it", "you", "your", "there", "its", "these", "those"}


def most(sentence: Sentence) -> int:
    """The most words that a sentence may have."""
    if sentence.instruction:
        return INSTRUCTION_WORDS
    hard = kind(sentence) == "guide" and re.search(r"theory-|files|README|cautions", sentence.where)
    return _THEORY_WORDS if hard else DESCRIPTION_WORDS


def begins_with_a_noun(sentence: Sentence) -> bool:
    """Whether an instruction begins with an article or a pronoun, so that no verb comes first."""
    first = re.match(r"[\W_]*(\w+)", sentence.text)
    return first is not None and first[1].casefold() in _NO_VERB


@pytest.mark.parametrize("say", FORBIDDEN)
def test_no_text_has_a_word_s_forbidden_twin(say):
    assert [(s.where, s.text) for s in all_sentences() if FORBIDDEN[say].search(s.text)] == []
    assert FORBIDDEN[say].search(PLANTED[say]), "the rule can fail"


def test_no_sentence_is_too_long():
    assert len(all_sentences()) > 5000
    assert [(s.where, s.words, s.text) for s in all_sentences() if s.words > most(s)] == []


def test_an_instruction_of_a_lesson_begins_with_its_verb():
    steps = [(name, step) for name in shipped_lessons() for step in find_lesson(name).steps]
    first = [Sentence(name, sentences(step.text)[0], True) for name, step in steps]
    assert len(first) > 100
    assert [(s.where, s.text) for s in first if begins_with_a_noun(s)] == []
    assert begins_with_a_noun(Sentence("", "The lamp is clipped on.", True))


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("It opens. Then it closes.", 2),
        ("Cylinder No. 1 fires at 25.5° before the top.", 1),
        ("Say: one; two", 3),
        ("- one item\n- another item", 2),
        ("| cell one | cell two |", 2),
        ("plugs out, leads off, chocks in, switch off, arc clear", 5),
    ],
)
def test_sentences_are_told_apart(text, parts):
    assert len(sentences(text)) == parts


def test_marks_and_values_are_no_words():
    assert plain("**Bold** [a link](page.md) and `code`") == "Bold a link and Code"
    assert Sentence("", "Turn it {angle:deg} with rotation").words == 5
    assert Sentence("", "It is turned by hand.").passive and not Sentence("", "Turn it by hand.").passive
