"""Limits cards: kept by registration, printed, and carried onto a job sheet."""

from __future__ import annotations

import contextlib
from itertools import count
from pathlib import Path
from typing import Literal

from magview.bench.apply import BTDC_LIMIT_DEG
from magview.bench.shift_plan import ShiftPlan
from magview.forms.entry import Kind, entry_of
from magview.forms.typed import written
from magview.job.document import cautions
from magview.job.sheet import Job, change_in
from magview.paper.blocks import Document, Heading, Paragraph, SignatureLines, Table, working_foot
from magview.paper.sizes import PaperSize
from magview.physics.engine.coupling import plan
from magview.physics.engine.lamp import ASK_FIRST_DEG
from magview.spec.base import SpecError
from magview.spec.fields import about
from magview.spec.files import write_model
from magview.spec.formats import ENDING
from magview.spec.language import marked, tr
from magview.spec.limits import LimitsCard, file_stem, read_limits

FOLDER = "limits-cards"
"""Name of the folder of cards among what the program keeps for a person."""

FIELDS: tuple[str, ...] = tuple(name for name in LimitsCard.model_fields if name != "format")
"""Entries of a card, in the order of the page."""


class CardShelf:
    """The cards kept, a file each; without a folder they are kept as long as the program runs."""

    def __init__(self, folder: Path | None) -> None:
        self._folder = folder
        self._kept: dict[str, LimitsCard] = {}
        self.refused: tuple[str, ...] = ()
        """Sentences on the files that could not be read when last listed; they are left as they are."""

    def cards(self) -> list[LimitsCard]:
        """All cards, by registration."""
        found, refused = list(self._kept.values()), []
        if self._folder is not None and self._folder.is_dir():
            for path in sorted(self._folder.glob(f"*{ENDING}")):
                try:
                    found.append(read_limits(path))
                except SpecError as error:
                    refused.append(str(error))
        self.refused = tuple(refused)
        return sorted(found, key=lambda card: card.registration.casefold())

    def named(self, registration: str) -> LimitsCard | None:
        """The card of an aircraft; None if there is none."""
        wanted = registration.strip().casefold()
        return next((card for card in self.cards() if card.registration.casefold() == wanted), None)

    def keep(self, card: LimitsCard) -> None:
        """Keep a card in place of that of the same registration. Raises SpecError; the former one then stands."""
        if self._folder is None:
            self._kept[card.registration.casefold()] = card
            return
        try:
            self._folder.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            raise SpecError(
                tr("{file}: cannot be changed: {reason}", file=self._folder, reason=error.strerror or error)
            ) from error
        write_model(self._place(card), card)

    def _place(self, card: LimitsCard) -> Path:
        """The file of the card's registration, or a name that no other file has."""
        assert self._folder is not None
        for path in self._folder.glob(f"*{ENDING}"):
            with contextlib.suppress(SpecError):  # what cannot be read is not written over
                if read_limits(path).registration.casefold() == card.registration.casefold():
                    return path
        names = (f"{file_stem(card)}{'' if number == 1 else f'-{number}'}{ENDING}" for number in count(1))
        return next(path for name in names if not (path := self._folder / name).exists())


def take_card(job: Job, card: LimitsCard) -> Job:
    """A sheet with a card's registration and limits where it has none yet; nothing entered is replaced.

    The source is noted only where none was. Raises SpecError where a limit entered contradicts the card's.
    """
    low, high = card.gap_limits_mm
    limits = {
        "gap_low_mm": low,
        "gap_high_mm": high,
        "mark_tolerance_mm": card.mark_tolerance_mm,
        "left_btdc_deg": card.left_btdc_deg,
        "right_btdc_deg": None if job.magneto.position == "single" else card.right_deg,
        "timing_tolerance_deg": card.timing_tolerance_deg,
        "synchronising_tolerance_deg": card.synchronising_tolerance_deg,
        "source": card.manual,
    }
    missing = {name: value for name, value in limits.items() if getattr(job.limits, name) in (None, "")}
    job = change_in(job, "limits", **missing)
    return job if job.aircraft.registration else change_in(job, "aircraft", registration=card.registration)


def plan_of_card(
    card: LimitsCard, side: Literal["left", "right"], reads_btdc_deg: float, *, checked: bool = False
) -> ShiftPlan:
    """The first move of one magneto from where the lamp shows it to fire [crank deg before top dead centre].

    `checked`: stroke, mark and finger were looked at. Raises SpecError where that must come first.
    """
    if abs(reads_btdc_deg) > BTDC_LIMIT_DEG:
        words = marked("the lamp reads {reads}°; it must lie within ±{limit}° of top dead centre, such as 22")
        raise SpecError(tr(words, reads=reads_btdc_deg, limit=BTDC_LIMIT_DEG))
    wanted = card.left_btdc_deg if side == "left" else card.right_deg
    off = abs(reads_btdc_deg - wanted)
    if off > ASK_FIRST_DEG and not checked:
        words = marked(
            "the timing is {off}° of crank out, more than {limit}°: look at stroke, mark and finger first, then tick "
            "that you did"
        )
        raise SpecError(tr(words, off=off, limit=ASK_FIRST_DEG))
    teeth, ratio = (card.magneto_teeth, card.drive_teeth), card.rotor_turns_per_crank_turn
    try:
        move = plan(*teeth, ratio, reads_btdc_deg, wanted, most=1)[0]
    except ValueError as error:
        raise SpecError(str(error)) from error
    return ShiftPlan(
        *teeth, ratio, move, reads_btdc_deg, wanted, card.timing_tolerance_deg, card.rotation, card.registration,
        position=side,
    )  # fmt: skip


def shown(card: LimitsCard, name: str) -> str:
    """A field of a card as it is printed, with its unit; nothing where it is left out."""
    value = getattr(card, name)
    if value is None:
        return tr("as the left one") if name == "right_btdc_deg" else ""
    entry = entry_of(LimitsCard, name)
    if entry.kind is Kind.CHOICE:
        return tr(dict(about(LimitsCard, name).choices)[value])
    if name == "gap_limits_mm":
        low, high = value
        return tr("{low:length} to {high:length}", low=low, high=high)
    if name.endswith("_btdc_deg"):
        return tr(_PLACES[value >= 0.0], angle=abs(value))
    words = _UNITS.get(entry.quantity.of)
    return written(entry, value) if words is None else tr(words, angle=value)


_PLACES = {True: marked("{angle}° before top dead centre"), False: marked("{angle}° after top dead centre")}
"""By whether it fires before top dead centre."""

_UNITS = {"rotor": marked("{angle}° of rotor"), "crank": marked("{angle}° of crank")}
"""By what an angle is of."""


def card_document(card: LimitsCard, size: PaperSize = "a4") -> Document:
    """A card on one page, with lines for whoever compared it with the manual."""
    title = tr("Limits card: {registration}", registration=card.registration)
    rows = tuple((entry_of(LimitsCard, name).label, shown(card, name)) for name in FIELDS)
    blocks = (
        Heading(title, 1),
        cautions(),
        Table((), rows, (1.0, 1.4)),
        Paragraph(
            tr(
                "Cam, breaker arm, contact screw and plate are not on this card: gap and opening are read, not "
                "reckoned. Poles follow from cylinders and turns, for a spark at each pole: {poles}.",
                poles=card.poles,
            ),
            "small",
        ),
        Paragraph(tr("The current manual governs. Compare every line with it before the card is used."), "caution"),
        SignatureLines((
            (tr("Compared with the manual by"), ""), (tr("Date"), ""), (tr("Signature"), ""),
        )),
    )  # fmt: skip
    return Document(title, working_foot(title), blocks, size, grey=True)


def card_text(card: LimitsCard) -> str:
    """A card in lines, for a terminal."""
    rows = [(entry_of(LimitsCard, name).label, shown(card, name)) for name in FIELDS]
    wide = max(len(label) for label, _ in rows)
    return "\n".join(f"  {label:<{wide}}  {value}" for label, value in rows)
