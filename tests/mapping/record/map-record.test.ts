import {
  checkDrawn,
  type Choices,
  eachSide,
  type Face,
  faceFrame,
  fitMidline,
  type MapRecord,
  mm,
  px,
  recordOf,
  replay,
  requirePlannable,
  scaleFromReference,
} from "brow-geometry";
import { type MapInput } from "brow-geometry/mapping";
import { parseRecord } from "brow-geometry/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFace, anyPose } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { photograph } from "../../support/photograph.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";

const scale = scaleFromReference(px([0, 0]), px([200, 0]), mm(50));

function onPhoto(photo: Face<"px">, factor: number): MapInput {
  const frame = faceFrame(photo, { ...scale, factor });
  return { kind: "photo", photo: requirePlannable(photo), frame };
}

const throughJson = (record: MapRecord): MapRecord =>
  parseRecord(JSON.parse(JSON.stringify(record)));

const pinned: Choices = {
  lead: "left",
  carry: "measure",
  pins: [{ side: "left", dot: "tailEnd", at: mm([57, 17]), by: "M.", reason: "scar" }],
};

describe("a record", () => {
  it("replays to the same plan, to the last bit, after a way through JSON", () => {
    fc.assert(
      fc.property(anyFace(1), anyPose(), fc.constantFrom({}, pinned), (face, pose, choices) => {
        for (const input of [
          { kind: "face", face } as const,
          onPhoto(photograph(face, pose), pose.factor),
        ]) {
          const record = recordOf(input, choices);
          expectClose(replay(record), record.plan, 0);
          expectClose(replay(throughJson(record)), record.plan, 0);
        }
      }),
      { numRuns: 4 },
    );
  });

  it("replays in whatever order its landmarks were written down", () => {
    const face = syntheticFace();
    const reversed = <Part extends object>(part: Part): Part =>
      Object.fromEntries(Object.entries(part).reverse()) as Part;
    const other = { ...face, ...eachSide((side) => reversed(face[side])) };
    const { plan } = recordOf({
      kind: "face",
      face: { ...other, midline: reversed(face.midline) },
    });
    expectClose(plan.measures, syntheticPlan.measures, 0);
    expectClose(plan.comparison, syntheticPlan.comparison, 0);
  });

  it("replays on a midline that somebody gave", () => {
    const photo = photograph(syntheticFace(), { factor: 0.25, tilt: 3, at: [900, 700] });
    const midline = fitMidline(photo, { given: [px([900, 600]), px([890, 1000])] });
    const frame = faceFrame(photo, scale, { midline });
    const record = recordOf({ kind: "photo", photo: requirePlannable(photo), frame });
    const again = replay(throughJson(record));
    expectClose(again, record.plan, 0);
    expect(again.frame?.midline.method).toBe("given");
  });

  it("keeps who pinned which dot and why, reasons, check and notes", () => {
    const input: MapInput = { kind: "face", face: syntheticFace() };
    const { plan } = recordOf(input, pinned);
    const check = checkDrawn(plan, { dots: plan.dots });
    const notes = [{ text: "Invented: a second look in four weeks.", by: "M." }];
    const record = throughJson(recordOf(input, pinned, { check, notes }));
    expect(record.version).toBe(2);
    expect(record.choices).toEqual(pinned);
    expect(record.plan.origins.left.tailEnd.pin).toMatchObject({ by: "M.", reason: "scar" });
    expect(record.plan.reasons.map(({ code }) => code)).toContain("pinned");
    expect(record.notes).toEqual(notes);
    expectClose(record.check, check, 0);
  });

  it("of another version is refused by name", () => {
    const record = recordOf({ kind: "face", face: syntheticFace() });
    for (const version of [0, 1, 3, "2", null]) {
      const other = { ...record, version } as unknown as MapRecord;
      const { code, message } = refusal(() => replay(other));
      expect(code).toBe("out-of-range");
      expect(message).toContain("replay: version is ");
      expect(message).toContain("needs 2, the version of records that this library knows");
    }
  });
});
