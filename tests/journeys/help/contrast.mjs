// Contrast, measured on the page as it is painted: WCAG 2.2 § 1.4.6 for text, § 1.4.11 for the edges of what acts;
// the formula of its "contrast ratio" from memory. A gloved hand in the sun needs a line of two pixels (our own rule).

/** Text with less contrast than 7:1, and edges of what is typed into or ticked with less than 3:1 or thinner than
 * two pixels. */
export const pale = (page) =>
  page.evaluate(() => {
    const pen = Object.assign(document.createElement("canvas"), { width: 1, height: 1 }).getContext("2d", { willReadFrequently: true });
    const paint = (colors) => {
      pen.clearRect(0, 0, 1, 1);
      for (const color of colors) {
        pen.fillStyle = color;
        pen.fillRect(0, 0, 1, 1);
      }
      return pen.getImageData(0, 0, 1, 1).data;
    };
    const light = (pixel) => {
      const [r, g, b] = [...pixel].map((channel) => {
        const part = channel / 255;
        return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const behind = (element) => {
      const colors = [];
      for (let at = element; at; at = at.parentElement) colors.unshift(getComputedStyle(at).backgroundColor);
      return ["white", ...colors];
    };
    const ratioOf = (color, back) => {
      const [front, ground] = [light(paint([...back, color])), light(paint(back))];
      return (Math.max(front, ground) + 0.05) / (Math.min(front, ground) + 0.05);
    };
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const found = new Map();
    while (texts.nextNode()) {
      const element = texts.currentNode.parentElement;
      if (!texts.currentNode.textContent.trim() || !element.checkVisibility({ opacityProperty: true })) continue;
      if (element.closest(".unseen, .over-paint")) continue;
      const ratio = ratioOf(getComputedStyle(element).color, behind(element));
      if (ratio < 7) found.set(`${element.tagName}.${element.className}`, `${ratio.toFixed(1)}: ${texts.currentNode.textContent.trim().slice(0, 50)}`);
    }
    for (const element of document.querySelectorAll("input:not(.unseen), select, textarea")) {
      const { borderTopColor, borderTopWidth } = getComputedStyle(element);
      const ratio = ratioOf(borderTopColor, behind(element.parentElement));
      if (element.checkVisibility() && (ratio < 3 || parseFloat(borderTopWidth) < 2))
        found.set(`${element.type} ${element.dataset.test}`, `${ratio.toFixed(1)}, its edge ${borderTopWidth} thick`);
    }
    return [...found].map(([where, what]) => `${where} ${what}`);
  });
