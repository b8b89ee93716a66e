//! `second-look`: another person looks at a job's critical joints, from another data folder (by
//! text each way, with no network) or on this one.

mod ask;
mod here;
mod joints;
mod look;
mod take;

use witnessmark_app::Fault;

super::group! {
    Ask ask;
    Look look;
    Take take;
    Here here;
}

/// The text itself, or with `@` the file that holds it; `@-` is standard input.
fn text(given: &str) -> Result<String, Fault> {
    let Some(file) = given.strip_prefix('@') else { return Ok(given.to_owned()) };
    let read =
        if file == "-" { std::io::read_to_string(std::io::stdin()) } else { std::fs::read_to_string(file) };
    let text = read.map_err(|why| Fault::new("file").text("file", file).text("why", why))?;
    Ok(text.trim().to_owned())
}
