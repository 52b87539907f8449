import { GeometryError } from "brow-geometry";
import { expect } from "vitest";

/** The GeometryError with which some work is refused. */
export function refusal(work: () => unknown): GeometryError {
  try {
    work();
  } catch (error) {
    if (error instanceof GeometryError) return error;
    throw error;
  }
  return expect.fail("nothing was refused");
}
