//! One endpoint: how it is served and how it is described. Router and document are made from the
//! same list, so that neither can have what the other lacks.

use axum::handler::Handler;
use axum::routing::{MethodFilter, MethodRouter, on};
use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::Deserialize;

use super::Server;

/// Who may ask.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Who {
    /// Anybody.
    Open,
    /// Only from the machine itself.
    Here,
    /// Members, by signed requests.
    Members,
}

/// A parameter in the query, or a header.
#[derive(Clone, Copy, Debug)]
pub(super) struct Param {
    pub(super) name: &'static str,
    pub(super) place: &'static str,
    pub(super) must: bool,
    pub(super) form: Form,
    pub(super) about: &'static str,
}

/// A count in a query.
#[derive(Clone, Copy, Debug, Deserialize)]
#[serde(try_from = "u64")]
pub(super) struct Count(pub(super) u64);

impl Count {
    /// As far as every reader of JSON counts exactly.
    pub(super) const MOST: u64 = (1 << 53) - 1;
}

impl TryFrom<u64> for Count {
    type Error = &'static str;

    fn try_from(count: u64) -> Result<Self, Self::Error> {
        if count <= Self::MOST { Ok(Self(count)) } else { Err("no log is as long as that") }
    }
}

/// What a parameter looks like.
#[derive(Clone, Copy, Debug)]
pub(super) enum Form {
    /// A [`struct@Count`].
    Count,
    /// A SHA-256 digest, hexadecimal.
    Digest,
    /// One of these words.
    Words(&'static [&'static str]),
    /// Any text of this pattern; any other is refused.
    Text(&'static str),
    /// Any text; what isn't understood is passed over, as RFC 9110 wants it.
    Any,
}

/// What is in a body.
#[derive(Clone, Copy)]
pub(super) enum Content {
    /// Nothing.
    Nothing,
    /// JSON of this schema.
    Json(fn(&mut SchemaGenerator) -> Schema),
    /// Text of this media type.
    Text(&'static str),
    /// Bytes of these media types.
    Bytes(&'static [&'static str]),
}

impl Content {
    /// JSON of this type.
    pub(super) fn json<T: JsonSchema>() -> Self {
        Self::Json(SchemaGenerator::subschema_for::<T>)
    }
}

/// An endpoint.
pub(super) struct Endpoint {
    pub(super) method: &'static str,
    pub(super) path: &'static str,
    pub(super) about: &'static str,
    pub(super) who: Who,
    pub(super) params: Vec<Param>,
    pub(super) takes: Content,
    pub(super) gives: Vec<(u16, &'static str, Content)>,
    serve: MethodRouter<Server>,
}

impl Endpoint {
    pub(super) fn get<T: 'static>(path: &'static str, handler: impl Handler<T, Server>) -> Self {
        Self::new("get", path, on(MethodFilter::GET, handler))
    }

    pub(super) fn head<T: 'static>(path: &'static str, handler: impl Handler<T, Server>) -> Self {
        Self::new("head", path, on(MethodFilter::HEAD, handler))
    }

    pub(super) fn post<T: 'static>(path: &'static str, handler: impl Handler<T, Server>) -> Self {
        Self::new("post", path, on(MethodFilter::POST, handler))
    }

    pub(super) fn put<T: 'static>(path: &'static str, handler: impl Handler<T, Server>) -> Self {
        Self::new("put", path, on(MethodFilter::PUT, handler))
    }

    fn new(method: &'static str, path: &'static str, serve: MethodRouter<Server>) -> Self {
        Self {
            method,
            path,
            about: "",
            who: Who::Members,
            params: Vec::new(),
            takes: Content::Nothing,
            gives: Vec::new(),
            serve,
        }
    }

    pub(super) fn about(self, about: &'static str) -> Self {
        Self { about, ..self }
    }

    pub(super) fn who(self, who: Who) -> Self {
        Self { who, ..self }
    }

    pub(super) fn query(self, name: &'static str, must: bool, form: Form, about: &'static str) -> Self {
        self.param(Param { name, place: "query", must, form, about })
    }

    pub(super) fn header(self, name: &'static str, must: bool, form: Form, about: &'static str) -> Self {
        self.param(Param { name, place: "header", must, form, about })
    }

    pub(super) fn in_path(self, name: &'static str, form: Form, about: &'static str) -> Self {
        self.param(Param { name, place: "path", must: true, form, about })
    }

    fn param(mut self, param: Param) -> Self {
        self.params.push(param);
        self
    }

    pub(super) fn takes(self, takes: Content) -> Self {
        Self { takes, ..self }
    }

    pub(super) fn gives(mut self, status: u16, about: &'static str, content: Content) -> Self {
        self.gives.push((status, about, content));
        self
    }

    /// A smaller or larger body than elsewhere, bytes.
    pub(super) fn at_most(self, bytes: usize) -> Self {
        Self { serve: self.serve.layer(axum::extract::DefaultBodyLimit::max(bytes)), ..self }
    }

    pub(super) fn into_route(self) -> (&'static str, MethodRouter<Server>) {
        (self.path, self.serve)
    }
}
