//! `second-look`: another person looks at a job's critical joints, from another data folder (by
//! text each way, with no network) or on this one.

mod ask;
mod here;
mod joints;
mod look;
mod take;

super::group! {
    Ask ask;
    Look look;
    Take take;
    Here here;
}
