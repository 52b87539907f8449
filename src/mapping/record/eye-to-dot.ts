import { depthAt, skinUncertainty } from "../../landmarks/index.js";
import { BROW_PROMINENCE, prominenceOf } from "../../symmetry/internal.js";
import { hasDepth, type Length, length, type Measured, type Side } from "../../units/index.js";
import type { BrowPlan } from "../plan/plan.js";

/**
 * From the inner eye corner to a dot by ruler: unlike a height, which is seen from the front, it exists on
 * skin, where a brow lies ahead of the corner. Its uncertainty is that of the dot's place and depth, to first
 * order, as if they erred apart.
 */
export function eyeToDot(
  { face, skin, dots, measures }: BrowPlan,
  side: Side,
  mark: "Start" | "Arch",
): Measured<Length<"mm">> | undefined {
  const height = measures[side][mark === "Start" ? "startHeight" : "archHeight"];
  const distance = measures[side][mark === "Start" ? "startDistance" : "archDistance"];
  if (height === undefined || distance === undefined) return undefined;
  const { endocanthion: corner } = face[side];
  const dot = dots[side][`upper${mark}`];
  const behind = depthAt(dot, skin);
  const ahead = behind + prominenceOf(skin) - (hasDepth(corner) ? corner[2] : 0);
  const [across, up] = [dot[0] - corner[0], dot[1] - corner[1]];
  const straight = Math.hypot(across, up, ahead);
  const prominenceU = skin.kind === "modelled" ? BROW_PROMINENCE.u : 0;
  const depthU = Math.hypot(prominenceU, skinUncertainty(skin) * behind);
  const u = Math.hypot(across * distance.u, up * height.u, ahead * depthU) / straight;
  return { value: length(straight), u: length(u) };
}
