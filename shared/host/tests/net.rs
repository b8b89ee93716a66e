//! What comes back over the network, whole, in part or not at all. The forms of answers are those of
//! RFC 9110 (from memory: 8.6 Content-Length, 14.4 Content-Range, 15.4 redirections) and RFC 9112.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::net::TcpListener;

use common::{Server, body};
use witnessmark_app::Request;
use witnessmark_host::Net;
use witnessmark_host::net::Unsent;

#[test]
fn a_request_goes_out_as_it_was_made_and_the_answer_comes_back() {
    let server = Server::answering(|_| {
        b"HTTP/1.1 422 Unprocessable\r\nContent-Type: application/json\r\nContent-Length: 2\r\n\r\n{}"
            .to_vec()
    });
    let headers =
        vec![("content-type".to_owned(), "application/jsonl".to_owned()), ("signature".into(), "x".into())];
    let request =
        Request { headers, body: b"line\n".to_vec(), ..server.request("POST", "/v1/records?own=whole") };
    let answer = Net::default().send(&request).unwrap();
    assert_eq!((answer.status, answer.media.as_deref()), (422, Some("application/json")));
    assert_eq!((answer.body.as_slice(), answer.broken, answer.length), (b"{}".as_slice(), false, None));
    let came = &server.came()[0];
    assert_eq!(came.line, "POST /v1/records?own=whole HTTP/1.1");
    assert_eq!(came.header("host"), server.address.strip_prefix("http://"));
    assert_eq!((came.header("signature"), came.body.as_slice()), (Some("x"), b"line\n".as_slice()));
    assert_eq!(came.header("content-type"), Some("application/jsonl"));
    assert!(came.header("user-agent").unwrap().starts_with("witnessmark/"));
    let packed = came.header("accept-encoding").unwrap();
    assert!(packed.contains("gzip") && packed.contains("zstd"), "{packed}");
    assert_eq!(came.header("cookie"), None);
}

#[test]
fn what_is_packed_is_unpacked() {
    // `printf 'one\ntwo\n' | gzip -nc | xxd -p`
    let packed = "1f8b0800000000000003cbcf4be52a29cfe70200e60bba1208000000";
    let bytes: Vec<u8> =
        (0..packed.len()).step_by(2).map(|n| u8::from_str_radix(&packed[n..n + 2], 16).unwrap()).collect();
    let server = Server::answering(move |_| {
        let head =
            format!("HTTP/1.1 200 OK\r\nContent-Encoding: gzip\r\nContent-Length: {}\r\n\r\n", bytes.len());
        [head.as_bytes(), &bytes].concat()
    });
    let answer = Net::default().send(&server.get("/v1/log")).unwrap();
    assert_eq!((answer.body.as_slice(), answer.broken), (b"one\ntwo\n".as_slice(), false));
}

#[test]
fn a_connection_that_breaks_leaves_what_came() {
    let server = Server::saying("HTTP/1.1 200 OK\r\nContent-Length: 100\r\n\r\nonly this");
    let answer = Net::default().send(&server.get("/v1/log")).unwrap();
    assert_eq!((answer.status, answer.broken, answer.body.as_slice()), (200, true, b"only this".as_slice()));
}

#[test]
fn a_head_tells_the_length_and_a_part_tells_the_whole() {
    let server = Server::answering(|came| {
        if came.line.starts_with("HEAD") {
            b"HTTP/1.1 206 Partial Content\r\nContent-Length: 70000\r\n\r\n".to_vec()
        } else {
            assert_eq!(came.header("range"), Some("bytes=2-4"));
            // A part that was packed would be a part of something else.
            assert_eq!(came.header("accept-encoding"), Some("identity"));
            b"HTTP/1.1 206 Partial Content\r\nContent-Type: image/png\r\nContent-Range: bytes 2-4/10\r\n\
              Content-Length: 3\r\n\r\nabc"
                .to_vec()
        }
    });
    let net = Net::default();
    let head = net.send(&server.request("HEAD", "/v1/photo/0a")).unwrap();
    assert_eq!((head.status, head.length, head.body.len(), head.broken), (206, Some(70000), 0, false));
    let headers = vec![("range".to_owned(), "bytes=2-4".to_owned())];
    let part = net.send(&Request { headers, ..server.get("/v1/photo/0a") }).unwrap();
    assert_eq!((part.status, part.length, part.body.as_slice()), (206, Some(10), b"abc".as_slice()));
    assert_eq!(part.media.as_deref(), Some("image/png"));
}

#[test]
fn more_than_any_page_is_not_taken() {
    let most = 32 * 1024 * 1024;
    let server = Server::answering(move |came| {
        body("200 OK", &vec![b'x'; if came.line.contains("/most") { most } else { most + 1 }])
    });
    let net = Net::default();
    assert_eq!(net.send(&server.get("/most")).unwrap().body.len(), most);
    assert_eq!(net.send(&server.get("/more")).unwrap_err(), Unsent::TooLarge);
}

#[test]
fn no_redirection_is_followed() {
    let server = Server::answering(|came| {
        let host = came.header("host").unwrap();
        format!("HTTP/1.1 307 Temporary Redirect\r\nLocation: http://{host}/elsewhere\r\nContent-Length: 0\r\n\r\n")
            .into_bytes()
    });
    assert_eq!(Net::default().send(&server.get("/v1/school")).unwrap().status, 307);
    assert_eq!(server.came().len(), 1);
}

#[test]
fn nothing_goes_unencrypted_to_another_machine() {
    let request =
        |url: &str| Request { method: "GET", url: url.into(), headers: Vec::new(), body: Vec::new() };
    // TEST-NET-1 of RFC 5737: nobody's machine.
    for url in ["http://192.0.2.1/v1/school", "http://school.example/", "file:///etc/passwd", "nothing"] {
        assert_eq!(Net::default().send(&request(url)).unwrap_err(), Unsent::Plain, "{url}");
    }
}

#[test]
fn nobody_there_is_told() {
    let free = TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap();
    for scheme in ["http", "https"] {
        let url = format!("{scheme}://{free}/v1/school");
        let request = Request { method: "GET", url, headers: Vec::new(), body: Vec::new() };
        let why = Net::default().send(&request).unwrap_err();
        assert!(matches!(&why, Unsent::Unreachable(why) if why.contains("refused")), "{why:?}");
    }
}

#[test]
fn a_server_whose_certificate_nobody_vouches_for_is_not_asked() {
    // It answers anything at all; a TLS handshake it doesn't know.
    let server = Server::saying("HTTP/1.1 200 OK\r\nContent-Length: 0\r\n\r\n");
    let url = server.address.replace("http:", "https:");
    let request = Request { method: "GET", url, headers: Vec::new(), body: Vec::new() };
    assert!(matches!(Net::default().send(&request).unwrap_err(), Unsent::Unreachable(_)));
}
