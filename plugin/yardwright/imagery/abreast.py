"""Work on several dates at a time: numpy and scipy let other threads run while they reckon."""

import os
from concurrent.futures import ThreadPoolExecutor


def abreast(work, *arguments):
    """``[work(a, b, ...), ...]`` of lists of arguments, in their order, two at a time."""
    with ThreadPoolExecutor(min(2, os.cpu_count() or 1)) as pool:
        return list(pool.map(work, *arguments))
