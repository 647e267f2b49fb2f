"""A paper signed with a key, and the check of such a signature: the optional part "sign".

The signature is one after ISO 32000-2, 12.8 (CAdES, as PAdES asks for it). It goes behind the paper
as an incremental update, so the signed file stays PDF/UA-1 and PDF/A-2a: nothing on the pages and
nothing in its metadata changes. No stranger's clock vouches for the time: it is the signer's own.
"""

# ruff: noqa: PLC0415 - the optional part loads only where something is signed

import io
import logging
from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from wintertight.coach.write_file import reason_of
from wintertight.errors import ChoiceError, InputError, Place, RecordError, UnreadableFile

if TYPE_CHECKING:
    from asn1crypto.x509 import Certificate
    from pyhanko.pdf_utils.reader import PdfFileReader
    from pyhanko.sign.signers import SimpleSigner

T = TypeVar("T")

FIELD = "technician"
"""Name of the signature's field."""

LARGEST_BYTES = 64_000_000
"""No winter record is larger than this."""


@dataclass(frozen=True, slots=True)
class Signature:
    """A signature that holds for the whole of a file.

    Attributes:
        by: the name on the signer's certificate.
        at: when it was signed, by the signer's own clock; None where it does not say.
        trusted: whether the certificate is one of, or was issued by, those that were given; None
            where none was.
    """

    by: str
    at: datetime | None
    trusted: bool | None


def read_signer(file: str, passphrase: str | None, option: str = "--sign") -> "SimpleSigner":
    """Read a key and its certificate.

    Args:
        file: a PKCS#12 file (.p12, .pfx).
        passphrase: what opens it; None where it needs nothing.
        option: the option that named it, for the message.

    Returns:
        What signs.

    Raises:
        ChoiceError: the optional part is not installed.
        InputError: the file cannot be read, or the passphrase does not open it.
    """
    _need_library(option)
    from pyhanko.sign.signers import SimpleSigner

    secret = None if passphrase is None else passphrase.encode("utf-8")
    content = _read(file, option)
    try:
        signer: SimpleSigner = SimpleSigner.load_pkcs12_data(
            content, other_certs=[], passphrase=secret
        )
    except (
        ValueError,
        TypeError,
        AttributeError,
    ):  # the library's words for no key, and no PKCS#12
        message = "expected a PKCS#12 file with a key, and the passphrase that opens it"
        raise InputError(message, Place(file, field=option)) from None
    return signer


def sign_paper(pdf: bytes, signer: "SimpleSigner", reason: str, field_title: str) -> bytes:
    """Sign a paper as it is; whoever changes or adds anything afterwards breaks the signature.

    Args:
        pdf: the paper.
        signer: as `read_signer` gives it.
        reason: what the signature says, in the paper's language.
        field_title: words for who cannot see it, in the paper's language.

    Returns:
        The bytes of the signed paper; they differ each time, for they hold the time.
    """
    from pyhanko.pdf_utils.incremental_writer import IncrementalPdfFileWriter
    from pyhanko.sign.fields import InvisSigSettings, MDPPerm, SigFieldSpec, SigSeedSubFilter
    from pyhanko.sign.signers import PdfSignatureMetadata, sign_pdf

    class Writer(IncrementalPdfFileWriter):
        """Adds a signature and leaves the paper's own metadata as they are.

        The library would write them anew, and drop what PDF/A asks for beside PDF/UA.
        """

        def _update_meta(self) -> None:
            pass

    # An object that is added stands on a line of its own, as PDF/A asks.
    writer = Writer(io.BytesIO(pdf + b"\n"))
    # Outside the page, for it shows nothing: then a reader need not be told of it on the page.
    unseen = InvisSigSettings(set_print_flag=True, set_hidden_flag=False, box_out_of_bounds=True)
    field = SigFieldSpec(FIELD, invis_sig_settings=unseen, readable_field_name=field_title)
    about = PdfSignatureMetadata(
        field_name=FIELD,
        reason=reason,
        certify=True,
        docmdp_permissions=MDPPerm.NO_CHANGES,
        subfilter=SigSeedSubFilter.PADES,
        md_algorithm="sha256",
    )
    signed = _aside(lambda: sign_pdf(writer, about, signer, new_field_spec=field))
    return bytes(signed.getbuffer())


def check_signature(file: str, trusted: Sequence[str] = ()) -> Signature:
    """Check the signature of a paper.

    Args:
        file: the signed paper.
        trusted: files of certificates (PEM or DER) of whom to believe.

    Returns:
        The signature, where it holds for the whole file.

    Raises:
        ChoiceError: the optional part is not installed.
        InputError: a file cannot be read.
        RecordError: there is no signature, the paper was changed or added to since, or it was
            signed by none of those to be believed.
    """
    _need_library("signature")
    from pyhanko.pdf_utils.misc import PdfReadError
    from pyhanko.pdf_utils.reader import PdfFileReader

    content = _read(file, "PAPER.pdf")
    believed = [one for name in trusted for one in _certificates(name)]
    try:
        reader = PdfFileReader(io.BytesIO(content))
        found = _aside(lambda: _judged(reader, file, believed))
    except (PdfReadError, ValueError, KeyError) as error:
        if isinstance(error, InputError):
            raise
        message = "expected a PDF file that is whole; this one cannot be read to its end"
        raise RecordError(message, Place(file)) from None
    return found


def _judged(reader: "PdfFileReader", file: str, believed: "list[Certificate]") -> Signature:
    from pyhanko.sign.validation import validate_pdf_signature
    from pyhanko.sign.validation.settings import KeyUsageConstraints
    from pyhanko.sign.validation.status import SignatureCoverageLevel
    from pyhanko_certvalidator import ValidationContext

    signatures = reader.embedded_signatures
    if len(signatures) != 1:
        message = f"expected a paper with one signature; it has {len(signatures) or 'none'}"
        raise RecordError(message, Place(file))
    context = ValidationContext(trust_roots=believed, allow_fetching=False)
    usage = KeyUsageConstraints(
        key_usage={"digital_signature", "non_repudiation"}, match_all_key_usages=False
    )
    status = validate_pdf_signature(signatures[0], context, key_usage_settings=usage)
    if not (status.intact and status.valid):
        message = "this paper was changed after it was signed; ask for the one that was signed"
        raise RecordError(message, Place(file))
    if status.coverage is not SignatureCoverageLevel.ENTIRE_FILE:
        message = "something was added after it was signed; ask for the paper as it was signed"
        raise RecordError(message, Place(file))
    subject = status.signing_cert.subject
    by = str(subject.native.get("common_name") or subject.human_friendly)
    certificate, now = status.signing_cert, datetime.now(UTC)
    # The library does not ask this of a certificate that is itself to be believed.
    valid = certificate.not_valid_before <= now <= certificate.not_valid_after
    if believed and not (status.trusted and valid):
        message = f"signed by {by}, who is none of those given with --trust, or no longer valid"
        raise RecordError(message, Place(file))
    return Signature(by, status.signer_reported_dt, True if believed else None)


def _aside(work: Callable[[], T]) -> T:
    """Do some work in a thread of its own: the library starts an event loop for each signature.

    Where one runs already, as in a server, no second one may start in the same thread.
    """
    with ThreadPoolExecutor(max_workers=1) as aside:
        return aside.submit(work).result()


def _need_library(option: str) -> None:
    """Refuse to go on without the optional part."""
    from importlib.util import find_spec

    if find_spec("pyhanko") is None:
        message = "signing needs the optional part: pip install 'wintertight[sign]'"
        raise ChoiceError(message, Place(field=option))
    for library in ("pyhanko", "pyhanko_certvalidator"):
        # What it would tell a screen comes out as one line of ours.
        logging.getLogger(library).addHandler(logging.NullHandler())


def _certificates(file: str) -> "list[Certificate]":
    from pyhanko.keys import load_certs_from_pemder_data

    content = _read(file, "--trust")
    try:
        found = list(load_certs_from_pemder_data(content))
        for certificate in found:
            certificate.native  # noqa: B018 - read to its end now, while we can say which file it is
    except (ValueError, TypeError):
        found = []
    if not found:
        message = "expected a certificate, PEM or DER"
        raise InputError(message, Place(file, field="--trust"))
    return found


def _read(file: str, field: str) -> bytes:
    try:
        with Path(file).open("rb") as stream:
            content = stream.read(LARGEST_BYTES + 1)
    except (OSError, ValueError) as error:
        message = f"expected a file that can be read: {reason_of(error)}"
        raise UnreadableFile(message, Place(file, field=field)) from error
    if len(content) > LARGEST_BYTES:
        message = f"expected a file of at most {LARGEST_BYTES} bytes"
        raise UnreadableFile(message, Place(file, field=field))
    return content
