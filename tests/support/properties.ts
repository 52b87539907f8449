import fc from "fast-check";

// Every run of CI draws the same cases, so that a change is judged by what it changed; elsewhere each
// run draws its own.
fc.configureGlobal(process.env.CI === undefined ? {} : { seed: 20_261_125 });
