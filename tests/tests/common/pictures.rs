//! Pictures made for the tests.

use image::{ImageFormat, RgbImage};

use super::chance::Chance;

/// A picture of noise: nothing makes it small.
pub fn noise(chance: &mut Chance, width: u32, height: u32) -> RgbImage {
    RgbImage::from_raw(width, height, chance.bytes((width * height * 3) as usize)).unwrap()
}

/// Written in a format.
pub fn written(picture: &RgbImage, format: ImageFormat) -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    picture.write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

/// A segment of a JPEG file put right behind its beginning, where cameras put theirs.
pub fn with_segment(jpeg: &[u8], marker: u8, content: &[u8]) -> Vec<u8> {
    let length = u16::try_from(content.len() + 2).unwrap().to_be_bytes();
    [&jpeg[..2], &[0xff, marker], &length, content, &jpeg[2..]].concat()
}

/// What a camera writes beside the pixels (Exif 2.3, from memory): which way is up, its maker and
/// serial number, and where and when the picture was taken.
pub fn exif(orientation: u16) -> Vec<u8> {
    // A TIFF file, little-endian; each entry is tag, type, count, and value or where it lies.
    fn entry(tag: u16, kind: u16, count: u32, value: u32) -> Vec<u8> {
        [&tag.to_le_bytes()[..], &kind.to_le_bytes(), &count.to_le_bytes(), &value.to_le_bytes()].concat()
    }
    let text = |at: u32, text: &str| (at, text.len() as u32);
    let (maker_at, maker_long) = text(110, "TATTLECAM 9\0");
    let (time_at, time_long) = text(122, "2026:05:02 06:41:07\0");
    let first = [
        5u16.to_le_bytes().to_vec(),
        entry(0x010f, 2, maker_long, maker_at),             // Make
        entry(0x0112, 3, 1, u32::from(orientation)),        // Orientation
        entry(0x0132, 2, time_long, time_at),               // DateTime
        entry(0x8825, 4, 1, 74),                            // GPS IFD
        entry(0xc62f, 2, 4, u32::from_le_bytes(*b"S77\0")), // CameraSerialNumber
        0u32.to_le_bytes().to_vec(),
    ]
    .concat();
    let gps = [
        2u16.to_le_bytes().to_vec(),
        entry(0x0001, 2, 2, u32::from_le_bytes(*b"N\0\0\0")), // GPSLatitudeRef
        entry(0x0002, 5, 3, 142),                             // GPSLatitude: three rationals
        0u32.to_le_bytes().to_vec(),
    ]
    .concat();
    let latitude: Vec<u8> = [47u32, 1, 22, 1, 777, 10].iter().flat_map(|n| n.to_le_bytes()).collect();
    let mut tiff = [b"II*\0\x08\0\0\0".to_vec(), first].concat();
    tiff.resize(74, 0);
    tiff.extend(gps);
    tiff.resize(110, 0);
    tiff.extend(b"TATTLECAM 9\0");
    tiff.extend(b"2026:05:02 06:41:07\0");
    tiff.extend(latitude);
    [b"Exif\0\0".to_vec(), tiff].concat()
}

/// A PNG chunk (PNG specification § 5.3): length, kind, content, CRC-32 of the last two.
pub fn chunk(kind: &[u8; 4], content: &[u8]) -> Vec<u8> {
    let body = [kind.as_slice(), content].concat();
    let crc = !body.iter().fold(u32::MAX, |crc, byte| {
        (0..8)
            .fold(crc ^ u32::from(*byte), |crc, _| (crc >> 1) ^ (0xedb8_8320 & (!(crc & 1)).wrapping_add(1)))
    });
    [&(content.len() as u32).to_be_bytes()[..], &body, &crc.to_be_bytes()].concat()
}
