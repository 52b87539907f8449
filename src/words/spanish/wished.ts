/** Of wishes, granted or held back, and of areas of skin. */
export const WISHED = {
  "wish-granted": "{wish:wishes}, {amount:1mm}: concedido.",
  "wish-held": "{wish:wishes}, {amount:1mm}: {granted:1mm} concedidos, no más. {why}",
  "wish-at-guide": "La ceja {side:sides} dejaría sus guías: la última está {guide:rules}.",
  "wish-at-hair": "La ceja {side:sides} dejaría sus guías y su vello en el {mark:marks}.",
  "wish-thin": "La ceja {side:sides} sería más fina que {limit:mm} en su {station:stations}.",
  "wish-at-pin": "El {dot:dots} está fijado a la {side:sides}.",
  "area-covered": "{name}: queda cubierta, con su margen.",
  "area-sticks-out":
    "{name}: {area:mm2} sobresalen de las cejas planificadas, {distance:1mm} como máximo, cerca del {dot:dots} de la {side:sides}. Si el pigmento se puede sacar lo juzga la práctica autorizada.",
  "area-clear": "{name}: las cejas planificadas no la tocan, ni su margen.",
  "area-overlapped":
    "{name}: las cejas planificadas ocupan {area:mm2} de ella, {distance:1mm} como máximo, cerca del {dot:dots} de la {side:sides}. Si ahí puede ir pigmento lo juzga la práctica autorizada.",
  "area-in-the-way": "{name}: impide que las cejas se ensanchen más.",
} as const;
