//! A drawing in pixels.

use std::sync::Arc;

use image::ImageEncoder;
use image::codecs::png::PngEncoder;
use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree, fontdb};

use crate::{EMBEDDED, Fault};

/// Pixels of the file in one of the drawing: sharp on a fine screen and on paper.
const DENSITY: f32 = 2.0;

/// The drawing as PNG.
///
/// # Errors
/// What the library refuses.
pub(super) fn png(svg: &str) -> Result<Vec<u8>, Fault> {
    let mut fonts = fontdb::Database::new();
    for file in ["fonts/Inter-Regular.otf", "fonts/Inter-Bold.otf"] {
        let missing = || Fault::new("catalogue").text("where", file).text("why", "no font can be read there");
        fonts.load_font_data(EMBEDDED.get_file(file).ok_or_else(missing)?.contents().to_vec());
    }
    let options = Options { fontdb: Arc::new(fonts), ..Options::default() };
    let tree = Tree::from_str(svg, &options).map_err(Fault::internal)?;
    let size =
        tree.size().to_int_size().scale_by(DENSITY).ok_or_else(|| Fault::internal("a plot of no size"))?;
    let mut pixels =
        Pixmap::new(size.width(), size.height()).ok_or_else(|| Fault::internal("a plot too large"))?;
    resvg::render(&tree, Transform::from_scale(DENSITY, DENSITY), &mut pixels.as_mut());
    // The paper is opaque, so that nothing is mixed with an alpha.
    let rgb: Vec<u8> = pixels.pixels().iter().flat_map(|p| [p.red(), p.green(), p.blue()]).collect();
    let mut file = Vec::new();
    PngEncoder::new(&mut file)
        .write_image(&rgb, size.width(), size.height(), image::ExtendedColorType::Rgb8)
        .map_err(Fault::internal)?;
    Ok(file)
}
