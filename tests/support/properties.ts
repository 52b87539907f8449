import fc from "fast-check";

/** The cases that every run of the tests draws; `npm run test:search` names another seed each time. */
const SEED = 20_261_125;

fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? SEED) });
