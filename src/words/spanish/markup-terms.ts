import { LANDMARKS } from "../../landmarks/index.js";
import { keysOf } from "../../units/internal.js";
import type { Terms } from "../catalogue/terms.js";

/** Feminine, as brows are: sentences about what is masculine pick their own form. */
export const SIDE_WORDS: Terms["sides"] = { right: "derecha", left: "izquierda" };

const LANDMARK_NAMES: Terms["landmarks"] = {
  endocanthion: "ángulo interno del ojo",
  exocanthion: "ángulo externo del ojo",
  pupil: "pupila",
  limbusMedial: "borde interno del iris",
  limbusLateral: "borde externo del iris",
  alare: "ala de la nariz",
  cheilion: "comisura de la boca",
  upperLid: "párpado superior",
  lowerLid: "párpado inferior",
  brow: "ceja",
  glabella: "entrecejo",
  sellion: "raíz de la nariz",
  pronasale: "punta de la nariz",
  subnasale: "base de la nariz",
  labialeSuperius: "labio superior",
  stomion: "centro de la boca",
  stomionSuperius: "margen del labio superior",
  stomionInferius: "margen del labio inferior",
  menton: "mentón",
};

/** Behind which word of a name its side stands, and the gender of that word. */
const OF_SIDE: {
  readonly [
    Name in keyof (typeof LANDMARKS)["side"] | keyof (typeof LANDMARKS)["lines"]
  ]: readonly [before: string, after: string, gender: "m" | "f"];
} = {
  endocanthion: ["ángulo interno del ojo", "", "m"],
  exocanthion: ["ángulo externo del ojo", "", "m"],
  pupil: ["pupila", "", "f"],
  limbusMedial: ["borde interno del iris", "", "m"],
  limbusLateral: ["borde externo del iris", "", "m"],
  alare: ["ala", " de la nariz", "f"],
  cheilion: ["comisura", " de la boca", "f"],
  upperLid: ["párpado superior", "", "m"],
  lowerLid: ["párpado inferior", "", "m"],
  brow: ["ceja", "", "f"],
};

/** Landmarks and lines where they stand in a face: "ala derecha de la nariz". */
const PATHS: Terms["landmarkPaths"] = /* @__PURE__ */ paths();

function paths(): Terms["landmarkPaths"] {
  const ofSide = (side: "right" | "left"): readonly (readonly [string, string])[] => {
    const ending = { m: side === "right" ? "derecho" : "izquierdo", f: SIDE_WORDS[side] };
    return [
      ...keysOf(OF_SIDE).map((name) => {
        const [before, after, gender] = OF_SIDE[name];
        return [`${side}.${name}`, `${before} ${ending[gender]}${after}`] as const;
      }),
      [`${side}.brow.upper`, `borde superior de la ceja ${ending.f}`],
      [`${side}.brow.lower`, `borde inferior de la ceja ${ending.f}`],
    ];
  };
  const midline = keysOf(LANDMARKS.midline).map(
    (name) => [`midline.${name}`, LANDMARK_NAMES[name]] as const,
  );
  return Object.fromEntries([
    ...ofSide("right"),
    ...ofSide("left"),
    ...midline,
  ]) as Terms["landmarkPaths"];
}

/** What landmarks are called, and what markups are and read instead of landmarks. */
export const MARKUP_TERMS: Pick<
  Terms,
  "landmarks" | "landmarkPaths" | "lacked" | "markups" | "standIns"
> = {
  landmarks: LANDMARK_NAMES,
  landmarkPaths: PATHS,
  lacked: {
    ...LANDMARK_NAMES,
    lowerBorder: "borde inferior de la ceja",
    depth: "profundidad",
    measuredDepth: "profundidad medida",
  },
  markups: {
    "mesh-478": "Malla facial de 478 puntos, con iris",
    "mesh-468": "Malla facial de 468 puntos, sin iris",
    "points-68": "68 puntos (300-W, iBUG)",
    "points-98": "98 puntos (WFLW)",
    "coco-wholebody-face": "Parte facial de COCO-WholeBody, puntos 23–90",
  },
  standIns: {
    "wing-crease": "donde el ala de la nariz se une a la mejilla",
    "wing-back": "la parte posterior del ala de la nariz",
    "wing-side": "el lado del ala de la nariz",
    "wing-lower": "la parte inferior del ala de la nariz",
    "wing-base": "la base del ala de la nariz",
    "septum-point": "un punto de la malla, cerca de donde la nariz se une al labio",
    "chin-point": "un punto de la malla, cerca del punto más bajo del mentón",
    "brow-template": "la plantilla de ceja de la malla, no el vello mismo",
    "nostril-outer": "punto externo de la fila de la narina",
    "nostril-inner": "punto interno de la fila de la narina",
    "nostril-middle": "centro de la fila de las narinas",
    "eye-centroid": "centro de los seis puntos del ojo",
    "bridge-top": "parte alta del dorso de la nariz",
    "bridge-end": "extremo inferior del dorso de la nariz",
    "jaw-middle": "centro de la línea de la mandíbula",
    "mirrored-brow": "la otra ceja, en espejo",
    "average-heights":
      "alturas medias de cejas de mujeres, de las que las personas difieren {4:mm} y más (Matros et al. 2009)",
    "five-point-line": "una línea de cinco puntos, sin grosor",
    "base-outer": "punto externo de la base de la nariz",
    "base-inner": "punto interno de la base de la nariz",
    "base-middle": "centro de la base de la nariz",
    "contour-middle": "centro del contorno de la cara",
  },
};

/** A landmark, and the side on which it lies. */
export interface LandmarkOfSide {
  readonly side: string;
  readonly landmark: string;
}

/** A landmark of a side as texts name it, the word for the side agreeing with it where it is known. */
export function landmarkOfSide({ side, landmark }: LandmarkOfSide): string {
  const known: Readonly<Record<string, string>> = PATHS;
  return known[`${side}.${landmark}`] ?? "{landmark:landmarks}, {side:sides}";
}
