import { type LandmarkOfSide, landmarkOfSide } from "./markup-terms.js";

/** Of a face, its halves, a later capture of it, and what a markup cannot tell of faces. */
export const FACES = {
  "sides-swapped":
    "El detector vio una imagen volteada: se intercambiaron su derecha y su izquierda.",
  "irises-swapped": "Cada iris estaba en el otro ojo; se intercambiaron.",
  "mirroring-undone":
    "La imagen estaba volteada en horizontal; los puntos están en la imagen tal como se tomó.",
  "scaled-to-pixels":
    "Las coordenadas eran proporciones de una imagen de {width} de ancho y {height} de alto; ahora son píxeles.",
  "point-missing": "{landmark:landmarkPaths}: incompleto; falta el punto {points} del marcado.",
  "point-misplaced": "{landmark:landmarkPaths}: se deja fuera; su punto no está donde debería.",
  "stand-in":
    "{landmark:landmarks}: solo aproximado ({instead:standIns}). Compruebe a ojo lo que se apoya en ello.",
  "irises-narrowed":
    "La fuente dibuja los iris {factor:2} ± {u:2} veces tan anchos como son: sus bordes se acercaron.",
  corrected: "Se descontaron los errores medios de su detector.",
  "repeated-points": ({ count }: { readonly count: number }): string =>
    count === 1
      ? "{landmark:landmarkPaths}: repite {count} punto; con una vez basta."
      : "{landmark:landmarkPaths}: repite {count} puntos; con una vez basta.",
  "half-faces-differ":
    "Las mitades de la cara difieren {difference:1mm} en anchura: la cabeza está girada unos {yaw:0}°, o la cara es así de desigual. La foto no lo puede decir, y ningún punto se mueve por ello.",
  "stable-points-disagree":
    "Puntos de referencia que no deberían moverse están {times:1} veces más separados de lo que explican sus incertidumbres; el que más, {landmark}: {apart:1mm}. Algo más ha cambiado, como la expresión o la distancia de la cámara.",
  "landmark-of-side": (values: LandmarkOfSide): string => landmarkOfSide(values),
  "beyond-guide": "{mark:marks} {rule:rules} (falta: {lacks:lacked})",
  "beyond-iris-scale": "escala por el ancho del iris (falta: {lacks:lacked})",
  "beyond-thickness": "grosor, área y puntos inferiores de la ceja natural (falta: {lacks:lacked})",
  "beyond-lid-to-brow": "altura de la ceja sobre el párpado (falta: {lacks:lacked})",
  "beyond-fitted-skin":
    "piel ajustada a la cara, y giro de la cabeza hacia el frente (falta: {lacks:lacked})",
  "beyond-true-skin": "la piel como es, y no como se modela (falta: {lacks:lacked})",
  "beyond-pupil-distance": "distancia entre las pupilas (falta: {lacks:lacked})",
  "beyond-iris-width":
    "si los iris son iguales, y tan anchos como los de las personas (falta: {lacks:lacked})",
  "beyond-yaw": "si la cabeza está girada o la cara es desigual (falta: {lacks:lacked})",
  "beyond-pitch": "si la barbilla está subida o bajada (falta: {lacks:lacked})",
  "beyond-gaze": "si los ojos miran al frente (falta, propio: {lacks:lacked})",
  "beyond-stand-ins":
    "lo que hay en el punto mismo, donde se lee otro en su lugar ({lacks:lacked})",
} as const;
