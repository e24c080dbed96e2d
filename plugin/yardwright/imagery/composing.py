"""One clean picture of several dates, composed block by block.

The base stays wherever it shows the ground. What it hides is taken from the date most like its surroundings
that shows it; what all dates shade is lightened in place, small things that no date goes without are filled
from close by, and what neither can be is left and listed. Pictures lie aside on the disk meanwhile: memory is
that of a block, whatever the size of the images and of the composite.
"""

import os
import shutil
import tempfile
from dataclasses import dataclass

import numpy as np
from scipy.ndimage import find_objects, label

from ..model.errors import YardwrightError
from ..model.words import say
from .abreast import two_threads
from .aside import Aside, Block, blocks
from .blending import averaged, stepped, summed
from .burning import burnt
from .choosing import Tally, cell_size, choose
from .composite_file import write_composite
from .filling import patch_of, plain
from .grid import Grid, grid_crs
from .hand_masks import SEEN_BY_HAND
from .hiding import CLOUD, CROWN, EMPTY, HALO_M, MOVER, SHADE, hidden, learn_looks, standing
from .laying import HIDDEN, INVENTED, LIGHTENED, STANDS, Rules, lay
from .lightening import TEXTURE_CELL, grain_of, texture_of
from .patches import grown
from .recipe import PLAIN
from .sun import sun_on_grid
from .told import Told

_LOOKS_SIDE = 800  # pixels of the coarse pictures that thresholds and matches are learnt from
_TILE = 384
_RING_M = 1.6
_COPY_M = 9.0
_SOFT_M = 0.6
_LEAST_SPOT_M2 = 0.2
_PIECES, _PIECE = 4, 160  # a side; pixels a side
_LEAST_TEXTURES = 30
_GAINS = (1.0, 1.6)


@dataclass(frozen=True)
class Spot:
    """Something that could not be uncovered: where (in the grid's CRS), its size, and why."""

    x: float
    y: float
    area_m2: float
    why: str


@dataclass(frozen=True)
class Composed:
    """What ``compose`` wrote. shares: the part of the picture's ground from each date, by id, and
    ``lightened`` and ``invented``, 0 to 1. left: the Spots still hidden. remarks: what had to be doubted."""

    path: str
    source_path: str
    shares: dict
    left: tuple = ()
    remarks: tuple = ()


def source_path_of(path):
    """Where the source raster of a composite lies.

    >>> source_path_of("composites/hole_07.tif")
    'composites/hole_07_source.tif'
    """
    stem, ending = os.path.splitext(path)
    return f"{stem}_source{ending}"


def compose(dates, grid, ground_of, keep_of, patches, by_hand, path, told=None, options=PLAIN):
    """Compose the dates, the base first, over a grid and write the picture to ``path``; a Composed.

    ground_of: called with a grid, gives a ``hiding.Ground`` or None. keep_of: called with a grid, gives
    (h, w) bool, where nothing may be invented, or None. patches: ``[(id, WKB of a polygon)]``, the date a
    person wants there. by_hand: called with a date's id and a grid, gives (h, w) uint8, the bits of
    ``hiding`` or SEEN_BY_HAND where a person corrected what hides, 0 elsewhere; or None. told: a Told.

    A date that cannot be read, or shows nothing here, is remarked on and left out. Raises YardwrightError
    where the base cannot be used or the picture cannot be written, Cancelled; then nothing is written.
    """
    told = told or Told(None)
    folder = os.path.dirname(os.path.abspath(path))
    try:
        aside = tempfile.mkdtemp(prefix=".composite-", dir=folder)
    except OSError as error:
        raise YardwrightError(
            say("“{path}” cannot be written ({reason}).", path=path, reason=error.strerror),
            say("Choose a folder that exists and that you may write to."),
        ) from error
    try:
        making = _Making(grid, aside, told, options)
        making.read(dates)
        making.find_hidden(ground_of, by_hand)
        making.decide()
        making.lay(patches)
        making.fill(keep_of)
        return making.write(path, [date.id for date in dates])
    finally:
        shutil.rmtree(aside, ignore_errors=True)


class _Making:
    """A composite being made: what lies aside, and what has been found out."""

    def __init__(self, grid, folder, told, options):
        self.grid, self.folder, self.told, self.options = grid, folder, told, options
        self.gsd = _metres_per_pixel(grid)
        self.cell = cell_size(grid.width, grid.height, self.gsd)
        self.ring = int(np.clip(round(_RING_M / self.gsd), 4, 24))
        self.edge = int(np.clip(round(_SOFT_M / self.gsd), 1, 8))
        side = max(options.block // 64, 1) * 64
        self.blocks = blocks(grid.width, grid.height, 2 * side, side)
        self.halo = int(np.ceil(HALO_M / self.gsd))
        self.remarks = []

    # --- reading

    def read(self, dates):
        """Put the dates' pictures aside, and coarse ones of them in memory."""
        self.dates, self.pictures, self.coarse = [], [], []
        for k, date in enumerate(dates):
            told = self.told.narrowed(0.3 * k / len(dates), 0.3 * (k + 1) / len(dates))
            try:
                picture, coarse = self._read_one(date, f"date_{k}", told)
            except YardwrightError as error:
                if k == 0:
                    raise
                self.remarks.append(say("{date} could not be used: {what}", date=date.id, what=error.what))
                continue
            if not coarse[..., 3].any():
                if k == 0:
                    raise YardwrightError(
                        say("The base {date} shows nothing of this ground.", date=date.id),
                        say("Choose another date as base."),
                    )
                self.remarks.append(say("{date} shows nothing of this ground.", date=date.id))
                picture.remove()
                continue
            self.dates.append(date)
            self.pictures.append(picture)
            self.coarse.append(coarse)
        self.numbers = [dates.index(date) + 1 for date in self.dates]

    def _read_one(self, date, name, told):
        """``(Aside, coarse picture (h, w, 4) uint8)`` of a date."""
        high, wide = self.grid.height, self.grid.width
        picture = self._aside(name, 4)
        step = -(-max(high, wide) // _LOOKS_SIDE)
        coarse = np.zeros((-(-high // step), -(-wide // step), 4), np.uint8)
        # Bands of whole rows, whose number is one of whole steps.
        rows = max(step, (self.options.block**2 * 2 // wide) // step * step)
        with date.open() as image:
            self.remarks += [say("{date}: {remark}", date=date.id, remark=remark) for remark in image.remarks]
            for block in blocks(wide, high, wide, rows):
                pixels = image.pixels(block.grid(self.grid), told.narrowed(block.y / high, 1.0))
                told.check()
                picture.write(block, pixels)
                coarse[block.y // step : -(-(block.y + block.height) // step)] = averaged(pixels, step)
        return picture, coarse

    def _aside(self, name, bands):
        return Aside(os.path.join(self.folder, name), self.grid.height, self.grid.width, bands)

    # --- what hides

    def find_hidden(self, ground_of, by_hand):
        """Find what hides on each date, block by block, and count what the cells show."""
        middle = self.grid.corners().mean(axis=0)
        suns = tuple(sun_on_grid(date, self.grid.crs, middle) for date in self.dates)
        coarse_grid = _coarse_grid(self.grid, self.coarse[0].shape)
        ground = ground_of(coarse_grid) if ground_of is not None else None
        step = max(self.grid.width / coarse_grid.width, self.grid.height / coarse_grid.height)
        self.looks = learn_looks(self.coarse, self.gsd * step, suns, ground)
        self.black = _darkest(self.coarse[0])
        self.coarse_step = -(-max(self.grid.height, self.grid.width) // _LOOKS_SIDE)
        self.stands = standing(self.coarse, self.gsd * step, self.looks, ground)
        self.masks = [self._aside(f"mask_{k}", 1) for k in range(len(self.dates))]
        self.tally = Tally(self.grid.width, self.grid.height, self.cell, len(self.dates) - 1)

        def find(block):
            wide = block.wider(self.halo, self.grid.width, self.grid.height)
            grid = wide.grid(self.grid)
            pictures = [picture.read(wide) for picture in self.pictures]
            part = ground_of(grid) if ground_of is not None else None
            inner = block.within(wide)
            masks = hidden(pictures, self.gsd, self.looks, part, inner)
            pictures = [picture[inner] for picture in pictures]
            for k, date in enumerate(self.dates):
                if part is None or part.open is None:
                    masks[k] = masks[k] & ~np.uint8(CROWN)
                if k:
                    # The soft edge of another date's shade would come along as a dark seam.
                    masks[k] = masks[k] | SHADE * grown(masks[k] & SHADE, self.edge).astype(np.uint8)
                own = by_hand(date.id, block.grid(self.grid)) if by_hand is not None else None
                if own is not None:
                    masks[k] = np.where(own > 0, own & ~np.uint8(SEEN_BY_HAND), masks[k])
                masks[k] = np.where(pictures[k][..., 3] > 127, masks[k] & ~np.uint8(EMPTY), EMPTY)
            self.tally.add(block, pictures, masks)
            masks[0] = masks[0] | STANDS * self._standing(block, part, inner)
            for aside, mask in zip(self.masks, masks):
                aside.write(block, mask[..., None])

        self._each(find, self.blocks, 0.3, 0.6)

    def _standing(self, block, ground, inner):
        """(h, w) uint8, 1 where crowns are drawn; where none are, where they were found."""
        if ground is not None and ground.woods is not None:
            return ground.woods[inner].astype(np.uint8)
        step = self.coarse_step
        return stepped(self.stands, block, step).astype(np.uint8)

    def decide(self):
        """Choose for the whole extent."""
        self.matches = tuple(self.looks.matches[1:])
        high, wide = self.stands.shape
        rows = (np.arange(self.tally.shape[0]) + 0.5) * high / self.tally.shape[0]
        columns = (np.arange(self.tally.shape[1]) + 0.5) * wide / self.tally.shape[1]
        near = grown(self.stands, int(np.ceil(high / self.tally.shape[0])))
        plain = ~near[np.ix_(rows.astype(int), columns.astype(int))]
        noise, gains = self._textures()
        self.choices = choose(self.tally, self.matches, gains, self.black, plain)
        self.rules = Rules(self.choices, self.matches, noise, self.ring)

    def _textures(self):
        """``(grain of the base, (how much stronger the texture of each other date has to be, ...))``, from
        small pieces spread over the extent."""
        grains, own, others = [], [], [[] for _ in self.matches]
        for piece in _pieces(self.grid.width, self.grid.height):
            base = self.pictures[0].read(piece)
            seen = self.masks[0].read(piece)[..., 0] == 0
            grains.append(grain_of(base))
            own.append(texture_of(base[..., :3].astype(np.float32)))
            for k, match in enumerate(self.matches):
                both = seen & (self.masks[k + 1].read(piece)[..., 0] == 0)
                texture = texture_of(match.apply(self.pictures[k + 1].read(piece)))
                clear = summed(both, TEXTURE_CELL)[: texture.shape[0], : texture.shape[1]] == TEXTURE_CELL**2
                others[k].append(np.stack([own[-1][clear], texture[clear]]))
        gains = []
        for pairs in map(np.hstack, others):
            known = pairs.shape[1] >= _LEAST_TEXTURES
            ours, theirs = np.median(pairs, axis=1) if known else (1.0, 1.0)
            gains.append(float(np.clip(0.8 * ours / max(theirs, 0.1), *_GAINS)))
        return float(np.median(grains)), tuple(gains)

    # --- composing

    def lay(self, patches):
        """Compose the picture, and keep where the base stays hidden."""
        self.made, self.source = self._aside("made", 4), self._aside("source", 2)
        numbers = {date.id: k + 1 for k, date in enumerate(self.dates)}
        asked = [(numbers[who], wkb) for who, wkb in patches if who in numbers]
        numbers_of = np.array([0, *self.numbers], np.uint8)
        size = self.cell
        self.left = np.zeros(self.tally.shape, np.float32)
        self.why = np.zeros(self.tally.shape, np.uint8)

        def compose_tile(tile):
            wide = tile.wider(self.rules.halo, self.grid.width, self.grid.height)
            masks = [mask.read(wide)[..., 0] for mask in self.masks]
            nothing = not (masks[0] & ~np.uint8(STANDS)).any()
            wanted = burnt(asked, wide.grid(self.grid))
            if nothing and not wanted.any():
                self.made.write(tile, self.pictures[0].read(tile))
                own = np.zeros((tile.height, tile.width, 2), np.uint8)
                own[..., 0] = numbers_of[1]
                self.source.write(tile, own)
                return
            pictures = [picture.read(wide) for picture in self.pictures]
            picture, source = lay(pictures, masks, wanted, wide, self.rules)
            inner = tile.within(wide)
            source = source[inner].copy()
            source[..., 0] = numbers_of[source[..., 0]]
            self.made.write(tile, picture[inner])
            self.source.write(tile, source)
            part = (
                slice(tile.y // size, -(-(tile.y + tile.height) // size)),
                slice(tile.x // size, -(-(tile.x + tile.width) // size)),
            )
            still = source[..., 1] == HIDDEN
            self.left[part] = summed(still, size)
            self.why[part] = _bits(np.where(still, masks[0][inner], 0), size)

        side = max(min(_TILE, self.options.block) // 64, 1) * 64
        self._each(compose_tile, blocks(self.grid.width, self.grid.height, side), 0.6, 0.85)

    def fill(self, keep_of):
        """Fill small things from their surroundings where that may be done; list what stays hidden."""
        self.spots = []
        named, _ = label(self.left > 0, np.ones((3, 3)))
        reach = int(np.ceil(_COPY_M / self.gsd))
        for number, box in enumerate(find_objects(named), start=1):
            self._stop_if_cancelled()
            cells = named[box] == number
            area = float(self.left[box][cells].sum()) * self.gsd**2
            why = int(np.bitwise_or.reduce(self.why[box][cells]))
            reason = _reason(why)
            if why & MOVER and not why & (CLOUD | EMPTY):
                reason = self._fill_one(box, cells, reach, area, keep_of)
            if reason and area >= _LEAST_SPOT_M2:
                rows, columns = np.nonzero(cells)
                at = [(box[1].start + columns.mean() + 0.5, box[0].start + rows.mean() + 0.5)]
                ((x, y),) = self.grid.to_ground(np.multiply(at, self.cell)).tolist()
                self.spots.append(Spot(x, y, round(area, 2), reason))

    def _fill_one(self, box, cells, reach, area, keep_of):
        """Fill one thing; "" when that was done, else why not."""
        if area > self.options.largest_m2:
            return say("too large to be filled from its surroundings")
        size = self.cell
        y, x = box[0].start * size, box[1].start * size
        bottom, right = min(box[0].stop * size, self.grid.height), min(box[1].stop * size, self.grid.width)
        thing = Block(x, y, right - x, bottom - y)
        wide = thing.wider(reach, self.grid.width, self.grid.height)
        picture, source = self.made.read(wide), self.source.read(wide)
        own = np.repeat(np.repeat(cells, size, 0), size, 1)[: thing.height, : thing.width]
        gap = np.zeros(picture.shape[:2], bool)
        gap[thing.within(wide)] = own
        gap &= source[..., 1] == HIDDEN
        near = int(np.ceil(self.options.keep_m / self.gsd))
        kept = keep_of(wide.grid(self.grid)) if keep_of is not None else None
        if kept is not None and (kept & gap).any():
            return say("a hazard, the margin of a green or a tee is near")
        # Beside what hides lies its own soft edge.
        usable = ~grown((source[..., 1] == HIDDEN) | (source[..., 1] == INVENTED), 2) & (
            picture[..., 3] > 127
        )
        if not plain(picture[..., :3], gap, usable, near):
            return say("a hazard or a margin may be there")
        patch = patch_of(picture[..., :3], gap, usable, reach)
        if patch is None:
            return say("nothing like its surroundings is near")
        picture[..., :3] = np.clip(np.rint(patch.picture), 0, 255)
        source[..., 1][patch.share > 0.5] = INVENTED
        self.made.write(wide, picture)
        self.source.write(wide, source)
        return ""

    # --- the end

    def write(self, path, ids):
        """Write the picture and the source raster; the Composed."""
        self._stop_if_cancelled()
        counts = np.zeros((256, 4))
        for block in self.blocks:
            source = self.source.read(block).reshape(-1, 2)
            pairs = np.bincount(source[:, 0].astype(int) * 4 + source[:, 1], minlength=1024)
            counts += pairs.reshape(256, 4)
        shown = max(counts[1:].sum(), 1)
        shares = {
            date.id: float(counts[number].sum() - counts[number, INVENTED] - counts[number, LIGHTENED])
            / shown
            for number, date in zip(self.numbers, self.dates)
        }
        shares["lightened"] = float(counts[1:, LIGHTENED].sum()) / shown
        shares["invented"] = float(counts[1:, INVENTED].sum()) / shown
        used = [date for date in self.dates if shares[date.id] > 0]
        source_path = source_path_of(path)
        write_composite(
            self.made, self.source, self.grid, path, source_path, ids, used, self.folder,
            self.told.narrowed(0.88, 1.0),
        )  # fmt: skip
        return Composed(path, source_path, shares, tuple(self.spots), tuple(dict.fromkeys(self.remarks)))

    def _each(self, work, parts, first, last):
        """Do the work on each part, two at a time; progress goes from ``first`` to ``last``."""
        with two_threads() as pool:
            waiting = [pool.submit(work, part) for part in parts]
            try:
                for done, one in enumerate(waiting, start=1):
                    one.result()
                    self.told(first + (last - first) * done / len(parts))
                    self.told.check()
            except BaseException:
                for one in waiting:
                    one.cancel()
                raise

    def _stop_if_cancelled(self):
        self.told(0.86)
        self.told.check()


def _reason(why):
    """Why something stays hidden, by what hides it."""
    if why & EMPTY:
        return say("no date shows anything here")
    if why & CLOUD:
        return say("a cloud, and no other date shows the ground")
    if why & CROWN:
        return say("a crown hangs over on all dates")
    return say("shade that could not be lightened")


def _metres_per_pixel(grid):
    g = grid.geotransform
    crs = grid_crs(grid)
    unit = crs.GetLinearUnits() if crs.IsProjected() else 1.0
    return float(np.sqrt(abs(g[1] * g[5] - g[2] * g[4]))) * unit


def _pieces(width, height):
    """Small Blocks spread over a grid, the same for any way of working through it."""
    across, down = min(_PIECE, width), min(_PIECE, height)
    return [
        Block((width - across) * i // (_PIECES - 1), (height - down) * j // (_PIECES - 1), across, down)
        for j in range(_PIECES)
        for i in range(_PIECES)
    ]


def _coarse_grid(grid, shape):
    """The Grid of a coarse picture of a grid."""
    step = -(-max(grid.height, grid.width) // _LOOKS_SIDE)
    g = grid.geotransform
    scaled = (g[0], g[1] * step, g[2] * step, g[3], g[4] * step, g[5] * step)
    return Grid(shape[1], shape[0], scaled, grid.crs)


def _darkest(picture):
    """(3,) what the darkest of a picture's ground sends: haze."""
    values = picture[picture[..., 3] > 127][:, :3]
    return np.quantile(values, 0.001, axis=0).astype(np.float32) * 0.5


def _bits(values, size):
    """All bits set in each cell."""
    high, wide = values.shape
    edge = ((0, -high % size), (0, -wide % size))
    padded = np.pad(values, edge).astype(np.uint8)
    rows, columns = padded.shape
    by_cell = padded.reshape(rows // size, size, columns // size, size)
    return np.bitwise_or.reduce(np.bitwise_or.reduce(by_cell, axis=3), axis=1)
