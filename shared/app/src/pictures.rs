//! A picture made fit to keep: upright, no larger than needed, and nothing in it but pixels.

use std::io::Cursor;

use image::codecs::jpeg::JpegEncoder;
use image::{DynamicImage, ImageDecoder, ImageError, ImageFormat, ImageReader, Limits};
use witnessmark_store::Photo;

use base64ct::{Base64, Encoding};

use crate::Fault;

/// Longest side kept, pixels: a hairline crack photographed close still shows.
const LONGEST_SIDE: u32 = 1600;
/// JPEG quality.
const QUALITY: u8 = 82;
/// Largest file taken, bytes.
const LARGEST_FILE: usize = 40 * 1024 * 1024;
/// Most memory a picture may take while it is read, bytes (some 60 megapixels).
const MOST_MEMORY: u64 = 256 * 1024 * 1024;

/// The text in a picture of a QR code, the picture as base64.
pub fn read_code(data: &str) -> Result<String, Fault> {
    let bytes = Base64::decode_vec(data.trim()).map_err(|_| Fault::new("photo-unreadable"))?;
    let grey = decode(&bytes)?.to_luma8();
    let (width, height) = (grey.width() as usize, grey.height() as usize);
    let pixel = |x: usize, y: usize| {
        let (x, y) = (u32::try_from(x).unwrap_or(0), u32::try_from(y).unwrap_or(0));
        grey.get_pixel_checked(x, y).map_or(255, |pixel| pixel.0.first().copied().unwrap_or(255))
    };
    let mut prepared = rqrr::PreparedImage::prepare_from_greyscale(width, height, pixel);
    let read = prepared.detect_grids().into_iter().find_map(|grid| grid.decode().ok());
    read.map(|(_, text)| text).ok_or_else(|| Fault::new("code-unreadable"))
}

/// Reads any picture we can, and writes it anew as JPEG: what the camera added (place, time,
/// serial numbers) is gone, since only pixels are written.
pub fn clean(bytes: &[u8]) -> Result<Photo, Fault> {
    let image = decode(bytes)?;
    let mut jpeg = Vec::new();
    let pixels = image.to_rgb8();
    JpegEncoder::new_with_quality(&mut jpeg, QUALITY).encode_image(&pixels).map_err(Fault::internal)?;
    Ok(Photo { media: "image/jpeg".into(), bytes: jpeg })
}

/// A picture read, upright and no larger than is kept.
fn decode(bytes: &[u8]) -> Result<DynamicImage, Fault> {
    if bytes.len() > LARGEST_FILE {
        return Err(Fault::new("photo-too-large"));
    }
    let mut reader = ImageReader::new(Cursor::new(bytes))
        .with_guessed_format()
        .map_err(|_| Fault::new("photo-unreadable"))?;
    if reader.format() == Some(ImageFormat::Jpeg) && !is_whole_jpeg(bytes) {
        return Err(Fault::new("photo-unreadable"));
    }
    let mut limits = Limits::default();
    limits.max_alloc = Some(MOST_MEMORY);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().map_err(unreadable)?;
    // The library holds to the limit while it reads, not when it takes room for the whole picture.
    if decoder.total_bytes() > MOST_MEMORY {
        return Err(Fault::new("photo-too-large"));
    }
    let upright = decoder.orientation().map_err(unreadable)?;
    let mut image = DynamicImage::from_decoder(decoder).map_err(unreadable)?;
    image.apply_orientation(upright);
    if image.width().max(image.height()) > LONGEST_SIDE {
        image = image.thumbnail(LONGEST_SIDE, LONGEST_SIDE);
    }
    Ok(image)
}

fn unreadable(fault: ImageError) -> Fault {
    match fault {
        ImageError::Limits(_) => Fault::new("photo-too-large"),
        _ => Fault::new("photo-unreadable"),
    }
}

/// Whether a JPEG's picture has its end: the library fills up a file cut short with grey, and a
/// crack may lie in the half that is missing. Within the picture's own data the end's marker can't
/// occur (ITU T.81 B.1.1.5); before it, in a thumbnail, it can.
fn is_whole_jpeg(bytes: &[u8]) -> bool {
    let mut rest = bytes.get(2..).unwrap_or_default();
    while let [0xff, marker, high, low, ..] = rest {
        if *marker == 0xff {
            // A fill byte before a marker (B.1.1.2).
            rest = rest.get(1..).unwrap_or_default();
            continue;
        }
        let length = usize::from(u16::from_be_bytes([*high, *low]));
        rest = rest.get(2 + length..).unwrap_or_default();
        if *marker == 0xda {
            return rest.windows(2).any(|two| two == [0xff, 0xd9]);
        }
    }
    false
}
