/** How the client sat when the landmarks were taken, as declared by whoever was there. */
export interface Declared {
  readonly upright?: boolean;
  readonly relaxed?: boolean;
}
