export { fill } from "./telling/say.js";
