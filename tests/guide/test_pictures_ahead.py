"""Pictures are cut one page ahead, in order, and nothing is left of them."""

import os
import threading

import pytest
from yardwright.guide.pictures_ahead import PicturesAhead
from yardwright.model.errors import Cancelled, YardwrightError


def test_the_next_is_cut_while_a_page_is_painted():
    begun, folders = [], []

    def cut(page, folder, going):
        begun.append(page)
        folders.append(folder)
        open(os.path.join(folder, "picture"), "wb").close()
        return page, threading.get_ident()

    with PicturesAhead(cut, ["one", "two", "three"]) as ahead:
        assert "two" in ahead and "four" not in ahead
        for number, page in enumerate(["one", "two", "three"]):
            made, thread = ahead.picture(page)
            assert made == page and thread != threading.get_ident()
            assert os.listdir(folders[number]) == ["picture"]
            assert len([one for one in folders if os.path.exists(one)]) <= 2
            assert begun[: number + 1] == ["one", "two", "three"][: number + 1]
    assert begun == ["one", "two", "three"]
    assert not os.path.exists(os.path.dirname(folders[0]))


def test_what_goes_wrong_is_raised_where_the_picture_is_asked_for():
    def cut(page, folder, going):
        if page == "bad":
            raise YardwrightError("It is damaged.", "Take another.")
        return page

    with PicturesAhead(cut, ["good", "bad", "after"]) as ahead:
        assert ahead.picture("good") == "good"
        with pytest.raises(YardwrightError, match="damaged"):
            ahead.picture("bad")
        assert ahead.picture("after") == "after"


def test_a_stop_ends_what_is_being_cut():
    stopped, asked = threading.Event(), []

    def cut(page, folder, going):
        while going(0, 1):
            stopped.wait(0.01)
        stopped.set()

    def progress(done, total):
        asked.append((done, total))
        return len(asked) < 3

    with pytest.raises(Cancelled), PicturesAhead(cut, ["endless"], progress) as ahead:
        ahead.picture("endless")
    assert stopped.is_set() and asked == [(None, None)] * 3
