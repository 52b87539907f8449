import type { Terms } from "../catalogue/terms.js";

/** What an artist calls dots, measures and the rules that place dots. */
export const BROW_TERMS: Pick<
  Terms,
  | "dots"
  | "marks"
  | "stations"
  | "measures"
  | "tooMuch"
  | "tooLittle"
  | "rules"
  | "tailHeights"
  | "archLimits"
> = {
  dots: {
    upperStart: "inicio",
    upperBody: "cuerpo",
    upperArch: "arco",
    tailEnd: "final de la cola",
    lowerStart: "inicio inferior",
    lowerBody: "cuerpo inferior",
    lowerArch: "arco inferior",
  },
  marks: { start: "inicio", arch: "arco", tail: "final de la cola" },
  stations: { start: "inicio", body: "cuerpo", arch: "arco" },
  measures: {
    front: "tramo delantero",
    tail: "cola",
    frontAlong: "tramo delantero con cinta",
    tailAlong: "cola con cinta",
    frontOnPhoto: "tramo delantero en la foto",
    tailOnPhoto: "cola en la foto",
    frontShare: "proporción del tramo delantero",
    startDistance: "inicio desde la línea media",
    archDistance: "arco desde la línea media",
    tailDistance: "final de la cola desde la línea media",
    startHeight: "altura del inicio",
    archHeight: "altura del arco",
    tailHeight: "altura del final de la cola",
    startThickness: "grosor en el inicio",
    bodyThickness: "grosor en el cuerpo",
    archThickness: "grosor en el arco",
    exocanthionToTailEnd: "ángulo externo del ojo a final de la cola",
    lidToBrow: "párpado superior a ceja",
    frontInclination: "inclinación del tramo delantero",
    browInclination: "inclinación de la ceja",
    area: "área",
    startToStart: "inicio a inicio",
  },
  tooMuch: {
    length: "de más",
    gap: "de más",
    distance: "demasiado hacia fuera",
    height: "demasiado arriba",
    thickness: "de más",
    share: "de más",
    slope: "de más hacia arriba",
    area: "de más",
  },
  tooLittle: {
    length: "de menos",
    gap: "de menos",
    distance: "demasiado hacia dentro",
    height: "demasiado abajo",
    thickness: "de menos",
    share: "de menos",
    slope: "de más hacia abajo",
    area: "de menos",
  },
  rules: {
    natural: "donde crece",
    "brow-length-share": "a dos tercios con regla, o a la parte elegida",
    "alare-vertical": "en la vertical del ala de la nariz",
    "endocanthion-vertical": "en la vertical del ángulo interno del ojo",
    "lateral-limbus-vertical": "en la vertical del borde externo del iris",
    "alare-through-pupil": "en la línea del ala de la nariz por la pupila",
    "eye-width-share": "a una parte del ancho del ojo",
    "exocanthion-vertical": "en la vertical del ángulo externo del ojo",
    "alare-through-lateral-limbus": "en la línea del ala de la nariz por el borde externo del iris",
    "alare-through-exocanthion": "en la línea del ala de la nariz por el ángulo externo del ojo",
  },
  tailHeights: {
    natural: "a la altura que la ceja tiene ahí",
    "level-with-lower-start": "nivelado con el inicio inferior",
    "level-with-upper-start": "nivelado con el inicio superior",
  },
  archLimits: {
    "lateral-limbus-vertical": "borde externo del iris",
    "eye-width-share": "borde externo del iris (tomado a {0.75} anchos del ojo)",
    "exocanthion-vertical": "ángulo externo del ojo",
  },
};
