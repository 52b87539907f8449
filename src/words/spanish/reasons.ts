/** Of why dots lie where they do. */
export const REASONS = {
  "lead-middle": "Ninguna ceja manda: cada punto está a medio camino entre lo que pide cada lado.",
  "lead-side":
    "Manda la ceja {lead:sides}: el otro lado refleja sus puntos respecto a la línea media.",
  "lead-side-by-measure": "Manda la ceja {lead:sides}: el otro lado la sigue por medidas.",
  "levels-middle":
    "Las alturas del inicio y del arco se igualan a medio camino entre las dos cejas.",
  "levels-side": "Las alturas del inicio y del arco son las de la ceja {levels:sides}.",
  "levels-held-back":
    "Al igualar, ningún punto ({dot:dots}) subió o bajó más de {limit:1mm} desde su propio borde en el mismo lugar: el de la {higher:sides} queda {difference:1mm} más alto.",
  "levels-left":
    "Los lados difieren entonces hasta {most:1mm} en altura: las personas notan alrededor de {clients:1mm} en sí mismas; los demás, alrededor de {others:1mm}.",
  "start-at-alare":
    "Inicio en la vertical del ala de la nariz: contada hacia fuera desde el ángulo interno del ojo está a {right:1mm} (derecha) y {left:1mm} (izquierda), ninguna más allá de {limit:mm}.",
  "start-at-endocanthion-nose-wide":
    "Inicio en la vertical del ángulo interno del ojo: contada hacia fuera desde él, el ala de la nariz está a {right:1mm} (derecha) y {left:1mm} (izquierda), más allá de {limit:mm} al menos en un lado.",
  "start-at-endocanthion-stand-in":
    "Inicio en la vertical del ángulo interno del ojo: el ala de la nariz es solo aproximada ({instead:standIns}).",
  "start-at-endocanthion-nose-bent":
    "Inicio en la vertical del ángulo interno del ojo: la nariz está desviada, así que sus alas no dicen dónde empieza una ceja.",
  "start-at-endocanthion-nose-deviates":
    "Inicio en la vertical del ángulo interno del ojo: la nariz se aparta {angle:1}° de la línea media (incertidumbre típica {u:1}°), más de los {limit}° que otras personas notan, así que sus alas no dicen dónde empieza una ceja.",
  "start-chosen": "Inicio según lo elegido: {convention:rules}.",
  "hair-not-seen":
    "En lugar de vello, la ceja {side:sides} tiene {instead:standIns}. Las guías y la regla colocan sus puntos.",
  "arch-natural":
    "Arco de la ceja {side:sides} donde crece, hasta donde se ve (±{u:1mm}): a {share:2} anchos de ojo del ángulo interno del ojo.",
  "arch-moved-outward":
    "Arco de la ceja {side:sides} movido hacia fuera por el borde hasta la vertical del {limit:archLimits}: crece {distance:1mm} (±{u:1mm}) más cerca de la nariz.",
  "arch-moved-inward":
    "Arco de la ceja {side:sides} movido hacia dentro por el borde hasta la vertical del {limit:archLimits}: crece {distance:1mm} (±{u:1mm}) más allá.",
  "arch-flat":
    "La ceja {side:sides} es plana (su borde sube {rise:1mm} sobre la cuerda): no tiene arco natural, así que el tramo delantero y la cola se dividen a {share:shares} de la longitud con regla.",
  "arch-undetermined":
    "Dónde se arquea la ceja {side:sides} se conoce solo con ±{u:1mm}: el tramo delantero y la cola se dividen a {share:shares} de la longitud con regla.",
  "arch-share-beyond":
    "A {asked:shares} de la longitud con regla, el arco quedaría {distance:1mm} más allá de la vertical del {limit:archLimits}: se pone en ella, y el tramo delantero ocupa {share:shares}.",
  "arch-share-nowhere":
    "Ningún lugar de la ceja da al tramo delantero {asked:shares} de la longitud: el arco se pone en la vertical del {limit:archLimits}, y el tramo delantero ocupa {share:shares}.",
  "arch-chosen": "Arco según lo elegido: {convention:rules}.",
  "tail-at-guide": "Final de la cola {guide:rules}, {height:tailHeights}.",
  "tail-level-nowhere":
    "Final de la cola {guide:rules}, a la altura que la ceja tiene ahí: {height:tailHeights} no quedaría más allá del arco.",
  "thickness-natural":
    "Grosor como crece: {start:1mm} en el inicio, {body:1mm} en el cuerpo, {arch:1mm} en el arco.",
  "thickness-evened":
    "Grosor como crece, igualado para que la ceja no engrose hacia el arco: {start:1mm} en el inicio, {body:1mm} en el cuerpo, {arch:1mm} en el arco.",
  "thickness-usual":
    "El grosor de la ceja se conoce solo con ±{u:1mm}, poco para decir dónde es más llena: en conjunto tan gruesa como sus bordes, más llena delante: {start:1mm} en el inicio, {body:1mm} en el cuerpo, {arch:1mm} en el arco.",
  "thickness-chosen":
    "Grosor según lo elegido: {start:1mm} en el inicio, {body:1mm} en el cuerpo, {arch:1mm} en el arco.",
  "thickness-assumed":
    "Grosor de {start:1mm} en el inicio, {body:1mm} en el cuerpo y {arch:1mm} en el arco; supuesto donde ningún borde inferior lo dice ({assumed:stations}).",
  "hair-kept":
    "El vello de la ceja {side:sides} crece {past:1mm} más allá de la guía del {mark:marks}, en horizontal: {kept:1mm} se conservan.",
  "border-extended":
    "La guía del {mark:marks} no toca la ceja {side:sides}: su borde se prolonga por su extremo.",
  "tail-completed":
    "El vello de la ceja {side:sides} termina {distance:1mm} antes de la guía de la cola: lo que se añade se curva hacia el nivel del inicio inferior.",
  "guide-missed":
    "La guía del {mark:marks} no encuentra la ceja {side:sides} en ningún sitio, prolongada o no: se conserva la altura de su propio {mark:marks}.",
  "carried-by-measure":
    "La ceja {side:sides} se traslada por medidas: desde su propio inicio, con las alturas y las longitudes con regla de la que manda. Su arco queda {arch:1mm} y el final de su cola {tail:1mm} más afuera que en espejo (negativo: más cerca de la línea media).",
  pinned: "El {dot:dots} de la ceja {side:sides} queda donde lo fijó {by}{reason}.",
  "pins-break-levels":
    "Los puntos fijados dejan el {dot:dots} de la {higher:sides} {difference:1mm} más alto, más de {limit:mm}.",
  "pins-break-tail-heights":
    "Los puntos fijados dejan el final de la cola de la {higher:sides} {difference:1mm} más alto, más de {limit:mm}.",
  "pins-break-distances":
    "Los puntos fijados dejan el {dot:dots} de la {farther:sides} {difference:1mm} más lejos de la línea media, más de {limit:mm}.",
  "pins-break-thickness":
    "Los puntos fijados dejan la ceja {thicker:sides} {difference:1mm} más gruesa en el {station:stations}, más de {limit:mm}.",
  "pins-break-share":
    "Los puntos fijados rompen la proporción del tramo delantero: la de la ceja {side:sides} es {share:shares}; se pidió {asked:shares} ± {limit:2}.",
  "the-artist": "la persona que dibuja",
  "pin-reason": ": {reason}",
} as const;
