import { type FigureStyle, LENGTH_UNITS } from "../catalogue/figures.js";

/** A number to a count of decimals; never a minus sign before a zero. */
export function decimal(value: number, decimals: number, { decimalSign }: FigureStyle): string {
  const printed = Math.abs(value).toFixed(decimals).replace(".", decimalSign);
  return value < 0 && /[1-9]/.test(printed) ? `−${printed}` : printed;
}

/** A length in the reader's unit, without its sign: as exact as so many decimals of a millimetre. */
export function lengthFigure(value: number, decimals: number, style: FigureStyle): string {
  const unit = LENGTH_UNITS[style.lengths];
  const inUnit = value / unit.size;
  if ("more" in unit) return decimal(inUnit, decimals + unit.more, style);
  return fraction(inUnit, unit.marks[decimals > 0 ? 1 : 0]);
}

/** A length in the reader's unit. */
export function lengthIn(value: number, decimals: number, style: FigureStyle): string {
  return `${lengthFigure(value, decimals, style)} ${lengthSign(style)}`;
}

/** An area in the square of the reader's unit, without its sign: as exact as whole square millimetres. */
export function areaFigure(value: number, style: FigureStyle): string {
  const { size } = LENGTH_UNITS[style.lengths];
  return decimal(value / size ** 2, Math.round(Math.log10(size)) * 2, style);
}

export function lengthSign({ lengths }: FigureStyle): string {
  return LENGTH_UNITS[lengths].sign;
}

export function areaSign(style: FigureStyle): string {
  return `${lengthSign(style)}²`;
}

/** A whole number and a fraction that a ruler has a mark for, in its lowest terms: "1 3/16". */
function fraction(value: number, marks: number): string {
  const count = Math.round(Math.abs(value) * marks);
  const sign = value < 0 && count > 0 ? "−" : "";
  const [whole, rest] = [Math.floor(count / marks), count % marks];
  if (rest === 0) return `${sign}${whole}`;
  let [over, under] = [rest, marks];
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return `${sign}${whole > 0 ? `${whole} ` : ""}${over}/${under}`;
}
