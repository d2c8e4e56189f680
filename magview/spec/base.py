"""Base of every file model: frozen, strict numbers, no unknown keys, and errors a person can act on."""

import os
from typing import Annotated

from pydantic import BaseModel, ConfigDict, Field

from magview.spec.fields import Quantity

# The limits of a file are said here alone; and looking for plugins reads the metadata of every installed package.
os.environ.setdefault("PYDANTIC_DISABLE_PLUGINS", "__all__")


_NO_BREAK = str.maketrans("\u00a0\u202f", "  ")
"""French puts them before its signs; Python calls them not printable."""


class SpecError(ValueError):
    """A file or a value that cannot be used; its text is one sentence: what, where, what is allowed."""

    def __init__(self, text: str) -> None:
        # A file's contents may be quoted: no line breaks, control signs or broken characters, and no endless lists.
        shown = "".join(c if c.isprintable() else "\ufffd" for c in text.translate(_NO_BREAK))
        super().__init__(shown if len(shown) <= 600 else f"{shown[:299]}…{shown[-300:]}")


class Model(BaseModel):
    """Base of all file models. Numbers are strict: "10" and true are not numbers, NaN and infinity neither."""

    model_config = ConfigDict(extra="forbid", frozen=True, strict=True, allow_inf_nan=False, defer_build=True)


# Ranges are wide enough for any magneto and narrow enough that no formula overflows.
Angle = Annotated[float, Field(ge=-3600.0, le=3600.0), Quantity("°")]
Length = Annotated[float, Field(ge=0.001, le=1000.0), Quantity("mm")]
LengthOrZero = Annotated[float, Field(ge=0.0, le=1000.0), Quantity("mm")]
Text = Annotated[str, Field(max_length=4000)]
Name = Annotated[str, Field(min_length=1, max_length=120, pattern=r"^[^\p{Cc}]*$")]
