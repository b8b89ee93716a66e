//! A shell with nothing in it: the baseline of the app's start. Its page makes one call, which
//! ends the program.

#[tauri::command]
fn ready(handle: tauri::AppHandle) {
    handle.exit(0);
}

fn main() {
    let built = tauri::Builder::default()
        .invoke_handler(tauri::generate_handler![ready])
        .run(tauri::generate_context!("examples/empty/tauri.conf.json"));
    if let Err(fault) = built {
        eprintln!("{fault}");
        std::process::exit(2);
    }
}
