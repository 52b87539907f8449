/** The day on this device's clock, year first, as records write it. */
export function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** Whole weeks from one day to another. */
export function weeksBetween(from: string, to: string): number {
  const at = (day: string) => new Date(`${day}T12:00`).getTime();
  return Math.round((at(to) - at(from)) / (7 * 24 * 3600 * 1000));
}
