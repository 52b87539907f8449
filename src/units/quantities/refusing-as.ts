import { GeometryError } from "./geometry-error.js";

/**
 * Runs what a function is made of, so that whatever refuses inside of it is reported by that
 * function's name: the one that the user called.
 *
 * @throws GeometryError as `run`, with another `where`
 */
export function refusingAs<Result>(where: string, run: () => Result): Result {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof GeometryError) || error.detail.where === where) throw error;
    throw new GeometryError(error.code, { ...error.detail, where }, { cause: error });
  }
}
