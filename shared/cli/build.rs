//! Puts the built UI where the program can embed it. Where it isn't built yet the program
//! builds all the same, and its page says what to do.

use std::path::Path;
use std::{env, fs, io};

fn main() -> io::Result<()> {
    let missing = || io::Error::other("cargo sets this for every build script");
    let dist = Path::new(&env::var_os("CARGO_MANIFEST_DIR").ok_or_else(missing)?).join("../../ui/dist");
    let out = Path::new(&env::var_os("OUT_DIR").ok_or_else(missing)?).join("ui");
    println!("cargo::rerun-if-changed={}", dist.display());
    if out.exists() {
        fs::remove_dir_all(&out)?;
    }
    fs::create_dir_all(&out)?;
    if dist.join("index.html").is_file() {
        copy(&dist, &out)?;
    }
    Ok(())
}

fn copy(from: &Path, to: &Path) -> io::Result<()> {
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        let to = to.join(entry.file_name());
        if entry.file_type()?.is_dir() {
            copy(&entry.path(), &to)?;
        } else {
            fs::copy(entry.path(), to)?;
        }
    }
    Ok(())
}
