"""Work on several blocks or dates at a time: numpy and scipy let other threads run while they reckon."""

import os
from concurrent.futures import ThreadPoolExecutor


def two_threads():
    """A pool of two threads, of one where there is but one core: each holds a block in memory."""
    return ThreadPoolExecutor(min(2, os.cpu_count() or 1))


def abreast(work, *arguments):
    """``[work(a, b, ...), ...]`` of lists of arguments, in their order, two at a time."""
    with two_threads() as pool:
        return list(pool.map(work, *arguments))
