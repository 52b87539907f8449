export { label } from "./telling/label.js";
