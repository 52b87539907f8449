import { type Length, length } from "../units/index.js";

/**
 * Borders go on past their ends as their last 5 mm run: points drawn freehand stand closer than they are
 * sure. Ours.
 */
export const BORDER_END: Length<"mm"> = /* @__PURE__ */ length(5);
