"""What was packed in a PDF, unpacked: as far as tables and drawings are packed, not pictures."""

import zlib

_MOST = 1 << 26


class TooLarge(Exception):
    """What comes out is more than any page needs."""


def inflated(data):
    """Data that zlib has packed. Raises ValueError for what it has not, TooLarge."""
    unpacker = zlib.decompressobj()
    try:
        plain = unpacker.decompress(data, _MOST)
    except zlib.error as error:
        raise ValueError(str(error)) from error
    if unpacker.unconsumed_tail:
        raise TooLarge
    return plain


def foretold(data, kind, columns):
    """Rows of bytes of which only what differs from their neighbours was kept (the filters of PNG, by its
    specification): each begins with the number of its filter. Raises ValueError. kind: 1 for untouched."""
    if kind == 1:
        return data
    if columns < 1:
        raise ValueError("rows without columns")
    rows, above = [], bytes(min(columns, len(data)))
    for start in range(0, len(data) - columns, columns + 1):
        above = _row(data[start], data[start + 1 : start + 1 + columns], above)
        rows.append(above)
    return b"".join(rows)


def _row(kind, row, above):
    if kind == 0:
        return row
    if kind == 2:
        return bytes((one + up) & 255 for one, up in zip(row, above))
    if kind not in (1, 3, 4):
        raise ValueError("no such filter")
    made, left, corner = bytearray(), 0, 0
    for one, up in zip(row, above):
        told = left if kind == 1 else (left + up) // 2 if kind == 3 else _nearest(left, up, corner)
        left, corner = (one + told) & 255, up
        made.append(left)
    return bytes(made)


def _nearest(left, up, corner):
    guess = left + up - corner
    return min((left, up, corner), key=lambda one: abs(guess - one))
