import type { CompleteDots, Skin } from "../../landmarks/index.js";
import type { Station, StationThickness } from "../../proportions/index.js";
import { STATIONS } from "../../proportions/internal.js";
import type { SidePlace } from "../../symmetry/index.js";
import { eachSide, length, type Side, type Sides } from "../../units/index.js";
import { keysOf, SIDES } from "../../units/internal.js";
import { ledSides } from "../choices/choice-tables.js";
import type { Pin } from "../choices/choices.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { meanThickness, plannedThickness } from "../dots/settle-thickness.js";
import { type SideAsks, solveDots } from "../dots/solve-dots.js";
import type { GrownSide } from "./grown-side.js";
import { ifAny, type Row } from "./mean-slopes.js";

type Dots = Sides<CompleteDots<"mm">>;

/** What a plan's dots follow from: what its hair answers when they are solved. */
export interface Answers {
  /** Writes into a row, from a place on, what a side answers that may be a little different. */
  readonly fill: (row: Row, from: number, hair: GrownSide) => void;
  /** Solves the dots by a row of answers. */
  readonly dotsBy: (answers: Row) => Dots;
}

/** A question that is put to a side when dots are solved, and what its hair says. */
interface Question {
  readonly side: Side;
  readonly name: keyof SideAsks;
  readonly given: readonly unknown[];
  readonly place: SidePlace | undefined;
}

/**
 * Answers for the hair of a plan: how thick it is, and where it has the places that are asked for. Hair that is
 * a little different is asked as the plan asked; where another answer changes the question, the plan's own
 * hair answers, and is off by as much.
 *
 * @param grown whether the planned thickness is the hair's own
 */
export function answersOf(plan: PlannedDots, own: Sides<GrownSide>, grown: boolean): Answers {
  const questions: Question[] = [];
  // What is answered by: asks that answer so are made once for all rows.
  let answers: Row = [];
  const asks = eachSide((side) => {
    const handed: Record<string, Ask> = {};
    for (const name of keysOf(own[side].asks)) {
      const ask = own[side].asks[name] as Ask;
      handed[name] = (...given) => {
        const place = ask(...given);
        // Of which dot or guide is another question, at which height or distance is not.
        const isSame = (one: Question): boolean =>
          one.side === side &&
          one.name === name &&
          (one.given[0] === given[0] || typeof given[0] !== "string");
        let index = questions.findIndex(isSame);
        if (index < 0) index = questions.push({ side, name, given, place }) - 1;
        const known = questions[index]?.place;
        const at = placeOf(index);
        if (place === undefined || known === undefined || at >= answers.length) return place;
        return {
          distance: place.distance + ((answers[at] as number) - known.distance),
          height: place.height + ((answers[at + 1] as number) - known.height),
        };
      };
    }
    return handed as unknown as SideAsks;
  });
  const dotsBy = (row: Row): Dots => {
    answers = row;
    const answering = (side: Side): Asked => {
      const stations: { [At in Station]?: StationThickness[At] } = { ...own[side].stations };
      for (const station of keysOf(stations)) {
        stations[station] = length(row[stationOf(side, station)] ?? Number.NaN);
      }
      return { asks: asks[side], stations };
    };
    return dotsFor(plan, eachSide(answering), plan.skin, plan.choices.pins, grown);
  };
  const fill: Answers["fill"] = (row, from, hair) => {
    const { side } = hair.toRead;
    for (const station of NAMES) {
      row[from + stationOf(side, station)] = hair.stations[station] ?? Number.NaN;
    }
    questions.forEach((question, index) => {
      if (question.side !== side) return;
      const ask = hair.asks[question.name] as Ask;
      const place = ifAny(() => ask(...question.given));
      row[from + placeOf(index)] = place?.distance ?? Number.NaN;
      row[from + placeOf(index) + 1] = place?.height ?? Number.NaN;
    });
  };
  const thicknesses: Row = [];
  for (const side of SIDES) fill(thicknesses, 0, own[side]);
  // Asks every question for the first time.
  dotsBy(thicknesses);
  return { fill, dotsBy };
}

/** What dots follow from, on one side. */
type Asked = Pick<GrownSide, "asks" | "stations">;

/** The dots that follow from hair by the choices that a plan has settled. */
export function dotsFor(
  { face, choices }: PlannedDots,
  hair: Sides<Asked>,
  skin: Skin,
  pins: readonly Pin[],
  grown: boolean,
): Dots {
  const stations = ledSides(choices.lead).map((side) => hair[side].stations);
  const thickness = grown ? plannedThickness(face, meanThickness(stations)) : choices.thickness;
  const asks = eachSide((side) => hair[side].asks);
  return solveDots(asks, skin, { ...choices, thickness, pins }).dots;
}

const NAMES: readonly Station[] = /* @__PURE__ */ keysOf(STATIONS);

// Thicknesses of both sides come first in a row, then places.
function stationOf(side: Side, station: Station): number {
  return NAMES.length * SIDES.indexOf(side) + NAMES.indexOf(station);
}

function placeOf(question: number): number {
  return NAMES.length * SIDES.length + 2 * question;
}

type Ask = (...given: readonly unknown[]) => SidePlace | undefined;
