export { areaFigure, areaSign, decimal } from "./telling/figures.js";
export { lengthFigure, lengthIn, lengthSign } from "./telling/figures.js";
export { shareFigure } from "./telling/say.js";
export { label } from "./telling/label.js";
