/** Of choices weighed. */
export const WEIGHING = {
  "same-landmarks":
    "Todas las elecciones se sopesan con los mismos puntos de referencia, cuyos errores comparte cada fila: las decisiones miran solo los valores.",
  order:
    "Por orden: las elecciones que cumplen lo exigido, las descartadas, las que no tienen solución; en cada grupo van primero las cejas con menos hallazgos en su propia forma, después las que tienen menos hallazgos en total (espacio sobre los párpados, puntos lejos del vello), después las que tienen menos colas que vuelven a subir y terminan por encima del arco inferior, después las que usan menos guías por puntos de referencia solo aproximados, después las que tienen menos distancias, alturas y grosores en que los lados difieren más que la tolerancia, después las de menor movimiento medio desde las cejas dadas, después las de menor movimiento máximo, ambos en la medida en que estas se conocen bastante para distinguirlas, y después el orden dado.",
  "artist-decides": "El orden es una regla, no un juicio: decide quien dibuja.",
  moves:
    "Mueve los puntos {mean:1mm} de media; el que más, el {dot:dots} de la ceja {side:sides}, {greatest:1mm}.",
  areas: "Quita {hair:mm2} de vello y rellena {skin:mm2} de piel.",
  "areas-unknown":
    "No se sabe cuánto vello se quita ni cuánta piel se rellena: hacen falta los dos bordes del vello.",
  "sides-even": "No deja entre los lados ninguna diferencia mayor que la tolerancia.",
  "sides-differ": "Deja los lados distintos por encima de la tolerancia: {measures}.",
  "lid-room":
    "Abre el espacio entre párpado superior y ceja {right:1mm} (derecha) y {left:1mm} (izquierda); donde es negativo, lo cierra.",
  "lid-room-unknown":
    "No se sabe qué pasa con el espacio entre párpado superior y ceja: faltan pupila, párpado superior o borde inferior.",
  "front-share":
    "Proporción del tramo delantero: {right:shares} (derecha) y {left:shares} (izquierda), frente a {asked:shares}.",
  "front-share-measured":
    "Proporción del tramo delantero: {right:shares} (derecha) y {left:shares} (izquierda), tal como resulta: no se pidió ninguna.",
  "lid-room-closes":
    "Descartada: cierra el espacio entre párpado superior y ceja a la {side:sides} en {by:1mm}; se permitían {most:mm} como máximo.",
  "no-solution": "No se puede planificar en esta cara: {why}.",
  "why-missing": ({ field }: { readonly field: readonly unknown[] }): string =>
    field.length === 1 ? "falta {field}" : "faltan {field}",
  "why-range": "{field} es {value}; puede ir de {from} a {to}",
  "why-value": "{field} no puede ser {value}",
  "why-no-place": "{field} no encuentra sitio",
  "why-pins": "{field} no encuentra sitio entre los puntos fijados",
  "why-over-eye": "la ceja {side:sides} pasa por encima del ojo",
  differs: "{measure:measures} ({difference:1mm})",
  "differs-in-share": "{measure:measures} ({difference:3})",
  "landmark-needed": "{landmark:landmarkPaths}",
  choice: "{choice:choices}",
  "choice-of-shape": "{shape:shapes}",
  "choice-of-thickness": "grosor en el {station:stations}",
  "dot-of-side": "{dot:dots} de la ceja {side:sides}",
  "pin-number": "punto fijado {number}",
} as const;
