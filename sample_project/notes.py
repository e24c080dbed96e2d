"""What the club says of its holes. Figures stand as expressions, so that no text disagrees with a table."""

DESCRIPTIONS = {
    1: "A gentle start between two lines of trees. The old mill chimney is the line; the bunkers left of it "
    "catch a hook.",
    2: "Two shots to the burn, which is [% to_enter(2, 'Black', 'Burn') %] to reach and "
    "[% to_leave(2, 'Black', 'Burn') %] to carry from Black. Short of it leaves a full wedge.",
    3: "All carry: the pond is [% to_leave(3, 'Black', 'Stew pond') %] to carry from Black and "
    "[% to_leave(3, 'Red', 'Stew pond') %] from Red.",
    4: "The hardest on the card. Left of the hedge is safe; the burn crosses "
    "[% to_front(4, 'Black') - to_leave(4, 'Black', 'Burn') %] short of the green.",
    5: "Drivable from the forward tees. The green is only [% green_depth(5) %] deep: come in high.",
    6: "A green of two halves, [% green_depth(6) %] deep, with a waist that decides the putt.",
    7: "The burn is [% to_leave(7, 'Black', 'Burn') %] to carry from Black. Play on the lone pine.",
    8: "A cape: the more of the corner is cut, the shorter the second. Aim at the signal post.",
    9: "Home to the double green, [% green_depth(9) %] deep on this side. The white flags are ours.",
    10: "Over the burn from the tee, the lake along the right for as long as the drive lasts.",
    11: "From the lookout to a green below. One club less than it measures.",
    12: "[% hole_length(12, 'Black') %] from Black, and nothing to hide behind. Three good shots.",
    13: "The shortest. The lake is all along the right; the left bunker is no bad leave.",
    14: "A green bent like a half moon about its bunker: the wrong side of it has no way to the pin.",
    15: "The elbow turns at the standing stone, [% to_reach(15, 'Black', 'Standing stone') %] from Black.",
    16: "Gorse on the left from [% to_reach(16, 'Black', 'Gorse') %] to [% to_clear(16, 'Black', 'Gorse') %] "
    "off the Black tee.",
    17: "Plenty of width for the drive; the green runs away from play.",
    18: "Over the outlet, which is [% to_leave(18, 'Black', 'Outlet') %] to carry from Black, then along the "
    "lake to the long side of the double green.",
}
"""``{hole: text}``."""
