import { deepPoint, hasDepth } from "brow-geometry/units";
import {
  type Face,
  NOTICED_BY_CLIENTS,
  NOTICED_BY_OTHERS,
  type Point,
  turnToFront,
  WORKING_TOLERANCES,
} from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import { polylineLength } from "brow-geometry/geometry";
import { syntheticHead, turnedHead } from "../support/synthetic-head.js";

const PER_DEGREE = 90;
const PER_MM = 40;
const LEFT = 70;
const FLOOR = 400;

const CURVES = [
  { name: "as the photo shows it", colour: "#a03c1a", dash: "", differ: differenceOnPhoto },
  {
    name: "turned to front, the scale of depth wrong by a fifth",
    colour: "#8a5a44",
    dash: "8 5",
    differ: (yaw: number) => differenceTurned(yaw, 1.2),
  },
  {
    name: "turned to front",
    colour: "#1a3aa0",
    dash: "",
    differ: (yaw: number) => differenceTurned(yaw, 1),
  },
] as const;

const LIMITS = [WORKING_TOLERANCES, NOTICED_BY_CLIENTS, NOTICED_BY_OTHERS].map((set) => ({
  name: set.name,
  limit: set.tolerances.position.limits.upper ?? 0,
}));

/** By how much the brows of an even face seem to differ in length when the head is turned. */
export function yawFigure(): string {
  const yaws = Array.from({ length: 33 }, (_, index) => index / 4);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 860 560" role="img" font-family="Helvetica, Arial, sans-serif" font-size="15">`,
    "<title>What a turned head fakes: difference in length between the brows of an even face</title>",
    `<rect width="100%" height="100%" fill="#ffffff"/>`,
    `<text x="${LEFT}" y="24" font-weight="bold">difference in length between the brows of an even face, mm</text>`,
    ...axes(),
    ...LIMITS.map(
      ({ name, limit }) =>
        `<path d="M${LEFT} ${yAt(limit)}H${xAt(8)}" stroke="#555555" stroke-dasharray="2 4"/>` +
        `<text x="${xAt(0) + 8}" y="${Number(yAt(limit)) - 6}" fill="#333333">${name}: ${limit} mm</text>`,
    ),
    ...CURVES.map(({ colour, dash, differ }) => {
      const spots = yaws.map((yaw) => `${xAt(yaw)} ${yAt(differ(yaw))}`);
      return `<path d="M${spots.join("L")}" fill="none" stroke="${colour}" stroke-width="3" stroke-dasharray="${dash}"/>`;
    }),
    ...CURVES.flatMap(({ name, colour, dash }, index) => {
      const y = 480 + 26 * index;
      return [
        `<path d="M${LEFT} ${y - 5}h40" stroke="${colour}" stroke-width="3" stroke-dasharray="${dash}"/>`,
        `<text x="${LEFT + 52}" y="${y}">${name}</text>`,
      ];
    }),
    "</svg>\n",
  ].join("\n");
}

function axes(): readonly string[] {
  const degrees = Array.from({ length: 9 }, (_, degree) => degree);
  const millimetres = Array.from({ length: 9 }, (_, mm) => mm);
  return [
    `<path d="M${LEFT} ${yAt(8)}V${FLOOR}H${xAt(8)}" fill="none" stroke="#111111"/>`,
    ...degrees.map(
      (degree) =>
        `<text x="${xAt(degree)}" y="${FLOOR + 22}" text-anchor="middle">${degree}°</text>`,
    ),
    ...millimetres.map(
      (one) => `<text x="${LEFT - 12}" y="${Number(yAt(one)) + 5}" text-anchor="end">${one}</text>`,
    ),
    `<text x="${xAt(8)}" y="${FLOOR + 44}" text-anchor="end">yaw of the head</text>`,
  ];
}

function xAt(yaw: number): number {
  return LEFT + PER_DEGREE * yaw;
}

function yAt(difference: number): string {
  return (FLOOR - PER_MM * difference).toFixed(1);
}

function differenceOnPhoto(yaw: number): number {
  return browDifference(turnedHead(syntheticHead(), yaw));
}

function differenceTurned(yaw: number, depthFactor: number): number {
  const head = mapFace(turnedHead(syntheticHead(), yaw), (point: Point<"mm">) =>
    hasDepth(point) ? deepPoint(point[0], point[1], depthFactor * point[2]) : point,
  );
  return browDifference(turnToFront(head).face);
}

function browDifference({ right, left }: Face<"mm">): number {
  return Math.abs(polylineLength(left.brow?.upper ?? []) - polylineLength(right.brow?.upper ?? []));
}
