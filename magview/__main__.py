"""``python -m magview`` is the ``magview`` command."""

from magview.cli import main

raise SystemExit(main())
