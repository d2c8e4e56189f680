"""Documents for paper: blocks in their order, written as HTML or as plain text.

Whoever has something to print makes a `Document` and nothing else; how it looks is decided here, and for PDF in
`ui.paper`. Nothing here knows Qt, magnetos or classes. Begin reading in `blocks.py`.
"""
