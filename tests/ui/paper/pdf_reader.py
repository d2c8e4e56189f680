"""A small reader of the PDF that Qt writes: its pages and their words."""

from __future__ import annotations

import re
import zlib


class Pdf:
    """Just enough of a reader for what Qt writes: objects, streams, and glyphs back to letters."""

    def __init__(self, data: bytes) -> None:
        assert data.startswith(b"%PDF-") and data.rstrip().endswith(b"%%EOF")
        self.raw = data
        self.objects = {int(n): body for n, body in re.findall(rb"\n(\d+) 0 obj\n(.*?)endobj", data, re.S)}
        self.pages = [body for body in self.objects.values() if re.search(rb"/Type\s*/Page\b", body)]
        self.letters = {font: self._letters(font) for font in self._fonts()}

    def stream(self, number: int) -> bytes:
        body = self.objects[number]
        raw = body.split(b"stream\n", 1)[1].split(b"\nendstream", 1)[0]
        return zlib.decompress(raw) if b"FlateDecode" in body else raw

    def _fonts(self) -> list[int]:
        return [n for n, body in self.objects.items() if b"/Type /Font\n" in body and b"/ToUnicode" in body]

    def _letters(self, font: int) -> dict[int, str]:
        (table,) = re.findall(rb"/ToUnicode (\d+) 0 R", self.objects[font])
        text, found = self.stream(int(table)).decode("latin-1"), {}
        for first, last, rest in re.findall(r"<(\w+)> <(\w+)> (\[.*?\]|<\w+>)", text, re.S):
            values = re.findall(r"<(\w+)>", rest)
            for i, code in enumerate(range(int(first, 16), int(last, 16) + 1)):
                value = values[i] if rest.startswith("[") else f"{int(values[0], 16) + i:04x}"
                found[code] = bytes.fromhex(value).decode("utf-16-be")
        return found

    def text(self, page: int) -> str:
        """The words of a page, without the blanks between."""
        (content,) = re.findall(rb"/Contents (\d+) 0 R", self.pages[page])
        (resources,) = re.findall(rb"/Resources (\d+) 0 R", self.pages[page])
        names = dict(re.findall(rb"/(F\d+) (\d+) 0 R", self.objects[int(resources)]))
        out, font = [], 0
        for name, glyphs in re.findall(rb"/(F\d+) [\d.]+ Tf|<([0-9a-fA-F]+)> Tj", self.stream(int(content))):
            if name:
                font = int(names[name])
            else:
                codes = [int(glyphs[i : i + 4], 16) for i in range(0, len(glyphs), 4)]
                out.append("".join(self.letters[font].get(c, "?") for c in codes))
        return bare("".join(out))

    @property
    def whole(self) -> str:
        return "".join(self.text(i) for i in range(len(self.pages)))


def bare(text: str) -> str:
    """Text without blanks, ligatures taken apart."""
    for one, two in (("ﬁ", "fi"), ("ﬂ", "fl"), ("ﬀ", "ff"), ("ﬃ", "ffi"), ("ﬄ", "ffl")):
        text = text.replace(one, two)
    return re.sub(r"\s", "", text)
