/** Which side of the face is which, in the corners of a picture. */
export const CORNERS = { right: "client’s right", left: "client’s left" } as const;
