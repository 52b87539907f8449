import type { ENGLISH_PAGE } from "./english.js";

/** The page's own words in any language: what is missing, or takes other values, does not compile. */
export type PageText = Worded<typeof ENGLISH_PAGE>;

type Worded<Text> = Text extends string
  ? string
  : Text extends (...values: infer Values) => string
    ? (...values: Values) => string
    : { readonly [Name in keyof Text]: Worded<Text[Name]> };
