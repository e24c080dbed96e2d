"""What differs between QGIS 3.22 to 3.44 and 4: every such difference stands here and nowhere else."""

from qgis.core import Qgis, QgsPalLayerSettings


def label_placement(name):
    """The label placement ``name`` (``OverPoint``, ``Line``, ``Horizontal``): an enum of Qgis since 3.26."""
    return getattr(getattr(Qgis, "LabelPlacement", QgsPalLayerSettings), name)


def label_quadrant(name):
    """Where a label stands about its point (``QuadrantAboveRight``...): renamed in QGIS 3.26."""
    new = getattr(Qgis, "LabelQuadrantPosition", None)
    if new is not None:
        return getattr(new, name.replace("Quadrant", ""))
    return getattr(QgsPalLayerSettings, name)


def background_shape(name):
    """The shape ``name`` (``ShapeRectangle``) behind a text: moved within QGIS since 3.22."""
    from qgis.core import QgsTextBackgroundSettings

    return getattr(getattr(QgsTextBackgroundSettings, "ShapeType", QgsTextBackgroundSettings), name)


def flags_number(flags):
    """Flags as the number a model hands to Qt: PyQt 5 makes it with ``int``, PyQt 6 keeps it as ``value``."""
    return flags.value if hasattr(flags, "value") else int(flags)


def capture_streaming(tool, on):
    """Let a QgsMapToolCapture follow the moving pointer, or take clicks: named a technique since 3.26."""
    technique = getattr(Qgis, "CaptureTechnique", None)
    if technique is not None and hasattr(tool, "setCurrentCaptureTechnique"):
        tool.setCurrentCaptureTechnique(technique.Streaming if on else technique.StraightSegments)
    else:
        tool.setStreamDigitizingEnabled(on)


def attribution(layer):
    """Whom the server of a raster layer asks to be named, "": a property of the layer itself until 3.38."""
    told = layer.serverProperties() if hasattr(layer.serverProperties(), "attribution") else layer
    return told.attribution() or ""
