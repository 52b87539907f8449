export { areaFigure, areaIn, areaSign, decimal } from "./telling/figures.js";
export { lengthFigure, lengthIn, lengthSign, quantity, roundingOf } from "./telling/figures.js";
export { shareFigure } from "./telling/say.js";
export { label } from "./telling/label.js";
export { isolatedNumber } from "./telling/isolated.js";
