//! Computations as a program asks for them.

use serde_json::{Value, json};

use super::Desk;

/// What a computation answers.
pub fn compute(name: &str, input: Value) -> Value {
    let ran = Desk::new().run_with(&["compute", name], &input.to_string());
    assert_eq!(ran.code, 0, "{ran:?}");
    ran.json()
}

/// The message of the fault in its input.
pub fn refused(name: &str, input: Value) -> String {
    let ran = Desk::new().run_with(&["compute", name], &input.to_string());
    assert_eq!((ran.code, ran.kind().as_str()), (2, "input"), "{ran:?}");
    ran.fault()["message"].as_str().unwrap().to_owned()
}

#[track_caller]
pub fn near(quantity: &Value, value: f64, unit: &str, within: f64) {
    let found = quantity["value"].as_f64().unwrap();
    assert!((found - value).abs() <= within && quantity["unit"] == unit, "{quantity}, not {value} {unit}");
}

pub fn quantity(value: f64, unit: &str) -> Value {
    json!({ "value": value, "unit": unit })
}
