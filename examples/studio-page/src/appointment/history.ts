import { computed, signal } from "@preact/signals";
import { type Appointment, EMPTY } from "./appointment.js";

interface History {
  readonly before: readonly Appointment[];
  readonly present: Appointment;
  readonly after: readonly Appointment[];
}

const history = signal<History>({ before: [], present: EMPTY, after: [] });

/** What a finger is just doing: shown, and kept only when it lets go. */
const draft = signal<Appointment | undefined>(undefined);

/** The appointment as it is shown. */
export const shown = computed(() => draft.value ?? history.value.present);

/** Whether a finger is at work: what takes long can wait. */
export const isMoving = computed(() => draft.value !== undefined);

/** The last that was kept: what a finger started from. */
export const kept = computed(() => history.value.present);

export const canUndo = computed(() => history.value.before.length > 0);
export const canRedo = computed(() => history.value.after.length > 0);

/** Shows a change without keeping it. */
export function show(appointment: Appointment): void {
  draft.value = appointment;
}

/** Keeps a change, or the one that is shown. */
export function keep(appointment: Appointment | undefined = draft.value): void {
  draft.value = undefined;
  const { before, present } = history.value;
  if (appointment === undefined || appointment === present) return;
  history.value = { before: [...before, present], present: appointment, after: [] };
}

/** Forgets a change that is shown. */
export function letGo(): void {
  draft.value = undefined;
}

/** Changes what is there and keeps it. */
export function change(by: (appointment: Appointment) => Appointment): void {
  keep(by(history.value.present));
}

export function undo(): void {
  const { before, present, after } = history.value;
  const last = before.at(-1);
  if (last === undefined) return;
  draft.value = undefined;
  history.value = { before: before.slice(0, -1), present: last, after: [present, ...after] };
}

export function redo(): void {
  const { before, present, after } = history.value;
  const [next, ...rest] = after;
  if (next === undefined) return;
  draft.value = undefined;
  history.value = { before: [...before, present], present: next, after: rest };
}

/** Begins another appointment: nothing of the one before can be called back. */
export function begin(appointment: Appointment): void {
  draft.value = undefined;
  history.value = { before: [], present: appointment, after: [] };
}
