"""The heights of the ground, out of a raster layer of the project."""

from contextlib import contextmanager
from functools import partial

from ..model.errors import YardwrightError
from .words import tr

_MOST_HOLES = 40


def opener_of(layer):
    """A function that opens a raster layer of heights as an imagery.terrain.Terrain, which is to be closed;
    it may be called in any thread. Raises YardwrightError."""
    from ..guide.rendered import image_source
    from ..imagery.terrain import Terrain

    source = image_source(layer)
    return partial(Terrain, source.path, source.crs or None, source.open_options)


def why_no_heights(project):
    """Why no slope can be told in a project; "" where it has a raster layer of heights."""
    from .dates import rasters_of_heights

    if rasters_of_heights(project):
        return ""
    return tr("There are no heights in this project: add a terrain model to it as a raster layer.")


@contextmanager
def heights_in(project):
    """The topmost raster layer of heights of a project as a Terrain; None without one, or where it cannot be
    read: who asks for nothing but a slope beside other figures does without it."""
    opened = _opened(project)
    if opened is None:
        yield None
        return
    with opened as terrain:
        yield terrain


def _opened(project):
    from .dates import rasters_of_heights

    layers = rasters_of_heights(project)
    try:
        return opener_of(layers[0])() if layers else None
    except YardwrightError:
        return None


class HeldHeights:
    """The same heights held open for one who asks at every move of the pointer, until ``let_go``."""

    def __init__(self, project):
        self.project = project
        self._terrain = None
        self._asked = False

    def let_go(self):
        """Close them; they are opened again when next asked for."""
        if self._terrain is not None:
            self._terrain.close()
        self._terrain, self._asked = None, False

    def slope_at(self, played, crs, point):
        """``(percent, azimuth)`` at a point of a hole's frame, None for each that is not known."""
        from ..measure.heights import slope_at

        if not self._asked:
            self._terrain, self._asked = _opened(self.project), True
        if self._terrain is None:
            return None, None
        try:
            return slope_at(played, self._terrain, crs, point)
        except YardwrightError:
            return None, None


class _Kept:
    """What the topmost heights tell of a hole, kept while its places and the heights are the same: to open a
    terrain takes longer than all the rest."""

    def __init__(self, project):
        self.project = project
        self._kept = {}

    def of(self, played, crs):
        """What is known of a PlayedHole. Raises YardwrightError where there are no heights."""
        from .dates import rasters_of_heights

        layers = rasters_of_heights(self.project)
        if not layers:
            raise YardwrightError(why_no_heights(self.project), "")
        top = layers[0]
        key = self._places(played), played.frame, top.id(), top.source()
        if key not in self._kept:
            with opener_of(top)() as terrain:
                found = self._found(played, terrain, crs)
            while len(self._kept) >= _MOST_HOLES:
                self._kept.pop(next(iter(self._kept)))
            self._kept[key] = found
        return self._kept[key]


class KeptSlopes(_Kept):
    """The SlopeGrids of greens."""

    def _places(self, played):
        return played.green.geometry.wkb

    def _found(self, played, terrain, crs):
        from ..measure.heights import slope_grid

        return slope_grid(terrain, played.green, played.frame, crs=crs)


class KeptHeights(_Kept):
    """The HoleHeights of holes."""

    def _places(self, played):
        import numpy as np

        green = played.green
        own = () if green is None else (green.approach_point, green.front, green.back)
        chains = (played.end, *own, *(tee.line.points for tee in played.tees))
        names = tuple((tee.tee_set, tee.length) for tee in played.tees)
        return names, b"".join(np.asarray(chain, dtype=float).tobytes() for chain in chains)

    def _found(self, played, terrain, crs):
        from ..measure.heights import hole_heights

        return hole_heights(played, terrain, crs)
