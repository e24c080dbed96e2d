"""On the map the pins of the round in hand stand out from those of other rounds, whatever the layer's style.

QGIS imports the desk at its start: nothing heavy is imported here.
"""

from qgis.core import (
    QgsExpression,
    QgsFeatureRequest,
    QgsFontMarkerSymbolLayer,
    QgsProperty,
    QgsRuleBasedLabeling,
    QgsRuleBasedRenderer,
    QgsSymbolLayer,
    QgsUnitTypes,
)
from qgis.PyQt import sip
from qgis.PyQt.QtCore import QObject, QPointF, Qt
from qgis.PyQt.QtGui import QColor, QFontDatabase

from .dates import drawn_by
from .words import told_in

_LIGHT, _DARK = QColor(255, 255, 255), QColor(20, 24, 28)
_OF_ROUND, _OF_EVENT = (0.75, 0.8), (0.5, 0.4)
"""How large and how opaque the pins of other rounds are, and those of other events: parts of what the style
says."""
_NUMBER_MM = 3.9
_RIM_MM = 0.9
_BESIDE = QPointF(2.6, -0.9)
"""The middle of a round's number from the pin, mm on the screen, upwards negative."""


class RoundsApart(QObject):
    """Draws the pins of other rounds smaller and paler on the map, with their round's number, while
    ``shown``.

    in_hand: the CourseInHand. It is laid over the style of the layer by the map's canvas alone, which wears
    it only while it draws: the layer's own style, the project and the layouts know nothing of it.
    """

    def __init__(self, in_hand):
        super().__init__(in_hand)
        self.in_hand = in_hand
        self.canvas = in_hand.iface.mapCanvas()
        self.shown = False
        self._worn = {}
        self._watched = None
        self._connections = [
            (signal, signal.connect(self.refresh))
            for signal in (in_hand.course_changed, in_hand.event_changed)
        ]

    def show(self, on):
        """Tell the rounds apart, or leave the map as the layer's style has it."""
        if on != self.shown:
            self.shown = on
            self.refresh()

    def let_go(self):
        """Listen to nothing any more, and leave the map as it was found."""
        while self._connections:
            signal, connection = self._connections.pop()
            signal.disconnect(connection)
        self.show(False)

    def refresh(self, *_):
        """Follow the round in hand."""
        with told_in(self.in_hand.iface.messageBar()):
            layer = self.in_hand.layer("pin") if self.shown and self.in_hand.round is not None else None
            self._watch(layer)
            style = "" if layer is None else rounds_apart(layer, self.in_hand.event, self.in_hand.round)
            self._wear({layer.id(): style} if style else {})

    def _watch(self, layer):
        """Somebody may give the layer another style: it is laid over that one then."""
        if self._watched is not None:
            before, connection = self._watched
            if before is layer:
                return
            if not sip.isdeleted(before):
                before.styleChanged.disconnect(connection)
        self._watched = None if layer is None else (layer, layer.styleChanged.connect(self.refresh))

    def _wear(self, styles):
        if styles == self._worn:
            return
        worn = self.canvas.layerStyleOverrides()
        others = {layer_id: style for layer_id, style in worn.items() if layer_id not in self._worn}
        self._worn = styles
        self.canvas.setLayerStyleOverrides({**others, **styles})
        self.canvas.refresh()


def rounds_apart(layer, event, number):
    """The style of the layer of pins, as QGIS writes it, that tells one round of an event from all others; ""
    where its renderer draws no single pins (a heat map)."""
    renderer = layer.renderer()
    rules = QgsRuleBasedRenderer.convertFromRenderer(renderer, layer) if renderer is not None else None
    if rules is None:
        return ""
    of_event = f'trim("event") = {QgsExpression.quotedString(event)}'
    in_hand = f'coalesce({of_event} AND "round" = {int(number)}, false)'
    root = rules.rootRule()
    own = list(root.children())
    wholes = [
        _rule(own, f"NOT coalesce({of_event}, false)", lambda symbol: _fade(symbol, *_OF_EVENT)),
        _rule(own, f"coalesce({of_event}, false) AND NOT {in_hand}", _with_number),
        _rule(own, in_hand, None),
    ]
    for rule in own:
        root.removeChild(rule)
    for whole in wholes:
        root.appendChild(whole)
    if not rules.orderByEnabled():
        # The pins of the round in hand lie on top.
        rules.setOrderBy(QgsFeatureRequest.OrderBy([QgsFeatureRequest.OrderByClause(in_hand, True)]))
        rules.setOrderByEnabled(True)
    return drawn_by(layer, rules, _labels_of(layer, in_hand))


def _rule(rules, expression, change):
    """A rule that holds clones of rules for what an expression lets through. change: what is done to their
    symbols, None for nothing."""
    whole = QgsRuleBasedRenderer.Rule(None, 0, 0, expression)
    for rule in rules:
        clone = rule.clone()
        for one in (clone, *clone.descendants()):
            if change is not None and one.symbol() is not None:
                change(one.symbol())
        whole.appendChild(clone)
    return whole


def _fade(symbol, size, opacity):
    symbol.setSize(symbol.size() * size)
    symbol.setOpacity(symbol.opacity() * opacity)


def _with_number(symbol):
    _fade(symbol, *_OF_ROUND)
    for rim in (True, False):
        symbol.appendSymbolLayer(_number(rim))


def _number(rim):
    """A round's number beside its pin: light, within a dark rim that lies beneath."""
    colour = _DARK if rim else _LIGHT
    family = QFontDatabase.systemFont(QFontDatabase.SystemFont.GeneralFont).family()
    number = QgsFontMarkerSymbolLayer(family, "", _NUMBER_MM, colour)
    number.setFontStyle("Bold")
    number.setSizeUnit(QgsUnitTypes.RenderUnit.RenderMillimeters)
    number.setOffset(_BESIDE)
    number.setOffsetUnit(QgsUnitTypes.RenderUnit.RenderMillimeters)
    number.setStrokeColor(colour)
    number.setStrokeWidth(_RIM_MM if rim else 0.0)
    number.setPenJoinStyle(Qt.PenJoinStyle.RoundJoin)
    number.setDataDefinedProperty(
        QgsSymbolLayer.Property.PropertyCharacter, QgsProperty.fromExpression('to_string("round")')
    )
    return number


def _labels_of(layer, expression):
    """The labels of a layer for what an expression lets through alone; None where it has none."""
    labeling = layer.labeling() if layer.labelsEnabled() else None
    if labeling is None:
        return None
    root = QgsRuleBasedLabeling.Rule(None)
    if isinstance(labeling, QgsRuleBasedLabeling):
        whole = QgsRuleBasedLabeling.Rule(None, 0, 0, expression)
        for rule in labeling.rootRule().children():
            whole.appendChild(rule.clone())
    else:
        whole = QgsRuleBasedLabeling.Rule(labeling.settings(), 0, 0, expression)
    root.appendChild(whole)
    return QgsRuleBasedLabeling(root)
