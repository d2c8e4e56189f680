"""What the program does for itself: its folders, its log, reports of its faults, its place on the desktop."""
