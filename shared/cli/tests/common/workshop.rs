//! A machine that may fly but for work, and a torque wrench.

use super::{Desk, Ran, WRENCH, days_ago};

/// Of the one who looks, whose PIN isn't the owner's.
pub const OTHER_PIN: &str = "161803";

impl Desk {
    /// A signing run as the owner.
    pub fn signed(&self, args: &[&str]) -> Ran {
        let pin = self.pin_file();
        let ran = self.run(&[args, &["--pin-file", &pin, "--json"]].concat());
        assert!(ran.code < 3, "{ran:?}");
        ran
    }

    /// A machine called Own, its critical limit confirmed, walked round: fit.
    pub fn with_machine() -> Self {
        let desk = Self::new();
        desk.signed_bundle();
        let limit =
            ["confirm-limit", "Own", "head-nut-torque", "--low", "125 lbf.in", "--high", "130 lbf.in"];
        let confirmed =
            desk.signed(&[&limit[..], &["--document", "Invented manual", "--page", "14"]].concat());
        assert_eq!(confirmed.json()["card"]["verdict"]["state"], "fit", "{confirmed:?}");
        desk
    }

    /// The same with a wrench calibrated so many days ago, and the head's nuts torqued.
    pub fn with_work(calibrated: u64) -> Self {
        let desk = Self::with_machine();
        desk.add_wrench(calibrated);
        let begun = desk.signed(&["job", "begin", "Own", "--did", "head-retorqued"]);
        assert_eq!(begun.json()["card"]["verdict"]["state"], "grounded", "{begun:?}");
        desk
    }

    pub fn add_wrench(&self, calibrated: u64) {
        let range = ["tool", "add", WRENCH, "--low", "5 N.m", "--high", "25 N.m"];
        let added = self.signed(&[&range[..], &["--calibrated", &days_ago(calibrated)]].concat());
        assert_eq!(added.code, 0, "{added:?}");
    }

    /// Leaves every point of the list after the work, and tells them in its order.
    pub fn left_after_service(&self) -> Vec<String> {
        let nothing = self.write("nothing.json", "{}");
        let args = ["walk", "Own", "--occasion", "after-service", "--answers", &nothing];
        let opened = self.json(&[&args[..], &["--leave-missing", "--no-sign"]].concat());
        let left = opened["left"].as_array().unwrap().iter();
        left.map(|point| point["id"].as_str().unwrap().to_owned()).collect()
    }

    /// Walks the list after the work, and signs it.
    pub fn after_service(&self) {
        let answers = self.answers_to("Own", "after-service", |_| {});
        let walked = self.signed(&["walk", "Own", "--occasion", "after-service", "--answers", &answers]);
        assert_eq!(walked.code, 1, "on the ground until it is released: {walked:?}");
    }

    pub fn other_pin(&self) -> String {
        self.write("other-pin", OTHER_PIN)
    }
}
