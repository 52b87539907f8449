import {
  outline,
  type Outline,
  type OutlineDots,
  type OutlineOptions,
} from "../../proportions/index.js";
import { GeometryError } from "../../units/index.js";

/**
 * The outline through dots, or nothing where none runs through them: of what was drawn by hand, and of
 * a plan whose landmarks are moved to see what their uncertainty does.
 */
export function outlineIfAny(dots: OutlineDots, shape: OutlineOptions): Outline<"mm"> | undefined {
  try {
    return outline(dots, shape);
  } catch (error) {
    if (error instanceof GeometryError && error.code === "inconsistent") return undefined;
    throw error;
  }
}
