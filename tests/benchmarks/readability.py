"""How readable the texts are: words per sentence, passive, forbidden words; by kind of text.

python -m tests.benchmarks.readability           # the table
python -m tests.benchmarks.readability longest   # and the longest sentences
"""

# ruff: noqa: T201 — it is there to print.

from __future__ import annotations

import sys
from statistics import mean, quantiles

from tests.prose import DESCRIPTION_WORDS, INSTRUCTION_WORDS, Sentence, all_sentences, kind


def row(name: str, found: list[Sentence]) -> str:
    """A line of the table."""
    whole = [s for s in found if s.words > 3]  # labels and titles are no sentences
    counts = [s.words for s in whole]
    long = sum(s.words > (INSTRUCTION_WORDS if s.instruction else DESCRIPTION_WORDS) for s in whole)
    passive = sum(s.passive for s in whole) / len(whole)
    forbidden = sum(len(s.forbidden) for s in found)
    most = quantiles(counts, n=20)[-1]
    return f"| {name} | {len(whole)} | {mean(counts):.1f} | {most:.0f} | {long} | {passive:.0%} | {forbidden} |"


def main() -> None:
    """Print the table; with an argument, the longest sentences and the forbidden words too."""
    found = list(all_sentences())
    print("| texts | sentences | words a sentence | 95 % have at most | too long | passive | forbidden words |")
    print("| --- | --- | --- | --- | --- | --- | --- |")
    for name in dict.fromkeys(map(kind, found)):
        print(row(name, [s for s in found if kind(s) == name]))
    print(row("all", found))
    if len(sys.argv) > 1:
        for s in sorted(found, key=lambda s: -(s.words + 5 * s.instruction)):
            if s.words > (INSTRUCTION_WORDS if s.instruction else DESCRIPTION_WORDS):
                print(s.words, "I" if s.instruction else " ", s.where, "|", s.text)
        for s in found:
            for say in s.forbidden:
                print(f"{s.where}: say {say!r} | {s.text}")


if __name__ == "__main__":
    main()
