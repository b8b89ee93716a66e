// The school board's page. It shows and prepares; a device signs.
import { render } from "preact";
import { learn, speak } from "../src/words";
import { App } from "./app";
import { wished } from "./tongue";
import "@fontsource-variable/inter/wght.css";
import "../src/style/tokens.css";
import "../src/style/base.css";
import "../src/style/buttons.css";
import "../src/style/fields.css";
import "../src/style/marks.css";
import "../src/style/lists.css";
import "../src/style/machine.css";
import "../src/style/record.css";
import "../src/style/codes.css";
import "../src/style/school.css";
import "../src/style/board.css";
import "../src/style/charts.css";
import "../src/style/memory.css";
import "../src/style/long-words.css";
import "../src/style/large-letters.css";
import "./style/page.css";
import "./style/table.css";
import "./style/sheet.css";
import "./style/memory.css";

learn(import.meta.glob<string>("../../shared/catalogue/texts/*/board.ftl", { query: "?raw", import: "default", eager: true }));

speak(wished());

const root = document.getElementById("board");
if (root) render(<App />, root);
