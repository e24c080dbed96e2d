"""What is seen in the QGIS window: toolbar, dialogs, panels."""
