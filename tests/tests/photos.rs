//! Pictures as cameras and mischief make them: kept upright, small and without what the camera
//! told of place and time, or refused in clear words.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::expect_used, clippy::panic)]

mod common;

use base64ct::{Base64, Encoding};
use common::chance::Chance;
use common::device::begun;
use common::pictures::{chunk, exif, noise, with_segment, written};
use image::{ImageFormat, Rgb, RgbImage};
use witnessmark_app::{App, FaultView};

/// A phone with an inspection under way.
struct Phone {
    app: App,
    walk: String,
    point: String,
}

impl Phone {
    fn new() -> Self {
        let (mut app, machines) = begun(":memory:");
        let walk = app.walk(machines[0].id.clone(), "before-flight".into()).unwrap();
        let point = walk.stations[0].points[0].id.clone();
        Self { app, walk: walk.id, point }
    }

    /// Puts a picture to the point and gives back what was kept.
    fn take(&mut self, picture: &[u8]) -> Result<(String, Vec<u8>), FaultView> {
        let data = Base64::encode_string(picture);
        let taken = self.app.photo_add(self.walk.clone(), self.point.clone(), data);
        let progress = taken.map_err(|fault| self.app.show(&fault))?;
        let name = progress.points[&self.point].photos.last().unwrap().clone();
        let photo = self.app.photo(name).unwrap();
        Ok((photo.media, Base64::decode_vec(&photo.data).unwrap()))
    }

    fn pictures(&mut self) -> usize {
        let machine = self.machine();
        let walk = self.app.walk(machine, "before-flight".into()).unwrap();
        walk.progress.points[&self.point].photos.len()
    }

    fn machine(&mut self) -> String {
        self.app.machines().unwrap().into_iter().find(|card| card.walk.is_some()).unwrap().id
    }

    fn refused(&mut self, picture: &[u8]) -> String {
        let before = self.pictures();
        let Err(fault) = self.take(picture) else { panic!("a picture that is none was taken") };
        assert!(fault.message.len() > 20 && fault.hint.len() > 20, "{fault:?}");
        assert_eq!(self.pictures(), before, "nothing is kept of what was refused");
        fault.kind
    }
}

/// Red, green, blue and white corners, clockwise from the top left.
fn corners(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| match (x < width / 2, y < height / 2) {
        (true, true) => Rgb([220, 20, 20]),
        (false, true) => Rgb([20, 200, 20]),
        (false, false) => Rgb([20, 20, 220]),
        (true, false) => Rgb([240, 240, 240]),
    })
}

/// The colours of the corners, clockwise from the top left.
fn seen(picture: &RgbImage) -> String {
    let (right, bottom) = (picture.width() - 4, picture.height() - 4);
    let letter = |(x, y)| match picture.get_pixel(x, y).0 {
        [r, g, b] if r > 150 && g > 150 && b > 150 => 'w',
        [r, ..] if r > 150 => 'r',
        [_, g, _] if g > 150 => 'g',
        _ => 'b',
    };
    [(3, 3), (right, 3), (right, bottom), (3, bottom)].map(letter).iter().collect()
}

fn read(jpeg: &[u8]) -> RgbImage {
    image::load_from_memory_with_format(jpeg, ImageFormat::Jpeg).unwrap().to_rgb8()
}

fn contains(bytes: &[u8], what: &[u8]) -> bool {
    bytes.windows(what.len()).any(|window| window == what)
}

#[test]
fn a_picture_is_turned_upright_whichever_way_the_phone_was_held() {
    let mut phone = Phone::new();
    // Exif orientations (Exif 2.3, tag 0112, from memory): what lies top left after righting.
    let upright = ["rgbw", "grwb", "bwrg", "wbgr", "rwbg", "wrgb", "bgrw", "gbwr"];
    for (orientation, corners_then) in (1..=8u16).zip(upright) {
        let camera = with_segment(&written(&corners(120, 80), ImageFormat::Jpeg), 0xe1, &exif(orientation));
        let (media, kept) = phone.take(&camera).unwrap();
        let kept = read(&kept);
        assert_eq!(media, "image/jpeg");
        let sides = if orientation < 5 { (120, 80) } else { (80, 120) };
        assert_eq!(kept.dimensions(), sides, "orientation {orientation}");
        assert_eq!(seen(&kept), corners_then, "orientation {orientation}");
    }
}

#[test]
fn what_the_camera_told_is_gone() {
    let mut phone = Phone::new();
    let jpeg = written(&corners(64, 48), ImageFormat::Jpeg);
    let camera = with_segment(&jpeg, 0xe1, &exif(6));
    let camera = with_segment(&camera, 0xfe, b"taken at home");
    let camera = with_segment(&camera, 0xed, b"Photoshop 3.0\0 a caption with a name");
    for told in [b"TATTLECAM".as_slice(), b"2026:05:02", b"taken at home", b"a caption"] {
        assert!(contains(&camera, told), "the test's own picture lacks it");
    }
    let (_, kept) = phone.take(&camera).unwrap();
    for told in [b"Exif".as_slice(), b"TATTLECAM", b"2026:05:02", b"S77", b"taken at home", b"Photoshop"] {
        assert!(!contains(&kept, told), "{}", String::from_utf8_lossy(told));
    }
    // The markers themselves: only the file's own beginning (APP0) may stand before the tables.
    assert!(
        !contains(&kept, &[0xff, 0xe1]) && !contains(&kept, &[0xff, 0xed]) && !contains(&kept, &[0xff, 0xfe])
    );

    let png = written(&corners(64, 48), ImageFormat::Png);
    let text = chunk(b"tEXt", b"Comment\0taken at home");
    let camera = [&png[..33], &text, &png[33..]].concat();
    let (media, kept) = phone.take(&camera).unwrap();
    assert_eq!(media, "image/jpeg");
    assert!(contains(&camera, b"taken at home") && !contains(&kept, b"taken at home"));
}

#[test]
fn the_longest_side_is_at_most_1600_and_small_pictures_stay() {
    let mut phone = Phone::new();
    for (given, kept) in [
        ((4000, 1000), (1600, 400)),
        ((900, 3600), (400, 1600)),
        ((1600, 1600), (1600, 1600)),
        ((1601, 10), (1600, 10)),
        ((32, 24), (32, 24)),
    ] {
        let (_, bytes) = phone.take(&written(&corners(given.0, given.1), ImageFormat::Jpeg)).unwrap();
        assert_eq!(read(&bytes).dimensions(), kept);
    }
    for format in [ImageFormat::Png, ImageFormat::WebP] {
        let (_, bytes) = phone.take(&written(&corners(200, 100), format)).unwrap();
        assert_eq!((read(&bytes).dimensions(), seen(&read(&bytes)).as_str()), ((200, 100), "rgbw"));
    }
}

#[test]
fn what_is_no_picture_is_refused() {
    let mut phone = Phone::new();
    let gif = b"GIF89a\x01\0\x01\0\x80\0\0\0\0\0\xff\xff\xff,\0\0\0\0\x01\0\x01\0\0\x02\x02D\x01\0;";
    let svg = b"<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>";
    let zeros = vec![0; 5000];
    for none in [b"".as_slice(), b"not a picture", gif, svg, &zeros, b"\xff\xd8\xff", b"\x89PNG\r\n\x1a\n"] {
        assert_eq!(phone.refused(none), "photo-unreadable");
    }
    let (walk, point) = (phone.walk.clone(), phone.point.clone());
    let fault = phone.app.photo_add(walk, point, "no base64!".into()).unwrap_err();
    assert_eq!(fault.kind, "photo-unreadable");
}

/// Half a picture is no picture: a card that was pulled out, a transfer that broke off.
#[test]
fn a_picture_cut_short_is_refused() {
    let mut phone = Phone::new();
    let mut chance = Chance::seeded("cuts");
    for format in [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP] {
        let whole = written(&noise(&mut chance, 200, 150), format);
        assert!(phone.take(&whole).is_ok());
        if format == ImageFormat::Jpeg {
            // What a reader must bear: fill bytes before a marker, and what cameras put behind the end.
            let filled = [&whole[..2], &[0xff, 0xff], &whole[2..], b"more of the camera's"].concat();
            assert!(phone.take(&filled).is_ok());
        }
        for share in [1, 10, 30, 50, 70, 90] {
            let cut = &whole[..whole.len() * share / 100];
            assert_eq!(phone.refused(cut), "photo-unreadable", "{format:?} cut to {share} %");
        }
    }
}

/// A small file that says it is a huge picture takes no memory to refuse.
#[test]
fn a_picture_said_to_be_huge_is_refused() {
    let mut phone = Phone::new();
    let header = [&60_000u32.to_be_bytes()[..], &60_000u32.to_be_bytes(), &[8, 2, 0, 0, 0]].concat();
    let png = [
        b"\x89PNG\r\n\x1a\n".to_vec(),
        chunk(b"IHDR", &header),
        chunk(b"IDAT", b"\x78\x9c\x63\x00\x00\x00\x01\x00\x01"),
        chunk(b"IEND", b""),
    ]
    .concat();
    assert_eq!(phone.refused(&png), "photo-too-large");

    // JPEG: the frame's height and width, behind SOF0 and the precision (T.81 B.2.2).
    let mut jpeg = written(&corners(16, 16), ImageFormat::Jpeg);
    let frame = jpeg.windows(2).position(|two| two == [0xff, 0xc0]).unwrap();
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0xff, 0xff, 0xff, 0xff]);
    assert_eq!(phone.refused(&jpeg), "photo-too-large");

    let large = vec![0; 40 * 1024 * 1024 + 1];
    assert_eq!(phone.refused(&large), "photo-too-large");
}

/// Wounds at random: read, or refused; never more.
#[test]
fn a_wounded_picture_does_not_stop_the_program() {
    let mut phone = Phone::new();
    let mut chance = Chance::seeded("wounds");
    for round in 0..150 {
        let format = *chance.pick(&[ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP]);
        let mut picture = written(&noise(&mut chance, 40, 30), format);
        if format == ImageFormat::Jpeg && round % 2 == 0 {
            picture = with_segment(&picture, 0xe1, &exif(6));
        }
        for _ in 0..=chance.below(12) {
            let place = chance.below(picture.len() as u64) as usize;
            picture[place] = chance.next() as u8;
        }
        if let Err(fault) = phone.take(&picture) {
            assert!(fault.kind.starts_with("photo-"), "{fault:?}");
        }
    }
}
