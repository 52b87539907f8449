import { type CompleteDots } from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import { outline } from "../../proportions/index.js";
import { GeometryError, type Side } from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import { withPins } from "../choices/dots-in-order.js";
import type { SettledChoices } from "./planned-dots.js";

/**
 * Refuses dots that no outline runs through, such as a body dot above the arch, and names the pins.
 * Without pins and mirrored, dots hang below a border that is drawn by the same rule.
 */
export function requireOutline(
  where: string,
  dots: CompleteDots<"mm">,
  side: Side,
  { shape, pins, carry }: SettledChoices,
): void {
  if (pins.length === 0 && carry === "mirror") return;
  try {
    outline(dots, shape);
  } catch (error) {
    if (!(error instanceof GeometryError) || error.code !== "inconsistent") throw error;
    const { field, value, need } = error.detail;
    const dot = DOT_NAMES.find((name) => field === `dots.${name}`);
    refuse(
      pins.length > 0 ? "contradicting-pins" : "no-solution",
      where,
      dot === undefined ? field : `${side} ${dot}`,
      value,
      withPins(need, pins),
    );
  }
}
