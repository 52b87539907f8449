import { computed, effect, signal } from "@preact/signals";
import { ENGLISH, SPANISH, type Words } from "brow-geometry/words";
import { isDay } from "../appointment/day.js";
import { ENGLISH_PAGE } from "./english.js";
import type { PageText } from "./page-text.js";
import { SPANISH_PAGE } from "./spanish.js";

/** What each language is called by those who speak it. */
export const LANGUAGES = { en: "English", es: "Español" } as const;
export type Language = keyof typeof LANGUAGES;

const IN_EACH: Readonly<Record<Language, { page: PageText; library: Words }>> = {
  en: { page: ENGLISH_PAGE, library: ENGLISH },
  es: { page: SPANISH_PAGE, library: SPANISH },
};

/** A choice of this device, no part of an appointment. */
const KEPT_AS = "language";

function firstLanguage(): Language {
  const wanted = keptLanguage() ?? navigator.language.slice(0, 2);
  return wanted === "es" ? "es" : "en";
}

/** Where a browser keeps nothing, its own language is taken each time. */
function keptLanguage(): string | null {
  try {
    return localStorage.getItem(KEPT_AS);
  } catch {
    return null;
  }
}

export const language = signal<Language>(firstLanguage());

/** The page's own words. */
export const text = computed(() => IN_EACH[language.value].page);

/** Those in which maps, steps and pictures are told. */
export const words = computed(() => IN_EACH[language.value].library);

export function speak(wanted: Language): void {
  language.value = wanted;
  try {
    localStorage.setItem(KEPT_AS, wanted);
  } catch {
    // Asked for again at the next start.
  }
}

/** A figure with the decimal sign of the language. */
export function figure(value: number, decimals: number): string {
  return value.toFixed(decimals).replace(".", words.value.decimalSign);
}

/** A day as records write it, in the words of the language; one that no calendar has stays as it is written. */
export function dayInWords(day: string): string {
  if (!isDay(day)) return day;
  const date = new Date(`${day}T12:00`);
  const style = { day: "numeric", month: "short", year: "numeric" } as const;
  return new Intl.DateTimeFormat(language.value === "en" ? "en-GB" : "es", style).format(date);
}

effect(() => {
  document.documentElement.lang = language.value;
  document.title = text.value.title;
});
