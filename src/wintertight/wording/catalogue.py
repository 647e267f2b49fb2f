"""One catalogue a language: subject, key, sentence; the only place where sentences are looked up.

A language is a package beside this file with the same subjects, the same keys and the same names
in braces; a test compares every one with English. It is read when somebody first asks for it.
"""

from collections.abc import Mapping
from functools import cache
from importlib import import_module
from types import MappingProxyType

from wintertight.errors import ChoiceError

Catalogue = Mapping[str, Mapping[str, str]]

LANGUAGES: Mapping[str, tuple[str, str]] = MappingProxyType(
    {
        "en": ("wintertight.wording.english", "ENGLISH"),
        "es": ("wintertight.wording.spanish", "SPANISH"),
        "fr": ("wintertight.wording.french", "FRENCH"),
    }
)
"""Where each catalogue stands, by the two letters of its language: module and name in it."""


@cache
def catalogue(language: str) -> Catalogue:
    """Give the catalogue of a language; read once, when it is first asked for.

    Args:
        language: two letters, such as "en".

    Returns:
        Sentences by subject and key.

    Raises:
        ChoiceError: there is no such catalogue.
    """
    found = LANGUAGES.get(language)
    if found is None:
        message = f"no language is called '{language}'; expected one of {', '.join(LANGUAGES)}"
        raise ChoiceError(message)
    module, name = found
    loaded: Catalogue = getattr(import_module(module), name)
    return loaded


def say(subject: str, key: str, language: str = "en", /, **params: str) -> str:
    """Say one thing.

    Args:
        subject: subject of the catalogue, such as "step" or "reason".
        key: key within the subject.
        language: two letters.
        params: what stands for the names in braces, as words already; surplus ones are ignored.

    Returns:
        The sentence.

    Raises:
        ChoiceError: there is no such language.
        KeyError: there is no such sentence, or a name in braces is not given.

    Example:
        >>> say("setting", "across")
        'across the pipe (shut)'
    """
    return catalogue(language)[subject][key].format_map(params)


def say_best(
    subject: str, key: str, circumstances: tuple[str, ...], language: str = "en", /, **params: str
) -> str:
    """Say "key: circumstance" for the first circumstance that has a sentence, else plain "key"."""
    sentences = catalogue(language)[subject]
    fitting = (f"{key}: {c}" for c in circumstances if f"{key}: {c}" in sentences)
    return sentences[next(fitting, key)].format_map(params)
