"""Tee markers against what the Rules of Golf and the handicapping bodies say of the teeing area."""

import pytest
from yardwright.measure.tee_setting import TWO_CLUB_LENGTHS, set_tees
from yardwright.measure.units import YARD, whole
from yardwright.model.event import AskedLength, Event, Flight

from tests.geodesy import ahead, azimuth, between, course_of, ring
from tests.makers import feature, in_yards, spot, straight_hole, tee

SHARES = [0.25, 0.50, 0.25]
FROM_FRONT = [5, 20, 35]


def cup(tee_set="Back"):
    return Event("Cup", flights=(Flight("Men", tee_set),))


def row_of(a_course, yards, tee_set="Back"):
    (row,) = set_tees(a_course, cup(tee_set), [AskedLength(1, "Men", 1, yards * YARD)])
    return in_yards(row)


def test_two_club_lengths_are_2_4384_metres():
    """Rules of Golf, definition of the teeing area: two club-lengths deep; a club of at most 48 in (from
    memory) of 0.0254 m."""
    assert pytest.approx(2.4384, abs=1e-12) == TWO_CLUB_LENGTHS


@pytest.mark.parametrize("part", range(3))
def test_a_forty_yard_tee_shared_25_50_25(part):
    """USGA Handicap Manual, section 12: the permanent marker opposite the middle of its part of the tee; a tee of
    40 yd shared 25, 50 and 25 per cent has them 5, 20 and 35 yd from the front. Played at those lengths the
    markers stand beside the plates."""
    before = 40 * sum(SHARES[:part])
    middle = before + 40 * SHARES[part] / 2
    assert middle == FROM_FRONT[part]
    plate = feature("plate", 3, spot(5, -middle), 1, tee_set="Back")
    a_course = straight_hole(plate, tees=[tee(2, 0, -20, depth=40, width=12)])
    row = row_of(a_course, 400 + FROM_FRONT[part])
    assert row.verdict == "fits"
    assert row.from_front == pytest.approx(FROM_FRONT[part], abs=1e-5)
    assert row.from_front + row.behind == pytest.approx(40, abs=1e-5)
    assert row.from_plate == pytest.approx(0, abs=1e-5)


@pytest.mark.parametrize("yards", [437, 438, 440, 500])
def test_markers_are_never_nearer_than_two_club_lengths_to_the_back(yards):
    """USGA Handicap Manual, section 15-2: at least two club-lengths ahead of the back of the tee."""
    row = row_of(straight_hole(tees=[tee(2, 0, -20, depth=40, width=12)]), yards)
    assert row.behind * YARD >= 2.4384
    assert row.verdict == ("fits" if yards <= 440 - 96 / 36 else "nearest")


@pytest.mark.parametrize("asked", [386, 390, 395])
def test_a_hole_set_on_the_ground_measures_to_the_nearest_yard(asked):
    """Rules of Handicapping, Appendix G: to the nearest yard, here from the markers of the day. The hole is laid
    out on the ellipsoid, bent at a pivot point, and measured from the markers by geographiclib 2.1."""
    from pyproj import Transformer

    start = (-2.803, 56.343)
    pivot = ahead(start, 20, 230 * YARD)
    end = ahead(pivot, 75, 160 * YARD)
    back, front = (ahead(start, 20 + turn, 14 * YARD) for turn in (180, 0))
    corners = [
        ahead(place, 20 + side, 5 * YARD)
        for place, side in ((back, -90), (back, 90), (front, 90), (front, -90))
    ]
    features = [
        ("tee", corners, {"tee_set": "Back"}),
        ("green", ring(end, 13, azimuth(end, pivot)), {}),
    ]
    a_course = course_of("EPSG:32630", [start, pivot, end], features)
    row = row_of(a_course, asked)
    to_degrees = Transformer.from_crs("EPSG:32630", "EPSG:4326", always_xy=True)
    place = to_degrees.transform(row.x, row.y)
    by_geodesic = (between(place, pivot) + between(pivot, end)) / YARD
    assert row.verdict == "fits"
    assert by_geodesic == pytest.approx(asked, abs=0.002)
    assert whole(by_geodesic) == whole(row.got) == asked
    assert azimuth(place, pivot) == pytest.approx(20, abs=0.01)
