"""Reads what the tests need from a markdown page: headings, links, fenced blocks."""

import re
from dataclasses import dataclass

_FENCE = re.compile(
    r"^(?P<ticks>`{3,}) *(?P<language>[\w-]*).*?\n(?P<text>.*?)^(?P=ticks) *$",
    re.MULTILINE | re.DOTALL,
)
_LINK = re.compile(r"(?<!!)\[(?:[^\[\]]|\[[^\]]*\])*\]\((?P<target>[^()\s]+)\)")
_IMAGE = re.compile(r"!\[[^\]]*\]\((?P<target>[^()\s]+)\)")
_HEADING = re.compile(r"^#{1,6} +(.+?) *#*$", re.MULTILINE)


@dataclass(frozen=True, slots=True)
class Block:
    """One fenced block: its language, its text, and the line it starts on."""

    language: str
    text: str
    line: int


@dataclass(frozen=True, slots=True)
class Run:
    """One command of a console block, and the output shown below it."""

    command: str
    shown: str
    line: int


def blocks(page: str) -> list[Block]:
    r"""Give the fenced blocks of a page.

    >>> blocks("a\n```console\n$ x\n```")
    [Block(language='console', text='$ x\n', line=2)]
    """
    return [
        Block(m["language"], m["text"], page.count("\n", 0, m.start()) + 1)
        for m in _FENCE.finditer(page)
    ]


def without_blocks(page: str) -> str:
    """Give a page with its fenced blocks and its code spans taken out."""
    return re.sub(r"`[^`\n]*`", "", _FENCE.sub("", page))


def links(page: str) -> list[str]:
    """Give the targets of links and images.

    >>> links("see [a `b`](c.md#d), ![e](f.svg), `[g](h)`")
    ['c.md#d', 'f.svg']
    """
    plain = without_blocks(page)
    return [m["target"] for search in (_LINK, _IMAGE) for m in search.finditer(plain)]


def anchors(page: str) -> set[str]:
    """Give the anchors that a page's headings make.

    >>> sorted(anchors("# Two `words`, here" + chr(10) + "## WT-000"))
    ['two-words-here', 'wt-000']
    """
    headings = _HEADING.findall(_FENCE.sub("", page))
    plain = (re.sub(r"[^\w\- ]", "", heading.lower()) for heading in headings)
    return {heading.strip().replace(" ", "-") for heading in plain}


def runs(block: Block) -> list[Run]:
    r"""Part a console block into its commands and what is shown below each.

    >>> runs(Block("console", "$ a b\nc\n...\n$ d\n", 10))
    [Run(command='a b', shown='c\n...\n', line=11), Run(command='d', shown='', line=14)]
    """
    found: list[Run] = []
    for number, line in enumerate(block.text.splitlines(), start=block.line + 1):
        if line.startswith("$ "):
            found.append(Run(line[2:].strip(), "", number))
        elif found:
            found[-1] = Run(found[-1].command, f"{found[-1].shown}{line}\n", found[-1].line)
    return found


def matches(shown: str, actual: str) -> bool:
    r"""Say whether real output is what a page shows; a line ``...`` stands for any lines.

    >>> matches("a\n...\nd\n", "a \nb\nc\nd"), matches("a\n", "a\nb\n")
    (True, False)
    """
    pattern = "".join(
        "(?:.*\n)*" if line.strip() == "..." else re.escape(line.rstrip()) + "\n"
        for line in shown.strip("\n").splitlines()
    )
    plain = "".join(f"{line.rstrip()}\n" for line in actual.strip("\n").splitlines())
    return re.fullmatch(pattern, plain) is not None
