"""Result tables written as CSV, and as XLSX and GeoPackage when asked."""

import csv
import math
import os
import re
import unicodedata

from ..measure.rows import columns
from ..measure.units import to_square_unit, to_unit
from ..model.errors import YardwrightError
from ..model.words import say
from .cells import guarded
from .files import written_beside

_DECIMALS = {"distance": 2, "area": 2, "metres": 2, "azimuth": 2, "angle": 2, "percent": 1, "coordinate": 3}
_RESERVED = re.compile(r"(con|prn|aux|nul|com\d|lpt\d)(\..*)?", re.IGNORECASE)


def write_tables(folder, tables, unit, forms=("csv",)):
    """Write tables into ``folder`` (made if missing); the paths written, in order.

    tables: ``{name: (row type of measure.rows, rows)}``; a file ``name.csv`` (``.xlsx``, ``.gpkg``) each.
    unit: ``yd`` or ``m``.  forms: any of ``csv``, ``xlsx``, ``gpkg``.
    A file is replaced as a whole or not at all. Raises YardwrightError.
    """
    unknown = [form for form in forms if form not in _WRITERS]
    if unknown:
        raise YardwrightError(
            say("Tables cannot be written as “{form}”.", form=unknown[0]),
            say("Take one of {forms}.", forms=", ".join(_WRITERS)),
        )
    try:
        os.makedirs(folder, exist_ok=True)
    except OSError as error:
        raise YardwrightError(
            say("The folder “{folder}” cannot be made ({reason}).", folder=folder, reason=error.strerror),
            say("Choose another folder."),
        ) from error
    paths = []
    for form in dict.fromkeys(forms):
        for name, (row_type, rows) in tables.items():
            name = safe_file_name(name)
            path = os.path.join(folder, f"{name}.{form}")
            with written_beside(path) as draft:
                _WRITERS[form](draft, name, columns(row_type, unit), _values(row_type, rows, unit))
            paths.append(path)
    return paths


def safe_file_name(text):
    """``text`` as the name of a file in the folder it is meant for, on any system; never empty.

    >>> [safe_file_name(text) for text in ("../../etc/passwd", "Hole 7: green", "con", "", "Ñandú")]
    ['etc_passwd', 'Hole 7_ green', 'con_', 'unnamed', 'Ñandú']
    """
    text = unicodedata.normalize("NFC", str(text))
    text = "".join(
        "_" if character in '<>:"/\\|?*' or not character.isprintable() else character for character in text
    )
    text = text.strip(" ._")
    while len(text.encode("utf-8")) > 120:
        text = text[:-1]
    text = text.rstrip(" .")
    if _RESERVED.fullmatch(text):
        text = f"{text}_" if "." not in text else text.replace(".", "_", 1)
        text = text if not _RESERVED.fullmatch(text) else f"_{text}"
    return text or "unnamed"


def _values(row_type, rows, unit):
    """The rows as lists of numbers (rounded), texts (guarded) and None."""
    kinds = [(name, holds) for name, _, holds in columns(row_type, unit)]
    for row in rows:
        yield [_value(getattr(row, name), holds, unit) for name, holds in kinds]


def _value(value, holds, unit):
    if value is None:
        return None
    if holds == "text":
        return guarded(str(value))
    if not math.isfinite(value):
        return None
    if holds == "count":
        return int(value)
    if holds == "distance":
        value = to_unit(value, unit)
    elif holds == "area":
        value = to_square_unit(value, unit)
    value = round(float(value), _DECIMALS[holds])
    if holds == "azimuth":
        value %= 360.0  # 359.999 is 0.00, not 360.00
    return value + 0.0  # -0.0 becomes 0.0


def _write_csv(path, name, table_columns, rows):
    decimals = [_DECIMALS.get(holds) for _, _, holds in table_columns]
    with open(path, "w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow([heading for _, heading, _ in table_columns])
        for row in rows:
            writer.writerow(
                value if value is None or places is None else f"{value:.{places}f}"
                for value, places in zip(row, decimals)
            )


def _write_xlsx(path, name, table_columns, rows):
    _write_with_gdal("XLSX", [], [], path, name, table_columns, rows)


def _write_geopackage(path, name, table_columns, rows):
    _write_with_gdal("GPKG", ["VERSION=1.3"], ["FID=fid"], path, name, table_columns, rows)


_WRITERS = {"csv": _write_csv, "xlsx": _write_xlsx, "gpkg": _write_geopackage}


def _write_with_gdal(driver_name, file_options, layer_options, path, name, table_columns, rows):
    """One table without geometry in one file of a GDAL vector driver."""
    from osgeo import gdal, ogr

    driver = gdal.GetDriverByName(driver_name)
    if driver is None:
        raise YardwrightError(
            say("This computer's GDAL cannot write {form}.", form=driver_name),
            say("Ask for the tables as csv instead."),
        )
    types = {"text": ogr.OFTString, "count": ogr.OFTInteger64}
    gdal.PushErrorHandler("CPLQuietErrorHandler")
    dataset = layer = None
    try:
        dataset = driver.Create(path, 0, 0, 0, gdal.GDT_Unknown, file_options)
        layer = dataset and dataset.CreateLayer(name, None, ogr.wkbNone, layer_options)
        failed = layer is None
        if layer is not None:
            dataset.StartTransaction()
            for _, heading, holds in table_columns:
                layer.CreateField(ogr.FieldDefn(heading, types.get(holds, ogr.OFTReal)))
            for row in rows:
                feature = ogr.Feature(layer.GetLayerDefn())
                for place, value in enumerate(row):
                    if value is not None:
                        feature.SetField(place, value)
                failed |= layer.CreateFeature(feature) != 0
            dataset.CommitTransaction()
    except RuntimeError as error:
        raise YardwrightError(
            say("The table “{name}” cannot be written ({reason}).", name=name, reason=error),
            say("Check the folder and the disk."),
        ) from error
    finally:
        layer = dataset = None  # closes the file
        gdal.PopErrorHandler()
    if failed or not os.path.exists(path):
        raise YardwrightError(
            say("The table “{name}” cannot be written as {form}.", name=name, form=driver_name),
            say("Check the folder and the disk."),
        )
