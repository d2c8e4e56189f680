"""Pages of the guide for the parts of the window, by the names of their classes."""

from __future__ import annotations

TOPICS = {
    # Pages as a whole, where the part in front has no page of its own.
    "BenchPage": "first-minutes",
    "StartPage": "first-minutes",
    "HomePage": "first-minutes",
    "PracticePage": "practice",
    "LessonPage": "practice#lessons",
    # The bench.
    "BreakerView": "pictures#breaker-end",
    "ContactView": "pictures#why-the-contacts-part",
    "DriveView": "pictures#drive-end",
    "CrankView": "pictures#crank-and-piston",
    "SettingPanel": "internal-timing",
    "TimingPanel": "engine-timing",
    "StopBox": "engine-timing#true-top-dead-centre-from-two-stop-readings",
    "LeadPanel": "switch-lead",
    "TrialsPanel": "trials",
    "UncertaintyPanel": "uncertainty",
    "WearPanel": "wear",
    "LiftDialog": "own-magneto#from-a-table-of-measured-lift",
    # The plots.
    "PlotPane": "plots",
    "LiftSheet": "plots#lift-and-gap",
    "LobeSheet": "plots#lobes",
    "WindowSheet": "plots#window",
    "CoilSheet": "plots#coil",
    "PullSheet": "plots#magnet",
    "CouplingSheet": "plots#coupling",
    "TrialsSheet": "plots#trials",
    "BudgetSheet": "plots#uncertainty",
    "WearSheet": "plots#wear",
    # Practice.
    "TaskPanel": "practice#the-task",
    "Tray": "practice#the-tray",
    "TaskAndNotebook": "practice#the-task",
    "PapersPanel": "practice#the-task",
    "WorkPanel": "practice#the-work",
    "NotebookPanel": "practice#the-notebook",
    "LessonReadings": "practice#lessons",
    "LessonTools": "practice#lessons",
    "LessonStrip": "practice#lessons",
    "HandsPanel": "practice#the-two-hands",
    "TriedPanel": "practice#the-tray",
    "DebriefView": "practice#the-debrief",
    "Choice": "practice",
    # The job sheet, files of one's own, the class.
    "JobPage": "job-sheet",
    "CardsPage": "job-sheet#limits-cards",
    "OwnPage": "own-magneto#field-by-field-guided",
    "ClassDesk": "instructor#the-pupils-side",
    "ClassMaker": "instructor#one-code-for-all",
    "GatherPage": "instructor#gather",
    "ExerciseEditor": "instructor#exercises-of-your-own",
    "PaperDialog": "instructor#on-paper",
    "ReportDialog": "troubleshooting#something-in-the-program-itself-goes-wrong",
}
"""From the class of a window, panel, picture or plot to ``page`` or ``page#anchor``."""
