"""A document as one HTML file that needs nothing else, and blocks as HTML for Qt's text."""

from __future__ import annotations

import base64
from collections.abc import Iterable
from html import escape

from magview import __version__
from magview.paper import blocks
from magview.paper.blocks import Block, Document, Words, printable, runs
from magview.spec.language import tr

_STYLE = """
* { box-sizing: border-box; }
:root { color-scheme: light dark; --text: #16191d; --paper: #fff; --soft: #eff0f2; --line: #8a929b;
  --link: #1a5fa8; --bad: #b3261e; }
@media (prefers-color-scheme: dark) { :root { --text: #e8eaed; --paper: #17191c; --soft: #26292d; --line: #767e87;
  --link: #6aaeff; --bad: #ff9d94; } }
body { color: var(--text); background: var(--paper); font: 1rem/1.5 "DejaVu Sans", Verdana, sans-serif;
  max-width: 48rem; margin: 0 auto; padding: 1rem; }
.form { font-size: .85rem; line-height: 1.35; }
a { color: var(--link); }
h1, h2, h3 { line-height: 1.25; break-after: avoid; }
.form h2 { border-bottom: 1.5pt solid var(--text); margin: 1.2em 0 .3em; }
h2 .state { float: right; font-weight: normal; font-size: .8em; }
table { border-collapse: collapse; margin: .3em 0; }
.form table { width: 100%; }
thead { display: table-header-group; }
th, td { text-align: left; vertical-align: top; padding: .15em .5em .15em .2em; border-bottom: .4pt solid var(--line);
  overflow-wrap: anywhere; }
th { border-bottom: 1pt solid var(--text); }
.r { text-align: right; }
tr.bad td { font-weight: bold; background: var(--soft); }
.to-fill th, .to-fill td { border: .6pt solid var(--text); height: 2.3em; }
.to-fill td.hatched { print-color-adjust: exact; -webkit-print-color-adjust: exact;
  background: repeating-linear-gradient(135deg, transparent 0 1.1mm, var(--line) 1.1mm 1.3mm); }
p { margin: .3em 0; white-space: pre-wrap; overflow-wrap: anywhere; }
.book p { margin: .8em 0; }
.note, .caution, .warning { border: .4pt solid var(--text); padding: .4em .6em; }
.caution { border-width: 1.2pt; }
.warning { border: 2.5pt solid var(--bad); font-weight: bold; }
.small, figcaption { font-size: .85em; }
code, pre { font-family: "DejaVu Sans Mono", ui-monospace, monospace; font-size: .92em; }
pre, .formula { background: var(--soft); padding: .6rem 1rem; white-space: pre-wrap; overflow-wrap: anywhere; }
.new-page { border-top: 1.5pt solid var(--line); margin: 2rem 0; }
.figures { display: flex; flex-wrap: wrap; gap: 4mm; justify-content: space-around; }
figure { flex: 1; margin: 0; min-width: 0; }
figure svg, img { width: 100%; height: auto; background: #fff; }
.tick { list-style: none; padding-left: 1.5em; }
.tick li::before { content: "☐"; margin-left: -1.5em; display: inline-block; width: 1.5em; }
.line { border-bottom: .6pt solid var(--text); height: 2.4em; }
.signature { display: flex; gap: 5mm; margin: 9mm 0 2mm; }
.signature div { flex: 1; border-top: .8pt solid var(--text); font-size: .85em; position: relative; }
.signature b { position: absolute; bottom: 100%; font-size: 1.2em; white-space: nowrap; }
footer { border-top: .4pt solid var(--line); margin-top: 1.5em; font-size: .85em; }
@media print {
  :root { color-scheme: light; --text: #000; --paper: #fff; --soft: #eee; --line: #888; --link: #000; --bad: #000; }
  body { max-width: none; padding: 0; font-size: 9.5pt; }
  tr, li, figure, .signature, .note, .caution, .warning, .formula { break-inside: avoid; }
  .new-page { break-before: page; border: 0; margin: 0; }
}
"""


def document_html(document: Document) -> str:
    """A document as an HTML file: its pictures are in it, it has no script, and nothing is fetched."""
    size = "A4" if document.size == "a4" else "letter"
    return (
        '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f'<meta name="generator" content="magview {__version__}">\n<title>{_text(document.title)}</title>\n'
        f"<style>@page {{ size: {size}; margin: 15mm; }}{_STYLE}</style>\n</head>\n"
        f'<body class="{document.setting}">\n<main>\n{blocks_html(document.blocks)}\n</main>\n'
        f"<footer>{_text(document.foot)}</footer>\n</body>\n</html>\n"
    )


def blocks_html(parts: Iterable[Block], *, qt: bool = False) -> str:
    """Blocks as HTML; `qt`: for Qt's text, which frames tables alone and reads pictures by their names."""
    return "\n".join(_html(block, qt) for block in parts)


def words_html(words: Words) -> str:
    """A text with its looks as HTML.

    Examples
    --------
    >>> from magview.paper.blocks import Run
    >>> words_html((Run("s", ("i",)), Run("max, ", ("sub",)), Run("L", ("sub", "i")), Run(" < 1")))
    '<i>s</i><sub>max, <i>L</i></sub> &lt; 1'
    """
    out, stack = "", list[str]()
    for run in (*runs(words), None):
        wanted = [] if run is None else [*([f'a href="{escape(run.link)}"'] if run.link else []), *run.styles]
        same = 0
        while same < min(len(stack), len(wanted)) and stack[same] == wanted[same]:
            same += 1
        out += "".join(f"</{tag.split()[0]}>" for tag in reversed(stack[same:]))
        out += "".join(f"<{tag}>" for tag in wanted[same:])
        out += "" if run is None else _text(run.text)
        stack = wanted
    return out


def _text(text: str) -> str:
    """Text as HTML shows it: nothing in it is markup, and what no page may hold is a replacement sign."""
    return escape(printable(text), quote=False)


def _html(block: Block, qt: bool) -> str:
    match block:
        case blocks.Heading(text, level, mark, anchor):
            state = f' <span class="state">{_text(mark)}</span>' if mark else ""
            named, inside = (f' id="{anchor}"', "") if anchor else ("", "")
            if qt:
                named, inside = "", f'<a name="{anchor}"></a>'
            return f"<h{level}{named}>{inside}{words_html(text)}{state}</h{level}>"
        case blocks.Paragraph():
            return _paragraph(block, qt)
        case blocks.Items(items, kind):
            tag = "ul" if kind == "bullet" else "ol"
            marks = ' class="tick"' if kind == "tick" else ""
            return f"<{tag}{marks}>{''.join(f'<li>{words_html(item)}</li>' for item in items)}</{tag}>"
        case blocks.Table():
            return _table(block)
        case blocks.Pictures(pictures):
            drawn = "".join(_picture(picture, qt) for picture in pictures)
            return drawn if qt else f'<div class="figures">{drawn}</div>'
        case blocks.SignatureLines(lines):
            cells = "".join(f"<div><b>{_text(filled)}</b>{_text(what)}</div>" for what, filled in lines)
            return f'<div class="signature">{cells}</div>'
        case blocks.WriteLines(count):
            return '<div class="line"></div>' * count
        case blocks.Contents(entries):
            links = (f'<li><a href="#{anchor}">{_text(words)}</a></li>' for words, anchor in entries)
            return f"<nav><ul>{''.join(links)}</ul></nav>"
        case blocks.NewPage():
            return '<div class="new-page"></div>'


def _paragraph(paragraph: blocks.Paragraph, qt: bool) -> str:
    text, kind = words_html(paragraph.text), paragraph.kind
    if kind == "code":
        return f"<pre><code>{text}</code></pre>"
    if qt and kind in ("formula", "note", "caution", "warning"):
        text = text.replace("\n", "<br/>")
        return f'<table class="{kind}" width="100%" cellpadding="8" cellspacing="0"><tr><td>{text}</td></tr></table>'
    role = ' role="note"' if kind in ("note", "caution", "warning") else ""
    return f'<p class="{kind}"{role}>{text}</p>' if kind != "plain" else f"<p>{text}</p>"


def _picture(picture: blocks.Picture, qt: bool) -> str:
    if picture.jpeg:
        data = base64.b64encode(picture.jpeg).decode("ascii")
        drawn = f'<img src="data:image/jpeg;base64,{data}" alt="{escape(printable(picture.told))}">'
    elif picture.png is None:
        drawn = picture.svg
    elif qt:
        return f'<p><img src="pictures/{escape(picture.png.name)}" alt="{escape(printable(picture.told))}"/></p>'
    else:
        data = base64.b64encode(picture.png.read_bytes()).decode("ascii")
        drawn = f'<img src="data:image/png;base64,{data}" alt="{escape(printable(picture.told))}">'
    caption = f"<figcaption>{_text(picture.caption)}</figcaption>" if picture.caption else ""
    return f'<figure style="max-width:{picture.width_mm:.0f}mm">{drawn}{caption}</figure>'


def _table(table: blocks.Table) -> str:
    whole = sum(table.weights)
    columns = "".join(f'<col style="width:{100 * w / whole:.1f}%">' for w in table.weights)

    def row(cells: tuple[Words, ...], tag: str) -> str:
        ways = [' class="r"' if way == "r" else "" for way in table.align or "l" * len(cells)]
        return "".join(
            f'<{tag} class="hatched" aria-label="{escape(tr("not asked"))}"></{tag}>'
            if cell == blocks.HATCHED
            else f"<{tag}{way}>{words_html(cell)}</{tag}>"
            for way, cell in zip(ways, cells, strict=True)
        )

    marks = (' class="bad"' if i in table.bad else "" for i in range(len(table.rows)))
    lines = (f"<tr{mark}>{row(cells, 'td')}</tr>" for mark, cells in zip(marks, table.rows, strict=True))
    top = f"<thead><tr>{row(table.head, 'th')}</tr></thead>" if table.head else ""
    kind = ' class="to-fill"' if table.to_fill else ""
    group = f"<colgroup>{columns}</colgroup>" if columns else ""
    return f"<table{kind}>{group}{top}<tbody>{''.join(lines)}</tbody></table>"
