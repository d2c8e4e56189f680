"""Paper for a class: a worksheet with blanks, its answer key, and handouts of bench pictures.

Nothing that belongs on a blank is in a worksheet at all: the key is made with it, not the worksheet without it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from magview.bench.placing import new_bench
from magview.bench.state import BenchState
from magview.classroom.blanks import Blanks, Cell, blanks, both_units, offset_words, offsets_mm
from magview.classroom.drawings import Drawn, Labels, drawing, gap_svg, has, mark_svg
from magview.classroom.key import faults_of, side_word
from magview.drawing.captions import CAPTIONS, ENDS, End
from magview.paper.blocks import (
    Block,
    Document,
    Heading,
    Items,
    NewPage,
    Paragraph,
    Picture,
    Pictures,
    SignatureLines,
    Table,
    WriteLines,
    working_foot,
)
from magview.practice.advice import efficient_path
from magview.practice.exercise import Exercise
from magview.practice.faults import begin
from magview.practice.paper import goal_words, paper_lines
from magview.practice.state import true_readings
from magview.practice.story import story
from magview.spec.language import marked, tr

CAUTION = marked(
    "On a real magneto: treat the propeller as live; fuel off, mixture cut off, throttle closed; switch off, each "
    "lead grounded and proved; plugs out, hanging leads grounded; wheels chocked. On the bench: outlets covered, "
    "fingers off them, no fuel vapour near. The maker's current manual and local rules govern; work on a certified "
    "aircraft is done or released by a licensed person. This sheet is for training; its magneto is invented."
)


_READING_MM = 86.0
"""Width of a picture that a reading is written into."""


@dataclass(frozen=True)
class Whose:
    """Whose sheet it is, as far as that is known: a blank stands where it is not."""

    pupil: str = ""
    class_code: str = ""
    number: int | None = None
    """The exercise's number in the set of the class."""


def worksheet(
    exercise: Exercise, seed: int, whose: Whose | None = None, *, hints: bool = False, parts: bool = True
) -> Document:
    """The worksheet of an exercise as a seed draws it; with `parts`, pictures whose parts are to be named.

    Raises SpecError for a seed that is none.
    """
    return _paper(exercise, seed, whose or Whose(), key=False, hints=hints, parts=parts)


def answer_key(exercise: Exercise, seed: int, whose: Whose | None = None, *, parts: bool = True) -> Document:
    """The same sheet with everything filled in, and what is wrong and how it is put right. Raises SpecError."""
    return _paper(exercise, seed, whose or Whose(), key=True, hints=True, parts=parts)


def parts_sheet(state: BenchState, *, key: bool = False) -> Document:
    """The parts of every picture of a bench, to be named; with `key` named."""
    title = tr("Name the parts: key") if key else tr("Name the parts")
    lines = () if key else (_name_lines(Whose()),)
    return class_paper(title, (Heading(title, 1), *lines, *_parts(_as_drawn(state), key)))


def handout(state: BenchState, ends: tuple[End, ...], labels: Labels, *, told: bool = False) -> Document:
    """Pictures of a bench as it stands, one below the other; with `told`, what there is to say of each part.

    Raises SpecError for a picture that this bench has not.
    """
    title = tr("{magneto}: pictures", magneto=state.magneto.name)
    found: list[Block] = [Heading(title, 1)]
    for end in ends:
        drawn = drawing(state, end, labels)
        found += [Heading(tr(ENDS[end])), _over_the_page(drawn)]
        if told and labels == "names":
            lines = tuple((tr(name), tr(CAPTIONS[end][name])) for name in drawn.parts)
            found.append(Table((tr("Part"), tr("What it does")), lines, (1.0, 4.0)))
    found.append(Paragraph(tr(CAUTION), "small"))
    return class_paper(title, found)


def together(title: str, papers: list[Document]) -> Document:
    """Several papers as one to print, each on pages of its own."""
    return class_paper(title, (block for paper in papers for block in (NewPage(), *paper.blocks)))


def answers(exercise: Exercise, seed: int) -> list[str]:
    """Solutions of a worksheet's tables."""
    return [answer for table in blanks(exercise, seed) for answer in table.answers]


# ---------------------------------------------------------------------- one sheet


def _paper(exercise: Exercise, seed: int, whose: Whose, *, key: bool, hints: bool, parts: bool) -> Document:
    sheet = tr("Answer key: {exercise}", exercise=tr(exercise.name)) if key else tr(exercise.name)
    title = sheet if whose.number is None else tr("{number}. {exercise}", number=whose.number, exercise=sheet)
    blocks = _blocks(exercise, seed, whose, title, key, hints)
    return class_paper(title, (*blocks, *(_parts(shown(exercise), key) if parts else ())))


def class_paper(title: str, blocks: Iterable[Block]) -> Document:
    """A document for a class: for a copier, so that there are greys alone."""
    return Document(title, working_foot(title), tuple(blocks), grey=True)


def _name_lines(whose: Whose) -> SignatureLines:
    return SignatureLines(((tr("Name"), whose.pupil), (tr("Class"), ""), (tr("Date"), "")))


def _blocks(exercise: Exercise, seed: int, whose: Whose, title: str, key: bool, hints: bool) -> Iterator[Block]:
    yield Heading(title, 1)
    if key:
        yield Paragraph(tr("For {pupil}.", pupil=whose.pupil) if whose.pupil else tr("For everyone."))
    else:
        yield _name_lines(whose)
    yield Paragraph(_begin_words(whose, seed), "small")
    yield Paragraph(tr(CAUTION), "caution")
    yield Heading(tr("The case"))
    yield Paragraph(story(exercise, seed))
    yield Paragraph(tr(exercise.task))
    yield Paragraph(tr("About {minutes} minutes. Done when:", minutes=f"{exercise.minutes:g}"))
    yield Items(tuple(goal_words(exercise)), "tick")
    yield Heading(tr("Data sheet"))
    yield Table((), tuple(paper_lines(exercise)), (1.0, 4.0))
    if hints and exercise.hints:
        yield Heading(tr("Hints"))
        yield from (Paragraph(tr(hint)) for hint in exercise.hints)
    yield Heading(tr("Readings"))
    yield from _readings(exercise, seed, key)
    yield Heading(tr("What was wrong, and what put it right"))
    if key:
        yield from _solution(exercise, seed)
    else:
        yield WriteLines(5)


def _begin_words(whose: Whose, seed: int) -> str:
    if whose.class_code and whose.pupil:
        return tr("In the program: class code {code}, under this name.", code=whose.class_code)
    if whose.class_code:
        return tr("In the program: class code {code}.", code=whose.class_code)
    return tr("In the program: begin this exercise with the code {seed}.", seed=seed)


def shown(exercise: Exercise) -> BenchState:
    """A bench for the pictures: as designed, so that nothing hidden can be measured off them."""
    return new_bench(exercise.installation if exercise.installation is not None else exercise.unit)


def _as_drawn(state: BenchState) -> BenchState:
    """The same magneto as designed."""
    return new_bench(state.engaged.installation if state.engaged is not None else state.magneto)


def _readings(exercise: Exercise, seed: int, key: bool) -> Iterator[Block]:
    for number, table in enumerate(blanks(exercise, seed), 1):
        yield Heading(tr("{number}. {table}", number=number, table=table.title), 3)
        yield Paragraph(table.note, "small")
        yield _filled(table, key)
    figures = _figures(exercise, seed, key)
    if figures:
        yield Heading(tr("Into the pictures: lobe 1 as found"), 3)
        yield Pictures(tuple(figures))


def _filled(table: Blanks, key: bool) -> Table:
    def words(cell: str | Cell) -> str:
        if isinstance(cell, str):
            return cell
        return cell.answer if key else ""

    rows = tuple(tuple(words(c) for c in row) for row in table.rows)
    return Table(table.head, rows, table.weights, to_fill=True)


def _figures(exercise: Exercise, seed: int, key: bool) -> list[Picture]:
    """Pictures with a line for the reading, where the tray has what reads it."""
    tray, wants = exercise.tray, {g.goal for g in exercise.goals} | {g.reading for g in exercise.goals}
    room, found = begin(exercise, seed), list[Picture]()
    if tray.lamp and tray.straightedge is not None and wants & {"opening"}:
        offset = offsets_mm(room)[0]
        if key:
            caption = tr("The straightedge (dashed) as the contacts open, and the rim mark. Not to scale.")
            drawn = mark_svg(room.bench, offset, offset_words(offset))
        else:
            caption = tr("Draw the straightedge as the contacts open: how far from the rim mark, short or past?")
            drawn = mark_svg(room.bench, None, "")
        found.append(Picture(_READING_MM, drawn, caption=caption))
    if tray.blades and wants & {"gap"}:
        answer = both_units(float(true_readings(room.bench).max_gap_mm[0])) if key else ""
        caption = tr("The contacts at their widest. Not to scale.")
        found.append(Picture(_READING_MM, gap_svg(answer), caption=caption))
    return found


def _solution(exercise: Exercise, seed: int) -> Iterator[Block]:
    for fault in faults_of(exercise, seed):
        side = side_word(fault.side, exercise)
        words = tr("{side} magneto: {fault}", side=side, fault=fault.words) if side else fault.words
        yield Paragraph(words)
    path = tuple(efficient_path(begin(exercise, seed))) or (tr("Nothing needs to be put right."),)
    yield Items(path, "tick")


def _over_the_page(drawn: Drawn) -> Pictures:
    return Pictures((Picture(180.0, drawn.svg, caption=drawn.caption),))


def _parts(state: BenchState, key: bool) -> Iterator[Block]:
    state = replace(state, lead=replace(state.lead, plug_in=True))
    for end in ENDS:
        if has(state, end):
            drawn = drawing(state, end, "answers" if key else "blanks")
            yield Heading(tr("Name the parts – {picture}", picture=tr(ENDS[end])))
            yield _over_the_page(drawn)
