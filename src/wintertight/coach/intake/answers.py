"""What was answered about a coach, and what is usual for its shape where nothing was."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from types import MappingProxyType

from wintertight.coach.intake.shapes import SHAPES, USUAL_SHAPE, Shape

Answer = str | tuple[str, ...]
"""A choice, several of them, "yes" or "no", or a quantity as it was said: "27 ft"."""


@dataclass(frozen=True, slots=True)
class Answers:
    """Answers by the key of their question; what is missing was not looked at.

    Attributes:
        given: the answers.
    """

    given: Mapping[str, Answer] = field(default_factory=lambda: MappingProxyType({}))

    def known(self, key: str) -> bool:
        """Tell whether a question was answered."""
        return key in self.given

    @property
    def shape(self) -> Shape:
        """The shape of the coach; a usual one where nobody has said."""
        name = self.given.get("shape", USUAL_SHAPE)
        return SHAPES[name if isinstance(name, str) else USUAL_SHAPE]

    def best(self, key: str) -> str:
        """Give the one choice that was given, or what is usual for the shape."""
        answer = self.given.get(key, self.shape.usual.get(key, ""))
        return answer if isinstance(answer, str) else ""

    def several(self, key: str) -> tuple[str, ...]:
        """Give the choices that were given; none where nobody has looked."""
        answer = self.given.get(key, ())
        return answer if isinstance(answer, tuple) else ()

    def yes(self, key: str) -> bool:
        """Tell whether a question was answered with yes."""
        return self.given.get(key) == "yes"

    def with_answer(self, key: str, answer: Answer) -> "Answers":
        """Give the answers with one more, or another one."""
        return replace(self, given=MappingProxyType({**self.given, key: answer}))

    def without(self, key: str) -> "Answers":
        """Give the answers with one taken back."""
        kept = {name: answer for name, answer in self.given.items() if name != key}
        return replace(self, given=MappingProxyType(kept))
