import { ARCH_CONVENTIONS, mm, START_CONVENTIONS } from "brow-geometry";
import { everyChoice, LEADS, TAIL_HEIGHTS } from "brow-geometry/mapping";
import { keysOf } from "../../../src/units/internal.js";
import { expect, it } from "vitest";

it("everyChoice combines every lead, start, arch and tail height, each once", () => {
  const choices = everyChoice();
  const [leads, heights] = [keysOf(LEADS).length, keysOf(TAIL_HEIGHTS).length];
  const [starts, arches] = [START_CONVENTIONS.length, ARCH_CONVENTIONS.length];
  expect(choices).toHaveLength(leads * starts * arches * heights);
  expect(new Set(choices.map((one) => JSON.stringify(one))).size).toBe(choices.length);
  const led = choices.filter(({ lead }) => lead === "middle");
  expect(led).toHaveLength(starts * arches * heights);
  const arched = choices.filter(({ arch }) => arch === "eye-width-share");
  expect(arched).toHaveLength(leads * starts * heights);
});

it("everyChoice keeps what else was chosen, and chooses anew what it varies", () => {
  const thickness = { start: mm(7), body: mm(6), arch: mm(5) };
  const choices = everyChoice({ thickness, lead: "right" });
  expect(choices.every((one) => one.thickness === thickness)).toBe(true);
  expect(new Set(choices.map(({ lead }) => lead))).toEqual(new Set(keysOf(LEADS)));
});
