//! Tauri's own build step: embeds the UI and checks the capabilities.

fn main() {
    // The UI is embedded when this crate is compiled: a new one must compile it anew.
    println!("cargo:rerun-if-changed=../ui/dist");
    tauri_build::build();
}
