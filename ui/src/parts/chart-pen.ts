// Drawing on a chart's canvas in the chart's own measures: hours across, values up.
import type uPlot from "uplot";
import { lookOf, type Ink, type Look } from "./chart-look";

export type Place = [x: number, y: number];

export interface Stroke {
  ink: Ink;
  /** Thick as so many pixels of the page. */
  width?: number;
  dash?: number[];
}

export class Pen {
  readonly ctx: CanvasRenderingContext2D;
  readonly look: Look;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly #ratio: number;

  constructor(private readonly plot: uPlot) {
    this.ctx = plot.ctx;
    this.look = lookOf(plot.root);
    this.#ratio = plot.ctx.canvas.width / plot.width;
    const { left, top, width, height } = plot.bbox;
    [this.left, this.top, this.right, this.bottom] = [left, top, left + width, top + height];
  }

  x = (value: number) => this.plot.valToPos(value, "x", true);
  y = (value: number) => this.plot.valToPos(value, "y", true);
  at = ([x, y]: Place): Place => [this.x(x), this.y(y)];

  /** So many rem, in the canvas's own pixels. */
  rem = (count: number) => count * this.look.rem * this.#ratio;

  /** Draws what may reach beyond the axes, and shows only what doesn't. */
  within(draw: () => void) {
    this.ctx.save();
    this.ctx.beginPath();
    this.ctx.rect(this.left, this.top, this.right - this.left, this.bottom - this.top);
    this.ctx.clip();
    draw();
    this.ctx.restore();
  }

  line(places: Place[], { ink, width = 2, dash = [] }: Stroke) {
    this.#along(places);
    this.ctx.strokeStyle = this.look.color(ink);
    this.ctx.lineWidth = width * this.#ratio;
    this.ctx.lineCap = dash.length > 0 ? "butt" : "round";
    this.ctx.lineJoin = "round";
    this.ctx.setLineDash(dash.map((part) => part * this.#ratio));
    this.ctx.stroke();
    this.ctx.setLineDash([]);
  }

  /** A surface; thin where what lies under it must be seen. */
  fill(places: Place[], ink: Ink, thin = 1) {
    this.#along(places);
    this.ctx.fillStyle = this.look.color(ink);
    this.ctx.globalAlpha = thin;
    this.ctx.fill();
    this.ctx.globalAlpha = 1;
  }

  /** Words on the drawing, with paper about them so that no line runs through. */
  words(text: string, [x, y]: Place, { align = "left", ink = "ink", size = 0.9375, weight = 650 }: { align?: CanvasTextAlign; ink?: Ink; size?: number; weight?: number } = {}) {
    const { ctx } = this;
    ctx.font = this.look.letters(size * this.#ratio, weight);
    ctx.textAlign = align;
    ctx.textBaseline = "middle";
    ctx.lineJoin = "round";
    ctx.lineWidth = this.rem(0.375);
    ctx.strokeStyle = this.look.color("paper");
    ctx.strokeText(text, x, y);
    ctx.fillStyle = this.look.color(ink);
    ctx.fillText(text, x, y);
  }

  /** How wide words would be. */
  widthOf(text: string, size = 0.9375, weight = 650): number {
    this.ctx.font = this.look.letters(size * this.#ratio, weight);
    return this.ctx.measureText(text).width;
  }

  /** A disc, with paper about it so that two beside each other are two. */
  disc([x, y]: Place, radius: number, ink: Ink) {
    this.#round(x, y, radius + 0.0625);
    this.ctx.fillStyle = this.look.color("paper");
    this.ctx.fill();
    this.#round(x, y, radius);
    this.ctx.fillStyle = this.look.color(ink);
    this.ctx.fill();
  }

  ring([x, y]: Place, radius: number, { ink, width = 2.5, hollow = false }: { ink: Ink; width?: number; hollow?: boolean }) {
    this.#round(x, y, radius);
    if (hollow) {
      this.ctx.fillStyle = this.look.color("paper");
      this.ctx.fill();
    }
    this.ctx.strokeStyle = this.look.color(ink);
    this.ctx.lineWidth = width * this.#ratio;
    this.ctx.stroke();
  }

  /** The left half of a disc. */
  half([x, y]: Place, radius: number, ink: Ink) {
    this.ctx.beginPath();
    this.ctx.arc(x, y, this.rem(radius), Math.PI / 2, (3 * Math.PI) / 2);
    this.ctx.fillStyle = this.look.color(ink);
    this.ctx.fill();
  }

  /** A square on its corner, empty. */
  diamond([x, y]: Place, radius: number, ink: Ink) {
    const r = this.rem(radius);
    const corners: Place[] = [[x, y - r], [x + r, y], [x, y + r], [x - r, y], [x, y - r]];
    this.fill(corners, "paper");
    this.line(corners, { ink, width: 2.5 });
  }

  #round(x: number, y: number, radius: number) {
    this.ctx.beginPath();
    this.ctx.arc(x, y, this.rem(radius), 0, 2 * Math.PI);
  }

  #along(places: Place[]) {
    this.ctx.beginPath();
    places.forEach(([x, y], index) => (index === 0 ? this.ctx.moveTo(x, y) : this.ctx.lineTo(x, y)));
  }
}
