"""Signals that a window listens to as long as it is there."""


class Listening:
    """Connects signals, ``(signal, slot)`` each, until ``stop``."""

    def __init__(self, *pairs):
        self._connections = [(signal, signal.connect(slot)) for signal, slot in pairs]

    def stop(self):
        """Listen to nothing any more."""
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)
