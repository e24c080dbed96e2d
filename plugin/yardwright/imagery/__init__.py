"""The pixels: pictures cut, turned and written (GDAL and numpy), without QGIS."""
