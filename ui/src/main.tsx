import { render } from "preact";
import { App } from "./app";
import "@fontsource-variable/inter/wght.css";
import "./style/tokens.css";
import "./style/base.css";
import "./style/page.css";
import "./style/controls.css";
import "./style/drawing.css";
import "./style/walk.css";
import "./style/marks.css";
import "./style/lists.css";

const root = document.getElementById("app");
if (root) render(<App />, root);
