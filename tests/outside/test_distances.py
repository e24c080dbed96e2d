"""Lengths and directions against the geodesic on WGS 84: geographiclib 2.1 is the judge everywhere.

A figure must equal the geodesic within 0.001 yd before it is rounded, whatever CRS the course is kept in.
"""

from dataclasses import replace

import numpy as np
import pytest
from geographiclib.geodesic import Geodesic
from pyproj import Transformer
from shapely.geometry import LineString
from yardwright.measure.frame import EARTH_RADIUS, HoleFrame, frame_about
from yardwright.measure.units import YARD, to_unit

from tests.geodesy import ahead, azimuth, between, course_of, ring
from tests.makers import only, straight_hole, tables

WITHIN = 0.001  # yards

# start (longitude, latitude), azimuth, yards, end; computed with geographiclib 2.1 and PROJ 9.5.1
SIX_PLACES = [
    ((-2.8030, 56.3430), 0, 450, (-2.803000000, 56.346695439), "EPSG:32630"),
    ((-2.8030, 56.3430), 90, 450, (-2.796345952, 56.342999821), "EPSG:32630"),
    ((-82.0200, 33.5030), 45, 450, (-82.016868584, 33.505623269), "EPSG:32617"),
    ((0.0, 0.0), 0, 450, (0.0, 0.003721300), "EPSG:32631"),
    ((145.0300, -37.9500), 200, 155, (145.029448460, -37.951199907), "EPSG:32755"),
    ((-121.9500, 36.5680), 135, 600, (-121.945666206, 36.564503943), "EPSG:32610"),
]
# at the antimeridian, and at 70 degrees north; ends by geographiclib
FAR_PLACES = [
    ((179.9980, -16.5000), 80, 480, None, "EPSG:32760"),
    ((-179.9990, 51.9000), 250, 510, None, "EPSG:32601"),
    ((25.0000, 70.0000), 61, 560, None, "EPSG:32635"),
]


def laid(place, towards, yards):
    """Tee, green's middle and a hole between: plate, round green, bunker at two thirds, a marker at 150 yd."""
    end = ahead(place, towards, yards * YARD)
    back = azimuth(end, place)
    bunker = ahead(ahead(place, towards, yards * 0.6 * YARD), towards + 90, 18.0)
    features = [
        ("plate", [place], {"tee_set": "Back"}),
        ("green", ring(end, 14.0, back), {}),
        ("bunker", ring(bunker, 6.0, corners=12), {}),
        ("marker", [ahead(end, back, 150 * YARD)], {"states_yd": 150.0}),
    ]
    return end, back, features


@pytest.mark.parametrize("start, towards, yards, end, utm", SIX_PLACES)
def test_the_table_of_six_places(start, towards, yards, end, utm):
    frame = frame_about([start, end], "EPSG:4326")
    p, q = frame.to_frame("EPSG:4326")([start, end])
    assert to_unit(np.hypot(*(q - p)), "yd") == pytest.approx(yards, abs=WITHIN)
    difference = (frame.true_azimuth(p, q) - towards + 180) % 360 - 180
    assert abs(difference) < 1e-4


@pytest.mark.parametrize("crs", [None, "EPSG:4326", "EPSG:3857"])
@pytest.mark.parametrize("start, towards, yards, _end, utm", SIX_PLACES + FAR_PLACES)
def test_every_figure_of_a_hole(start, towards, yards, _end, utm, crs):
    par = 3 if yards < 250 else 4
    end, back, features = laid(start, towards, yards)
    found = tables(course_of(crs or utm, [start, end], features, par=par))
    front, rear = ahead(end, back, 14.0), ahead(end, back + 180, 14.0)

    assert only(found.lengths, hole=1).length == pytest.approx(yards, abs=WITHIN)
    green = only(found.greens, hole=1)
    assert green.depth == pytest.approx(between(front, rear) / YARD, abs=WITHIN)
    assert abs((green.approach_azimuth - (back + 180) + 180) % 360 - 180) < 0.01
    row = only(found.distances, kind="green")
    assert row.reach == pytest.approx(between(start, front) / YARD, abs=WITHIN)
    assert row.clear == pytest.approx(between(start, rear) / YARD, abs=WITHIN)
    assert only(found.markers, hole=1).measured == pytest.approx(150, abs=WITHIN)

    bunker = only(found.distances, kind="bunker")
    corners = features[2][1]
    assert bunker.clear == pytest.approx(max(between(start, corner) for corner in corners) / YARD, abs=WITHIN)
    assert bunker.reach == pytest.approx(nearest(start, corners) / YARD, abs=WITHIN)
    assert bunker.side == "right"


def nearest(place, corners):
    """Metres to the nearest point of an outline, by geodesics to many points of each side."""
    best = 1e9
    for p, q in zip(corners, corners[1:] + corners[:1]):
        toward, length = azimuth(p, q), between(p, q)
        low, high = 0.0, length
        for _ in range(40):  # the distance along a side has one least value
            a, b = low + (high - low) / 3, high - (high - low) / 3
            if between(place, ahead(p, toward, a)) < between(place, ahead(p, toward, b)):
                high = b
            else:
                low = a
        best = min(best, between(place, ahead(p, toward, (low + high) / 2)))
    return best


@pytest.mark.parametrize("shortcut, yards", [("EPSG:32630", 449.821), ("EPSG:3857", 811.783)])
def test_the_planes_of_the_crs_would_report_something_else(shortcut, yards):
    """What UTM and Web Mercator make of 450 yd at 56 degrees north: the table's columns beside `true`."""
    start, _, _, end, _ = SIX_PLACES[0]
    plane = Transformer.from_crs("EPSG:4326", shortcut, always_xy=True)
    p, q = plane.transform(*start), plane.transform(*end)
    assert np.hypot(q[0] - p[0], q[1] - p[1]) / YARD == pytest.approx(yards, abs=0.002)
    _, _, features = laid(start, 0, 450)
    found = tables(course_of(shortcut, [start, end], features))
    assert only(found.lengths, hole=1).length == pytest.approx(450, abs=WITHIN)


def test_a_course_drawn_on_beyond_180_degrees_measures_alike():
    """Longitudes 180.001 and -179.999 are one place; a canvas that runs on past 180 gives the former."""
    start = (179.9985, -16.5)
    end, _, features = laid(start, 80, 480)
    wrapped = course_of("EPSG:4326", [start, end], features)
    loose = [(kind, [(lon % 360, lat) for lon, lat in places], fields) for kind, places, fields in features]
    running = course_of("EPSG:4326", [start, (end[0] % 360, end[1])], loose)
    unnamed = replace(
        running, features=tuple(replace(f, holes=()) if f.kind == "bunker" else f for f in running.features)
    )
    for one in (running, unnamed):
        ours, theirs = tables(one), tables(wrapped)
        assert only(ours.lengths, hole=1).length == pytest.approx(
            only(theirs.lengths, hole=1).length, abs=WITHIN
        )
        assert only(ours.distances, kind="bunker").reach == pytest.approx(
            only(theirs.distances, kind="bunker").reach, abs=WITHIN
        )


def test_karneys_short_line():
    """C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013), inputs of table 3: 4.944208284 m."""
    frame = frame_about([(0.0, -30.12345), (0.00005, -30.12344)], "EPSG:4326")
    p, q = frame.to_frame("EPSG:4326")([(0.0, -30.12345), (0.00005, -30.12344)])
    assert np.hypot(*(q - p)) == pytest.approx(4.944208284, abs=1e-8)


def test_the_judge_and_the_azimuth_on_flinders_peak_to_buninyong():
    """Geocentric Datum of Australia Technical Manual (GRS 80), from a page that quotes it: 54 972.271 m,
    306 52 05.37. Far longer than a hole: the judge is held to the whole line, the frame to its first 500 m."""
    grs80 = Geodesic(6378137.0, 1 / 298.257222101)
    flinders = (-(37 + 57 / 60 + 3.72030 / 3600), 144 + 25 / 60 + 29.52440 / 3600)
    buninyong = (-(37 + 39 / 60 + 10.15610 / 3600), 143 + 55 / 60 + 35.38390 / 3600)
    judged = grs80.Inverse(*flinders, *buninyong)
    forward = 306 + 52 / 60 + 5.37 / 3600
    assert judged["s12"] == pytest.approx(54972.271, abs=0.001)
    assert judged["azi1"] % 360 == pytest.approx(forward, abs=0.01 / 3600)

    near = grs80.Direct(*flinders, forward, 500.0)
    ends = [(flinders[1], flinders[0]), (near["lon2"], near["lat2"])]
    frame = frame_about(ends, "EPSG:4326")
    p, q = frame.to_frame("EPSG:4326")(ends)
    assert np.hypot(*(q - p)) == pytest.approx(500.0, abs=1e-4)
    assert frame.true_azimuth(p, q) == pytest.approx(forward, abs=0.2 / 3600)


# Courses kept in other systems


@pytest.mark.parametrize(
    "degrees, easting, northing, within",
    [
        # EPSG Guidance Note 7-2, Transverse Mercator
        ((0.5, 50.5), 577274.99, 69740.50, 0.02),
        # Ordnance Survey, A guide to coordinate systems in Great Britain, Annex C
        ((1 + 43 / 60 + 4.5177 / 3600, 52 + 39 / 60 + 27.2531 / 3600), 651409.903, 313177.270, 0.001),
    ],
)
def test_the_national_grid_of_great_britain(degrees, easting, northing, within):
    frame = HoleFrame(*degrees)
    by_degrees = frame.to_frame("EPSG:4277")([degrees])[0]
    by_grid = frame.to_frame("EPSG:27700")([(easting, northing)])[0]
    assert np.abs(by_degrees - by_grid).max() < within + 0.001


def test_feet_of_the_us_survey_are_told_from_international_feet():
    """EPSG:2264 counts 2,000,000 survey feet (1200/3937 m) on its central meridian, 79 degrees west; read as
    international feet the place would lie 4 ft off."""
    place = HoleFrame(-79.0, 33.75).to_frame("EPSG:2264")([(2_000_000.0, 0.0)])[0]
    assert np.abs(place).max() < 0.01
    assert pytest.approx(4 * 0.3048, abs=0.001) == 2_000_000 * (1200 / 3937 - 0.3048)


@pytest.mark.parametrize(
    "crs, start",
    [
        ("EPSG:2264", (-79.4, 35.2)),  # North Carolina, survey feet
        ("EPSG:2227", (-121.95, 37.3)),  # California zone 3, survey feet
        ("EPSG:27700", (-2.803, 56.343)),  # British National Grid, Airy 1830
        ("EPSG:25832", (7.2, 54.9)),
        ("EPSG:2193", (174.8, -41.2)),
        ("EPSG:4269", (-82.02, 33.503)),
    ],
)
def test_lengths_from_other_systems(crs, start):
    end, _, features = laid(start, 37, 450)
    found = tables(course_of(crs, [start, end], features))
    assert only(found.lengths, hole=1).length == pytest.approx(450, abs=WITHIN)
    assert only(found.markers, hole=1).measured == pytest.approx(150, abs=WITHIN)


# Yards, height and slope


def test_a_yard():
    """International yard and pound agreement, 1959: 0.9144 m exactly."""
    assert YARD == 0.9144 and to_unit(914.4, "yd") == 1000 and to_unit(914.4, "m") == 914.4


def test_height_of_the_ground():
    """Ellipsoid to ground: x (1 + h/R); 1,500 m makes 0.12 yd in 500."""
    start = (-105.0, 39.7)
    end, _, features = laid(start, 10, 500)
    row = only(tables(course_of("EPSG:32613", [start, end], features, height_m=1500.0)).lengths, hole=1)
    assert row.length == pytest.approx(500 * (1 + 1500 / EARTH_RADIUS), abs=WITHIN)
    assert row.length - 500 == pytest.approx(0.12, abs=0.005)


@pytest.mark.parametrize("rise, slope", [(10, 400.149), (20, 400.598), (30, 401.343)])
def test_slopes_do_not_enter(rise, slope):
    """400 yd horizontally is so much on the slope; the tool reports 400."""
    assert np.hypot(400 * YARD, rise) / YARD == pytest.approx(slope, abs=0.001)
    flat = straight_hole(length=400)
    (x0, y0), (x1, y1) = flat.holes[0].line.coords
    risen = replace(flat.holes[0], line=LineString([(x0, y0, 0.0), (x1, y1, float(rise))]))
    row = only(tables(replace(flat, holes=(risen,))).lengths, hole=1)
    assert row.length == pytest.approx(400, abs=WITHIN)
