//! For the tests: a server's process of its own, which appends an invented device's records to a
//! shelf and prints each batch's last index once that batch is durable.
//!
//!     append ADDRESS DEVICE BATCHES SIZE

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

#[path = "../tests/common/records.rs"]
mod records;

use std::io::Write as _;

use witnessmark_core::record::{Digest, Record};
use witnessmark_server::shelf::{School, Shelf};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let words: Vec<String> = std::env::args().collect();
    let [_, address, device, batches, size] = words.as_slice() else {
        return Err("append ADDRESS DEVICE BATCHES SIZE".into());
    };
    let shelf = Shelf::open(address)?;
    let school = School(Digest::of(b"school"));
    let mut records = records::Records::of(device.parse()?);
    for _ in 0..batches.parse::<usize>()? {
        let batch: Vec<Record> = records.by_ref().take(size.parse()?).collect();
        let places = shelf.append(school, &batch.iter().collect::<Vec<_>>())?;
        writeln!(std::io::stdout(), "{}", places.last().copied().unwrap_or_default())?;
    }
    Ok(())
}
