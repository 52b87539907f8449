import { render } from "preact";
import { openExample } from "./actions/open.js";
import { Page } from "./Page.js";
import "./look/base.css";
import "./look/controls.css";
import "./look/layout.css";
import "./look/stage.css";

const root = document.getElementById("page");
if (root !== null) render(<Page />, root);

// A way to show the page that needs no tap: index.html#example.
if (location.hash === "#example") void openExample();
