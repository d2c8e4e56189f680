"""The scripted trainee at the real window."""

from __future__ import annotations

from tests.journeys.hands_on_window import WindowHands
from tests.practice.hands import stacks
from tests.practice.trainee import Trainee


class WindowTrainee(Trainee):
    """The scripted trainee's decisions, made by mouse and keys."""

    def __init__(self, window) -> None:
        self.hands = WindowHands(window)
        self.exercise = self.hands.exercise
        self.paper = self.exercise.unit
        self.act = self.hands.act
        self.goals = {g.goal for g in self.exercise.goals}
        self.readings = {g.reading for g in self.exercise.goals if g.reading}
        self.stacks = stacks(self.exercise.tray.blades)
        self.corrected = set()
