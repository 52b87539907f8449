import { keysOf } from "../../units/internal.js";
import type { Terms } from "../catalogue/terms.js";
import type { Sentence, Words } from "../catalogue/words.js";
import { ENGLISH } from "../english/english.js";
import { pathsOf } from "../english/markup-terms.js";

/** Names of landmarks where sentences hold them, the longest first; one landmark by its name has no article. */
const NAMES: readonly (readonly [plain: RegExp, anatomical: string])[] = [
  [/\binner eye corners\b/g, "endocanthia"],
  [/\bouter eye corners\b/g, "exocanthia"],
  [/\b(?:the )?inner eye corner\b/g, "endocanthion"],
  [/\b(?:the )?outer eye corner\b/g, "exocanthion"],
  [/\binner edge of the iris\b/g, "medial limbus"],
  [/\bouter edge of the iris\b/g, "lateral limbus"],
  [/\bedges of (?=the irises|both irises|an iris)/g, "limbi of "],
  [/\b(?:eye corners|corners of the eyes?)\b/g, "canthi"],
  [/\bcorners of the mouth\b/g, "cheilia"],
  [/\bits wings\b/g, "its alae"],
  [/\b(?:the )?nose wing\b/g, "alare"],
  [/\bthe root and the base of the nose\b/g, "sellion and subnasale"],
  [/\bthe root of the nose\b/g, "sellion"],
  [/\bthe place between the brows\b/g, "glabella"],
];

/**
 * English with the anatomical names of landmarks, for researchers: endocanthion where `ENGLISH` says inner eye corner.
 * All else is as in English, and what is said in English only there is said here, too.
 *
 * @example
 * ```ts
 * import { ANATOMICAL, ENGLISH, say } from "brow-geometry/words";
 * const note = { code: "mark-landmark", values: { side: "left", landmark: "exocanthion" } };
 * say(note, ENGLISH); // → "left outer eye corner"
 * say(note, ANATOMICAL); // → "left exocanthion"
 * ```
 */
export const ANATOMICAL: Words = /* @__PURE__ */ anatomical();

function anatomical(): Words {
  const landmarks: Terms["landmarks"] = {
    ...ENGLISH.terms.landmarks,
    endocanthion: "endocanthion",
    exocanthion: "exocanthion",
    limbusMedial: "medial limbus",
    limbusLateral: "lateral limbus",
    alare: "alare",
    cheilion: "cheilion",
    glabella: "glabella",
    sellion: "sellion",
    pronasale: "pronasale",
    subnasale: "subnasale",
    labialeSuperius: "labiale superius",
    stomion: "stomion",
    stomionSuperius: "stomion superius",
    stomionInferius: "stomion inferius",
    menton: "menton",
  };
  const { terms } = ENGLISH;
  return {
    ...ENGLISH,
    sentences: renamed(ENGLISH.sentences),
    advice: renamed(ENGLISH.advice),
    labels: renamed(ENGLISH.labels),
    terms: {
      ...terms,
      measures: renamed(terms.measures),
      rules: renamed(terms.rules),
      archLimits: renamed(terms.archLimits),
      questions: renamed(terms.questions),
      needs: renamed(terms.needs),
      toldByLandmarks: renamed(terms.toldByLandmarks),
      landmarks,
      landmarkPaths: pathsOf(landmarks),
      lacked: { ...terms.lacked, ...landmarks },
      standIns: {
        ...terms.standIns,
        "wing-crease": "alar crease, where the ala meets the cheek",
        "wing-back": "the back of the ala",
        "wing-side": "the side of the ala",
        "wing-lower": "the lower side of the ala",
        "wing-base": "the base of the ala",
        "septum-point": "mesh point 2, near where septum and lip meet",
        "chin-point": "mesh point 152, near menton",
        "eye-centroid": "centroid of the six points of the eye",
      },
    },
  };
}

/** A table with landmarks by their anatomical names, in what its functions pick, too. */
function renamed<Table extends object>(table: Table): Table {
  const texts = table as Readonly<Record<string, Sentence<never>>>;
  return Object.fromEntries(
    keysOf(texts).map((code) => {
      const text = texts[code] ?? "";
      return [
        code,
        typeof text === "string" ? named(text) : (values: never) => named(text(values)),
      ];
    }),
  ) as Table;
}

function named(text: string): string {
  return NAMES.reduce((said, [plain, name]) => said.replace(plain, name), text);
}
