"""A reader of HTML that is not ours: tags with their attributes, words, and whether all is closed."""

from __future__ import annotations

from html.parser import HTMLParser


class HtmlReader(HTMLParser):
    """A page read; fails where a tag closes nothing, or is left open."""

    VOID = frozenset(("meta", "col", "img", "br", "path", "circle"))

    def __init__(self, text: str) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.words: list[str] = []
        self.prose: list[str] = []
        """The words that are not code."""
        self._open: list[str] = []
        self.feed(text)
        self.close()
        assert self._open == []

    @property
    def names(self) -> list[str]:
        """The names of all tags."""
        return [tag for tag, _ in self.tags]

    @property
    def text(self) -> str:
        """All words, a line for each piece."""
        return "\n".join(self.words)

    def values(self, name: str) -> list[str]:
        """What an attribute is, wherever it is given."""
        return [value for _, given in self.tags if (value := given.get(name))]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note a tag that is opened."""
        self.tags.append((tag, dict(attrs)))
        if tag not in self.VOID:
            self._open.append(tag)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note a tag that is closed at once."""
        self.tags.append((tag, dict(attrs)))

    def handle_endtag(self, tag: str) -> None:
        """Take a tag off what is open."""
        assert self._open and self._open.pop() == tag, f"</{tag}> closes nothing"

    def handle_data(self, data: str) -> None:
        """Keep words, the style sheet's left out."""
        if "style" in self._open[-1:]:
            return
        self.words.append(data)
        if not {"code", "pre"} & set(self._open):
            self.prose.append(data)
