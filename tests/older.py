"""Course files of older versions, made of new ones by taking away what came later."""

import sqlite3
from contextlib import closing

TABLES = {2: ("event_flight", "pin_decision"), 3: (), 4: ("field_note", "guide_page")}
"""The tables that came with a version."""

REGISTERS = ("gpkg_extensions", "gpkg_geometry_columns", "gpkg_ogr_contents", "gpkg_contents")
"""Where a GeoPackage names its tables."""

COLUMNS = {
    2: {
        "event": "begins ends margin_yd slope_pct apart_yd tolerance_yd wear_yd note",
        "event_round": "holes start",
    },
    3: {"image": "taken_utc moved"},
    4: {"event": "host rules_off"},
}
"""What a version added to tables of the one before."""


def make_older(path, version):
    """Turn a course file of today into one of an older version; rows of what is left stay."""
    with closing(sqlite3.connect(path)) as database, database:
        for later in sorted(TABLES, reverse=True):
            if later > version:
                _take_back(database, later)
        database.execute("UPDATE course_info SET schema_version = ?", (version,))


def _take_back(database, version):
    for table in TABLES[version]:
        # Dropping the index's table takes its shadow tables along.
        database.execute(f"DROP TABLE IF EXISTS rtree_{table}_geom")
        database.execute(f"DROP TABLE {table}")
        for register in REGISTERS:
            database.execute(f"DELETE FROM {register} WHERE table_name = ?", (table,))
        database.execute("DELETE FROM layer_styles WHERE f_table_name = ?", (table,))
    for table, columns in COLUMNS[version].items():
        for column in columns.split():
            database.execute(f"ALTER TABLE {table} DROP COLUMN {column}")
        database.execute("UPDATE layer_styles SET styleQML = 'an older one' WHERE f_table_name = ?", (table,))
