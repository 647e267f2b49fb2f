"""The Makefile and the README name the same words."""

import re

from tests.architecture.tree import ROOT

MAKEFILE = (ROOT / "Makefile").read_text(encoding="utf-8")
README = (ROOT / "README.md").read_text(encoding="utf-8")
CI = (ROOT / ".ci" / "run").read_text(encoding="utf-8")
WORDS = set(re.findall(r"^([a-z][a-z-]*):.*## ", MAKEFILE, re.MULTILINE))


def test_readme_lists_the_words() -> None:
    """Guards that the README's table lists every word of the Makefile and no other."""
    assert set(re.findall(r"^\| `make ([a-z-]+)`", README, re.MULTILINE)) == WORDS


def test_every_word_is_no_file() -> None:
    """Guards that each word runs whenever asked, even if a file has its name."""
    assert set(re.findall(r"^\.PHONY: (.+)$", MAKEFILE, re.MULTILINE)) == WORDS


def test_only_words_that_exist_are_called() -> None:
    """Guards that README and continuous checks call no word that is gone."""
    called = set(re.findall(r"(?:^|`)\s*(?:\w+=\S+ )?make ([a-z-]+)", README + CI, re.MULTILINE))
    assert called <= WORDS
    assert {"plan", "test"} <= called
