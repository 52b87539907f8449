import { type MapRecord, recordOf } from "brow-geometry";
import { parseRecord } from "brow-geometry/schema";
import { attempt } from "brow-geometry/units";
import { AIMS, type DrawnArea } from "./area.js";
import { isDay, today } from "./day.js";
import { inputOf } from "../planning/input.js";
import { type Appointment, EMPTY } from "./appointment.js";
import { isTraced, type Kept, type Picture, pictureOf } from "./basis.js";
import { wishesOf } from "./wishes.js";
import type { Spot } from "../stage/box.js";
import type { Mapped } from "../planning/map.js";
import { dayInWords, text } from "../words/language.js";

/** What this page keeps with a record for itself. */
interface PageExtras {
  readonly page: 1;
  readonly picture?: Picture;
  readonly ticked: readonly number[];
  readonly agreedOn?: string;
  readonly areas: readonly DrawnArea[];
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
  if (isAsOpened(appointment) && (appointment.agreed !== undefined) === isAgreed(before))
    return before;
  const others = (before ?? []).filter(({ kind }) => kind !== "agreed");
  if (appointment.agreed === undefined) return others;
  const { on = today() } = appointment.agreed;
  const { agreedAsItStands, theClient } = text.value;
  return [...others, { kind: "agreed", text: agreedAsItStands(dayInWords(on)), by: theClient }];
}

function isAgreed(agreement: MapRecord["agreement"] = []): boolean {
  return agreement.some(({ kind }) => kind === "agreed");
}

function extrasOf(appointment: Appointment): PageExtras {
  const { map, ticked, agreed, areas } = appointment;
  const picture = map && pictureOf(map);
  return {
    page: 1,
    ticked,
    areas,
    visits: visitsToKeep(appointment),
    ...(picture && { picture }),
    ...(agreed?.on !== undefined && { agreedOn: agreed.on }),
  };
}

/** Those of its visits that a record can hold: a guess at borders would be read as pigment. */
export function visitsToKeep({ visits }: Appointment): PageExtras["visits"] {
  return visits.flatMap(({ weeks, basis, date }) => {
    if (basis.kind === "kept") return [{ weeks, record: basis.record }];
    if (!isTraced(basis)) return [];
    const record = attempt(() => recordOf(inputOf(basis), {}, date === undefined ? {} : { date }));
    return record.ok ? [{ weeks, record: record.answer }] : [];
  });
}

/** The appointment in a record's file. Files come from anywhere: what is no record is refused. */
export async function readRecord(file: Blob): Promise<Appointment> {
  if (file.size > MOST_BYTES) throw new RangeError("too large");
  const record = parseRecord(JSON.parse(await file.text()));
  return appointmentOf(record);
}

function appointmentOf(record: MapRecord): Appointment {
  const { picture, ticked, areas, visits, agreedOn } = extrasIn(record.app);
  const map = keptFrom(record);
  return {
    ...EMPTY,
    map: { ...map, ...(picture && { picture }) },
    choices: map.choices,
    declared: map.declared,
    agreed: isAgreed(record.agreement) ? { on: agreedOn ?? record.date } : undefined,
    ticked,
    areas,
    visits: visits.map((visit) => ({
      weeks: visit.weeks,
      date: visit.record.date,
      basis: keptFrom(visit.record),
    })),
  };
}

function keptFrom(record: MapRecord): Kept {
  const { declared = {}, ...choices } = record.choices;
  return { kind: "kept", record, choices, declared };
}

/** Only what has the right form: an address that could load or run something is left out. */
function extrasIn(app: unknown): Omit<PageExtras, "page"> {
  const { picture, ticked, areas, visits, agreedOn } = fieldsOf(app);
  const { width, height, href } = fieldsOf(picture);
  const isPicture =
    isSize(width) &&
    isSize(height) &&
    typeof href === "string" &&
    /^data:image\/jpeg;base64,[A-Za-z0-9+/=]+$/.test(href);
  return {
    ...(isPicture && { picture: { width, height, href } }),
    ...(isDay(agreedOn) && { agreedOn }),
    ticked: listIn(ticked).filter((one): one is number => Number.isInteger(one)),
    areas: listIn(areas).flatMap((area): readonly DrawnArea[] => {
      const { aim, edge } = fieldsOf(area);
      const named = AIMS.find((one) => one === aim);
      const spots = listIn(edge, MOST_CORNERS).filter(isSpot);
      return named === undefined || spots.length < 3 ? [] : [{ aim: named, edge: spots }];
    }),
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

function listIn(value: unknown, most = MOST): readonly unknown[] {
  return Array.isArray(value) ? value.slice(0, most) : [];
}

/** No finger's line has more. */
const MOST_CORNERS = 2000;

function isSpot(value: unknown): value is Spot {
  const isIn = (one: unknown) => typeof one === "number" && Math.abs(one) < 20_000;
  return Array.isArray(value) && value.length === 2 && value.every(isIn);
}

function isWeeks(value: unknown): value is number {
  return typeof value === "number" && value >= 0 && value < 5000;
}

function isSize(value: unknown): value is number {
  return typeof value === "number" && value > 0 && value < 20_000;
}
