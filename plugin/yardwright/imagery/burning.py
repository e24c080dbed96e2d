"""Shapes burnt into the pixels of a grid."""

import numpy as np
from osgeo import gdal, ogr

from .grid import grid_crs


def burnt(shapes, grid):
    """(h, w) uint8: the number of the shape over each pixel's middle, the last where several lie, 0 for none.

    shapes: ``[(number, WKB in the grid's CRS), ...]``, numbers from 1 to 255.
    """
    if not shapes:
        return np.zeros((grid.height, grid.width), np.uint8)
    crs = grid_crs(grid)
    raster = gdal.GetDriverByName("MEM").Create("", grid.width, grid.height, 1)
    raster.SetGeoTransform(grid.geotransform)
    raster.SetSpatialRef(crs)
    drawn = ogr.GetDriverByName("Memory").CreateDataSource("")
    layer = drawn.CreateLayer("shapes", crs, ogr.wkbUnknown)
    layer.CreateField(ogr.FieldDefn("number", ogr.OFTInteger))
    for number, wkb in shapes:
        row = ogr.Feature(layer.GetLayerDefn())
        row.SetGeometryDirectly(ogr.CreateGeometryFromWkb(wkb))
        row.SetField("number", int(number))
        layer.CreateFeature(row)
    gdal.RasterizeLayer(raster, [1], layer, options=["ATTRIBUTE=number"])
    return raster.ReadAsArray()
