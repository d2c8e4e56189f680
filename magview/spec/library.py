"""The shipped magnetos, engines and installations, found alike from a clone, an editable install and a wheel."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Literal, TypeVar

from magview.spec.base import SpecError
from magview.spec.engine import Engine, Installation
from magview.spec.files import STANDARD, read_engine, read_installation, read_magneto
from magview.spec.formats import kind_of, names_file
from magview.spec.language import marked, tr
from magview.spec.limits import installation_of, read_limits
from magview.spec.magneto import Magneto

Kind = Literal["magnetos", "engines", "installations"]
T = TypeVar("T")

DEFAULT_MAGNETO = "seven-radial"


_UNKNOWN: dict[Kind, str] = {
    "magnetos": marked("“{name}” is neither a file nor one of the shipped magnetos: {known}"),
    "engines": marked("“{name}” is neither a file nor one of the shipped engines: {known}"),
    "installations": marked("“{name}” is neither a file nor one of the shipped installations: {known}"),
}


@cache
def resources() -> Path:
    """The folder of shipped files."""
    inside = Path(str(files("magview"))) / "resources"
    # A clone and an editable install keep them beside the package instead of in it.
    return inside if inside.is_dir() else Path(__file__).resolve().parents[2] / "resources"


def shipped_names(kind: Kind) -> list[str]:
    """Short names of what is shipped, in alphabetical order."""
    return sorted(p.stem for p in (resources() / kind).glob("*.json"))


def find_magneto(name: str) -> Magneto:
    """A magneto by the short name of a shipped one or by a file's path. Raises SpecError."""
    return _find(name, "magnetos", read_magneto)


def find_engine(name: str) -> Engine:
    """An engine by the short name of a shipped one or by a file's path. Raises SpecError."""
    return _find(name, "engines", read_engine)


def find_installation(name: str) -> Installation:
    """An installation by the short name of a shipped one or by a file's path. Raises SpecError."""
    return _find(name, "installations", read_installation)


def find_installation_or_card(name: str) -> Installation:
    """An installation as `find_installation` has it, or that of a limits card's file. Raises SpecError."""
    return _find(name, "installations", _read_either)


def _read_either(path: Path) -> Installation:
    if path != STANDARD and kind_of(path) == "limits":
        return installation_of(read_limits(path))
    return read_installation(path)


def shipped_installation_of(magneto: str) -> str | None:
    """Short name of a shipped installation of a shipped magneto, the left one where there are two."""
    return next((n for n in shipped_names("installations") if n.startswith(f"{magneto}-")), None)


def first_shipped() -> Magneto | Installation:
    """The magneto that the bench opens with, on its engine where one is shipped for it."""
    installation = shipped_installation_of(DEFAULT_MAGNETO)
    return find_magneto(DEFAULT_MAGNETO) if installation is None else find_installation(installation)


def _find(name: str, kind: Kind, read: Callable[[Path], T]) -> T:
    if name in shipped_names(kind):
        return read(resources() / kind / f"{name}.json")
    path = Path(name)
    if not names_file(name):
        raise SpecError(
            tr(_UNKNOWN[kind], name=name[:60], known=", ".join(shipped_names(kind))),
        )
    return read(path)
