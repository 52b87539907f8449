import { type MapRecord, recordOf } from "brow-geometry";
import { parseRecord } from "brow-geometry/schema";
import { attempt } from "brow-geometry/units";
import { inputOf } from "../planning/input.js";
import { type Appointment, EMPTY } from "./appointment.js";
import { isTraced, type Kept, type Picture, pictureOf } from "./basis.js";
import { wishesOf } from "./wishes.js";
import type { Mapped } from "../planning/map.js";

/** What this page keeps with a record for itself. */
interface PageExtras {
  readonly page: 1;
  readonly picture?: Picture;
  readonly ticked: readonly number[];
  /** What came of it: each visit's face in a record of its own, which is read as carefully. */
  readonly visits: readonly { readonly weeks: number; readonly record: MapRecord }[];
}

/** Larger files are no records: a photo in one takes up a megabyte or two. */
const MOST_BYTES = 20_000_000;

/** The record of an appointment, as the text of a file. */
export function recordText(map: Mapped, appointment: Appointment): string {
  const opened = openedIn(appointment);
  const app = { ...fieldsOf(opened?.app), ...extrasOf(appointment) };
  const agreement = agreementIn(appointment);
  if (opened !== undefined && isAsOpened(appointment)) {
    return JSON.stringify({ ...opened, app, ...(agreement && { agreement }) });
  }
  // What was drawn was drawn against the plan before.
  const { check: _, ...extras } = opened ?? {};
  const { input, choices, findings } = map;
  const now = { date: today(), findings, app, ...(agreement && { agreement }) };
  return JSON.stringify(recordOf(input, choices, { ...extras, ...now }));
}

/** The day of a map: that of its record while it stays as it was opened, and today's for every other. */
export function dayOf(appointment: Appointment): string | undefined {
  return isAsOpened(appointment) ? openedIn(appointment)?.date : today();
}

function openedIn({ map }: Appointment): MapRecord | undefined {
  return map?.kind === "kept" ? map.record : undefined;
}

/** Whether nothing was chosen or wished for since a record was opened: its plan then stays, to the last bit. */
function isAsOpened({ map, choices, declared, wishes }: Appointment): boolean {
  return (
    map?.kind === "kept" &&
    map.choices === choices &&
    map.declared === declared &&
    wishesOf(wishes).length === 0
  );
}

/** What was agreed in the words of its record, as long as it is the same map. */
function agreementIn(appointment: Appointment): MapRecord["agreement"] {
  const before = openedIn(appointment)?.agreement;
  if (isAsOpened(appointment) && appointment.agreed === isAgreed(before)) return before;
  const others = (before ?? []).filter(({ kind }) => kind !== "agreed");
  return appointment.agreed
    ? [...others, { kind: "agreed", text: "The map as it stands.", by: "the client" }]
    : others;
}

function isAgreed(agreement: MapRecord["agreement"] = []): boolean {
  return agreement.some(({ kind }) => kind === "agreed");
}

function extrasOf(appointment: Appointment): PageExtras {
  const { map, ticked } = appointment;
  const picture = map && pictureOf(map);
  return { page: 1, ticked, visits: visitsToKeep(appointment), ...(picture && { picture }) };
}

/** Those of its visits that a record can hold: a guess at borders would be read as pigment. */
export function visitsToKeep({ visits }: Appointment): PageExtras["visits"] {
  return visits.flatMap(({ weeks, basis }) => {
    if (basis.kind === "kept") return [{ weeks, record: basis.record }];
    if (!isTraced(basis)) return [];
    const record = attempt(() => recordOf(inputOf(basis)));
    return record.ok ? [{ weeks, record: record.answer }] : [];
  });
}

/** The day on this device's clock, year first. */
function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The appointment in a record's file. Files come from anywhere: what is no record is refused. */
export async function readRecord(file: Blob): Promise<Appointment> {
  if (file.size > MOST_BYTES) throw new RangeError("too large");
  const record = parseRecord(JSON.parse(await file.text()));
  return appointmentOf(record);
}

function appointmentOf(record: MapRecord): Appointment {
  const { picture, ticked, visits } = extrasIn(record.app);
  const map = keptFrom(record);
  return {
    ...EMPTY,
    map: { ...map, ...(picture && { picture }) },
    choices: map.choices,
    declared: map.declared,
    agreed: isAgreed(record.agreement),
    ticked,
    visits: visits.map((visit) => ({ weeks: visit.weeks, basis: keptFrom(visit.record) })),
  };
}

function keptFrom(record: MapRecord): Kept {
  const { declared = {}, ...choices } = record.choices;
  return { kind: "kept", record, choices, declared };
}

/** Only what has the right form: an address that could load or run something is left out. */
function extrasIn(app: unknown): Omit<PageExtras, "page"> {
  const { picture, ticked, visits } = fieldsOf(app);
  const { width, height, href } = fieldsOf(picture);
  const isPicture =
    isSize(width) &&
    isSize(height) &&
    typeof href === "string" &&
    /^data:image\/jpeg;base64,[A-Za-z0-9+/=]+$/.test(href);
  return {
    ...(isPicture && { picture: { width, height, href } }),
    ticked: listIn(ticked).filter((one): one is number => Number.isInteger(one)),
    visits: listIn(visits).flatMap((visit) => {
      const { weeks, record } = fieldsOf(visit);
      const read = attempt(() => parseRecord(record));
      return isWeeks(weeks) && read.ok ? [{ weeks, record: read.answer }] : [];
    }),
  };
}

function fieldsOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null ? { ...value } : {};
}

/** More visits than anybody has are no visits of this page. */
const MOST = 100;

function listIn(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value.slice(0, MOST) : [];
}

function isWeeks(value: unknown): value is number {
  return typeof value === "number" && value >= 0 && value < 5000;
}

function isSize(value: unknown): value is number {
  return typeof value === "number" && value > 0 && value < 20_000;
}
