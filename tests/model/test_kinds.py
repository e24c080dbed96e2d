"""The public names of the course file, word for word: layers, fields, allowed values."""

import dataclasses

import pytest
from yardwright.model.course import Course, Settings
from yardwright.model.kinds import BY_NAME, FEATURE_KINDS, KINDS, LISTED, TABLES
from yardwright.model.numbers import format_distances

LAYERS = {
    "hole": ("LineString", "number name par stroke_index approach_yd description"),
    "tee": ("Polygon", "holes tee_set"),
    "plate": ("Point", "hole tee_set"),
    "green": ("Polygon", "holes label"),
    "apron": ("Polygon", "holes label"),
    "fairway": ("Polygon", "holes label"),
    "bunker": ("Polygon", "holes label"),
    "rough": ("Polygon", "holes label"),
    "penalty_area": ("Polygon", "holes label stakes water"),
    "trees": ("Polygon", "holes label"),
    "tree": ("Point", "holes label crown_radius_m"),
    "path": ("LineString", "label"),
    "boundary": ("LineString", "label"),
    "marker": ("Point", "hole states_yd states_to pair"),
    "target": ("Point", "holes label"),
    "image": ("Polygon", "id source taken gsd_m shift_e_m shift_n_m rmse_m credit licence print_allowed"),
    "patch": ("Polygon", "image"),
    "window": ("Polygon", "hole shows up_azimuth scale width_mm height_mm"),
    "pin": ("Point", "event round hole on_yd off_yd off_from given"),
}
OWN_TABLES = {
    "tee_set": "name colour sort",
    "scorecard": "hole tee_set yards",
    "event": "",
    "event_round": "",
    "event_length": "event round flight hole yards",
    "hole_note": "hole source written text",
}
VALUES = {
    ("penalty_area", "stakes"): {"yellow", "red"},
    ("marker", "states_to"): {"front", "middle", "back"},
    ("window", "shows"): {"hole", "green"},
    ("pin", "off_from"): {"left", "right", "centre"},
    ("pin", "given"): {"figures", "point"},
    ("green", "view"): {"clear", "partly hidden", "from another source"},
}


@pytest.mark.parametrize("name", LAYERS)
def test_every_layer_has_its_geometry_and_fields(name):
    geometry, fields = LAYERS[name]
    kind = BY_NAME[name]
    assert kind.geometry == geometry
    assert set(fields.split()) <= {field.name for field in kind.fields}
    assert "note" in {field.name for field in kind.fields}


@pytest.mark.parametrize("name", OWN_TABLES)
def test_every_table_has_its_fields(name):
    assert BY_NAME[name].geometry is None
    assert set(OWN_TABLES[name].split()) <= {field.name for field in BY_NAME[name].fields}


@pytest.mark.parametrize("name", FEATURE_KINDS)
def test_every_drawn_thing_says_where_it_was_seen(name):
    assert {"seen_in", "view"} <= {field.name for field in BY_NAME[name].fields}


@pytest.mark.parametrize("name, field", VALUES)
def test_values_that_are_allowed(name, field):
    assert set(BY_NAME[name].field(field).values) == VALUES[name, field]


def test_the_schema_version_is_kept():
    assert "schema_version" in {field.name for field in BY_NAME["course_info"].fields}


def test_names_are_unique_and_no_field_is_there_twice():
    names = [kind.name for kind in KINDS + TABLES]
    assert len(names) == len(set(names))
    for kind in KINDS + TABLES:
        fields = [field.name for field in kind.fields]
        assert len(fields) == len(set(fields)), kind.name


def test_what_the_table_of_distances_lists():
    """Bunkers, penalty areas, fairways, trees, paths and targets: the design of the measurements."""
    assert set(LISTED) == {"fairway", "bunker", "penalty_area", "trees", "tree", "path", "target"}


def test_settings_of_a_course_begin_as_the_design_says():
    settings = Settings()
    assert (settings.unit, settings.tee_reference, settings.marker_point) == ("yd", "front", "middle")
    assert (settings.corridor_yd, settings.uncertain_yd, settings.marker_tolerance_yd) == (60, 1, 1)
    assert settings.layup_yd == (100, 125, 150, 200) and settings.fairway_step_yd == 10


def test_a_new_course_is_given_the_settings_that_count_where_none_are_given():
    for field in BY_NAME["course_info"].fields:
        if hasattr(Settings, field.name):
            ours = getattr(Settings(), field.name)
            assert field.default == (format_distances(ours) if field.name == "layup_yd" else ours), field.name
    assert all(BY_NAME["course_info"].field(field.name) for field in dataclasses.fields(Settings))


def test_a_hole_that_is_not_there():
    assert Course("Larkmere", "EPSG:32630").hole(3) is None
