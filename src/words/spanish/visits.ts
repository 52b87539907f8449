/** Of what comes after the map. */
export const VISITS = {
  "skin-moved":
    "Ceja {side:sides}, {dot:dots}: su piel se ha movido {ways} respecto a los ángulos de los ojos y la nariz.",
  "skin-stayed":
    "Ceja {side:sides}: ningún punto se ha movido respecto a los ángulos de los ojos y la nariz más del doble de su incertidumbre.",
  "skin-not-seen":
    "Ceja {side:sides}: no se ve en esta captura, así que no se sabe cuánto se ha movido su piel; sus puntos están donde los ponen los ángulos de los ojos y la nariz.",
  "skin-guessed":
    "Ceja {side:sides}: lo que un detector supone no es vello, así que no se sabe cuánto se ha movido su piel; sus puntos están donde los ponen los ángulos de los ojos y la nariz.",
  "carried-check-upright":
    "Estos lugares valen solo para esta postura. Compruebe de nuevo cada distancia con la persona erguida y relajada antes de poner pigmento; lo que sigue es permanente.",
  "result-too-early": ({ weeks }: { readonly weeks: number }): string =>
    `${weeks === 1 ? "{weeks} semana" : "{weeks} semanas"} después del trabajo la piel aún cicatriza, y color y bordes cambian: lo que rellenaría un retoque se ve de {least} a {most} semanas.`,
  "result-spread":
    "Ceja {side:sides}: {area:mm2} (± {u:mm2}) están fuera del plan. Rellenar no lo arregla; si el pigmento se puede sacar lo juzga la práctica autorizada.",
  "result-areas-unknown":
    "Ceja {side:sides}: sin su borde inferior no se sabe nada de su área ni de su grosor.",
  "touch-up-practice":
    "Si la piel se puede volver a trabajar, y cuándo, lo juzga la práctica autorizada; las normas locales van primero.",
  "fill-upper":
    "Ceja {side:sides}, de {from:dots} a {to:dots}: rellene hasta el borde superior, {gap:1mm} como máximo, {area:mm2}.",
  "fill-lower":
    "Ceja {side:sides}, de {from:dots} a {to:dots}: rellene hasta el borde inferior, {gap:1mm} como máximo, {area:mm2}.",
  "fill-end":
    "Ceja {side:sides}, de {from:dots} a {to:dots}: rellene el extremo, que falta en {gap:1mm}, {area:mm2}.",
  "visit-undated": "La visita {visit} no tiene fecha.",
  "visit-out-of-order":
    "La visita {visit} lleva la fecha {date}, anterior a la de una visita previa, {before}.",
  "visit-replays-differently":
    "Visita {visit}: aquello de lo que se hizo da otro plan que el registrado, como con otra versión de esta biblioteca.",
  "visit-not-replayed": "Visita {visit}: aquello de lo que se hizo no da ningún plan. {refusal}",
  "visit-face-differs":
    "La visita {visit} puede ser de otra cara, o de otros puntos de referencia. {finding}",
  "visit-not-agreed": "Visita {visit}: no consta que se acordara nada.",
} as const;
