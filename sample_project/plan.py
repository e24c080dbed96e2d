"""The architect's plan of Quernhallow in local metres (x east, y north). Nothing here is real."""

from dataclasses import dataclass

NAME = "Quernhallow Golf Club"
CRS = "EPSG:25832"
LONGITUDE, LATITUDE = 7.2, 54.9  # open sea: the island is invented
ORIGIN = (600.0, 490.0)  # the local point that lies there
NEWEST = "2025-07-02"

# name, colour, players, how far ahead of the back tee as a share of the hole's length
TEE_SETS = (
    ("Black", "#1a1a1a", "men", 0.0),
    ("White", "#f4f4f0", "men", 0.045),
    ("Yellow", "#e8c51e", None, 0.09),
    ("Blue", "#2f62b5", "women", 0.15),
    ("Red", "#c0322b", "women", 0.21),
)


@dataclass(frozen=True)
class HolePlan:
    """One hole. ``line``: back tee, turn points, where the green lies. ``fairway``: station (m) it begins at
    and its half width; None: no fairway. ``bunkers``: (station, metres right of play, length, width).
    ``greenside``: (degrees clockwise round the green seen from the approach, 180 = in front, length, width).
    ``green``: depth, width, degrees turned, shape. ``side``: +1 where the path runs right of play, -1 left.
    ``pads``: tee sets that share a teeing ground, joined by a comma."""

    number: int
    name: str
    par: int
    index: int
    line: tuple
    fairway: tuple
    bunkers: tuple
    greenside: tuple
    green: tuple
    side: int
    pads: tuple


_ALL = ("Black", "White", "Yellow", "Blue", "Red")
_MIDDLE = ("Black", "White,Yellow", "Blue", "Red")
_LADIES = ("Black", "White", "Yellow", "Blue,Red")
_TWO_AND_TWO = ("Black", "White,Yellow", "Blue,Red")

HOLES = (
    HolePlan(
        1, "Gatepost", 4, 11, ((548, 66), (335, 118), (190, 72)), (128, 17),
        ((212, -25, 15, 9), (236, -23, 10, 8), (252, 24, 16, 10)),
        ((110, 15, 8), (245, 18, 9)), (30, 25, 20, "blob"), 1, _MIDDLE,
    ),
    HolePlan(
        2, "Heron's Walk", 5, 5, ((122, 112), (70, 325), (125, 480), (84, 610)), (135, 16.5),
        ((206, -24, 17, 10), (226, -25, 11, 9), (352, 23, 18, 10), (372, 25, 9, 8)),
        ((75, 14, 9), (300, 17, 8)), (27, 30, -35, "blob"), -1, _ALL,
    ),
    HolePlan(
        3, "Stew Pond", 3, 15, ((110, 690), (165, 840)), None,
        (), ((95, 13, 8), (330, 16, 8), (30, 10, 7)), (26, 28, 40, "blob"), 1, _LADIES,
    ),
    HolePlan(
        4, "Long Hedge", 4, 1, ((215, 912), (218, 690), (258, 518)), (135, 15.5),
        ((226, 24, 16, 9), (246, 25, 10, 8), (262, -23, 15, 9)),
        ((70, 15, 9), (285, 12, 8)), (31, 24, 0, "blob"), 1, _MIDDLE,
    ),
    HolePlan(
        5, "Pinch of Salt", 4, 13, ((225, 470), (205, 217)), (118, 14),
        ((165, 19, 12, 8),),
        ((100, 14, 8), (215, 13, 7), (265, 13, 8), (345, 17, 7)), (17.4, 29, 12, "blob"), -1, _TWO_AND_TWO,
    ),
    HolePlan(
        6, "Hourglass", 3, 17, ((262, 195), (335, 327)), (95, 9),
        (), ((88, 13, 7), (268, 12, 7), (190, 18, 8)), (38, 24, 0, "hourglass"), -1, _LADIES,
    ),
    HolePlan(
        7, "Sally Port", 4, 3, ((312, 408), (345, 490), (388, 812)), (148, 16),
        ((206, -24, 15, 9), (310, 24, 17, 9), (330, 25, 9, 8)),
        ((120, 16, 9), (290, 14, 8)), (33, 23, -15, "blob"), 1, _ALL,
    ),
    HolePlan(
        8, "Cape", 5, 9, ((405, 890), (590, 725), (548, 520)), (130, 18),
        ((228, 27, 13, 9), (240, 38, 15, 10), (262, 32, 12, 9), (268, 47, 11, 8), (352, -22, 16, 9)),
        ((80, 18, 9), (240, 12, 8), (320, 14, 8)), (28, 32, 30, "blob"), -1, _MIDDLE,
    ),
    HolePlan(
        9, "Homeward", 4, 7, ((468, 520), (500, 320), (632, 188)), (128, 16.5),
        ((214, 24, 16, 9), (236, -25, 15, 10), (322, -20, 14, 8)),
        ((230, 19, 9),), (26, 60, 0, "double"), -1, _LADIES,
    ),
    HolePlan(
        10, "Plank Bridge", 4, 8, ((712, 232), (748, 430), (715, 610)), (140, 16),
        ((222, -24, 17, 9), (244, 25, 14, 9)),
        ((70, 12, 8), (255, 16, 9), (285, 10, 7)), (29, 26, 30, "blob"), -1, _MIDDLE,
    ),
    HolePlan(
        11, "Lookout", 3, 16, ((722, 668), (752, 842)), (118, 9.5),
        (), ((100, 16, 9), (160, 14, 8), (280, 15, 8)), (30, 25, -30, "blob"), -1, _TWO_AND_TWO,
    ),
    HolePlan(
        12, "Long Acre", 5, 4, ((805, 885), (880, 660), (862, 375)), (138, 18),
        ((216, -27, 16, 10), (234, -26, 10, 8), (262, 26, 15, 9), (400, -24, 18, 9), (428, 22, 13, 9)),
        ((60, 13, 8), (280, 17, 9)), (34, 27, 15, "blob"), -1, _ALL,
    ),
    HolePlan(
        13, "Drop", 3, 18, ((880, 345), (925, 215)), (88, 9),
        (), ((270, 15, 8), (0, 16, 7)), (24, 29, -30, "blob"), -1, _MIDDLE,
    ),
    HolePlan(
        14, "Half Moon", 4, 2, ((978, 228), (960, 420), (1000, 600)), (128, 15.5),
        ((218, 23, 15, 9), (240, -24, 17, 10)),
        ((270, 11, 9), (80, 15, 8)), (46, 30, 0, "crescent"), -1, _LADIES,
    ),
    HolePlan(
        15, "Elbow", 4, 12, ((985, 655), (960, 830), (1085, 925)), (118, 16.5),
        ((166, 27, 14, 9), (184, 33, 16, 10), (200, 25, 11, 8)),
        ((90, 14, 8), (200, 13, 8), (310, 15, 8)), (26, 31, -25, "blob"), -1, _ALL,
    ),
    HolePlan(
        16, "Gorse Bank", 5, 6, ((1150, 935), (1085, 690), (1120, 480)), (140, 17),
        ((214, 26, 17, 9), (238, -25, 14, 9), (352, 24, 15, 9)),
        ((110, 18, 9), (250, 15, 8)), (42, 21, 8, "blob"), -1, _MIDDLE,
    ),
    HolePlan(
        17, "Well Lane", 4, 14, ((1105, 425), (1140, 215), (1078, 110)), (125, 16),
        ((204, 25, 15, 10), (222, 22, 10, 8)),
        ((75, 12, 8), (265, 17, 9)), (27, 24, 45, "blob"), -1, _LADIES,
    ),
    HolePlan(
        18, "Millrace", 4, 10, ((1045, 48), (860, 88), (684, 196)), (135, 17),
        ((226, -26, 18, 10), (250, -25, 11, 8)),
        ((120, 15, 8),), (26, 60, 0, "double"), -1, _ALL,
    ),
)  # fmt: skip

# The burn: from the west, past five fairways, into the lake; then out of it to the south.
BURN = (
    (-40, 590), (20, 568), (66, 546), (112, 556), (160, 584), (212, 592), (250, 588), (300, 616), (352, 628),
    (398, 612), (424, 566), (430, 505), (444, 446), (484, 414), (530, 414), (584, 428),
    (640, 410), (694, 372),
    (734, 334), (780, 296),
)  # fmt: skip
OUTLET = ((848, 176), (842, 140), (852, 96), (840, 50), (852, 0), (846, -50))
LAKE = (
    (760, 280), (744, 250), (748, 218), (772, 194), (808, 182), (838, 160), (870, 152),
    (892, 176), (888, 210),
    (862, 230), (852, 258), (850, 290), (830, 314), (800, 318), (778, 304),
)  # fmt: skip
POND = ((122, 764), (148, 754), (172, 768), (180, 790), (162, 810), (136, 806), (122, 786))
GORSE = ((1132, 700), (1150, 650), (1158, 596), (1176, 600), (1180, 660), (1166, 716), (1146, 728))

SITE = (
    (560, 12), (450, 26), (330, 30), (170, 12), (60, 20), (26, 110), (30, 240), (14, 330),
    (18, 560), (34, 640),
    (30, 760), (66, 930), (210, 962), (400, 950), (520, 926), (620, 900), (700, 922), (780, 956), (960, 976),
    (1120, 980), (1192, 962), (1206, 780), (1200, 640), (1180, 520), (1192, 300), (1180, 80),
    (1110, 12), (900, 10),
    (740, 20), (650, 14),
)  # fmt: skip
ROUGH = (
    (30, 240, 60, 26, 88), (165, 330, 110, 34, 75), (60, 700, 70, 30, 60), (290, 720, 150, 44, 85),
    (165, 640, 60, 28, 100), (450, 740, 120, 46, 120), (410, 250, 130, 50, 60), (640, 600, 170, 40, 95),
    (800, 560, 140, 40, 84), (930, 480, 120, 32, 92), (1040, 720, 120, 40, 80), (1050, 330, 120, 44, 88),
    (980, 130, 90, 36, 20), (660, 850, 80, 36, 30), (1160, 800, 90, 26, 80), (520, 870, 120, 40, 150),
)  # fmt: skip
"""Long grass: x, y, length, width, degrees of its length from east."""

TARGETS = (
    ("Old mill chimney", (1, 18), (690.0, 20.0)), ("Lone pine", (7,), (401.0, 905.0)),
    ("White cottage", (2,), (40.0, 660.0)), ("Signal post", (8,), (585.0, 640.0)),
    ("Standing stone", (15,), (1010.0, 868.0)), ("Beehive", (16,), (1106.0, 590.0)),
)  # fmt: skip

# (hole, stated yards): yards it stands too close to the green (stated less measured); the rest are right
WRONG_MARKERS = {
    (2, 150): 3.0,
    (5, 100): -4.0,
    (8, 200): -6.0,
    (10, 150): 1.6,
    (12, 100): 2.5,
    (16, 150): -2.2,
}
MOVED_POST = (14, 150, 5.0)  # only the left post of the pair, put this many yards too close
PAIRED_HUNDREDS = (9, 12, 16)

TEE_STATIONS = {(7, "Red"): 112.0}  # metres along the line: past the first turn point

# (hole, tee set): yards the printed card differs from the ground
WRONG_ON_CARD = {(2, "Black"): -9, (7, "White"): 7, (11, "Blue"): -6, (15, "Yellow"): 8, (18, "Red"): 12}
