"""Rasters kept aside on the disk while a picture is made, so that memory is that of a block."""

import os
from dataclasses import dataclass

import numpy as np

from .grid import Grid


@dataclass(frozen=True)
class Block:
    """A rectangle of a grid's pixels: its first column and row, its width and height."""

    x: int
    y: int
    width: int
    height: int

    @property
    def slices(self):
        """``(rows, columns)`` of the block in an array of the whole grid."""
        return slice(self.y, self.y + self.height), slice(self.x, self.x + self.width)

    def wider(self, halo, width, height):
        """The block with a margin on each side, as far as a grid of that size goes."""
        x, y = max(self.x - halo, 0), max(self.y - halo, 0)
        right = min(self.x + self.width + halo, width)
        bottom = min(self.y + self.height + halo, height)
        return Block(x, y, right - x, bottom - y)

    def within(self, other):
        """``(rows, columns)`` of this block in an array of a wider one."""
        x, y = self.x - other.x, self.y - other.y
        return slice(y, y + self.height), slice(x, x + self.width)

    def grid(self, grid):
        """The Grid of the block's own pixels."""
        g = grid.geotransform
        left, top = grid.to_ground([(self.x, self.y)])[0].tolist()
        return Grid(self.width, self.height, (left, g[1], g[2], top, g[4], g[5]), grid.crs)


def blocks(width, height, across, down=None):
    """The Blocks of at most ``across`` x ``down`` pixels (square without the latter) that cover a grid, row
    by row."""
    down = down or across
    return [
        Block(x, y, min(across, width - x), min(down, height - y))
        for y in range(0, height, down)
        for x in range(0, width, across)
    ]


class Aside:
    """One raster of bytes on the disk, read and written in blocks; several threads may."""

    def __init__(self, path, height, width, bands):
        self._path, self._shape = path, (height, width, bands)
        with open(path, "wb") as file:
            file.truncate(max(height * width * bands, 1))

    def read(self, block):
        """(rows, columns, bands) uint8 of a Block."""
        return np.array(self._open("r")[block.slices])

    def write(self, block, values):
        """Put (rows, columns, bands) uint8 in the place of a Block."""
        self._open("r+")[block.slices] = values

    def remove(self):
        """Take the raster off the disk."""
        os.remove(self._path)

    def _open(self, mode):
        # Opened anew each time: what stays mapped would count as memory of the process.
        return np.memmap(self._path, np.uint8, mode, shape=self._shape)
