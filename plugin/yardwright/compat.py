"""What differs between QGIS 3.22 to 3.44 and 4: every such difference stands here and nowhere else."""

from qgis.core import Qgis, QgsPalLayerSettings, QgsRaster, QgsTask


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


def silent_task():
    """Flags of a QgsTask that can be cancelled and whose end QGIS does not tell, which it can since 3.26."""
    flags = QgsTask.Flag.CanCancel
    return flags | QgsTask.Flag.Silent if hasattr(QgsTask.Flag, "Silent") else flags


def holds_opacity(provider, band):
    """Whether a band of a raster is tagged as opacity: the tags became an enum of Qgis in 3.30."""
    tags = getattr(Qgis, "RasterColorInterpretation", None) or QgsRaster.ColorInterpretation
    return provider.colorInterpretation(band) == tags.AlphaBand


def layout_millimetres():
    """The unit millimetres of layouts: moved within QGIS since 3.22."""
    from qgis.core import QgsUnitTypes

    unit = getattr(Qgis, "LayoutUnit", None)
    return QgsUnitTypes.LayoutMillimeters if unit is None else unit.Millimeters


def layout_flag(name):
    """The flag ``name`` (``LosslessImageRendering``...) of how layouts are rendered: moved since 3.22."""
    from qgis.core import QgsLayoutRenderContext

    flags = getattr(Qgis, "LayoutRenderFlag", None)
    return getattr(QgsLayoutRenderContext, f"Flag{name}") if flags is None else getattr(flags, name)


def text_as_text():
    """The way of rendering that keeps text as text: moved within QGIS since 3.22."""
    from qgis.core import QgsRenderContext

    formats = getattr(Qgis, "TextRenderFormat", None)
    return QgsRenderContext.TextFormatAlwaysText if formats is None else formats.AlwaysText


def font_of_label(label):
    """The QFont of a layout's label, its size in points: part of a text format since 3.24."""
    from qgis.PyQt.QtGui import QFont

    if not hasattr(label, "textFormat"):
        return QFont(label.font())
    font = QFont(label.textFormat().font())
    font.setPointSizeF(label.textFormat().size())
    return font


def set_font_of_label(label, font, tone=None):
    """Set a label in a QFont; tone: a QColor, None as it is."""
    if not hasattr(label, "textFormat"):
        label.setFont(font)
        if tone is not None:
            label.setFontColor(tone)
        return
    from qgis.core import QgsUnitTypes

    text_format = label.textFormat()
    text_format.setFont(font)
    text_format.setSize(font.pointSizeF())
    units = getattr(Qgis, "RenderUnit", None)
    text_format.setSizeUnit(QgsUnitTypes.RenderPoints if units is None else units.Points)
    if tone is not None:
        text_format.setColor(tone)
    label.setTextFormat(text_format)
