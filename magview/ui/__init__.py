"""The window. Qt lives here alone; views draw a state and send actions.

Here: the window and what it opens (`app`, `window`, `doors`, `opening`, `menus`), pictures (`picture`,
`picture_view`, `breaker_view`, `contact_view`, `drive_view`, `crank_view`), calculators (`…_panel`, `…_box`), plots
(`plot_…`), practice (`practice_…`, `lesson_view`, `debrief_view`), files of one's own (`own_…`), the job sheet
(`job_…`), the class (`class_…`), the guide (`guide_…`), presenting (`present…`), printing (`print_…`), faults told
(`mishaps`). Not here: anything that could be computed without a window. Begin reading in `model.py`, then
`window.py`.

What moves is painted on what stands still: a view keeps the still groups of its picture in the screen's own pixels,
and whoever changes a picture calls ``viewport().update()`` once. Cosmetic pens are one pixel wide: Qt strokes those
several times faster. A fault of the program is told once, and the window lives on. Time is an input: timers are
here alone.
"""
