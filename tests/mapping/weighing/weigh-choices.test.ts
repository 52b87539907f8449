import {
  type Choices,
  faceFrame,
  mm,
  outline,
  type Pin,
  planBrows,
  planDots,
  type PlannableFace,
  requirePlannable,
  say,
  type Scale,
  toFace,
} from "brow-geometry";
import { landmarkUncertainty } from "brow-geometry/landmarks";
import {
  everyChoice,
  weighChoices,
  type WeighOptions,
  type PlannedChoice,
  type WeighedChoice,
} from "brow-geometry/mapping";
import { flatPoint } from "brow-geometry/units";
import { outlineArea, naturalOutline } from "brow-geometry/proportions";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { foundFace, londonFaces } from "../../support/london-faces.js";
import { SIDES } from "../../../src/units/internal.js";
import { refusal } from "../../support/refusal.js";
import { type SyntheticFace, syntheticFace } from "../../support/synthetic-face.js";

/** The synthetic face, its left brow `up` higher than the right one. */
function unevenFace(up: number): SyntheticFace {
  const face = syntheticFace();
  const raise = (point: readonly [number, number, ...number[]]) =>
    flatPoint<"mm">(point[0], point[1] + up);
  const { upper, lower } = face.left.brow;
  return {
    ...face,
    left: { ...face.left, brow: { upper: upper.map(raise), lower: lower.map(raise) } },
  };
}

/** Real faces, of the hand or as a detector found them. */
function realFaces(
  isTaken: (index: number) => boolean,
  markup?: "mesh-478" | "points-68",
): readonly PlannableFace[] {
  return londonFaces()
    .filter((_, index) => isTaken(index))
    .map((found) => {
      const { millimetres: factor } = found;
      const scale: Scale = { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
      const photo = markup === undefined ? found.hand : foundFace(found, markup);
      return requirePlannable(toFace(photo, faceFrame(photo, scale)));
    });
}

function onlyRow(face: PlannableFace, choices: Choices, options?: WeighOptions): PlannedChoice {
  const [row] = weighChoices(face, [choices], options).rows;
  if (row === undefined || row.kind === "no-solution") return expect.fail("it was not planned");
  return row;
}

/** What tells rows apart first, as one figure: findings in the shape drawn, all findings, tails that turn up. */
function foundOn({ findings, dots }: PlannedChoice): number {
  const upturned = SIDES.filter((side) => dots[side].tailEnd[1] > dots[side].lowerArch[1]);
  const inShape = findings.filter(
    ({ code }) => code !== "dot-far-off" && code !== "lid-space-closes",
  );
  return 1000 * inShape.length + 10 * findings.length + upturned.length;
}

/** Rows with as many findings, and places in which the sides differ, as another one. */
function isAlike(to: PlannedChoice | undefined): (row: PlannedChoice) => boolean {
  const outside = (row: PlannedChoice): number =>
    row.comparison.differences.filter(
      ({ measure, decision }) =>
        /Distance$|Height$|Thickness$/.test(measure) && decision?.outcome === "outside",
    ).length;
  return (row) => to !== undefined && foundOn(row) === foundOn(to) && outside(row) === outside(to);
}

const codes = ({ reasons }: WeighedChoice): readonly string[] => reasons.map(({ code }) => code);

describe("weighChoices", () => {
  const face = unevenFace(3);

  it("plans every choice as it would be planned alone, and says all about it in words", () => {
    const row = onlyRow(face, { lead: "left" });
    expectClose(row.dots, planDots(face, { lead: "left" }).dots, 0);
    expect(codes(row)).toEqual([
      "moves",
      "areas",
      "sides-even",
      "lid-room",
      "front-share-measured",
    ]);
  });

  it("reads moves as the plan's moves do", () => {
    const { greatestMove, meanMove } = onlyRow(face, { lead: "left" });
    const sizes = planBrows(face, { lead: "left" }).moves.map((move) =>
      move.kind === "place"
        ? expect.fail(say(move))
        : Math.hypot(move.up.value, move.outward?.value ?? 0),
    );
    expect(greatestMove.by).toBeCloseTo(Math.max(...sizes), 9);
    expect(meanMove).toBeCloseTo(sizes.reduce((sum, size) => sum + size, 0) / sizes.length, 9);
    // The right brow, 3 mm lower, follows the left one.
    expect(greatestMove.side).toBe("right");
  });

  it("adds up: natural hair less what goes, and planned skin less what is filled, are the same", () => {
    fc.assert(
      fc.property(anyFace(0.8), (any) => {
        const { areas, dots } = onlyRow(any, { lead: "right", arch: "exocanthion-vertical" });
        const both = (area: (side: "right" | "left") => number): number =>
          area("right") + area("left");
        const hair = both((side) => outlineArea(naturalOutline(any[side].brow)));
        const plan = both((side) => outlineArea(outline(dots[side])));
        expect(hair - (areas?.hairToRemove ?? 0)).toBeCloseTo(plan - (areas?.skinToFill ?? 0), 6);
        expect(areas?.hairToRemove).toBeGreaterThanOrEqual(0);
        expect(areas?.skinToFill).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 10 },
    );
  });

  it("knows no areas and no lid space where there is no lower border", () => {
    const { left } = face;
    const bare = { ...face, left: { ...left, brow: { upper: left.brow.upper } } };
    const row = onlyRow(bare, { lead: "right" });
    expect(row.areas).toBeUndefined();
    expect(row.lidRoom.left).toBeUndefined();
    expect(codes(row)).toEqual(expect.arrayContaining(["areas-unknown", "lid-room-unknown"]));
  });

  it("opens the space over the lid where a brow is raised, by as much", () => {
    const level = onlyRow(face, { lead: "left" }).lidRoom;
    const raised = onlyRow(face, { lead: "right" }).lidRoom;
    expect((level.right ?? 0) - (level.left ?? 0)).toBeCloseTo(3, 2);
    expect((raised.right ?? 0) - (raised.left ?? 0)).toBeCloseTo(3, 2);
    expect((level.right ?? 0) - (raised.right ?? 0)).toBeCloseTo(3, 2);
  });

  describe("a demand for open lids", () => {
    it("rules out what closes them by more, says so, and puts it behind", () => {
      const choices: Choices[] = [{ lead: "right" }, { lead: "middle" }, { lead: "left" }];
      const { rows } = weighChoices(face, choices, { lidRoom: { most: mm(1) } });
      // The left brow comes down by 3 mm, by 1.5 mm, or not at all.
      expect(rows.map(({ kind, choices: { lead } }) => [kind, lead])).toEqual([
        ["usable", "left"],
        expect.arrayContaining(["ruled-out"]),
        expect.arrayContaining(["ruled-out"]),
      ]);
      const right = rows.find(({ choices: { lead } }) => lead === "right");
      expect(right?.reasons.map((reason) => say(reason))[0]).toMatch(
        /^Ruled out: it closes the space between upper lid and brow on the left by [23]\.\d mm, at most 1 mm were allowed\.$/,
      );
    });

    it("rules nothing out that keeps it", () => {
      const { kind } = onlyRow(face, { lead: "right" }, { lidRoom: { most: mm(5) } });
      expect(kind).toBe("usable");
    });

    it("is refused where it cannot be looked at, by name", () => {
      const { upperLid, ...left } = face.left;
      expect(upperLid.length).toBeGreaterThan(1);
      const weigh = () =>
        weighChoices({ ...face, left }, [{ lead: "left" }], { lidRoom: { most: mm(1) } });
      expect(refusal(weigh).message).toContain("weighChoices: left.pupil, left.upperLid");
      const endless = () => weighChoices(face, [], { lidRoom: { most: mm(Number.NaN) } });
      expect(refusal(endless).message).toContain("options.lidRoom.most is NaN");
    });
  });

  describe("sorted by its rule", () => {
    const { rows, notes } = weighChoices(face, everyChoice());

    it("keeps every choice once", () => {
      const asked = everyChoice().map((one) => JSON.stringify(one));
      expect(rows.map(({ choices }) => JSON.stringify(choices)).sort()).toEqual(asked.sort());
    });

    it("states the rule, and that the artist decides", () => {
      expect(notes.map(({ code }) => code)).toEqual(["same-landmarks", "order", "artist-decides"]);
      const said = [...notes, ...rows.flatMap(({ reasons }) => reasons)].map((note) => say(note));
      expect(said.join(" ")).not.toMatch(/beaut|golden|best|ideal|perfect/i);
    });

    it("puts shapes with fewer findings first, and smaller moves where the sides are left even", () => {
      const usable = rows.flatMap((row) => (row.kind === "usable" ? [row] : []));
      expect(usable.length).toBeGreaterThan(60);
      const counts = usable.map(foundOn);
      expect(counts).toEqual([...counts].sort((some, more) => some - more));
      // Placed by hand, to 0.26 mm: no move stands before one that is smaller by more.
      const moves = usable.filter(isAlike(usable[0])).map(({ meanMove }) => meanMove);
      moves.forEach((move, index) => {
        expect(move - Math.min(...moves.slice(index))).toBeLessThanOrEqual(0.26);
      });
      // Brows kept as they grow take the same moves half-way as from either side; guides do not.
      const byGuides = everyChoice({ keepHair: mm(0) }).filter(({ start }) => start !== "natural");
      expect(weighChoices(face, byGuides).rows[0]?.choices.lead).toBe("middle");
    });

    it("puts no tail that turns up among the first five of real faces, where another shape can be had", () => {
      for (const real of realFaces((index) => index % 9 === 2)) {
        for (const row of weighChoices(real, everyChoice()).rows.slice(0, 5)) {
          if (row.kind !== "usable") return expect.fail();
          for (const side of SIDES) {
            expect(row.dots[side].tailEnd[1]).toBeLessThanOrEqual(row.dots[side].lowerArch[1]);
          }
        }
      }
    });

    it("puts shapes without a finding first, of hair and of what detectors guess", () => {
      // Of hand face 16 the hair of a tail grows as a hook, which every choice either keeps or moves far from.
      const [hooked, ofDetectors] = [16, [57, 58, 101]];
      const isTried = (index: number): boolean => index === hooked || ofDetectors.includes(index);
      for (const real of realFaces(isTried)) {
        const sound = weighChoices(real, everyChoice()).rows.map((row) =>
          row.kind === "usable" ? row : expect.fail(),
        );
        const first = sound.slice(0, 5).flatMap(({ findings }) => findings.map(({ code }) => code));
        expect(first.filter((code) => code !== "dot-far-off")).toEqual([]);
        // A choice with a finding never stands before one without.
        const counts = sound.map(({ findings }) => findings.length);
        expect(counts.indexOf(0)).toBe(Math.min(...counts) === 0 ? 0 : -1);
        expect(counts.lastIndexOf(0)).toBe(counts.filter((count) => count === 0).length - 1);
      }
      for (const markup of ["mesh-478", "points-68"] as const) {
        for (const real of realFaces((index) => ofDetectors.includes(index), markup)) {
          for (const row of weighChoices(real, everyChoice()).rows.slice(0, 5)) {
            expect(row).toMatchObject({ kind: "usable", findings: [] });
          }
        }
      }
    });

    it("does not let uneven eye corners tell brows apart that are as even", () => {
      // The outer eye corners of this face differ, so that even tails end at unlike distances from them.
      for (const real of realFaces((index) => index === 81)) {
        const [first] = weighChoices(real, everyChoice()).rows;
        if (first?.kind !== "usable") return expect.fail();
        expect(first.choices.tailHeight).toBe("natural");
        expect(first.meanMove).toBeLessThan(1.5);
        const apart = first.comparison.differences.filter(
          ({ decision }) => decision?.outcome === "outside",
        );
        expect(apart.map(({ measure }) => measure)).toEqual(["exocanthionToTailEnd", "lidToBrow"]);
      }
    });

    it("puts what cannot be planned last", () => {
      const kinds = rows.map(({ kind }) => kind);
      const first = kinds.indexOf("no-solution");
      if (first >= 0) {
        expect(kinds.slice(first).every((kind) => kind === "no-solution")).toBe(true);
      }
    });
  });

  it("lets no moves rank that differ from the smallest by less than the hair is known", () => {
    const asked = everyChoice();
    for (const { hand, millimetres: factor } of londonFaces().slice(0, 3)) {
      const scale: Scale = { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
      const real = requirePlannable(toFace(hand, faceFrame(hand, scale)));
      const rows = weighChoices(real, asked).rows.flatMap((row) =>
        row.kind === "usable" ? [row] : [],
      );
      const alike = rows.filter(isAlike(rows[0]));
      const least = Math.min(...alike.map(({ meanMove }) => meanMove));
      const known = landmarkUncertainty(real, "brow");
      const near = alike.filter(({ meanMove }) => meanMove - least <= known);
      expect(alike.slice(0, near.length)).toEqual(near);
      const most = Math.min(...near.map(({ greatestMove }) => greatestMove.by));
      const nearest = near.filter(({ greatestMove }) => greatestMove.by - most <= known);
      expect(near.slice(0, nearest.length)).toEqual(nearest);
      const given = nearest.map(({ choices }) => asked.indexOf(choices));
      expect(given).toEqual([...given].sort((one, other) => one - other));
    }
  });

  it("puts a detector's brows in order by guides that are seen, then by how near they come to its guess", () => {
    const asked = everyChoice();
    for (const found of londonFaces().slice(0, 4)) {
      const { millimetres: factor } = found;
      const scale: Scale = { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
      for (const markup of ["mesh-478", "points-68"] as const) {
        const photo = foundFace(found, markup);
        const guessed = requirePlannable(toFace(photo, faceFrame(photo, scale)));
        const rows = weighChoices(guessed, asked).rows.flatMap((row) =>
          row.kind === "usable" && foundOn(row) === 0 ? [row] : [],
        );
        // Detectors find no nose wing: its guides are through a stand-in.
        const onWing = rows.map(
          ({ choices: { start, arch } }) =>
            Number(start?.startsWith("alare")) + Number(arch?.startsWith("alare")),
        );
        expect(onWing).toEqual([...onWing].sort((one, other) => one - other));
        const alike = rows.filter((row, index) => onWing[index] === 0 && isAlike(rows[0])(row));
        const least = Math.min(...alike.map(({ meanMove }) => meanMove));
        const known = landmarkUncertainty(guessed, "brow");
        const near = alike.filter(({ meanMove }) => meanMove - least <= known);
        expect(alike.slice(0, near.length)).toEqual(near);
      }
    }
  });

  it("speaks of no share that was asked for where another rule places the arch", () => {
    const said = (choices: Choices): readonly string[] =>
      onlyRow(face, choices).reasons.map((reason) => say(reason));
    expect(said({ arch: "lateral-limbus-vertical" }).at(-1)).toMatch(
      /^Front share 0\.\d\d \(right\) and 0\.\d\d \(left\), as it comes: none was asked for\.$/,
    );
    expect(said({ arch: "brow-length-share" }).at(-1)).toMatch(/, held against two thirds\.$/);
    expect(said({ arch: "lateral-limbus-vertical", frontShare: 0.6 }).at(-1)).toMatch(
      /, held against 0\.60\.$/,
    );
  });

  it("puts brows that pins leave uneven behind even ones, and names the measures", () => {
    const { dots } = planDots(face, { lead: "left" });
    const [x, y] = dots.left.upperArch;
    const pins: Pin[] = [
      { side: "left", dot: "upperArch", at: mm([x, y]) },
      { side: "right", dot: "upperArch", at: mm([-x, y - 3]) },
    ];
    const { rows } = weighChoices(face, [{ lead: "left", pins }, { lead: "left" }]);
    expect(rows.map(({ choices }) => choices.pins === undefined)).toEqual([true, false]);
    const text = rows[1]?.reasons
      .filter(({ code }) => code === "sides-differ")
      .map((reason) => say(reason))[0];
    expect(text).toContain("height of the arch (3.0 mm)");
  });

  it("gives a choice without a solution a row that says why", () => {
    const { limbusLateral, ...right } = face.right;
    expect(limbusLateral).toBeDefined();
    const { rows } = weighChoices({ ...face, right }, [
      { arch: "lateral-limbus-vertical" },
      { frontShare: 3 },
      {},
    ]);
    expect(rows.map(({ kind }) => kind)).toEqual(["usable", "no-solution", "no-solution"]);
    expect(rows[1]?.reasons.map((reason) => say(reason))[0]).toMatch(
      /^Cannot be planned on this face: .*outer edge of the iris is missing/,
    );
    expect(rows[2]?.reasons.map((reason) => say(reason))[0]).toMatch(/front share is 3/);
  });

  it("decides the front share by the value alone, against what was asked for", () => {
    const asked = { arch: "brow-length-share", frontShare: 0.6 } as const;
    const { frontShare } = onlyRow(face, asked);
    expect(frontShare.left.value).toBeCloseTo(0.6, 9);
    expect(frontShare.left.decision).toMatchObject({ rule: "simple", outcome: "within" });
    const { frontShare: other } = onlyRow(face, {
      ...asked,
      arch: "lateral-limbus-vertical",
      frontShare: 0.75,
    });
    expect(other.left.decision?.outcome).toBe("outside");
  });

  it("answers nothing to nothing", () => {
    expect(weighChoices(face, []).rows).toEqual([]);
  });
});
