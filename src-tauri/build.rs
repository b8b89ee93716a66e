//! Tauri's own build step: embeds the UI and checks the capabilities.
fn main() {
    tauri_build::build();
}
