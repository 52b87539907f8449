import { type MapRecord, recordOf } from "brow-geometry";
import { parseRecord } from "brow-geometry/schema";
import { attempt } from "brow-geometry/units";
import { inputOf } from "../planning/input.js";
import { type Appointment, EMPTY } from "./appointment.js";
import { type Picture, pictureOf } from "./basis.js";
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
export function recordText({ input, choices, findings }: Mapped, appointment: Appointment): string {
  const picture = appointment.map && pictureOf(appointment.map);
  const app: PageExtras = {
    page: 1,
    ticked: appointment.ticked,
    visits: appointment.visits.flatMap(({ weeks, basis }) => {
      const record = attempt(() => recordOf(inputOf(basis)));
      return record.ok ? [{ weeks, record: record.answer }] : [];
    }),
    ...(picture && { picture }),
  };
  const record = recordOf(input, choices, {
    date: today(),
    findings,
    app,
    agreement: appointment.agreed
      ? [{ kind: "agreed", text: "The map as it stands.", by: "the client" }]
      : [],
  });
  return JSON.stringify(record);
}

/** The day on this device's clock, year first. */
export function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The appointment in a record's file. Files come from anywhere: what is no record is refused. */
export async function readRecord(file: Blob): Promise<Appointment> {
  if (file.size > MOST_BYTES) throw new RangeError("the file is too large for a record");
  const record = parseRecord(JSON.parse(await file.text()));
  return appointmentOf(record);
}

function appointmentOf({ input, choices, agreement = [], app }: MapRecord): Appointment {
  const { picture, ticked, visits } = extrasIn(app);
  const { declared = {}, ...chosen } = choices;
  return {
    ...EMPTY,
    map: { kind: "kept", input, ...(picture && { picture }) },
    choices: chosen,
    declared,
    agreed: agreement.some(({ kind }) => kind === "agreed"),
    ticked,
    visits: visits.map(({ weeks, record }) => ({
      weeks,
      basis: { kind: "kept", input: record.input },
    })),
  };
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
