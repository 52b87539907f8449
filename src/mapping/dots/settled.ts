import type { Note } from "../../units/index.js";
import type { ReasonCode } from "./words.js";

/** One settled choice with the reasons for it. */
export interface Settled<Value> {
  readonly value: Value;
  readonly reasons: readonly Note<ReasonCode>[];
}
