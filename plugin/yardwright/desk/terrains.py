"""The heights of the ground, out of a raster layer of the project."""

from contextlib import contextmanager
from functools import partial

from ..model.errors import YardwrightError


def opener_of(layer):
    """A function that opens a raster layer of heights as an imagery.terrain.Terrain, which is to be closed;
    it may be called in any thread. Raises YardwrightError."""
    from ..guide.rendered import image_source
    from ..imagery.terrain import Terrain

    source = image_source(layer)
    return partial(Terrain, source.path, source.crs or None, source.open_options)


@contextmanager
def heights_in(project):
    """The topmost raster layer of heights of a project as a Terrain; None without one, or where it cannot be
    read: who asks for nothing but a slope beside other figures does without it."""
    from .dates import rasters_of_heights

    layers = rasters_of_heights(project)
    try:
        opened = opener_of(layers[0])() if layers else None
    except YardwrightError:
        opened = None
    if opened is None:
        yield None
        return
    with opened as terrain:
        yield terrain
