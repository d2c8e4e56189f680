"""The code's check, exhaustively; its alphabet by RFC 4648, section 6."""

from __future__ import annotations

from base64 import b32encode
from itertools import combinations

import pytest

from magview.classroom.code import ALPHABET, MOST, Bits, checked, plain, symbols_of
from magview.spec.base import SpecError
from tests.counts import swept

WORDS = [
    [0],
    [31] * 29,
    list(range(29)),
    [7, 0, 0, 19, 31, 4, 12, 12, 1, 30],
    [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
]
TYPED = ["".join(c for c in checked(w) if c != "-") for w in WORDS]


def refused(text: str) -> bool:
    try:
        symbols_of(text)
    except SpecError:
        return True
    return False


def test_the_alphabet_is_the_published_one():
    """RFC 4648, section 6, as Python's standard library writes it; what is left out is read as what it looks like."""
    every = sum((n << 5 * (31 - n) for n in range(32)), 0).to_bytes(20, "big")
    assert b32encode(every).decode() == ALPHABET
    assert plain("o-0 1i 8b") == "OOIIBB"


@pytest.mark.parametrize("word", WORDS)
def test_symbols_come_back_however_they_are_typed(word):
    code = checked(word)
    looks_like = code.translate(str.maketrans("OIB", "018"))
    for typed in (code, code.lower(), code.replace("-", ""), code.replace("-", " – "), looks_like):
        assert symbols_of(typed) == list(word)


@pytest.mark.parametrize("letters", TYPED)
def test_every_single_wrong_character_is_found(letters):
    for place in range(len(letters)):
        for other in ALPHABET:
            if other != letters[place]:
                assert refused(letters[:place] + other + letters[place + 1 :])


@pytest.mark.parametrize("letters", TYPED)
def test_every_swap_of_two_is_found_neighbours_or_not(letters):
    for a, b in combinations(range(len(letters)), 2):
        if letters[a] != letters[b]:
            swapped = list(letters)
            swapped[a], swapped[b] = swapped[b], swapped[a]
            assert refused("".join(swapped))


@pytest.mark.parametrize("step", [7, swept(1)])
def test_every_two_wrong_characters_are_found(step):
    """Distance three (Singleton bound of two check symbols), on one code of fourteen: 87,451 errors, or a sample."""
    letters = TYPED[-1]
    values = [ALPHABET.index(c) for c in letters]
    for a, b in combinations(range(len(values)), 2):
        for x in range(1, 32, step):
            for y in range(1, 32, step):
                wrong = list(letters)
                wrong[a], wrong[b] = ALPHABET[values[a] ^ x], ALPHABET[values[b] ^ y]
                assert refused("".join(wrong))


@pytest.mark.parametrize("text", ["", " - ", "A", "8U2M", "8K2$", "0" * (MOST + 1), "é", "\u0000"])
def test_what_is_no_code_is_refused_in_a_sentence(text):
    with pytest.raises(SpecError, match=r"[Cc]ode"):
        symbols_of(text)


def test_bits_come_back_in_the_order_they_were_put():
    bits = Bits()
    for value, width in ((5, 3), (0, 1), (1023, 10), (77, 9)):
        bits.put(value, width)
    back = Bits(bits.symbols())
    assert [back.take(n) for n in (3, 1, 10, 9)] == [5, 0, 1023, 77]
    with pytest.raises(ValueError, match="does not fit"):
        bits.put(4, 2)
    with pytest.raises(ValueError, match="bits are left"):
        back.take(10)
