/** A side of the face, always the client's own. */
export type Side = "right" | "left";

/** One value for each side of the face. */
export interface Sides<Value> {
  readonly right: Value;
  readonly left: Value;
}
