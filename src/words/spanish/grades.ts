interface Points {
  readonly earned: number;
}

/** Of a grade. */
export const GRADES = {
  "graded-guarded":
    "Calificado con la rúbrica «{rubric}» ({source}) bajo las tolerancias «{tolerances}»; lo que cuenta está probado al {percent} %.",
  "graded-simple":
    "Calificado con la rúbrica «{rubric}» ({source}) bajo las tolerancias «{tolerances}»; cada valor se toma como se leyó.",
  "points-reference":
    "Frente a la referencia: {earned} de {total} puntos ganados, {lost} perdidos, {open} abiertos.",
  "points-evenness":
    "Igualdad de los dos lados: {earned} de {total} puntos ganados, {lost} perdidos, {open} abiertos.",
  passed: ({ earned }: Points): string =>
    earned === 1
      ? "Aprobado: {earned} punto de {total}; hacen falta {needed}."
      : "Aprobado: {earned} puntos de {total}; hacen falta {needed}.",
  failed:
    "No aprobado: {earned} de {total} puntos, y {open} abiertos; hacen falta {needed}, que los abiertos no alcanzan.",
  "result-open":
    "Sin decidir: {earned} de {total} puntos, y {open} abiertos; hacen falta {needed}. Decida primero lo que está abierto.",
  "not-read": "{what}: sin leer. Léalo, y se podrá calificar.",
  "not-asked": "{what}: la referencia no lo tiene, así que no cuenta.",
  "no-tolerance":
    "{what}: las tolerancias «{tolerances}» no dicen nada de ello, así que no cuenta.",
  "measure-off": "{what}: {amount} de desvío, {verdict}",
  "sides-alike": "{what}: los dos lados se leen iguales, {verdict}",
  "left-more": "{what}: la izquierda se lee {amount} más que la derecha, {verdict}",
  "left-less": "{what}: la izquierda se lee {amount} menos que la derecha, {verdict}",
  "verdict-within": "dentro de la tolerancia",
  "verdict-outside": "fuera",
  "verdict-undecided": "sin probar en un sentido ni en otro. {advice}",
  "on-the-limit":
    "Está en el límite mismo, donde ninguna lectura decide: léalo otra vez, o deje que decida solo el valor (regla simple).",
} as const;
