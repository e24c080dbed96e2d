"""Long work in the background: in QGIS's list of tasks, the window alive meanwhile, and open to a cancel."""

import threading

from qgis.core import QgsApplication, QgsTask

from ..compat import silent_task
from ..model.errors import Cancelled

_WAIT_S = 60
_at_work = set()
"""What is at work: QGIS does not hold on to the Python half of a task."""


class Work(QgsTask):
    """``work(progress)`` in another thread; ``result``, or ``error``, or neither where it was cancelled.

    work: is given a function to be called with (done, total), which returns False once the work is to stop,
    and works on plain values only: nothing of the project, no layer, no widget. done: called with this on the
    main thread at the end. Where ``work`` raises Cancelled, it was cancelled.
    """

    def __init__(self, title, work, done):
        super().__init__(title, silent_task())
        self.result = self.error = None
        self._work, self._done = work, done
        self._ended = threading.Event()

    def begin(self):
        """Put it on QGIS's list of tasks; itself."""
        _at_work.add(self)
        QgsApplication.taskManager().addTask(self)
        return self

    def stop(self):
        """Stop it and wait until it has; ``done`` is not called any more."""
        self._done = None
        if self not in _at_work:
            return
        self.cancel()
        # Not QGIS's own waiting: that keeps Python to itself, and the work could never end.
        if self.status() == QgsTask.TaskStatus.Running:
            self._ended.wait(_WAIT_S)

    # What QGIS calls

    def run(self):
        try:
            self.result = self._work(self._tell)
            return True
        except Cancelled:
            return False
        except Exception as error:  # told on the main thread
            self.error = error
            return False
        finally:
            self._ended.set()

    def _tell(self, done, total):
        self.setProgress(100.0 * done / total if total else 0.0)
        return not self.isCanceled()

    def finished(self, _successful):
        _at_work.discard(self)
        done, self._done = self._done, None
        if done is not None:
            done(self)
