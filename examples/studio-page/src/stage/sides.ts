import type { Side } from "brow-geometry";

/** Both sides, as the artist sees them who faces the client: her right is on the left. */
export const SIDES: readonly Side[] = ["right", "left"];
