"""Reading job sheets, and finding the shipped one."""

from __future__ import annotations

from pathlib import Path

from magview.job.sheet import Job
from magview.spec.base import SpecError
from magview.spec.files import name_of, read_json, validate
from magview.spec.formats import names_file
from magview.spec.language import tr
from magview.spec.library import resources

_ENDING = "-job.json"


def read_job(path: Path) -> Job:
    """Read a ``magview-job/1`` file, its history included. Raises SpecError with one sentence for anything amiss."""
    return validate(Job, read_json(path), name_of(path))


def shipped_jobs() -> list[str]:
    """Short names of the shipped jobs."""
    return sorted(p.name.removesuffix(_ENDING) for p in (resources() / "jobs").glob(f"*{_ENDING}"))


def job_path(name: str) -> Path:
    """The file of a shipped job by its short name, or the path itself. Raises SpecError for neither."""
    if name in shipped_jobs():
        return resources() / "jobs" / f"{name}{_ENDING}"
    if not names_file(name):
        raise SpecError(
            tr(
                "“{name}” is neither a file nor one of the shipped jobs: {known}",
                name=name[:60],
                known=", ".join(shipped_jobs()),
            )
        )
    return Path(name)
