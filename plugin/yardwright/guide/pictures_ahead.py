"""The pictures of a book's pages, cut one page ahead of the one that is being painted."""

import os
import shutil
import tempfile
from concurrent.futures import ThreadPoolExecutor
from concurrent.futures import TimeoutError as NotYet

from ..model.errors import Cancelled

_LOOK_SECONDS = 0.05


class PicturesAhead:
    """Cuts pictures in a thread of its own, while pages are painted in the one that asks.

    cut: called with (page, folder, progress), gives what ``picture`` gives; as it runs in another thread, it
    must not touch what is QGIS's own. pages: those whose pictures will be asked for, in that order. progress:
    called with (None, None) while one waits; when it returns False, Cancelled is raised. Used in a ``with``:
    no more than two pictures are there at a time, and none afterwards.
    """

    def __init__(self, cut, pages, progress=None):
        self._cut, self._progress = cut, progress
        self._pages = list(pages)
        self._made = {}
        self._stopped = False

    def __enter__(self):
        self._folder = tempfile.mkdtemp(prefix="yardwright-")
        self._pool = ThreadPoolExecutor(1)
        return self

    def __exit__(self, *_):
        self._stopped = True
        for waiting in self._made.values():
            waiting.cancel()
        self._pool.shutdown()
        shutil.rmtree(self._folder, ignore_errors=True)

    def __contains__(self, page):
        return page in self._pages

    def picture(self, page):
        """What ``cut`` gives for a page, or raises; the next one's is begun."""
        at = self._pages.index(page)
        mine = self._begin(at)
        self._take_away(at - 1)
        while True:
            try:
                result = mine.result(_LOOK_SECONDS)
            except NotYet:
                if self._progress is not None and self._progress(None, None) is False:
                    raise Cancelled from None
                continue
            finally:
                if mine.done():
                    self._begin(at + 1)
            return result

    def _begin(self, at):
        if at < len(self._pages) and at not in self._made:
            folder = os.path.join(self._folder, str(at))
            os.mkdir(folder)
            self._made[at] = self._pool.submit(self._cut, self._pages[at], folder, self._going)
        return self._made.get(at)

    def _going(self, _done, _total):
        return not self._stopped

    def _take_away(self, at):
        shutil.rmtree(os.path.join(self._folder, str(at)), ignore_errors=True)
