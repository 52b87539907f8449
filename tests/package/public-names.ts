/**
 * The public names of every entry point, values and types. A change here is a change for users: it
 * wants a line in CHANGELOG.md. `npm run names` writes the list anew.
 */
export const publicNames: Readonly<Record<string, readonly string[]>> = {};
