"""One catalogue a language: subject, key, sentence; the only place where sentences are looked up.

A language is a package beside this file with the same subjects, the same keys and the same names
in braces; a test compares every one with English. It is loaded when it is first asked for.
"""

from collections.abc import Mapping
from functools import cache
from importlib import import_module
from types import MappingProxyType

from wintertight.errors import ChoiceError

Catalogue = Mapping[str, Mapping[str, str]]

LANGUAGES: Mapping[str, str] = MappingProxyType({"en": "english", "fr": "french"})
"""The package of each language by its two letters; its catalogue has the same name in capitals."""


def catalogue(language: str) -> Catalogue:
    """Give the catalogue of a language.

    Args:
        language: two letters, such as "en".

    Returns:
        Sentences by subject and key.

    Raises:
        ChoiceError: there is no such catalogue.
    """
    if language not in LANGUAGES:
        message = f"no language is called '{language}'; expected one of {', '.join(LANGUAGES)}"
        raise ChoiceError(message)
    return _loaded(LANGUAGES[language])


@cache
def _loaded(package: str) -> Catalogue:
    module = import_module(f"wintertight.wording.{package}")
    loaded: Catalogue = getattr(module, package.upper())
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
