"""The only translation between the outside (QGIS layers, files) and the model."""
