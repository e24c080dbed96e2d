"""The numbers: every figure of the guide is worked out here, from plain values, without QGIS."""
