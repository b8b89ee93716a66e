// What draws charts; a part of its own, so that only screens with a chart load it.
import "uplot/dist/uPlot.min.css";

export { default as UPlot } from "uplot";
