//! The OpenAPI document, made from the endpoints' own list.

use axum::Json;
use axum::extract::{Request, State};
use schemars::SchemaGenerator;
use schemars::generate::SchemaSettings;
use serde_json::{Map, Value, json};
use witnessmark_sync::wire::WireFault;

use super::endpoint::{Content, Count, Endpoint, Form, Param, Who};
use super::{HttpFault, Server, endpoints};

/// How members sign, in words: OpenAPI has no scheme for it.
const SIGNED: &str = "HTTP Message Signatures (RFC 9421): one signature, covering \"@method\", \"@authority\", \
    \"@path\", \"@query\" and, where there is a body, \"content-digest\" (RFC 9530, sha-256); parameters created \
    (within five minutes of the server's clock), nonce (8 to 64 characters, never used before), keyid (RFC 7638 \
    thumbprint of the device's courier key, or of its own), alg=\"ed25519\", tag=\"witnessmark\".";

pub(super) fn endpoints_of_it() -> Vec<Endpoint> {
    vec![Endpoint::get("/v1/openapi.json", document).about("This document.").who(Who::Open).gives(
        200,
        "OpenAPI 3.1.",
        Content::Json(|_| schemars::json_schema!({"type": "object"})),
    )]
}

async fn document(State(server): State<Server>, request: Request) -> Result<Json<Value>, HttpFault> {
    server.open(request.headers(), request.extensions(), 1)?;
    Ok(Json(describe(&endpoints())))
}

/// The document of these endpoints.
fn describe(endpoints: &[Endpoint]) -> Value {
    let settings = SchemaSettings::draft2020_12().with(|settings| {
        settings.definitions_path = "/components/schemas".into();
        settings.meta_schema = None;
    });
    let mut schemas = settings.into_generator();
    let mut paths: Map<String, Value> = Map::new();
    for endpoint in endpoints {
        let path = paths.entry(endpoint.path).or_insert_with(|| json!({}));
        if let Some(path) = path.as_object_mut() {
            path.insert(endpoint.method.into(), operation(endpoint, &mut schemas));
        }
    }
    json!({
        "openapi": "3.1.0",
        "info": {
            "title": "Witness Mark: a school's server",
            "version": env!("CARGO_PKG_VERSION"),
            "description": "Records of paramotor checks and upkeep, kept in the order of their arrival and \
                proven by a Merkle tree. Every record is signed by the device that states it.",
            "license": { "name": "MIT OR Apache-2.0", "identifier": "MIT OR Apache-2.0" },
        },
        "jsonSchemaDialect": "https://json-schema.org/draft/2020-12/schema",
        "paths": paths,
        "components": {
            "schemas": schemas.take_definitions(true),
            "securitySchemes": {
                "signature": { "type": "http", "scheme": "Signature", "description": SIGNED },
            },
        },
    })
}

fn operation(endpoint: &Endpoint, schemas: &mut SchemaGenerator) -> Value {
    let mut answers: Map<String, Value> = Map::new();
    for (status, about, content) in &endpoint.gives {
        answers.insert(status.to_string(), answer(about, *content, schemas));
    }
    let fault = if endpoint.method == "head" { Content::Nothing } else { Content::json::<WireFault>() };
    answers.insert("default".into(), answer("Why not.", fault, schemas));
    let security = match endpoint.who {
        Who::Members => json!([{ "signature": [] }]),
        Who::Open | Who::Here => json!([]),
    };
    let mut operation = json!({
        "summary": endpoint.about,
        "operationId": format!("{}{}", endpoint.method, endpoint.path.replace(['/', '{', '}', '.'], "-")),
        "security": security,
        "parameters": endpoint.params.iter().map(parameter).collect::<Vec<_>>(),
        "responses": answers,
    });
    if let (Some(body), Some(operation)) = (content(endpoint.takes, schemas), operation.as_object_mut()) {
        operation.insert("requestBody".into(), json!({ "required": true, "content": body }));
    }
    operation
}

fn parameter(param: &Param) -> Value {
    let schema = match param.form {
        Form::Count => json!({ "type": "integer", "minimum": 0, "maximum": Count::MOST }),
        Form::Digest => json!({ "type": "string", "pattern": "^[0-9a-f]{64}$" }),
        Form::Words(words) => json!({ "type": "string", "enum": words }),
        Form::Text(pattern) => json!({ "type": "string", "pattern": pattern }),
        Form::Any => json!({ "type": "string" }),
    };
    json!({
        "name": param.name,
        "in": param.place,
        "required": param.must,
        "description": param.about,
        "schema": schema,
    })
}

fn answer(about: &str, what: Content, schemas: &mut SchemaGenerator) -> Value {
    match content(what, schemas) {
        None => json!({ "description": about }),
        Some(content) => json!({ "description": about, "content": content }),
    }
}

fn content(content: Content, schemas: &mut SchemaGenerator) -> Option<Value> {
    match content {
        Content::Nothing => None,
        Content::Json(schema) => Some(json!({ "application/json": { "schema": schema(schemas) } })),
        Content::Text(media) => Some(json!({ media: { "schema": { "type": "string" } } })),
        Content::Bytes(media) => {
            let each = media.iter().map(|media| ((*media).to_owned(), json!({})));
            Some(Value::Object(each.collect()))
        }
    }
}
