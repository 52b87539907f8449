import type { Brow, Face, Side } from "brow-geometry";
import type { choicesSchema } from "brow-geometry/schema";
import { faceSchema, parseChoices, parseFace, type Schema } from "brow-geometry/schema";
import type { Choices } from "brow-geometry/mapping";
import { describe, expectTypeOf, it } from "vitest";
import type * as z from "zod/mini";
import { point, polyline } from "../../src/schema/quantity.js";
import { record, word } from "../../src/schema/schema.js";

describe("what schemas answer", () => {
  it("is the library's own types", () => {
    expectTypeOf(parseFace({}, "px")).toEqualTypeOf<Face<"px">>();
    expectTypeOf(parseFace({}, "mm")).toEqualTypeOf<Face<"mm">>();
    expectTypeOf(parseChoices({})).toEqualTypeOf<Choices>();
    expectTypeOf(faceSchema("px")).toEqualTypeOf<Schema<Face<"px">>>();
    expectTypeOf<z.output<typeof choicesSchema>>().toEqualTypeOf<Choices>();
  });

  it("keeps pixels and millimetres apart", () => {
    expectTypeOf(parseFace({}, "px")).not.toExtend<Face<"mm">>();
    expectTypeOf<Schema<Face<"px">>>().not.toExtend<Schema<Face<"mm">>>();
  });

  it("leaves an optional key out or gives it a value", () => {
    expectTypeOf<undefined>().not.toExtend<Required<z.output<ReturnType<typeof brow>>>["lower"]>();
    const { lower } = brow().parse({});
    expectTypeOf(lower).toEqualTypeOf<Brow<"px">["lower"]>();
  });
});

function brow(): Schema<Brow<"px">> {
  return record<Brow<"px">>({ upper: polyline<"px">() }, { lower: polyline<"px">() });
}

describe("a schema of another type than it names is refused", () => {
  it("where a key is missing, required or optional", () => {
    // @ts-expect-error: `upper` is missing
    record<Brow<"px">>({}, { lower: polyline<"px">() });
    // @ts-expect-error: `lower` is missing
    record<Brow<"px">>({ upper: polyline<"px">() }, {});
  });

  it("where a required key is optional, or the other way round", () => {
    // @ts-expect-error: `upper` is required
    record<Brow<"px">>({}, { upper: polyline<"px">(), lower: polyline<"px">() });
    // @ts-expect-error: `lower` is optional
    record<Brow<"px">>({ upper: polyline<"px">(), lower: polyline<"px">() }, {});
  });

  it("where a key is unknown", () => {
    const lower = polyline<"px">();
    // @ts-expect-error: a brow has no `middle`
    record<Brow<"px">>({ upper: polyline<"px">() }, { lower, middle: lower });
  });

  it("where a unit or a kind differs", () => {
    // @ts-expect-error: millimetres for pixels
    record<Brow<"px">>({ upper: polyline<"mm">() }, { lower: polyline<"px">() });
    // @ts-expect-error: a point for a line
    record<Brow<"px">>({ upper: point<"px">() }, { lower: polyline<"px">() });
  });

  it("where a word is missing or unknown", () => {
    // @ts-expect-error: `left` is missing
    word<Side>({ right: true });
    // @ts-expect-error: there is no middle side
    word<Side>({ right: true, left: true, middle: true });
    // @ts-expect-error: a schema of one side is none of both
    const side: Schema<Side> = word<"left">({ left: true });
    expectTypeOf(side).not.toBeNever();
  });
});
