import { defineConfig } from "vite";

// Relative paths, so that the same files run in the app's window and from the loopback server;
// nothing is inlined, so that the page needs no exception from its content security policy.
export default defineConfig({
  base: "./",
  server: { fs: { allow: [".."] } },
  build: {
    target: "es2022",
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // The app's screens, and the board that a school's server shows in a browser.
    rolldownOptions: { input: ["index.html", "board.html"] },
  },
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
});
