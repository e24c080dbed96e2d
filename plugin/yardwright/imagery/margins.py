"""Margins made clear: on a picture's pixels, a subtle change of tone inside and outside drawn outlines."""

import numpy as np
from osgeo import gdal, ogr
from scipy.ndimage import distance_transform_edt
from scipy.spatial import cKDTree
from shapely.geometry import box

from ..model.geometry import coordinates, map_points

KINDS = ("green", "bunker", "tee", "apron")
"""What has a margin that a player must see; where two run side by side, the one named first counts."""

STRENGTH = 0.5
"""How strong unless asked otherwise, of 0 (nothing changes) to 1."""

_INSIDE_M, _OUTSIDE_M = 0.7, 0.45
_LEAST_PX = 1.6
_LIGHTER, _DARKER = 0.4, 0.55
_STEP_PX = 0.5


def with_margins(pixels, grid, outlines, strength=STRENGTH):
    """The picture with the outlines' margins made clear.

    pixels: (height, width, 4) of uint8, RGB and opacity, on ``grid``; it stays as it is. outlines: ``{kind:
    [shapely polygons]}`` of KINDS, in the grid's CRS; those of one kind do not overlap. strength: 0 to 1.

    Just inside a margin the tone is lifted, just outside it falls, most at the margin itself and fading
    within less than a metre (on coarse pictures: a few pixels); colours keep their hue. Margins do not add
    up: that of an apron which ends where its green begins is the green's.
    """
    made = pixels.copy()
    for part, near, lift in _tones(grid, outlines) if strength > 0 else ():
        lift = (min(strength, 1.0) * lift)[:, None]
        colours = made[part][:, :, :3]
        values = colours[near].astype(np.float32)
        room = 255.0 / np.maximum(values.max(axis=1, keepdims=True), 1.0)
        factor = np.where(lift > 0, np.minimum(1 + _LIGHTER * lift, room), 1 + _DARKER * lift)
        colours[near] = np.clip(np.rint(values * factor), 0, 255).astype(np.uint8)
    return made


def _tones(grid, outlines):
    """``(part, near, tone)`` of what of the picture lies near a margin: a part's slices, which of its pixels,
    and for each of those 1 just inside, -1 just outside, fading to 0."""
    metres = np.hypot(grid.geotransform[1], grid.geotransform[4])
    inside = max(_INSIDE_M / metres, _LEAST_PX)
    outside = max(_OUTSIDE_M / metres, _LEAST_PX)
    reach = int(np.ceil(2.2 * max(inside, outside)))
    spots, owners, held = [], [], []
    for kind in KINDS:
        shapes = _in_pixels(grid, outlines.get(kind, ()), reach)
        if shapes:
            found = np.concatenate([_spots(shape, grid, reach) for shape in shapes])
            found = _apart(found, spots, inside)
            spots.append(found)
            owners.append(np.full(len(found), len(held)))
            held.append(_burnt(grid, shapes))
    if not spots or not sum(map(len, spots)):
        return
    spots, owners = np.concatenate(spots), np.concatenate(owners)
    # Wider than the picture, for margins just outside it reach in.
    columns, rows = (np.floor(spots) + reach).astype(int).T
    nearest = np.full((grid.height + 2 * reach, grid.width + 2 * reach), -1, np.int32)
    nearest[rows, columns] = np.arange(len(spots))
    for tile in _tiles(grid):
        part = _about(nearest, tile, reach)
        if part is None:
            continue
        found = nearest[tuple(slice(axis.start, axis.stop + 2 * reach) for axis in part)]
        at = distance_transform_edt(found < 0, return_distances=False, return_indices=True)
        found = found[tuple(at[:, reach:-reach, reach:-reach])]
        y, x = (np.arange(axis.start, axis.stop) + 0.5 for axis in part)
        away = np.hypot(y[:, None] - spots[found, 1], x[None, :] - spots[found, 0])
        near = away <= reach
        owner, away = owners[found[near]], away[near]
        within = np.select([owner == k for k in range(len(held))], [burnt[part][near] for burnt in held])
        tone = np.where(within, np.exp(-((away / inside) ** 2)), -np.exp(-((away / outside) ** 2)))
        # A margin runs between pixels: half a pixel to either side it is neither in nor out.
        yield part, near, tone * np.clip(2 * away, 0, 1)


def _about(nearest, tile, reach):
    """The part of a tile that spots reach, as slices; None where none does. nearest: as wide as the picture
    and ``reach`` on all sides, negative where no spot is."""
    there = nearest[tuple(slice(axis.start, axis.stop + 2 * reach) for axis in tile)] >= 0
    part = []
    for axis, held in zip(tile, (there.any(axis=1), there.any(axis=0))):
        if not held.any():
            return None
        first, last = np.flatnonzero(held)[[0, -1]] + axis.start - reach
        part.append(slice(max(first - reach, axis.start), min(last + reach + 1, axis.stop)))
    return tuple(part)


def _apart(spots, others, least):
    """Those of the spots, (n, 2), that are at least so many pixels away from lists of others."""
    for known in others:
        if len(known) and len(spots):
            spots = spots[~np.isfinite(cKDTree(known).query(spots, distance_upper_bound=least)[0])]
    return spots


def _tiles(grid, side=256):
    """The picture in tiles, as (rows, columns) slices."""
    for row in range(0, grid.height, side):
        for column in range(0, grid.width, side):
            yield (
                slice(row, min(row + side, grid.height)),
                slice(column, min(column + side, grid.width)),
            )


def _in_pixels(grid, outlines, reach):
    """The outlines that come near the picture, in its pixels (column to the right, row downwards)."""
    view = box(-reach, -reach, grid.width + reach, grid.height + reach)
    shapes = map_points([shape for shape in outlines if not shape.is_empty], grid.to_pixels)
    return [shape for shape in shapes if shape.intersects(view)]


def _spots(shape, grid, reach):
    """Places along a shape's rings within the picture, at most half a pixel apart, (n, 2)."""
    found = []
    parts = getattr(shape, "geoms", [shape])
    for ring in (ring for part in parts for ring in (part.exterior, *part.interiors)):
        corners = coordinates(ring)
        sides = np.hypot(*np.diff(corners, axis=0).T)
        counts = np.maximum(np.ceil(sides / _STEP_PX).astype(int), 1)
        side = np.repeat(np.arange(len(sides)), counts)
        start = np.repeat(np.cumsum(counts) - counts, counts)
        share = ((np.arange(len(side)) - start) / counts[side])[:, None]
        found.append(corners[side] + (corners[side + 1] - corners[side]) * share)
    found = np.concatenate(found)
    size = np.array([grid.width, grid.height])
    return found[((found > -reach) & (found < size + reach)).all(axis=1)]


def _burnt(grid, shapes):
    """Which pixels have their middle inside one of the shapes; shapes in pixels."""
    raster = gdal.GetDriverByName("MEM").Create("", grid.width, grid.height, 1, gdal.GDT_Byte)
    # GDAL takes a raster without a place to count rows downwards from 0, as the shapes do.
    raster.SetGeoTransform((0, 1, 0, 0, 0, 1))
    source = ogr.GetDriverByName("Memory").CreateDataSource("")
    layer = source.CreateLayer("outlines", None, ogr.wkbUnknown)
    for shape in shapes:
        row = ogr.Feature(layer.GetLayerDefn())
        row.SetGeometryDirectly(ogr.CreateGeometryFromWkb(shape.wkb))
        layer.CreateFeature(row)
    gdal.RasterizeLayer(raster, [1], layer, burn_values=[1])
    return raster.ReadAsArray().astype(bool)
