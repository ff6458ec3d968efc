"""A certificate of the shop's own, so that what travels from the phone is locked.

Nobody vouches for it: the phone's browser says so, and a person holds its SHA-256 against the one
in the window. It is kept, so that a phone that went on once is not asked each day.
"""

from __future__ import annotations

import hashlib
import importlib.util
import ipaddress
import os
import ssl
from contextlib import suppress
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

FILE = "phone-certificate.pem"
LASTS = timedelta(days=365)
RENEWED = timedelta(days=14)  # before its end
HOW_TO_GET = tr('Install it once, in the program\'s folder: .venv/bin/pip install ".[phone-lock]"')


@dataclass(frozen=True, slots=True)
class Lock:
    """What the server locks with, and the SHA-256 of its certificate as browsers show it."""

    context: ssl.SSLContext
    sha256: str


def can_lock() -> bool:
    """Tell whether the library that makes certificates is installed."""
    return importlib.util.find_spec("cryptography") is not None


def lock_for(shop: Path, address: str, now: datetime) -> Lock:
    """Return the lock for an address, with the shop's certificate or a new one.

    Raises ShopTrouble where it can be neither read nor written.
    """
    file = shop / FILE
    try:
        if not _serves(file, address, now):
            _write(file, _made(address, now))
        context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
        context.minimum_version = ssl.TLSVersion.TLSv1_2
        context.load_cert_chain(file)
        told = ssl.PEM_cert_to_DER_cert(_certificate_in(file))
    except (OSError, ValueError) as error:
        raise ShopTrouble(
            tr(
                "The certificate for phones, {file}, can't be used: {error}.",
                file=file,
                error=error,
            ),
            do=tr("Take the file away and try again, or open the page without the lock."),
        ) from error
    return Lock(context, _spaced(told))


def _spaced(certificate: bytes) -> str:
    digest = hashlib.sha256(certificate).hexdigest().upper()
    return " ".join(digest[at : at + 4] for at in range(0, len(digest), 4))


def _certificate_in(file: Path) -> str:
    text = file.read_text(encoding="ascii")
    begin = text.find("-----BEGIN CERTIFICATE-----")
    if begin < 0:
        raise ValueError(tr("there is none in it"))
    return text[begin:]


def _serves(file: Path, address: str, now: datetime) -> bool:
    """Tell whether the kept certificate names this address and lasts for a while."""
    from cryptography import x509

    try:
        kept = x509.load_pem_x509_certificate(_certificate_in(file).encode("ascii"))
        names = kept.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
        served = names.get_values_for_type(x509.IPAddress)
    except FileNotFoundError:
        return False
    except (ValueError, x509.ExtensionNotFound):
        return False  # damaged: another one takes its place
    lasts = kept.not_valid_before_utc <= now.astimezone(UTC) < kept.not_valid_after_utc - RENEWED
    return lasts and ipaddress.ip_address(address) in served


def _made(address: str, now: datetime) -> bytes:
    """Return a new key with its certificate, for this address alone."""
    from cryptography import x509
    from cryptography.hazmat.primitives import hashes, serialization
    from cryptography.hazmat.primitives.asymmetric import ec
    from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "Benchwitness in this shop")])
    begins = now.astimezone(UTC) - timedelta(days=1)  # a phone's clock may be behind
    made = (
        x509.CertificateBuilder(name, name, key.public_key(), x509.random_serial_number())
        .not_valid_before(begins)
        .not_valid_after(begins + LASTS)
        .add_extension(
            x509.SubjectAlternativeName([x509.IPAddress(ipaddress.ip_address(address))]),
            critical=False,
        )
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .sign(key, hashes.SHA256())
    )
    secret = key.private_bytes(
        serialization.Encoding.PEM,
        serialization.PrivateFormat.PKCS8,
        serialization.NoEncryption(),
    )
    return secret + made.public_bytes(serialization.Encoding.PEM)


def _write(file: Path, content: bytes) -> None:
    """Write key and certificate for this user alone, whole or not at all."""
    beside = file.with_name(f".{file.name}.{os.getpid()}.part")
    with suppress(FileNotFoundError):
        beside.unlink()
    beside.touch(0o600, exist_ok=False)  # before anything stands in it
    try:
        with beside.open("wb") as out:
            out.write(content)
            out.flush()
            os.fsync(out.fileno())
        beside.replace(file)
    except OSError:
        with suppress(OSError):
            beside.unlink()
        raise
