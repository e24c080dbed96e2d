"""Work in the background: its result, its failure, its end when somebody stops it."""

import threading
import time

import pytest
from yardwright.desk import background
from yardwright.desk.background import Work
from yardwright.model.errors import Cancelled


@pytest.fixture
def ended():
    """What ``done`` was called with."""
    return []


def test_the_result_comes_back_to_the_main_thread(qgis_app, qtbot, ended):
    threads = []

    def work(progress):
        threads.append(threading.current_thread())
        assert progress(1, 2)
        return 7

    made = Work(
        "Seven", work, lambda one: ended.append((one.result, one.error, threading.current_thread()))
    ).begin()
    shares = []
    made.progressChanged.connect(shares.append)
    qtbot.waitUntil(lambda: bool(ended), timeout=20_000)
    assert ended == [(7, None, threading.main_thread())]
    assert threads[0] is not threading.main_thread() and not background._at_work


def test_a_failure_is_handed_over(qgis_app, qtbot, ended):
    def work(progress):
        raise KeyError("gone")

    Work("Fails", work, ended.append).begin()
    qtbot.waitUntil(lambda: bool(ended), timeout=20_000)
    assert isinstance(ended[0].error, KeyError) and ended[0].result is None


def until_stopped(began):
    def work(progress):
        began.set()
        while progress(0, 1):
            time.sleep(0.01)
        raise Cancelled

    return work


def test_a_cancel_gets_through(qgis_app, qtbot, ended):
    began = threading.Event()
    made = Work("Long", until_stopped(began), ended.append).begin()
    qtbot.waitUntil(began.is_set, timeout=20_000)
    made.cancel()
    qtbot.waitUntil(lambda: bool(ended), timeout=20_000)
    assert ended[0].result is None and ended[0].error is None


def test_stopped_it_has_ended_and_tells_nobody(qgis_app, qtbot, ended):
    began = threading.Event()
    made = Work("Long", until_stopped(began), ended.append).begin()
    qtbot.waitUntil(began.is_set, timeout=20_000)
    made.stop()
    assert made._ended.is_set()
    qtbot.waitUntil(lambda: not background._at_work, timeout=20_000)
    assert ended == []
    made.stop()
