"""Course files of older versions, made of new ones by taking away what came later."""

import sqlite3
from contextlib import closing

COLUMNS = {
    "event": "begins ends margin_yd slope_pct apart_yd tolerance_yd wear_yd note",
    "event_round": "holes start",
}
"""What version 2 added to tables of version 1."""


def make_version_1(path):
    """Turn a course file of version 2 into one of version 1; rows of what is left stay."""
    with closing(sqlite3.connect(path)) as database, database:
        for table in ("event_flight", "pin_decision"):
            database.execute(f"DROP TABLE {table}")
            for register in ("gpkg_contents", "gpkg_ogr_contents"):
                database.execute(f"DELETE FROM {register} WHERE table_name = ?", (table,))
            database.execute("DELETE FROM layer_styles WHERE f_table_name = ?", (table,))
        for table, columns in COLUMNS.items():
            for column in columns.split():
                database.execute(f"ALTER TABLE {table} DROP COLUMN {column}")
            database.execute(
                "UPDATE layer_styles SET styleQML = 'of version 1' WHERE f_table_name = ?", (table,)
            )
        database.execute("UPDATE course_info SET schema_version = 1")
