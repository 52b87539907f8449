import { GeometryError } from "brow-geometry";
import { busy, said } from "../page-state.js";

/** Does what takes a while, says meanwhile that it does, and says why where it fails. */
export async function telling(
  meanwhile: string,
  failure: string,
  work: () => Promise<void>,
): Promise<void> {
  said.value = "";
  busy.value = meanwhile;
  try {
    await work();
  } catch (error) {
    said.value = `${failure}: ${reasonIn(error)}.`;
  } finally {
    busy.value = "";
  }
}

/** What a refusal asks for, in the words of the library. */
export function needIn({ detail }: Pick<GeometryError, "detail">): string {
  return `${detail.field} needs ${detail.need}`;
}

function reasonIn(error: unknown): string {
  if (error instanceof GeometryError) return needIn(error);
  if (error instanceof SyntaxError) return "it is not written as records are";
  return error instanceof RangeError ? error.message : "it is not of a kind that is known here";
}
