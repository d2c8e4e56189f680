"""The command of the guide: ``magview guide``, thin."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import Any

from magview.cli.streams import words_stream, write_out, write_pdf
from magview.paper.sizes import PAPERS
from magview.spec.language import tr


def add_guide(commands: argparse._SubParsersAction[Any]) -> None:
    """Put the command beside the others."""
    guide = commands.add_parser("guide", help=tr("Search the guide, or write it as one HTML file or as PDF."))
    guide.add_argument("--html", metavar="OUT", help=tr("Write it as HTML, such as guide.html."))
    guide.add_argument("--pdf", metavar="OUT", help=tr("Write it as PDF, such as guide.pdf."))
    guide.add_argument("--paper", choices=PAPERS, default="a4", help=tr("Choose the size of paper: a4 or letter."))
    guide.add_argument(
        "words", nargs="*", metavar="WORD", help=tr("Search for these words, such as neutral or E-gap.")
    )
    guide.set_defaults(run=run_guide)


def run_guide(arguments: argparse.Namespace) -> int:
    """Write what was asked for; without a file to write, print the contents or what a search finds.

    Exit code 1 for a search that finds nothing.
    """
    from magview.guide.book import book
    from magview.guide.pages import chapters
    from magview.guide.search import guide_index
    from magview.paper.html import document_html

    stream = words_stream(arguments.html, arguments.pdf)
    if arguments.html:
        write_out(arguments.html, document_html(book(arguments.paper)))
    if arguments.pdf:
        write_pdf(Path(arguments.pdf), book(arguments.paper), or_html=True)
    if arguments.words:
        index = guide_index()
        if not index.ranked:
            sys.stderr.write(tr("Words are found only as typed: this Python's SQLite has no FTS5.") + "\n")
        hits = index.search(" ".join(arguments.words), most=10)
        for hit in hits:
            where = " › ".join(dict.fromkeys((hit.section.page_title, hit.section.title)))
            stream.write(f"{where}\n    {hit.excerpt}\n")
        return 0 if hits else 1
    if not (arguments.html or arguments.pdf):
        for chapter in chapters():
            sys.stdout.write(f"{chapter.title}\n")
            sys.stdout.writelines(f"  {page.title}\n" for page in chapter.pages)
        sys.stdout.write(tr("F1 in the window opens it; --html and --pdf write it to a file.") + "\n")
    return 0
