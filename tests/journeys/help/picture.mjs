// A picture as a phone's camera writes it: lying on its side, and with the place where it was taken.

/** A JPEG drawn by the page, with a camera's EXIF put in. */
export async function photograph(page, width, height) {
  const pixels = await page.evaluate(([width, height]) => {
    const canvas = Object.assign(document.createElement("canvas"), { width, height });
    const pen = canvas.getContext("2d");
    pen.fillStyle = "gray";
    pen.fillRect(0, 0, width, height);
    pen.fillStyle = "red";
    pen.fillRect(0, 0, width / 2, height / 2);
    return canvas.toDataURL("image/jpeg").split(",")[1];
  }, [width, height]);
  const bytes = Buffer.from(pixels, "base64");
  return Buffer.concat([bytes.subarray(0, 2), exif(), bytes.subarray(2)]);
}

/** Where the invented picture was taken; the reader's eye finds these bytes if they leak. */
export const MAKER = "Hollow Lantern Optics";

// Exif 2.3 (CIPA DC-008-2012) § 4.5–4.6, from memory: an APP1 segment with a TIFF of big-endian entries
// {tag, type, count, value or offset}.
function exif() {
  const tiff = Buffer.alloc(160);
  tiff.write("MM\0*", 0, "latin1");
  tiff.writeUInt32BE(8, 4);
  const entry = (at, tag, type, count, value) => {
    tiff.writeUInt16BE(tag, at);
    tiff.writeUInt16BE(type, at + 2);
    tiff.writeUInt32BE(count, at + 4);
    type === SHORT ? tiff.writeUInt16BE(value, at + 8) : tiff.writeUInt32BE(value, at + 8);
  };
  const [ASCII, SHORT, LONG, RATIONAL] = [2, 3, 4, 5];
  tiff.writeUInt16BE(3, 8);
  entry(10, 0x010f, ASCII, MAKER.length + 1, 50); // Make
  entry(22, 0x0112, SHORT, 1, 6); // Orientation: the camera was turned, show it a quarter turn clockwise
  entry(34, 0x8825, LONG, 1, 80); // GPS
  tiff.write(MAKER, 50, "latin1");
  tiff.writeUInt16BE(2, 80);
  entry(82, 1, ASCII, 2, 0x4e000000); // north
  entry(94, 2, RATIONAL, 3, 112); // latitude
  for (const [n, part] of [47, 1, 30, 1, 0, 1].entries()) tiff.writeUInt32BE(part, 112 + 4 * n);
  const head = Buffer.from([0xff, 0xe1, 0, 0, ...Buffer.from("Exif\0\0")]);
  head.writeUInt16BE(2 + 6 + tiff.length, 2);
  return Buffer.concat([head, tiff]);
}
