//! Command line.
fn main(){}
