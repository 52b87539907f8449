/**
 * Standard uncertainty in millimetres of a landmark that a careful hand places on a photo: TEM of
 * the same rater, 0.26 mm (Reliability of Periocular Anthropometry, 2019, 46 adults).
 */
export const HAND_PLACEMENT = 0.26;
