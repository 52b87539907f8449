/** Of what to beware of. */
export const CAUTIONS = {
  "local-law":
    "El trabajo que sigue a un diseño rompe la piel y perdura. La edad mínima y la licencia las fija la ley local: siga las normas locales y la práctica autorizada.",
  hygiene:
    "Trabaje con higiene: la norma EN 17169:2020 describe la práctica segura del tatuaje (voluntaria); las reglas locales van primero.",
  "planning-aid":
    "Este diseño es una ayuda para planificar, no un consejo médico; si se puede tratar a una persona lo juzga la práctica autorizada.",
  "scale-uncertain":
    "La escala de la foto se conoce con ±{percent:1} % (incertidumbre típica): {50:mm} pueden ser {off:1mm} más o menos. Compruébelo con regla sobre la piel.",
  "scale-from-population-average":
    "Las longitudes salen del iris medio, no de esta persona: dependen de él; proporciones y ángulos, no.",
  "brow-not-seen":
    "En lugar de vello, este diseño tiene {instead:standIns}. Dibuje a mano los bordes del vello o tómelos de la imagen: hasta entonces no se sabe ahí qué quitar, rellenar o mover.",
  "head-may-be-turned": "{finding}",
  "head-was-turned":
    "La cabeza estaba girada {yaw:1}° (±{u:1}°) hacia la {side:sides} de la persona y la barbilla {pitch:0}° {where:levels} que en una cara media erguida, corregido por la profundidad: la ceja más lejana se ve peor. Compruebe sus longitudes con regla.",
  "head-may-be-raised":
    "Cuánto se levantó la barbilla se conoce solo con ±{u:0}°: 5° mueven la altura del inicio de una ceja alrededor de {1.5:mm}. Compruebe las alturas con la persona erguida, mirando al frente.",
  "eyes-slant":
    "Los ojos están inclinados {angle:1}° (±{u:1}°), más alto el de la {side:sides}: otras personas reconocen más de {limit:2}°. Unas cejas niveladas pueden parecer inclinadas a su lado; decídalo con la persona.",
  "size-implausible":
    "Los ángulos externos de los ojos distan {distance:0mm}; los de los adultos distan de {least:mm} a {most:mm}. Compruebe la escala y su unidad antes que nada.",
  "capture-finding": "{finding}",
  "expression-differs": "La expresión difiere entre las capturas. {finding}",
  "pose-differs": "La cabeza estaba en otra posición en otra captura. {finding}",
  "posture-not-kept":
    "Se declaró que la persona no estaba sentada erguida con la cara relajada: alturas y distancias de este plan no valen. Tome los puntos de referencia de nuevo.",
  "posture-not-declared":
    "Nadie declaró que la persona estuviera sentada erguida con la cara relajada: las cejas se mueven al tumbarse o al levantarlas. Compruebe de nuevo cada distancia con la persona erguida.",
  "tail-steep":
    "La cola de la ceja {side:sides} cae {value:1}°, más de {limit:0}°: elija otra cola, o un final más alto.",
  "front-steep":
    "El tramo delantero de la ceja {side:sides} sube {value:1}°, más de {limit:0}°: elija otras alturas, o un arco más bajo.",
  "tail-above-arch":
    "La cola de la ceja {side:sides} termina {value:1mm} por encima de la mitad de su arco: elija la altura del final de la cola.",
  "tail-below-start":
    "La cola de la ceja {side:sides} termina {value:1mm} por debajo de su inicio inferior, más de {limit:mm}: elija la altura del final de la cola.",
  "thickens-outward":
    "La ceja {side:sides} engrosa {value:1mm} hacia su {station:stations}, más de {limit:mm}: elija su grosor.",
  "lid-space-closes":
    "El espacio entre párpado y ceja se cierra {value:1mm} a la {side:sides}, más de {limit:mm}: elija una ceja más fina, o alturas mayores.",
  "dot-far-off":
    "El {dot:dots} de la ceja {side:sides} está a {value:1mm} de donde lo tienen sus bordes, más de {limit:mm}: revise los puntos de referencia, y si falta vello ahí, o elija otra guía.",
  "brow-displaced":
    "La ceja {side:sides} está {size:1mm} {where:levels} en la captura posterior, más de {limit:mm}: en una de ellas estaba levantada o fruncida, o la persona estaba tumbada. Planifique con la captura erguida y relajada.",
} as const;
