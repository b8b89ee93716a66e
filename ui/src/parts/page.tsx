// The frame of a screen: its title, the way back, and the focus on the heading when it comes.
import type { ComponentChildren, RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { Fault } from "../calls";
import { keepScroll, keptScroll } from "../route";
import { t } from "../words";
import { FaultNote } from "./fault";

let first = true;

interface PageProps {
  /** The screen's name, for tests. */
  screen: string;
  /** The heading, and the document's title. */
  title: string;
  /** Stands over the heading, small. */
  over?: ComponentChildren;
  /** Where the way back leads, and its words. */
  back?: { href: string; words: string } | undefined;
  /** Replaces the header with the screen's own. */
  header?: ComponentChildren;
  /** The left column on a wide screen; between heading and words on a narrow one. */
  picture?: ComponentChildren;
  /** On a narrow screen the picture stands over the heading. */
  pictureFirst?: boolean;
  /** On a wide window the words take all of it. */
  broad?: boolean;
  /** What the thumb reaches: the main actions. */
  foot?: ComponentChildren;
  children?: ComponentChildren;
}

export function Page({ screen, title, over, back, header, picture, pictureFirst, broad, foot, children }: PageProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const scroll = useRef<HTMLDivElement>(null);
  const words = useRef<HTMLDivElement>(null);
  useReachable(words);
  useEffect(() => {
    document.title = `${title} · ${t("app-name")}`;
  }, [title]);
  useEffect(() => {
    // Which of the two scrolls depends on the window's width.
    for (const box of [scroll, words]) box.current?.scrollTo(0, keptScroll());
    if (!first) heading.current?.focus({ preventScroll: true });
    first = false;
  }, []);
  return (
    <div class={`page ${picture ? "two" : broad ? "one broad" : "one"}`} data-screen={screen}>
      {(header || back) && (
        <header class="top">
          {back && (
            <a class="back" href={back.href} data-test="back">
              <Chevron />
              {back.words}
            </a>
          )}
          {header}
        </header>
      )}
      <main>
        <div class="scroll" ref={scroll} onScrollCapture={(event) => keepScroll((event.target as Element).scrollTop)}>
          <div class="head">
            {over && <div class="over">{over}</div>}
            <h1 ref={heading} tabIndex={-1}>
              {title}
            </h1>
          </div>
          {picture && <div class={`picture ${pictureFirst ? "first" : ""}`}>{picture}</div>}
          <div class="words" ref={words}>{children}</div>
        </div>
        {foot && <div class="foot">{foot}</div>}
      </main>
    </div>
  );
}

/** A box of plain words that scrolls can be scrolled by the keyboard too. */
function useReachable(box: RefObject<HTMLElement | null>) {
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const look = () => {
      const scrolls = element.scrollHeight > element.clientHeight && getComputedStyle(element).overflowY === "auto";
      const alone = scrolls && !element.querySelector("a, button, input");
      const named = { tabindex: "0", role: "region", "aria-label": document.querySelector("h1")?.textContent ?? "" };
      for (const [name, value] of Object.entries(named)) {
        if (alone) element.setAttribute(name, value);
        else element.removeAttribute(name);
      }
    };
    const watch = new ResizeObserver(look);
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
}

/** A screen that waits for the core, or couldn't get what it shows. */
export function Waiting(props: { screen: string; fault: Fault | null; again: () => void; back?: PageProps["back"] }) {
  return (
    <div class="page one" data-screen={`${props.screen}-waiting`}>
      <main>
        {props.fault ? (
          <>
            <h1>{t("waiting-failed")}</h1>
            <FaultNote fault={props.fault} again={props.again} />
            <a class="button" href={props.back?.href ?? "#/"}>
              {props.back?.words ?? t("to-machines")}
            </a>
          </>
        ) : (
          <h1 class="late soft">{t("waiting")}</h1>
        )}
      </main>
    </div>
  );
}

function Chevron() {
  return (
    <svg class="chevron" viewBox="0 0 12 20" aria-hidden="true">
      <path d="M10 2L2 10L10 18" />
    </svg>
  );
}
