// A chart as it is painted: read off its canvas.

/** How many of its pixels have a colour of the page, by the colour's name in the style sheets. */
export const painted = (page, test, color) =>
  page.locator(`[data-test="${test}"] canvas`).evaluate((canvas, color) => {
    const pen = Object.assign(document.createElement("canvas"), { width: 1, height: 1 }).getContext("2d");
    pen.fillStyle = getComputedStyle(document.documentElement).getPropertyValue(color);
    pen.fillRect(0, 0, 1, 1);
    const [r, g, b] = pen.getImageData(0, 0, 1, 1).data;
    const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
    let count = 0;
    for (let at = 0; at < data.length; at += 4)
      if (data[at + 3] > 250 && Math.abs(data[at] - r) + Math.abs(data[at + 1] - g) + Math.abs(data[at + 2] - b) < 12) count += 1;
    return count;
  }, color);
