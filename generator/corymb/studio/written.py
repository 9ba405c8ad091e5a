"""What exactly did the writer put there, and where?

YAML would turn `no` into false and `12:30` into 750; a studio's file keeps the raw text.
"""


class Written(str):
    """The raw text of one value, with its place (from 1) and whether it stood in quotes."""

    __slots__ = ("column", "line", "quoted")

    quoted: bool
    line: int
    column: int

    def __new__(cls, text: str, quoted: bool = False, line: int = 1, column: int = 1) -> "Written":
        self = super().__new__(cls, text)
        self.quoted = quoted
        self.line = line
        self.column = column
        return self
