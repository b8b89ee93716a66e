"""Requests signed by PyPI's http-message-signatures (RFC 9421), carried by requests."""

import datetime
import secrets

import requests
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey
from http_message_signatures import HTTPMessageSigner, MappingKeyResolver, algorithms
from jwcrypto import jwk
from jwcrypto.common import base64url_decode

COVERED = ("@method", "@authority", "@path", "@query")


class Signed(requests.auth.AuthBase):
    """Signs what is sent, as it is sent."""

    def __init__(self, key: jwk.JWK):
        self.keyid = key.thumbprint()
        secret = Ed25519PrivateKey.from_private_bytes(base64url_decode(key.export(as_dict=True)["d"]))
        keys = MappingKeyResolver(public_keys={}, private_keys={self.keyid: secret})
        self.signer = HTTPMessageSigner(signature_algorithm=algorithms.ED25519, key_resolver=keys)

    def __call__(self, request: requests.PreparedRequest) -> requests.PreparedRequest:
        return self.sign(request)

    def sign(self, request, late: int = 0, **given):
        """`late`: seconds; what is `given` stands in place of the usual."""
        request.headers.pop("Content-Digest", None)
        body = request.body.encode() if isinstance(request.body, str) else request.body
        created = datetime.datetime.now() - datetime.timedelta(seconds=late)
        usual = {
            "key_id": self.keyid,
            "created": created,
            "nonce": secrets.token_urlsafe(16),
            "tag": "witnessmark",
            "covered_component_ids": COVERED,
            # Its digest (RFC 9530) is covered with it.
            "body": body or None,
        }
        self.signer.sign(request, **(usual | given))
        return request


class Server:
    """A server's address, and asking there."""

    def __init__(self, address: str):
        self.address = address
        self.session = requests.Session()

    def prepared(self, method: str, path: str, body=None, **headers) -> requests.PreparedRequest:
        named = {name.replace("_", "-"): value for name, value in headers.items()}
        body = body.encode() if isinstance(body, str) else body
        return requests.Request(method, self.address + path, data=body, headers=named).prepare()

    def send(self, request: requests.PreparedRequest) -> requests.Response:
        return self.session.send(request, timeout=30)

    def ask(self, method: str, path: str, body=None, key=None, **headers) -> requests.Response:
        request = self.prepared(method, path, body, **headers)
        return self.send(Signed(key).sign(request) if key else request)


def kind_of(answer: requests.Response) -> tuple:
    """Status and kind of a fault."""
    fault = answer.json()
    assert fault["message"] and fault["hint"], fault
    return answer.status_code, fault["kind"]
