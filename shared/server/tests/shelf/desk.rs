//! Signing in, preparing, waiting, settings.

use witnessmark_core::record::DeviceId;
use witnessmark_server::shelf::{Challenge, Draft, Session, Waiting};
use witnessmark_server::{Refusal, ShelfFault};

use crate::common::{Place, school};

crate::on_both!(
    a_nonce_is_taken_once,
    settings_hold,
    processes_agree_on_what_is_set_once,
    no_more_wait_than_may,
    drafts_stay_as_prepared,
    a_challenge_is_confirmed_once_and_claimed_once,
    a_session_lasts_its_time,
    tries_count_while_they_count,
    a_text_is_kept_or_refused,
);

fn device(name: &str) -> DeviceId {
    DeviceId(name.into())
}

fn a_nonce_is_taken_once(place: &Place) {
    let (shelf, other, one, two) = (place.open(), place.open(), school("one"), school("two"));
    assert!(shelf.nonce_take(one, "key", "n", 100).unwrap());
    assert!(!other.nonce_take(one, "key", "n", 101).unwrap());
    assert!(shelf.nonce_take(one, "key", "m", 200).unwrap());
    assert!(shelf.nonce_take(one, "another", "n", 100).unwrap());
    assert!(shelf.nonce_take(two, "key", "n", 100).unwrap());
    assert_eq!(shelf.nonce_forget(one, 200).unwrap(), 2);
    assert!(!shelf.nonce_take(one, "key", "m", 200).unwrap());
    assert!(!shelf.nonce_take(two, "key", "n", 100).unwrap());
    assert!(shelf.nonce_take(one, "key", "n", 300).unwrap());
}

fn settings_hold(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    assert_eq!(shelf.setting(school, "a").unwrap(), None);
    shelf.set(school, "a", "1").unwrap();
    shelf.set(school, "a", "zwei · δύο").unwrap();
    shelf.set(crate::common::school("other"), "a", "3").unwrap();
    assert_eq!(shelf.setting(school, "a").unwrap().unwrap(), "zwei · δύο");
    shelf.unset(school, "a").unwrap();
    assert_eq!(shelf.setting(school, "a").unwrap(), None);
    assert_eq!(shelf.setting(crate::common::school("other"), "a").unwrap().unwrap(), "3");
}

fn processes_agree_on_what_is_set_once(place: &Place) {
    let school = school("school");
    let shelves = [place.open(), place.open()];
    let said: Vec<String> = std::thread::scope(|scope| {
        let threads: Vec<_> = (0..8)
            .map(|n| {
                let shelf = &shelves[n % 2];
                scope.spawn(move || shelf.set_once(school, "key", &n.to_string()).unwrap())
            })
            .collect();
        threads.into_iter().map(|thread| thread.join().unwrap()).collect()
    });
    assert!(said.iter().all(|value| *value == said[0]), "{said:?}");
    assert_eq!(shelves[1].setting(school, "key").unwrap().unwrap(), said[0]);
}

fn no_more_wait_than_may(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let waiting = |name: &str, lines: &str, at| Waiting { device: device(name), lines: lines.into(), at };
    let (a, b, c) = (waiting("a", "{}\n", 20), waiting("b", "{}\n", 10), waiting("c", "{}\n", 30));
    shelf.waiting_put(school, &a, 2).unwrap();
    shelf.waiting_put(school, &b, 2).unwrap();
    assert_eq!(shelf.waiting_put(school, &c, 2).unwrap_err(), ShelfFault::Refused(Refusal::TooManyWaiting));
    assert_eq!(shelf.waiting(school).unwrap(), [b.clone(), a.clone()]);
    // Who waits already may say it anew.
    let again = waiting("a", "{\"more\":1}\n", 25);
    shelf.waiting_put(school, &again, 2).unwrap();
    assert_eq!(shelf.waiting(school).unwrap(), [b.clone(), again.clone()]);
    assert!(shelf.waiting_drop(school, &b.device).unwrap());
    assert!(!shelf.waiting_drop(school, &b.device).unwrap());
    shelf.waiting_put(school, &c, 2).unwrap();
    assert_eq!(shelf.waiting_forget(school, 30).unwrap(), 1);
    assert_eq!(shelf.waiting(school).unwrap(), [c]);
    // Nobody founded this school by waiting for it.
    assert_eq!(shelf.schools().unwrap(), []);
}

fn drafts_stay_as_prepared(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let draft = |id: &str, made| Draft {
        id: id.into(),
        kind: "deferred".into(),
        body: "{\"reason\":\"invented\"}".into(),
        made,
    };
    let (late, early) = (draft("late", 20), draft("early", 10));
    shelf.draft_put(school, &late).unwrap();
    shelf.draft_put(school, &early).unwrap();
    assert_eq!(
        shelf.draft_put(school, &Draft { body: "{}".into(), ..late.clone() }).unwrap_err(),
        ShelfFault::Refused(Refusal::Taken)
    );
    assert_eq!(shelf.draft(school, "late").unwrap().unwrap(), late);
    assert_eq!(shelf.draft(crate::common::school("other"), "late").unwrap(), None);
    assert_eq!(shelf.drafts(school).unwrap(), [early, late.clone()]);
    assert_eq!(shelf.draft_forget(school, 20).unwrap(), 1);
    assert_eq!(shelf.drafts(school).unwrap(), [late]);
    assert!(shelf.draft_drop(school, "late").unwrap());
    assert!(!shelf.draft_drop(school, "late").unwrap());
}

fn a_challenge_is_confirmed_once_and_claimed_once(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    shelf.challenge_put(school, "id", "page's secret", 100).unwrap();
    assert_eq!(
        shelf.challenge_put(school, "id", "another's", 100).unwrap_err(),
        ShelfFault::Refused(Refusal::Taken)
    );
    let open = Challenge { device: None, until: 100 };
    assert_eq!(shelf.challenge(school, "id", 99).unwrap(), Some(open));
    assert_eq!(shelf.challenge(school, "id", 100).unwrap(), None);
    // Nothing to claim before somebody confirmed; nothing to confirm once it is too late.
    assert_eq!(shelf.challenge_claim(school, "id", "page's secret", 50).unwrap(), None);
    assert!(!shelf.challenge_confirm(school, "id", &device("a"), 100).unwrap());
    assert!(!shelf.challenge_confirm(school, "other", &device("a"), 50).unwrap());
    assert!(shelf.challenge_confirm(school, "id", &device("a"), 50).unwrap());
    assert!(!shelf.challenge_confirm(school, "id", &device("b"), 50).unwrap());
    assert_eq!(shelf.challenge_claim(school, "id", "another's", 60).unwrap(), None);
    assert_eq!(shelf.challenge_claim(school, "id", "page's secret", 100).unwrap(), None);
    assert_eq!(shelf.challenge_claim(school, "id", "page's secret", 60).unwrap(), Some(device("a")));
    assert_eq!(shelf.challenge_claim(school, "id", "page's secret", 60).unwrap(), None);
}

fn a_session_lasts_its_time(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let by_phone = Session { device: Some(device("a")), made: 10, until: 100 };
    let by_word = Session { device: None, made: 20, until: 200 };
    shelf.session_put(school, "one", &by_phone).unwrap();
    shelf.session_put(school, "two", &by_word).unwrap();
    assert_eq!(shelf.session_put(school, "one", &by_word).unwrap_err(), ShelfFault::Refused(Refusal::Taken));
    assert_eq!(shelf.session(school, "one", 99).unwrap(), Some(by_phone.clone()));
    assert_eq!(shelf.session(school, "one", 100).unwrap(), None);
    assert_eq!(shelf.session(school, "two", 100).unwrap(), Some(by_word));
    assert_eq!(shelf.session(school, "three", 50).unwrap(), None);
    assert_eq!(shelf.session(crate::common::school("other"), "one", 50).unwrap(), None);
    shelf.session_put(school, "four", &by_phone).unwrap();
    shelf.challenge_put(school, "id", "secret", 100).unwrap();
    assert!(shelf.session_drop(school, "four").unwrap());
    assert!(!shelf.session_drop(school, "four").unwrap());
    assert_eq!(shelf.desk_forget(school, 100).unwrap(), 2);
    assert_eq!(shelf.session(school, "one", 50).unwrap(), None);
    shelf.session_put(school, "five", &by_phone).unwrap();
    assert_eq!(shelf.sessions_end(school, &device("a")).unwrap(), 1);
    assert!(shelf.session(school, "two", 50).unwrap().is_some());
}

fn tries_count_while_they_count(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    assert_eq!(shelf.attempts(school, "desk", 10).unwrap(), (0, 10));
    assert_eq!(shelf.attempt_add(school, "desk", 10, 20).unwrap(), 1);
    assert_eq!(shelf.attempt_add(school, "desk", 15, 30).unwrap(), 2);
    assert_eq!(shelf.attempts(school, "desk", 29).unwrap(), (2, 30));
    assert_eq!(shelf.attempts(school, "desk", 30).unwrap(), (0, 30));
    assert_eq!(shelf.attempts(school, "another", 15).unwrap(), (0, 15));
    assert_eq!(shelf.attempt_add(school, "desk", 30, 40).unwrap(), 1);
    shelf.attempt_clear(school, "desk").unwrap();
    assert_eq!(shelf.attempts(school, "desk", 31).unwrap(), (0, 31));
    shelf.attempt_add(school, "a", 10, 20).unwrap();
    shelf.attempt_add(school, "b", 10, 30).unwrap();
    assert_eq!(shelf.attempt_forget(school, 20).unwrap(), 1);
    assert_eq!(shelf.attempts(school, "b", 20).unwrap(), (1, 30));
}

fn a_text_is_kept_or_refused(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    for text in
        ["", "'; DROP TABLE record; --", "?1 $1 %s \\ \" \n\r\t", "\u{1}\u{7f}\u{feff}\u{10ffff}", "🪂"]
    {
        shelf.set(school, text, text).unwrap();
        assert_eq!(shelf.setting(school, text).unwrap().as_deref(), Some(text));
    }
    // PostgreSQL keeps no NUL in a text (its documentation, character types), so neither does the other.
    assert_eq!(shelf.set(school, "a", "b\0c").unwrap_err(), ShelfFault::Refused(Refusal::NotText));
    assert_eq!(shelf.setting(school, "a\0").unwrap_err(), ShelfFault::Refused(Refusal::NotText));
}
