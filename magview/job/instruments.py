"""Instruments of one's own, with calibration number and due date: a small file that the program keeps."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from magview.job.parts import Day, Line
from magview.spec.base import Model, Name
from magview.spec.fields import Choices, may_say
from magview.spec.files import read_json, validate, write_model
from magview.spec.language import marked, tr

FILE = "instruments.json"
"""Name of the list among what the program keeps for a person."""

SEPARATOR = "; "
"""Between the names of instruments on a sheet."""

Use = Annotated[
    Literal["blades", "straightedge", "lamp", "disc", "tachometer", "spring balance", "other"],
    Choices(
        (
            ("blades", marked("feeler blades")),
            ("straightedge", marked("straightedge, rule")),
            ("lamp", marked("timing lamp, meter")),
            ("disc", marked("degree disc")),
            ("tachometer", marked("tachometer")),
            ("spring balance", marked("spring balance")),
            ("other", marked("other")),
        )
    ),
]


class OwnInstrument(Model):
    """An instrument as its owner knows it. On a sheet it stays as it was on the day of the work."""

    name: Name = Field(title=marked("Name"), description=marked("Its name in the workshop."))
    use: Use = may_say(marked("For"), marked("Kind of reading that it takes."), "other")
    number: Line = may_say(marked("Calibration no."), marked("Number of its calibration."), "")
    due: Day = may_say(marked("Due"), marked("Day on which its next calibration is due."), "")

    @model_validator(mode="after")
    def _one_name(self) -> Self:
        if SEPARATOR.strip() in self.name:
            raise ValueError(tr("the name has a semicolon, which stands between names; write “Blades 17”"))
        return self


class InstrumentList(Model):
    """The list of a person's own instruments."""

    format: Literal["magview-instruments/1"]
    instruments: Annotated[tuple[OwnInstrument, ...], Field(max_length=200)] = may_say(
        marked("Instruments"), marked("Each with its calibration."), ()
    )

    @model_validator(mode="after")
    def _each_once(self) -> Self:
        names = [instrument.name.casefold() for instrument in self.instruments]
        twice = next((i.name for i in self.instruments if names.count(i.name.casefold()) > 1), None)
        if twice is not None:
            raise ValueError(tr("“{name}” is there twice; give each instrument a name of its own", name=twice))
        return self


def instrument_list(rows: tuple[dict[str, str], ...]) -> InstrumentList:
    """List of these rows. Raises SpecError, naming what cannot be."""
    data = {"format": "magview-instruments/1", "instruments": rows}
    return validate(InstrumentList, data, tr("the instruments"))


def read_instruments(path: Path) -> InstrumentList:
    """Read the list; an empty one where none was kept yet. Raises SpecError for a file that cannot be read."""
    if not path.exists():
        return instrument_list(())
    return validate(InstrumentList, read_json(path), path.name)


def write_instruments(path: Path, kept: InstrumentList) -> None:
    """Keep the list. Raises SpecError; the former list then stands."""
    path.parent.mkdir(parents=True, exist_ok=True)
    write_model(path, kept)
