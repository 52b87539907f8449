import { GeometryError } from "brow-geometry";
import { busy, said } from "../page-state.js";
import { text } from "../words/language.js";

/** Does what takes a while, says meanwhile that it does, and says why where it fails. */
export async function telling(
  meanwhile: "lookingForFace" | "opening" | "openingExample",
  failure: "photoFails" | "recordFails" | "exampleFails",
  work: () => Promise<void>,
): Promise<void> {
  said.value = "";
  busy.value = text.value[meanwhile];
  try {
    await work();
  } catch (error) {
    said.value = text.value.because(text.value[failure], reasonIn(error));
  } finally {
    busy.value = "";
  }
}

/** What a refusal asks for, in the words that the library has for developers. */
export function needIn({ detail }: Pick<GeometryError, "detail">): string {
  return text.value.needs(detail.field, detail.need);
}

function reasonIn(error: unknown): string {
  if (error instanceof GeometryError) return needIn(error);
  if (error instanceof SyntaxError) return text.value.notWritten;
  return error instanceof RangeError ? text.value.tooLarge : text.value.unknownKind;
}
