import type { GuideConvention, Mark } from "../face/conventions.js";
import type { LandmarkName } from "../face/landmarks.js";

/** What a markup may lack: a landmark, the lower border of brows, depth, or depth that was measured. */
export type Lacked = LandmarkName | "lowerBorder" | "depth" | "measuredDepth";

interface Lacking {
  readonly lacks: readonly Lacked[];
}

/** What cannot be told from a markup, and for want of what. */
export interface BeyondNotes {
  readonly "beyond-guide": Lacking & { readonly mark: Mark; readonly rule: GuideConvention };
  readonly "beyond-iris-scale": Lacking;
  readonly "beyond-thickness": Lacking;
  readonly "beyond-lid-to-brow": Lacking;
  readonly "beyond-fitted-skin": Lacking;
  readonly "beyond-true-skin": Lacking;
  readonly "beyond-pupil-distance": Lacking;
  readonly "beyond-iris-width": Lacking;
  readonly "beyond-yaw": Lacking;
  readonly "beyond-pitch": Lacking;
  /** Pupils that are only approximated do not tell where the eyes look. */
  readonly "beyond-gaze": Lacking;
  /** What lies at landmarks themselves, where stand-ins are read. */
  readonly "beyond-stand-ins": Lacking;
}

/** Codes of what cannot be told from a markup. */
export type BeyondCode = keyof BeyondNotes;
