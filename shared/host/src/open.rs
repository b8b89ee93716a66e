//! Opening the app over a data folder; a damaged database is set aside and rescued, never deleted.

use std::fs;
use std::path::{Path, PathBuf};

use base64ct::{Base64, Encoding};
use witnessmark_app::{App, Fault, Platform};
use witnessmark_store::{Store, StoreFault};

use crate::System;

/// The database's name in the data folder.
const DATABASE: &str = "witnessmark.db";

fn fault(file: &Path, why: impl ToString) -> Fault {
    Fault::new("file").text("file", file.display()).text("why", why.to_string())
}

/// Opens the app over a data folder, making the folder if need be.
///
/// # Errors
/// [`Fault`]: a folder that can't be made, a database of a newer version, no room.
pub fn open(folder: &Path) -> Result<App, Fault> {
    fs::create_dir_all(folder).map_err(|why| fault(folder, why))?;
    own_eyes_only(folder);
    let database = folder.join(DATABASE);
    let path = database.to_string_lossy().into_owned();
    match Store::open(&path) {
        Ok(store) => App::new(store, Box::new(System::new())),
        Err(StoreFault::Damaged(_)) => {
            let aside = set_aside(&database, System::new().now().format("%Y%m%d-%H%M%S").to_string())?;
            let rescue = || {
                let mut store = Store::open(&path)?;
                let rescued = store.rescue(&aside.to_string_lossy())?;
                Ok::<_, StoreFault>((store, rescued))
            };
            let (store, rescued) = match rescue() {
                Ok(done) => done,
                Err(why) => {
                    // Half a rescue must not be taken for all there was: the next start tries again.
                    put_back(&aside, &database)?;
                    return Err(why.into());
                }
            };
            let mut app = App::new(store, Box::new(System::new()))?;
            app.warn_of_rescue(&rescued, &aside.display().to_string());
            Ok(app)
        }
        Err(other) => Err(other.into()),
    }
}

/// Moves the damaged file out of the way, to a name that nothing has yet.
fn set_aside(database: &Path, stamp: String) -> Result<PathBuf, Fault> {
    let named = |end: String| database.with_file_name(format!("witnessmark.damaged-{stamp}{end}.db"));
    let mut aside = named(String::new());
    let mut number = 2;
    while aside.exists() {
        aside = named(format!("-{number}"));
        number += 1;
    }
    move_all(database, &aside)?;
    Ok(aside)
}

/// Undoes that; what was begun in its place holds nothing that it doesn't.
fn put_back(aside: &Path, database: &Path) -> Result<(), Fault> {
    for begun in files_of(database).into_iter().filter(|file| file.exists()) {
        fs::remove_file(&begun).map_err(|why| fault(&begun, why))?;
    }
    move_all(aside, database)
}

fn move_all(from: &Path, to: &Path) -> Result<(), Fault> {
    for (from, to) in files_of(from).iter().zip(files_of(to)) {
        if from.exists() {
            fs::rename(from, to).map_err(|why| fault(from, why))?;
        }
    }
    Ok(())
}

/// A database and what SQLite keeps beside it.
fn files_of(database: &Path) -> [PathBuf; 3] {
    ["", "-wal", "-shm"].map(|suffix| PathBuf::from(format!("{}{suffix}", database.display())))
}

/// Writes a file for the person where they will find it: the system's folder for downloads, else
/// the data folder. A file that is there already is kept; the new one gets a number.
///
/// # Errors
/// [`Fault`] when it can't be written.
pub fn save_file(folder: &Path, name: &str, text: &str) -> Result<PathBuf, Fault> {
    save(folder, name, text.as_bytes())
}

/// The same with a file of any kind, its bytes as base64.
///
/// # Errors
/// [`Fault`] when that isn't base64, or the file can't be written.
pub fn save_bytes(folder: &Path, name: &str, data: &str) -> Result<PathBuf, Fault> {
    let bytes = Base64::decode_vec(data).map_err(Fault::internal)?;
    save(folder, name, &bytes)
}

fn save(folder: &Path, name: &str, bytes: &[u8]) -> Result<PathBuf, Fault> {
    // A name from a screen must not climb out of the folder.
    let name: String = name.chars().map(|c| if "/\\:".contains(c) { '-' } else { c }).collect();
    fs::create_dir_all(folder).map_err(|why| fault(folder, why))?;
    let (stem, ending) = name.split_once('.').unwrap_or((&name, "txt"));
    let mut path = folder.join(&name);
    for number in 2.. {
        match fs::OpenOptions::new().write(true).create_new(true).open(&path) {
            Ok(mut file) => {
                use std::io::Write;
                file.write_all(bytes).and_then(|()| file.sync_all()).map_err(|why| fault(&path, why))?;
                break;
            }
            Err(why) if why.kind() == std::io::ErrorKind::AlreadyExists => {
                path = folder.join(format!("{stem}-{number}.{ending}"));
            }
            Err(why) => return Err(fault(&path, why)),
        }
    }
    Ok(path)
}

/// Where there are owners, only the owner reads the data.
fn own_eyes_only(folder: &Path) {
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // Not every file system has owners; the seal on the key doesn't depend on it.
        let _ = fs::set_permissions(folder, fs::Permissions::from_mode(0o700));
    }
    #[cfg(not(unix))]
    let _ = folder;
}
