/** Of what is read, and how to bring it back. */
export const READINGS = {
  "dot-placed":
    "Ceja {side:sides}, {dot:dots}: a {distance:mm} de la línea media, {height:mm} por encima de los ángulos internos de los ojos",
  "dot-stays": "Ceja {side:sides}, {dot:dots}: se queda",
  "dot-moves": "Ceja {side:sides}, {dot:dots}: {ways}",
  "way-up": "{by:mm} hacia arriba",
  "way-down": "{by:mm} hacia abajo",
  "way-outward": "{by:mm} hacia fuera",
  "way-inward": "{by:mm} hacia dentro",
  "read-on-side": "Ceja {side:sides}, {measure:measures}",
  "read-between": "{measure:measures}",
  "read-on-both": "{measure:measures}, ambos lados",
  millimetres: "{amount:mm}",
  degrees: ({ amount }: { readonly amount: number }): string =>
    amount === 1 ? "{amount} grado" : "{amount} grados",
  "square-millimetres": "{amount:mm2}",
  share: "{amount:2}",
  "too-much": "{what}: {amount} {kind:tooMuch}",
  "too-little": "{what}: {amount} {kind:tooLittle}",
  even: "Ceja {side:sides}, {measure:measures}: igualada con la {other:sides}",
  "evenness-unknown":
    "Ceja {side:sides}, {measure:measures}: aún no se sabe si está igualada; léala otra vez",
} as const;
