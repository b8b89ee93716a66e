use witnessmark_core::reliability::{Findings, turnbull, weibull};

use crate::near;

type Pairs = Vec<(f64, Option<f64>)>;

/// Breast cosmesis, radiotherapy alone: Finkelstein & Wolfe, Biometrics 41 (1985) 933, as listed in
/// textbooks (memory; 46 women, as printed).
pub fn cosmesis() -> Pairs {
    let between = [
        (0, 7),
        (0, 8),
        (0, 5),
        (4, 11),
        (5, 12),
        (5, 11),
        (6, 10),
        (7, 16),
        (7, 14),
        (11, 15),
        (11, 18),
        (17, 25),
        (17, 25),
        (19, 35),
        (18, 26),
        (25, 37),
        (26, 40),
        (27, 34),
        (36, 44),
        (36, 48),
        (37, 44),
    ];
    let whole =
        [15, 17, 18, 22, 24, 24, 32, 33, 34, 36, 36, 37, 37, 37, 38, 40, 45, 46, 46, 46, 46, 46, 46, 46, 46];
    let failed = between.iter().map(|(after, by)| (f64::from(*after), Some(f64::from(*by))));
    let pairs: Pairs = failed.chain(whole.iter().map(|after| (f64::from(*after), None))).collect();
    assert_eq!(pairs.len(), 46);
    pairs
}

/// Ball bearings, millions of revolutions: Lieblein & Zelen, J. Res. NBS 57 (1956) 273 (memory).
fn bearings() -> Pairs {
    [
        17.88, 28.92, 33.00, 41.52, 42.12, 45.60, 48.48, 51.84, 51.96, 54.12, 55.56, 67.80, 68.64, 68.64,
        68.88, 84.12, 93.12, 98.64, 105.12, 105.84, 127.92, 128.04, 173.40,
    ]
    .into_iter()
    .map(|life| (life, Some(life)))
    .collect()
}

/// Masses and log-likelihood as a reference implementation computed them (check values of the project).
#[test]
fn turnbull_of_the_cosmesis_data() {
    let found = turnbull(&Findings::new(&cosmesis()).unwrap()).told().unwrap();
    let printed = [
        (4.0, 5.0, 0.0463),
        (6.0, 7.0, 0.0334),
        (7.0, 8.0, 0.0887),
        (11.0, 12.0, 0.0708),
        (24.0, 25.0, 0.0926),
        (33.0, 34.0, 0.0818),
        (38.0, 40.0, 0.1209),
        (46.0, 48.0, 0.4656),
    ];
    assert_eq!(found.masses.len(), printed.len(), "{:?}", found.masses);
    for (mass, (after, by, share)) in found.masses.iter().zip(printed) {
        assert_eq!((mass.after, mass.by), (after, Some(by)));
        assert!((mass.mass - share).abs() < 6e-5, "{mass:?}, printed {share}");
    }
    assert!((found.log_likelihood - -58.0600).abs() < 6e-5, "{}", found.log_likelihood);
    assert!(found.gap < 1e-6);
}

/// lifelines 0.30.3 `fit_interval_censoring` on the same: 1.12041, 57.5245, −64.592139.
#[test]
fn weibull_of_the_cosmesis_data() {
    let found = weibull(&Findings::new(&cosmesis()).unwrap()).unwrap().told().unwrap();
    near(found.shape, 1.120_408_7, 1e-5, "shape");
    near(found.scale, 57.524_495, 1e-5, "scale");
    near(found.log_likelihood, -64.592_139_284_8, 1e-9, "log-likelihood");
}

/// Kaplan–Meier of 6-MP: data in Introductory Biostatistics, exercise 11.1 (seen); S by lifelines.
#[test]
fn six_mp_is_kaplan_meier() {
    let died = [6, 6, 6, 7, 10, 13, 16, 22, 23].map(|week| (f64::from(week), Some(f64::from(week))));
    let left = [6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35].map(|week| (f64::from(week), None));
    let pairs: Pairs = died.into_iter().chain(left).collect();
    let found = turnbull(&Findings::new(&pairs).unwrap()).told().unwrap();
    let printed = [
        (6.0, 0.8571),
        (7.0, 0.8067),
        (10.0, 0.7529),
        (13.0, 0.6902),
        (16.0, 0.6275),
        (22.0, 0.5378),
        (23.0, 0.4482),
    ];
    let mut alive = 1.0;
    for (mass, (week, share)) in found.masses.iter().zip(printed) {
        alive -= mass.mass;
        assert_eq!((mass.after, mass.by), (week, Some(week)));
        assert!((alive - share).abs() < 6e-5, "week {week}: {alive}, printed {share}");
    }
    let last = found.masses.last().unwrap();
    assert_eq!((found.masses.len(), last.after, last.by), (8, 35.0, None), "the rest lies beyond");
    near(last.mass, 0.4482, 2e-4, "the rest");
}

/// Lieblein & Zelen's bearings: shape about 2.10, scale about 81.9 (memory); lifelines 0.30.3 2.102059,
/// 81.878298, log-likelihood −113.691291; profile intervals by SciPy 1.17.1 (brentq over
/// minimize_scalar of scipy.stats.weibull_min's logpdf).
#[test]
fn weibull_of_the_bearings() {
    let found = weibull(&Findings::new(&bearings()).unwrap()).unwrap().told().unwrap();
    near(found.shape, 2.10, 2e-3, "shape, as printed");
    near(found.scale, 81.9, 1e-3, "scale, as printed");
    near(found.shape, 2.102_058_8, 1e-5, "shape");
    near(found.scale, 81.878_298, 1e-5, "scale");
    near(found.log_likelihood, -113.691_290_932, 1e-10, "log-likelihood");
    near(found.shape_interval.low.unwrap(), 1.504_146_16, 1e-6, "shape, low");
    near(found.shape_interval.high.unwrap(), 2.791_535_17, 1e-6, "shape, high");
    near(found.scale_interval.low.unwrap(), 65.699_097_0, 1e-6, "scale, low");
    near(found.scale_interval.high.unwrap(), 100.875_405_5, 1e-6, "scale, high");
}
