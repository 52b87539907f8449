import {
  type ArchConvention,
  type Dot,
  type Skin,
  type StartConvention,
} from "../../landmarks/index.js";
import type { NaturalArch, NaturalDots } from "../../proportions/index.js";
import { ARCH_EYE_WIDTH_SHARE, LOWER_DOTS } from "../../proportions/internal.js";
import { FACE_MIDLINE, placeOnSide } from "../../symmetry/index.js";
import { deviationFrom } from "../../symmetry/internal.js";
import { eachSide, type Note, type Side, type Sides } from "../../units/index.js";
import { type Numbers, SIDES } from "../../units/internal.js";
import { archLimits } from "./arch-limits.js";
import { defaultLead } from "./default-lead.js";
import { isHair, standInOf } from "./is-hair.js";
import {
  CARRIES,
  type Carry,
  KEEP_HAIR,
  type Lead,
  ledSides,
  type Levels,
} from "../choices/choice-tables.js";
import type { Choices } from "../choices/choices.js";
import type { Settled, SettledChoices } from "./planned-dots.js";
import type { PlannableFace } from "./plannable-face.js";
import { reason, type ReasonCode } from "./notes.js";
import { requireChoices } from "../choices/require-choices.js";
import { settleThickness } from "./settle-thickness.js";

/** Front over front and tail: two thirds. Trade practice, no source. */
const FRONT_SHARE = 2 / 3;

/** Alare up to this far lateral of endocanthion still tells where a brow starts; ours, in mm. */
const ALARE_LIMIT = 2;

/**
 * Settles every choice that the artist left open, once, and says why.
 *
 * @param midlineU standard uncertainty of the midline's direction, in degrees
 */
export function settleChoices(
  face: PlannableFace,
  natural: Sides<NaturalDots>,
  skin: Skin,
  choices: Choices,
  midlineU: number,
): Settled<SettledChoices> {
  requireChoices(choices);
  const lead = choices.lead ?? defaultLead(face);
  const levels = settleLevels(natural, choices.levels ?? lead);
  const isSeen = ledSides(lead).every((side) => isHair(face, side));
  /** A rule, unless it follows hair of which nothing is known. */
  const seen = <Rule>(rule: Rule): Rule | undefined =>
    isSeen || rule !== "natural" ? rule : undefined;
  const start = settleStart(face, seen(choices.start), choices, midlineU);
  const frontShare = choices.frontShare ?? FRONT_SHARE;
  const arch = settleArch(face, natural, lead, seen(choices.arch ?? "natural"), frontShare);
  const thickness = settleThickness(face, natural, skin, lead, frontShare, choices.thickness);
  const tail = seen(choices.tail) ?? "alare-through-exocanthion";
  const keepHair = choices.keepHair ?? KEEP_HAIR;
  const tailHeight = choices.tailHeight ?? "natural";
  const pins = choices.pins ?? [];
  const carry = choices.carry ?? "mirror";
  // A pinned dot, and the one that mirrors it, lies where it does for the pin's reason alone, and
  // pinned lower dots make their own thickness; a brow carried by measure begins at its own start.
  const isPinned = (dot: Dot): boolean => pins.some((pin) => pin.dot === dot);
  const unlessPinned = <Said>(dot: Dot, reasons: readonly Said[]): readonly Said[] =>
    isPinned(dot) && (carry === "mirror" || dot !== "upperStart") ? [] : reasons;
  return {
    value: {
      lead,
      carry,
      levels,
      ...(choices.levelLimit === undefined ? {} : { levelLimit: choices.levelLimit }),
      start: start.value,
      arch: arch.value,
      tail,
      keepHair,
      eyeWidthShare: choices.eyeWidthShare ?? ARCH_EYE_WIDTH_SHARE,
      frontShare,
      tailHeight,
      thickness: thickness.value,
      shape: choices.shape ?? {},
      pins,
    },
    reasons: [
      leadReason(lead, carry),
      ...SIDES.flatMap((side) => {
        const { instead } = standInOf(face, side) ?? {};
        return instead === undefined ? [] : [reason("hair-not-seen", { side, instead })];
      }),
      levels === "middle" ? reason("levels-middle") : reason("levels-side", { levels }),
      ...unlessPinned("upperStart", start.reasons),
      ...unlessPinned("upperArch", arch.reasons),
      ...unlessPinned("tailEnd", [
        reason("tail-at-guide", {
          guide: tail,
          height: tailHeight,
        }),
      ]),
      ...(LOWER_DOTS.every(isPinned) ? [] : thickness.reasons),
      ...pins.map(({ side, dot, by = reason("the-artist"), reason: why }) =>
        reason("pinned", {
          side,
          dot,
          by,
          reason: why === undefined ? "" : reason("pin-reason", { reason: why }),
        }),
      ),
    ],
  };
}

function leadReason(lead: Lead, carry: Carry): Note<ReasonCode> {
  if (lead === "middle") return reason("lead-middle");
  return reason(CARRIES[carry], { lead });
}

function settleLevels(natural: Sides<NaturalDots>, levels: Levels): Lead {
  if (levels !== "higher") return levels;
  const height = eachSide((side) => {
    const { dots, arch } = natural[side];
    return dots.upperStart[1] + (arch.kind === "flat" ? dots.upperStart : arch.at)[1];
  });
  return height.right >= height.left ? "right" : "left";
}

function settleStart(
  face: PlannableFace,
  rule: StartConvention | undefined,
  choices: Choices,
  midlineU: number,
): Settled<StartConvention> {
  if (rule !== undefined) return chosen("start-chosen", rule);
  const lateral = eachSide(
    (side) =>
      placeOnSide(face[side].alare, side).distance -
      placeOnSide(face[side].endocanthion, side).distance,
  );
  const values = { ...lateral, limit: ALARE_LIMIT };
  const why = againstAlare(face, values, choices, midlineU);
  return why === undefined
    ? { value: "alare-vertical", reasons: [reason("start-at-alare", values)] }
    : { value: "endocanthion-vertical", reasons: [why] };
}

/** Why the nose wings do not tell where a brow starts, where they do not. */
function againstAlare(
  face: PlannableFace,
  values: Numbers<Side | "limit">,
  { noseBent }: Choices,
  midlineU: number,
): Note<ReasonCode> | undefined {
  if (noseBent === true) return reason("start-at-endocanthion-nose-bent", values);
  const deviation = noseBent === false ? undefined : bentNose(face, midlineU);
  if (deviation !== undefined) {
    return reason("start-at-endocanthion-nose-deviates", { ...values, ...deviation });
  }
  const standIn = face.standIns?.find(({ landmark }) => landmark === "alare");
  if (standIn !== undefined) {
    return reason("start-at-endocanthion-stand-in", { ...values, instead: standIn.instead });
  }
  return Math.max(values.right, values.left) > ALARE_LIMIT
    ? reason("start-at-endocanthion-nose-wide", values)
    : undefined;
}

function chosen<Rule extends StartConvention | ArchConvention>(
  code: "start-chosen" | "arch-chosen",
  convention: Rule,
): Settled<Rule> {
  return { value: convention, reasons: [reason(code, { convention })] };
}

/** How far the nose deviates, where that is proven to be more than others notice. */
function bentNose(
  face: PlannableFace,
  midlineU: number,
): { readonly angle: number; readonly u: number; readonly limit: number } | undefined {
  const { sellion, subnasale } = face.midline;
  if (sellion === undefined || subnasale === undefined) return undefined;
  const { angle, bent, decision } = deviationFrom(
    { line: FACE_MIDLINE, tiltU: midlineU },
    { ...face, midline: { ...face.midline, sellion, subnasale } },
  );
  const { upper = 0 } = decision.limits;
  return bent ? { angle: Math.abs(angle.value), u: angle.u, limit: upper } : undefined;
}

function settleArch(
  face: PlannableFace,
  natural: Sides<NaturalDots>,
  lead: Lead,
  choice: ArchConvention | undefined,
  frontShare: number,
): Settled<ArchConvention> {
  if (choice === undefined) return { value: "brow-length-share", reasons: [] };
  if (choice !== "natural") return chosen("arch-chosen", choice);
  const sides = ledSides(lead);
  const withoutArch = sides.flatMap((side): readonly Note<ReasonCode>[] => {
    const { arch } = natural[side];
    switch (arch.kind) {
      case "flat":
        return [reason("arch-flat", { side, rise: arch.rise.value, share: frontShare })];
      case "undetermined":
        return [reason("arch-undetermined", { side, u: arch.u, share: frontShare })];
      case "peak":
        return [];
    }
  });
  return withoutArch.length > 0
    ? { value: "brow-length-share", reasons: withoutArch }
    : {
        value: "natural",
        reasons: sides.flatMap((side) => naturalArchReasons(face, natural[side].arch, side)),
      };
}

function naturalArchReasons(
  face: PlannableFace,
  arch: NaturalArch,
  side: Side,
): readonly Note<ReasonCode>[] {
  if (arch.kind === "flat") return [];
  const { u } = arch;
  const { distance } = placeOnSide(arch.at, side);
  const { inner, outer } = archLimits(face, side);
  const past = distance < inner.distance ? inner : distance > outer.distance ? outer : undefined;
  if (past !== undefined) {
    const [limit, beyond] = [past.convention, distance - past.distance];
    const moved = { side, limit, distance: Math.abs(beyond), u };
    return [reason(beyond < 0 ? "arch-moved-outward" : "arch-moved-inward", moved)];
  }
  const from = placeOnSide(face[side].endocanthion, side).distance;
  const share = (distance - from) / (outer.distance - from);
  return [reason("arch-natural", { side, share, u })];
}
