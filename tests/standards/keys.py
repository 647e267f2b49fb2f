"""Keys of invented people, made anew for each run by another library than the one that signs."""

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.serialization import pkcs12
from cryptography.x509.oid import NameOID

PASSPHRASE = "between two frosts"  # noqa: S105 - opens keys that a test makes for itself


@dataclass(frozen=True)
class Key:
    """Files of one key."""

    p12: Path
    certificate: Path


def new_key(folder: Path, name: str, days: tuple[int, int] = (-1, 30)) -> Key:
    """Make a key with a certificate of its own.

    Args:
        folder: where its two files go.
        name: who it belongs to.
        days: first and last day on which it is valid, from today.
    """
    key = ec.generate_private_key(ec.SECP256R1())
    person = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, name)])
    now = datetime.now(UTC)
    usage = x509.KeyUsage(
        digital_signature=True,
        content_commitment=True,
        key_encipherment=False,
        data_encipherment=False,
        key_agreement=False,
        key_cert_sign=False,
        crl_sign=False,
        encipher_only=False,
        decipher_only=False,
    )
    certificate = (
        x509.CertificateBuilder()
        .subject_name(person)
        .issuer_name(person)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now + timedelta(days=days[0]))
        .not_valid_after(now + timedelta(days=days[1]))
        .add_extension(usage, critical=True)
        .sign(key, hashes.SHA256())
    )
    secret = serialization.BestAvailableEncryption(PASSPHRASE.encode("utf-8"))
    p12, pem = folder / f"{name}.p12", folder / f"{name}.pem"
    p12.write_bytes(
        pkcs12.serialize_key_and_certificates(name.encode("utf-8"), key, certificate, None, secret)
    )
    pem.write_bytes(certificate.public_bytes(serialization.Encoding.PEM))
    return Key(p12, pem)
