//! A server of a few lines, on this machine, that says just what the test tells it to.

#![allow(dead_code, clippy::unwrap_used, clippy::indexing_slicing)]

use std::io::{BufRead, BufReader, Read, Write};
use std::net::{TcpListener, TcpStream};
use std::sync::{Arc, Mutex};
use std::thread;

use witnessmark_app::Request;

/// A request as it came.
#[derive(Clone, Debug, Default)]
pub struct Came {
    pub line: String,
    pub headers: Vec<(String, String)>,
    pub body: Vec<u8>,
}

impl Came {
    pub fn header(&self, name: &str) -> Option<&str> {
        self.headers.iter().find(|(known, _)| known == name).map(|(_, value)| value.as_str())
    }
}

/// The server: each connection is answered by these words, then closed.
pub struct Server {
    pub address: String,
    came: Arc<Mutex<Vec<Came>>>,
}

impl Server {
    pub fn answering(words: impl Fn(&Came) -> Vec<u8> + Send + Sync + 'static) -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let address = format!("http://{}", listener.local_addr().unwrap());
        let came = Arc::new(Mutex::new(Vec::new()));
        let (kept, words) = (came.clone(), Arc::new(words));
        thread::spawn(move || {
            for stream in listener.incoming().flatten() {
                let (kept, words) = (kept.clone(), words.clone());
                thread::spawn(move || serve(stream, &kept, words.as_ref()));
            }
        });
        Self { address, came }
    }

    pub fn saying(words: &'static str) -> Self {
        Self::answering(move |_| words.as_bytes().to_vec())
    }

    pub fn came(&self) -> Vec<Came> {
        self.came.lock().unwrap().clone()
    }

    pub fn get(&self, path: &str) -> Request {
        self.request("GET", path)
    }

    pub fn request(&self, method: &'static str, path: &str) -> Request {
        Request { method, url: format!("{}{path}", self.address), headers: Vec::new(), body: Vec::new() }
    }
}

fn serve(mut stream: TcpStream, kept: &Mutex<Vec<Came>>, words: &dyn Fn(&Came) -> Vec<u8>) {
    let mut reader = BufReader::new(stream.try_clone().unwrap());
    let mut line = || {
        let mut line = String::new();
        reader.read_line(&mut line).unwrap();
        line.trim_end().to_owned()
    };
    let mut came = Came { line: line(), ..Came::default() };
    loop {
        let header = line();
        let Some((name, value)) = header.split_once(": ") else { break };
        came.headers.push((name.to_ascii_lowercase(), value.to_owned()));
    }
    let length = came.header("content-length").map_or(0, |length| length.parse().unwrap());
    came.body = vec![0; length];
    reader.read_exact(&mut came.body).unwrap();
    kept.lock().unwrap().push(came.clone());
    // The other side may have had enough.
    let _ = stream.write_all(&words(&came));
}

/// An answer with this body.
pub fn body(status: &str, body: &[u8]) -> Vec<u8> {
    let head = format!("HTTP/1.1 {status}\r\nConnection: close\r\nContent-Length: {}\r\n\r\n", body.len());
    [head.as_bytes(), body].concat()
}
