/** What is said of a reading that needs no correction. */
export const EVENNESS = {
  even: "{side} {measure}: even with the {other} one",
  unknown: "{side} {measure}: not yet known whether it is even; read it again",
} as const;
