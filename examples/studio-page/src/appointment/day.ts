/** The day on this device's clock, year first, as records write it. */
export function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** Whether something is a day as records write it that the calendar has: files hold anything. */
export function isDay(value: unknown): value is string {
  if (typeof value !== "string" || !/^\d{4}-\d{2}-\d{2}$/.test(value)) return false;
  // Some browsers take 30 February for 2 March, others for no day.
  const date = new Date(value);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(value);
}

/** Whole weeks from one day to another. */
export function weeksBetween(from: string, to: string): number {
  const at = (day: string) => new Date(`${day}T12:00`).getTime();
  return Math.round((at(to) - at(from)) / (7 * 24 * 3600 * 1000));
}
