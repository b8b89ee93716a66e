//! The app's shell, phone and desktop: one window, one command into the app.

use std::path::PathBuf;
use std::sync::{Arc, Mutex};

use tauri::Manager;
use witnessmark_app::{App, Fault, FaultView};
use witnessmark_host::{Asking, Line};

/// The app behind the window, or why it couldn't be opened: the window shows that too.
type Door = Arc<Line<Mutex<Result<App, Fault>>>>;

/// Every call of the UI. On a thread of its own kind: a call may take as long as the network does, and
/// the others don't wait for it.
#[tauri::command]
async fn call(
    handle: tauri::AppHandle,
    door: tauri::State<'_, Door>,
    call: Asking,
) -> Result<serde_json::Value, FaultView> {
    let door = door.inner().clone();
    let answered = tauri::async_runtime::spawn_blocking(move || door.answer(call)).await;
    let answered = answered.unwrap_or_else(|why| Err(witnessmark_app::show(&Fault::internal(why))));
    // For measuring the start: the screen is up and has asked for the first time.
    if std::env::var_os("WITNESSMARK_END_AFTER_START").is_some() {
        handle.exit(i32::from(answered.is_err()));
    }
    answered
}

/// Writes a file for the person and says where.
#[tauri::command(async)]
fn save_file(handle: tauri::AppHandle, name: String, text: String) -> Result<String, FaultView> {
    let saved = downloads(&handle).and_then(|folder| witnessmark_host::save_file(&folder, &name, &text));
    said(saved)
}

/// The same with a file of any kind, its bytes as base64.
#[tauri::command(async)]
fn save_bytes(handle: tauri::AppHandle, name: String, data: String) -> Result<String, FaultView> {
    let saved = downloads(&handle).and_then(|folder| witnessmark_host::save_bytes(&folder, &name, &data));
    said(saved)
}

fn said(saved: Result<PathBuf, Fault>) -> Result<String, FaultView> {
    saved.map(|path| path.display().to_string()).map_err(|fault| witnessmark_app::show(&fault))
}

/// Where a person looks for files; the app's own folder where the platform has no such place.
fn downloads(handle: &tauri::AppHandle) -> Result<PathBuf, Fault> {
    let folder = handle.path().download_dir().or_else(|_| handle.path().app_data_dir());
    folder.map_err(Fault::internal)
}

/// The folder given by `WITNESSMARK_DATA`, else the platform's own for this app.
fn data_folder(handle: &tauri::AppHandle) -> Result<PathBuf, Fault> {
    match std::env::var_os("WITNESSMARK_DATA") {
        Some(folder) => Ok(folder.into()),
        None => handle.path().app_data_dir().map_err(Fault::internal),
    }
}

/// Runs the app until its window is closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    let built = tauri::Builder::default()
        .setup(|app| {
            let opened = data_folder(app.handle()).and_then(|folder| witnessmark_host::open(&folder));
            app.manage(Line::new(Mutex::new(opened)));
            Ok(())
        })
        .invoke_handler(tauri::generate_handler![call, save_file, save_bytes])
        .run(tauri::generate_context!());
    if let Err(fault) = built {
        eprintln!("{fault}");
        std::process::exit(2);
    }
}
