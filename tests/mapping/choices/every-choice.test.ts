import { everyChoice, mm } from "brow-geometry";
import { expect, it } from "vitest";

it("everyChoice combines three leads, two starts, seven arches and three tail heights, each once", () => {
  const choices = everyChoice();
  expect(choices).toHaveLength(3 * 2 * 7 * 3);
  expect(new Set(choices.map((one) => JSON.stringify(one))).size).toBe(126);
  expect(choices.filter(({ lead }) => lead === "middle")).toHaveLength(42);
  expect(choices.filter(({ arch }) => arch === "eye-width-share")).toHaveLength(18);
});

it("everyChoice keeps what else was chosen, and chooses anew what it varies", () => {
  const thickness = { start: mm(7), body: mm(6), arch: mm(5) };
  const choices = everyChoice({ thickness, lead: "right" });
  expect(choices.every((one) => one.thickness === thickness)).toBe(true);
  expect(new Set(choices.map(({ lead }) => lead)).size).toBe(3);
});
