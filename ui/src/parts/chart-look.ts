// The page's own inks and letters, for what is drawn on a canvas. Asked for at every drawing, so that a chart
// follows light and dark, and letters as large as the person has them.
const INKS = { ink: "--ink", soft: "--soft", faint: "--faint", paper: "--paper", wash: "--wash-dark", paint: "--paint", warm: "--paint-ink", sea: "--sea", stop: "--stop" };

export type Ink = keyof typeof INKS;

export interface Look {
  color: (ink: Ink) => string;
  /** One rem, in pixels of the page. */
  rem: number;
  /** The page's letters, so many rem high. */
  letters: (size: number, weight?: number) => string;
}

export function lookOf(element: Element): Look {
  const style = getComputedStyle(element);
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  return {
    color: (ink) => style.getPropertyValue(INKS[ink]).trim(),
    rem,
    letters: (size, weight = 600) => `${weight} ${size * rem}px ${style.fontFamily}`,
  };
}
