import { type Length, length } from "./quantity.js";
import { refusingAs, refuse } from "./geometry-error.js";

/**
 * A length as people write it, in millimetres: `0.75 cm`, `7.5 mm`, `32,5 mm`, `1 3/16 in`, `7/8"`.
 *
 * The unit has to be there: a bare number is refused, and so is a comma before three digits, which
 * some read as thousands.
 *
 * @throws GeometryError `not-parsed`
 *
 * @example
 * ```ts
 * import { parseLength } from "brow-geometry";
 * parseLength("32,5 mm"); // → 32.5
 * parseLength("1 3/16 in"); // → 30.1625
 * parseLength("29.5"); // throws GeometryError: needs a number with its unit
 * ```
 */
export function parseLength(text: string): Length<"mm"> {
  return refusingAs("parseLength", () => {
    const need = 'a number with its unit: "7.5 mm", "0.75 cm", "32,5 mm" or "1 3/16 in"';
    return writtenLength(text) ?? refuse("not-parsed", "text", text, need);
  });
}

export function writtenLength(text: string): Length<"mm"> | undefined {
  const { whole, decimal, over, under, unit } = LENGTH.exec(text)?.groups ?? {};
  const millimetres = unit === undefined ? undefined : MILLIMETRES[unit.toLowerCase()];
  const number =
    decimal === undefined
      ? Number(whole ?? 0) + Number(over) / Number(under)
      : Number(decimal.replace(",", "."));
  if (millimetres === undefined || !Number.isFinite(number)) return undefined;
  return length(number * millimetres);
}

/** A decimal number, or a fraction with or without a whole number before it; then the unit. */
const LENGTH =
  /^\s*(?:(?<decimal>\d{1,9}(?:\.\d{1,9}|,(?!\d{3}(?!\d))\d{1,9})?)|(?:(?<whole>\d{1,9})\s+)?(?<over>\d{1,9})\/(?<under>\d{1,9}))\s*(?<unit>mm|cm|in|″|")\s*$/i;

const MILLIMETRES: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  in: 25.4,
  "″": 25.4,
  '"': 25.4,
};
