use witnessmark_core::trend::{Kendall, Series, Slope, change, mann_kendall, theil_sen};

use crate::near;

fn series(y: &[f64]) -> Series {
    let x: Vec<f64> = (0..y.len()).map(|at| at as f64).collect();
    Series::paired(&x, y).unwrap()
}

fn slope(series: &Series) -> Slope {
    theil_sen(series, 0.95).unwrap().told().unwrap()
}

/// Sen, JASA 63 (1968), his example: slope 4, interval 26/7 to 35/8 (memory). SciPy 1.17.1
/// `theilslopes` gives 4, 3.7142857142857144, 4.375 and intercept 4.
#[test]
fn sens_own_example() {
    let series =
        Series::paired(&[1.0, 2.0, 3.0, 4.0, 10.0, 12.0, 18.0], &[9.0, 15.0, 19.0, 20.0, 45.0, 55.0, 78.0]);
    let found = slope(&series.unwrap());
    assert_eq!((found.slope, found.low, found.high), (4.0, 26.0 / 7.0, 35.0 / 8.0));
    assert_eq!(found.intercept, 4.0);
}

/// Gilbert, Statistical Methods for Environmental Pollution Monitoring (1987), p. 212: Z = 3.1 (seen
/// in a repository's test of the example). pymannkendall 1.4.3 `original_test`: S = 111,
/// var S = 1226.3333333333333, z = 3.1411481393904497, p = 0.0016828688708945272.
#[test]
fn gilberts_example_has_ties() {
    let wells = [
        20.0, 20.0, 20.0, 20.0, 15.0, 20.0, 20.0, 30.0, 27.0, 26.0, 23.0, 35.0, 25.0, 28.0, 70.0, 26.0, 24.0,
        34.0, 32.0, 23.0, 50.0, 30.0,
    ];
    let Kendall { s, variance, z, p } = mann_kendall(&series(&wells));
    assert_eq!(s, 111);
    near(variance, 1_226.333_333_333_333_3, 1e-12, "var S");
    near(z, 3.141_148_139_390_449_7, 1e-12, "z");
    near(z, 3.1, 0.02, "Gilbert's z");
    near(p, 0.001_682_868_870_894_527_2, 1e-10, "p");
    // SciPy 1.17.1 theilslopes: 0.25 and 8/7 about 2/3.
    let found = slope(&series(&wells));
    near(found.slope, 2.0 / 3.0, 1e-12, "slope");
    near(found.low, 0.25, 1e-12, "low");
    near(found.high, 8.0 / 7.0, 1e-12, "high");
    near(found.intercept, 18.5, 1e-12, "pymannkendall's intercept, from 0");
}

/// Ties in time and value: SciPy 1.17.1 `kendalltau(method="asymptotic")` gives p =
/// 0.00013849036431138006 without correction for continuity; `theilslopes` 0.75, 0.5, 1.0, 2.375.
#[test]
fn ties_in_both() {
    let x = [1.0, 1.0, 2.0, 3.0, 3.0, 3.0, 4.0, 5.0, 6.0, 6.0, 7.0, 8.0];
    let y = [3.0, 2.0, 3.0, 5.0, 4.0, 4.0, 5.0, 5.0, 7.0, 6.0, 6.0, 8.0];
    let series = Series::paired(&x, &y).unwrap();
    let Kendall { s, variance, .. } = mann_kendall(&series);
    assert_eq!(s, 54, "by hand over all pairs");
    // Φ⁻¹(1 − p/2) of that p.
    near(s as f64 / variance.sqrt(), 3.810_848_965, 1e-9, "z without correction");
    let found = slope(&series);
    assert_eq!((found.slope, found.low, found.high, found.intercept), (0.75, 0.5, 1.0, 2.375));
}

/// The Nile at Aswan, 1871 to 1970 (R's data set, memory): the level changed after 1898, the 28th year
/// (Cobb, Biometrika 65 (1978) 243; memory). K by its double sum in Python: 1617.
#[test]
fn the_nile_changed_after_1898() {
    let nile: Vec<f64> = "1120 1160 963 1210 1160 1160 813 1230 1370 1140 995 935 1110 994 1020 960 1180 799 958 \
        1140 1100 1210 1150 1250 1260 1220 1030 1100 774 840 874 694 940 833 701 916 692 1020 1050 969 831 726 456 \
        824 702 1120 1100 832 764 821 768 845 864 862 698 845 744 796 1040 759 781 865 845 944 984 897 822 1010 771 \
        676 649 846 812 742 801 1040 860 874 848 890 744 749 838 1050 918 986 797 923 975 815 1020 906 901 1170 912 \
        746 919 718 714 740"
        .split_whitespace()
        .map(|flow| flow.parse().unwrap())
        .collect();
    assert_eq!(nile.len(), 100);
    let years: Vec<f64> = (0..100).map(|year| 1871.0 + f64::from(year)).collect();
    let found = change(&Series::paired(&years, &nile).unwrap(), 0.05).unwrap();
    assert_eq!((found.after, found.at, found.k), (1898.0, 1899.0, 1617.0));
    near(found.p, 3.591_022_176_936_29e-7, 1e-9, "p");
}

/// A question about R's `trend::pettitt.test` (seen): these have U* = 17 and p = 1.109.
#[test]
fn no_change_is_no_change() {
    let values = [-0.2, -0.2, -1.8, -0.3, 1.5, -0.2, -0.2, 1.2, -1.0, 1.2, -1.0, -0.5, 1.1, -1.2];
    assert_eq!(change(&series(&values), 0.05), None);
    let any = change(&series(&values), 2.0).unwrap();
    assert_eq!((any.k, any.p), (17.0, 1.0), "a chance is never more than 1");
}
