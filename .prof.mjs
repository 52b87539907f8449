// src/units/quantities/geometry-error.ts
var GeometryError = class extends RangeError {
  name = "GeometryError";
  code;
  detail;
  constructor(code, detail, options) {
    super(`${detail.where}: ${sentences(detail)}`, options);
    this.code = code;
    this.detail = detail;
  }
};
function refuse(code, where, field, value, need) {
  throw new GeometryError(code, { where, field, value, need });
}
var LONGEST_SHOWN = 80;
var MOST_SENTENCES = 3;
function sentences(detail) {
  const problems = [detail, ...detail.also ?? []].map(
    ({ field, value, need }) => `${field} is ${shownValue(value)}; needs ${need}`
  );
  const unsaid = problems.length - MOST_SENTENCES;
  const said = problems.slice(0, MOST_SENTENCES).join(". ");
  return unsaid > 0 ? `${said}. And ${unsaid} more` : said;
}
function shownValue(value, decimals) {
  const text = asText(value, 0, decimals);
  return text.length <= LONGEST_SHOWN ? text : `${text.slice(0, LONGEST_SHOWN - 1)}\u2026`;
}
function asText(value, depth, decimals) {
  if (value === void 0) return "missing";
  if (typeof value === "number") {
    return String(decimals === void 0 ? value : Number(value.toFixed(decimals)));
  }
  if (Array.isArray(value)) {
    if (depth >= LONGEST_SHOWN) return "[\u2026]";
    const items = value.slice(0, LONGEST_SHOWN).map((item) => asText(item, depth + 1, decimals));
    return `[${items.join(", ")}]`;
  }
  if (typeof value === "function" || typeof value === "symbol") return typeof value;
  return typeof value === "bigint" ? `${value}n` : asJson(value);
}
function asJson(value) {
  try {
    return JSON.stringify(value);
  } catch {
    return "an object that JSON cannot hold";
  }
}
function refusingAs(where, run) {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof GeometryError) || error.detail.where === where) throw error;
    throw new GeometryError(error.code, { ...error.detail, where }, { cause: error });
  }
}

// src/units/quantities/require.ts
function requireFinite(where, field, value) {
  if (!Number.isFinite(value)) refuse("not-finite", where, field, value, "a finite number");
}
function requirePositive(where, field, value) {
  requireFinite(where, field, value);
  if (value <= 0) refuse("out-of-range", where, field, value, "more than 0");
}
function requireWithin(where, field, value, least, most) {
  requireFinite(where, field, value);
  if (value < least || value > most) {
    refuse("out-of-range", where, field, value, `a number from ${least} to ${most}`);
  }
}
function requireFinitePoint(where, field, point) {
  if (!isFinitePoint(point)) {
    refuse("not-finite", where, field, point, "two or three finite numbers");
  }
}
function requirePolyline(where, field, polyline, atLeast) {
  if (!Array.isArray(polyline) || polyline.length < atLeast) {
    refuse("wrong-count", where, field, polyline, `at least ${atLeast} points`);
  }
  const index = polyline.findIndex((point) => !isFinitePoint(point));
  if (index >= 0) requireFinitePoint(where, `${field}[${index}]`, polyline[index]);
}
function isFinitePoint(point) {
  if (!Array.isArray(point)) return false;
  const [x, y, depth = 0] = point;
  return (point.length === 2 || point.length === 3) && Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(depth);
}
function requireObject(where, field, value, need) {
  if (typeof value === "object" && value !== null) return;
  refuse("not-parsed", where, field, value, need);
}
function requireWord(where, field, value, words) {
  if (value === void 0 || words.includes(value)) return;
  refuse("out-of-range", where, field, value, `one of ${words.join(", ")}`);
}

// src/units/uncertainty/measured.ts
function measured(value, u) {
  requireFinite("measured", "value", value);
  requireUncertainty("measured", "u", u);
  return { value, u };
}
function requireUncertainty(where, field, u) {
  if (!(u !== void 0 && u >= 0)) {
    refuse(Number.isFinite(u) ? "out-of-range" : "not-finite", where, field, u, "0 or more");
  }
}

// src/units/uncertainty/rise-to-root.ts
function riseToRoot(start, step) {
  let at2 = start;
  for (let round = 0; round < MOST_STEPS; round += 1) {
    const next = at2 + step(at2);
    if (!(next > at2)) break;
    at2 = next;
  }
  return at2;
}
var MOST_STEPS = 200;

// src/units/uncertainty/normal-distribution.ts
function normalDistribution(z) {
  if (Number.isNaN(z)) requireFinite("normalDistribution", "z", z);
  if (z < -TAIL) return upperTail(-z);
  if (z > TAIL) return 1 - upperTail(z);
  return 0.5 + centralArea(z);
}
function normalQuantile(probability) {
  if (!(probability > 0 && probability < 1)) {
    const need = "more than 0 and less than 1";
    refuse("out-of-range", "normalQuantile", "probability", probability, need);
  }
  return probability > 0.5 ? -lowerQuantile(1 - probability) : lowerQuantile(probability);
}
function lowerQuantile(probability) {
  const wanted = Math.log(probability);
  return riseToRoot(-Math.sqrt(-2 * Math.log(2 * probability)), (z) => {
    const slope = z < -TAIL ? tailFraction(-z) : normalDensity(z) / normalDistribution(z);
    const reached = z < -TAIL ? logDensity(z) - Math.log(slope) : Math.log(normalDistribution(z));
    return (wanted - reached) / slope;
  });
}
function logDensity(z) {
  return -0.5 * z * z - 0.5 * Math.log(2 * Math.PI);
}
function normalDensity(z) {
  return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
}
var TAIL = 2.5;
function centralArea(z) {
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > Number.EPSILON * 0.01 * Math.abs(sum); odd += 2) {
    term *= z * z / odd;
    sum += term;
  }
  return normalDensity(z) * sum;
}
function upperTail(z) {
  return normalDensity(z) / tailFraction(z);
}
function tailFraction(z) {
  let fraction = z;
  for (let level = FRACTION_LEVELS; level >= 1; level -= 1) fraction = z + level / fraction;
  return fraction;
}
var FRACTION_LEVELS = 120;

// src/units/quantities/note.ts
function note(sentences2, code, ...[values = {}]) {
  return { code, text: filled("note", sentences2[code] ?? "", values), values };
}
function fill(sentence, ...[values = {}]) {
  return filled("fill", sentence, values);
}
function filled(where, sentence, values) {
  return sentence.replace(
    /\{(?<name>\w+)(?::(?<decimals>\d))?\}/g,
    (place, name, decimals) => {
      const value = values[name];
      if (value === void 0) {
        const need = `the value for ${place} in "${sentence}"`;
        refuse("out-of-range", where, `values.${name}`, value, need);
      }
      return typeof value === "number" && decimals !== void 0 ? fixed(value, Number(decimals)) : String(value);
    }
  );
}
function fixed(value, decimals) {
  return (Number(value.toFixed(decimals)) + 0).toFixed(decimals);
}

// src/units/decisions/words.ts
var ADVICE = {
  "repeat-placements": "The mean of {placements} independent placements like this one would decide, or one reading with a standard uncertainty of at most {u:2}, such as a ruler's.",
  "measure-better": "Only a reading with a standard uncertainty of at most {u:2} would decide, such as a ruler's; it would take more placements like this one than anybody averages."
};

// src/units/decisions/decide.ts
var DECISION_RULES = ["guarded", "simple"];
function decide({ value, u }, limits, options = {}) {
  const { rule: rule2 = "guarded", confidence = 0.95 } = options;
  requireFinite("decide", "value", value);
  requireUncertainty("decide", "u", u);
  requireLimits(limits);
  requireConfidence(confidence);
  const room = roomWithin(value, limits);
  const guardBand = rule2 === "simple" ? 0 : guardBandOf(widthOf(limits), u, confidence);
  const outcome = rule2 === "simple" ? atFaceValue(room) : proven(room, u, confidence);
  const advice = outcome === "undecided" ? adviceFor(room, u, confidence) : void 0;
  return {
    outcome,
    rule: rule2,
    confidence,
    value,
    u,
    limits,
    probability: conformance(room, u),
    ...guardBand === void 0 ? {} : { guardBand, acceptable: acceptableWith(guardBand, limits) },
    ...advice === void 0 ? {} : { advice }
  };
}
function roomWithin(value, { lower = -Infinity, upper = Infinity }) {
  const above = value - lower;
  const below2 = upper - value;
  return { nearer: Math.min(above, below2), farther: Math.max(above, below2) };
}
function atFaceValue({ nearer: nearer2 }) {
  return nearer2 >= 0 ? "within" : "outside";
}
function proven(room, u, confidence) {
  if (conformance(room, u) >= confidence) return "within";
  return keeping(-room.nearer, u) >= confidence ? "outside" : "undecided";
}
function conformance({ nearer: nearer2, farther }, u) {
  return Math.max(0, keeping(nearer2, u) + keeping(farther, u) - 1);
}
function keeping(distance2, u) {
  if (u === 0 || distance2 === Infinity) return distance2 >= 0 ? 1 : 0;
  return normalDistribution(distance2 / u);
}
function widthOf({ lower = -Infinity, upper = Infinity }) {
  return upper - lower;
}
function acceptableWith(guardBand, limits) {
  const { lower, upper } = limits;
  if (upper === void 0) return (lower ?? 0) + guardBand;
  return lower === void 0 ? upper - guardBand : (upper - lower) / 2 - guardBand;
}
var MOST_REPEATS = 20;
function adviceFor(room, u, confidence) {
  const needed = decisiveUncertainty(room, confidence);
  if (needed === 0) return void 0;
  const placements = Math.ceil((u / needed) ** 2 - 1e-9);
  return placements <= MOST_REPEATS ? note(ADVICE, "repeat-placements", { placements, u: needed }) : note(ADVICE, "measure-better", { u: needed });
}
function decisiveUncertainty({ nearer: nearer2, farther }, confidence) {
  const quantile = normalQuantile(confidence);
  if (nearer2 <= 0) return -nearer2 / quantile;
  const precision = riseToRoot(quantile / nearer2, (perU) => {
    const reached = normalDistribution(nearer2 * perU) + normalDistribution(farther * perU) - 1;
    const slope = nearer2 * normalDensity(nearer2 * perU) + (Number.isFinite(farther) ? farther * normalDensity(farther * perU) : 0);
    return (confidence - reached) / slope;
  });
  return 1 / precision;
}
function requireLimits(limits) {
  const { lower, upper } = limits;
  if (lower === void 0 && upper === void 0) {
    refuse("out-of-range", "decide", "limits", limits, "a lower limit, an upper limit, or both");
  }
  if (lower !== void 0) requireFinite("decide", "limits.lower", lower);
  if (upper !== void 0) requireFinite("decide", "limits.upper", upper);
  if (lower !== void 0 && upper !== void 0 && lower > upper) {
    refuse("out-of-range", "decide", "limits.lower", lower, `at most the upper limit, ${upper}`);
  }
}
function requireConfidence(confidence) {
  if (!(confidence > 0.5 && confidence < 1)) {
    refuse("out-of-range", "decide", "confidence", confidence, "more than 0.5 and less than 1");
  }
}
function guardBandOf(width, u, confidence) {
  if (u === 0) return 0;
  if (u === Infinity) return void 0;
  const ratio = width / u;
  if (2 * normalDistribution(ratio / 2) - 1 < confidence) return void 0;
  const band = riseToRoot(normalQuantile(confidence), (at2) => {
    const reached = normalDistribution(at2) + normalDistribution(ratio - at2) - 1;
    const slope = normalDensity(at2) - normalDensity(ratio - at2);
    return slope > 0 ? (confidence - reached) / slope : 0;
  });
  return u * Math.min(band, ratio / 2);
}

// src/units/quantities/quantity.ts
function mm(value) {
  return value;
}
function length(value) {
  return value;
}
function flatPoint(x, y) {
  return [x, y];
}
function deepPoint(x, y, depth) {
  return [x, y, depth];
}
function hasDepth(point) {
  return point.length === 3;
}

// src/units/quantities/side.ts
var SIDES = ["right", "left"];
function eachSide(make) {
  return { right: make("right"), left: make("left") };
}
function otherSide(side) {
  return side === "right" ? "left" : "right";
}

// src/units/decisions/tolerances.ts
var WORKING_TOLERANCES = {
  name: "working",
  tolerances: {
    position: /* @__PURE__ */ ours(1),
    thickness: /* @__PURE__ */ ours(0.5),
    frontShare: /* @__PURE__ */ ours(0.03)
  }
};
var NOTICED_BY_OTHERS = {
  name: "noticed by others",
  tolerances: {
    position: /* @__PURE__ */ published(3.5, "systematic review, Aesthet Surg J 2017;37:375\u2013385"),
    eyeCant: /* @__PURE__ */ published(
      2.31,
      "160 raters, J Oral Maxillofac Surg 2015;73:1606\u20131614"
    ),
    noseDeviation: /* @__PURE__ */ published(
      2.92,
      "160 raters, J Oral Maxillofac Surg 2015;73:1606\u20131614"
    )
  }
};
function ours(halfWidth) {
  return { limits: within(halfWidth), status: "ours", source: "default of brow-geometry" };
}
function published(halfWidth, source) {
  return { limits: within(halfWidth), status: "published", source };
}
function within(halfWidth) {
  return { lower: -halfWidth, upper: halfWidth };
}
function decideUnder({ tolerances }, name, value, options = {}, aim = 0) {
  const tolerance = name === void 0 ? void 0 : tolerances[name];
  if (tolerance === void 0) return {};
  return { decision: decide(value, about(aim, tolerance.limits), options) };
}
function about(aim, limits) {
  const { lower, upper } = limits;
  if (aim === 0) return limits;
  return {
    ...lower === void 0 ? {} : { lower: aim + lower },
    ...upper === void 0 ? {} : { upper: aim + upper }
  };
}

// src/units/quantities/angle.ts
var DEGREES_PER_RADIAN = 180 / Math.PI;
function toDegrees(radians) {
  return radians * DEGREES_PER_RADIAN;
}
function toRadians(degrees) {
  return degrees / DEGREES_PER_RADIAN;
}

// src/units/quantities/keys-of.ts
function keysOf(table) {
  return Object.keys(table);
}

// src/units/uncertainty/words.ts
var IRIS_NOTES = {
  "population-average": "The iris is taken to be {width} \xB1 {u} mm wide, the average of the population: that alone makes every length uncertain by {percent:0} %. Shares and angles do not depend on it.",
  "ring-factor": "The source draws irises {factor:2} \xB1 {u:2} times as wide as they are: the scale is corrected for it.",
  "one-iris": "Only the {side} iris was measured.",
  "irises-differ": "The right iris is {right:1} px wide and the left one {left:1} px, a greater difference than their placement explains: the head may be turned. The mean is used, with half the difference as its uncertainty.",
  "perspective-unknown": "The start of a brow is nearer to the camera than the iris and its tail end farther away: from {distance:0} mm they read {start:1} % too large and {tail:1} % too small.",
  "perspective-corrected": "The camera was {distance:0} mm away: its perspective is removed on the way into the face space, by a point's own depth where it has one, and by the modelled skin where a brow has none."
};

// src/landmarks/face/brow-dots.ts
var DOTS = {
  upperStart: { words: "start", station: "start", placed: true, border: "upper" },
  upperBody: { words: "body", station: "body", placed: false, border: "upper" },
  upperArch: { words: "arch", station: "arch", placed: true, border: "upper" },
  tailEnd: { words: "tail end", station: "tail", placed: true, border: "upper" },
  lowerStart: { words: "lower start", station: "start", placed: true, border: "lower" },
  lowerBody: { words: "lower body", station: "body", placed: true, border: "lower" },
  lowerArch: { words: "lower arch", station: "arch", placed: true, border: "lower" }
};
var DOT_NAMES = /* @__PURE__ */ keysOf(DOTS);
var PLACED_DOTS = /* @__PURE__ */ DOT_NAMES.filter(
  (dot2) => DOTS[dot2].placed
);

// src/geometry/lines/distance.ts
import { vec2 } from "gl-matrix";

// src/geometry/lines/space-vector.ts
function spaceDifference(of, from) {
  return [of[0] - from[0], of[1] - from[1], of[2] - from[2]];
}
function spaceAdvance(from, along, by) {
  return [from[0] + along[0] * by, from[1] + along[1] * by, from[2] + along[2] * by];
}
function dotProduct(one, other) {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
}

// src/geometry/lines/distance.ts
function distance(from, to) {
  return length(vec2.distance(from, to));
}
function spaceDistance(from, to) {
  if (!hasDepth(from) || !hasDepth(to)) return distance(from, to);
  const [x, y, z] = spaceDifference(to, from);
  return length(Math.sqrt(x * x + y * y + z * z));
}

// src/geometry/lines/vector.ts
import { vec2 as vec22 } from "gl-matrix";
function difference(of, from) {
  const out = [0, 0];
  vec22.subtract(out, of, from);
  return out;
}
function advance(from, direction, by) {
  const out = [0, 0];
  vec22.scaleAndAdd(out, from, direction, by);
  return out;
}
function between(from, to, share) {
  const out = [0, 0];
  vec22.lerp(out, from, to, share);
  return out;
}

// src/geometry/polylines/polyline.ts
function polylineLength(polyline) {
  let sum = 0;
  polyline.forEach((to, index) => {
    const from = polyline[index - 1];
    if (from !== void 0) sum += distance(from, to);
  });
  return length(sum);
}
function legsOf(where, polyline) {
  requirePolyline(where, "polyline", polyline, 2);
  const legs = [];
  let before = 0;
  for (let index = 1; index < polyline.length; index += 1) {
    const [from, to] = [polyline[index - 1], polyline[index]];
    const size = distance(from, to);
    if (size === 0) continue;
    legs.push({ from, to, size, before });
    before += size;
  }
  if (legs.length === 0) {
    refuse("coincident-points", where, "polyline", polyline, "two points that differ");
  }
  return legs;
}
function placeOnLeg(leg, share, last) {
  const [x, y] = between(leg.from, leg.to, share);
  const along = leg.before + share * leg.size;
  const whole = last.before + last.size;
  return {
    at: flatPoint(x, y),
    along: length(along),
    extended: along < -ROUNDING * whole || along > (1 + ROUNDING) * whole
  };
}
var ROUNDING = 1e-12;
function polygonArea(points) {
  const [originX, originY] = points[0] ?? [0, 0];
  let twice = 0;
  let [beforeX, beforeY] = [0, 0];
  for (const point of points) {
    const [x, y] = [point[0] - originX, point[1] - originY];
    twice += beforeX * y - beforeY * x;
    [beforeX, beforeY] = [x, y];
  }
  return twice / 2;
}

// src/geometry/fits/least-squares.ts
var DEPENDENT = 1e-9;
function orthonormalBasis(terms) {
  const columns = [];
  const triangle = terms.map(() => zeros(terms.length));
  for (let term = 0; term < terms.length; term += 1) {
    const column = terms[term].slice();
    const before = Math.sqrt(dot(column, column));
    for (let index = 0; index < term; index += 1) {
      const earlier = columns[index];
      const share = dot(column, earlier);
      addTo(column, earlier, -share);
      triangle[index][term] = share;
    }
    const own = Math.sqrt(dot(column, column));
    if (!(own > DEPENDENT * before)) return void 0;
    triangle[term][term] = own;
    for (let row = 0; row < column.length; row += 1) column[row] = column[row] / own;
    columns.push(column);
  }
  return { columns, triangle };
}
function solveTriangle(upper, targets) {
  const solution = targets.slice();
  for (let row = upper.length - 1; row >= 0; row -= 1) {
    const entries = upper[row];
    let rest = targets[row];
    for (let k = row + 1; k < upper.length; k += 1) {
      rest -= entries[k] * solution[k];
    }
    solution[row] = rest / entries[row];
  }
  return solution;
}
function dot(one, other) {
  let sum = 0;
  for (let row = 0; row < one.length; row += 1) {
    sum += one[row] * other[row];
  }
  return sum;
}
function addTo(sum, other, factor) {
  for (let row = 0; row < sum.length; row += 1) {
    sum[row] = sum[row] + factor * other[row];
  }
}
function zeros(count) {
  return new Array(count).fill(0);
}
function closestFactors({ columns, triangle }, values) {
  return solveTriangle(
    triangle,
    columns.map((column) => dot(column, values))
  );
}
function columnsOf(rows) {
  return (rows[0] ?? []).map((_, column) => rows.map((row) => row[column]));
}

// src/geometry/lines/line.ts
function lineThrough(from, to) {
  const [x, y] = difference(to, from);
  const size = Math.hypot(x, y);
  if (size === 0) {
    refuse("coincident-points", "lineThrough", "to", to, "a point that differs from `from`");
  }
  return { through: flatPoint(from[0], from[1]), direction: [x / size, y / size] };
}
function lineAlong(through, direction) {
  const size = Math.hypot(direction[0], direction[1]);
  if (!(size > 0 && Number.isFinite(size))) {
    const need = "two finite numbers that are not both 0";
    refuse("out-of-range", "lineAlong", "direction", direction, need);
  }
  return {
    through: flatPoint(through[0], through[1]),
    direction: [direction[0] / size, direction[1] / size]
  };
}
function pointOnLine(line, at2) {
  const [x, y] = advance(line.through, line.direction, at2);
  return flatPoint(x, y);
}
function distanceAlongLine(point, line) {
  const [x, y] = difference(point, line.through);
  return length(line.direction[0] * x + line.direction[1] * y);
}
function distanceFromLine(point, line) {
  const [x, y] = difference(point, line.through);
  return length(line.direction[0] * y - line.direction[1] * x);
}
function reflectAcross(point, across) {
  const twice = 2 * distanceFromLine(point, across);
  const x = point[0] + twice * across.direction[1];
  const y = point[1] - twice * across.direction[0];
  return hasDepth(point) ? deepPoint(x, y, point[2]) : flatPoint(x, y);
}
var ROUNDING2 = 1e-12;
function intersect(one, other) {
  const sine = one.direction[0] * other.direction[1] - one.direction[1] * other.direction[0];
  if (Math.abs(sine) < ROUNDING2) {
    const apart2 = Math.abs(distanceFromLine(other.through, one));
    const reach = Math.hypot(...one.through, ...other.through);
    return apart2 <= ROUNDING2 * reach ? { kind: "coincident" } : { kind: "parallel", apart: length(apart2) };
  }
  const [x, y] = difference(other.through, one.through);
  const along = (x * other.direction[1] - y * other.direction[0]) / sine;
  return { kind: "crossing", at: pointOnLine(one, length(along)) };
}

// src/geometry/polylines/intersect-polyline.ts
function intersectPolyline(line, polyline) {
  const legs = legsOf("intersectPolyline", polyline);
  const ends = { first: legs[0], last: legs[legs.length - 1] };
  const hits = [];
  let offset = distanceFromLine(ends.first.from, line);
  let onLineBefore = false;
  for (const leg of legs) {
    const offsetAtEnd = distanceFromLine(leg.to, line);
    if (meets(offset, offsetAtEnd, leg === ends.last) && !(offset === 0 && onLineBefore)) {
      hits.push(placeOnLeg(leg, shareToLine(leg, line, offset), ends.last));
    }
    onLineBefore = offset === 0 && offsetAtEnd === 0;
    offset = offsetAtEnd;
  }
  return hits.length > 0 ? hits : beyondEnds(line, ends);
}
function meets(offset, offsetAtEnd, isLast) {
  if (offset === 0) return true;
  return offsetAtEnd === 0 ? isLast : offset > 0 !== offsetAtEnd > 0;
}
function shareToLine({ from, to }, line, offset) {
  if (offset === 0) return 0;
  const [x, y] = difference(to, from);
  return offset / (line.direction[1] * x - line.direction[0] * y);
}
function beyondEnds(line, { first, last }) {
  const before = shareToLine(first, line, distanceFromLine(first.from, line));
  const after = shareToLine(last, line, distanceFromLine(last.from, line));
  const [nearest] = [
    { leg: first, share: before, beyond: -before * first.size },
    { leg: last, share: after, beyond: (after - 1) * last.size }
  ].filter(({ beyond }) => beyond > 0 && Number.isFinite(beyond)).sort((one, other) => one.beyond - other.beyond);
  return nearest === void 0 ? [] : [placeOnLeg(nearest.leg, nearest.share, last)];
}

// src/geometry/lines/midpoint.ts
function midpoint(one, other) {
  const [x, y] = between(one, other, 0.5);
  return hasDepth(one) && hasDepth(other) ? deepPoint(x, y, (one[2] + other[2]) / 2) : flatPoint(x, y);
}

// src/geometry/fits/labelled-pair.ts
var ROBUST_PAIRS = 7;
function requirePairs(where, pairs) {
  pairs.forEach(({ one, other, weight, spread }, index) => {
    requireFinitePoint(where, `pairs[${index}].one`, one);
    if (other !== void 0) requireFinitePoint(where, `pairs[${index}].other`, other);
    requirePositive(where, `pairs[${index}].weight`, weight);
    requirePositive(where, `pairs[${index}].spread`, spread);
  });
}
function refusePairs(code, where, pairs, need) {
  const points = pairs.map(({ one, other }) => other === void 0 ? [one] : [one, other]);
  refuse(code, where, "pairs", points, need);
}

// src/geometry/fits/bisquare.ts
var BISQUARE_CUT = 4.685;
function bisquare(square) {
  return square < 1 ? (1 - square) * (1 - square) : 0;
}

// src/geometry/fits/mirror-axis.ts
var CONVERGED = 1e-13;
var MOST_STEPS2 = 200;
function mirrorTerm(oneX, oneY, otherX, otherY, paired, weight, spread) {
  const counted = paired ? 2 * weight : weight;
  const limit = BISQUARE_CUT * spread;
  return {
    oneX,
    oneY,
    otherX,
    otherY,
    // A pair's mismatch is the difference of two points, that of a single point twice its distance.
    perLimit: 1 / ((paired ? 2 : 4) * limit * limit),
    weight: counted,
    sumX: counted * (oneX + otherX) / 2,
    sumY: counted * (oneY + otherY) / 2,
    productReal: counted * (oneX * otherX - oneY * otherY),
    productImaginary: counted * (oneX * otherY + oneY * otherX),
    squares: counted * (oneX * oneX + oneY * oneY + otherX * otherX + otherY * otherY) / 2
  };
}
function leastSquaresAxis(terms) {
  return weightedAxis(terms, everyTermCounts);
}
function leastTrimmedAxis(terms) {
  const { weight, sumX, sumY, productReal, productImaginary, squares } = sumsOf(
    terms,
    everyTermCounts
  );
  let least = Number.POSITIVE_INFINITY;
  let first = 0;
  let second = 1;
  for (let i = 0; i < terms.length; i++) {
    const one = terms[i];
    for (let j = i + 1; j < terms.length; j++) {
      const other = terms[j];
      const kept = weight - one.weight - other.weight;
      const x = sumX - one.sumX - other.sumX;
      const y = sumY - one.sumY - other.sumY;
      const pullReal = productReal - one.productReal - other.productReal - (x * x - y * y) / kept;
      const pullImaginary = productImaginary - one.productImaginary - other.productImaginary - 2 * x * y / kept;
      const size = squares - one.squares - other.squares - (x * x + y * y) / kept;
      const left = size - Math.sqrt(pullReal * pullReal + pullImaginary * pullImaginary);
      if (left < least) {
        least = left;
        first = i;
        second = j;
      }
    }
  }
  return weightedAxis(terms, (_, index) => index === first || index === second ? 0 : 1);
}
function bisquareAxis(terms, from) {
  let axis = from;
  for (let step = 0; step < MOST_STEPS2; step++) {
    const last = axis;
    axis = weightedAxis(terms, (term) => bisquareWeight(term, last));
    if (!favoursDirection(axis)) return void 0;
    const moved = Math.abs(axis.x - last.x) + Math.abs(axis.y - last.y);
    const turned = Math.abs(axis.cosine - last.cosine) + Math.abs(axis.sine - last.sine);
    if (turned < CONVERGED && moved * moved * axis.weight < CONVERGED * CONVERGED * axis.size)
      break;
  }
  return axis;
}
function bisquareWeight(term, axis) {
  return bisquare(squaredMismatch(term, axis) * term.perLimit);
}
function favoursDirection(axis) {
  return axis.pull > ROUNDING3 * axis.size && axis.weight > 0;
}
var ROUNDING3 = 1e-9;
function squaredMismatch(term, axis) {
  const oneX = term.oneX - axis.x;
  const oneY = term.oneY - axis.y;
  const otherX = term.otherX - axis.x;
  const otherY = term.otherY - axis.y;
  const x = oneX - (axis.cosine * otherX + axis.sine * otherY);
  const y = oneY - (axis.sine * otherX - axis.cosine * otherY);
  return x * x + y * y;
}
function weightedAxis(terms, shareOf) {
  const { weight, sumX, sumY, productReal, productImaginary, squares } = sumsOf(terms, shareOf);
  const x = sumX / weight;
  const y = sumY / weight;
  const pullReal = productReal - weight * (x * x - y * y);
  const pullImaginary = productImaginary - weight * 2 * x * y;
  const pull = Math.sqrt(pullReal * pullReal + pullImaginary * pullImaginary);
  const size = squares - weight * (x * x + y * y);
  return { x, y, cosine: pullReal / pull, sine: pullImaginary / pull, weight, pull, size };
}
function sumsOf(terms, shareOf) {
  const sums = { weight: 0, sumX: 0, sumY: 0, productReal: 0, productImaginary: 0, squares: 0 };
  for (let index = 0; index < terms.length; index++) {
    const term = terms[index];
    const share = shareOf(term, index);
    sums.weight += share * term.weight;
    sums.sumX += share * term.sumX;
    sums.sumY += share * term.sumY;
    sums.productReal += share * term.productReal;
    sums.productImaginary += share * term.productImaginary;
    sums.squares += share * term.squares;
  }
  return sums;
}
function everyTermCounts() {
  return 1;
}

// src/geometry/fits/mirror-line.ts
function mirrorLineOf(pairs, robustly) {
  const [x, y] = roughCentre(pairs);
  const terms = pairs.map((pair) => termOf(pair, x, y));
  const robust = robustly && pairs.length >= ROBUST_PAIRS;
  const axis = robust ? robustAxis(terms) : leastSquaresAxis(terms);
  if (!favoursDirection(axis)) {
    const need = "points that mirror each other better across one line than across others";
    refusePairs("ill-conditioned", "bestMirrorLine", pairs, need);
  }
  const weights = pairs.map(
    ({ weight }, index) => robust ? weight * bisquareWeight(terms[index], axis) : weight
  );
  const { angleU, throughU } = uncertaintyOf(terms, pairs, weights, axis);
  const line = { through: flatPoint(x + axis.x, y + axis.y), direction: halfAngle(axis) };
  return { line, weights, robust, angleU, throughU };
}
function robustAxis(terms) {
  const axis = bisquareAxis(terms, leastTrimmedAxis(terms));
  if (axis !== void 0) return axis;
  const points = terms.map(({ oneX, oneY, otherX, otherY }) => [oneX, oneY, otherX, otherY]);
  const need = "points that mirror each other to within a few spreads";
  refuse("inconsistent", "bestMirrorLine", "pairs", points, need);
}
function uncertaintyOf(terms, pairs, weights, axis) {
  let turning = 0;
  let shifting = 0;
  pairs.forEach(({ other, spread }, index) => {
    const term = terms[index];
    const effect = (weights[index] * spread) ** 2;
    const one = (term.oneX - axis.x) ** 2 + (term.oneY - axis.y) ** 2;
    const partner = (term.otherX - axis.x) ** 2 + (term.otherY - axis.y) ** 2;
    turning += effect * (other === void 0 ? one : one + partner);
    shifting += effect * (other === void 0 ? 1 : 2);
  });
  return {
    angleU: toDegrees(Math.sqrt(turning) / axis.pull),
    throughU: length(Math.sqrt(shifting) / axis.weight)
  };
}
function halfAngle({ cosine, sine }) {
  const larger = Math.sqrt((1 + Math.abs(cosine)) / 2);
  const smaller = sine / (2 * larger);
  return cosine < 0 ? [smaller, larger] : [larger, smaller];
}
function termOf(pair, x, y) {
  const { one, other = one, weight, spread } = pair;
  return mirrorTerm(
    one[0] - x,
    one[1] - y,
    other[0] - x,
    other[1] - y,
    pair.other !== void 0,
    weight,
    spread
  );
}
function roughCentre(pairs) {
  let x = 0;
  let y = 0;
  for (const { one, other = one } of pairs) {
    x += one[0] + other[0];
    y += one[1] + other[1];
  }
  return [x / (2 * pairs.length), y / (2 * pairs.length)];
}

// src/geometry/lines/plane.ts
function distanceFromPlane(point, plane) {
  return length(dotProduct(spaceDifference(point, plane.through), plane.normal));
}
function footOnPlane(point, plane) {
  const [x, y, z] = spaceAdvance(point, plane.normal, -distanceFromPlane(point, plane));
  return deepPoint(x, y, z);
}

// src/geometry/fits/symmetric-matrix.ts
var MOST_SWEEPS = 50;
function eigenPairs(matrix) {
  const a = [
    [matrix.xx, matrix.xy, matrix.xz],
    [matrix.xy, matrix.yy, matrix.yz],
    [matrix.xz, matrix.yz, matrix.zz]
  ];
  const vectors = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1]
  ];
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep += 1) {
    if (a[0][1] === 0 && a[0][2] === 0 && a[1][2] === 0) break;
    turnPlane(a, vectors, 0, 1, 2);
    turnPlane(a, vectors, 0, 2, 1);
    turnPlane(a, vectors, 1, 2, 0);
  }
  const pairOf = (axis) => ({
    value: a[axis][axis],
    vector: [vectors[0][axis], vectors[1][axis], vectors[2][axis]]
  });
  const pairs = [pairOf(0), pairOf(1), pairOf(2)];
  const [least, middle, greatest] = [...pairs].sort((one, other) => one.value - other.value);
  return [least ?? pairs[0], middle ?? pairs[1], greatest ?? pairs[2]];
}
function turnPlane(a, vectors, one, other, third) {
  const between2 = a[one][other];
  if (between2 === 0) return;
  const spread = (a[other][other] - a[one][one]) / (2 * between2);
  const tangent = (spread < 0 ? -1 : 1) / (Math.abs(spread) + Math.hypot(spread, 1));
  const cosine = 1 / Math.hypot(tangent, 1);
  const sine = tangent * cosine;
  a[one][one] -= tangent * between2;
  a[other][other] += tangent * between2;
  a[one][other] = a[other][one] = 0;
  const toOne = a[third][one];
  const toOther = a[third][other];
  a[third][one] = a[one][third] = cosine * toOne - sine * toOther;
  a[third][other] = a[other][third] = sine * toOne + cosine * toOther;
  for (const row of vectors) {
    const [atOne, atOther] = [row[one], row[other]];
    row[one] = cosine * atOne - sine * atOther;
    row[other] = sine * atOne + cosine * atOther;
  }
}

// src/geometry/fits/robust-plane.ts
var KEPT_SHARE = 0.75;
var MOST_STEPS3 = 200;
var CONVERGED2 = 1e-13;
var ROUNDING4 = 1e-9;
function fitPlane(pairs, shares) {
  let total = 0;
  let [x, y, z] = [0, 0, 0];
  pairs.forEach(({ one, other, weight }, index) => {
    const counted = (other === void 0 ? 0.5 : 1) * weight * shares[index];
    const partner = other ?? one;
    total += 2 * counted;
    x += counted * (one[0] + partner[0]);
    y += counted * (one[1] + partner[1]);
    z += counted * (one[2] + partner[2]);
  });
  const through = [x / total, y / total, z / total];
  const sums = { xx: 0, yy: 0, zz: 0, xy: 0, xz: 0, yz: 0 };
  let size = 0;
  pairs.forEach(({ one, other, weight }, index) => {
    const counted = (other === void 0 ? 0.5 : 1) * weight * shares[index];
    const [aX, aY, aZ] = spaceDifference(one, through);
    const [bX, bY, bZ] = spaceDifference(other ?? one, through);
    sums.xx += counted * 2 * aX * bX;
    sums.yy += counted * 2 * aY * bY;
    sums.zz += counted * 2 * aZ * bZ;
    sums.xy += counted * (aX * bY + aY * bX);
    sums.xz += counted * (aX * bZ + aZ * bX);
    sums.yz += counted * (aY * bZ + aZ * bY);
    size += counted * (aX * aX + aY * aY + aZ * aZ + bX * bX + bY * bY + bZ * bZ);
  });
  const eigen = eigenPairs(sums);
  return { through, normal: eigen[0].vector, eigen, size };
}
function favoursNormal({ eigen: [least, next], size }) {
  return next.value - least.value > ROUNDING4 * size;
}
function robustPlane(pairs) {
  let plane = fitPlane(pairs, sharesKept(pairs, trimmedStart(pairs)));
  for (let step = 0; step < MOST_STEPS3; step += 1) {
    const last = plane;
    plane = fitPlane(pairs, bisquareShares(pairs, last));
    if (!favoursNormal(plane)) {
      const need = "points that mirror each other to within a few spreads";
      refusePairs("inconsistent", "bestMirrorPlane", pairs, need);
    }
    if (stepBetween(last, plane) < CONVERGED2) break;
  }
  return plane;
}
function stepBetween(last, next) {
  const sign = dotProduct(last.normal, next.normal) < 0 ? -1 : 1;
  const turned = Math.hypot(
    ...next.normal.map((part, axis) => part - sign * last.normal[axis])
  );
  const moved = dotProduct(spaceDifference(next.through, last.through), next.normal);
  return turned + Math.abs(moved) / Math.sqrt(next.size);
}
function trimmedStart(pairs) {
  let best = fitPlane(
    pairs,
    pairs.map(() => 1)
  );
  let least = keptSquares(pairs, best);
  for (const { one, other } of pairs) {
    if (other === void 0) continue;
    const apart2 = spaceDifference(other, one);
    const size = Math.hypot(...apart2);
    if (size === 0) continue;
    const plane = {
      through: spaceAdvance(one, apart2, 0.5),
      normal: [apart2[0] / size, apart2[1] / size, apart2[2] / size]
    };
    const squares = keptSquares(pairs, plane);
    if (squares >= least) continue;
    least = squares;
    best = plane;
  }
  return best;
}
function keptSquares(pairs, plane) {
  const squares = new Float64Array(pairs.length);
  pairs.forEach((pair, index) => {
    squares[index] = squaredShare(pair, plane);
  });
  squares.sort();
  let sum = 0;
  for (let rank = 0; rank < KEPT_SHARE * squares.length; rank += 1) sum += squares[rank];
  return sum;
}
function sharesKept(pairs, plane) {
  const squares = pairs.map((pair) => squaredShare(pair, plane));
  const limit = Float64Array.from(squares).sort()[Math.ceil(KEPT_SHARE * squares.length) - 1];
  return squares.map((square) => square <= limit ? 1 : 0);
}
function bisquareShares(pairs, plane) {
  return pairs.map((pair) => bisquare(squaredShare(pair, plane) / BISQUARE_CUT ** 2));
}
function squaredShare({ one, other, spread }, { through, normal }) {
  if (other === void 0) {
    return (dotProduct(spaceDifference(one, through), normal) / spread) ** 2;
  }
  const fromPlane = dotProduct(spaceDifference(other, through), normal);
  const [x, y, z] = spaceDifference(one, spaceAdvance(other, normal, -2 * fromPlane));
  return (x * x + y * y + z * z) / (2 * spread * spread);
}

// src/geometry/fits/mirror-plane.ts
function bestMirrorPlane(pairs, options = {}) {
  requirePairs("bestMirrorPlane", pairs);
  const robust = pairs.length >= ROBUST_PAIRS && options.robust !== false;
  const everything = pairs.map(() => 1);
  const plane = robust ? robustPlane(pairs) : fitPlane(pairs, everything);
  if (!favoursNormal(plane)) {
    const need = "points that mirror each other better across one plane than across others";
    refusePairs("ill-conditioned", "bestMirrorPlane", pairs, need);
  }
  const shares = robust ? bisquareShares(pairs, plane) : everything;
  const [x, y, z] = plane.through;
  return {
    through: deepPoint(x, y, z),
    normal: plane.normal,
    weights: pairs.map(({ weight }, index) => weight * shares[index]),
    robust,
    normalCovariance: covarianceOf(pairs, shares, plane),
    throughU: throughUOf(pairs, shares)
  };
}
function covarianceOf(pairs, shares, { through, normal, eigen }) {
  const [least, ...others] = eigen;
  const across = others.map(({ vector, value }) => ({ vector, rate: 1 / (value - least.value) }));
  const turns = [0, 0, 0];
  pairs.forEach(({ one, other, weight, spread }, index) => {
    const effect = (weight * shares[index] * spread) ** 2;
    for (const partner of other === void 0 ? [one] : [one, other]) {
      const at2 = spaceDifference(partner, through);
      const fromPlane = dotProduct(at2, normal) ** 2;
      const [first2, second2] = across.map(({ vector }) => dotProduct(at2, vector));
      turns[0] += effect * (fromPlane + first2 * first2);
      turns[1] += effect * (fromPlane + second2 * second2);
      turns[2] += effect * first2 * second2;
    }
  });
  const [first, second] = across;
  const entry = (row, column) => turns[0] * first.rate ** 2 * first.vector[row] * first.vector[column] + turns[1] * second.rate ** 2 * second.vector[row] * second.vector[column] + turns[2] * first.rate * second.rate * (first.vector[row] * second.vector[column] + second.vector[row] * first.vector[column]);
  return {
    xx: entry(0, 0),
    yy: entry(1, 1),
    zz: entry(2, 2),
    xy: entry(0, 1),
    xz: entry(0, 2),
    yz: entry(1, 2)
  };
}
function throughUOf(pairs, shares) {
  let [variance, total] = [0, 0];
  pairs.forEach(({ other, weight, spread }, index) => {
    const points = other === void 0 ? 1 : 2;
    const counted = weight * shares[index];
    variance += points * (counted * spread) ** 2;
    total += points * counted;
  });
  return length(Math.sqrt(variance) / total);
}

// src/geometry/fits/robust-fit.ts
var SPREAD_OF_MEDIAN = 1.4826;
var MOST_STEPS4 = 50;
var SETTLED = 1e-9;
function fitRobustly(terms, values, spread) {
  const size = terms[0]?.length ?? 0;
  requireRows(terms, values, size);
  requirePositive("fitRobustly", "spread", spread);
  const basis = orthonormalBasis(columnsOf(terms));
  if (basis === void 0) refuseTerms();
  let weights = values.map(() => 1);
  let fit = fitWeighted(basis, values, weights);
  if (values.length >= size + 2) {
    const worst = mostHarmful(basis, fit.residuals);
    weights = values.map((_, row) => row === worst ? 0 : 1);
    fit = fitWeighted(basis, values, weights);
    const reach = BISQUARE_CUT * Math.max(spread, spreadOf(fit.residuals));
    for (let step = 0, change = 1; step < MOST_STEPS4 && change > SETTLED; step += 1) {
      const next = fit.residuals.map((residual) => bisquare((residual / reach) ** 2));
      change = Math.max(...next.map((weight, row) => Math.abs(weight - at(weights, row))));
      weights = next;
      fit = fitWeighted(basis, values, weights);
    }
  }
  const coefficients = solveTriangle(basis.triangle, fit.factors);
  return { coefficients, residuals: fit.residuals, weights };
}
function fitWeighted({ columns }, values, weights) {
  const scales = weights.map(Math.sqrt);
  const scaled = (entries) => entries.map((entry, row) => entry * at(scales, row));
  const basis = orthonormalBasis(columns.map(scaled));
  if (basis?.triangle.every((row, term) => at(row, term) ** 2 > DEPENDENT) !== true) refuseTerms();
  const factors = closestFactors(basis, scaled(values));
  const residuals = values.slice();
  columns.forEach((column, term) => {
    addTo(residuals, column, -at(factors, term));
  });
  return { factors, residuals };
}
function mostHarmful({ columns }, residuals) {
  const harm = residuals.map((residual, row) => {
    const leverage = columns.reduce((sum, column) => sum + at(column, row) ** 2, 0);
    return residual ** 2 / Math.max(1 - leverage, Number.EPSILON);
  });
  return harm.indexOf(Math.max(...harm));
}
function spreadOf(residuals) {
  const sizes = residuals.map(Math.abs).sort((one, other) => one - other);
  return SPREAD_OF_MEDIAN * at(sizes, Math.floor(sizes.length / 2));
}
function at(entries, index) {
  return entries[index];
}
function requireRows(terms, values, size) {
  const where = "fitRobustly";
  if (values.length < size || size === 0) {
    const need = `at least as many numbers as terms, ${Math.max(size, 1)}`;
    refuse("wrong-count", where, "values", values, need);
  }
  if (terms.length !== values.length || terms.some((row) => row.length !== size)) {
    refuse("wrong-count", where, "terms", terms, `${values.length} rows of ${size} numbers`);
  }
  values.forEach((value, index) => requireFinite(where, `values[${index}]`, value));
  terms.forEach((row, index) => {
    row.forEach((term, column) => requireFinite(where, `terms[${index}][${column}]`, term));
  });
}
function refuseTerms() {
  const need = "terms that differ where the values lie";
  refuse(
    "ill-conditioned",
    "fitRobustly",
    "terms",
    "a sum in which one term repeats the others",
    need
  );
}

// src/landmarks/face/words.ts
var FACE_NOTES = {
  "sides-swapped": "The detector saw a flipped picture: its right and left were exchanged.",
  "irises-swapped": "Each iris lay in the other eye; they were exchanged.",
  "mirroring-undone": "The picture was flipped sideways; points lie in the picture as taken.",
  "scaled-to-pixels": "Coordinates were shares of a picture {width} wide and {height} high; they are pixels now.",
  "point-missing": "{landmark} is not complete: point {points} of the markup is missing.",
  "point-misplaced": "{landmark} is left out: its point does not lie where it should.",
  "stand-in": "{landmark} is only approximated: {instead}.",
  "irises-narrowed": "The source draws irises {factor:2} \xB1 {u:2} times as wide as they are: their edges were moved together.",
  "repeated-points": "{landmark} repeats points, {count} too many: once is enough."
};

// src/landmarks/markups/correct-irises.ts
function correctIrises(face, ringFactor = face.source?.ringFactor ?? { value: 1, u: 0 }) {
  const { value, u } = refusingAs("correctIrises", () => measured(ringFactor.value, ringFactor.u));
  requirePositive("correctIrises", "ringFactor", value);
  const [right2, left] = [withNarrower(face.right, value), withNarrower(face.left, value)];
  const { source, notes = [] } = face;
  const changed = right2 !== face.right || left !== face.left;
  return {
    ...face,
    right: right2,
    left,
    ...source === void 0 ? {} : { source: { ...source, ringFactor: { value: 1, u: u / value } } },
    ...changed ? { notes: [...notes, note(FACE_NOTES, "irises-narrowed", { factor: value, u })] } : {}
  };
}
function withNarrower(side, times) {
  const { limbusMedial, limbusLateral } = side;
  if (times === 1 || limbusMedial === void 0 || limbusLateral === void 0) return side;
  const middle = midpoint(limbusMedial, limbusLateral);
  return {
    ...side,
    limbusMedial: nearer(limbusMedial, middle, times),
    limbusLateral: nearer(limbusLateral, middle, times)
  };
}
function nearer(point, middle, times) {
  const x = middle[0] + (point[0] - middle[0]) / times;
  const y = middle[1] + (point[1] - middle[1]) / times;
  return hasDepth(point) ? deepPoint(x, y, point[2]) : flatPoint(x, y);
}

// src/landmarks/face/face.ts
var BY_HAND = mm(0.26);
function landmarkUncertainty(face, landmark) {
  const uncertainty = face.source?.uncertainty;
  return uncertainty?.landmarks?.[landmark] ?? uncertainty?.default ?? BY_HAND;
}

// src/landmarks/face/conventions.ts
var GUIDES = {
  /**
   * Westmore 1974/75, as reported by Yalçınkaya et al., Eur Arch Otorhinolaryngol,
   * doi 10.1007/s00405-014-3356-0; Alex, Facial Plast Surg 2004;20:193.
   */
  "alare-vertical": {
    mark: "start",
    drawn: "vertical",
    through: ["alare"],
    words: "above the nose wing"
  },
  /** Westmore, as reported there: the one to use where the nose is wide or bent (trade practice, no source). */
  "endocanthion-vertical": {
    mark: "start",
    drawn: "vertical",
    through: ["endocanthion"],
    words: "above the inner eye corner"
  },
  /** Westmore, as reported by Matros et al., Plast Reconstr Surg 2009;124:1296: about 0.75 eye widths from endocanthion. */
  "lateral-limbus-vertical": {
    mark: "arch",
    drawn: "vertical",
    through: ["limbusLateral"],
    words: "above the outer edge of the iris"
  },
  /** Trade practice, no source. Meets a brow about 0.78 eye widths from endocanthion. */
  "alare-through-pupil": {
    mark: "arch",
    drawn: "line",
    through: ["alare", "pupil"],
    words: "on the line from the nose wing through the pupil"
  },
  /**
   * Counted from the landmark named first: 0.978 ± 0.131 eye widths on 100 models, 0.929 ± 0.146 on
   * 105 women (Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239).
   */
  "eye-width-share": {
    mark: "arch",
    drawn: "share",
    through: ["endocanthion", "exocanthion"],
    words: "at a share of the eye\u2019s width"
  },
  /** Sclafani & Jung, Arch Facial Plast Surg 2010;12:123–127, find the arch just medial to it. */
  "exocanthion-vertical": {
    mark: "arch",
    drawn: "vertical",
    through: ["exocanthion"],
    words: "above the outer eye corner"
  },
  /**
   * Trade practice, no source. On most faces it meets the brow beyond the outer corner of the eye, at
   * about 1.10 eye widths: not to be mistaken for the vertical through the same landmark.
   */
  "alare-through-lateral-limbus": {
    mark: "arch",
    drawn: "line",
    through: ["alare", "limbusLateral"],
    words: "on the line from the nose wing through the outer edge of the iris"
  },
  /** Westmore 1974/75, as reported by Yalçınkaya et al. */
  "alare-through-exocanthion": {
    mark: "tail",
    drawn: "line",
    through: ["alare", "exocanthion"],
    words: "on the line from the nose wing through the outer eye corner"
  }
};
var MARKS = { start: "start", arch: "arch", tail: "tail end" };
var START_CONVENTIONS = /* @__PURE__ */ guidesOf("start");
var BROW_ARCHES = {
  natural: "where it grows",
  "brow-length-share": "at a share of the length by ruler"
};
var ARCH_CONVENTIONS = /* @__PURE__ */ (() => [
  ...keysOf(BROW_ARCHES),
  ...guidesOf("arch")
])();
var TAIL_CONVENTIONS = /* @__PURE__ */ guidesOf("tail");
function isGuide(rule2) {
  return rule2 in GUIDES;
}
function conventionWords(rule2) {
  return isGuide(rule2) ? GUIDES[rule2].words : BROW_ARCHES[rule2];
}
function guidesOf(mark) {
  return keysOf(GUIDES).filter((name) => GUIDES[name].mark === mark);
}

// src/landmarks/face/landmarks.ts
var LANDMARKS = {
  side: {
    /** Inner corner of the eye. */
    endocanthion: { level: 0 },
    /** Outer corner of the eye. */
    exocanthion: { level: 0 },
    /** Centre of the pupil, the client looking ahead. */
    pupil: { level: 0 },
    /** Edge of the iris nearest the nose, level with the pupil. */
    limbusMedial: { level: 0 },
    /** Edge of the iris farthest from the nose, level with the pupil. */
    limbusLateral: { level: 0 },
    /** Most lateral point of the nose wing. */
    alare: { level: -40 },
    /** Corner of the mouth. */
    cheilion: { level: -65 }
  },
  lines: {
    /** Margin of the upper lid, from endocanthion to exocanthion. */
    upperLid: { level: 5 },
    /** Margin of the lower lid, from endocanthion to exocanthion. */
    lowerLid: { level: -5 },
    /** The hair of the brow. */
    brow: { level: 20 }
  },
  midline: {
    /** Most prominent point between the brows. */
    glabella: { level: 15 },
    /** Deepest point of the root of the nose. */
    sellion: { level: 0 },
    /** Tip of the nose. */
    pronasale: { level: -35 },
    /** Where the nasal septum meets the upper lip. */
    subnasale: { level: -45 },
    /** Middle of the upper lip's red border. */
    labialeSuperius: { level: -55 },
    /** Middle of the line between the lips. */
    stomion: { level: -65 },
    /** Lowest point of the upper lip: at stomion while the lips are closed. */
    stomionSuperius: { level: -64 },
    /** Highest point of the lower lip: at stomion while the lips are closed. */
    stomionInferius: { level: -66 },
    /** Lowest point of the chin. */
    menton: { level: -110 }
  }
};
var SIDE_LANDMARKS = /* @__PURE__ */ keysOf(LANDMARKS.side);
var MIDLINE_LANDMARKS = /* @__PURE__ */ keysOf(
  LANDMARKS.midline
);
var LANDMARK_NAMES = /* @__PURE__ */ partsOfSide().concat(MIDLINE_LANDMARKS);
function partsOfSide() {
  return keysOf({ ...LANDMARKS.side, ...LANDMARKS.lines });
}

// src/landmarks/markups/index-table.ts
function pairsDownFrom(...runs) {
  return runs.flatMap(
    ([right2, left, count]) => Array.from({ length: count }, (_, step) => ({ right: right2 + step, left: left - step }))
  );
}
function leftOf(right2, pairs) {
  const partners = new Map(pairs.map((pair) => [pair.right, pair.left]));
  return throughPartners(right2, partners);
}
function throughPartners(part, partners) {
  if (typeof part === "number") return partners.get(part);
  if (Array.isArray(part))
    return part.map((one) => throughPartners(one, partners));
  const entries = Object.entries(part).map(([name, one]) => [
    name,
    throughPartners(one, partners)
  ]);
  return Object.fromEntries(entries);
}

// src/landmarks/markups/meshes.ts
var MIDDLE = [
  0,
  1,
  2,
  4,
  5,
  6,
  8,
  9,
  10,
  11,
  12,
  13,
  14,
  15,
  16,
  17,
  18,
  19,
  94,
  151,
  152,
  164,
  168,
  175,
  195,
  197,
  199,
  200
];
var FIRST_LEFT = 248;
function mirrorPairs() {
  return Array.from({ length: FIRST_LEFT }, (_, index) => index).filter((index) => !MIDDLE.includes(index)).map((index, rank) => ({ right: index, left: FIRST_LEFT + rank }));
}
var right = {
  points: { endocanthion: 133, exocanthion: 33, cheilion: 61 },
  upperLid: [133, 173, 157, 158, 159, 160, 161, 246, 33],
  lowerLid: [133, 155, 154, 153, 145, 144, 163, 7, 33],
  browUpper: [107, 66, 105, 63, 70],
  browLower: [55, 65, 52, 53, 46]
};
var MESH_468 = /* @__PURE__ */ meshOf468();
function meshOf468() {
  const pairs = mirrorPairs();
  return {
    right,
    left: leftOf(right, pairs),
    midline: {
      glabella: 9,
      sellion: 168,
      pronasale: 4,
      subnasale: 2,
      labialeSuperius: 0,
      stomion: [13, 14],
      stomionSuperius: 13,
      stomionInferius: 14,
      menton: 152
    },
    alare: {
      "wing-crease": { right: 129, left: 358, instead: "where the nose wing meets the cheek" },
      "wing-back": { right: 102, left: 331, instead: "the back of the nose wing" },
      "wing-side": { right: 48, left: 278, instead: "the side of the nose wing" },
      "wing-lower": { right: 64, left: 294, instead: "the lower side of the nose wing" },
      "wing-base": { right: 98, left: 327, instead: "the base of the nose wing" }
    },
    pairs,
    middle: MIDDLE,
    standIns: [
      { landmark: "subnasale", instead: "mesh point 2, near where septum and lip meet" },
      { landmark: "menton", instead: "mesh point 152, near the lowest point of the chin" },
      { landmark: "brow", instead: "the mesh's brow template, not the hair itself" }
    ],
    uncertainty: { default: mm(1.3) },
    ringFactor: { value: 1, u: 0 },
    depth: "estimated"
  };
}
var MESH_478 = /* @__PURE__ */ withIrises();
function withIrises() {
  return {
    ...MESH_468,
    irises: {
      right: { centre: 468, rim: [469, 470, 471, 472] },
      left: { centre: 473, rim: [474, 475, 476, 477] }
    },
    uncertainty: {
      default: mm(1.3),
      landmarks: { pupil: mm(0.5), limbusMedial: mm(0.5), limbusLateral: mm(0.5) }
    },
    ringFactor: { value: 1.11, u: 0.02 }
  };
}

// src/landmarks/markups/points-68.ts
var POINTS_68 = /* @__PURE__ */ points68();
function points68() {
  const right2 = {
    points: { endocanthion: 39, exocanthion: 36, pupil: [36, 37, 38, 39, 40, 41], cheilion: 48 },
    upperLid: [39, 38, 37, 36],
    lowerLid: [39, 40, 41, 36],
    browUpper: [21, 20, 19, 18, 17]
  };
  const pairs = pairsDownFrom(
    [0, 16, 8],
    [17, 26, 5],
    [31, 35, 2],
    [36, 45, 4],
    [40, 47, 2],
    [48, 54, 3],
    [58, 56, 2],
    [60, 64, 2],
    [67, 65, 1]
  );
  return {
    right: right2,
    left: leftOf(right2, pairs),
    midline: {
      sellion: 27,
      pronasale: 30,
      subnasale: 33,
      labialeSuperius: 51,
      stomion: [62, 66],
      stomionSuperius: 62,
      stomionInferius: 66,
      menton: 8
    },
    alare: {
      "nostril-outer": { right: 31, left: 35, instead: "outer point of the nostril row" },
      "nostril-inner": { right: 32, left: 34, instead: "inner point of the nostril row" }
    },
    pairs,
    middle: [8, 27, 28, 29, 30, 33, 51, 57, 62, 66],
    standIns: [
      { landmark: "pupil", instead: "centroid of the six points of the eye" },
      { landmark: "sellion", instead: "top of the nasal bridge" },
      { landmark: "pronasale", instead: "lower end of the nasal bridge" },
      { landmark: "subnasale", instead: "middle of the nostril row" },
      { landmark: "menton", instead: "middle of the jaw line" },
      { landmark: "brow", instead: "one line of five points, without thickness" }
    ],
    uncertainty: { default: mm(3.7) },
    ringFactor: { value: 1, u: 0 },
    depth: "none"
  };
}

// src/landmarks/markups/points-98.ts
var POINTS_98 = /* @__PURE__ */ points98();
function points98() {
  const right2 = {
    points: { endocanthion: 64, exocanthion: 60, pupil: 96, cheilion: 76 },
    upperLid: [64, 63, 62, 61, 60],
    lowerLid: [64, 65, 66, 67, 60],
    browUpper: [37, 36, 35, 34, 33],
    browLower: [38, 39, 40, 41, 33]
  };
  const pairs = pairsDownFrom(
    [0, 32, 16],
    [33, 46, 5],
    [38, 50, 4],
    [55, 59, 2],
    [60, 72, 5],
    [65, 75, 3],
    [76, 82, 3],
    [86, 84, 2],
    [88, 92, 2],
    [95, 93, 1],
    [96, 97, 1]
  );
  return {
    right: right2,
    left: leftOf(right2, pairs),
    midline: {
      sellion: 51,
      pronasale: 54,
      subnasale: 57,
      labialeSuperius: 79,
      stomion: [90, 94],
      stomionSuperius: 90,
      stomionInferius: 94,
      menton: 16
    },
    alare: {
      "base-outer": { right: 55, left: 59, instead: "outer point of the base of the nose" },
      "base-inner": { right: 56, left: 58, instead: "inner point of the base of the nose" }
    },
    pairs,
    middle: [16, 51, 52, 53, 54, 57, 79, 85, 90, 94],
    standIns: [
      { landmark: "sellion", instead: "top of the nasal bridge" },
      { landmark: "pronasale", instead: "lower end of the nasal bridge" },
      { landmark: "subnasale", instead: "middle of the base of the nose" },
      { landmark: "menton", instead: "middle of the face's contour" }
    ],
    uncertainty: { default: mm(3.7) },
    ringFactor: { value: 1, u: 0 },
    depth: "none"
  };
}

// src/landmarks/markups/tables-by-name.ts
var COCO_FACE = POINTS_68;
var INDEX_TABLES = {
  "mesh-478": MESH_478,
  "mesh-468": MESH_468,
  "points-68": POINTS_68,
  "points-98": POINTS_98,
  "coco-wholebody-face": COCO_FACE
};

// src/landmarks/markups/markups.ts
var MARKUPS = {
  "mesh-478": {
    title: "Face mesh of 478 points, with irises",
    size: 478,
    form: "points",
    alare: ["wing-crease", "wing-back", "wing-side", "wing-lower", "wing-base"]
  },
  "mesh-468": {
    title: "Face mesh of 468 points, without irises",
    size: 468,
    form: "points",
    alare: ["wing-crease", "wing-back", "wing-side", "wing-lower", "wing-base"]
  },
  "points-68": {
    title: "68 points (300-W, iBUG)",
    size: 68,
    form: "points",
    alare: ["nostril-outer", "nostril-inner"]
  },
  "points-98": {
    title: "98 points (WFLW)",
    size: 98,
    form: "points",
    alare: ["base-outer", "base-inner"]
  },
  "coco-wholebody-face": {
    title: "Face part of COCO-WholeBody, keypoints 23\u201390",
    size: 68,
    form: "keypoints",
    alare: ["nostril-outer", "nostril-inner"]
  }
};
var MARKUP_NAMES = /* @__PURE__ */ Object.keys(
  MARKUPS
);
function requireMarkup(where, name) {
  if (Object.hasOwn(MARKUPS, name)) return;
  refuse("out-of-range", where, "name", name, `one of ${MARKUP_NAMES.join(", ")}`);
}

// src/landmarks/markups/iris-points.ts
function irisesOf(points, irises, corners) {
  const exchanged = { right: irises.left, left: irises.right };
  const swapped = misfit(points, exchanged, corners) < misfit(points, irises, corners);
  const ordered = swapped ? exchanged : irises;
  return { irises: eachSide((side) => irisOf(points, ordered[side], corners[side])), swapped };
}
function misfit(points, irises, corners) {
  const { right: right2, left } = eachSide((side) => {
    const place = placeInEye(points[irises[side].centre], corners[side]);
    return place === void 0 ? 0 : Math.abs(place - 0.5);
  });
  return right2 + left;
}
function irisOf(points, { centre, rim }, corners) {
  const pupil = points[centre];
  const place = placeInEye(pupil, corners);
  if (pupil === void 0 || place === void 0 || place < 0 || place > 1) return {};
  const [one, two, three, four] = rim.map((index) => points[index]);
  const across = [endsAlong(one, three, corners), endsAlong(two, four, corners)].filter((ends) => ends !== void 0).sort((first, second) => second.width - first.width)[0];
  return across === void 0 ? { pupil } : { pupil, limbusMedial: across.medial, limbusLateral: across.lateral };
}
function endsAlong(one, other, corners) {
  const from = placeInEye(one, corners);
  const to = placeInEye(other, corners);
  if (one === void 0 || other === void 0 || from === void 0 || to === void 0) {
    return void 0;
  }
  return from < to ? { medial: one, lateral: other, width: to - from } : { medial: other, lateral: one, width: from - to };
}
function placeInEye(point, { endocanthion, exocanthion }) {
  if (point === void 0 || endocanthion === void 0 || exocanthion === void 0) {
    return void 0;
  }
  const eye = lineThrough(endocanthion, exocanthion);
  return distanceAlongLine(point, eye) / distance(endocanthion, exocanthion);
}

// src/landmarks/markups/markup-notes.ts
function notesOnPicture(options) {
  const notes = [];
  if (options.coordinates === "normalised") {
    const { width, height } = options.image;
    notes.push(note(FACE_NOTES, "scaled-to-pixels", { width, height }));
  }
  if (options.mirrored === "frame") {
    notes.push(note(FACE_NOTES, "sides-swapped"));
  }
  if (options.mirrored === "frame" || options.mirrored === "coordinates") {
    notes.push(note(FACE_NOTES, "mirroring-undone"));
  }
  return notes;
}
function landmarkMissing(name, place, points, labels) {
  const indices = typeof place === "number" ? [place] : place;
  const missing = indices.filter((index) => points[index] === void 0).map((index) => labels?.[index] ?? index).join(", ");
  return missing === "" ? note(FACE_NOTES, "point-misplaced", { landmark: name }) : note(FACE_NOTES, "point-missing", { landmark: name, points: missing });
}
function repeatsLeftOut(name, count) {
  return note(FACE_NOTES, "repeated-points", { landmark: name, count });
}
function irisesExchanged() {
  return note(FACE_NOTES, "irises-swapped");
}
function standInNotes({
  right: right2,
  left,
  midline,
  standIns = []
}) {
  const held = new Set([right2, left, midline].flatMap((part) => Object.keys(part)));
  return standIns.filter(({ landmark }) => held.has(landmark)).map(({ landmark, instead }) => note(FACE_NOTES, "stand-in", { landmark, instead }));
}

// src/landmarks/markups/markup-options.ts
var MIRRORINGS = ["no", "frame", "coordinates"];
function requireOptions(where, options, points) {
  requireObject(where, "options", options, 'an object with coordinates: "pixels" or "normalised"');
  const { mirrored = "no", missing = [], uncertainty = {} } = options;
  if (!MIRRORINGS.some((known) => known === mirrored)) {
    const need = MIRRORINGS.map((known) => `"${known}"`).join(" or ");
    refuse("out-of-range", where, "mirrored", mirrored, need);
  }
  const isPoint2 = (index) => Number.isInteger(index) && index >= 0 && index < points;
  if (!Array.isArray(missing) || !missing.every(isPoint2)) {
    const need = `a list of numbers of points, from 0 to ${points - 1}`;
    refuse("out-of-range", where, "missing", missing, need);
  }
  requireObject(where, "uncertainty", uncertainty, "an object with default, landmarks, or both");
  if (uncertainty.default !== void 0) {
    requireUncertainty(where, "uncertainty.default", uncertainty.default);
  }
  const landmarks = LANDMARK_NAMES;
  for (const [name, u] of Object.entries(uncertainty.landmarks ?? {})) {
    const field = `uncertainty.landmarks.${name}`;
    if (!landmarks.includes(name)) {
      refuse("out-of-range", where, field, u, `another name: one of ${landmarks.join(", ")}`);
    }
    requireUncertainty(where, field, u);
  }
}
function imageSize(where, options) {
  const image = options.image;
  if (image === void 0) return void 0;
  requireObject(where, "image", image, "the width and height of the picture");
  requirePositive(where, "image.width", image.width);
  requirePositive(where, "image.height", image.height);
  return image;
}
function requireImageSize(where, image, why) {
  if (image !== void 0) return image;
  const need = `the width and height of the picture: ${why}`;
  refuse("image-size-needed", where, "image", void 0, need);
}

// src/landmarks/markups/markup-points.ts
var SHARES = { from: -0.5, to: 1.5 };
var FARTHEST_SHARE = 4;
var LEAST_DEPTH = 0.05;
function readPoints(where, table, landmarks, options) {
  requireOptions(where, options, landmarks.length);
  const missing = new Set(options.missing);
  const raw = landmarks.map(
    (point, index) => missing.has(index) || isMissing(point) ? void 0 : rawPoint(where, fieldOf(table, index), point)
  );
  const [across, down] = pixelsPerUnit(where, raw, options);
  const flipped = options.mirrored !== void 0 && options.mirrored !== "no";
  const width = flipped ? requireImageSize(where, imageSize(where, options), "a flipped picture is turned back").width : 0;
  const zero = depthZero(raw, table);
  if (zero !== void 0 && across === 1 && table.depth === "estimated") {
    requireDepthUnit(where, raw, table);
  }
  return raw.map((point) => {
    if (point === void 0) return void 0;
    const x = flipped ? width - point.x * across : point.x * across;
    const y = point.y * down;
    return zero === void 0 || point.z === void 0 ? flatPoint(x, y) : deepPoint(x, y, (zero - point.z) * across);
  });
}
function isMissing(point) {
  if (point === null || point === void 0) return true;
  if (typeof point !== "object") return false;
  return "visibility" in point && point.visibility === 0 && point.x === 0 && point.y === 0;
}
function rawPoint(where, field, point) {
  requireObject(where, field, point, "[x, y], [x, y, z], an object with x and y, or null");
  const [x, y, z] = "x" in point ? [point.x, point.y, point.z] : point;
  requireFinite(where, `${field}.x`, x);
  requireFinite(where, `${field}.y`, y);
  if (z !== void 0) requireFinite(where, `${field}.z`, z);
  return { x, y, z };
}
function fieldOf({ labels }, index) {
  return labels === void 0 ? `landmarks[${index}]` : `points.${labels[index] ?? index}`;
}
function pixelsPerUnit(where, raw, options) {
  const image = imageSize(where, options);
  const values = raw.flatMap((point) => point === void 0 ? [] : [point.x, point.y]);
  const low = Math.min(...values);
  const high = Math.max(...values);
  const { coordinates } = options;
  switch (coordinates) {
    case "normalised": {
      if (high > FARTHEST_SHARE || low < -FARTHEST_SHARE) {
        refuseUnit(where, "normalised", `"pixels" for values from ${low} to ${high}`);
      }
      const { width, height } = requireImageSize(where, image, "shares of it are to be pixels");
      return [width, height];
    }
    case "pixels":
      if (values.length > 0 && low >= SHARES.from && high <= SHARES.to) {
        requireImageSize(where, image, "these coordinates are shares of it");
        refuseUnit(where, "pixels", `"normalised" for values from ${low} to ${high}`);
      }
      return [1, 1];
  }
  refuseUnit(where, coordinates, '"pixels" or "normalised"');
}
function refuseUnit(where, value, need) {
  refuse("inconsistent", where, "coordinates", value, need);
}
function depthZero(raw, { right: right2, left }) {
  const one = meanOf(raw, right2.points.endocanthion)?.z;
  const other = meanOf(raw, left.points.endocanthion)?.z;
  return one === void 0 || other === void 0 ? void 0 : (one + other) / 2;
}
function meanOf(raw, place) {
  if (typeof place === "number" || place === void 0)
    return place === void 0 ? place : raw[place];
  const points = place.map((index) => raw[index]).filter((point) => point !== void 0);
  if (points.length < place.length || points.length === 0) return void 0;
  const mean = (of) => points.reduce((sum, point) => sum + of(point), 0) / points.length;
  const deep = points.every(({ z }) => z !== void 0);
  return {
    x: mean(({ x }) => x),
    y: mean(({ y }) => y),
    z: deep ? mean(({ z }) => z ?? 0) : void 0
  };
}
function requireDepthUnit(where, raw, { right: right2, left }) {
  const depths = raw.flatMap((point) => point?.z === void 0 ? [] : [point.z]);
  const depth = Math.max(...depths) - Math.min(...depths);
  const one = meanOf(raw, right2.points.exocanthion);
  const other = meanOf(raw, left.points.exocanthion);
  if (one === void 0 || other === void 0) return;
  if (depth >= LEAST_DEPTH * Math.hypot(one.x - other.x, one.y - other.y)) return;
  const need = "depths that count pixels as x does, or none at all";
  refuse("inconsistent", where, "landmarks[\u2026].z", depth, need);
}

// src/landmarks/face/side-order.ts
function requireSideOrder(where, face, yAxis) {
  const right2 = present([face.right.exocanthion, face.right.endocanthion]);
  const left = present([face.left.endocanthion, face.left.exocanthion]);
  const first = right2[0];
  const last = left[left.length - 1];
  if (first === void 0 || last === void 0) return;
  const eyes = [...right2, ...left];
  const axis = [last[0] - first[0], last[1] - first[1]];
  const along = eyes.map(([x2, y2]) => (x2 - first[0]) * axis[0] + (y2 - first[1]) * axis[1]);
  const inOrder = along.every(
    (place, index) => index === 0 || place > along[index - 1]
  );
  const [x, y] = downwards(face, eyes, yAxis);
  const turn = axis[0] * y - axis[1] * x;
  if (inOrder && (yAxis === "down" ? turn > 0 : turn < 0)) return;
  refuse(
    "sides-swapped",
    where,
    "eye corners from the client's right to the left",
    eyes.map((point) => [point[0], point[1]]),
    yAxis === "down" ? 'x to grow in this order: check right and left, and say mirrored: "frame" or "coordinates" of a flipped picture' : "x to grow in this order: check right and left, and the axes"
  );
}
function downwards(face, eyes, yAxis) {
  const { midline, right: right2, left } = face;
  const below2 = present([
    midline.subnasale,
    midline.labialeSuperius,
    midline.stomion,
    midline.menton,
    ...[right2, left].flatMap((side) => [side.alare, side.cheilion])
  ]);
  if (below2.length === 0) return [0, yAxis === "down" ? 1 : -1];
  const [fromX, fromY] = meanOf2(eyes);
  const [toX, toY] = meanOf2(below2);
  return [toX - fromX, toY - fromY];
}
function present(points) {
  return points.filter((point) => point !== void 0);
}
function meanOf2(points) {
  const sum = (axis) => points.reduce((total, point) => total + point[axis], 0);
  return [sum(0) / points.length, sum(1) / points.length];
}

// src/landmarks/markups/face-from-points.ts
function faceFromPoints(where, name, table, landmarks, options) {
  const points = readPoints(where, table, landmarks, options);
  const notes = [...notesOnPicture(options)];
  const alare = alareOf(where, table, options);
  const tableOf = (side) => options.mirrored === "frame" ? otherSide(side) : side;
  const reading = { points, labels: table.labels, tableOf, notes };
  const irises = readIrises(reading, table);
  const deep = points.some((point) => point !== void 0 && hasDepth(point));
  const face = {
    ...eachSide((side) => ({
      ...readSide(reading, side, table[tableOf(side)], alare?.[tableOf(side)]),
      ...irises[side]
    })),
    midline: readPlaces(reading, "midline", table.midline),
    source: sourceOf(name, table, options, deep),
    standIns: standInsOf(table, alare),
    ...deep ? { symmetricPoints: readRelief(reading, table) } : {},
    notes
  };
  requireSideOrder(where, face, "down");
  return correctIrises({ ...face, notes: [...notes, ...standInNotes(face)] });
}
function readSide(reading, side, table, alare) {
  const places = alare === void 0 ? table.points : { ...table.points, alare };
  const upper = readLine(reading, `${side}.brow.upper`, table.browUpper);
  const lower = readLine(reading, `${side}.brow.lower`, table.browLower);
  const upperLid = readLine(reading, `${side}.upperLid`, table.upperLid);
  const lowerLid = readLine(reading, `${side}.lowerLid`, table.lowerLid);
  return {
    ...readPlaces(reading, side, places),
    ...upperLid === void 0 ? {} : { upperLid },
    ...lowerLid === void 0 ? {} : { lowerLid },
    ...upper === void 0 ? {} : { brow: lower === void 0 ? { upper } : { upper, lower } }
  };
}
function readPlaces({ points, labels, notes }, part, places) {
  const found = {};
  for (const [name, place] of Object.entries(places)) {
    if (place === void 0) continue;
    const point = pointAt(points, place);
    if (point === void 0) notes.push(landmarkMissing(`${part}.${name}`, place, points, labels));
    else found[name] = point;
  }
  return found;
}
function pointAt(points, place) {
  if (place === void 0) return void 0;
  if (typeof place === "number") return points[place];
  return meanPoint(place.map((index) => points[index]));
}
function meanPoint(points) {
  let [x, y, depth, deep] = [0, 0, 0, true];
  for (const point of points) {
    if (point === void 0) return void 0;
    x += point[0];
    y += point[1];
    if (hasDepth(point)) depth += point[2];
    else deep = false;
  }
  const count = points.length;
  return deep ? deepPoint(x / count, y / count, depth / count) : flatPoint(x / count, y / count);
}
function readLine({ points, labels, notes }, name, indices) {
  if (indices === void 0) return void 0;
  const line = indices.map((index) => points[index]);
  const known = line.filter((point) => point !== void 0);
  const complete = line[0] !== void 0 && line[line.length - 1] !== void 0;
  if (known.length < line.length) notes.push(landmarkMissing(name, indices, points, labels));
  const distinct = known.filter((point, index) => {
    const previous = known[index - 1];
    return previous === void 0 || point[0] !== previous[0] || point[1] !== previous[1];
  });
  if (distinct.length < known.length) {
    notes.push(repeatsLeftOut(name, known.length - distinct.length));
  }
  return complete && distinct.length > 1 ? distinct : void 0;
}
function readIrises({ points, labels, tableOf, notes }, table) {
  const { irises: places } = table;
  if (places === void 0) return { right: {}, left: {} };
  const corners = eachSide((side) => {
    const { endocanthion, exocanthion } = table[tableOf(side)].points;
    return {
      endocanthion: pointAt(points, endocanthion),
      exocanthion: pointAt(points, exocanthion)
    };
  });
  const { irises, swapped } = irisesOf(
    points,
    eachSide((side) => places[tableOf(side)]),
    corners
  );
  if (swapped) notes.push(irisesExchanged());
  eachSide((side) => {
    if (irises[side].pupil === void 0) {
      notes.push(landmarkMissing(`${side}.pupil`, [places[tableOf(side)].centre], points, labels));
    }
  });
  return irises;
}
function readRelief({ points, tableOf }, table) {
  return {
    pairs: table.pairs.flatMap((pair) => {
      const right2 = points[pair[tableOf("right")]];
      const left = points[pair[tableOf("left")]];
      return right2 === void 0 || left === void 0 ? [] : [{ right: right2, left }];
    }),
    middle: table.middle.map((index) => points[index]).filter((point) => point !== void 0)
  };
}
function alareOf(where, table, options) {
  const usual = Object.keys(table.alare)[0];
  const name = options.alare ?? usual;
  if (name === "none" || name === void 0) return void 0;
  const alare = table.alare[name];
  if (alare !== void 0 && Object.hasOwn(table.alare, name)) return alare;
  const need = [...Object.keys(table.alare), "none"].map((known) => `"${known}"`).join(" or ");
  refuse("out-of-range", where, "alare", name, need);
}
function sourceOf(name, table, options, deep) {
  const { uncertainty = {}, ringFactor = table.ringFactor } = options;
  const landmarks = { ...table.uncertainty.landmarks, ...uncertainty.landmarks };
  return {
    markup: name,
    uncertainty: { ...table.uncertainty, ...uncertainty, landmarks },
    ringFactor,
    depth: deep ? table.depth : "none"
  };
}
function standInsOf(table, alare) {
  if (alare === void 0) return table.standIns;
  return [{ landmark: "alare", instead: alare.instead }, ...table.standIns];
}

// src/landmarks/markups/from-markup.ts
function fromMarkup(name, landmarks, options) {
  return refusingAs("fromMarkup", () => {
    requireMarkup(HERE, name);
    const points = READERS[MARKUPS[name].form](name, landmarks);
    return faceFromPoints(HERE, name, INDEX_TABLES[name], points, options);
  });
}
var HERE = "fromMarkup";
var READERS = {
  points: pointsInOrder,
  keypoints: (name, keypoints) => pointsOfKeypoints(HERE, keypoints, MARKUPS[name].size)
};
function pointsInOrder(name, landmarks) {
  const { size } = MARKUPS[name];
  const count = landmarks?.length;
  if (count === size && Array.isArray(landmarks)) return landmarks;
  const others = MARKUP_NAMES.filter(
    (other) => MARKUPS[other].form === "points" && MARKUPS[other].size === count
  );
  const hint = others.length === 0 ? "" : `, or the name ${others.join(" or ")}`;
  const need = `${size} points${hint}`;
  refuse("wrong-count", HERE, count === void 0 ? "landmarks" : "landmarks.length", count, need);
}
var WHOLE_BODY = { size: 133, face: 23 };
function pointsOfKeypoints(where, keypoints, size) {
  const count = keypoints?.length;
  const first = count === 3 * WHOLE_BODY.size ? WHOLE_BODY.face : 0;
  if (first === 0 && count !== 3 * size) {
    const field = count === void 0 ? "landmarks" : "landmarks.length";
    const need = `${3 * size} or ${3 * WHOLE_BODY.size} numbers`;
    refuse("wrong-count", where, field, count, need);
  }
  return Array.from({ length: size }, (_, index) => {
    const at2 = 3 * (first + index);
    return {
      x: keypoints[at2],
      y: keypoints[at2 + 1],
      visibility: keypoints[at2 + 2]
    };
  });
}

// src/landmarks/face/map-face.ts
function mapBrow(brow, map) {
  const upper = mapLine(brow.upper, map, "brow");
  return brow.lower === void 0 ? { upper } : { upper, lower: mapLine(brow.lower, map, "brow") };
}
function mapFace(face, map) {
  const { right: right2, left, midline, symmetricPoints, ...rest } = face;
  return {
    ...rest,
    right: mapSide(right2, map),
    left: mapSide(left, map),
    midline: mapNamed(midline, map),
    ...symmetricPoints === void 0 ? {} : { symmetricPoints: mapRelief(symmetricPoints, map) }
  };
}
function mapSide(side, map) {
  const { brow, upperLid, lowerLid, ...points } = side;
  return {
    ...mapNamed(points, map),
    ...upperLid === void 0 ? {} : { upperLid: mapLine(upperLid, map, "upperLid") },
    ...lowerLid === void 0 ? {} : { lowerLid: mapLine(lowerLid, map, "lowerLid") },
    ...brow === void 0 ? {} : { brow: mapBrow(brow, map) }
  };
}
function mapNamed(points, map) {
  const mapped = {};
  for (const name of keysOf(points)) {
    const point = points[name];
    if (point !== void 0) mapped[name] = map(point, name);
  }
  return mapped;
}
function mapLine(line, map, name) {
  return line.map((point) => map(point, name));
}
function mapRelief(symmetricPoints, map) {
  return {
    pairs: symmetricPoints.pairs.map(({ right: right2, left }) => ({ right: map(right2), left: map(left) })),
    middle: symmetricPoints.middle.map((point) => map(point))
  };
}

// src/landmarks/face/measures.ts
var MEASURE_KINDS = {
  length: { tolerance: "position", unit: "mm", decimals: 1, more: "too long", less: "too short" },
  gap: { tolerance: "position", unit: "mm", decimals: 1, more: "too wide", less: "too narrow" },
  distance: {
    tolerance: "position",
    unit: "mm",
    decimals: 1,
    more: "too far out",
    less: "too far in"
  },
  height: { tolerance: "position", unit: "mm", decimals: 1, more: "too high", less: "too low" },
  thickness: {
    tolerance: "thickness",
    unit: "mm",
    decimals: 1,
    more: "too thick",
    less: "too thin"
  },
  share: { tolerance: "frontShare", unit: "", decimals: 2, more: "too much", less: "too little" },
  slope: {
    tolerance: void 0,
    unit: "degrees",
    decimals: 1,
    more: "too far up",
    less: "too far down"
  },
  area: { tolerance: void 0, unit: "mm\xB2", decimals: 0, more: "too large", less: "too small" }
};
var MEASURES = {
  /** Upper start dot – arch dot, by ruler on the skin. */
  front: { words: "front", kind: "length", on: "dots", byHand: true },
  /** Arch dot – tail end, by ruler on the skin. */
  tail: { words: "tail", kind: "length", on: "dots", byHand: true },
  /** Upper start dot – arch dot by tape: along the upper border, on the skin. */
  frontAlong: { words: "front by tape", kind: "length", on: "borders", byHand: true },
  /** Arch dot – tail end by tape: along the upper border, on the skin. */
  tailAlong: { words: "tail by tape", kind: "length", on: "borders", byHand: true },
  /** Upper start dot – arch dot, straight, as a frontal photo shows it. */
  frontOnPhoto: { words: "front on the photo", kind: "length", on: "dots", byHand: false },
  /** Arch dot – tail end, straight, as a frontal photo shows it. */
  tailOnPhoto: { words: "tail on the photo", kind: "length", on: "dots", byHand: false },
  /** Front over front and tail together, by ruler; a share of 0…1. */
  frontShare: { words: "front share", kind: "share", on: "dots", byHand: false },
  /** Midline – upper start dot. */
  startDistance: { words: "start from the midline", kind: "distance", on: "dots", byHand: true },
  /** Midline – upper arch dot. */
  archDistance: { words: "arch from the midline", kind: "distance", on: "dots", byHand: true },
  /** Midline – tail end. */
  tailDistance: { words: "tail end from the midline", kind: "distance", on: "dots", byHand: true },
  /** Level of the inner eye corners – upper start dot; negative below it. */
  startHeight: { words: "height of the start", kind: "height", on: "dots", byHand: true },
  /** Level of the inner eye corners – upper arch dot; negative below it. */
  archHeight: { words: "height of the arch", kind: "height", on: "dots", byHand: true },
  /** Level of the inner eye corners – tail end; negative below it. */
  tailHeight: { words: "height of the tail end", kind: "height", on: "dots", byHand: true },
  /** Upper – lower border at the start, vertically. */
  startThickness: { words: "thickness at the start", kind: "thickness", on: "dots", byHand: true },
  /** Upper – lower border half-way between start and arch, vertically. */
  bodyThickness: { words: "thickness at the body", kind: "thickness", on: "dots", byHand: true },
  /** Upper – lower border at the arch, vertically. */
  archThickness: { words: "thickness at the arch", kind: "thickness", on: "dots", byHand: true },
  /** Outer eye corner – tail end, by ruler on the skin. */
  exocanthionToTailEnd: {
    words: "outer eye corner to tail end",
    kind: "length",
    on: "dots",
    byHand: true
  },
  /** Margin of the upper lid – lower border, vertically at the pupil. */
  lidToBrow: { words: "upper lid to brow", kind: "gap", on: "borders", byHand: true },
  /** Chord from upper start dot to arch dot against the face's horizontal, positive where it rises. */
  frontInclination: { words: "slope of the front", kind: "slope", on: "dots", byHand: false },
  /** Chord from upper start dot to tail end against the face's horizontal, positive where it rises. */
  browInclination: { words: "slope of the brow", kind: "slope", on: "dots", byHand: false },
  /** Area between the borders, in the frontal view. */
  area: { words: "area", kind: "area", on: "borders", byHand: false },
  /** Upper start dot – upper start dot of the other brow, by ruler on the skin. */
  startToStart: { words: "start to start", kind: "gap", on: "brows", byHand: true }
};
var ROWS = MEASURES;
var KINDS = MEASURE_KINDS;
function kindOf(measure) {
  return KINDS[ROWS[measure].kind];
}
var FACE_MEASURE_NAMES = /* @__PURE__ */ Object.keys(
  MEASURES
);
var MEASURE_NAMES = /* @__PURE__ */ FACE_MEASURE_NAMES.filter(isOnSide);
function isOnSide(name) {
  return ROWS[name].on !== "brows";
}

// src/geometry/curves/cubic.ts
function pointOnCubic(cubic, at2) {
  const [from, leaving, arriving, to] = cubic;
  const rest = 1 - at2;
  const [first, second] = [rest * rest * rest, 3 * rest * rest * at2];
  const [third, fourth] = [3 * rest * at2 * at2, at2 * at2 * at2];
  return flatPoint(
    first * from[0] + second * leaving[0] + third * arriving[0] + fourth * to[0],
    first * from[1] + second * leaving[1] + third * arriving[1] + fourth * to[1]
  );
}
function straightCubic(from, to) {
  const between2 = (share) => flatPoint(from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]));
  return [flatPoint(from[0], from[1]), between2(1 / 3), between2(2 / 3), flatPoint(to[0], to[1])];
}
function reversePath(path) {
  return path.map(([from, leaving, arriving, to]) => [to, arriving, leaving, from]).reverse();
}
function mapPath(path, map) {
  return path.map(([from, leaving, arriving, to]) => [
    map(from),
    map(leaving),
    map(arriving),
    map(to)
  ]);
}
function cubicsOf(curve) {
  return curve.slice(1).map((to, index) => {
    const from = curve[index];
    const third = (to.x - from.x) / 3;
    return [
      flatPoint(from.x, from.y),
      flatPoint(from.x + third, from.y + third * from.after),
      flatPoint(to.x - third, to.y - third * to.before),
      flatPoint(to.x, to.y)
    ];
  });
}
function graphOf(path) {
  const [first] = path;
  if (first === void 0) return void 0;
  const isLeftward = first[3][0] < first[0][0];
  const rightward = isLeftward ? reversePath(path) : path;
  const knots = [];
  for (const cubic of rightward) {
    const [from, leaving, arriving, to] = cubic;
    if (to[0] <= from[0] || !goesEvenly(cubic)) return void 0;
    const third = (to[0] - from[0]) / 3;
    const after = (leaving[1] - from[1]) / third;
    const before = (to[1] - arriving[1]) / third;
    const last = knots.pop() ?? { x: from[0], y: from[1], before: after };
    if (last.x !== from[0] || last.y !== from[1]) return void 0;
    knots.push({ ...last, after }, { x: to[0], y: to[1], before, after: before });
  }
  return knots;
}
function goesEvenly([[from], [leaving], [arriving], [to]]) {
  const third = (to - from) / 3;
  const strays = Math.max(Math.abs(leaving - from - third), Math.abs(to - arriving - third));
  return strays <= ROUNDING5 * Math.abs(third);
}
var ROUNDING5 = 1e-9;

// src/geometry/curves/flatten.ts
function flatten(path, error) {
  requirePositive("flatten", "error", error);
  const [first] = path;
  if (first === void 0) return [];
  return [
    first[0],
    ...path.flatMap((cubic) => {
      const count = Math.max(1, Math.ceil(Math.sqrt(6 * bend(cubic) / (8 * error))));
      return Array.from(
        { length: count },
        (_, index) => index === count - 1 ? cubic[3] : pointOnCubic(cubic, (index + 1) / count)
      );
    })
  ];
}
function bend([from, leaving, arriving, to]) {
  const second = (one, middle, other) => Math.hypot(one[0] - 2 * middle[0] + other[0], one[1] - 2 * middle[1] + other[1]);
  return Math.max(second(from, leaving, arriving), second(leaving, arriving, to));
}

// src/geometry/lines/height-over.ts
function heightOver(x, polyline) {
  let before;
  let after;
  let from = polyline[0];
  if (from === void 0) return void 0;
  let first = true;
  for (let index = 1; index < polyline.length; index += 1) {
    const to = polyline[index];
    const [width, rise] = [to[0] - from[0], to[1] - from[1]];
    if (width !== 0 || rise !== 0) {
      const part = width === 0 ? x === from[0] ? 0 : Number.NaN : (x - from[0]) / width;
      const y = from[1] + part * rise;
      if (part >= 0 && part <= 1) return length(y);
      const size = Math.hypot(width, rise);
      if (first && part < 0) before = { y, beyond: -part * size };
      after = part > 1 ? { y, beyond: (part - 1) * size } : void 0;
      first = false;
    }
    from = to;
  }
  const nearer2 = after === void 0 || (before?.beyond ?? after.beyond) < after.beyond ? before : after;
  return nearer2 && length(nearer2.y);
}

// src/geometry/curves/root-between.ts
function rootBetween(low, high, of) {
  let [near, atNear] = [low, of(low)];
  let [far, atFar] = [high, of(high)];
  if (atNear === 0) return near;
  if (atFar === 0) return far;
  if (atNear > 0 === atFar > 0) return void 0;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const next = (near * atFar - far * atNear) / (atFar - atNear);
    const atNext = of(next);
    if (atNext === 0 || Math.abs(next - far) <= CLOSE_ENOUGH * Math.abs(next)) return next;
    if (atNext > 0 === atFar > 0) atNear /= 2;
    else [near, atNear] = [far, atFar];
    [far, atFar] = [next, atNext];
  }
  return far;
}
var MOST_ROUNDS = 100;
var CLOSE_ENOUGH = 4 * Number.EPSILON;

// src/geometry/curves/hermite.ts
function hermiteKnotAt(curve, x) {
  const next = curve.findIndex((knot) => knot.x >= x);
  const to = curve[next];
  if (to?.x === x) return to;
  const from = next < 0 ? curve[curve.length - 1] : curve[next - 1];
  if (from === void 0 || to === void 0) {
    const [end, slope2] = from === void 0 ? [to, to?.before ?? 0] : [from, from.after];
    return { x, y: (end?.y ?? 0) + slope2 * (x - (end?.x ?? 0)), before: slope2, after: slope2 };
  }
  const width = to.x - from.x;
  const part = (x - from.x) / width;
  const chord = (to.y - from.y) / width;
  const second = 3 * chord - 2 * from.after - to.before;
  const third = from.after + to.before - 2 * chord;
  const y = from.y + width * part * (from.after + part * (second + part * third));
  const slope = from.after + part * (2 * second + part * 3 * third);
  return { x, y, before: slope, after: slope };
}
function hermiteAt(curve, x) {
  return hermiteKnotAt(curve, x).y;
}
function hermiteDifference(of, less) {
  const first = less[0]?.x ?? 0;
  const last = less[less.length - 1]?.x ?? 0;
  const places = [...of, ...less].map(({ x }) => x).filter((x) => x >= first && x <= last);
  return [...new Set(places)].sort((one, other) => one - other).map((x) => {
    const [one, other] = [hermiteKnotAt(of, x), hermiteKnotAt(less, x)];
    return {
      x,
      y: one.y - other.y,
      before: one.before - other.before,
      after: one.after - other.after
    };
  });
}

// src/geometry/curves/integrate.ts
var COARSE = /* @__PURE__ */ legendreNodes(8);
var FINE = /* @__PURE__ */ legendreNodes(16);
function legendreNodes(points) {
  return Array.from({ length: points / 2 }, (_, index) => {
    let at2 = Math.cos(Math.PI * (index + 0.75) / (points + 0.5));
    let slope = 1;
    for (let step = 0; step < 5; step += 1) {
      let [before, value] = [1, at2];
      for (let order = 2; order <= points; order += 1) {
        [before, value] = [value, ((2 * order - 1) * at2 * value - (order - 1) * before) / order];
      }
      slope = points * (at2 * value - before) / (at2 * at2 - 1);
      at2 -= value / slope;
    }
    return { at: at2, weight: 2 / ((1 - at2 * at2) * slope * slope) };
  });
}
var AGREEMENT = 1e-12;
var MOST_HALVINGS = 40;
function integrate(from, to, of) {
  const size = rule(COARSE, from, to, (at2) => Math.abs(of(at2)));
  return settled(from, to, of, AGREEMENT * Math.abs(size), MOST_HALVINGS);
}
function settled(from, to, of, enough, halvings) {
  const fine = rule(FINE, from, to, of);
  if (halvings === 0 || !(Math.abs(fine - rule(COARSE, from, to, of)) > enough)) return fine;
  const middle = (from + to) / 2;
  return settled(from, middle, of, enough, halvings - 1) + settled(middle, to, of, enough, halvings - 1);
}
function rule(nodes, from, to, of) {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  let sum = 0;
  for (const { at: at2, weight } of nodes)
    sum += weight * (of(middle - half * at2) + of(middle + half * at2));
  return half * sum;
}

// src/geometry/curves/path-area.ts
function pathArea(path) {
  const origin = path[0]?.[0];
  if (origin === void 0) return 0;
  const cross = (one, other) => (one[0] - origin[0]) * (other[1] - origin[1]) - (other[0] - origin[0]) * (one[1] - origin[1]);
  return path.reduce(
    (sum, [from, leaving, arriving, to]) => sum + (6 * cross(from, leaving) + 3 * cross(from, arriving) + cross(from, to) + 3 * cross(leaving, arriving) + 3 * cross(leaving, to) + 6 * cross(arriving, to)) / 20,
    0
  );
}

// src/geometry/curves/path-length.ts
function pathLength(path, surface) {
  return length(path.reduce((sum, cubic) => sum + cubicLength(cubic, surface), 0));
}
function cubicLength(cubic, surface) {
  const [[x0, y0], [x1, y1], [x2, y2], [x3, y3]] = cubic;
  return integrate(0, 1, (at2) => {
    const rest = 1 - at2;
    const [first, second, third] = [rest * rest, 2 * rest * at2, at2 * at2];
    const x = 3 * (first * (x1 - x0) + second * (x2 - x1) + third * (x3 - x2));
    const y = 3 * (first * (y1 - y0) + second * (y2 - y1) + third * (y3 - y2));
    if (surface === void 0) return Math.sqrt(x * x + y * y);
    const [placeX, placeY] = pointOnCubic(cubic, at2);
    const depth = surface.rise(placeX, placeY, x, y);
    return Math.sqrt(x * x + y * y + depth * depth);
  });
}

// src/geometry/curves/pchip.ts
function pchip(points) {
  requirePoints(points);
  const legs = points.slice(1).map(([x, y], index) => {
    const [fromX, fromY] = points[index];
    return { width: x - fromX, slope: (y - fromY) / (x - fromX) };
  });
  return points.map(([x, y], index) => {
    const slope = slopeBetween(legs, index);
    return { x, y, before: slope, after: slope };
  });
}
function harmonicSlope(before, after) {
  if (before.slope * after.slope <= 0) return 0;
  const weightBefore = before.width + 2 * after.width;
  const weightAfter = 2 * before.width + after.width;
  return (weightBefore + weightAfter) / (weightBefore / before.slope + weightAfter / after.slope);
}
function slopeBetween(legs, index) {
  const before = legs[index - 1];
  const after = legs[index];
  if (before !== void 0 && after !== void 0) return harmonicSlope(before, after);
  return before === void 0 ? endSlope(after, legs[index + 1]) : endSlope(before, legs[index - 2]);
}
function endSlope(near, far) {
  if (far === void 0) return near.slope;
  const slope = ((2 * near.width + far.width) * near.slope - near.width * far.slope) / (near.width + far.width);
  if (slope * near.slope <= 0) return 0;
  const turns = near.slope * far.slope <= 0;
  return turns && Math.abs(slope) > 3 * Math.abs(near.slope) ? 3 * near.slope : slope;
}
function requirePoints(points) {
  const where = "pchip";
  if (points.length < 2) refuse("wrong-count", where, "points", points, "at least 2 points");
  let before = Number.NEGATIVE_INFINITY;
  points.forEach(([x, y], index) => {
    requireFinite(where, `points[${index}][0]`, x);
    requireFinite(where, `points[${index}][1]`, y);
    if (x <= before) {
      const need = `more than ${before}, the x before it`;
      refuse("out-of-range", where, `points[${index}][0]`, x, need);
    }
    before = x;
  });
}

// src/geometry/fits/polynomial-fit.ts
function fitPolynomial(nodes, values, degree) {
  requireValues(nodes, values, degree);
  const { centre, spread } = reachOf(nodes);
  const scaled = nodes.map((node) => (node - centre) / spread);
  const size = degree + 1;
  const powers = zeros(size);
  const covariance = powers.map(() => zeros(size));
  const residuals = values.slice();
  let phi = zeros(size);
  let phiBefore = zeros(size);
  let here = zeros(nodes.length).fill(1);
  let hereBefore = zeros(nodes.length);
  let squareBefore = 1;
  phi[0] = 1;
  for (let order = 0; order < size; order += 1) {
    const square = dot(here, here);
    const coefficient = dot(here, residuals) / square;
    for (let row = 0; row <= order; row += 1) {
      const power = phi[row];
      powers[row] = powers[row] + coefficient * power;
      addTo(covariance[row], phi, power / square);
    }
    addTo(residuals, here, -coefficient);
    const risen = here.map((value, index) => value * scaled[index]);
    const shift = dot(here, risen) / square;
    const ratio = order === 0 ? 0 : square / squareBefore;
    addTo(risen, here, -shift);
    addTo(risen, hereBefore, -ratio);
    const next = [0, ...phi.slice(0, -1)];
    addTo(next, phi, -shift);
    addTo(next, phiBefore, -ratio);
    [phiBefore, hereBefore, squareBefore] = [phi, here, square];
    [phi, here] = [next, risen];
  }
  const fit = { nodes, centre, spread, powers, covariance };
  const free = nodes.length - size;
  return free === 0 ? fit : { ...fit, scatter: Math.sqrt(dot(residuals, residuals) / free) };
}
function polynomialAt(fit, at2, derivative = 0) {
  return derivativeAt(fit.powers, (at2 - fit.centre) / fit.spread, derivative, fit.spread);
}
function polynomialWeights(fit, at2, derivative = 0) {
  const { nodes, centre, spread, covariance } = fit;
  const tau = (at2 - centre) / spread;
  const powers = covariance.map((row) => derivativeAt(row, tau, derivative, spread));
  return nodes.map((node) => derivativeAt(powers, (node - centre) / spread, 0, spread));
}
function derivativeAt(powers, tau, derivative, spread) {
  let [value, slope, half] = [0, 0, 0];
  for (let order = powers.length - 1; order >= 0; order -= 1) {
    half = half * tau + slope;
    slope = slope * tau + value;
    value = value * tau + powers[order];
  }
  if (derivative === 0) return value;
  return derivative === 1 ? slope / spread : 2 * half / (spread * spread);
}
function reachOf(nodes) {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const node of nodes) {
    if (node < low) low = node;
    if (node > high) high = node;
  }
  return { centre: (low + high) / 2, spread: high > low ? (high - low) / 2 : 1 };
}
function requireValues(nodes, values, degree) {
  const where = "fitPolynomial";
  if (!Number.isInteger(degree) || degree < 0) {
    refuse("out-of-range", where, "degree", degree, "a whole number, 0 or more");
  }
  if (values.length !== nodes.length) {
    refuse("wrong-count", where, "values", values, `${nodes.length} numbers, one for each node`);
  }
  if (nodes.length <= degree) {
    const need = `at least ${degree + 1} numbers for degree ${degree}`;
    refuse("wrong-count", where, "nodes", nodes, need);
  }
  for (const node of nodes) requireFinite(where, "nodes", node);
  for (const value of values) requireFinite(where, "values", value);
  if (new Set(nodes).size <= degree) {
    const need = `at least ${degree + 1} different numbers for degree ${degree}`;
    refuse("coincident-points", where, "nodes", nodes, need);
  }
}
function highestPeak(fit, from, to) {
  const steps = STEPS_A_TURN * Math.max(1, fit.powers.length - 1);
  let peak;
  let height = Number.NEGATIVE_INFINITY;
  const slope = (at2) => polynomialAt(fit, at2, 1);
  let left = from;
  let slopeLeft = slope(left);
  for (let step = 1; step <= steps; step += 1) {
    const right2 = from + (to - from) * step / steps;
    const slopeRight = slope(right2);
    if (slopeLeft > 0 && slopeRight <= 0) {
      const place = rootBetween(left, right2, slope);
      const value = polynomialAt(fit, place);
      if (value > height) [peak, height] = [place, value];
    }
    [left, slopeLeft] = [right2, slopeRight];
  }
  return peak;
}
var STEPS_A_TURN = 6;

// src/geometry/curves/surface.ts
function lengthAlongSurface(from, to, { rise }) {
  const stepX = to[0] - from[0];
  const stepY = to[1] - from[1];
  const across = stepX * stepX + stepY * stepY;
  return length(
    integrate(0, 1, (share) => {
      const slope = rise(from[0] + share * stepX, from[1] + share * stepY, stepX, stepY);
      return Math.sqrt(across + slope * slope);
    })
  );
}

// src/landmarks/skin/skin.ts
function depthAt(at2, skin) {
  return length(skinDepth(at2[0], skin));
}
function onSkin(at2, skin) {
  return deepPoint(at2[0], at2[1], skinDepth(at2[0], skin));
}
function skinDepth(x, skin) {
  switch (skin.kind) {
    case "flat":
      return 0;
    case "modelled":
      return -(Math.abs(x) ** 3) / skin.width ** 2;
    case "fitted": {
      const { second, fourth } = x < 0 ? skin.right : skin.left;
      return skin.atMidline + x * (skin.slope - x * (second + x * x * fourth));
    }
  }
}
function skinSlope(x, skin) {
  switch (skin.kind) {
    case "flat":
      return 0;
    case "modelled":
      return -3 * x * Math.abs(x) / skin.width ** 2;
    case "fitted": {
      const { second, fourth } = x < 0 ? skin.right : skin.left;
      return skin.slope - x * (2 * second + 4 * x * x * fourth);
    }
  }
}
function skinUncertainty(skin) {
  return skin.kind === "flat" ? 0 : skin.relativeU;
}
function deepen(skin, factor) {
  switch (skin.kind) {
    case "flat":
      return skin;
    case "modelled":
      return { ...skin, width: length(skin.width / Math.sqrt(factor)) };
    case "fitted":
      return {
        ...skin,
        atMidline: length(factor * skin.atMidline),
        slope: factor * skin.slope,
        right: deeperCurve(skin.right, factor),
        left: deeperCurve(skin.left, factor)
      };
  }
}
function deeperCurve({ second, fourth }, factor) {
  return { second: factor * second, fourth: factor * fourth };
}
function enlargeSkin(skin, times) {
  switch (skin.kind) {
    case "flat":
      return skin;
    case "modelled":
      return { ...skin, width: length(times * skin.width) };
    case "fitted": {
      const curve = ({ second, fourth }) => ({
        second: second / times,
        fourth: fourth / times ** 3
      });
      return {
        ...skin,
        atMidline: length(times * skin.atMidline),
        right: curve(skin.right),
        left: curve(skin.left)
      };
    }
  }
}
var SET_BACK = 0.212;
function atEyeCorner(exocanthion, skin) {
  if (skin.kind === "fitted" && hasDepth(exocanthion)) return exocanthion;
  const [x, y] = exocanthion;
  const setBack = skin.kind === "flat" ? 0 : SET_BACK * Math.abs(x);
  return deepPoint(x, y, skinDepth(x, skin) - setBack);
}

// src/landmarks/skin/skin-length.ts
function lengthBetween(from, to, skin, options = {}) {
  const { path = "straight", on = "skin" } = options;
  if (on === "photo" || skin.kind === "flat") return distance(from, to);
  if (path === "straight") return spaceDistance(onSkin(from, skin), onSkin(to, skin));
  return lengthAlongSkin(from, to, skin);
}
function lengthOf(curve, skin, options = {}) {
  requirePolyline("lengthOf", "curve", curve, 2);
  if (options.on === "photo" || skin.kind === "flat") return polylineLength(curve);
  let sum = 0;
  curve.forEach((to, index) => {
    const from = curve[index - 1];
    if (from !== void 0) sum += lengthAlongSkin(from, to, skin);
  });
  return length(sum);
}
function lengthOfPath(path, skin) {
  return skin.kind === "flat" ? pathLength(path) : pathLength(path, surfaceOf(skin));
}
function lengthAlongSkin(from, to, skin) {
  if (Math.sign(from[0]) * Math.sign(to[0]) < 0) {
    const share = from[0] / (from[0] - to[0]);
    const onMidline = flatPoint(0, from[1] + share * (to[1] - from[1]));
    return length(lengthAlongSkin(from, onMidline, skin) + lengthAlongSkin(onMidline, to, skin));
  }
  return lengthAlongSurface(from, to, surfaceOf(skin));
}
function surfaceOf(skin) {
  return {
    depth: (x) => skinDepth(x, skin),
    rise: (x, _y, stepX) => stepX * skinSlope(x, skin)
  };
}

// src/landmarks/skin/skin-of.ts
var MODEL = { widthShare: 0.987, relativeU: 0.06 };
var ESTIMATED_DEPTH_U = 0.1;
var POINT_SPREAD = 1.5;
var REACH = 50;
var ENOUGH_FOR_SLOPE = 8;
var LEAST_REACH = 20;
function skinOf(face, kind) {
  return refusingAs("skinOf", () => {
    switch (kind) {
      case "flat":
        return { kind: "flat" };
      case "modelled":
        return modelledSkin(face);
      case "fitted":
        return fittedSkin(face);
      case void 0:
        return shallowSide(face) === void 0 ? fittedSkin(face) : modelledSkin(face);
    }
  });
}
function modelledSkin(face) {
  const [right2, left] = [face.right.exocanthion, face.left.exocanthion];
  if (right2 === void 0 || left === void 0) {
    const sides = SIDES.filter((side) => !face[side].exocanthion);
    const field = sides.map((side) => `${side}.exocanthion`).join(", ");
    const need = "a point: skin falls back by the width of the face";
    refuse("missing-landmark", "skinOf", field, void 0, need);
  }
  const width = length(MODEL.widthShare * distance(right2, left));
  return { kind: "modelled", width, relativeU: 2 * MODEL.relativeU };
}
function fittedSkin(face) {
  const shallow = shallowSide(face);
  if (shallow !== void 0) {
    const need = `three points with depth or more, over ${LEAST_REACH} mm of x`;
    refuse("missing-landmark", "skinOf", `${shallow}.brow.upper`, face[shallow].brow?.upper, need);
  }
  const places = deepPlaces(face);
  const sloped = places.length >= ENOUGH_FOR_SLOPE;
  const { coefficients } = fitRobustly(
    places.map(({ x }) => termsAt(x / REACH, sloped)),
    places.map(({ depth }) => depth),
    POINT_SPREAD
  );
  const [atMidline, secondRight, fourthRight, secondLeft, fourthLeft, slope = 0] = coefficients;
  return {
    kind: "fitted",
    atMidline: length(atMidline),
    slope: slope / REACH,
    right: { second: secondRight / REACH ** 2, fourth: fourthRight / REACH ** 4 },
    left: { second: secondLeft / REACH ** 2, fourth: fourthLeft / REACH ** 4 },
    relativeU: face.source?.depth === "estimated" ? ESTIMATED_DEPTH_U : 0
  };
}
function termsAt(x, sloped) {
  const square = -(x * x);
  const fourth = -(square * square);
  const even = x < 0 ? [1, square, fourth, 0, 0] : [1, 0, 0, square, fourth];
  return sloped ? [...even, x] : even;
}
function deepPlaces(face) {
  const { glabella } = face.midline;
  return [
    ...deepBorder(face, "right"),
    ...deepBorder(face, "left"),
    ...glabella !== void 0 && hasDepth(glabella) ? [{ x: glabella[0], depth: glabella[2] }] : []
  ];
}
function deepBorder(face, side) {
  return (face[side].brow?.upper ?? []).filter(hasDepth).map((point) => {
    requireFinitePoint("skinOf", `${side}.brow.upper`, point);
    return { x: point[0], depth: point[2] };
  });
}
function shallowSide(face) {
  return SIDES.find((side) => {
    const places = deepBorder(face, side).map(({ x }) => side === "right" ? -x : x);
    const outwards = places.filter((x) => x > 0);
    return outwards.length < 3 || Math.max(...outwards) - Math.min(...outwards) < LEAST_REACH;
  });
}

// src/calibration/baseline.ts
var LEAST_UNCERTAINTIES = 5;
function requireBaseline(where, field, value, stretch) {
  if (stretch.value > 0 && stretch.value >= LEAST_UNCERTAINTIES * stretch.u) return;
  const need = `a stretch that is more than ${LEAST_UNCERTAINTIES} times as long as its uncertainty`;
  refuse("ill-conditioned", where, field, value, need);
}

// src/calibration/scale-from-iris.ts
var IRIS_WIDTH = { value: mm(11.71), u: mm(0.42) };
function scaleFromIris(face, options = {}) {
  const where = "scaleFromIris";
  return refusingAs(where, () => {
    const width = options.width ?? IRIS_WIDTH;
    const ringFactor = options.ringFactor ?? face.source?.ringFactor ?? { value: 1, u: 0 };
    requirePositive(where, "width", measured(width.value, width.u).value);
    requirePositive(where, "ringFactor", measured(ringFactor.value, ringFactor.u).value);
    const { seen, notes } = seenWidth(where, face, placementOf(face, width, options));
    const factor = width.value * ringFactor.value / seen.value;
    const perspective = browPerspective(where, options.cameraDistance);
    const relative = Math.hypot(
      width.u / width.value,
      ringFactor.u / ringFactor.value,
      seen.u / seen.value,
      perspective.u
    );
    return {
      from: "px",
      to: "mm",
      factor,
      u: factor * relative,
      source: "iris",
      notes: [
        ...widthNotes(width, options.width === void 0),
        ...ringNotes(ringFactor),
        ...notes,
        perspective.note
      ],
      ...options.cameraDistance === void 0 ? {} : { cameraDistance: options.cameraDistance }
    };
  });
}
function seenWidth(where, face, placement) {
  const right2 = irisWidth(where, "right", face.right);
  const left = irisWidth(where, "left", face.left);
  const one = right2 ?? left;
  if (one === void 0) {
    const need = "both edges of the iris on at least one side";
    refuse("missing-landmark", where, "limbusMedial, limbusLateral", void 0, need);
  }
  const mean = right2 === void 0 || left === void 0 ? one : (right2 + left) / 2;
  const u = placement(mean);
  requireBaseline(where, "limbusMedial, limbusLateral", mean, measured(mean, u));
  if (right2 === void 0 || left === void 0) {
    return {
      seen: measured(mean, u),
      notes: [note(IRIS_NOTES, "one-iris", { side: right2 === void 0 ? "left" : "right" })]
    };
  }
  const apart2 = Math.abs(right2 - left);
  return {
    // Where the two disagree by more than their placement explains, their disagreement counts.
    seen: measured(mean, Math.max(u / Math.SQRT2, apart2 / 2)),
    notes: apart2 > COVERAGE * Math.SQRT2 * u ? [note(IRIS_NOTES, "irises-differ", { right: right2, left })] : []
  };
}
var COVERAGE = 2;
function irisWidth(where, side, landmarks) {
  const { limbusMedial, limbusLateral } = landmarks;
  if (limbusMedial === void 0 || limbusLateral === void 0) return void 0;
  requireFinitePoint(where, `${side}.limbusMedial`, limbusMedial);
  requireFinitePoint(where, `${side}.limbusLateral`, limbusLateral);
  return distance(limbusMedial, limbusLateral);
}
function placementOf(face, iris, { placement }) {
  if (placement !== void 0) return () => Math.SQRT2 * measured(0, placement).u;
  const edges = Math.hypot(
    landmarkUncertainty(face, "limbusMedial"),
    landmarkUncertainty(face, "limbusLateral")
  );
  return (width) => edges * width / iris.value;
}
function widthNotes(width, average) {
  if (!average) return [];
  return [
    note(IRIS_NOTES, "population-average", {
      width: width.value,
      u: width.u,
      percent: 100 * width.u / width.value
    })
  ];
}
function ringNotes(ringFactor) {
  if (ringFactor.value === 1) return [];
  return [note(IRIS_NOTES, "ring-factor", { factor: ringFactor.value, u: ringFactor.u })];
}
var NEARER_AT_START = 15;
var FARTHER_AT_TAIL = 10;
var DEPTH_SPREAD = Math.sqrt(
  (NEARER_AT_START ** 3 + FARTHER_AT_TAIL ** 3) / (3 * (NEARER_AT_START + FARTHER_AT_TAIL))
);
var NEAREST_CAMERA = 400;
var FARTHEST_CAMERA = 1500;
var USUAL_CAMERA = Math.sqrt(NEAREST_CAMERA * FARTHEST_CAMERA);
function browPerspective(where, cameraDistance) {
  if (cameraDistance !== void 0) {
    const { value: distance2 } = measured(cameraDistance.value, cameraDistance.u);
    requirePositive(where, "cameraDistance", distance2);
    return { u: 0, note: note(IRIS_NOTES, "perspective-corrected", { distance: distance2 }) };
  }
  return {
    u: DEPTH_SPREAD / USUAL_CAMERA,
    note: note(IRIS_NOTES, "perspective-unknown", {
      distance: NEAREST_CAMERA,
      start: 100 * (1 / (1 - NEARER_AT_START / NEAREST_CAMERA) - 1),
      tail: 100 * (1 - 1 / (1 + FARTHER_AT_TAIL / NEAREST_CAMERA))
    })
  };
}

// src/symmetry/mirroring/shape.ts
function mapShape(shape, map) {
  if (isPoint(shape)) return map(shape);
  if (isPolyline(shape)) return shape.map((point) => map(point));
  if (isFace(shape)) return mapFace(shape, map);
  return isBrow(shape) ? mapBrow(shape, map) : mapDots(shape, map);
}
function isFace(shape) {
  return "right" in shape;
}
function isPoint(shape) {
  return Array.isArray(shape) && typeof shape[0] === "number";
}
function isPolyline(shape) {
  return Array.isArray(shape);
}
function isBrow(shape) {
  return "upper" in shape;
}
function mapDots(dots, map) {
  const mapped = {};
  for (const dot2 of DOT_NAMES) {
    const point = dots[dot2];
    if (point !== void 0) mapped[dot2] = map(point);
  }
  return mapped;
}

// src/symmetry/mirroring/mirror.ts
var FACE_MIDLINE = { through: mm([0, 0]), direction: [0, 1] };
function mirror(of, across) {
  const image = mapShape(of, (point) => reflectAcross(point, across));
  return isFace(image) ? withSidesExchanged(image) : image;
}
function withSidesExchanged(face) {
  const { right: right2, left, symmetricPoints } = face;
  const exchanged = { ...face, right: left, left: right2 };
  if (symmetricPoints === void 0) return exchanged;
  const pairs = symmetricPoints.pairs.map((pair) => ({ right: pair.left, left: pair.right }));
  return { ...exchanged, symmetricPoints: { ...symmetricPoints, pairs } };
}

// src/symmetry/mirroring/side-place.ts
function placeOnSide(point, side) {
  const [x, y] = point;
  return { distance: (side === "left" ? x : -x) + 0, height: y };
}
function pointOnSide({ distance: distance2, height }, side) {
  return flatPoint(side === "left" ? distance2 : 0 - distance2, height);
}

// src/symmetry/mirroring/carry-brow.ts
function carryBrow(leading, options) {
  requireWord("carryBrow", "method", options.method, ["mirror", "measure"]);
  const side = otherSide(leading.side);
  const image = mirror(leading.dots, FACE_MIDLINE);
  if (options.method === "mirror") {
    const brow2 = leading.brow === void 0 ? {} : { brow: mirror(leading.brow, FACE_MIDLINE) };
    return {
      side,
      dots: image,
      ...brow2,
      method: "mirror",
      fromMirror: shiftsBetween(image, image, side)
    };
  }
  const carry = warp("carryBrow", knotsByRuler(leading, options, side), leading.side, side);
  const dots = mapDots(leading.dots, carry);
  const brow = leading.brow === void 0 ? {} : { brow: mapBrow(leading.brow, carry) };
  return { side, dots, ...brow, method: "measure", fromMirror: shiftsBetween(image, dots, side) };
}
function knotsByRuler({ side, dots }, { start, skin }, onto) {
  const { upperStart, upperArch, tailEnd } = dots;
  const front = lengthBetween(upperStart, upperArch, skin);
  const tail = lengthBetween(upperArch, tailEnd, skin);
  const ownStart = placeOnSide(start, onto);
  const archHeight = placeOnSide(upperArch, side).height;
  const arch = placeByRuler("front", ownStart, front, archHeight, onto, skin);
  const tailHeight = placeOnSide(tailEnd, side).height;
  const end = placeByRuler("tail", arch, tail, tailHeight, onto, skin);
  return [
    { from: placeOnSide(upperStart, side), to: ownStart },
    { from: placeOnSide(upperArch, side), to: arch },
    { from: placeOnSide(tailEnd, side), to: end }
  ];
}
function placeByRuler(stretch, from, size, height, side, skin) {
  const excess = (distance3) => lengthBetween(pointOnSide(from, side), pointOnSide({ distance: distance3, height }, side), skin) - size;
  const distance2 = rootBetween(from.distance, from.distance + 2 * size, excess);
  if (distance2 !== void 0) return { distance: distance2, height };
  const need = `at least the ${Math.abs(height - from.height).toFixed(1)} mm by which its ends differ in height`;
  refuse("no-solution", "carryBrow", `${stretch} by ruler`, size, need);
}
function shiftsBetween(from, to, side) {
  const shifts = DOT_NAMES.map((dot2) => {
    const [before, after] = [placeOnSide(from[dot2], side), placeOnSide(to[dot2], side)];
    const outward = length(after.distance - before.distance);
    return [dot2, { outward, up: length(after.height - before.height) }];
  });
  return Object.fromEntries(shifts);
}
function warp(where, knots, from, onto) {
  requireOrder(where, knots);
  return (point) => {
    const { distance: distance2, height } = placeOnSide(point, from);
    const { outward, up } = shiftAt(distance2, knots);
    return pointOnSide({ distance: distance2 + outward, height: height + up }, onto);
  };
}
function shiftAt(distance2, knots) {
  const next = knots.findIndex(({ from }) => from.distance >= distance2);
  const outer = knots[next === -1 ? knots.length - 1 : next];
  const inner = next === -1 ? outer : knots[Math.max(next - 1, 0)];
  const [before, after] = [shiftOf(inner), shiftOf(outer)];
  const width = outer.from.distance - inner.from.distance;
  const share = width === 0 ? 0 : (distance2 - inner.from.distance) / width;
  return {
    outward: before.outward + share * (after.outward - before.outward),
    up: before.up + share * (after.up - before.up)
  };
}
function shiftOf({ from, to }) {
  return { outward: to.distance - from.distance, up: to.height - from.height };
}
function requireOrder(where, knots) {
  for (const end of ["from", "to"]) {
    const distances = knots.map((knot) => knot[end].distance);
    if (distances.every((one, index) => index === 0 || one > distances[index - 1])) {
      continue;
    }
    const need = "start, arch and tail end in order from the midline outwards";
    refuse("out-of-range", where, end === "from" ? "dots" : "result", distances, need);
  }
}

// src/symmetry/comparison/words.ts
var HALF_FACES_NOTES = {
  "half-faces-differ": "The halves of the face differ by {difference:1} mm in width: the head is turned by about {yaw:0}\xB0, or the face is that uneven. The photo cannot tell, and no dot is moved for it."
};
var WAYS = {
  up: "up {by}",
  down: "down {by}",
  outward: "outward {by}",
  inward: "inward {by}"
};

// src/symmetry/comparison/compare-sides.ts
function compareSides(measures, options = {}) {
  return refusingAs("compareSides", () => {
    const { tolerances = WORKING_TOLERANCES, differences: given = {} } = options;
    const differences = MEASURE_NAMES.flatMap((measure) => {
      const right2 = measures.right[measure];
      const left = measures.left[measure];
      if (right2 === void 0 || left === void 0) return [];
      const difference2 = given[measure] ?? independentDifference(left, right2);
      const decided = decideUnder(tolerances, kindOf(measure).tolerance, difference2, options);
      return [{ measure, right: right2, left, difference: difference2, ...decided }];
    });
    return { differences, tolerances };
  });
}
function independentDifference(left, right2) {
  return measured(left.value - right2.value, Math.hypot(left.u, right2.u));
}

// src/symmetry/midline/mirror-pairs.ts
var PAIR_WEIGHTS = [
  ["endocanthion", 1],
  ["exocanthion", 1],
  ["pupil", 1],
  ["cheilion", 1],
  ["alare", 0.25]
];
var MIDDLE_WEIGHTS = [
  ["glabella", 1],
  ["sellion", 1],
  ["labialeSuperius", 1],
  ["stomion", 1],
  ["pronasale", 0.25],
  ["subnasale", 0.25]
];
var LEAST_SPREAD = 0.01;
function namedPairs(face, width) {
  const pairs = [];
  for (const [name, weight] of PAIR_WEIGHTS) {
    const one = face.right[name];
    const other = face.left[name];
    if (one === void 0 || other === void 0) continue;
    pairs.push({ name, one, other, weight, spread: spreadOf2(face, name, width) });
  }
  for (const [name, weight] of MIDDLE_WEIGHTS) {
    const one = face.midline[name];
    if (one === void 0) continue;
    pairs.push({ name, one, weight, spread: spreadOf2(face, name, width) });
  }
  return pairs;
}
function spreadOf2(face, name, width) {
  return length(Math.max(uncertaintyOf2(face, name, width), LEAST_SPREAD * width));
}
function uncertaintyOf2(face, name, width) {
  return length(width * landmarkUncertainty(face, name) / TYPICAL_WIDTH);
}
var TYPICAL_WIDTH = 90;
var WIDTH_PER = [
  ["exocanthion", 1],
  ["pupil", TYPICAL_WIDTH / 63],
  ["endocanthion", 1 / 0.433]
];
function biocularWidth(face) {
  for (const [name, factor] of WIDTH_PER) {
    const right2 = face.right[name];
    const left = face.left[name];
    if (right2 !== void 0 && left !== void 0) return length(factor * distance(right2, left));
  }
  return void 0;
}

// src/symmetry/midline/midline-methods.ts
function lineByMethod(face, method, marked = {}) {
  if (method === "given") return throughGiven(face, marked);
  const eyes = requireEndocanthia(face);
  const width = biocularWidth(face);
  switch (method) {
    case "mirror":
      return mirrorLine(namedPairs(face, width), true);
    case "midpoints":
      return mirrorLine(middlesOf(namedPairs(face, width)), false);
    case "endocanthia":
      return betweenEndocanthia(eyes, spreadOf2(face, "endocanthion", width));
  }
}
function requireEndocanthia({ right: right2, left }) {
  const missing = [
    ...right2.endocanthion === void 0 ? ["right.endocanthion"] : [],
    ...left.endocanthion === void 0 ? ["left.endocanthion"] : []
  ];
  if (right2.endocanthion !== void 0 && left.endocanthion !== void 0) {
    return { right: right2.endocanthion, left: left.endocanthion };
  }
  refuse("missing-landmark", "fitMidline", missing.join(", "), void 0, "a point");
}
function mirrorLine(pairs, robustly) {
  const { line, angleU, throughU, weights, robust } = mirrorLineOf(pairs, robustly);
  return { line, angleU, throughU, names: pairs.map(({ name }) => name), weights, robust };
}
function middlesOf(pairs) {
  return pairs.map(
    ({ name, one, other, spread }) => other === void 0 ? { name, one, weight: 1, spread } : { name, one: midpoint(one, other), weight: 1, spread: length(spread / Math.SQRT2) }
  );
}
function betweenEndocanthia({ right: right2, left }, spread) {
  const across = lineThrough(right2, left);
  const middle = midpoint(right2, left);
  return {
    line: {
      through: flatPoint(middle[0], middle[1]),
      direction: [-across.direction[1], across.direction[0]]
    },
    angleU: toDegrees(Math.SQRT2 * spread / distance(right2, left)),
    throughU: length(spread / Math.SQRT2),
    names: ["endocanthion"],
    weights: [1],
    robust: false
  };
}
function throughGiven(face, { given, givenU }) {
  if (given === void 0) {
    refuse("wrong-count", "fitMidline", "given", given, 'two points for the method "given"');
  }
  const [upper, lower] = given;
  requireFinitePoint("fitMidline", "given[0]", upper);
  requireFinitePoint("fitMidline", "given[1]", lower);
  const apart2 = distance(lower, upper);
  if (apart2 === 0) {
    const need = "a point that differs from `given[0]`";
    refuse("coincident-points", "fitMidline", "given[1]", lower, need);
  }
  const middle = midpoint(upper, lower);
  if (givenU !== void 0) requireUncertainty("fitMidline", "givenU", givenU);
  const u = givenU ?? placedByHand(face, apart2);
  return {
    line: {
      through: flatPoint(middle[0], middle[1]),
      direction: lineThrough(lower, upper).direction
    },
    angleU: toDegrees(Math.SQRT2 * u / apart2),
    throughU: length(u / Math.SQRT2),
    names: [],
    weights: [],
    robust: false
  };
}
function placedByHand(face, apart2) {
  return length(BY_HAND / TYPICAL_WIDTH * (biocularWidth(face) ?? apart2));
}

// src/symmetry/midline/midline.ts
var MIDLINE_METHODS = ["mirror", "endocanthia", "midpoints", "given"];

// src/symmetry/midline/sense-of-face.ts
function senseOf(face) {
  return { upwards: upwardsOf(face), leftwards: leftwardsOf(face) };
}
function leftIsPositive(direction, { leftwards }) {
  return leftwards === void 0 ? direction[1] < 0 : direction[0] * leftwards[1] - direction[1] * leftwards[0] > 0;
}
function tiltOf(direction, sense) {
  const [x, y] = direction;
  return toDegrees(Math.atan2(0 - x, leftIsPositive(direction, sense) ? -y : y));
}
function upwardsOf(face) {
  let count = 0;
  let levels = 0;
  let x = 0;
  let y = 0;
  let levelX = 0;
  let levelY = 0;
  const add = (point, level) => {
    if (point === void 0) return;
    count += 1;
    levels += level;
    x += point[0];
    y += point[1];
    levelX += level * point[0];
    levelY += level * point[1];
  };
  for (const name of SIDE_LANDMARKS) {
    add(face.right[name], LANDMARKS.side[name].level);
    add(face.left[name], LANDMARKS.side[name].level);
  }
  for (const name of MIDLINE_LANDMARKS) {
    add(face.midline[name], LANDMARKS.midline[name].level);
  }
  for (const { brow } of [face.right, face.left]) {
    add(brow?.upper[Math.floor(brow.upper.length / 2)], LANDMARKS.lines.brow.level);
  }
  const vector = [levelX - levels * x / count, levelY - levels * y / count];
  return Math.hypot(...vector) > 0 ? vector : void 0;
}
function leftwardsOf(face) {
  let x = 0;
  let y = 0;
  for (const name of SIDE_LANDMARKS) {
    const right2 = face.right[name];
    const left = face.left[name];
    if (right2 === void 0 || left === void 0) continue;
    x += left[0] - right2[0];
    y += left[1] - right2[1];
  }
  return x === 0 && y === 0 ? void 0 : [x, y];
}

// src/symmetry/midline/placed-line.ts
function placeOnFace(fitted, level, sense) {
  const { upwards } = sense;
  const [x, y] = fitted.direction;
  const direction = upwards !== void 0 && x * upwards[0] + y * upwards[1] < 0 ? [-x, -y] : [x, y];
  const fromCentre = distanceAlongLine(level, { through: fitted.through, direction });
  const line = { through: pointOnLine({ ...fitted, direction }, fromCentre), direction };
  const downwards2 = leftIsPositive(direction, sense);
  const tilt = tiltOf(direction, sense);
  if (!downwards2 && Math.abs(tilt) > 90) refuseMirrored(direction);
  return { line, tilt, leftIsPositive: downwards2, fromCentre };
}
function refuseMirrored(direction) {
  const need = "the client's own right and left; the photo is mirrored, or the sides are swapped";
  refuse("sides-swapped", "fitMidline", "right, left", direction, need);
}
function offsetsFrom(face, offsetOf) {
  const offsets = {};
  for (const name of SIDE_LANDMARKS) {
    const right2 = face.right[name];
    const left = face.left[name];
    if (right2 === void 0 || left === void 0) continue;
    const offset = offsetOf(midpoint(right2, left));
    if (offset !== void 0) offsets[name] = offset;
  }
  for (const name of MIDLINE_LANDMARKS) {
    const point = face.midline[name];
    const offset = point === void 0 ? void 0 : offsetOf(point);
    if (offset !== void 0) offsets[name] = offset;
  }
  return offsets;
}
function leftwardsFrom(point, { line, leftIsPositive: leftIsPositive2 }) {
  const apart2 = distanceFromLine(point, line);
  return leftIsPositive2 ? apart2 : length(0 - apart2);
}
function othersThan(method, chosen2, face, level, sense) {
  const others = [];
  for (const other of MIDLINE_METHODS) {
    const fitted = other === method || other === "given" ? void 0 : lineIfAny(face, other);
    if (fitted === void 0) continue;
    const { line, tilt } = placeOnFace(fitted.line, level, sense);
    others.push({ method: other, tilt, offset: leftwardsFrom(line.through, chosen2) });
  }
  return others;
}
function lineIfAny(face, method) {
  try {
    return lineByMethod(face, method);
  } catch (error) {
    if (error instanceof GeometryError) return void 0;
    throw error;
  }
}

// src/symmetry/midline/fit-midline.ts
function fitMidline(face, options = {}) {
  return refusingAs("fitMidline", () => {
    const method = options.method ?? (options.given === void 0 ? "mirror" : "given");
    requireUse(method, options);
    const sense = senseOf(face);
    requireLandmarksInOrder(face, sense);
    const fitted = lineByMethod(face, method, options);
    if (method !== "given") requireUpwards(face, sense);
    const level = eyeLevel(face) ?? fitted.line.through;
    const placed = placeOnFace(fitted.line, level, sense);
    return {
      line: placed.line,
      tilt: placed.tilt,
      tiltU: fitted.angleU,
      throughU: length(Math.hypot(fitted.throughU, toRadians(fitted.angleU) * placed.fromCentre)),
      method,
      offsets: offsetsFrom(face, (point) => leftwardsFrom(point, placed)),
      weights: weightsByName(fitted),
      trimmed: fitted.names.filter((_, index) => fitted.weights[index] === 0),
      robust: fitted.robust,
      others: othersThan(method, placed, face, level, sense)
    };
  });
}
function weightsByName({ names, weights }) {
  const byName = {};
  names.forEach((name, index) => {
    byName[name] = weights[index];
  });
  return byName;
}
function requireUpwards({ midline }, { upwards }) {
  if (upwards !== void 0) return;
  const need = "a landmark above or below the eyes, to tell the forehead from the chin";
  refuse("missing-landmark", "fitMidline", "midline", midline, need);
}
function eyeLevel({ right: right2, left }) {
  if (right2.endocanthion === void 0 || left.endocanthion === void 0) return void 0;
  return midpoint(right2.endocanthion, left.endocanthion);
}
function requireLandmarksInOrder(face, { leftwards }) {
  for (const name of SIDE_LANDMARKS) {
    const right2 = face.right[name];
    const left = face.left[name];
    requireFiniteLandmark("right", name, right2);
    requireFiniteLandmark("left", name, left);
    if (right2 === void 0 || left === void 0) continue;
    const x = left[0] - right2[0];
    const y = left[1] - right2[1];
    if (x === 0 && y === 0) {
      const need = `a point that differs from right.${name}`;
      refuse("coincident-points", "fitMidline", `left.${name}`, left, need);
    }
    if (leftwards !== void 0 && x * leftwards[0] + y * leftwards[1] < 0) {
      const need = "a point on the client's own right, as the other pairs have it";
      refuse("sides-swapped", "fitMidline", `right.${name}`, right2, need);
    }
  }
  for (const name of MIDLINE_LANDMARKS) {
    requireFiniteLandmark("midline", name, face.midline[name]);
  }
}
function requireFiniteLandmark(part, name, point) {
  if (point === void 0 || Number.isFinite(point[0] + point[1] + (hasDepth(point) ? point[2] : 0)))
    return;
  requireFinitePoint("fitMidline", `${part}.${name}`, point);
}
function requireUse(method, { given }) {
  if (given === void 0 || method === "given") return;
  const need = '"given", or to be left out: points are given';
  refuse("inconsistent", "fitMidline", "method", method, need);
}

// src/symmetry/midline/eye-cant.ts
function eyeCant(face, options = {}) {
  return refusingAs("eyeCant", () => {
    const { line, tiltU } = options.midline ?? fitMidline(face);
    const { between: between2, right: right2, left } = eyesOf(face);
    const apart2 = distance(right2, left);
    if (apart2 === 0) {
      const need = `a point that differs from right.${between2}`;
      refuse("coincident-points", "eyeCant", `left.${between2}`, left, need);
    }
    const up = distanceAlongLine(left, line) - distanceAlongLine(right2, line);
    const across = distanceFromLine(left, line) - distanceFromLine(right2, line);
    const leftwards = leftIsPositive(line.direction, senseOf(face)) ? across : 0 - across;
    const u = uncertaintyOf2(face, between2, biocularWidth(face) ?? apart2);
    const angle = measured(
      toDegrees(Math.atan2(up, leftwards)),
      Math.hypot(toDegrees(Math.SQRT2 * u / apart2), tiltU)
    );
    const { limits } = NOTICED_BY_OTHERS.tolerances.eyeCant;
    return { angle, between: between2, decision: decide(angle, limits, options) };
  });
}
function eyesOf(face) {
  if (hasPupils(face)) {
    return { between: "pupil", right: face.right.pupil, left: face.left.pupil };
  }
  const { right: right2, left } = face;
  return { between: "exocanthion", right: right2.exocanthion, left: left.exocanthion };
}
function hasPupils(face) {
  return face.right.pupil !== void 0 && face.left.pupil !== void 0;
}

// src/symmetry/frame/camera.ts
var BROW_PROMINENCE = measured(mm(15), mm(2));
function prominenceOf(skin) {
  return skin.kind === "modelled" ? BROW_PROMINENCE.value : mm(0);
}
function enlargement(where, nearer2, { distance: distance2 }) {
  const share = 1 - nearer2 / distance2;
  if (share > 0) return 1 / share;
  const need = `more than the depth of every point, ${nearer2}`;
  refuse("out-of-range", where, "scale.cameraDistance", distance2, need);
}

// src/symmetry/frame/turning.ts
function turnForward([x, y, depth], turning) {
  const { cosine, sine } = turnOf(turning);
  return deepPoint(x * cosine - depth * sine, y, x * sine + depth * cosine);
}
function turnAside([x, y, depth], turning) {
  const { cosine, sine } = turnOf(turning);
  return deepPoint(x * cosine + depth * sine, y, depth * cosine - x * sine);
}
function turningShift(at2, turning, { yaw, depth }) {
  const { cosine, sine } = turnOf(turning);
  const { skin, pivot } = turning;
  const ahead = (hasDepth(at2) ? at2[2] : depthAt(at2, skin) + prominenceOf(skin)) - pivot;
  const aheadAsSeen = ahead * cosine - at2[0] * sine;
  const perDepth = aheadAsSeen * sine + ahead * toRadians(turning.yawPerDepth);
  return length(0 - ahead * toRadians(yaw) - perDepth * depth);
}
function turnOf({ yaw }) {
  const angle = toRadians(yaw);
  return { cosine: Math.cos(angle), sine: Math.sin(angle) };
}
var PROFILE_LEAN = 9.03;
function pitchOf({ right: right2, left }) {
  if (right2.exocanthion === void 0 || left.exocanthion === void 0) return void 0;
  if (right2.cheilion === void 0 || left.cheilion === void 0) return void 0;
  const eyes = midpoint(right2.exocanthion, left.exocanthion);
  const mouth = midpoint(right2.cheilion, left.cheilion);
  if (!hasDepth(eyes) || !hasDepth(mouth)) return void 0;
  return toDegrees(Math.atan2(mouth[2] - eyes[2], eyes[1] - mouth[1])) - PROFILE_LEAN;
}

// src/symmetry/frame/sight.ts
function fromPicture(point, sight, landmark) {
  if (isSeenAsIs(point, sight, landmark)) return point;
  if (hasDepth(point)) {
    const aside2 = farAway(point, point[2], sight);
    return sight.turning === void 0 ? aside2 : turnForward(aside2, sight.turning);
  }
  const x = xOnSkin(point, sight);
  const { turning } = sight;
  const lifted = onSkinOf(sight, x, 0);
  const aside = turning === void 0 ? lifted : turnAside(lifted, turning);
  const [, y] = farAway(deepPoint(point[0], point[1], 0), aside[2], sight);
  return flatPoint(x, y);
}
function isSeenAsIs(point, { turning, camera }, landmark) {
  if (turning !== void 0) return false;
  if (camera === void 0) return true;
  return !hasDepth(point) && landmark !== void 0 && landmark !== "brow";
}
var REACH2 = 25;
function xOnSkin([seenX, seenY], sight) {
  const x = rootBetween(
    seenX - REACH2,
    seenX + REACH2,
    (front) => pictured(onSkinOf(sight, front, 0), sight)[0] - seenX
  );
  if (x !== void 0) return x;
  const need = "a place on the skin of the face, or depth of its own";
  refuse("no-solution", "toFace", "point", [seenX, seenY], need);
}
function pictured(front, { turning, camera }) {
  const aside = turning === void 0 ? front : turnAside(front, turning);
  return camera === void 0 ? aside : scaledAbout(camera, aside, enlargement("toPhoto", aside[2], camera));
}
function farAway(seen, depth, { camera }) {
  return camera === void 0 ? seen : scaledAbout(camera, seen, 1 / enlargement("toFace", depth, camera));
}
function scaledAbout({ axis }, [x, y, depth], times) {
  return deepPoint(axis[0] + times * (x - axis[0]), axis[1] + times * (y - axis[1]), depth);
}
function onSkinOf({ turning, camera }, x, y) {
  const skin = turning?.skin ?? camera?.skin;
  const behind = skin === void 0 ? 0 : depthAt(flatPoint(x, y), skin);
  const prominence = camera?.prominence ?? (skin === void 0 ? 0 : prominenceOf(skin));
  return deepPoint(x, y, behind + prominence);
}

// src/symmetry/frame/frame.ts
function upright(point, { midline, scale, origin }) {
  const [upX, upY] = midline.line.direction;
  const right2 = point[0] - origin[0];
  const down = point[1] - origin[1];
  const x = scale.factor * (down * upX - right2 * upY);
  const y = scale.factor * (right2 * upX + down * upY);
  if (!hasDepth(point)) return flatPoint(x, y);
  const zero = hasDepth(origin) ? origin[2] : 0;
  return deepPoint(x, y, scale.factor * (point[2] - zero));
}
function toFace(of, frame) {
  return refusingAs(
    "toFace",
    () => mapShape(
      of,
      (point, landmark) => fromPicture(upright(point, frame), frame, landmark)
    )
  );
}

// src/symmetry/frame/camera-of.ts
function cameraOf(face, frame, eyes, options) {
  const { cameraDistance } = frame.scale;
  if (cameraDistance === void 0) return void 0;
  requirePositive("faceFrame", "scale.cameraDistance", cameraDistance.value);
  const [x, y] = upright(options.cameraAxis ?? eyes, frame);
  const camera = { distance: cameraDistance.value, axis: flatPoint(x, y), prominence: mm(0) };
  const skin = frame.turning?.skin ?? // By their own depth, so that the skin is the face's and not its picture's.
  skinBefore(toFace(face, { ...frame, camera: { ...camera, skin: FLAT } }));
  const prominence = options.prominence ?? prominenceOf(skin);
  return { ...camera, skin, prominence: skin.kind === "fitted" ? mm(0) : prominence };
}
var FLAT = { kind: "flat" };
function skinBefore(face) {
  try {
    return skinOf(face);
  } catch (error) {
    if (error instanceof GeometryError && error.code === "missing-landmark") return FLAT;
    throw error;
  }
}
function fromAfar(where, face, scale, eyes, { cameraAxis = eyes }) {
  const { cameraDistance } = scale;
  if (cameraDistance === void 0) return face;
  const distance2 = cameraDistance.value;
  requirePositive(where, "scale.cameraDistance", distance2);
  const [axisX, axisY] = cameraAxis;
  const zero = hasDepth(eyes) ? eyes[2] : 0;
  return mapFace(face, (point) => {
    if (!hasDepth(point)) return point;
    const [x, y, depth] = point;
    const share = 1 / enlargement(where, scale.factor * (depth - zero), { distance: distance2 });
    return deepPoint(axisX + share * (x - axisX), axisY + share * (y - axisY), depth);
  });
}

// src/symmetry/frame/face-frame.ts
function faceFrame(face, scale, options = {}) {
  return refusingAs("faceFrame", () => {
    requirePositive("faceFrame", "scale.factor", scale.factor);
    const between2 = middleOfEyes(face);
    const midline = options.midline ?? fitMidline(withoutPerspective(face, scale, between2, options));
    requireUnmirrored("faceFrame", face, midline);
    const [x, y] = midline.line.through;
    const eyes = between2 ?? midline.line.through;
    const origin = hasDepth(eyes) ? deepPoint(x, y, eyes[2]) : midline.line.through;
    const frame = { midline, scale, origin };
    const camera = cameraOf(face, frame, eyes, options);
    return camera === void 0 ? frame : { ...frame, camera };
  });
}
function withoutPerspective(face, scale, eyes, options) {
  return eyes === void 0 ? face : fromAfar("faceFrame", face, scale, eyes, options);
}
function middleOfEyes({ right: right2, left }) {
  return right2.endocanthion === void 0 || left.endocanthion === void 0 ? void 0 : midpoint(right2.endocanthion, left.endocanthion);
}
function requireUnmirrored(where, face, { line: { direction } }) {
  if (leftIsPositive(direction, senseOf(face))) return;
  const need = "an unmirrored photo, y down, with the client's own right and left";
  refuse("sides-swapped", where, "face", [face.right.endocanthion, face.left.endocanthion], need);
}

// src/symmetry/frame/fit-midsagittal-plane.ts
var LEAST_POINTS = 30;
function fitMidsagittalPlane(face) {
  return refusingAs("fitMidsagittalPlane", () => {
    const pairs = mirrorPairs2(face);
    const plane = bestMirrorPlane(pairs);
    const sense = senseOf(face);
    const { leftwards, upwards } = sense;
    if (leftwards === void 0 || upwards === void 0) {
      const eyes = [face.right.endocanthion, face.left.endocanthion];
      const need = "a pair of landmarks, and one above or below the eyes";
      refuse("missing-landmark", "fitMidsagittalPlane", "face", eyes, need);
    }
    const [x, y, z] = plane.normal;
    const sign = x * leftwards[0] + y * leftwards[1] < 0 ? -1 : 1;
    const normal = [sign * x, sign * y, sign * z];
    const across = Math.hypot(x, y);
    const left = [normal[0] / across, normal[1] / across];
    const up = left[1] * upwards[0] - left[0] * upwards[1] > 0 ? [left[1], -left[0]] : [-left[1], left[0]];
    const shared = Math.sqrt(Math.max(1, countPoints(pairs) / LEAST_POINTS));
    const turning = [normal[2] * left[0], normal[2] * left[1], -across];
    const tilting = [up[0], up[1], 0];
    const tiltU = shared * toDegrees(spreadAlong(plane.normalCovariance, tilting)) / across;
    return {
      through: plane.through,
      normal,
      yaw: toDegrees(Math.atan2(-normal[2], across)),
      tilt: tiltOf(up, sense),
      yawU: shared * toDegrees(spreadAlong(plane.normalCovariance, turning)),
      tiltU: Math.hypot(tiltU, angleToPairs(pairs, plane.weights, left)),
      throughU: length(shared * plane.throughU),
      points: countPoints(pairs),
      trimmed: countPoints(pairs.filter((_, index) => plane.weights[index] === 0))
    };
  });
}
function mirrorPairs2(face) {
  const width = biocularWidth(face);
  if (face.symmetricPoints === void 0 || width === void 0) {
    const field = width === void 0 ? "right.endocanthion, left.endocanthion" : "symmetricPoints";
    const need = width === void 0 ? "a point each" : "points with depth and their mirror partners";
    refuse("missing-landmark", "fitMidsagittalPlane", field, void 0, need);
  }
  const spread = reliefSpread(face, width);
  const pairs = pairsWithDepth(face.symmetricPoints, spread);
  if (countPoints(pairs) < LEAST_POINTS) {
    const field = "symmetricPoints";
    const need = `at least ${LEAST_POINTS}`;
    refuse(
      "wrong-count",
      "fitMidsagittalPlane",
      field,
      `${countPoints(pairs)} points with depth`,
      need
    );
  }
  return pairs;
}
function pairsWithDepth({ pairs, middle }, spread) {
  const deep = [];
  for (const { right: right2, left } of pairs) {
    if (hasDepth(right2) && hasDepth(left)) {
      deep.push({ one: right2, other: left, weight: 1, spread });
    }
  }
  for (const point of middle) {
    if (hasDepth(point)) deep.push({ one: point, weight: 1, spread });
  }
  return deep;
}
function reliefSpread(face, width) {
  const share = (face.source?.uncertainty.default ?? 0) / TYPICAL_WIDTH;
  return length(width * Math.max(share, LEAST_SPREAD));
}
function angleToPairs(pairs, weights, [leftX, leftY]) {
  let [along, aside] = [0, 0];
  pairs.forEach(({ one, other = one }, index) => {
    const weight = weights[index];
    const [x, y] = [other[0] - one[0], other[1] - one[1]];
    along += weight * (x * leftX + y * leftY);
    aside += weight * (y * leftX - x * leftY);
  });
  return toDegrees(Math.atan(aside / along));
}
function countPoints(pairs) {
  return pairs.reduce((sum, { other }) => sum + (other === void 0 ? 1 : 2), 0);
}
function spreadAlong(covariance, [x, y, z]) {
  const { xx, yy, zz, xy, xz, yz } = covariance;
  return Math.sqrt(
    xx * x * x + yy * y * y + zz * z * z + 2 * (xy * x * y + xz * x * z + yz * y * z)
  );
}

// src/symmetry/comparison/half-faces.ts
var AHEAD = [
  ["glabella", 0.249],
  ["sellion", 0.233]
];
function halfFaces(face) {
  const middles = AHEAD.flatMap(([name, ahead2]) => {
    const point = face.midline[name];
    return point === void 0 ? [] : [{ name, ahead: ahead2, x: point[0] }];
  });
  if (middles.length === 0) refuseWithoutNose();
  const meanOf4 = (read) => middles.reduce((sum, one) => sum + read(one), 0) / middles.length;
  const middle = meanOf4(({ x }) => x);
  const middleU = Math.hypot(...middles.map(({ name }) => landmarkUncertainty(face, name))) / middles.length;
  const cornerU = landmarkUncertainty(face, "exocanthion");
  const widthOf2 = (corner) => measured(length(Math.abs(corner[0] - middle)), length(Math.hypot(cornerU, middleU)));
  const right2 = widthOf2(face.right.exocanthion);
  const left = widthOf2(face.left.exocanthion);
  const difference2 = measured(
    length(left.value - right2.value),
    length(Math.hypot(Math.SQRT2 * cornerU, 2 * middleU))
  );
  const ahead = meanOf4((one) => one.ahead) * (right2.value + left.value);
  const tangent = (right2.value - left.value) / (2 * ahead);
  const slope = 1 / (2 * ahead * (1 + tangent ** 2));
  const yaw = measured(toDegrees(Math.atan(tangent)), toDegrees(slope * difference2.u));
  const about2 = { difference: Math.abs(difference2.value), yaw: Math.abs(yaw.value) };
  return {
    right: right2,
    left,
    difference: difference2,
    yaw,
    ...Math.abs(difference2.value) > 2 * difference2.u ? { note: note(HALF_FACES_NOTES, "half-faces-differ", about2) } : {}
  };
}
function refuseWithoutNose() {
  const field = AHEAD.map(([name]) => `midline.${name}`).join(", ");
  refuse("missing-landmark", "halfFaces", field, void 0, "one of the two");
}

// src/symmetry/midline/nose-deviation.ts
function noseDeviation(face, options = {}) {
  return refusingAs("noseDeviation", () => {
    const { line, tiltU } = options.midline ?? fitMidline(face);
    const { sellion, subnasale } = face.midline;
    const size = distance(sellion, subnasale);
    if (size === 0) {
      const need = "a point that differs from midline.sellion";
      refuse("coincident-points", "noseDeviation", "midline.subnasale", subnasale, need);
    }
    const down = distanceAlongLine(sellion, line) - distanceAlongLine(subnasale, line);
    const across = distanceFromLine(subnasale, line) - distanceFromLine(sellion, line);
    const leftwards = leftIsPositive(line.direction, senseOf(face)) ? across : 0 - across;
    const angle = measured(
      toDegrees(Math.atan2(leftwards, down)),
      Math.hypot(noseU(face, size), tiltU)
    );
    const decision = decide(angle, NOTICED_BY_OTHERS.tolerances.noseDeviation.limits, options);
    return { angle, decision, bent: decision.outcome === "outside" };
  });
}
function noseU(face, size) {
  const width = biocularWidth(face) ?? size;
  const ends = ["sellion", "subnasale"].map((name) => uncertaintyOf2(face, name, width));
  return toDegrees(Math.hypot(...ends) / size);
}

// src/symmetry/frame/turn-to-front.ts
var MOST_YAW = 10;
function turnToFront(face, scaleOrOptions = {}, options) {
  return refusingAs(
    "turnToFront",
    () => "factor" in scaleOrOptions ? turnPhoto(face, scaleOrOptions, options) : turnScan(face, scaleOrOptions)
  );
}
function turnPhoto(photo, scale, options = {}) {
  requirePositive("turnToFront", "scale.factor", scale.factor);
  const eyes = middleOfEyes2(photo);
  const seen = fromAfar("turnToFront", photo, scale, eyes, options);
  const plane = planeWithinReach(seen, options);
  const origin = footOnPlane(middleOfEyes2(seen), plane);
  const frame = { midline: edgeOn(plane, origin, seen), scale, origin };
  requireUnmirrored("turnToFront", seen, frame.midline);
  const turning = turningOf(plane, seen, (point) => toFace(point, frame));
  const camera = cameraOf(photo, { ...frame, turning }, eyes, options);
  return camera === void 0 ? { ...frame, turning } : { ...frame, turning, camera };
}
function turnScan(scan, options) {
  const plane = planeWithinReach(scan, options);
  const origin = footOnPlane(middleOfEyes2(scan), plane);
  const [leftX, leftY] = leftwardsOf2(plane);
  const upright2 = (point) => {
    const [x, y] = [point[0] - origin[0], point[1] - origin[1]];
    const [left, up] = [x * leftX + y * leftY, y * leftX - x * leftY];
    return hasDepth(point) ? deepPoint(left, up, point[2] - origin[2]) : flatPoint(left, up);
  };
  const turning = turningOf(plane, scan, upright2);
  const face = mapFace(scan, (point) => fromPicture(upright2(point), { turning }));
  return { face, turning, tilt: plane.tilt };
}
function planeWithinReach(face, { mostYaw = MOST_YAW } = {}) {
  requirePositive("turnToFront", "mostYaw", mostYaw);
  const plane = fitMidsagittalPlane(face);
  if (Math.abs(plane.yaw) <= mostYaw) return plane;
  const need = `at most ${mostYaw}\xB0 to either side; have the client look into the camera`;
  refuse("out-of-range", "turnToFront", "yaw", plane.yaw, need);
}
function middleOfEyes2({ right: right2, left }) {
  const { endocanthion: one } = right2;
  const { endocanthion: other } = left;
  const middle = one === void 0 || other === void 0 ? void 0 : midpoint(one, other);
  if (middle !== void 0 && hasDepth(middle)) return middle;
  const need = "both inner eye corners, with depth";
  refuse("missing-landmark", "turnToFront", "endocanthion", [one, other], need);
}
function leftwardsOf2({
  normal: [x, y]
}) {
  const across = Math.hypot(x, y);
  return [x / across, y / across];
}
function edgeOn(plane, origin, photo) {
  const [leftX, leftY] = leftwardsOf2(plane);
  const through = flatPoint(origin[0], origin[1]);
  const line = { through, direction: [leftY, 0 - leftX] };
  const { tilt, tiltU } = plane;
  const toFoot = Math.hypot(plane.through[0] - origin[0], plane.through[1] - origin[1]);
  const throughU = length(Math.hypot(plane.throughU, toRadians(tiltU) * toFoot));
  const placed = { line, tilt, leftIsPositive: true, fromCentre: length(0) };
  return {
    line,
    tilt,
    tiltU,
    throughU,
    method: "plane",
    offsets: offsetsFrom(
      photo,
      (point) => hasDepth(point) ? distanceFromPlane(point, plane) : void 0
    ),
    weights: {},
    trimmed: [],
    robust: true,
    others: othersThan("plane", placed, photo, through, senseOf(photo))
  };
}
var UNDERSTATED_YAW = 0.4;
function turningOf(plane, face, upright2) {
  const { yaw } = plane;
  const understated = face.source?.depth === "estimated" ? UNDERSTATED_YAW * Math.abs(yaw) : 0;
  const flat = {
    yaw,
    yawU: Math.hypot(plane.yawU, understated),
    yawPerDepth: yawSlope(face),
    depthU: 0,
    pivot: mm(0),
    skin: { kind: "flat" }
  };
  const forward = (point) => fromPicture(upright2(point), { turning: flat });
  const front = mapFace(face, forward);
  const pivot = forward(plane.through);
  const skin = skinOf(front);
  const pitch = pitchOf(front);
  return {
    ...flat,
    depthU: skinUncertainty(skin),
    pivot: length(hasDepth(pivot) ? pivot[2] : 0),
    skin,
    ...pitch === void 0 ? {} : { pitch }
  };
}
var DEPTH_STEP = 0.05;
function yawSlope(face) {
  const yawAt = (depthFactor) => fitMidsagittalPlane(mapFace(face, (point) => withDepthTimes(depthFactor, point))).yaw;
  return (yawAt(1 + DEPTH_STEP) - yawAt(1 - DEPTH_STEP)) / (2 * DEPTH_STEP);
}
function withDepthTimes(factor, point) {
  return hasDepth(point) ? deepPoint(point[0], point[1], factor * point[2]) : point;
}

// src/symmetry/midline/space-shift.ts
function spaceOf(face, method) {
  const { line } = lineByMethod(face, method);
  const eyes = midpoint(face.right.endocanthion, face.left.endocanthion);
  const [x, y] = pointOnLine(line, distanceAlongLine(eyes, line));
  const [aside, up] = line.direction;
  return { x, y, lean: up < 0 ? Math.atan2(-aside, -up) : Math.atan2(aside, up) };
}
function intoSpace({ x, y, lean }) {
  const [cosine, sine] = [Math.cos(lean), Math.sin(lean)];
  return (point) => {
    const [right2, up] = [point[0] - x, point[1] - y];
    const across = right2 * cosine - up * sine;
    const along = right2 * sine + up * cosine;
    return hasDepth(point) ? deepPoint(across, along, point[2]) : flatPoint(across, along);
  };
}

// src/proportions/front-share.ts
function frontShare(front, tail) {
  const where = "frontShare";
  requireFinite(where, "front", front);
  requireFinite(where, "tail", tail);
  if (front < 0 || tail < 0 || front + tail === 0) {
    const [field, value] = front < 0 ? ["front", front] : ["tail", tail];
    refuse("out-of-range", where, field, value, "two lengths of 0 or more that are not both 0");
  }
  return front / (front + tail);
}

// src/proportions/arch-at-share.ts
function archAtShare(border, start, tailEnd, skin, share) {
  return refusingAs("archAtShare", () => {
    requireQuestion(border, share);
    const excessAt = (at2) => frontShare(lengthBetween(start, at2, skin), lengthBetween(at2, tailEnd, skin)) - share;
    let way = 0;
    let from = border[0];
    let excess = excessAt(from);
    for (const to of border.slice(1)) {
      const size = distance(from, to);
      const excessAtEnd = excessAt(to);
      if (excess <= 0 && excessAtEnd >= 0 && size > 0) {
        const [begin, end] = [from, to];
        const placeAt = (part2) => flatPoint(begin[0] + part2 * (end[0] - begin[0]), begin[1] + part2 * (end[1] - begin[1]));
        const part = rootBetween(0, 1, (at2) => excessAt(placeAt(at2))) ?? 0;
        const [x, y] = placeAt(part);
        return { at: flatPoint(x, y), along: length(way + part * size), extended: false };
      }
      way += size;
      [from, excess] = [to, excessAtEnd];
    }
    const need = `a border on which some place gives the front ${shownValue(share, 4)} of the length`;
    refuse("no-solution", "archAtShare", "border", border, need);
  });
}
function requireQuestion(border, share) {
  const where = "archAtShare";
  requirePolyline(where, "border", border, 2);
  requireFinite(where, "share", share);
  if (share <= 0 || share >= 1) {
    refuse("out-of-range", where, "share", share, "a share between 0 and 1");
  }
}

// src/proportions/outline-shape.ts
var STEEPEST = 3;
var SHAPES = {
  angularity: 1,
  startSlope: STEEPEST,
  tailSlope: STEEPEST,
  frontRoundness: 1
};
function requireShape(where, given, shape) {
  for (const name of keysOf(SHAPES)) {
    requireWithin(where, `${given}.${name}`, shape[name] ?? 0, 0, SHAPES[name]);
  }
}

// src/proportions/upper-border.ts
function upperBorder(where, dots, shape) {
  const { angularity = ANGULARITY } = shape;
  requireShape(where, "options", shape);
  requireOutwards(where, dots, ["upperStart", "upperArch", "tailEnd"]);
  const [start, arch, tailEnd] = pchip(
    [dots.upperStart, dots.upperArch, dots.tailEnd].map(([x, y]) => [outwardsOf(dots) * x, y])
  );
  const front = (arch.y - start.y) / (arch.x - start.x);
  const tail = (tailEnd.y - arch.y) / (tailEnd.x - arch.x);
  const before = arch.before + angularity * (front - arch.before);
  const after = arch.after + angularity * (tail - arch.after);
  const startSlope = endSlope2(front, before, shape.startSlope);
  const tailSlope = endSlope2(tail, after, shape.tailSlope);
  return [
    { ...start, before: startSlope, after: startSlope },
    { ...arch, before, after },
    { ...tailEnd, before: tailSlope, after: tailSlope }
  ];
}
var ANGULARITY = 0.3;
function outwardsOf({ upperStart, tailEnd }) {
  return tailEnd[0] < upperStart[0] ? -1 : 1;
}
function requireOutwards(where, dots, order) {
  for (const dot2 of order) requireFinitePoint(where, `dots.${dot2}`, dots[dot2]);
  const outwards = outwardsOf(dots);
  order.forEach((dot2, index) => {
    const before = order[index - 1];
    if (before !== void 0 && outwards * dots[dot2][0] <= outwards * dots[before][0]) {
      const need = `an x farther outwards than that of ${before}, ${dots[before][0]}`;
      refuse("inconsistent", where, `dots.${dot2}`, dots[dot2], need);
    }
  });
}
function endSlope2(chord, atArch, chosen2) {
  if (chosen2 !== void 0) return chosen2 * chord;
  const asParabola = 2 * chord - atArch;
  return asParabola * chord > 0 ? asParabola : 0;
}
function borderThroughBody(where, dots, shape) {
  const border = upperBorder(where, dots, shape);
  const { upperBody: body } = dots;
  if (body === void 0) return border;
  requireOutwards(where, { ...dots, upperBody: body }, ["upperStart", "upperBody", "upperArch"]);
  const x = outwardsOf(dots) * body[0];
  if (Math.abs(hermiteAt(border, x) - body[1]) <= SAME_HEIGHT) return border;
  if (!isOnTheWay(dots, body)) {
    const [start, arch] = [shownValue(dots.upperStart[1], 4), shownValue(dots.upperArch[1], 4)];
    const need = `a y between those of the start, ${start}, and the arch, ${arch}`;
    refuse("inconsistent", where, "dots.upperBody", body, need);
  }
  return bent(border, x, body[1], shape);
}
function isOnTheWay({ upperStart: [, start], upperArch: [, arch] }, [, body]) {
  if (Math.abs(arch - start) <= SAME_HEIGHT) return Math.abs(body - start) <= SAME_HEIGHT;
  const sign = arch > start ? 1 : -1;
  return sign * (body - start) >= -SAME_HEIGHT && sign * (arch - body) > 0;
}
var SAME_HEIGHT = 1e-9;
function bent(border, x, y, { angularity = ANGULARITY, startSlope }) {
  const [start, arch, ...tail] = border;
  const [before, after] = [x - start.x, arch.x - x];
  const [toBody, toArch] = [(y - start.y) / before, (arch.y - y) / after];
  const unbent = hermiteKnotAt(border, x);
  const bend2 = (y - unbent.y) / (before * after);
  const leaving = start.after + (startSlope === void 0 ? bend2 * (before + after) : 0);
  const arriving = arch.before - angularity * bend2 * (before + after);
  const atStart = slopeAlong([toBody], leaving);
  const atBody = slopeAlong([toBody, toArch], unbent.after + bend2 * (after - before));
  return [
    { ...start, before: atStart, after: atStart },
    { x, y, before: atBody, after: atBody },
    { ...arch, before: slopeAlong([toArch], arriving) },
    ...tail
  ];
}
function slopeAlong(chords, wanted) {
  const sign = chords.some((chord) => chord < 0) ? -1 : 1;
  const least = Math.min(...chords.map((chord) => Math.max(sign * chord, 0)));
  return sign * Math.min(Math.max(sign * wanted, 0), STEEPEST * least);
}

// src/proportions/complete-dots.ts
var STATION_THICKNESS = { start: mm(8), body: mm(7), arch: mm(6) };
function completeDots(upper, thickness = STATION_THICKNESS, shape = {}) {
  for (const station of keysOf(STATIONS)) {
    requirePositive("completeDots", `thickness.${station}`, thickness[station]);
  }
  const border = upperBorder("completeDots", upper, shape);
  const { upperStart, upperArch, tailEnd } = upper;
  const x = (upperStart[0] + upperArch[0]) / 2;
  const upperBody = flatPoint(x, hermiteAt(border, outwardsOf(upper) * x));
  return {
    upperStart,
    upperBody,
    upperArch,
    tailEnd,
    lowerStart: below(upperStart, thickness.start),
    lowerBody: below(upperBody, thickness.body),
    lowerArch: below(upperArch, thickness.arch)
  };
}
function below([x, y], thickness) {
  return flatPoint(x, y - thickness);
}
var STATIONS = {
  start: { upper: "upperStart", lower: "lowerStart" },
  body: { upper: "upperBody", lower: "lowerBody" },
  arch: { upper: "upperArch", lower: "lowerArch" }
};

// src/proportions/upwards.ts
var UPWARDS = [0, 1];

// src/proportions/guide-line.ts
var ARCH_EYE_WIDTH_SHARE = 0.953;
function guideLine(face, side, convention, options = {}) {
  return refusingAs("guideLine", () => {
    const { share = ARCH_EYE_WIDTH_SHARE } = options;
    requirePositive("guideLine", "options.share", share);
    requireLandmarksOn("guideLine", face, [side], convention);
    const rule2 = GUIDES[convention];
    const from = rule2.through;
    return {
      mark: rule2.mark,
      convention,
      side,
      line: lineOf(rule2, (name) => face[side][name], share),
      from,
      standIns: (face.standIns ?? []).filter(
        ({ landmark }) => from.some((name) => name === landmark)
      )
    };
  });
}
function lineOf({ drawn: drawn2, through }, at2, share) {
  switch (drawn2) {
    case "vertical":
      return lineAlong(at2(through[0]), UPWARDS);
    case "line":
      return lineThrough(at2(through[0]), at2(through[1]));
    case "share": {
      const [from, to] = [at2(through[0]), at2(through[1])];
      return lineAlong(mm([from[0] + share * (to[0] - from[0]), from[1]]), UPWARDS);
    }
  }
}
function requireGuideLandmarks(face, convention) {
  requireLandmarksOn("requireGuideLandmarks", face, SIDES, convention);
  return face;
}
function requireLandmarksOn(where, face, sides, convention) {
  requireWord(where, "convention", convention, keysOf(GUIDES));
  const missing = sides.flatMap(
    (side) => GUIDES[convention].through.filter((name) => face[side][name] === void 0).map((name) => `${side}.${name}`)
  );
  if (missing.length > 0) {
    const need = `a point, for the ${GUIDES[convention].mark} ${GUIDES[convention].words}`;
    refuse("missing-landmark", where, missing.join(", "), void 0, need);
  }
}

// src/proportions/outline-path.ts
function outlinePath(outline2) {
  const { upper, tail, lower, front } = outline2;
  const path = [...lower, ...reversePath(tail), ...reversePath(upper), ...reversePath(front)];
  return pathArea(path) < 0 ? reversePath(path) : path;
}
function outlineArea(outline2) {
  return pathArea(outlinePath(outline2));
}

// src/proportions/brow-edge.ts
function browEdge(dots, borders, skin) {
  if (borders === void 0) return edgeOfDots(dots, skin);
  return "front" in borders ? edgeOfOutline(borders, skin) : edgeOfHair(borders, skin);
}
function edgeOfOutline(drawn2, skin) {
  const lower = graphOf(drawn2.lower);
  return {
    lowerAt: (x) => lower === void 0 ? heightOver(length(x), flatten(drawn2.lower, STRAYS)) : hermiteAt(lower, x),
    along: ([from], [to]) => lengthOfPath(
      drawn2.upper.filter(([[start], , , [end]]) => isBetween((start + end) / 2, from, to)),
      skin
    ),
    area: outlineArea(drawn2)
  };
}
var STRAYS = mm(1e-3);
function edgeOfHair({ upper, lower }, skin) {
  return {
    lowerAt: (x) => lower && heightOver(length(x), lower),
    along: (from, to) => lengthOf([from, ...upper.filter(([x]) => isBetween(x, from[0], to[0])), to], skin),
    area: lower && Math.abs(polygonArea([...upper, ...lower.slice().reverse()]))
  };
}
function edgeOfDots({ upperBody, lowerStart, lowerBody, lowerArch, tailEnd }, skin) {
  const lower = [lowerStart, lowerBody, lowerArch, tailEnd].filter(
    (dot2) => dot2 !== void 0
  );
  return {
    lowerAt: (x) => heightOver(length(x), lower),
    along: (from, to) => lengthOf(
      upperBody && isBetween(upperBody[0], from[0], to[0]) ? [from, upperBody, to] : [from, to],
      skin
    ),
    area: void 0
  };
}
function isBetween(x, from, to) {
  return x > Math.min(from, to) && x < Math.max(from, to);
}

// src/proportions/measure-side.ts
function measureSide(dots, context) {
  return refusingAs("measureSide", () => whatIsKnown(readSide2(dots, context)));
}
function readSide2(dots, { side, landmarks, skin, borders }) {
  const { upperStart: start, upperBody: body, upperArch: arch, tailEnd: tail } = dots;
  const outwards = side === "left" ? 1 : -1;
  const edge = browEdge(dots, borders, skin);
  const ruler = (from, to) => from && to && lengthBetween(from, to, skin);
  const sight = (from, to) => from && to && distance(from, to);
  const inclination = (from, to) => from && to && toDegrees(Math.atan2(to[1] - from[1], outwards * (to[0] - from[0])));
  const thickness = (dot2) => {
    const y = dot2 && edge.lowerAt(dot2[0]);
    return dot2 && y !== void 0 ? dot2[1] - y : void 0;
  };
  const front = ruler(start, arch);
  const tailLength = ruler(arch, tail);
  return {
    front,
    tail: tailLength,
    frontAlong: start && arch && edge.along(start, arch),
    tailAlong: arch && tail && edge.along(arch, tail),
    frontOnPhoto: sight(start, arch),
    tailOnPhoto: sight(arch, tail),
    frontShare: front === void 0 || tailLength === void 0 ? void 0 : frontShare(front, tailLength),
    startDistance: start && outwards * start[0],
    archDistance: arch && outwards * arch[0],
    tailDistance: tail && outwards * tail[0],
    startHeight: start?.[1],
    archHeight: arch?.[1],
    tailHeight: tail?.[1],
    startThickness: thickness(start),
    bodyThickness: thickness(body),
    archThickness: thickness(arch),
    exocanthionToTailEnd: landmarks.exocanthion && tail && spaceDistance(atEyeCorner(landmarks.exocanthion, skin), onSkin(tail, skin)),
    lidToBrow: lidToBrow(landmarks, edge),
    frontInclination: inclination(start, arch),
    browInclination: inclination(start, tail),
    area: edge.area
  };
}
function lidToBrow({ pupil, upperLid }, edge) {
  if (pupil === void 0 || upperLid === void 0) return void 0;
  const brow = edge.lowerAt(pupil[0]);
  const lid = heightOver(length(pupil[0]), upperLid);
  return brow === void 0 || lid === void 0 ? void 0 : brow - lid;
}
function whatIsKnown(values) {
  const known = {};
  for (const name of keysOf(values)) {
    const value = values[name];
    if (value !== void 0) known[name] = value;
  }
  return known;
}
function measureFace(dots, face, skin, borders) {
  return refusingAs("measureFace", () => {
    const sides = eachSide((side) => {
      const hair = borders?.[side];
      const context = { side, landmarks: face[side], skin };
      return measureSide(dots[side], hair === void 0 ? context : { ...context, borders: hair });
    });
    const { right: right2, left } = dots;
    return right2.upperStart === void 0 || left.upperStart === void 0 ? sides : { ...sides, startToStart: lengthBetween(right2.upperStart, left.upperStart, skin) };
  });
}

// src/proportions/meet-guide.ts
function meetGuide(guide, brow) {
  return refusingAs("meetGuide", () => {
    const upper = meetBorder(guide, brow.upper);
    if (guide.mark !== "tail" || brow.lower === void 0) return upper;
    const lower = meetBorder(guide, brow.lower);
    if (upper === void 0 || lower === void 0) return upper ?? lower;
    const [x, y] = midpoint(upper.at, lower.at);
    return { at: flatPoint(x, y), along: upper.along, extended: upper.extended || lower.extended };
  });
}
function meetBorder(guide, border) {
  const places = intersectPolyline(guide.line, border).filter(
    ({ at: at2 }) => distanceAlongLine(at2, guide.line) > 0
  );
  return guide.mark === "tail" ? places.at(-1) : places[0];
}

// src/proportions/natural-arch.ts
var LEAST_RISE = 1;
var CLEAR_RISE = 2;
var WORST_PLACE = 2;
function naturalArch(border, u) {
  const shape = overChord(border);
  const points = shape.along.length;
  if (points === 2) return { kind: "flat", rise: measured(length(0), u) };
  return points === 3 ? cornerOf(shape, u) : crestOf(shape, u);
}
function cornerOf(shape, u) {
  const rise = shape.heights[1];
  const weights = freeOfChord([0, 1, 0], shape.shares);
  const at2 = placeOverChord(shape, shape.shares[1], rise);
  return judged(at2, u, measured(length(rise), length(u * norm(weights))));
}
function crestOf(shape, u) {
  const { along, heights, shares } = shape;
  const degree = Math.min(MOST_DEGREE, Math.floor(along.length / 2) + 1);
  const fit = fitPolynomial(along, heights, degree);
  const error = Math.max(u, fit.scatter ?? 0);
  const uncertaintyOf3 = (weights2) => error * norm(freeOfChord(weights2, shares));
  const end = along[along.length - 1];
  const crest = highestPeak(fit, 0, end);
  const place = crest ?? end / 2;
  const height = polynomialAt(fit, place);
  const weights = polynomialWeights(fit, place);
  const rise = measured(length(height), length(uncertaintyOf3(weights)));
  if (crest === void 0) return { kind: "flat", rise };
  const slopeU = uncertaintyOf3(polynomialWeights(fit, crest, 1));
  const wander = slopeU / Math.abs(polynomialAt(fit, crest, 2));
  const share = weights.reduce((sum, weight, index) => sum + weight * shares[index], 0);
  const at2 = placeOverChord(shape, share, height);
  return judged(at2, length(Math.min(wander, end / Math.sqrt(12))), rise);
}
var MOST_DEGREE = 6;
function judged(at2, u, rise) {
  if (rise.value < LEAST_RISE || rise.value < CLEAR_RISE * rise.u)
    return { kind: "flat", farthest: at2, rise };
  return { kind: u > WORST_PLACE ? "undetermined" : "peak", at: at2, u, rise };
}
function freeOfChord(weights, shares) {
  const free = weights.slice();
  const last = free.length - 1;
  weights.forEach((weight, index) => {
    const share = shares[index];
    free[0] = free[0] - weight * (1 - share);
    free[last] = free[last] - weight * share;
  });
  return free;
}
function norm(weights) {
  return Math.sqrt(weights.reduce((sum, weight) => sum + weight * weight, 0));
}
function overChord(border) {
  const start = border[0];
  const end = border[border.length - 1];
  const chord = [end[0] - start[0], end[1] - start[1]];
  const size = Math.hypot(...chord);
  const turn = chord[0] < 0 ? -1 : 1;
  const up = [-turn * chord[1] / size, turn * chord[0] / size];
  const along = [];
  const shares = [];
  const heights = [];
  let way = 0;
  let before = start;
  for (const point of border) {
    const step = Math.hypot(point[0] - before[0], point[1] - before[1]);
    if (step === 0 && along.length > 0) continue;
    way += step;
    before = point;
    const [x, y] = [point[0] - start[0], point[1] - start[1]];
    along.push(way);
    shares.push((x * chord[0] + y * chord[1]) / (size * size));
    heights.push(x * up[0] + y * up[1]);
  }
  return { along, shares, heights, start, chord, up };
}
function placeOverChord({ start, chord, up }, share, height) {
  return flatPoint(
    start[0] + share * chord[0] + height * up[0],
    start[1] + share * chord[1] + height * up[1]
  );
}

// src/proportions/natural-dots.ts
function naturalDots(brow, options = {}) {
  return refusingAs("naturalDots", () => {
    const { u = BY_HAND } = options;
    requireBrow(brow, u);
    const { upper, lower } = brow;
    const upperStart = drawn(upper[0]);
    const tailEnd = drawn(upper[upper.length - 1]);
    const lowerStart = lower && drawn(lower[0]);
    const arch = naturalArch(upper, u);
    const upperArch = arch.kind === "flat" ? void 0 : drawn(arch.at);
    const upperBody = upperArch && onVertical(upper, (upperStart.at[0] + upperArch.at[0]) / 2);
    const found = {
      upperStart,
      upperBody,
      upperArch,
      tailEnd,
      lowerStart,
      lowerBody: lower && upperBody && onVertical(lower, upperBody.at[0]),
      lowerArch: lower && upperArch && onVertical(lower, upperArch.at[0])
    };
    const dots = {};
    const extended = [];
    for (const dot2 of DOT_NAMES) {
      const place = found[dot2];
      if (place === void 0) continue;
      dots[dot2] = place.at;
      if (place.extended) extended.push(dot2);
    }
    return {
      dots,
      startLine: lineAlong(moreMedial(upperStart, lowerStart, tailEnd).at, UPWARDS),
      arch,
      extended
    };
  });
}
function drawn(point) {
  return { at: flatPoint(point[0], point[1]), extended: false };
}
function onVertical(border, x) {
  return intersectPolyline(lineAlong(flatPoint(x, 0), UPWARDS), border)[0];
}
function moreMedial(upper, lower, tail) {
  if (lower === void 0) return upper;
  const outwards = tail.at[0] < upper.at[0] ? -1 : 1;
  return outwards * lower.at[0] < outwards * upper.at[0] ? lower : upper;
}
function requireBrow({ upper, lower }, u) {
  const where = "naturalDots";
  requirePolyline(where, "brow.upper", upper, 2);
  if (lower !== void 0) requirePolyline(where, "brow.lower", lower, 2);
  requireFinite(where, "options.u", u);
  if (u < 0) refuse("out-of-range", where, "options.u", u, "0 or more");
  const [first, last] = [upper[0], upper[upper.length - 1]];
  if (first[0] === last[0] && first[1] === last[1]) {
    const need = "a last point that differs from the first";
    refuse("coincident-points", where, "brow.upper", upper, need);
  }
}

// src/proportions/outline.ts
function outline(dots, options = {}) {
  const { frontRoundness = 0 } = options;
  requireShape("outline", "options", options);
  requireOutwards("outline", dots, [...LOWER_DOTS, "tailEnd"]);
  const upper = borderThroughBody("outline", dots, options);
  const lower = hermiteDifference(upper, thicknessOver(upper, dots));
  if (!frontIsClear(upper, lower)) {
    refuseDot(dots, "lowerStart", "a front edge that does not cross a border");
  }
  const outwards = outwardsOf(dots);
  return {
    upper: onSide(cubicsOf(upper), outwards),
    tail: [],
    lower: onSide(cubicsOf(lower), outwards),
    front: onSide([frontEdge(lower, upper, frontRoundness)], outwards)
  };
}
var LOWER_DOTS = ["lowerStart", "lowerBody", "lowerArch"];
function thicknessOver(upper, dots) {
  const outwards = outwardsOf(dots);
  const stations = LOWER_DOTS.map((dot2) => {
    const [x, y] = dots[dot2];
    const height = hermiteAt(upper, outwards * x);
    if (height <= y)
      refuseDot(
        dots,
        dot2,
        `a y under ${shownValue(height, 4)}, the height of the upper border there`
      );
    return [outwards * x, height - y];
  });
  return pchip([...stations, [outwards * dots.tailEnd[0], 0]]);
}
function onSide(path, outwards) {
  return mapPath(path, ([x, y]) => flatPoint(outwards * x, y));
}
function frontEdge(lower, upper, roundness) {
  const [from, to] = [startOf(lower), startOf(upper)];
  const straight = straightCubic(from, to);
  if (roundness === 0) return straight;
  const reach = 4 / 3 * roundness * (distance(from, to) / 2);
  return [from, flatPoint(from[0] - reach, from[1]), flatPoint(to[0] - reach, to[1]), to];
}
function startOf(curve) {
  const { x, y } = curve[0];
  return flatPoint(x, y);
}
function frontIsClear(upper, lower) {
  const [top, bottom] = [startOf(upper), startOf(lower)];
  if (top[0] === bottom[0]) return true;
  const slope = (top[1] - bottom[1]) / (top[0] - bottom[0]);
  const chord = [top, bottom].sort((one, other) => one[0] - other[0]).map(([x, y]) => ({ x, y, before: slope, after: slope }));
  const [border, side] = bottom[0] < top[0] ? [lower, -1] : [upper, 1];
  return cubicsOf(hermiteDifference(border, chord)).flat().every(([, y]) => side * y > -SAME_HEIGHT);
}
function refuseDot(dots, dot2, need) {
  refuse("inconsistent", "outline", `dots.${dot2}`, dots[dot2], need);
}

// src/mapping/plan/words.ts
var CAUTIONS = {
  "local-law": "The work that follows a map breaks the skin and lasts. Minimum age and licence are set by local law: follow local codes and licensed practice.",
  hygiene: "Work hygienically: EN 17169:2020 describes safe tattooing practice (voluntary); local rules come first.",
  "planning-aid": "This map is a planning aid, not medical advice; whether a client may be treated at all is for licensed practice to judge.",
  "scale-uncertain": "The photo's scale is known to \xB1{percent:1} % (standard uncertainty): 50 mm may be {off:1} mm more or less. Check by ruler on the skin.",
  "scale-from-population-average": "Millimetres come from the average iris, not from this client: lengths depend on it, shares and angles do not.",
  "stand-in": "{landmark} is only approximated: {instead}. Check by eye whatever rests on it.",
  "head-may-be-turned": "{finding}",
  "head-was-turned": "The head was turned by {yaw:1}\xB0 (\xB1{u:1}\xB0) to the client's {side} and corrected by depth: the farther brow is seen less well. Check its lengths by ruler.",
  "eyes-slant": "The eyes slant by {angle:1}\xB0 (\xB1{u:1}\xB0), the {side} one higher: others recognise more than {limit:2}\xB0. Level brows may look slanted beside them; choose together with the client.",
  "size-implausible": "The outer eye corners lie {distance:0} mm apart; those of adults lie {least} to {most} mm apart. Check the scale and its unit before anything else.",
  "capture-finding": "{finding}",
  "expression-differs": "Expression differs between captures. {finding}",
  "pose-differs": "The head was held differently in another capture. {finding}",
  "posture-not-kept": "It was declared that the client did not sit upright with a relaxed face: heights and distances of this plan do not hold. Take the landmarks again.",
  "posture-not-declared": "Nobody declared that the client sat upright with a relaxed face: brows move when lying down or raised. Check every distance again upright."
};
var MOVES = {
  place: "{side} {dot}: place {distance} mm from the midline, {height} mm above the inner eye corners",
  stay: "{side} {dot}: stays",
  move: "{side} {dot}: {ways}"
};

// src/mapping/plan/moves.ts
function movesBetween(natural, planned) {
  return PLACED_DOTS.flatMap(
    (dot2) => SIDES.map((side) => moveOf(dot2, side, natural[side], planned[side]))
  );
}
function moveOf(dot2, side, natural, planned) {
  const to = placeOnSide(planned[dot2], side);
  const grown = natural[dot2];
  const name = { side, dot: DOTS[dot2].words };
  if (grown === void 0) {
    return {
      kind: "place",
      side,
      dot: dot2,
      distance: length(to.distance),
      height: length(to.height),
      text: fill(MOVES.place, {
        ...name,
        distance: inHalves(to.distance),
        height: inHalves(to.height)
      })
    };
  }
  const from = placeOnSide(grown, side);
  const up = to.height - from.height;
  const outward = to.distance - from.distance;
  const ways = [inWords(up, "up", "down"), inWords(outward, "outward", "inward")].filter(
    (way) => way !== ""
  );
  return {
    kind: ways.length > 0 ? "move" : "stay",
    side,
    dot: dot2,
    up: length(up),
    outward: length(outward),
    text: ways.length > 0 ? fill(MOVES.move, { ...name, ways: ways.join(", ") }) : fill(MOVES.stay, name)
  };
}
function inWords(by, positive, negative) {
  const amount = inHalves(Math.abs(by));
  return amount === 0 ? "" : fill(WAYS[by > 0 ? positive : negative], { by: `${amount} mm` });
}
function inHalves(amount) {
  return Math.round(2 * amount) / 2 + 0;
}

// src/mapping/dots/arch-limits.ts
var LIMBUS_SHARE = 0.75;
function archLimits(face, side) {
  const { endocanthion, exocanthion, limbusLateral } = face[side];
  const from = placeOnSide(endocanthion, side).distance;
  const to = placeOnSide(exocanthion, side).distance;
  return {
    inner: limbusLateral === void 0 ? { convention: "eye-width-share", distance: from + LIMBUS_SHARE * (to - from) } : {
      convention: "lateral-limbus-vertical",
      distance: placeOnSide(limbusLateral, side).distance
    },
    outer: { convention: "exocanthion-vertical", distance: to }
  };
}

// src/mapping/choices/choice-tables.ts
var LEADS = {
  right: ["right"],
  left: ["left"],
  middle: ["right", "left"]
};
var LEVELS = ["right", "left", "middle", "higher"];
var CARRIES = { mirror: "lead-side", measure: "lead-side-by-measure" };
var TAIL_HEIGHTS = {
  natural: "none",
  "level-with-lower-start": "lowerStart",
  "level-with-upper-start": "upperStart"
};
var CHOSEN_SHARES = { eyeWidthShare: [0.4, 1.4], frontShare: [0.4, 0.9] };
function ledBy(lead, values) {
  const sides = ledSides(lead);
  return sides.reduce((sum, side) => sum + values[side], 0) / sides.length;
}
function ledSides(lead) {
  return LEADS[lead];
}

// src/mapping/dots/settle-dot.ts
function settleDot(dot2, own, followed, pins) {
  if (!pins.some((pin) => pin.dot === dot2)) {
    const places = eachSide(own);
    const led = (lead, of) => ledBy(
      lead,
      eachSide((side) => places[side][of])
    );
    const distance2 = led(followed.across, "distance");
    const height = led(followed.inHeight, "height");
    return eachSide((side) => ({
      distance: distance2,
      height: heldNear(places[side].height, height, followed.limit),
      origin: { from: ledFrom(followed.across, side) },
      own: places[side]
    }));
  }
  const pinned = eachSide((side) => pins.find((pin) => pin.side === side && pin.dot === dot2));
  return eachSide((side) => {
    const pin = pinned[side];
    if (pin !== void 0) return settledAt(placeOnSide(pin.at, side), { from: "pinned", pin });
    const across = pinned[otherSide(side)];
    return settledAt(placeOnSide(across.at, across.side), { from: "mirrored" });
  });
}
function heldNear(own, aim, limit = Infinity) {
  return Math.min(Math.max(aim, own - limit), own + limit);
}
function settledAt(place, origin) {
  return { ...place, origin, own: place };
}
function ledFrom(lead, side) {
  if (lead === "middle") return "both";
  return lead === side ? "own" : "mirrored";
}
function overDots(make) {
  return {
    upperStart: make("upperStart"),
    upperBody: make("upperBody"),
    upperArch: make("upperArch"),
    tailEnd: make("tailEnd"),
    lowerStart: make("lowerStart"),
    lowerBody: make("lowerBody"),
    lowerArch: make("lowerArch")
  };
}

// src/mapping/dots/words.ts
var LEAD_REASONS = {
  "lead-middle": "Neither brow leads: every dot lies half-way between what each side asks for.",
  "lead-side": "The {lead} brow leads: the other side mirrors its dots across the midline.",
  "lead-side-by-measure": "The {lead} brow leads: the other side follows it by measure."
};
var LEVEL_REASONS = {
  "levels-middle": "Heights of start and arch are evened half-way between the two brows.",
  "levels-side": "Heights of start and arch are those of the {levels} brow.",
  "levels-held-back": "Evening took no {dot} dot more than {limit:1} mm up or down from its own hair: the {higher} one stays {difference:1} mm higher."
};
var START_REASONS = {
  "start-at-alare": "Start above the nose wing: counted outward from the inner eye corner it lies at {right:1} mm (right) and {left:1} mm (left), neither beyond {limit} mm.",
  "start-at-endocanthion-nose-wide": "Start above the inner eye corner: counted outward from it the nose wing lies at {right:1} mm (right) and {left:1} mm (left), beyond {limit} mm on at least one side.",
  "start-at-endocanthion-stand-in": "Start above the inner eye corner: the nose wing is only approximated by a stand-in ({instead}).",
  "start-at-endocanthion-nose-bent": "Start above the inner eye corner: the nose is bent, so its wings do not tell where a brow starts.",
  "start-at-endocanthion-nose-deviates": "Start above the inner eye corner: the nose runs {angle:1}\xB0 off the midline (standard uncertainty {u:1}\xB0), more than the {limit}\xB0 that others notice, so its wings do not tell where a brow starts.",
  "start-chosen": "Start as chosen: {place}."
};
var ARCH_REASONS = {
  "arch-natural": "Arch where it grows on the {side} brow: {share:2} eye widths from the inner eye corner.",
  "arch-moved-outward": "Arch of the {side} brow moved outward along the border to the vertical of the {limit}: it grows {distance:1} mm nearer the nose.",
  "arch-moved-inward": "Arch of the {side} brow moved inward along the border to the vertical of the {limit}: it grows {distance:1} mm beyond it.",
  "arch-flat": "The {side} brow is flat (its border rises {rise:1} mm above the chord): it has no natural arch, so front and tail divide at {share:2} of the length by ruler.",
  "arch-undetermined": "Where the {side} brow arches is known only to \xB1{u:1} mm: front and tail divide at {share:2} of the length by ruler instead.",
  "arch-chosen": "Arch as chosen: {place}."
};
var TAIL_REASONS = {
  "tail-at-guide": "Tail end {guide}, {height}."
};
var THICKNESS_REASONS = {
  "thickness-natural": "Thickness as it grows: {start:1} mm at the start, {body:1} mm at the body, {arch:1} mm at the arch.",
  "thickness-chosen": "Thickness as chosen: {start:1} mm at the start, {body:1} mm at the body, {arch:1} mm at the arch.",
  "thickness-assumed": "Thickness of {start:1} mm at the start, {body:1} mm at the body and {arch:1} mm at the arch; assumed at {assumed}, where no lower border tells."
};
var EVENT_REASONS = {
  "border-extended": "The {mark} guide misses the hair of the {side} brow: its border is extended along its end.",
  "guide-missed": "The {mark} guide meets the {side} brow nowhere, extended or not: the natural height of its {mark} is kept.",
  "carried-by-measure": "The {side} brow is carried by measure: from its own start, with the leading heights and ruler lengths. Its arch lies {arch:1} mm and its tail end {tail:1} mm farther out than mirrored (negative: nearer the midline).",
  pinned: "The {name} of the {side} brow stays where {by} fixed it{reason}.",
  "pins-break-levels": "Pins leave the {higher} {dot} dot {difference:1} mm higher, more than {limit} mm.",
  "pins-break-tail-heights": "Pins leave the {higher} tail end {difference:1} mm higher, more than {limit} mm.",
  "pins-break-distances": "Pins leave the {farther} {dot} dot {difference:1} mm farther from the midline, more than {limit} mm.",
  "pins-break-thickness": "Pins leave the {thicker} brow {difference:1} mm thicker at the {station}, more than {limit} mm.",
  "pins-break-share": "Pins break the front share: that of the {side} brow is {share:2}, asked for was {asked:2} \xB1 {limit:2}."
};
var REASONS = /* @__PURE__ */ (() => ({
  ...LEAD_REASONS,
  ...LEVEL_REASONS,
  ...START_REASONS,
  ...ARCH_REASONS,
  ...TAIL_REASONS,
  ...THICKNESS_REASONS,
  ...EVENT_REASONS
}))();
var ARCH_LIMITS = {
  "lateral-limbus-vertical": "outer edge of the iris",
  "eye-width-share": "outer edge of the iris (taken at {share} eye widths)",
  "exocanthion-vertical": "outer eye corner"
};
var THE_ARTIST = "the artist";

// src/mapping/dots/carry-by-measure.ts
function carryByMeasure(even, ownStart, skin, { carry, lead }) {
  if (carry === "mirror" || lead === "middle") return even;
  const { dots, origins } = even;
  const side = otherSide(lead);
  const isPinned = (dot2) => origins[side][dot2].from === "pinned";
  const start = isPinned("upperStart") ? dots[side].upperStart : pointOnSide(
    { distance: ownStart(side), height: placeOnSide(dots[lead].upperStart, lead).height },
    side
  );
  const carried = carryBrow(
    { side: lead, dots: dots[lead] },
    { method: "measure", start, skin }
  ).dots;
  return {
    dots: {
      ...dots,
      [side]: overDots((dot2) => isPinned(dot2) ? dots[side][dot2] : carried[dot2])
    },
    origins: {
      ...origins,
      [side]: overDots(
        (dot2) => isPinned(dot2) ? origins[side][dot2] : { from: dot2 === "upperStart" ? "own" : "measured" }
      )
    }
  };
}
function carryReasons(dots, { carry, lead }) {
  if (carry === "mirror" || lead === "middle") return [];
  const side = otherSide(lead);
  const fartherOut = (dot2) => placeOnSide(dots[side][dot2], side).distance - placeOnSide(dots[lead][dot2], lead).distance;
  return [
    note(REASONS, "carried-by-measure", {
      side,
      arch: fartherOut("upperArch"),
      tail: fartherOut("tailEnd")
    })
  ];
}

// src/mapping/dots/even-share.ts
function evenShare(arches, starts, tailEnds, skin, { lead, frontShare: frontShare2 }) {
  const distances = eachSide((side) => {
    const start = pointOnSide(starts[side], side);
    const tailEnd = pointOnSide(tailEnds[side], side);
    const { height } = arches[side];
    const excess = (at2) => {
      const arch = pointOnSide({ distance: at2, height }, side);
      const front = lengthBetween(start, arch, skin);
      return front - frontShare2 * (front + lengthBetween(arch, tailEnd, skin));
    };
    const even2 = rootBetween(starts[side].distance, tailEnds[side].distance, excess);
    if (even2 === void 0) {
      const need = `a height at which the front can take ${shownValue(frontShare2, 4)} of front and tail`;
      refuse("no-solution", "planDots", `${side} upperArch`, height, need);
    }
    return even2;
  });
  const even = ledBy(lead, distances);
  return eachSide(
    (side) => arches[side].origin.from === "pinned" ? arches[side] : { ...arches[side], distance: even }
  );
}

// src/mapping/choices/words.ts
var TAIL_HEIGHT_WORDS = {
  natural: "at the height where it meets the hair",
  "level-with-lower-start": "level with the lower start dot",
  "level-with-upper-start": "level with the upper start dot"
};
var SHARE_WORDS = {
  eyeWidthShare: "share of the eye\u2019s width",
  frontShare: "front share"
};
var FIELD_WORDS = {
  lead: "leading brow",
  carry: "way of carrying",
  levels: "levels",
  levelLimit: "limit of levels",
  start: "start",
  arch: "arch",
  tail: "tail",
  tailHeight: "height of the tail end",
  thickness: "thickness",
  shape: "shape",
  noseBent: "bent nose",
  pins: "pins",
  rule: "rule",
  tolerances: "tolerances",
  declared: "what was declared",
  ...SHARE_WORDS
};
var ORDER_WORDS = {
  nearer: "a place nearer the midline than the {dot} at {place}",
  above: "a place above the {dot} at {place}",
  pinned: "{need}; pinned: {pins}"
};

// src/mapping/choices/dots-in-order.ts
var OUTWARD = [
  ["upperStart", "upperArch"],
  ["upperStart", "upperBody"],
  ["upperBody", "upperArch"],
  ["upperArch", "tailEnd"],
  ["lowerStart", "lowerBody"],
  ["lowerBody", "lowerArch"],
  ["lowerArch", "tailEnd"]
];
var DOWNWARD = [
  ["upperStart", "lowerStart"],
  ["upperBody", "lowerBody"],
  ["upperArch", "lowerArch"]
];
function requireDotsInOrder(where, dots, side, pins) {
  const refuseDot2 = (dot2, value, needed, other, at2) => {
    const place = shownValue(at2, SHOWN_DECIMALS);
    const need = fill(ORDER_WORDS[needed], { dot: DOTS[other].words, place });
    const code = pins.length > 0 ? "contradicting-pins" : "no-solution";
    return refuse(code, where, `${side} ${dot2}`, value, withPins(need, pins));
  };
  for (const [nearer2, farther] of OUTWARD) {
    const [one, other] = [dots[nearer2], dots[farther]];
    if (one === void 0 || other === void 0) continue;
    if (placeOnSide(one, side).distance < placeOnSide(other, side).distance) continue;
    refuseDot2(nearer2, one, "nearer", farther, other);
  }
  for (const [higher, lower] of DOWNWARD) {
    const [one, other] = [dots[higher], dots[lower]];
    if (one === void 0 || other === void 0 || one[1] > other[1]) continue;
    refuseDot2(higher, one, "above", lower, other);
  }
}
var SHOWN_DECIMALS = 4;
function withPins(need, pins) {
  if (pins.length === 0) return need;
  const pinned = pins.map(({ side, dot: dot2 }) => `${side} ${DOTS[dot2].words}`).join(", ");
  return fill(ORDER_WORDS.pinned, { need, pins: pinned });
}

// src/mapping/dots/lower-dots.ts
function bodyDot(upper, { pins, shape, thickness }) {
  return eachSide((side) => {
    const pinned = pinnedDot("upperBody", side, pins);
    if (pinned !== void 0) return pinned;
    const mirrored = pinnedDot("upperBody", otherSide(side), pins);
    if (mirrored !== void 0) return { ...mirrored, origin: { from: "mirrored" } };
    const dots = {
      upperStart: pointOnSide(upper.upperStart[side], side),
      upperArch: pointOnSide(upper.upperArch[side], side),
      tailEnd: pointOnSide(upper.tailEnd[side], side)
    };
    requireDotsInOrder("planDots", dots, side, pins);
    const { upperBody } = completeDots(dots, thickness, shape);
    return { ...placeOnSide(upperBody, side), origin: withoutPin(upper.upperArch[side].origin) };
  });
}
function lowerDot(dot2, uppers, thickness, pins) {
  return eachSide((side) => {
    const pinned = pinnedDot(dot2, side, pins);
    if (pinned !== void 0) return pinned;
    const upper = uppers[side];
    const across = pinnedDot(dot2, otherSide(side), pins);
    if (across === void 0) {
      return {
        distance: upper.distance,
        height: upper.height - thickness,
        origin: withoutPin(upper.origin)
      };
    }
    const given = uppers[otherSide(side)].height - across.height;
    return { distance: upper.distance, height: upper.height - given, origin: { from: "mirrored" } };
  });
}
function pinnedDot(dot2, side, pins) {
  const pin = pins.find((one) => one.side === side && one.dot === dot2);
  return pin && { ...placeOnSide(pin.at, side), origin: { from: "pinned", pin } };
}
function withoutPin(origin) {
  return { from: origin.from === "pinned" ? "own" : origin.from };
}

// src/mapping/dots/solve-dots.ts
function solveDots(face, natural, skin, choices) {
  const { lead, levels, levelLimit, pins, thickness, arch } = choices;
  const held = levelLimit === void 0 ? {} : { limit: levelLimit };
  const led = { across: lead, inHeight: lead };
  const evened = { across: lead, inHeight: levels, ...held };
  const border = borderReader(face, natural);
  const guideOn = (side, convention) => guideFor(face, side, convention, choices.eyeWidthShare);
  const starts = eachSide((side) => guideOn(side, choices.start));
  const upperStart = settleDot("upperStart", (side) => border.meet(starts[side]), evened, pins);
  const lowerStart = lowerDot("lowerStart", upperStart, thickness.start, pins);
  const tails = eachSide((side) => guideOn(side, choices.tail));
  const levelWith = TAIL_HEIGHTS[choices.tailHeight];
  const tailEnd = settleDot(
    "tailEnd",
    (side) => {
      if (levelWith === "none") return border.meet(tails[side]);
      return placeAtHeight(tails[side], { upperStart, lowerStart }[levelWith][side].height);
    },
    levelWith === "none" ? { ...led, ...held } : led,
    pins
  );
  const onBrow = {
    natural: border.archBetweenLimits,
    // On its own hair: a border that is nowhere near the settled dots would not divide.
    "brow-length-share": (side) => border.divideAt(choices.frontShare, skin, side, upperStart[side].own, tailEnd[side].own)
  };
  const archOnBorder = settleDot(
    "upperArch",
    (side) => isGuide(arch) ? border.meet(guideOn(side, arch)) : onBrow[arch](side),
    evened,
    pins
  );
  const archIsPinned = pins.some(({ dot: dot2 }) => dot2 === "upperArch");
  const upperArch = arch === "brow-length-share" && !archIsPinned ? evenShare(archOnBorder, upperStart, tailEnd, skin, choices) : archOnBorder;
  const upperBody = bodyDot({ upperStart, upperArch, tailEnd }, choices);
  const dots = {
    upperStart,
    upperBody,
    upperArch,
    tailEnd,
    lowerStart,
    lowerBody: lowerDot("lowerBody", upperBody, thickness.body, pins),
    lowerArch: lowerDot("lowerArch", upperArch, thickness.arch, pins)
  };
  const even = {
    dots: eachSide((side) => overDots((dot2) => pointOnSide(dots[dot2][side], side))),
    origins: eachSide((side) => overDots((dot2) => dots[dot2][side].origin))
  };
  return {
    ...carryByMeasure(even, (side) => border.meet(starts[side]).distance, skin, choices),
    guides: eachSide((side) => [
      starts[side],
      ...isGuide(arch) ? [guideOn(side, arch)] : [],
      tails[side]
    ]),
    events: border.events
  };
}
function borderReader(face, natural) {
  const events = [];
  const meet = (guide) => {
    const { mark, side } = guide;
    const hit = meetGuide(guide, face[side].brow);
    if (hit === void 0) {
      events.push({ code: "guide-missed", side, mark });
      return placeAtHeight(guide, naturalHeight(natural[side], guide));
    }
    if (hit.extended) events.push({ code: "border-extended", side, mark });
    return placeOnSide(hit.at, side);
  };
  const ownArch = (side) => {
    const at2 = crestOf2(natural[side].arch);
    if (at2 === void 0) return void 0;
    const place = placeOnSide(at2, side);
    const { inner, outer } = archLimits(face, side);
    if (place.distance < inner.distance) return meet(limitGuide(face, side, inner));
    if (place.distance > outer.distance) return meet(limitGuide(face, side, outer));
    return place;
  };
  return {
    meet,
    archBetweenLimits: (side) => ownArch(side) ?? besideArch(face, natural[side], side, ownArch(otherSide(side))),
    divideAt: (share, skin, side, start, tail) => {
      const { upper } = face[side].brow;
      return placeOnSide(
        archAtShare(upper, pointOnSide(start, side), pointOnSide(tail, side), skin, share).at,
        side
      );
    },
    events
  };
}
function besideArch(face, { arch: { rise } }, side, across) {
  const x = across && length(pointOnSide(across, side)[0]);
  const height = x === void 0 ? void 0 : heightOver(x, face[side].brow.upper);
  if (across !== void 0 && height !== void 0) return { distance: across.distance, height };
  refuseFlat(side, rise.value);
}
function naturalHeight({ dots, arch }, { mark, side }) {
  switch (mark) {
    case "start":
      return dots.upperStart[1];
    case "tail":
      return dots.tailEnd[1];
    case "arch":
      return crestOf2(arch)?.[1] ?? refuseFlat(side, arch.rise.value);
  }
}
function crestOf2(arch) {
  return arch.kind === "flat" ? arch.farthest : arch.at;
}
function limitGuide(face, side, { convention }) {
  return guideFor(face, side, convention, LIMBUS_SHARE);
}
function guideFor(face, side, convention, share) {
  return guideLine(requireGuideLandmarks(face, convention), side, convention, { share });
}
function placeAtHeight(guide, height) {
  const meeting = intersect(guide.line, lineAlong(flatPoint(0, height), [1, 0]));
  if (meeting.kind !== "crossing") {
    const field = `${guide.side} ${guide.mark} guide (${guide.convention})`;
    const need = "a direction that is not level";
    refuse("no-solution", "planDots", field, guide.line.direction, need);
  }
  return placeOnSide(meeting.at, guide.side);
}
function refuseFlat(side, rise) {
  const need = "an arch that shows: a flat brow has none to follow";
  refuse("no-solution", "planDots", `rise of the ${side} brow`, rise, need);
}

// src/mapping/plan/plan-readings.ts
function readPlan(face, skin, choices) {
  const u = landmarkUncertainty(face, "brow");
  const natural = eachSide((side) => naturalDots(face[side].brow, { u }));
  const { dots } = solveDots(face, natural, skin, choices);
  const grown = eachSide((side) => natural[side].dots);
  const hair = eachSide((side) => face[side].brow);
  const drawn2 = eachSide((side) => outlineIfAny(dots[side], choices.shape));
  return {
    natural: withDifferences(measureFace(grown, face, skin, hair)),
    planned: withDifferences(measureFace(dots, face, skin, drawn2))
  };
}
function withDifferences(measures) {
  const differences = {};
  for (const name of keysOf(measures.right)) {
    const right2 = measures.right[name];
    const left = measures.left[name];
    if (right2 !== void 0 && left !== void 0) differences[name] = left - right2;
  }
  return { measures, differences };
}
function withUncertainties(readings, uncertainties2) {
  return mapReadings(readings, (value, path) => ({ value, u: uncertainties2[path] ?? 0 }));
}
function mapReadings(readings, map) {
  const mapped = {};
  for (const name of keysOf(readings)) {
    mapped[name] = mapSideReadings(readings[name], (value, path) => map(value, `${name}.${path}`));
  }
  return mapped;
}
function mapSideReadings({ measures, differences }, map) {
  const overMeasures = (of, path) => {
    const mapped = {};
    for (const name of keysOf(of)) {
      const value = of[name];
      if (value !== void 0) mapped[name] = map(value, `${path}.${name}`);
    }
    return mapped;
  };
  const { right: right2, left, startToStart } = measures;
  return {
    measures: {
      right: overMeasures(right2, "right"),
      left: overMeasures(left, "left"),
      ...startToStart === void 0 ? {} : { startToStart: map(startToStart, "startToStart") }
    },
    differences: overMeasures(differences, "difference")
  };
}
function outlineIfAny(dots, shape) {
  try {
    return outline(dots, shape);
  } catch (error) {
    if (error instanceof GeometryError && error.code === "inconsistent") return void 0;
    throw error;
  }
}

// src/mapping/plan/reading-rows.ts
var SIDE = MEASURE_NAMES.length;
var BETWEEN = 2 * SIDE;
var READ = BETWEEN + 1;
function fillSide(row, side, reading) {
  const from = side === "right" ? 0 : SIDE;
  MEASURE_NAMES.forEach((name, index) => {
    row[from + index] = reading[name] ?? Number.NaN;
  });
}
function meanSlopes(rowAt, centre) {
  const slopes = slopesOver(1, rowAt, centre);
  for (const share of NEARER) {
    const isOpen = slopes.some((slope, at2) => Number.isNaN(slope) && !Number.isNaN(centre[at2]));
    if (!isOpen) break;
    const near = slopesOver(share, rowAt, centre);
    slopes.forEach((slope, at2) => {
      if (Number.isNaN(slope)) slopes[at2] = near[at2];
    });
  }
  return slopes;
}
var NEARER = [1 / 8, 1 / 512];
function slopesOver(share, rowAt, centre) {
  const [up, down] = [rowAt(share), rowAt(-share)];
  return centre.map((value, index) => {
    const [above, below2] = [up[index], down[index]];
    const twice = above - below2;
    if (!Number.isNaN(twice)) return twice / (2 * share);
    return (Number.isNaN(above) ? value - below2 : above - value) / share;
  });
}
function slopesOf(read, placed, steps) {
  const centre = read(placed);
  return Array.from(placed, (at2, index) => {
    const known = steps[index];
    if (known === 0 || Number.isNaN(at2)) return void 0;
    const step = Number.isNaN(known) ? NOMINAL_STEP : known;
    const readAt = (amount) => {
      const moved = placed.slice();
      moved[index] = at2 + amount * step;
      return read(moved);
    };
    return meanSlopes(readAt, centre).map((slope) => slope / step);
  });
}
var NOMINAL_STEP = 0.1;
function rootOfSquares(rows, size) {
  const sums = new Float64Array(size);
  for (const row of rows) {
    for (let index = 0; index < size; index += 1) {
      sums[index] = sums[index] + row[index] ** 2;
    }
  }
  return sums.map(Math.sqrt);
}
function uncertainties(map, effects) {
  const differences = effects.map(
    (row) => row.subarray(SIDE, BETWEEN).map((left, index) => left - row[index])
  );
  const [spread, apart2] = [rootOfSquares(effects, READ), rootOfSquares(differences, SIDE)];
  const u = {};
  const name = (path, value) => {
    u[`${map}.${path}`] = value === void 0 || Number.isNaN(value) ? Infinity : value;
  };
  MEASURE_NAMES.forEach((measure, index) => {
    name(`right.${measure}`, spread[index]);
    name(`left.${measure}`, spread[SIDE + index]);
    name(`difference.${measure}`, apart2[index]);
  });
  name("startToStart", spread[BETWEEN]);
  return u;
}

// src/mapping/plan/cautions.ts
var CONTRADICTIONS = {
  "brow-raised": "expression-differs",
  "brow-lowered": "expression-differs",
  "declaration-questioned": "expression-differs",
  "expression-differs": "expression-differs",
  "stable-points-disagree": "pose-differs"
};
var WARNS = {
  retake: true,
  caution: true,
  unchecked: false,
  declared: false
};
function carrying({ code, text, values }) {
  const carriedAs = isContradiction(code) ? CONTRADICTIONS[code] : "capture-finding";
  return { ...note(CAUTIONS, carriedAs, { finding: text }), finding: { code, text, values } };
}
function isContradiction(code) {
  return Object.hasOwn(CONTRADICTIONS, code);
}
function cautionsFor(face, frame, declared, findings) {
  return [
    note(CAUTIONS, "planning-aid"),
    note(CAUTIONS, "local-law"),
    note(CAUTIONS, "hygiene"),
    ...sizeCautions(face),
    ...postureCautions(declared),
    ...frame === void 0 ? [] : scaleCautions(frame.scale),
    ...frame?.turning === void 0 ? turningCautions(face) : turnedCautions(frame.turning),
    ...eyeCautions(face, frame?.midline.tiltU ?? 0),
    ...findings.filter(({ severity = "caution" }) => WARNS[severity]).map(carrying),
    ...(face.standIns ?? []).map(
      ({ landmark, instead }) => note(CAUTIONS, "stand-in", { landmark, instead })
    )
  ];
}
var BIOCULAR = { least: 70, most: 115 };
var OF_A_BROW = 50;
var LEAST_OFF = 0.25;
function sizeCautions({ right: right2, left }) {
  const apart2 = distance(right2.exocanthion, left.exocanthion);
  if (apart2 >= BIOCULAR.least && apart2 <= BIOCULAR.most) return [];
  return [note(CAUTIONS, "size-implausible", { distance: apart2, ...BIOCULAR })];
}
function scaleCautions(scale) {
  const relative = scale.u / scale.factor;
  return [
    ...scale.notes.some(({ code }) => code === "population-average") ? [note(CAUTIONS, "scale-from-population-average")] : [],
    ...OF_A_BROW * relative < LEAST_OFF ? [] : [
      note(CAUTIONS, "scale-uncertain", { percent: 100 * relative, off: OF_A_BROW * relative })
    ]
  ];
}
function postureCautions({ upright: upright2, relaxed } = {}) {
  if (upright2 === false || relaxed === false) return [note(CAUTIONS, "posture-not-kept")];
  return upright2 === true && relaxed === true ? [] : [note(CAUTIONS, "posture-not-declared")];
}
function turningCautions(face) {
  if (face.midline.glabella === void 0 && face.midline.sellion === void 0) return [];
  const { note: differ } = halfFaces(face);
  if (differ === void 0) return [];
  return [note(CAUTIONS, "head-may-be-turned", { ...differ.values, finding: differ.text })];
}
var FRONTAL = 5;
function turnedCautions({ yaw, yawU }) {
  if (Math.abs(yaw) <= FRONTAL) return [];
  const side = yaw > 0 ? "left" : "right";
  return [note(CAUTIONS, "head-was-turned", { yaw: Math.abs(yaw), u: yawU, side })];
}
function eyeCautions(face, midlineU) {
  const { angle, decision } = eyeCant(face, { midline: { line: FACE_MIDLINE, tiltU: midlineU } });
  if (decision.outcome !== "outside") return [];
  return [
    note(CAUTIONS, "eyes-slant", {
      angle: Math.abs(angle.value),
      u: angle.u,
      side: angle.value > 0 ? "left" : "right",
      limit: decision.limits.upper ?? 0
    })
  ];
}

// src/mapping/plan/decide-shares.ts
function decideShares(measures, asked, tolerances, options) {
  const { right: right2, left } = eachSide((side) => {
    const share = measures[side].frontShare;
    return share && decideUnder(tolerances, "frontShare", share, options, asked).decision;
  });
  return right2 && left && { right: right2, left };
}

// src/mapping/dots/unevenness.ts
function pinBreaks(dots, skin, { arch, carry, frontShare: asked, levelLimit, pins }, { tolerances }) {
  if (pins.length === 0) return [];
  const [position, thickness] = [tolerances.position?.limits, tolerances.thickness?.limits];
  const pinned = (...names) => pins.some(({ dot: dot2 }) => names.includes(dot2));
  const levels = LEVEL_DOTS.filter(([, dot2]) => levelLimit === void 0 || pinned(dot2));
  const uneven = levels.flatMap(([code, dot2]) => {
    const { by, more } = apart((side) => dots[side][dot2][1]);
    const values = { dot: DOTS[dot2].words, higher: more };
    return broken(by, position).map((broke) => note(REASONS, code, { ...broke, ...values }));
  });
  const across = (carry === "measure" ? [] : LEVEL_DOTS).flatMap(([, dot2]) => {
    const { by, more } = apart((side) => placeOnSide(dots[side][dot2], side).distance);
    const values = { dot: DOTS[dot2].words, farther: more };
    return broken(by, position).map(
      (broke) => note(REASONS, "pins-break-distances", { ...broke, ...values })
    );
  });
  const thick = keysOf(STATIONS).flatMap((station) => {
    const { upper, lower } = STATIONS[station];
    const { by, more } = apart((side) => dots[side][upper][1] - dots[side][lower][1]);
    return broken(by, thickness).map(
      (broke) => note(REASONS, "pins-break-thickness", { ...broke, station, thicker: more })
    );
  });
  const decides = arch === "brow-length-share" && pinned("upperStart", "upperArch", "tailEnd");
  const shares = (decides ? SIDES : []).flatMap((side) => {
    const { upperStart, upperArch, tailEnd } = dots[side];
    const front = lengthBetween(upperStart, upperArch, skin);
    const share = frontShare(front, lengthBetween(upperArch, tailEnd, skin));
    return broken(share - asked, tolerances.frontShare?.limits).map(
      (broke) => note(REASONS, "pins-break-share", { ...broke, side, share, asked })
    );
  });
  return [...uneven, ...across, ...thick, ...shares];
}
var LEVEL_DOTS = [
  ["pins-break-levels", "upperStart"],
  ["pins-break-levels", "upperArch"],
  ["pins-break-tail-heights", "tailEnd"]
];
function apart(of) {
  const { right: right2, left } = eachSide(of);
  return { by: left - right2, more: right2 > left ? "right" : "left" };
}
function broken(difference2, { lower = -Infinity, upper = Infinity } = {}) {
  if (difference2 >= lower - ROUNDING6 && difference2 <= upper + ROUNDING6) return [];
  return [{ difference: Math.abs(difference2), limit: Math.abs(difference2 > 0 ? upper : lower) }];
}
var EVENED = ["upperStart", "upperArch", "tailEnd"];
function heldLevels(dots, { levelLimit, pins }) {
  if (levelLimit === void 0) return [];
  return EVENED.filter((dot2) => pins.every((pin) => pin.dot !== dot2)).flatMap((dot2) => {
    const { right: right2, left } = eachSide((side) => dots[side][dot2][1]);
    const difference2 = Math.abs(left - right2);
    if (difference2 <= ROUNDING6) return [];
    const higher = right2 > left ? "right" : "left";
    return [
      note(REASONS, "levels-held-back", {
        dot: DOTS[dot2].words,
        difference: difference2,
        limit: levelLimit,
        higher
      })
    ];
  });
}
var ROUNDING6 = 1e-9;

// src/mapping/choices/require-choices.ts
function requireChoices(where, choices) {
  const { levelLimit, thickness, shape = {}, pins = [] } = choices;
  for (const field of keysOf(WORDS)) {
    requireWord(where, field, choices[field], WORDS[field]);
  }
  for (const field of keysOf(CHOSEN_SHARES)) {
    const [least, most] = CHOSEN_SHARES[field];
    requireWithin(where, field, choices[field] ?? least, least, most);
  }
  requireShape(where, "shape", shape);
  for (const station of keysOf(STATIONS)) {
    if (thickness) requirePositive(where, `thickness.${station}`, thickness[station]);
  }
  requireFlag(where, "noseBent", choices.noseBent);
  requireFlag(where, "declared.upright", choices.declared?.upright);
  requireFlag(where, "declared.relaxed", choices.declared?.relaxed);
  if (choices.tolerances !== void 0) {
    const named = choices.tolerances.tolerances;
    requireObject(where, "tolerances.tolerances", named, "limits by name, as in a tolerance set");
  }
  if (levelLimit !== void 0) requirePositive(where, "levelLimit", levelLimit);
  if (choices.carry === "measure") requireCarriable(where, choices);
  requireUsablePins(where, pins);
}
var WORDS = {
  lead: keysOf(LEADS),
  carry: keysOf(CARRIES),
  levels: LEVELS,
  start: START_CONVENTIONS,
  arch: ARCH_CONVENTIONS,
  tail: TAIL_CONVENTIONS,
  tailHeight: keysOf(TAIL_HEIGHTS),
  rule: DECISION_RULES
};
function requireFlag(where, field, value) {
  if (value === void 0 || typeof value === "boolean") return;
  refuse("not-parsed", where, field, value, "true or false");
}
function requireCarriable(where, { lead, levelLimit }) {
  if (lead === void 0 || lead === "middle") {
    const need = "right or left: a brow is carried by measure from the one that leads";
    refuse("inconsistent", where, "lead", lead, need);
  }
  if (levelLimit !== void 0) {
    const need = "a brow that is mirrored: one carried by measure takes the leading heights";
    refuse("inconsistent", where, "levelLimit", levelLimit, need);
  }
}
function requireUsablePins(where, pins) {
  if (!isList(pins)) refuse("out-of-range", where, "pins", pins, "a list");
  pins.forEach((pin, index) => {
    const field = `pins[${index}]`;
    requireWord(where, `${field}.side`, pin.side, SIDES);
    requireWord(where, `${field}.dot`, pin.dot, DOT_NAMES);
    requireFinitePoint(where, `${field}.at`, pin.at);
    const earlier = pins.findIndex(({ side, dot: dot2 }) => side === pin.side && dot2 === pin.dot);
    if (earlier !== index) {
      const need = `one pin for the ${pin.side} ${pin.dot}, which pins[${earlier}] fixes at [${pins[earlier]?.at.join(", ") ?? ""}]`;
      refuse("contradicting-pins", where, field, pin.at, need);
    }
    const outward = pin.side === "left" ? pin.at[0] : -pin.at[0];
    if (outward <= 0) {
      const need = `a point on the client's ${pin.side} (x ${pin.side === "left" ? "above" : "below"} 0)`;
      refuse("contradicting-pins", where, `${field}.at`, pin.at, need);
    }
  });
}
function isList(value) {
  return Array.isArray(value);
}

// src/mapping/dots/settle-thickness.ts
var LEAST = 1;
function settleThickness(face, natural, skin, lead, frontShare2, chosen2) {
  if (chosen2 !== void 0) {
    return { value: chosen2, reasons: [note(REASONS, "thickness-chosen", { ...chosen2 })] };
  }
  const grown = grownThickness(face, natural, skin, lead, frontShare2);
  const value = { ...STATION_THICKNESS, ...grown };
  const assumed = keysOf(STATIONS).filter((station) => grown[station] === void 0);
  const assumption = note(REASONS, "thickness-assumed", { ...value, assumed: assumed.join(", ") });
  return {
    value,
    reasons: [assumed.length === 0 ? note(REASONS, "thickness-natural", { ...value }) : assumption]
  };
}
function grownThickness(face, natural, skin, lead, frontShare2) {
  const grown = ledSides(lead).map(
    (side) => stationsOf(face[side].brow, natural[side], skin, frontShare2)
  );
  const known = {};
  for (const station of keysOf(STATIONS)) {
    const thickness = meanOf3(grown.map((stations) => stations[station]));
    if (thickness !== void 0) known[station] = thickness;
  }
  return known;
}
function stationsOf({ upper, lower }, { dots, arch }, skin, frontShare2) {
  if (lower === void 0) return {};
  const { upperStart, tailEnd } = dots;
  const archDot = arch.kind === "flat" ? archAtShare(upper, upperStart, tailEnd, skin, frontShare2).at : arch.at;
  const bodyX = length((upperStart[0] + archDot[0]) / 2);
  const under = (x, from) => {
    const to = heightOver(length(x), lower);
    if (from === void 0 || to === void 0 || from - to < LEAST) return void 0;
    return length(from - to);
  };
  return {
    start: under(upperStart[0], upperStart[1]),
    body: under(bodyX, heightOver(bodyX, upper)),
    arch: under(archDot[0], archDot[1])
  };
}
function meanOf3(values) {
  const known = values.filter((value) => value !== void 0);
  if (known.length < values.length) return void 0;
  return length(known.reduce((sum, value) => sum + value, 0) / known.length);
}

// src/mapping/dots/settle-choices.ts
var FRONT_SHARE = 2 / 3;
var ALARE_LIMIT = 2;
function settleChoices(face, natural, skin, choices, midlineU) {
  requireChoices("planDots", choices);
  const lead = choices.lead ?? "middle";
  const levels = settleLevels(natural, choices.levels ?? lead);
  const start = settleStart(face, choices, midlineU);
  const frontShare2 = choices.frontShare ?? FRONT_SHARE;
  const arch = settleArch(face, natural, lead, choices.arch ?? "natural", frontShare2);
  const thickness = settleThickness(face, natural, skin, lead, frontShare2, choices.thickness);
  const tail = choices.tail ?? "alare-through-exocanthion";
  const tailHeight = choices.tailHeight ?? "natural";
  const pins = choices.pins ?? [];
  const carry = choices.carry ?? "mirror";
  const unlessPinned = (dot2, reasons) => pins.some((pin) => pin.dot === dot2) && (carry === "mirror" || dot2 !== "upperStart") ? [] : reasons;
  return {
    value: {
      lead,
      carry,
      levels,
      ...choices.levelLimit === void 0 ? {} : { levelLimit: choices.levelLimit },
      start: start.value,
      arch: arch.value,
      tail,
      eyeWidthShare: choices.eyeWidthShare ?? ARCH_EYE_WIDTH_SHARE,
      frontShare: frontShare2,
      tailHeight,
      thickness: thickness.value,
      shape: choices.shape ?? {},
      pins
    },
    reasons: [
      leadReason(lead, carry),
      levels === "middle" ? note(REASONS, "levels-middle") : note(REASONS, "levels-side", { levels }),
      ...unlessPinned("upperStart", start.reasons),
      ...unlessPinned("upperArch", arch.reasons),
      ...unlessPinned("tailEnd", [
        note(REASONS, "tail-at-guide", {
          guide: conventionWords(tail),
          height: TAIL_HEIGHT_WORDS[tailHeight]
        })
      ]),
      ...thickness.reasons,
      ...pins.map(
        ({ side, dot: dot2, by = THE_ARTIST, reason: why }) => note(REASONS, "pinned", {
          side,
          dot: dot2,
          name: DOTS[dot2].words,
          by,
          reason: why === void 0 ? "" : `: ${why}`
        })
      )
    ]
  };
}
function leadReason(lead, carry) {
  if (lead === "middle") return note(REASONS, "lead-middle");
  return note(REASONS, CARRIES[carry], { lead });
}
function settleLevels(natural, levels) {
  if (levels !== "higher") return levels;
  const height = eachSide((side) => {
    const { dots, arch } = natural[side];
    return dots.upperStart[1] + (arch.kind === "flat" ? dots.upperStart : arch.at)[1];
  });
  return height.right >= height.left ? "right" : "left";
}
function settleStart(face, choices, midlineU) {
  if (choices.start !== void 0) {
    return { value: choices.start, reasons: [chosen("start-chosen", choices.start)] };
  }
  const lateral = eachSide(
    (side) => placeOnSide(face[side].alare, side).distance - placeOnSide(face[side].endocanthion, side).distance
  );
  const values = { right: lateral.right, left: lateral.left, limit: ALARE_LIMIT };
  const standIn = alareStandIn(face);
  const atEndocanthion = (why) => ({
    value: "endocanthion-vertical",
    reasons: [why]
  });
  if (choices.noseBent === true) {
    return atEndocanthion(note(REASONS, "start-at-endocanthion-nose-bent", values));
  }
  const deviation = choices.noseBent === false ? void 0 : bentNose(face, midlineU);
  if (deviation !== void 0) {
    const said = { ...values, ...deviation };
    return atEndocanthion(note(REASONS, "start-at-endocanthion-nose-deviates", said));
  }
  if (standIn !== void 0) {
    const said = { ...values, instead: standIn.instead };
    return atEndocanthion(note(REASONS, "start-at-endocanthion-stand-in", said));
  }
  if (Math.max(lateral.right, lateral.left) > ALARE_LIMIT) {
    return atEndocanthion(note(REASONS, "start-at-endocanthion-nose-wide", values));
  }
  return { value: "alare-vertical", reasons: [note(REASONS, "start-at-alare", values)] };
}
function chosen(code, convention) {
  return note(REASONS, code, { convention, place: conventionWords(convention) });
}
function bentNose(face, midlineU) {
  const { sellion, subnasale } = face.midline;
  if (sellion === void 0 || subnasale === void 0) return void 0;
  const { angle, bent: bent2, decision } = noseDeviation(
    { ...face, midline: { ...face.midline, sellion, subnasale } },
    { midline: { line: FACE_MIDLINE, tiltU: midlineU } }
  );
  const { upper = 0 } = decision.limits;
  return bent2 ? { angle: Math.abs(angle.value), u: angle.u, limit: upper } : void 0;
}
function alareStandIn(face) {
  return face.standIns?.find(({ landmark }) => landmark === "alare");
}
function settleArch(face, natural, lead, choice, frontShare2) {
  if (choice !== "natural") {
    return { value: choice, reasons: [chosen("arch-chosen", choice)] };
  }
  const sides = ledSides(lead);
  const withoutArch = sides.flatMap((side) => {
    const { arch } = natural[side];
    switch (arch.kind) {
      case "flat":
        return [note(REASONS, "arch-flat", { side, rise: arch.rise.value, share: frontShare2 })];
      case "undetermined":
        return [note(REASONS, "arch-undetermined", { side, u: arch.u, share: frontShare2 })];
      case "peak":
        return [];
    }
  });
  return withoutArch.length > 0 ? { value: "brow-length-share", reasons: withoutArch } : {
    value: "natural",
    reasons: sides.flatMap((side) => naturalArchReasons(face, natural[side].arch, side))
  };
}
function inWords2({ convention }) {
  return fill(ARCH_LIMITS[convention], { share: LIMBUS_SHARE });
}
function naturalArchReasons(face, arch, side) {
  if (arch.kind === "flat") return [];
  const { distance: distance2 } = placeOnSide(arch.at, side);
  const { inner, outer } = archLimits(face, side);
  if (distance2 < inner.distance) {
    const short = inner.distance - distance2;
    return [note(REASONS, "arch-moved-outward", { side, limit: inWords2(inner), distance: short })];
  }
  if (distance2 > outer.distance) {
    const beyond = distance2 - outer.distance;
    return [note(REASONS, "arch-moved-inward", { side, limit: inWords2(outer), distance: beyond })];
  }
  const endocanthion = placeOnSide(face[side].endocanthion, side).distance;
  const share = (distance2 - endocanthion) / (outer.distance - endocanthion);
  return [note(REASONS, "arch-natural", { side, share })];
}

// src/mapping/dots/plan-dots.ts
function planAcross(midlineU, face, choices) {
  const u = landmarkUncertainty(face, "brow");
  const natural = eachSide((side) => naturalDots(face[side].brow, { u }));
  const skin = skinOf(face);
  const settled2 = settleChoices(face, natural, skin, choices, midlineU);
  const { dots, origins, guides, events } = solveDots(face, natural, skin, settled2.value);
  for (const side of pinnedFirst(settled2.value.pins)) {
    requireDotsInOrder("planDots", dots[side], side, settled2.value.pins);
    requireOutline(dots[side], side, settled2.value);
  }
  return {
    face,
    skin,
    choices: settled2.value,
    reasons: [
      ...settled2.reasons,
      ...carryReasons(dots, settled2.value),
      ...eventReasons(events),
      ...heldLevels(dots, settled2.value),
      ...pinBreaks(dots, skin, settled2.value, choices.tolerances ?? WORKING_TOLERANCES)
    ],
    natural,
    guides,
    dots,
    origins
  };
}
function pinnedFirst(pins) {
  return pins[0]?.side === "left" ? ["left", "right"] : SIDES;
}
function eventReasons(events) {
  const notes = events.map(
    ({ code, side, mark }) => note(REASONS, code, { side, mark: MARKS[mark] })
  );
  return notes.filter((one, index) => notes.findIndex(({ text }) => text === one.text) === index);
}
function requireOutline(dots, side, { shape, pins, carry }) {
  if (pins.length === 0 && carry === "mirror") return;
  try {
    outline(dots, shape);
  } catch (error) {
    if (!(error instanceof GeometryError) || error.code !== "inconsistent") throw error;
    const { field, value, need } = error.detail;
    const dot2 = DOT_NAMES.find((name) => field === `dots.${name}`);
    const code = pins.length > 0 ? "contradicting-pins" : "no-solution";
    refuse(code, "planDots", dot2 ? `${side} ${dot2}` : field, value, withPins(need, pins));
  }
}

// src/mapping/plan/face-inputs.ts
var PARTS = ["right", "left", "midline"];
var NOTHING = { right: {}, left: {}, midline: {} };
function errorSources(face, read, unitsPerMillimetre, [alongX, alongY]) {
  const sources = [];
  for (const part of PARTS) {
    let count = 0;
    mapFace({ ...NOTHING, [part]: face[part] }, (point, landmark) => {
      const index = count++;
      if (landmark === void 0 || !read.includes(landmark)) return point;
      const u = landmarkUncertainty(face, landmark) * unitsPerMillimetre;
      for (const [x, y] of [
        [alongY, -alongX],
        [alongX, alongY]
      ]) {
        const source = [];
        source[index] = [u * x, u * y];
        sources.push({ [part]: source });
      }
      return point;
    });
  }
  return sources;
}
function withError(face, source, times) {
  const moved = { ...face };
  for (const part of PARTS) {
    const moves = source[part];
    if (moves === void 0) continue;
    let next = 0;
    const map = (point) => {
      const move = moves[next++];
      if (move === void 0) return point;
      const x = point[0] + times * move[0];
      const y = point[1] + times * move[1];
      return hasDepth(point) ? deepPoint(x, y, point[2]) : flatPoint(x, y);
    };
    if (part === "midline")
      moved.midline = mapFace({ ...NOTHING, midline: face.midline }, map).midline;
    else moved[part] = mapFace({ ...NOTHING, right: face[part] }, map).right;
  }
  return moved;
}

// src/mapping/plan/plan-causes.ts
var READ2 = [
  "endocanthion",
  "exocanthion",
  "pupil",
  "limbusLateral",
  "alare",
  "upperLid",
  "brow"
];
var FITTED = [
  "cheilion",
  "glabella",
  "sellion",
  "pronasale",
  "subnasale",
  "labialeSuperius",
  "stomion"
];
function causesOnPhoto(plan, frame) {
  const truth = onlyRead(plan);
  const { midline, scale, turning } = frame;
  const { method } = midline;
  const errs = (map) => (amount) => seenBy(map(amount), truth);
  const causes = [
    skinCause(truth, turning),
    sizeCause(truth, scale.u / scale.factor),
    ...cameraCauses(truth, frame).map(errs)
  ];
  if (turning === void 0 && method !== "given" && method !== "plane") {
    const space = (face) => spaceOf(face, method);
    return [...landmarkCauses(truth, [...READ2, ...FITTED], space), ...causes];
  }
  const shift = midline.throughU * scale.factor;
  return [
    ...landmarkCauses(truth, READ2, levelOf),
    ...causes,
    errs((amount) => intoSpace({ x: 0, y: 0, lean: amount * toRadians(midline.tiltU) })),
    errs((amount) => intoSpace({ x: amount * shift, y: 0, lean: 0 })),
    ...turning === void 0 ? [] : [errs((amount) => turnedBy(turning, { yaw: amount * turning.yawU, depth: 0 }))]
  ];
}
function landmarkCauses({ face, skin, pins }, read, spaceIn) {
  const own = spaceIn?.(face);
  return errorSources(face, read, 1, UPRIGHT).map((source) => (amount) => {
    const moved = { face: withError(face, source, amount), skin, pins };
    if (spaceIn === void 0 || own === void 0) return moved;
    const { x, y, lean } = spaceIn(moved.face);
    const by = { x: x - own.x, y: y - own.y, lean: lean - own.lean };
    return by.x === 0 && by.y === 0 && by.lean === 0 ? moved : seenBy(intoSpace(by), moved);
  });
}
var UPRIGHT = [0, 1];
function levelOf({ right: right2, left }) {
  return { x: 0, y: (right2.endocanthion[1] + left.endocanthion[1]) / 2, lean: 0 };
}
function skinCause(truth, turning) {
  const u = skinUncertainty(truth.skin);
  return (amount) => {
    const skin = deepen(truth.skin, 1 + amount * u);
    if (turning === void 0) return { ...truth, skin };
    return seenBy(turnedBy(turning, { yaw: 0, depth: amount * u }), truth, skin);
  };
}
function turnedBy(turning, by) {
  return (point) => {
    const x = point[0] + turningShift(point, turning, by);
    return hasDepth(point) ? deepPoint(x, point[1], point[2]) : flatPoint(x, point[1]);
  };
}
function sizeCause(truth, relativeU) {
  return (amount) => {
    const times = 1 + amount * relativeU;
    return seenBy(
      enlargedBy(() => times),
      truth,
      enlargeSkin(truth.skin, times)
    );
  };
}
function enlargedBy(times) {
  return (point, landmark) => {
    const by = times(point, landmark === "brow" && !hasDepth(point));
    const [x, y] = [by * point[0], by * point[1]];
    return hasDepth(point) ? deepPoint(x, y, by * point[2]) : flatPoint(x, y);
  };
}
function cameraCauses({ skin }, { scale, camera }) {
  if (camera === void 0) return [];
  const distanceU = scale.cameraDistance?.u ?? 0;
  const farther = (amount) => enlargedBy((point, onSkin2) => {
    const modelled = onSkin2 ? camera.prominence + depthAt(point, skin) : 0;
    const depth = hasDepth(point) ? point[2] : modelled;
    return 1 + amount * depth * distanceU / camera.distance ** 2;
  });
  const nearer2 = (amount) => enlargedBy((_, onSkin2) => onSkin2 ? 1 - amount * BROW_PROMINENCE.u / camera.distance : 1);
  return camera.skin.kind === "fitted" ? [farther] : [farther, nearer2];
}
function onlyRead(plan) {
  const { symmetricPoints: _, right: right2, left, midline, ...rest } = plan.face;
  const face = { ...rest, right: sideRead(right2), left: sideRead(left), midline: sorted(midline) };
  return { ...plan, face };
}
function sideRead(side) {
  const { lowerLid: _lower, limbusMedial: _medial, upperLid, ...read } = sorted(side);
  const [x] = side.pupil ?? side.exocanthion;
  return upperLid === void 0 ? read : { ...read, upperLid: stretchAround(x, upperLid) };
}
function sorted(part) {
  const entries = Object.entries(part).sort(([one], [other]) => one < other ? -1 : 1);
  return Object.fromEntries(entries);
}
function stretchAround(x, line) {
  const [first, last] = [line[0]?.[0] ?? 0, line[line.length - 1]?.[0] ?? 0];
  const outwards = Math.sign(last - first);
  const next = line.findIndex((point) => outwards * (point[0] - x) > 0);
  const after = next < 0 ? line.length : next;
  return line.slice(Math.max(0, after - 2), Math.max(after + 2, 2));
}
function seenBy(map, { face, skin: own, pins }, skin = own) {
  return {
    face: mapFace(face, map),
    skin,
    pins: pins.map((pin) => ({ ...pin, at: map(pin.at, "brow") }))
  };
}

// src/mapping/plan/plan-slopes.ts
function planUncertainty(plan, causes, grown) {
  const stateOf = stateReader(plan, grown);
  const readPlanned = plannedReader(plan);
  const centre = stateOf({ face: plan.face, skin: plan.skin, pins: plan.choices.pins });
  const placed = placedIn(centre);
  centre.set(readPlanned(placed, plan.skin), BY_SKIN);
  const effects = causes.map(
    (cause) => meanSlopes((amount) => {
      const variation = ifAny(() => cause(amount));
      const state = stateOf(variation);
      const skin = variation?.skin ?? plan.skin;
      const read = skin === plan.skin ? centre.subarray(BY_SKIN) : readPlanned(placed, skin);
      state.set(read, BY_SKIN);
      return state;
    }, centre)
  );
  const steps = rootOfSquares(effects.map(placedIn), placed.length);
  const columns = slopesOf((row) => readPlanned(row, plan.skin), placed, steps);
  const planned = effects.map(
    (effect) => throughPlaces(effect.slice(BY_SKIN), columns, placedIn(effect))
  );
  return {
    ...uncertainties(
      "natural",
      effects.map((effect) => effect.subarray(0, READ))
    ),
    ...uncertainties("planned", planned)
  };
}
var AFTER_DOTS = 14;
var PLACED = AFTER_DOTS + 4;
var BY_SKIN = READ + 2 * PLACED;
var STATE = BY_SKIN + READ;
function placedIn(state) {
  return state.subarray(READ, BY_SKIN);
}
function stateReader(plan, grown) {
  const own = eachSide((side) => readGrown(plan.face, side, plan.skin, plan.natural[side]));
  return (variation) => {
    const state = new Float64Array(STATE).fill(Number.NaN);
    if (variation === void 0) return state;
    const { face, skin } = variation;
    const hair = eachSide((side) => {
      const isOwn = face[side] === plan.face[side] && skin === plan.skin;
      return isOwn ? own[side] : readGrown(face, side, skin);
    });
    for (const side of SIDES) fillSide(state, side, hair[side].reading);
    const natural = eachSide((side) => hair[side].natural);
    state[BETWEEN] = lengthBetween(
      natural.right.dots.upperStart,
      natural.left.dots.upperStart,
      skin
    );
    const dots = ifAny(() => solvedDots(plan, variation, natural, grown));
    if (dots === void 0) return state;
    SIDES.forEach((side, index) => {
      const from = READ + index * PLACED;
      fillDots(state.subarray(from), dots[side]);
      const { exocanthion, pupil, upperLid } = face[side];
      const lid = pupil && upperLid && heightOver(length(pupil[0]), upperLid);
      state.set([exocanthion[0], exocanthion[1]], from + AFTER_DOTS);
      if (lid !== void 0) state.set([pupil?.[0] ?? 0, lid], from + AFTER_DOTS + 2);
    });
    return state;
  };
}
function readGrown(face, side, skin, known) {
  const { brow } = face[side];
  const natural = known ?? naturalDots(brow, { u: landmarkUncertainty(face, "brow") });
  const context = { side, landmarks: face[side], skin, borders: brow };
  return { natural, reading: readSide2(natural.dots, context) };
}
function solvedDots({ choices }, { face, skin, pins }, natural, grown) {
  const { lead, frontShare: frontShare2 } = choices;
  const thickness = {
    ...choices.thickness,
    ...grown ? grownThickness(face, natural, skin, lead, frontShare2) : {}
  };
  return solveDots(face, natural, skin, { ...choices, thickness, pins }).dots;
}
function ifAny(question) {
  try {
    return question();
  } catch (error) {
    if (error instanceof GeometryError) return void 0;
    throw error;
  }
}
function plannedReader({ face, choices }) {
  return (placed, skin) => {
    const row = new Float64Array(READ);
    const starts = eachSide((side) => {
      const at2 = placed.subarray(side === "right" ? 0 : PLACED);
      const dots = dotsIn(at2);
      const borders = outlineIfAny(dots, choices.shape);
      const landmarks = eyeIn(at2, face[side]);
      const context = { side, landmarks, skin, ...borders === void 0 ? {} : { borders } };
      fillSide(row, side, readSide2(dots, context));
      return dots.upperStart;
    });
    row[BETWEEN] = lengthBetween(starts.right, starts.left, skin);
    return row;
  };
}
var LIES_FROM = {
  upperStart: [],
  upperArch: [],
  tailEnd: [],
  upperBody: ["upperStart", "upperArch"],
  lowerStart: ["upperStart"],
  lowerBody: ["upperBody"],
  lowerArch: ["upperArch"]
};
var IN_ROW = keysOf(LIES_FROM);
function fillDots(row, dots) {
  IN_ROW.forEach((dot2, index) => {
    const [x, y] = dots[dot2];
    const [fromX, fromY] = middleOf(LIES_FROM[dot2], dots);
    row[2 * index] = x - fromX;
    row[2 * index + 1] = y - fromY;
  });
}
function dotsIn(row) {
  const dots = {};
  IN_ROW.forEach((dot2, index) => {
    const [x, y] = placeIn(row, 2 * index);
    const [fromX, fromY] = middleOf(LIES_FROM[dot2], dots);
    dots[dot2] = flatPoint(x + fromX, y + fromY);
  });
  return dots;
}
function middleOf(names, dots) {
  const places = names.map((name) => dots[name]);
  const mean = (axis) => places.reduce((sum, place) => sum + place[axis] / places.length, 0);
  return flatPoint(mean(0), mean(1));
}
function placeIn(row, index) {
  return flatPoint(row[index], row[index + 1]);
}
function eyeIn(placed, { exocanthion }) {
  const [outer, height] = placeIn(placed, AFTER_DOTS);
  const corner = hasDepth(exocanthion) ? deepPoint(outer, height, exocanthion[2]) : flatPoint(outer, height);
  const [x, lid] = placeIn(placed, AFTER_DOTS + 2);
  if (Number.isNaN(lid)) return { exocanthion: corner };
  const upperLid = [flatPoint(x - 1, lid), flatPoint(x + 1, lid)];
  return { exocanthion: corner, pupil: flatPoint(x, lid), upperLid };
}
function throughPlaces(row, columns, placed) {
  columns.forEach((column, index) => {
    const by = placed[index];
    if (column === void 0 || by === 0) return;
    column.forEach((slope, at2) => {
      if (slope !== 0) row[at2] = row[at2] + slope * by;
    });
  });
  return row;
}

// src/mapping/dots/plannable-face.ts
function requirePlannable(face) {
  const missing = SIDES.flatMap(
    (side) => NEEDED.filter((name) => face[side][name] === void 0).map((name) => `${side}.${name}`)
  );
  if (missing.length > 0) {
    const need = "these landmarks on both sides";
    refuse("missing-landmark", "requirePlannable", missing.join(", "), void 0, need);
  }
  return face;
}
var NEEDED = ["endocanthion", "exocanthion", "alare", "brow"];

// src/mapping/plan/plan-brows.ts
function planOnPhoto(photo, frame, choices = {}, options = {}) {
  return refusingAs("planOnPhoto", () => {
    const plan = planAcross(frame.midline.tiltU, requirePlannable(toFace(photo, frame)), choices);
    const causes = (truth) => causesOnPhoto(truth, frame);
    return { ...finishedPlan(plan, causes, choices, options, frame), frame };
  });
}
function finishedPlan(plan, causes, choices, { findings = [] }, frame) {
  const { face, skin } = plan;
  const truth = { face, skin, pins: plan.choices.pins };
  const u = planUncertainty(plan, causes(truth), choices.thickness === void 0);
  const { natural, planned } = withUncertainties(readPlan(plan.face, plan.skin, plan.choices), u);
  const grown = eachSide((side) => plan.natural[side].dots);
  const { rule: rule2, tolerances = WORKING_TOLERANCES } = choices;
  const judged2 = { tolerances, ...rule2 === void 0 ? {} : { rule: rule2 } };
  const asked = plan.choices.frontShare;
  const shareDecisions = decideShares(planned.measures, asked, tolerances, judged2);
  return {
    ...plan,
    measures: planned.measures,
    comparison: compared(planned, judged2),
    ...shareDecisions === void 0 ? {} : { shareDecisions },
    naturalMeasures: natural.measures,
    naturalComparison: compared(natural, judged2),
    moves: movesBetween(grown, plan.dots),
    cautions: cautionsFor(plan.face, frame, choices.declared, findings)
  };
}
function compared({ measures, differences }, judged2) {
  return compareSides(measures, { ...judged2, differences });
}

// ../../all.ts
import fs from "fs";
var n = 0;
var unknown = {};
var thrown = 0;
for (const line of fs.readFileSync("/work/shared/data/london-faces.ndjson", "utf8").trim().split("\n")) {
  const d = JSON.parse(line);
  const o = { coordinates: "pixels", image: { width: d.width, height: d.height }, mirrored: "no" };
  const mesh = fromMarkup("mesh-478", d.mesh478, o), p68 = fromMarkup("points-68", d.points68, o);
  const ms = scaleFromIris(mesh);
  const tf = turnToFront(mesh, ms);
  for (const [name, f] of [["mesh", () => planOnPhoto(mesh, faceFrame(mesh, ms))], ["turned", () => planOnPhoto(mesh, tf.frame ?? tf)], ["68", () => planOnPhoto(p68, faceFrame(p68, ms))]]) {
    try {
      const p = f();
      n++;
      for (const part of ["naturalMeasures", "measures"]) for (const s of ["right", "left"]) for (const [k, v] of Object.entries(p[part][s])) if (!Number.isFinite(v.u)) unknown[name + part + k] = (unknown[name + part + k] || 0) + 1;
    } catch (e) {
      thrown++;
      console.log(name, d.face, e.message.slice(0, 150));
    }
  }
}
console.log(n, thrown, unknown);
