//! Signed requests against RFC 9421 and RFC 9530.
//!
//! Appendix B.2.6 with its key (B.1.4), request and signature: seen as quoted by several other
//! implementations' tests. Examples of § 2.2: from memory. Content-Digest of RFC 9530 appendix B: seen in
//! a public page on the header.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use base64ct::{Base64UrlUnpadded, Encoding};
use sfv::{BareItem, Dictionary, InnerList, Item, ListEntry, Parser, StringRef};
use witnessmark_core::record::SigningSeed;
use witnessmark_sync::message::{Unsigned, content_digest, read, sign, signature_base};

/// test-key-ed25519, as a JWK.
const SECRET: &str = "n4Ni-HpISpVObnQMW0wOhCKROaIKqKtW_2ZYb2p9KcU";
const PUBLIC: &str = "JrQLj5P_89iXES9-vFgrIy29clF9CC_oPPsw3c5D0bs";

fn seed() -> SigningSeed {
    SigningSeed::from_bytes(&Base64UrlUnpadded::decode_vec(SECRET).unwrap().try_into().unwrap())
}

fn member(header: &str) -> ListEntry {
    let header: Dictionary = Parser::new(header).parse().unwrap();
    header["sig-b26"].clone()
}

#[test]
fn appendix_b_2_6_signs_alike() {
    let input = "sig-b26=(\"date\" \"@method\" \"@path\" \"@authority\" \"content-type\" \"content-length\")\
        ;created=1618884473;keyid=\"test-key-ed25519\"";
    let ListEntry::InnerList(covered) = member(input) else { panic!() };
    let base = signature_base(&covered, |name| {
        let value = match name {
            "date" => "Tue, 20 Apr 2021 02:07:55 GMT",
            "@method" => "POST",
            "@path" => "/foo",
            "@authority" => "example.com",
            "content-type" => "application/json",
            "content-length" => "18",
            _ => return None,
        };
        Some(value.to_owned())
    });
    let wanted = "\"date\": Tue, 20 Apr 2021 02:07:55 GMT\n\
        \"@method\": POST\n\
        \"@path\": /foo\n\
        \"@authority\": example.com\n\
        \"content-type\": application/json\n\
        \"content-length\": 18\n\
        \"@signature-params\": (\"date\" \"@method\" \"@path\" \"@authority\" \"content-type\" \
        \"content-length\");created=1618884473;keyid=\"test-key-ed25519\"";
    assert_eq!(base.as_deref(), Ok(wanted));
    let signature = "sig-b26=:wqcAqbmYJ2ji2glfAMaRy4gruYYnx2nEFN2HN6jrnDnQCK1u02Gb04v9EDgwUPiu4A0w6vuQv5l\
        Ip5WPpBKRCw==:";
    let wanted = BareItem::ByteSequence(seed().sign(wanted.as_bytes()).to_vec());
    assert_eq!(member(signature), ListEntry::Item(Item::new(wanted)));
    assert_eq!(seed().jwk().x, PUBLIC);
}

/// RFC 9530 appendix B.1 (with the line end), and the same without it as in RFC 9421 (both seen quoted).
#[test]
fn content_digests_are_the_standards() {
    let with_line_end = "sha-256=:RK/0qy18MlBSVnWgjwz6lZEWjP/lF5HF9bvEF8FabDg=:";
    assert_eq!(content_digest(b"{\"hello\": \"world\"}\n"), with_line_end);
    let without = "sha-256=:X48E9qOokqqrvdts8nOJRJN3OWDUoyWxBf7kbu9DBPE=:";
    assert_eq!(content_digest(b"{\"hello\": \"world\"}"), without);
}

/// The base that a request's own headers claim, written by hand from § 2.5, and signed by hand.
#[test]
fn a_request_is_signed_as_the_standard_writes_it() {
    let body = b"{\"hello\": \"world\"}\n";
    let request = Unsigned {
        method: "POST",
        authority: "WWW.example.com",
        path: "/path",
        query: Some("param=value&foo=bar&baz=bat%2Dman"),
        body,
    };
    let headers = sign(&request, 1_618_884_473, "b3k2pp5k7z-50gnwp.yemd", &seed()).unwrap();
    let keyid = seed().device().0;
    let params = format!(
        "(\"@method\" \"@authority\" \"@path\" \"@query\" \"content-digest\");created=1618884473\
         ;nonce=\"b3k2pp5k7z-50gnwp.yemd\";keyid=\"{keyid}\";alg=\"ed25519\";tag=\"witnessmark\""
    );
    assert_eq!(headers.signature_input, format!("sig={params}"));
    // § 2.2.3: the host in lower case. § 2.2.7: the query with its question mark, as sent.
    let base = format!(
        "\"@method\": POST\n\
         \"@authority\": www.example.com\n\
         \"@path\": /path\n\
         \"@query\": ?param=value&foo=bar&baz=bat%2Dman\n\
         \"content-digest\": sha-256=:RK/0qy18MlBSVnWgjwz6lZEWjP/lF5HF9bvEF8FabDg=:\n\
         \"@signature-params\": {params}"
    );
    let wanted = base64ct::Base64::encode_string(&seed().sign(base.as_bytes()));
    assert_eq!(headers.signature, format!("sig=:{wanted}:"));
    assert_eq!(read(&headers).unwrap().verify(&request, &seed().jwk()), Ok(()));
}

/// § 2.2.6: an empty path is one slash. § 2.2.7: no query is a question mark alone.
#[test]
fn an_empty_path_and_no_query_have_values() {
    let request = |path| Unsigned { method: "GET", authority: "example.com", path, query: None, body: b"" };
    let headers = sign(&request(""), 1, "nonce-of-eight", &seed()).unwrap();
    assert_eq!(headers.content_digest, None);
    let params = headers.signature_input.strip_prefix("sig=").unwrap();
    let base = format!(
        "\"@method\": GET\n\"@authority\": example.com\n\"@path\": /\n\"@query\": ?\n\"@signature-params\": {params}"
    );
    let wanted = base64ct::Base64::encode_string(&seed().sign(base.as_bytes()));
    assert_eq!(headers.signature, format!("sig=:{wanted}:"));
    assert_eq!(read(&headers).unwrap().verify(&request("/"), &seed().jwk()), Ok(()));
}

/// § 2.5: a value with a line end can't be told from two lines.
#[test]
fn a_line_end_within_a_value_is_refused() {
    let covered = InnerList::new(vec![Item::new(StringRef::from_str("a").unwrap())]);
    assert!(signature_base(&covered, |_| Some("one\n\"b\": two".into())).is_err());
    assert!(signature_base(&covered, |_| None).is_err());
}
