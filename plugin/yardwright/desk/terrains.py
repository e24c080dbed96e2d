"""The heights of the ground, out of a raster layer of the project."""

from functools import partial


def opener_of(layer):
    """A function that opens a raster layer of heights as an imagery.terrain.Terrain, which is to be closed;
    it may be called in any thread. Raises YardwrightError."""
    from ..guide.rendered import image_source
    from ..imagery.terrain import Terrain

    source = image_source(layer)
    return partial(Terrain, source.path, source.crs or None, source.open_options)
