/** Of a scale, and of what is not decided. */
export const QUANTITIES = {
  "population-average":
    "Se toma el iris con {width:mm} ± {u:mm} de ancho, la media de la población: eso solo ya hace incierta cada longitud en un {percent:0} %. Proporciones y ángulos no dependen de ello.",
  "ring-factor":
    "La fuente dibuja los iris {factor:2} ± {u:2} veces tan anchos como son: la escala está corregida.",
  "one-iris": ({ side }: { readonly side: "right" | "left" }): string =>
    side === "right" ? "Solo se midió el iris derecho." : "Solo se midió el iris izquierdo.",
  "irises-differ":
    "El iris derecho tiene {right:1} px de ancho y el izquierdo {left:1} px, más diferencia de la que explica su colocación: quizá la cabeza esté girada. Se usa la media, con la mitad de la diferencia como incertidumbre.",
  "perspective-unknown":
    "El inicio de una ceja está más cerca de la cámara que el iris, y el final de su cola más lejos: desde {distance:0mm} se leen un {start:1} % de más y un {tail:1} % de menos.",
  "perspective-corrected":
    "La cámara estaba a {distance:0mm}: su perspectiva está corregida, con la profundidad o, donde una ceja no la tiene, con la piel modelada.",
  "reference-off-plane":
    "La referencia está {nearer:1mm} más cerca de la cámara, que está a {distance:0mm}, que lo que se mide: las longitudes están corregidas.",
  "ruler-recedes":
    "La regla se aleja de la cámara: un milímetro ocupa {first:2} px en un extremo y {last:2} px en el otro. Se usa la escala de su centro; sujétela paralela a la cámara.",
  "reading-rejected":
    "La lectura de {reading:mm} no encaja con las demás, que dan {expected:1mm}: se dejó fuera.",
  "readings-scatter":
    "Las lecturas se dispersan {times:1} veces lo que explica la colocación de sus marcas: la incertidumbre se amplió.",
  "marker-tilted": "El marcador está inclinado unos {tilt:0}°: se usa su eje más largo.",
  "rim-scatters":
    "Los puntos del borde se apartan de un círculo {times:1} veces lo que explica su colocación: la incertidumbre se amplió.",
  "sources-disagree":
    "Las escalas difieren más de lo que permiten sus incertidumbres ({scales} mm por píxel): al menos una es errónea. La incertidumbre se amplió para abarcarlas.",
  "scale-of-source": "{source:scaleSources} {factor:4} ± {u:4}",
  "repeat-placements":
    "Lo decidiría la media de {placements} colocaciones independientes como esta, o una sola lectura con una incertidumbre típica de {u:2} como máximo, por ejemplo con regla.",
  "measure-better":
    "Solo lo decidiría una lectura con una incertidumbre típica de {u:2} como máximo, por ejemplo con regla; harían falta más colocaciones como esta de las que nadie promedia.",
} as const;
