//! Photos in parts.

use witnessmark_core::record::Digest;
use witnessmark_server::shelf::PhotoState;
use witnessmark_server::{Refusal, ShelfFault};

use crate::common::{Place, school};

crate::on_both!(
    parts_make_a_whole,
    a_part_that_does_not_fit_is_refused,
    what_is_not_its_name_is_thrown_away,
    a_photo_half_sent_can_be_begun_anew,
);

fn picture(length: usize) -> Vec<u8> {
    (0..length).map(|n| (n * 31 % 251) as u8).collect()
}

fn state(have: u64, total: u64, whole: bool) -> PhotoState {
    PhotoState { have, total, whole }
}

fn parts_make_a_whole(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let bytes = picture(1000);
    let name = Digest::of(&bytes);
    assert_eq!(shelf.photo_state(school, name).unwrap(), None);
    assert_eq!(shelf.photo_read(school, name, 0, 10).unwrap(), None);
    assert_eq!(shelf.photo_put(school, name, 0, 1000, &bytes[..400]).unwrap(), state(400, 1000, false));
    // Not before it is whole.
    assert_eq!(shelf.photo_read(school, name, 0, 10).unwrap(), None);
    // The same again; then some of it again, and more.
    assert_eq!(shelf.photo_put(school, name, 0, 1000, &bytes[..400]).unwrap(), state(400, 1000, false));
    assert_eq!(shelf.photo_put(school, name, 100, 1000, &bytes[100..200]).unwrap(), state(400, 1000, false));
    assert_eq!(shelf.photo_put(school, name, 350, 1000, &bytes[350..700]).unwrap(), state(700, 1000, false));
    assert_eq!(shelf.photo_state(school, name).unwrap(), Some(state(700, 1000, false)));
    assert_eq!(shelf.photo_put(school, name, 700, 1000, &bytes[700..]).unwrap(), state(1000, 1000, true));
    for (from, most) in
        [(0, 1000), (0, 5000), (399, 2), (350, 400), (699, 5), (990, 50), (1000, 5), (5000, 5), (3, 0)]
    {
        let wanted = &bytes[from.min(1000)..(from + most).min(1000)];
        assert_eq!(
            shelf.photo_read(school, name, from as u64, most).unwrap().unwrap(),
            wanted,
            "{from} {most}"
        );
    }
    assert_eq!(shelf.photo_read(school, name, 500, usize::MAX).unwrap().unwrap(), &bytes[500..]);
    // Sent once more it stays what it is.
    assert_eq!(shelf.photo_put(school, name, 0, 1000, &bytes).unwrap(), state(1000, 1000, true));
    assert_eq!(shelf.photo_put(school, name, 1000, 1000, &[]).unwrap(), state(1000, 1000, true));
    let other = crate::common::school("other");
    assert_eq!(shelf.photo_state(other, name).unwrap(), None);
    assert_eq!(shelf.photo_read(other, name, 0, 10).unwrap(), None);
    // The SHA-256 of nothing (FIPS 180-4's padding alone; the value from memory).
    let nothing = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855".parse().unwrap();
    assert_eq!(shelf.photo_put(school, nothing, 0, 0, &[]).unwrap(), state(0, 0, true));
}

fn a_part_that_does_not_fit_is_refused(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let bytes = picture(1000);
    let name = Digest::of(&bytes);
    let put = |offset, total, part: &[u8]| shelf.photo_put(school, name, offset, total, part).unwrap_err();
    let refused = |refusal| ShelfFault::Refused(refusal);
    assert_eq!(put(10, 1000, &bytes[10..20]), refused(Refusal::Gap { have: 0 }));
    assert_eq!(shelf.photo_state(school, name).unwrap(), None);
    shelf.photo_put(school, name, 0, 1000, &bytes[..400]).unwrap();
    assert_eq!(put(401, 1000, &bytes[401..410]), refused(Refusal::Gap { have: 400 }));
    assert_eq!(put(0, 999, &bytes[..400]), refused(Refusal::OtherTotal { total: 1000 }));
    assert_eq!(put(399, 1000, &[bytes[399] ^ 1, bytes[400]]), refused(Refusal::Differs));
    assert_eq!(put(400, 1000, &picture(601)), refused(Refusal::PastEnd));
    assert_eq!(put(u64::MAX, 1000, &bytes), refused(Refusal::PastEnd));
    assert_eq!(shelf.photo_state(school, name).unwrap(), Some(state(400, 1000, false)));
    assert_eq!(shelf.photo_put(school, name, 400, 1000, &bytes[400..]).unwrap(), state(1000, 1000, true));
    assert_eq!(put(0, 1000, &[bytes[0] ^ 1]), refused(Refusal::Differs));
}

fn what_is_not_its_name_is_thrown_away(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let bytes = picture(300);
    let name = Digest::of(&bytes);
    let mut wrong = bytes.clone();
    wrong[5] ^= 1;
    shelf.photo_put(school, name, 0, 300, &wrong[..100]).unwrap();
    let fault = shelf.photo_put(school, name, 100, 300, &wrong[100..]).unwrap_err();
    assert_eq!(fault, ShelfFault::Refused(Refusal::WrongDigest));
    assert_eq!(shelf.photo_state(school, name).unwrap(), None);
    assert_eq!(shelf.photo_put(school, name, 0, 300, &bytes).unwrap(), state(300, 300, true));
}

fn a_photo_half_sent_can_be_begun_anew(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let bytes = picture(300);
    let name = Digest::of(&bytes);
    assert!(!shelf.photo_drop(school, name).unwrap());
    shelf.photo_put(school, name, 0, 77, b"somebody's mistake").unwrap();
    assert!(shelf.photo_drop(school, name).unwrap());
    assert_eq!(shelf.photo_put(school, name, 0, 300, &bytes).unwrap(), state(300, 300, true));
    // A whole one stays.
    assert!(!shelf.photo_drop(school, name).unwrap());
    assert_eq!(shelf.photo_read(school, name, 0, 300).unwrap().unwrap(), bytes);
}
