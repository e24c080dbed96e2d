"""The list of a guide's pages: whose list counts, its order, what it lacks."""

from hypothesis import given
from hypothesis import strategies as st
from yardwright.model.guide_pages import PAGE_KINDS, USUAL, GuidePage, in_order, moved, pages_for, problems_of

OWN = (GuidePage("holes", event="Cup"), GuidePage("imprint", event="Cup"))
OF_COURSE = (GuidePage("cover"), GuidePage("holes"), GuidePage("imprint"))


def test_an_event_follows_its_own_list_else_the_course_s_else_the_usual_one():
    assert pages_for((*OF_COURSE, *OWN), "Cup") == OWN
    assert pages_for((*OF_COURSE, *OWN), "Plate") == OF_COURSE
    assert pages_for((*OF_COURSE, *OWN)) == OF_COURSE
    assert pages_for(OWN, "Plate") == pages_for(()) == USUAL


@given(st.data())
def test_a_page_moved_stands_where_it_was_put_and_the_others_keep_their_order(data):
    pages = tuple(GuidePage("text", str(number)) for number in range(data.draw(st.integers(1, 8))))
    place, to = (data.draw(st.integers(0, len(pages) - 1)) for _ in range(2))
    made = moved(pages, place, to)
    assert made[to] == pages[place]
    assert [page for page in made if page != pages[place]] == [page for page in pages if page != pages[place]]
    assert moved(made, to, place) == pages


def test_the_imprint_stays_whatever_is_left_out():
    """It holds the cautions and the credits."""
    pages = (GuidePage("imprint", shown=False), GuidePage("cover", shown=False), GuidePage("holes"))
    assert [page.kind for page in in_order(pages)] == ["imprint", "holes"]
    assert [page.kind for page in in_order(pages[1:])] == ["holes", "imprint"]
    assert [remark.code for _, remark in problems_of(pages)] == ["page_stays"]
    assert [(place, remark.code) for place, remark in problems_of(pages[1:])] == [(None, "page_stays")]


def test_what_a_list_lacks():
    pages = (
        GuidePage("cover"), GuidePage("cover", "Again"), GuidePage("notices", text="  "),
        GuidePage("sponsor", "Tern & Sons"), GuidePage("text", text="Welcome."), GuidePage("text", shown=False),
        GuidePage("notes"), GuidePage("notes"), GuidePage("imprint"),
    )  # fmt: skip
    found = [(place, remark.code) for place, remark in problems_of(pages)]
    assert found == [(1, "page_twice"), (2, "no_text"), (3, "no_file")]
    assert "Tern & Sons" in dict(problems_of(pages))[3]
    assert problems_of(USUAL) == []


def test_titles():
    assert GuidePage("pins").called == PAGE_KINDS["pins"].title
    assert GuidePage("pins", " Hole locations ").called == "Hole locations"
