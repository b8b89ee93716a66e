//! `school`: founding one, joining one, its members, its lists, its board.

mod admit;
mod board;
mod code;
mod create;
mod end;
mod file;
mod hand_over;
mod join;
mod leave;
mod members;
mod naming;
mod publish;
mod revoke;
mod role;
mod roles;
mod show;
mod sign;
mod sign_in;
mod vouch;
mod waiting;
mod words;

pub use words::{in_words, sync_in_words};

super::group! {
    Create create;
    Show show;
    Code code;
    Admit admit;
    Waiting waiting;
    Join join;
    Leave leave;
    Members members;
    Role role;
    End end;
    Revoke revoke;
    HandOver hand_over;
    Vouch vouch;
    File file;
    Publish publish;
    Board board;
    SignIn sign_in;
    Sign sign;
}
