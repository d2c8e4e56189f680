"""The sheet as one HTML file that needs nothing else: words, tables, drawings, no script, nothing fetched."""

from __future__ import annotations

import re
from html import escape
from typing import Literal

from magview import __version__
from magview.job.document import Block, Figures, Heading, Paragraph, SignatureLines, Table, document, footer
from magview.job.history import Drift
from magview.job.sheet import Job
from magview.spec.language import tr

Paper = Literal["a4", "letter"]
PAPERS: tuple[Paper, ...] = ("a4", "letter")

_STYLE = """
@page { size: %s; margin: 15mm 14mm 16mm 14mm; }
* { box-sizing: border-box; }
body { font-family: "DejaVu Sans", Verdana, sans-serif; font-size: 9.5pt; line-height: 1.35; color: #000;
  background: #fff; max-width: 190mm; margin: 0 auto; padding: 0 4mm; }
h1 { font-size: 15pt; margin: 0.4em 0; }
h2 { font-size: 11.5pt; margin: 1.2em 0 0.3em; border-bottom: 1.5pt solid #000; break-after: avoid; }
h2 .state { float: right; font-weight: normal; }
h3 { font-size: 10pt; margin: 0.8em 0 0.3em; break-after: avoid; }
table { width: 100%%; border-collapse: collapse; margin: 0.3em 0; }
thead { display: table-header-group; }
table, tr, figure, .signature, .caution, .warning { break-inside: avoid; }
th, td { text-align: left; vertical-align: top; padding: 0.15em 0.5em 0.15em 0.2em; border-bottom: 0.4pt solid #888;
  overflow-wrap: anywhere; }
th { border-bottom: 1pt solid #000; }
tr.bad td { font-weight: bold; background: #eee; }
p { margin: 0.3em 0; white-space: pre-wrap; overflow-wrap: anywhere; }
.caution, .warning { border: 1.2pt solid #000; padding: 0.4em 0.6em; }
.warning { border-width: 2.5pt; font-weight: bold; }
.small { font-size: 8pt; color: #333; }
.figures { display: flex; gap: 4mm; justify-content: space-around; }
figure { flex: 1; margin: 0; min-width: 0; }
figure svg { width: 100%%; height: auto; }
figcaption { font-size: 8pt; }
.signature { display: flex; gap: 5mm; margin: 9mm 0 2mm; }
.signature div { flex: 1; border-top: 0.8pt solid #000; font-size: 8pt; position: relative; }
.signature b { position: absolute; bottom: 100%%; font-size: 9.5pt; white-space: nowrap; }
footer { margin-top: 1.5em; border-top: 0.4pt solid #888; font-size: 8pt; }
"""


def html_text(job: Job, paper: Paper = "a4", drift: Drift | None = None) -> str:
    """The sheet as HTML for a paper size; with `drift`, earlier sheets of the same magneto too."""
    title = job.title or tr("Magneto job sheet")
    body = "\n".join(_html(block) for block in document(job, drift))
    size = "A4" if paper == "a4" else "letter"
    return (
        '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f'<meta name="generator" content="magview {__version__}">\n'
        f"<title>{_text(title)}</title>\n<style>{_STYLE % size}</style>\n</head>\n<body>\n{body}\n"
        f"<footer>{_text(footer(job))}</footer>\n</body>\n</html>\n"
    )


def _text(text: str) -> str:
    """Text as HTML shows it: nothing in it is markup, and what no page may hold is a replacement sign."""
    return escape(printable(text))


def printable(text: str) -> str:
    """Text with control characters replaced; line breaks and tabs stay."""
    return re.sub(r"[^\n\t\x20-\x7e\xa0-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]", "\ufffd", text)


def _html(block: Block) -> str:
    match block:
        case Heading(text, level, mark):
            state = f' <span class="state">{_text(mark)}</span>' if mark else ""
            return f"<h{level}>{_text(text)}{state}</h{level}>"
        case Paragraph(text, kind):
            return f'<p class="{kind}">{_text(text)}</p>' if kind != "plain" else f"<p>{_text(text)}</p>"
        case Table():
            return _table(block)
        case Figures(pictures, width):
            style = f'style="max-width:{100 * width:.0f}%"'
            drawn = "".join(f"<figure {style}>{s}<figcaption>{_text(c)}</figcaption></figure>" for s, c in pictures)
            return f'<div class="figures">{drawn}</div>'
        case SignatureLines(lines):
            cells = "".join(f"<div><b>{_text(filled)}</b>{_text(what)}</div>" for what, filled in lines)
            return f'<div class="signature">{cells}</div>'


def _table(table: Table) -> str:
    whole = sum(table.weights)
    columns = "".join(f'<col style="width:{100 * w / whole:.1f}%">' for w in table.weights)
    head = "".join(f"<th>{_text(cell)}</th>" for cell in table.head)
    lines = []
    for i, row in enumerate(table.rows):
        cells = "".join(f"<td>{_text(cell)}</td>" for cell in row)
        lines.append(f'<tr class="bad">{cells}</tr>' if i in table.bad else f"<tr>{cells}</tr>")
    top = f"<thead><tr>{head}</tr></thead>" if head else ""
    return f"<table><colgroup>{columns}</colgroup>{top}<tbody>{''.join(lines)}</tbody></table>"
