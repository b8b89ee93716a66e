//! The app's shell, phone and desktop.

/// Runs the app until its window is closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    if let Err(fault) = tauri::Builder::default().run(tauri::generate_context!()) {
        eprintln!("{fault}");
    }
}
