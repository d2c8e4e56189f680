"""A sheet on the disk, open for writing."""

from __future__ import annotations

import pytest

from magview.job.sheet import new_job
from magview.job.store import JobStore


@pytest.fixture
def path(tmp_path):
    return tmp_path / "a-job.json"


@pytest.fixture
def store(path):
    opened = JobStore.create(path, new_job("a"))
    yield opened
    opened.close()
