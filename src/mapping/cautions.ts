/** Codes of the cautions that travel with a plan. */
export type CautionCode =
  | "local-law"
  | "hygiene"
  | "planning-aid"
  | "scale-uncertain"
  | "scale-from-population-average"
  | "stand-in-used"
  | "head-may-be-turned"
  | "upright-not-confirmed"
  | "thickness-assumed";
