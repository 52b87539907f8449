export type { FilePoint, PointSet, ReadLimits } from "./point-set.js";
export { type CocoOptions, readCocoKeypoints } from "./read-coco-keypoints.js";
export { type CsvOptions, readCsv } from "./read-csv.js";
export { readNdjson } from "./read-ndjson.js";
export { type PtsOptions, readPts } from "./read-pts.js";
export { readTps, type TpsOptions } from "./read-tps.js";
export { type Cell, writeCsv, writeTable } from "./write-csv.js";
export { writeNdjson } from "./write-ndjson.js";
export { writeTps } from "./write-tps.js";
