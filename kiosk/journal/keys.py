"""The kiosk's signing key: Ed25519 (RFC 8032), made at first use, never leaving its folder."""

from __future__ import annotations

import os
from dataclasses import dataclass, field
from pathlib import Path

from cryptography.exceptions import InvalidSignature, UnsupportedAlgorithm
from cryptography.hazmat.primitives import serialization as s
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey

KEY_FILE = "signing.key"
_ONLY_THE_OWNER = 0o600


class NoKey(Exception):
    """A key cannot be read or made; the message says why and how to mend it."""


@dataclass(frozen=True, slots=True)
class SigningKey:
    """A private key that signs; only its public half can be shown."""

    _private: Ed25519PrivateKey = field(repr=False)

    @property
    def public(self) -> str:
        """The public key, 32 bytes in hexadecimal."""
        return self._private.public_key().public_bytes_raw().hex()

    def sign(self, message: bytes) -> str:
        """Return the signature of a message, 64 bytes in hexadecimal."""
        return self._private.sign(message).hex()


def signing_key(folder: Path) -> tuple[SigningKey, bool]:
    """Return the key of a data folder, and whether it had to be made. Raises NoKey."""
    file = folder / KEY_FILE
    try:
        if file.exists():
            return _read(file), False
        _write(file, Ed25519PrivateKey.generate())
        return _read(file), True
    except OSError as error:
        raise NoKey(f"{file}: {error}") from error


def _read(file: Path) -> SigningKey:
    file.chmod(_ONLY_THE_OWNER)
    try:
        private = s.load_pem_private_key(file.read_bytes(), password=None)
    except (ValueError, TypeError, UnsupportedAlgorithm) as error:
        raise NoKey(
            f"{file} holds no key ({error}). Move it away: another key is then made, and the "
            "journal says so."
        ) from error
    if not isinstance(private, Ed25519PrivateKey):
        raise NoKey(f"{file} holds a key of another kind than Ed25519. Move it away.")
    return SigningKey(private)


def _write(file: Path, private: Ed25519PrivateKey) -> None:
    """Put a key where none lies; where another process was quicker, its key stays."""
    text = private.private_bytes(s.Encoding.PEM, s.PrivateFormat.PKCS8, s.NoEncryption())
    half = file.with_name(f"{file.name}.{os.getpid()}")
    handle = os.open(half, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, _ONLY_THE_OWNER)
    try:
        with os.fdopen(handle, "wb") as out:
            out.write(text)
            out.flush()
            os.fsync(out.fileno())
        if not file.exists():
            half.rename(file)
    finally:
        half.unlink(missing_ok=True)


def as_pem(public: str) -> str:
    """Write a public key as PEM, as other tools read it."""
    key = Ed25519PublicKey.from_public_bytes(bytes.fromhex(public))
    return key.public_bytes(s.Encoding.PEM, s.PublicFormat.SubjectPublicKeyInfo).decode("ascii")


def from_pem(file: Path) -> str:
    """Read a public key from a PEM file, as hexadecimal. Raises NoKey."""
    try:
        key = s.load_pem_public_key(file.read_bytes())
    except (OSError, ValueError, UnsupportedAlgorithm) as error:
        raise NoKey(f"{file} holds no public key in PEM form: {error}") from error
    if not isinstance(key, Ed25519PublicKey):
        raise NoKey(f"{file} holds a key of another kind than Ed25519.")
    return key.public_bytes_raw().hex()


def signed_by(public: str, message: bytes, signature: str) -> bool:
    """Tell whether a signature is that of a message under a public key; all but text is bytes."""
    try:
        key = Ed25519PublicKey.from_public_bytes(bytes.fromhex(public))
        key.verify(bytes.fromhex(signature), message)
    except (InvalidSignature, ValueError):
        return False
    return True
