"""The window. Qt lives here alone; views draw a state and send actions.

Rooms, each knowing those before it: `kit`; `pictures`, `plots`, `paper`; `own`, `practice`; `learn`, `classroom`,
`bench`, `work`, `guide`, which do not know one another; `start`, `present`; `shell`. Not here: anything that could
be computed without a window. Begin reading in `kit/place.py`, then `shell/window.py`.

A room offers a `Place`, which holds pages; `shell` shows one of six. A page never holds the window: it emits signals,
or is given a small protocol. What is imported late keeps the start quick.

What moves is painted on what stands still: a view keeps the still groups of its picture in the screen's own pixels,
and whoever changes a picture calls ``viewport().update()`` once. Cosmetic pens are one pixel wide: Qt strokes those
several times faster. A fault of the program is told once, and the window lives on. Time is an input: timers are
here alone.
"""
