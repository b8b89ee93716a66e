//! Canonical JSON as we use it, against RFC 8785.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use serde_json::Value;
use serde_json_canonicalizer::to_string;

/// IEEE 754 bits and the text that RFC 8785 appendix B gives them. Source: the table as the
/// RFC's reference implementation and two libraries' tests carry it; the RFC's own text was not at hand.
const NUMBERS: &[(u64, &str)] = &[
    (0x0000_0000_0000_0000, "0"),
    (0x8000_0000_0000_0000, "0"),
    (0x0000_0000_0000_0001, "5e-324"),
    (0x8000_0000_0000_0001, "-5e-324"),
    (0x7fef_ffff_ffff_ffff, "1.7976931348623157e+308"),
    (0xffef_ffff_ffff_ffff, "-1.7976931348623157e+308"),
    (0x4340_0000_0000_0000, "9007199254740992"),
    (0xc340_0000_0000_0000, "-9007199254740992"),
    (0x4430_0000_0000_0000, "295147905179352830000"),
    (0x44b5_2d02_c7e1_4af5, "9.999999999999997e+22"),
    (0x44b5_2d02_c7e1_4af6, "1e+23"),
    (0x44b5_2d02_c7e1_4af7, "1.0000000000000001e+23"),
    (0x444b_1ae4_d6e2_ef4e, "999999999999999700000"),
    (0x444b_1ae4_d6e2_ef4f, "999999999999999900000"),
    (0x444b_1ae4_d6e2_ef50, "1e+21"),
    (0x3eb0_c6f7_a0b5_ed8c, "9.999999999999997e-7"),
    (0x3eb0_c6f7_a0b5_ed8d, "0.000001"),
    (0x41b3_de43_5555_5553, "333333333.3333332"),
    (0x41b3_de43_5555_5554, "333333333.33333325"),
    (0x41b3_de43_5555_5555, "333333333.3333333"),
    (0x41b3_de43_5555_5556, "333333333.3333334"),
    (0x41b3_de43_5555_5557, "333333333.33333343"),
    (0xbecb_f647_612f_3696, "-0.0000033333333333333333"),
    (0x4314_3ff3_c1cb_0959, "1424953923781206.2"),
];

#[test]
fn numbers_are_written_as_in_appendix_b() {
    for (bits, text) in NUMBERS {
        let number = f64::from_bits(*bits);
        assert_eq!(to_string(&number).unwrap(), *text, "{bits:016x}");
        // What was written reads back as the same number, and is written alike again.
        let read: Value = serde_json::from_str(text).unwrap();
        assert_eq!(read.as_f64().unwrap().to_bits() << 1, bits << 1, "{bits:016x}");
        assert_eq!(to_string(&read).unwrap(), *text);
    }
}

/// Appendix B: what is no number is an error, not `null`.
#[test]
fn what_is_no_number_is_an_error() {
    for bits in [0x7fff_ffff_ffff_ffff_u64, 0x7ff0_0000_0000_0000, 0xfff0_0000_0000_0000] {
        assert!(to_string(&f64::from_bits(bits)).is_err(), "{bits:016x}");
    }
}

/// § 3.2.2 to 3.2.4: the example, its canonical text, and that text's UTF-8 bytes.
/// Source: as quoted in two libraries' tests.
#[test]
fn the_example_is_written_as_in_section_3_2() {
    let sample = r#"{
      "numbers": [333333333.33333329, 1E30, 4.50,
                  2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }"#;
    let hex = "7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a\
               5b3333333333333333332e333333333333332c31652b33302c342e352c302e3030322c31652d3237\
               5d2c22737472696e67223a22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f227d";
    let value: Value = serde_json::from_str(sample).unwrap();
    let expected = String::from_utf8(hex::decode(hex).unwrap()).unwrap();
    assert_eq!(to_string(&value).unwrap(), expected);
}

/// § 3.2.3: members are ordered by UTF-16 code units, which is not the order of UTF-8 bytes.
/// Source: as quoted in two libraries' tests.
#[test]
fn members_are_sorted_as_in_section_3_2_3() {
    let sample = r#"{
      "\u20ac": "Euro Sign",
      "\r": "Carriage Return",
      "\ufb33": "Hebrew Letter Dalet With Dagesh",
      "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face",
      "\u0080": "Control",
      "\u00f6": "Latin Small Letter O With Diaeresis"
    }"#;
    let value: Value = serde_json::from_str(sample).unwrap();
    let expected = "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u{80}\":\"Control\",\
                    \"ö\":\"Latin Small Letter O With Diaeresis\",\"€\":\"Euro Sign\",\
                    \"😀\":\"Emoji: Grinning Face\",\"\u{fb33}\":\"Hebrew Letter Dalet With Dagesh\"}";
    assert_eq!(to_string(&value).unwrap(), expected);
}
