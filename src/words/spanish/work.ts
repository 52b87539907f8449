import { type LandmarkOfSide, landmarkOfSide } from "./markup-terms.js";

/** Of the work, step by step. */
export const WORK = {
  "step-thickness":
    "Ceja {side:sides}, {station:stations}: {thickness:mm} de grosor, en vertical hacia abajo",
  "step-borders":
    "Ceja {side:sides}: enlace por arriba inicio, arco y final de la cola; por abajo, inicio inferior, cuerpo, arco y final de la cola. Después, con la persona erguida y relajada, otra vez cada distancia",
  "checked-upright":
    "Las cejas se mueven cuando la persona se tumba o las levanta; lo que sigue es permanente.",
  "laid-between": "{from} → {to}",
  "laid-level":
    "una regla a través de las dos cejas, de {dot:dots} a {dot:dots}: nivelada, perpendicular a la línea media",
  "laid-slanting":
    "una regla a través de las dos cejas, de {dot:dots} a {dot:dots}: {by:mm} más alta a la {side:sides}",
  "at-start": "inicio",
  "at-body": "cuerpo",
  "at-arch": "arco",
  "at-tail-end": "final de la cola",
  "at-lower-start": "inicio inferior",
  "at-lower-body": "cuerpo inferior",
  "at-lower-arch": "arco inferior",
  "at-other-start": "inicio de la {side:sides}",
  "at-inner-eye-corner": "ángulo interno del ojo",
  "at-outer-eye-corner": "ángulo externo del ojo",
  "at-start-by-tape": "inicio, con cinta a lo largo del borde",
  "at-lid": "borde del párpado superior sobre la pupila",
  "at-lower-border": "borde inferior",
  "mark-midline": "línea media",
  "mark-landmark": (values: LandmarkOfSide): string => landmarkOfSide(values),
  "mark-dot": "{dot:dots} de la {side:sides}",
  "thread-midline": "por la línea media",
  "thread-across": "a través de las dos cejas ({dot:dots})",
  "thread-guide": "a la {side:sides}, {mark:marks} {rule:rules}",
  "thread-border": "a la {side:sides}, de {from:dots} a {to:dots}",
} as const;
