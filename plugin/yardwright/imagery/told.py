"""How far work on the pixels is, told to whoever asked for it, and that one's word to stop."""

from ..model.errors import Cancelled


class Told:
    """Tells the caller how far the work is and remembers that it was cancelled."""

    def __init__(self, tell):
        self._tell = tell
        self.cancelled = False

    def __call__(self, share):
        if self._tell is not None and self._tell(share, 1.0) is False:
            self.cancelled = True
        return 0 if self.cancelled else 1

    def count(self, done, total):
        """The same for work that counts what it has done: whether it is to go on."""
        return self(done / total if total else 0.0) == 1

    def check(self):
        if self.cancelled:
            raise Cancelled

    def part(self, first, last):
        """A GDAL callback for the part of the work from ``first`` to ``last`` (0 to 1)."""

        def callback(share, _message, _data):
            return self(first + (last - first) * share)

        callback.told = self
        return callback

    def narrowed(self, first, last):
        """A Told whose whole is that part of this one's work."""
        return Told(lambda share, _total: self(first + (last - first) * share) == 1)
