export { areaFigure, areaSign, decimal } from "./telling/figures.js";
export { lengthFigure, lengthIn, lengthSign } from "./telling/figures.js";
export { label } from "./telling/label.js";
