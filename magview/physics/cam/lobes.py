"""The cylinders that a cam's lobe fires: all of them in turn, some of them, or one."""

from __future__ import annotations

from math import gcd

from magview.spec.language import tr


def places_of_lobe(lobes: int, cylinders: int, lobe: int = 1) -> tuple[int, ...]:
    """The places in the firing order that one lobe fires, in the order in which it comes to them.

    Sparks come lobe after lobe and go cylinder after cylinder, so that spark k, counted from 0, is lobe k mod
    `lobes` and place k mod `cylinders`. A lobe therefore comes to every gcd(lobes, cylinders)-th place, and to all
    of them where the two numbers share no factor (plain arithmetic).

    Parameters
    ----------
    lobes : lobes of the cam [-], 1 or more.
    cylinders : cylinders that the magneto fires [-], 1 or more.
    lobe : the lobe asked for [-], from 1 to `lobes`.

    Returns
    -------
    Places in the firing order, 1 = the cylinder that fires first; all different.

    Raises
    ------
    ValueError : no lobe of that number, or no lobe or cylinder at all.

    Examples
    --------
    >>> places_of_lobe(4, 7)
    (1, 5, 2, 6, 3, 7, 4)
    >>> places_of_lobe(4, 6, lobe=2)
    (2, 6, 4)
    >>> places_of_lobe(9, 9, lobe=3)
    (3,)
    """
    if not (cylinders >= 1 and 1 <= lobe <= lobes):
        raise ValueError(
            tr(
                "there is no lobe {lobe} of {lobes} for {cylinders} cylinders; lobes count from 1",
                lobe=lobe,
                lobes=lobes,
                cylinders=cylinders,
            )
        )
    visits = cylinders // gcd(lobes, cylinders)
    return tuple((lobe - 1 + turn * lobes) % cylinders + 1 for turn in range(visits))


def cylinders_of_lobe(lobes: int, firing_order: tuple[int, ...], lobe: int = 1) -> tuple[int, ...]:
    """The cylinders that one lobe fires, by number, in the order in which it comes to them.

    Takes the engine's firing order (cylinder numbers), lobe 1 firing its first; raises ValueError as
    `places_of_lobe` does.

    Examples
    --------
    >>> cylinders_of_lobe(4, (1, 3, 5, 7, 2, 4, 6))
    (1, 2, 3, 4, 5, 6, 7)
    """
    return tuple(firing_order[place - 1] for place in places_of_lobe(lobes, len(firing_order), lobe))
