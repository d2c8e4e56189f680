"""The decision on the contacts, judged: by how they were found, and by what this exercise's manual allows."""

from __future__ import annotations

from magview.practice.contacts import RIGHTLY, WRONGLY, Decision, allowed
from magview.practice.evidence import Evidence, Track
from magview.practice.judged import Judged
from magview.practice.state import Practice, view
from magview.spec.language import tr


def decided_rightly(found: Evidence, room: Practice, track: Track) -> Judged:
    """Judge what was decided of the contacts of the magneto in view.

    Right by `contacts.allowed`; nearly right where a pair that does no harm was renewed, which costs a pair and
    nothing else. Proved: looked at before the decision and, where hands were put to the faces, after it; a new pair
    is noted to be looked at after running in. Nothing decided and nothing done is leaving, not proved.
    """
    grade = view(found.first, room.side).seat.faces
    acts = [decision for _, decision in track.decided]
    decision: Decision = "renew" if "renew" in acts else "dress" if "dress" in acts else "leave"
    right = decision in allowed(room.exercise, grade)
    words = RIGHTLY if right else WRONGLY
    proved, how = _proved(track, decision)
    told = tr(words[grade, decision])
    near = not right and decision == "renew"
    return Judged(tr("Contacts: the right decision"), right, near, proved, f"{told[0].upper()}{told[1:]}; {how}.")


def _proved(track: Track, decision: Decision) -> tuple[bool, str]:
    if not track.decided:
        looked = bool(track.contacts)
        return False, tr("nothing was decided of them") if looked else tr("they were never looked at")
    first, last = track.decided[0][0], track.decided[-1][0]
    looks = [index for index, _ in track.contacts]
    if not any(index < first for index in looks):
        return False, tr("they were not looked at before the decision")
    if decision != "leave" and not any(index > last for index in looks):
        return False, tr("they were not looked at as they are now")
    renewed = [index for index, what in track.decided if what == "renew"]
    if renewed and not any(index > renewed[-1] for index in track.due):
        return False, tr("it was not noted that new contacts are looked at again after running in")
    return True, tr("they were looked at")
