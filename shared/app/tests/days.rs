//! A day is written with the month it is in.

use chrono::NaiveDate;
use witnessmark_app::Catalogue;

#[test]
fn each_month_has_its_own_name() {
    let catalogue = Catalogue::embedded().unwrap();
    let names = [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];
    for (month, name) in (1..).zip(names) {
        let day = NaiveDate::from_ymd_opt(2026, month, 9).unwrap();
        assert_eq!(catalogue.texts.day("en", day), format!("9 {name} 2026"));
    }
}
