//! The document and what is there are one.

use axum::http::StatusCode;
use serde_json::Value;

use crate::common::Place;
use crate::device::Ask;
use crate::world::World;

#[test]
fn every_path_of_the_document_is_there_and_as_open_as_it_says() {
    let world = World::new(&Place::sqlite());
    let document: Value = world.open("/v1/openapi.json").json();
    assert_eq!(document["openapi"], "3.1.0");
    let paths = document["paths"].as_object().unwrap();
    assert_eq!(paths.len(), 13, "{:?}", paths.keys());
    for (path, operations) in paths {
        for (method, operation) in operations.as_object().unwrap() {
            let filled =
                path.replace("{digest}", &"0".repeat(64)).replace("{id}", "a").replace("{challenge}", "a");
            let must = operation["parameters"]
                .as_array()
                .unwrap()
                .iter()
                .filter(|parameter| parameter["in"] == "query" && parameter["required"] == true);
            let query: Vec<String> = must
                .map(|parameter| {
                    let value =
                        if parameter["schema"]["type"] == "integer" { "0".into() } else { "0".repeat(64) };
                    format!("{}={value}", parameter["name"].as_str().unwrap())
                })
                .collect();
            let method: &'static str = method.to_uppercase().leak();
            let ask = Ask::new(method, &format!("{filled}?{}", query.join("&")), world.now());
            let status = world.ask(ask.unsigned()).status;
            let signed = !operation["security"].as_array().unwrap().is_empty();
            assert_eq!(status == StatusCode::UNAUTHORIZED, signed, "{method} {path}: {status}");
            assert!(
                status != StatusCode::NOT_FOUND && status != StatusCode::METHOD_NOT_ALLOWED,
                "{method} {path}"
            );
        }
    }
}

#[test]
fn every_reference_of_the_document_leads_somewhere() {
    let world = World::new(&Place::sqlite());
    let document: Value = world.open("/v1/openapi.json").json();
    let mut found = 0;
    walk(&document, &mut |key, value| {
        if key == "$ref" {
            found += 1;
            let pointer = value.as_str().unwrap().strip_prefix('#').unwrap();
            assert!(document.pointer(pointer).is_some(), "{pointer}");
        }
    });
    assert!(found > 10, "{found}");
}

fn walk(value: &Value, each: &mut impl FnMut(&str, &Value)) {
    match value {
        Value::Object(members) => members.iter().for_each(|(key, value)| {
            each(key, value);
            walk(value, each);
        }),
        Value::Array(values) => values.iter().for_each(|value| walk(value, each)),
        _ => {}
    }
}
