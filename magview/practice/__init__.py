"""The practice room: exercises with hidden faults, instruments with their limits, attempts, marking, lessons."""
