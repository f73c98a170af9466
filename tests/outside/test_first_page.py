"""What is drawn on the first page, looked at as a picture that pdftoppm makes of it.

A word that is cut off is still in the text of a PDF, so no reader of text finds it. The hand is the first thing a person
looks for, and a wrong or half side the worst fault there is: here its ink is looked at.
"""

import pytest

from readers import ask

DARK, LIGHT = 96, 160


class Picture:
    """The grey levels of a page (PGM, "P5", as netpbm writes it down)."""

    def __init__(self, path, where):
        stem = where / "page"
        done = ask("pdftoppm", "-gray", "-r", 100, "-f", 1, "-l", 1, "-singlefile", path, stem)
        assert done.returncode == 0, done.stderr
        # A header of three lines, then the levels row by row.
        kind, size, most, self.grey = stem.with_suffix(".pgm").read_bytes().split(b"\n", 3)
        assert (kind, most) == (b"P5", b"255")
        self.width, self.height = map(int, size.split())
        assert len(self.grey) == self.width * self.height

    def at(self, x: int, y: int) -> int:
        return self.grey[y * self.width + x]

    def dark_runs(self, x: int, least: int) -> list[tuple[int, int]]:
        """Where a column is dark without a break, at least so long: first row, and the row after the last."""
        column, runs, start = self.grey[x::self.width], [], None
        for y, level in enumerate([*column, 255]):
            if level < DARK:
                start = y if start is None else start
            elif start is not None:
                if y - start >= least:
                    runs.append((start, y))
                start = None
        return runs

    def tile(self) -> tuple[int, int, int, int]:
        """The topmost dark box that takes a quarter of the page's width: left, top, right, bottom. Left and right of the words
        its columns are dark from edge to edge, whatever the words do; a frame is too thin to be one, and letters that happen
        to be as tall as each other leave most of the paper between them white."""
        columns: dict[tuple[int, int], list[int]] = {}
        for x in range(self.width):
            for run in self.dark_runs(x, self.height // 28):
                columns.setdefault(run, []).append(x)
        for (top, bottom), found in sorted(columns.items(), key=lambda item: (item[0][0], -item[0][1])):
            thick = [x for x in found if all(x + near in found for near in range(4)) or all(x - near in found for near in range(4))]
            if not thick or thick[-1] - thick[0] < self.width // 4:
                continue
            left, right = thick[0], thick[-1]
            edge = [self.at(x, top + 1) < DARK for x in range(left, right)]
            if sum(edge) > len(edge) * 0.6:
                return left, top, right, bottom
        raise AssertionError("no tile stands on the page")


@pytest.fixture
def picture(guide, tmp_path) -> Picture:
    return Picture(guide.path, tmp_path)


def test_the_hand_is_not_cut_off(picture):
    """The words in the tile of the treated hand, and the hand beside them, keep clear of its edges."""
    left, top, right, bottom = picture.tile()
    light = [(x, y) for y in range(top, bottom) for x in range(left, right) if picture.at(x, y) > LIGHT]
    assert light, "nothing stands in the tile"
    for edge in (top, top + 1, top + 2, bottom - 3, bottom - 2, bottom - 1):
        cut = [x for x in range(left, right) if picture.at(x, edge) > LIGHT]
        assert not cut, f"ink reaches the edge of the tile at row {edge} of {top} to {bottom}"
