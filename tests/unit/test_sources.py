from wintertight.sources import SOURCES, cite


def test_each_source_is_complete() -> None:
    """Guards that every source has an author, a title and its own key, and cites in one line."""
    for key, source in SOURCES.items():
        assert source.key == key
        assert source.author
        assert source.title
        assert "\n" not in cite(key)
        assert f"[{source.mark}]" in cite(key)
