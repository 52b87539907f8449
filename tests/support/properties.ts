import fc from "fast-check";

// Every run of CI draws the same cases, so that a change is judged by what it changed; elsewhere each
// run draws its own. A property that fails is shrunk for a while, not for ever.
fc.configureGlobal({
  interruptAfterTimeLimit: 15_000,
  ...(process.env.CI === undefined ? {} : { seed: 20_261_125 }),
});
