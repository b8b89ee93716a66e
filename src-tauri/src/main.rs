//! Desktop entry.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() {
    witnessmark_shell::run();
}
