"""What a golf course is: plain values, pure Python and shapely, nothing of QGIS."""
