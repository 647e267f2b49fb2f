"""A signed winter record: it holds, another program agrees, and whoever touches it is found out."""

import asyncio
import shutil
import subprocess
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from tests.recorded_jobs import demo_job
from tests.standards.keys import PASSPHRASE, Key, new_key
from tests.standards.validator import faults
from wintertight.documents.signed_paper import check_signature, read_signer, sign_paper
from wintertight.documents.winter_record import winter_record_pdf
from wintertight.errors import InputError, RecordError, UnreadableFile

REASON = "Technician: done as written down"


@pytest.fixture(scope="module")
def key(tmp_path_factory: pytest.TempPathFactory) -> Key:
    """Give the key of an invented technician."""
    return new_key(tmp_path_factory.mktemp("keys"), "T. Heron")


@pytest.fixture(scope="module")
def paper() -> bytes:
    """Give a winter record as it is printed."""
    return winter_record_pdf(demo_job("small-trailer-good"))


@pytest.fixture(scope="module")
def signed(key: Key, paper: bytes) -> bytes:
    """Give the same, signed."""
    return sign_paper(paper, read_signer(str(key.p12), PASSPHRASE), REASON, "Signatures")


def written(folder: Path, content: bytes) -> str:
    """Write a paper and name its file."""
    file = folder / "record.pdf"
    file.write_bytes(content)
    return str(file)


def test_a_signature_holds(tmp_path: Path, key: Key, signed: bytes) -> None:
    """Guards that a signed record names its signer, and is believed by the signer's certificate."""
    file = written(tmp_path, signed)
    known = check_signature(file, [str(key.certificate)])
    assert (known.by, known.trusted) == ("T. Heron", True)
    assert known.at is not None
    assert check_signature(file).trusted is None


def test_a_signature_is_made_and_checked_within_a_server(
    tmp_path: Path, key: Key, paper: bytes
) -> None:
    """Guards that an event loop which runs already, as in a server, is no hindrance."""

    async def serve() -> str:
        signer = read_signer(str(key.p12), PASSPHRASE)
        return check_signature(
            written(tmp_path, sign_paper(paper, signer, REASON, "Signatures"))
        ).by

    # In a thread of its own: the tests of pictures keep a loop running in this one.
    with ThreadPoolExecutor(max_workers=1) as server:
        assert server.submit(lambda: asyncio.run(serve())).result() == "T. Heron"


def test_another_program_agrees(tmp_path: Path, signed: bytes, paper: bytes) -> None:
    """Guards the signature by Poppler's pdfsig, which shares no code with what made it."""
    pdfsig = shutil.which("pdfsig")
    if pdfsig is None:
        pytest.skip("no pdfsig on this machine (poppler-utils): nobody else checks the signature")

    def judged(content: bytes) -> str:
        asked = [pdfsig, "-nocert", written(tmp_path, content)]
        return subprocess.run(asked, capture_output=True, text=True, check=False).stdout  # noqa: S603

    told = judged(signed)
    assert "Signature is Valid" in told
    assert "Total document signed" in told
    assert "T. Heron" in told
    assert "Signature is Valid" not in judged(_spoiled(signed, len(paper) // 2))


def test_what_is_printed_stays_as_it_was(signed: bytes, paper: bytes) -> None:
    """Guards that signing only adds behind the paper, and breaks neither PDF/UA-1 nor PDF/A-2a."""
    assert signed.startswith(paper)
    assert faults(signed) == []


def _spoiled(content: bytes, place: int) -> bytes:
    return content[:place] + bytes([content[place] ^ 1]) + content[place + 1 :]


@pytest.mark.parametrize("share", [0.01, 0.2, 0.4, 0.6, 0.8, 0.97])
def test_one_bit_changed_is_refused(
    tmp_path: Path, key: Key, signed: bytes, paper: bytes, share: float
) -> None:
    """Guards that a paper changed after it was signed is refused, wherever it was changed."""
    file = written(tmp_path, _spoiled(signed, int(share * len(paper))))
    with pytest.raises(RecordError):
        check_signature(file, [str(key.certificate)])


def test_what_was_added_behind_is_refused(tmp_path: Path, key: Key, signed: bytes) -> None:
    """Guards that nothing can be added to a signed paper."""
    with pytest.raises(RecordError, match="added after"):
        check_signature(written(tmp_path, signed + b"\n% more\n"), [str(key.certificate)])


def test_a_paper_without_a_signature_is_refused(tmp_path: Path, paper: bytes) -> None:
    """Guards that an unsigned paper is never called signed."""
    with pytest.raises(RecordError, match="it has none"):
        check_signature(written(tmp_path, paper))


def test_somebody_else_is_not_believed(tmp_path: Path, signed: bytes) -> None:
    """Guards that a signature by none of those to be believed is refused."""
    other = new_key(tmp_path, "T. Heron")
    with pytest.raises(RecordError, match="none of those given"):
        check_signature(written(tmp_path, signed), [str(other.certificate)])


def test_a_certificate_that_ran_out_is_not_believed(tmp_path: Path, paper: bytes) -> None:
    """Guards that a key past its last day signs nothing that is believed."""
    old = new_key(tmp_path, "T. Heron", (-30, -2))
    signed = sign_paper(paper, read_signer(str(old.p12), PASSPHRASE), REASON, "Signatures")
    with pytest.raises(RecordError, match="no longer valid"):
        check_signature(written(tmp_path, signed), [str(old.certificate)])


def test_a_key_that_does_not_open_is_told(tmp_path: Path, key: Key) -> None:
    """Guards that a wrong passphrase, no passphrase and no key are one clear line each."""
    for file, passphrase in ((key.p12, "wrong"), (key.p12, None), (key.certificate, PASSPHRASE)):
        with pytest.raises(InputError, match="PKCS#12"):
            read_signer(str(file), passphrase)
    with pytest.raises(UnreadableFile, match="can be read"):
        read_signer(str(tmp_path / "none.p12"), PASSPHRASE)


def test_a_file_that_is_no_paper_is_told(tmp_path: Path, key: Key, signed: bytes) -> None:
    """Guards that half a paper, another file and a wrong certificate are one clear line each."""
    for content in (b"", b"winter", signed[: len(signed) // 2]):
        with pytest.raises(RecordError):
            check_signature(written(tmp_path, content))
    with pytest.raises(InputError, match="certificate"):
        check_signature(written(tmp_path, signed), [str(key.p12)])
