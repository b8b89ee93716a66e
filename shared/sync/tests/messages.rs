//! What a signed request must be, and what is refused.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use proptest::prelude::*;
use witnessmark_core::record::{Jwk, KeyFault, SigningSeed};
use witnessmark_sync::message::{Headers, MessageFault, Unsigned, content_digest, read, sign};

const BODY: &[u8] = b"{\"a\":1}\n";
const REQUEST: Unsigned<'_> = Unsigned {
    method: "POST",
    authority: "school.example:8443",
    path: "/v1/records",
    query: Some("own=whole"),
    body: BODY,
};
const ASK: Unsigned<'_> =
    Unsigned { method: "GET", path: "/v1/log", query: Some("from=7"), body: b"", ..REQUEST };
const NONCE: &str = "0123456789abcdef";

fn seed() -> SigningSeed {
    SigningSeed::from_bytes(&[7; 32])
}

fn signed(request: &Unsigned<'_>) -> Headers {
    sign(request, 1_700_000_000, NONCE, &seed()).unwrap()
}

fn verified(headers: &Headers, request: &Unsigned<'_>) -> Result<(), MessageFault> {
    read(headers)?.verify(request, &seed().jwk())
}

/// The outcome when the text of the signature's input is another.
fn with_input(from: &str, to: &str) -> Result<(), MessageFault> {
    let mut headers = signed(&REQUEST);
    let changed = headers.signature_input.replacen(from, to, 1);
    assert_ne!(changed, headers.signature_input, "{from}");
    headers.signature_input = changed;
    verified(&headers, &REQUEST)
}

#[test]
fn a_claim_says_who_and_when() {
    for request in [REQUEST, ASK] {
        let claim = read(&signed(&request)).unwrap();
        assert_eq!((claim.keyid.clone(), claim.created), (seed().device(), 1_700_000_000));
        assert_eq!(claim.nonce, NONCE);
        assert_eq!(claim.verify(&request, &seed().jwk()), Ok(()));
    }
}

#[test]
fn headers_are_picked_from_all() {
    let headers = signed(&REQUEST);
    let each: Vec<_> = headers.each().map(|(name, text)| (name, text.as_bytes())).collect();
    assert_eq!(each.len(), 3);
    let others = [("host", b"school.example".as_slice()), ("x-odd", b"\xff")];
    let all = || others.into_iter().chain(each.clone());
    assert_eq!(Headers::pick(all()), Ok(headers.clone()));
    let shouted = each.iter().map(|(name, text)| (name.to_uppercase(), *text)).collect::<Vec<_>>();
    assert_eq!(Headers::pick(shouted.iter().map(|(name, text)| (name.as_str(), *text))), Ok(headers.clone()));
    for (name, text) in &each {
        let again = all().chain([(*name, *text)]);
        assert_eq!(Headers::pick(again), Err(MessageFault::Repeated(name)));
        let without = Headers::pick(all().filter(|(other, _)| other != name));
        match *name {
            "content-digest" => assert_eq!(without.unwrap().content_digest, None),
            name => assert_eq!(without, Err(MessageFault::Missing(name))),
        }
        let odd = all().filter(|(other, _)| other != name).chain([(*name, b"\xff".as_slice())]);
        assert_eq!(Headers::pick(odd), Err(MessageFault::Malformed(name)));
    }
}

#[test]
fn another_request_is_not_the_signed_one() {
    let headers = signed(&REQUEST);
    for other in [
        Unsigned { method: "PUT", ..REQUEST },
        Unsigned { method: "post", ..REQUEST },
        Unsigned { authority: "other.example:8443", ..REQUEST },
        Unsigned { authority: "school.example", ..REQUEST },
        Unsigned { path: "/v1/record", ..REQUEST },
        Unsigned { path: "/v1/records/", ..REQUEST },
        Unsigned { query: Some("own=part"), ..REQUEST },
        Unsigned { query: None, ..REQUEST },
    ] {
        assert_eq!(verified(&headers, &other), Err(MessageFault::Forged), "{other:?}");
    }
    for body in [b"".as_slice(), b"{\"a\":2}\n"] {
        assert_eq!(verified(&headers, &Unsigned { body, ..REQUEST }), Err(MessageFault::Body));
    }
    // A host's letters are the same in either case (§ 2.2.3).
    assert_eq!(verified(&headers, &Unsigned { authority: "School.EXAMPLE:8443", ..REQUEST }), Ok(()));
}

#[test]
fn a_body_needs_a_signed_digest() {
    // Signed without a body, and a body slipped in.
    let headers = signed(&ASK);
    let slipped = Unsigned { body: BODY, ..ASK };
    assert_eq!(verified(&headers, &slipped), Err(MessageFault::Uncovered("content-digest")));
    // With a digest too, but one that nobody signed.
    let headers = Headers { content_digest: Some(content_digest(BODY)), ..headers };
    assert_eq!(verified(&headers, &slipped), Err(MessageFault::Uncovered("content-digest")));
    // The digest taken away, or another body's.
    let headers = Headers { content_digest: None, ..signed(&REQUEST) };
    assert_eq!(verified(&headers, &REQUEST), Err(MessageFault::Component("\"content-digest\"".into())));
    let headers = Headers { content_digest: Some(content_digest(b"other")), ..signed(&REQUEST) };
    assert_eq!(verified(&headers, &REQUEST), Err(MessageFault::Body));
    assert_eq!(verified(&headers, &Unsigned { body: b"other", ..REQUEST }), Err(MessageFault::Forged));
    for odd in ["", "sha-256", "sha-256=:AA==:", "sha-512=:AA==:", "sha-256=\"x\"", "sha-256=(:AA==:)"] {
        let headers = Headers { content_digest: Some(odd.into()), ..signed(&REQUEST) };
        assert_eq!(verified(&headers, &REQUEST), Err(MessageFault::Malformed("content-digest")), "{odd}");
    }
    let twice = format!("{0}, {0}", content_digest(BODY));
    let headers = Headers { content_digest: Some(twice), ..signed(&REQUEST) };
    assert_eq!(verified(&headers, &REQUEST), Err(MessageFault::Malformed("content-digest")));
}

#[test]
fn nothing_may_be_left_open() {
    for name in ["@method", "@authority", "@path", "@query", "content-digest"] {
        let quoted = format!("\"{name}\"");
        let last = name == "content-digest";
        let cut = if last { format!(" {quoted}") } else { format!("{quoted} ") };
        let open = with_input(&cut, "");
        assert_eq!(open, Err(MessageFault::Uncovered(name)));
        let twice = with_input(&quoted, &format!("{quoted} {quoted}"));
        assert_eq!(twice, Err(MessageFault::Component(quoted.clone())));
        let with_parameter = with_input(&quoted, &format!("{quoted};req"));
        assert_eq!(with_parameter, Err(MessageFault::Component(format!("{quoted};req"))));
    }
    let more = with_input("\"@query\"", "\"@query\" \"x-more\"");
    assert_eq!(more, Err(MessageFault::Component("\"x-more\"".into())));
    let token = with_input("\"@query\"", "query");
    assert_eq!(token, Err(MessageFault::Component("query".into())));
}

#[test]
fn each_parameter_is_there_and_means_us() {
    for (from, name) in [
        (";created=1700000000", "created"),
        (";nonce=\"0123456789abcdef\"", "nonce"),
        (";alg=\"ed25519\"", "alg"),
        (";tag=\"witnessmark\"", "tag"),
    ] {
        assert_eq!(with_input(from, ""), Err(MessageFault::Parameter(name)));
    }
    let keyid = format!(";keyid=\"{}\"", seed().device());
    assert_eq!(with_input(&keyid, ""), Err(MessageFault::Parameter("keyid")));
    for (from, to, name) in [
        ("\"ed25519\"", "\"rsa-pss-sha512\"", "alg"),
        ("\"ed25519\"", "\"Ed25519\"", "alg"),
        ("\"ed25519\"", "ed25519", "alg"),
        ("\"witnessmark\"", "\"other\"", "tag"),
        ("1700000000", "\"1700000000\"", "created"),
        ("1700000000", "1700000000.5", "created"),
        (NONCE, "short", "nonce"),
        (NONCE, &"x".repeat(65), "nonce"),
    ] {
        assert_eq!(with_input(from, to), Err(MessageFault::Parameter(name)), "{to}");
    }
    let expires = with_input(";tag", ";expires=1700000001;tag");
    assert_eq!(expires, Err(MessageFault::UnknownParameter("expires".into())));
    // Another time or nonce reads, but wasn't signed.
    assert_eq!(with_input("1700000000", "1700000001"), Err(MessageFault::Forged));
    assert_eq!(with_input(NONCE, "0123456789abcdeg"), Err(MessageFault::Forged));
}

#[test]
fn there_is_one_signature_in_one_form() {
    let good = signed(&REQUEST);
    let labels = Err(MessageFault::Labels);
    for (input, signature) in [
        (good.signature_input.replacen("sig=", "other=", 1), good.signature.clone()),
        (String::new(), good.signature.clone()),
        (good.signature_input.clone(), String::new()),
        (format!("{}, more=()", good.signature_input), good.signature.clone()),
        (good.signature_input.clone(), format!("{}, more=:AA==:", good.signature)),
    ] {
        let headers = Headers { signature_input: input, signature, ..good.clone() };
        let found = verified(&headers, &REQUEST);
        // An empty dictionary has no form at all.
        let empty = headers.signature_input.is_empty() || headers.signature.is_empty();
        assert!(found == labels || empty && matches!(found, Err(MessageFault::Malformed(_))), "{found:?}");
    }
    // A member twice: parsers keep the last in silence.
    let twice = format!("{0}, {0}", good.signature_input);
    let headers = Headers { signature_input: twice, ..good.clone() };
    assert_eq!(verified(&headers, &REQUEST), Err(MessageFault::Malformed("signature-input")));
    let headers = Headers { signature: format!("sig=:AA==:, {}", good.signature), ..good.clone() };
    assert_eq!(verified(&headers, &REQUEST), Err(MessageFault::Malformed("signature")));
    let twice = with_input(";created=1700000000", ";created=1;created=1700000000");
    assert_eq!(twice, Err(MessageFault::Malformed("signature-input")));
    for odd in ["sig", "sig=:AA==:", "sig=\"x\"", "sig=()", "sig=:!:", "\u{e9}"] {
        let headers = Headers { signature: odd.into(), ..good.clone() };
        assert_eq!(verified(&headers, &REQUEST), Err(MessageFault::Malformed("signature")), "{odd}");
    }
    let headers = Headers { signature_input: "sig=1".into(), ..good };
    assert_eq!(verified(&headers, &REQUEST), Err(MessageFault::Malformed("signature-input")));
}

#[test]
fn only_the_named_key_counts() {
    let claim = read(&signed(&REQUEST)).unwrap();
    let other = SigningSeed::from_bytes(&[8; 32]).jwk();
    assert_eq!(claim.verify(&REQUEST, &other), Err(MessageFault::OtherKey));
    // Another key's request that names ours.
    let mut headers = sign(&REQUEST, 1_700_000_000, NONCE, &SigningSeed::from_bytes(&[8; 32])).unwrap();
    headers.signature_input = signed(&REQUEST).signature_input;
    assert_eq!(verified(&headers, &REQUEST), Err(MessageFault::Forged));
    // A key of small order, under which much verifies (the neutral point; RFC 8032 § 5.1.3).
    let mut neutral = [0; 32];
    neutral[0] = 1;
    let weak = Jwk::from_bytes(&neutral);
    let mut headers = signed(&REQUEST);
    headers.signature_input = headers.signature_input.replace(&seed().device().0, &weak.thumbprint().0);
    let found = read(&headers).unwrap().verify(&REQUEST, &weak);
    assert_eq!(found, Err(MessageFault::Key(KeyFault::Weak)));
}

#[test]
fn what_cannot_be_sent_is_not_signed() {
    for request in [
        Unsigned { path: "/v1/\r\nx: y", ..REQUEST },
        Unsigned { query: Some("n=\u{e9}"), ..REQUEST },
        Unsigned { authority: "a\nb", ..REQUEST },
    ] {
        let found = sign(&request, 1, NONCE, &seed());
        assert!(matches!(found, Err(MessageFault::Value(_))), "{found:?}");
    }
    for (created, nonce, name) in
        [(i64::MAX, NONCE, "created"), (1, "short", "nonce"), (1, "with a line\nend", "nonce")]
    {
        assert_eq!(sign(&REQUEST, created, nonce, &seed()), Err(MessageFault::Parameter(name)));
    }
}

proptest! {
    /// Every request that can be sent is signed and verified.
    #[test]
    fn what_is_signed_verifies(
        method in "[A-Z]{1,9}", authority in "[a-zA-Z0-9.:-]{1,40}", path in "(/[!-~]{0,20}){0,3}",
        query in prop::option::of("[!-~]{0,40}"), body in prop::collection::vec(any::<u8>(), 0..99),
        created in -1_000_000_i64..9_999_999_999, nonce in "[ -~]{8,64}",
    ) {
        let request = Unsigned {
            method: &method, authority: &authority, path: &path, query: query.as_deref(), body: &body,
        };
        let headers = sign(&request, created, &nonce, &seed()).unwrap();
        let claim = read(&headers).unwrap();
        prop_assert_eq!((claim.created, &claim.nonce), (created, &nonce));
        prop_assert_eq!(claim.verify(&request, &seed().jwk()), Ok(()));
    }

    /// Reading ends in an answer, and strangers' text is never believed.
    #[test]
    fn random_headers_are_refused(
        input in r#"(sig=)?(\(|\)|;|=|"@method"|"@path"|"@query"|created|alg|[0-9]{1,20}|"ed25519"|, | |\PC){0,40}"#,
        signature in "(sig=)?(:[A-Za-z0-9+/=]{0,90}:|\\PC{0,20})",
        digest in prop::option::of("(sha-256=)?(:[A-Za-z0-9+/=]{0,50}:|\\PC{0,20})"),
    ) {
        let headers = Headers { content_digest: digest, signature_input: input, signature };
        prop_assert!(verified(&headers, &REQUEST).is_err());
    }

    /// Any one character changed in a header spoils the request.
    #[test]
    fn a_changed_header_is_refused(which in 0usize..3, at in any::<prop::sample::Index>(), to in b' '..=b'~') {
        let mut headers = signed(&REQUEST);
        let digest = headers.content_digest.get_or_insert_default();
        let text = [digest, &mut headers.signature_input, &mut headers.signature].into_iter().nth(which).unwrap();
        let mut bytes = text.clone().into_bytes();
        let at = at.index(bytes.len());
        prop_assume!(bytes[at] != to);
        bytes[at] = to;
        *text = String::from_utf8(bytes).unwrap();
        prop_assert!(verified(&headers, &REQUEST).is_err());
    }
}
