"""How fine the deepest tiles of a web layer are."""

from urllib.parse import parse_qs

_WORLD_M = 156543.03392804097
"""What a pixel of zoom level 0 covers in EPSG:3857, its tiles 256 pixels wide."""


def deepest_pixel(source, resolutions=()):
    """The side of a pixel of a web layer's deepest zoom level, in the units of its CRS; None where unknown.

    source: as QGIS has it. resolutions: those that its server names (``nativeResolutions``), for tiles with
    a plan of their own. Tiles by {z}, {x} and {y} are as deep as the source says; QGIS only supposes it
    where it says nothing.

    >>> deepest_pixel("type=xyz&url=https://tiles.example/{z}/{x}/{y}.png&zmax=20")
    0.14929107086948487
    """
    given = {name: values[0] for name, values in parse_qs(str(source)).items()}
    if given.get("type") == "xyz":
        depth = given.get("zmax", "")
        if not depth.isdigit() or given.get("crs", "EPSG:3857") != "EPSG:3857":
            return None
        # Tiles for fine screens hold four times as many pixels.
        return _WORLD_M / 2 ** int(depth) / (2 if given.get("tilePixelRatio") == "2" else 1)
    return min((one for one in resolutions if one > 0), default=None)
