// The catalogue's line drawings, put into the page so that its colours become theirs.
import { drawings } from "../state";

/** A part with the place to look at marked. */
export function Drawing({ name, focus }: { name: string; focus?: string }) {
  const svg = drawings.value[name];
  if (!svg) return null;
  return <Inlined class="drawing" svg={focus ? marked(svg, "focus", focus, "shown") : svg} />;
}

/** An SVG of the catalogue; decoration beside words that say the same. */
export function Inlined({ svg, ...rest }: { svg: string; class: string }) {
  return <div {...rest} aria-hidden="true" dangerouslySetInnerHTML={{ __html: svg }} />;
}

/** The SVG with a class on the group of that name. */
export function marked(svg: string, kind: "focus" | "station", id: string, name: string): string {
  const group = `data-${kind}="${id}"`;
  return svg.replace(group, `${group} class="${name}"`);
}
