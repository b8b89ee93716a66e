//! Pictures beside points.

use base64ct::{Base64, Encoding};
use witnessmark_core::list::Step;
use witnessmark_core::said::Said;

use crate::house::{digest, id};
use crate::views::{Photo, WalkProgress};
use crate::{App, Fault, pictures};

impl App {
    /// Puts a picture (JPEG, PNG or WebP, base64) to a point: turned upright, made smaller, and
    /// without what the camera wrote about place and time.
    ///
    /// # Errors
    /// [`Fault`]: not a picture, or one too large.
    pub fn photo_add(&mut self, walk: String, point: String, data: String) -> Result<WalkProgress, Fault> {
        let walk = id(&walk)?;
        let bytes = Base64::decode_vec(data.trim()).map_err(|_| Fault::new("photo-unreadable"))?;
        let photo = pictures::clean(&bytes)?;
        self.store.write(|tx| {
            let mut going = self.house.going(tx, walk)?;
            if going.body.list.point(&point).is_none() {
                return Err(Fault::new("no-such-point").text("point", point));
            }
            let photo = tx.photo_keep(&photo)?;
            let step = Step::Pictured { point, photo, at: self.house.now() };
            tx.step(walk, &step)?;
            going.steps.push(step);
            going.progress = witnessmark_core::list::progress(&going.steps);
            Ok(self.house.progress_view(&going, None))
        })
    }

    /// A picture by its digest.
    ///
    /// # Errors
    /// [`Fault`]: not on this device.
    pub fn photo(&mut self, name: String) -> Result<Photo, Fault> {
        let name = digest(&name)?;
        let photo = self.store.read(|tx| Ok::<_, Fault>(tx.photo(&name)?))?;
        let photo = photo.ok_or_else(|| Fault { kind: "no-photo", said: Said::new("fault-no-photo") })?;
        Ok(Photo { media: photo.media, data: Base64::encode_string(&photo.bytes) })
    }
}
