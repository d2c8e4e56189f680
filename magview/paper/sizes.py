"""Sizes of paper. Apart from `blocks`, so that commands that print nothing need not load a document's model."""

from __future__ import annotations

from typing import Literal

PaperSize = Literal["a4", "letter"]
PAPERS: tuple[PaperSize, ...] = ("a4", "letter")
