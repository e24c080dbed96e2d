"""The pages of a guide in the table guide_page and back."""

import pytest
from yardwright.model.course import Feature
from yardwright.model.event import Event
from yardwright.model.guide_pages import GuidePage

PAGES = (
    GuidePage("cover", event="Cup"),
    GuidePage("sponsor", "Tern & Sons", source="sponsors/tern.pdf", event="Cup", note="paid"),
    GuidePage("text", "=Welcome", "# Hello\n\n*all* of you", shown=False, event="Cup"),
    GuidePage("imprint", event="Cup"),
)
OF_COURSE = (GuidePage("holes"), GuidePage("imprint"))


@pytest.fixture(params=["file", "edited"])
def layers(request, course):
    """The course's layers: nobody edits them, or somebody does and has saved nothing."""
    from yardwright.store.events import write_event
    from yardwright.store.guide_pages import write_guide_pages

    if request.param == "edited":
        for layer in course.layers.values():
            assert layer.startEditing()
    write_event(course, Event("Cup"))
    write_guide_pages(course, "Cup", PAGES)
    write_guide_pages(course, "", OF_COURSE)
    yield course
    for layer in course.layers.values():
        if layer.isEditable():
            layer.rollBack()


def test_there_and_back(layers):
    from yardwright.store.guide_pages import read_guide_pages, write_guide_pages

    assert read_guide_pages(layers) == (*OF_COURSE, *PAGES)
    write_guide_pages(layers, "Cup", PAGES[::-1])
    assert read_guide_pages(layers) == (*OF_COURSE, *PAGES[::-1])
    write_guide_pages(layers, "Cup", ())
    assert read_guide_pages(layers) == OF_COURSE


def test_a_list_goes_with_its_event(layers):
    from yardwright.store.events import copy_event, remove_event, rename_event
    from yardwright.store.guide_pages import read_guide_pages

    def of(name):
        return [
            (page.kind, page.title, page.source) for page in read_guide_pages(layers) if page.event == name
        ]

    usual = of("Cup")
    copy_event(layers, "Cup", "Plate")
    rename_event(layers, "Cup", "Bowl")
    assert of("Plate") == of("Bowl") == usual and of("Cup") == []
    remove_event(layers, "Bowl")
    assert of("Plate") == usual and of("Bowl") == [] and len(of("")) == len(OF_COURSE)


def test_a_row_that_is_no_page_is_left_out_and_told(layers):
    from yardwright.store.guide_pages import read_guide_pages
    from yardwright.store.writing import add_features

    add_features(layers, [Feature("guide_page", None, None, attributes={"event": "Cup", "title": "?"})])
    problems = []
    assert read_guide_pages(layers, problems) == (*OF_COURSE, *PAGES)
    assert len(problems) == 1 and "which kind of page" in problems[0]
