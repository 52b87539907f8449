/** Of what a capture was checked for. */
export const CAPTURES = {
  "head-tilted": "La cabeza está ladeada {size:1}° en la imagen; hasta {limit:0}° vale.",
  "head-turned":
    "La cabeza está girada {size:1}° hacia la {towards:sides} de la persona; hasta {limit:0}° vale.",
  "turned-or-asymmetric":
    "La mitad {narrow:sides} de la cara se lee {difference:1mm} más estrecha: la cabeza está girada unos {size:0}° hacia la {narrow:sides} de la persona, o la cara es así de asimétrica. Sin profundidad nada lo puede decir; hasta {limit:0}° vale.",
  "chin-raised": "La barbilla está subida unos {size:0}°; hasta {limit:0}° vale.",
  "chin-lowered": "La barbilla está bajada unos {size:0}°; hasta {limit:0}° vale.",
  "eye-closed": ({ side }: { readonly side: "right" | "left" }): string =>
    `El ojo ${side === "right" ? "derecho" : "izquierdo"} está abierto {value:2} de su ancho; los ojos abiertos muestran {limit:2} o más.`,
  "looking-aside":
    "Los ojos miran hacia la {towards:sides} de la persona: las pupilas se apartan {size:2} del ancho de un ojo del centro; hasta {limit:2} vale.",
  "looking-up":
    "Los ojos miran hacia arriba: las pupilas están {value:2} del ancho de un ojo por encima de sus ángulos; hasta {limit:2} vale.",
  "looking-down":
    "Los ojos miran hacia abajo: las pupilas están {size:2} del ancho de un ojo por debajo de sus ángulos; hasta {limit:2} vale.",
  "lips-apart": "Los labios están separados {value:2} del ancho de la boca; hasta {limit:2} vale.",
  "brow-raised":
    "La ceja {side:sides} está {size:1mm} más arriba que en la captura de base; hasta {limit:1mm} vale. Está levantada, o la persona está tumbada.",
  "brow-lowered":
    "La ceja {side:sides} está {size:1mm} más abajo que en la captura de base; hasta {limit:1mm} vale. Está fruncida, o estaba levantada en la de base.",
  "too-few-pixels":
    "Un píxel mide {pixel:2mm}: la tolerancia de {tolerance:mm} abarca {value:1}; hacen falta {limit:0}.",
  "camera-too-near":
    "La cámara estaba a unos {value:0mm}, lo que dibuja el inicio de una ceja un {percent:1} % más grande que el final de su cola; desde {limit:0mm} vale.",
  "camera-distance-unknown":
    "A qué distancia estaba la cámara: no comprobado, pues caras cercanas y lejanas se parecen mucho. Una ceja con {depth:0mm} de profundidad, {from:depthOrigins}, se dibuja un {percent:1} % más grande en su inicio que en el final de su cola desde {limit:0mm}, lo mínimo que vale.",
  "eyes-narrow-for-irises":
    "Los ángulos externos de los ojos distan {value:1} iris; lo habitual son {limit:1} o más. Hay puntos de referencia mal colocados, la cabeza está girada, o la cámara estaba demasiado cerca: ojos de anchura media se ven así desde {away:0mm}.",
  "eyes-wide-for-irises":
    "Los ángulos externos de los ojos distan {value:1} iris; lo habitual son {limit:1} o menos. Los ojos están medio cerrados, o hay puntos de referencia mal colocados.",
  "irises-unequal": ({ wide }: { readonly wide: "right" | "left" }): string =>
    `El iris ${wide === "right" ? "derecho" : "izquierdo"} se lee un {percent:0} % más ancho que el otro. Hay puntos de referencia mal colocados, un ojo está medio cerrado, o la cabeza está girada cerca de la cámara.`,
  "pupil-distance-implausible":
    "Las pupilas se leen a {value:0mm} una de otra; casi todos los adultos tienen de {lower:0mm} a {upper:0mm}. La escala es errónea, hay puntos de referencia mal colocados, o no se trata de una persona adulta.",
  "iris-width-implausible":
    "Los iris se leen con {value:1mm} de ancho; lo habitual es de {lower:1mm} a {upper:1mm}. La escala es errónea, o hay puntos de referencia mal colocados.",
  "canthal-index-implausible":
    "Los ángulos internos de los ojos distan {value:2} de lo que distan los externos; lo habitual es de {lower:2} a {upper:2}. Hay puntos de referencia mal colocados, o la cabeza está muy girada.",
  "picture-stretched":
    "La nariz tiene de alto {value:2} de lo que distan los ángulos externos de los ojos; lo habitual es de {lower:2} a {upper:2}. Ancho y alto de la imagen están intercambiados, se deformó, o hay puntos de referencia mal colocados.",
  "sides-exchanged": "Derecha e izquierda están intercambiadas, o la imagen está en espejo.",
  "sides-unlike":
    "Los puntos de referencia de los dos lados no se reflejan respecto a ninguna línea.",
  "few-landmarks":
    "Hay pocos puntos de referencia para decir si esta captura vale: de {all} cosas que ellos dicen, {open} están sin comprobar ({what:toldByLandmarks}).",
  "not-checked": "{what:questions}: no comprobado.",
  declared: "Declarado, no visto: {fact:declared}.",
  "not-declared": "Nadie declaró que {fact:declared}, y una imagen no lo puede mostrar.",
  "declared-contrary": "Se declaró que {fact:contrary}: las cejas están entonces en otro sitio.",
  "declaration-questioned":
    "Se declaró que {fact:declared}, pero la ceja {side:sides} está {size:1mm} {where:levels} que en la captura de base.",
  "not-proven":
    "Con una incertidumbre típica de {u} no queda probado ni que se respete ni que se supere.",
  "u-in-degrees": "{u:1}°",
  "u-as-length": "{u:1mm}",
  "u-in-pixels": "{u:1} píxeles",
  "u-in-irises": "{u:2} iris",
  "u-in-percent": "{percent:0} %",
  "u-as-share": "{u:2}",
  unlimited: "cualquier número de",
} as const;

/** What to do about it. */
export const CAPTURE_ADVICE = {
  "head-tilted": "Sujete la cámara nivelada y pida a la persona que mantenga la cabeza derecha.",
  "head-turned": "Pida a la persona que mire de frente a la cámara.",
  "turned-or-asymmetric":
    "Pida a la persona que mire de frente a la cámara y tome otra foto: lo que permanece es la cara.",
  "chin-raised": "Lleve la cámara a la altura de los ojos, o pida que baje la barbilla.",
  "chin-lowered": "Lleve la cámara a la altura de los ojos, o pida que suba la barbilla.",
  "eye-closed": "Pida a la persona que abra los ojos sin levantar las cejas.",
  "looking-aside": "Pida a la persona que mire a la cámara.",
  "looking-up": "Pida a la persona que mire a la cámara, sujeta a la altura de los ojos.",
  "looking-down": "Pida a la persona que mire a la cámara, sujeta a la altura de los ojos.",
  "lips-apart": "Pida a la persona que cierre los labios sin apretarlos.",
  "brow-raised": "Siente a la persona erguida, con la frente relajada, y repita la foto.",
  "brow-lowered": "Siente a la persona erguida, con la frente relajada, y repita las dos fotos.",
  "too-few-pixels":
    "Llene la imagen con la cara: acerque con el zoom en vez de acercarse, o use una cámara mejor.",
  "camera-too-near": "Aléjese y acerque con el zoom.",
  "camera-distance-unknown": "Hace falta: {need:needs}.",
  "eyes-narrow-for-irises":
    "Aléjese y acerque con el zoom; revise los ángulos de los ojos y los bordes de los iris.",
  "eyes-wide-for-irises":
    "Compruebe que los ojos estén abiertos; revise sus ángulos y los bordes de los iris.",
  "irises-unequal": "Revise los bordes de los dos iris.",
  "pupil-distance-implausible": "Compruebe la escala con una regla, y las pupilas.",
  "iris-width-implausible": "Compruebe la escala con una regla, y los bordes de los iris.",
  "canthal-index-implausible": "Revise los cuatro ángulos de los ojos.",
  "picture-stretched":
    "Dé el ancho y el alto de la imagen como se ve, derecha: las cámaras guardan las fotos giradas.",
  "sides-exchanged": "Diga cómo está volteada la imagen, o intercambie derecha e izquierda.",
  "sides-unlike": "Revise los puntos de referencia: algunos están muy lejos, o son de otro nombre.",
  "few-landmarks": "Dé más puntos de referencia, o mire usted la imagen.",
  "not-checked": "Hace falta: {need:needs}.",
  declared: "Compruebe de nuevo cada distancia con la persona erguida.",
  "not-declared": "Siente a la persona erguida, con la cara relajada, y declárelo.",
  "declared-contrary": "Siente a la persona erguida, con la frente relajada, y repita la foto.",
  "declaration-questioned":
    "Pregunte de nuevo, y mida las dos cejas con regla, con la persona erguida.",
} as const;
