import { test } from "@fast-check/vitest";
import { toDegrees, toRadians } from "../../../src/units/internal.js";
import { describe, it } from "vitest";
import { anyAngle } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

describe("toDegrees and toRadians", () => {
  it("know the right angle", () => {
    expectClose(toDegrees(Math.PI / 2), 90, 1e-13);
    expectClose(toRadians(-90), -Math.PI / 2, 1e-15);
  });

  test.prop([anyAngle()])("undo each other", (angle) => {
    expectClose(toDegrees(toRadians(angle)), angle, 1e-12);
  });
});
