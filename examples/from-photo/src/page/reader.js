/* global document, FaceMesh, Image, window */

/**
 * @typedef {{ x: number, y: number, size: number }} PhotoWindow  A square of the photo, in pixels.
 * @typedef {[x: number, y: number, z: number][]} Mesh
 * @typedef {{ window: PhotoWindow, landmarks: Mesh }} FoundFace
 */

/** Without useCpuInference every frame goes through the software renderer, five times as slowly. */
const options = { refineLandmarks: true, maxNumFaces: 10, useCpuInference: true };
/** Sides of the windows searched, as shares of the photo's longer side. */
const searchShares = [1, 1 / 2, 0.3];
/** Searching needs no detail: the detector looks at a copy of 128 px. */
const searchPixels = 512;
const readingPixels = 1024;
/** Side of the window that a face is read in, in sizes of the face. */
const roomAroundFace = 3;

/** @type {Mesh[]} */
let latest = [];
// @ts-expect-error the package declares a module, and is a plain script
const detector = new FaceMesh({ locateFile: (/** @type {string} */ file) => `/mesh/${file}` });
detector.setOptions(options);
detector.onResults((/** @type {any} */ results) => {
  latest = (results.multiFaceLandmarks ?? []).map((/** @type {any} */ face) =>
    face.map((/** @type {any} */ point) => [point.x, point.y, point.z]),
  );
});

/** @param {HTMLImageElement} photo @param {PhotoWindow} window @param {number} pixels */
function windowOf(photo, window, pixels) {
  const canvas = document.createElement("canvas");
  const side = Math.min(window.size, pixels);
  canvas.width = canvas.height = side;
  const context = /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d"));
  context.fillStyle = "#808080";
  context.fillRect(0, 0, side, side);
  const scale = side / window.size;
  const show = () => {
    context.imageSmoothingQuality = "high";
    context.drawImage(
      photo,
      -window.x * scale,
      -window.y * scale,
      photo.naturalWidth * scale,
      photo.naturalHeight * scale,
    );
  };
  return { canvas, show };
}

/**
 * The faces in one window, in pixels of the photo.
 * @param {HTMLImageElement} photo @param {PhotoWindow} window @param {number} pixels
 * @returns {Promise<Mesh[]>}
 */
async function facesIn(photo, window, pixels) {
  const { canvas, show } = windowOf(photo, window, pixels);
  // The detector takes pictures for a film and starts from where the last one had its faces:
  // an empty frame makes it forget them.
  await detector.send({ image: canvas });
  if (latest.length > 0) throw new Error("the detector finds a face in an empty frame");
  show();
  await detector.send({ image: canvas });
  const { x: left, y: top, size } = window;
  return latest.map((face) => face.map(([x, y, z]) => [left + x * size, top + y * size, z * size]));
}

/** @param {Mesh} face */
function extent(face) {
  const across = face.map(([x]) => x);
  const down = face.map(([, y]) => y);
  const [left, right] = [Math.min(...across), Math.max(...across)];
  const [top, bottom] = [Math.min(...down), Math.max(...down)];
  return {
    x: (left + right) / 2,
    y: (top + bottom) / 2,
    size: Math.max(right - left, bottom - top),
  };
}

/**
 * The face read in a window of its own around the place where one was seen.
 * @param {HTMLImageElement} photo @param {ReturnType<typeof extent>} there
 * @returns {Promise<FoundFace | undefined>}
 */
async function faceNear(photo, there) {
  const size = Math.round(there.size * roomAroundFace);
  const window = { x: Math.round(there.x - size / 2), y: Math.round(there.y - size / 2), size };
  const [nearest] = (await facesIn(photo, window, readingPixels))
    .map((landmarks) => {
      const here = extent(landmarks);
      return { landmarks, distance: Math.hypot(here.x - there.x, here.y - there.y) };
    })
    .sort((one, other) => one.distance - other.distance);
  return nearest && nearest.distance < there.size / 2
    ? { window, landmarks: nearest.landmarks }
    : undefined;
}

/** Where windows of one size stand along a side of the photo, overlapping by at least a half. */
function places(/** @type {number} */ length, /** @type {number} */ size) {
  if (size >= length) return [Math.round((length - size) / 2)];
  const steps = Math.ceil((2 * (length - size)) / size);
  return Array.from({ length: steps + 1 }, (_, step) =>
    Math.round((step * (length - size)) / steps),
  );
}

/** @param {number} width @param {number} height @returns {PhotoWindow[]} */
function searchWindows(width, height) {
  return searchShares.flatMap((share) => {
    const size = Math.round(Math.max(width, height) * share);
    return places(height, size).flatMap((y) => places(width, size).map((x) => ({ x, y, size })));
  });
}

/**
 * @param {string} path
 * @returns {Promise<{ width: number, height: number, faces: FoundFace[], options: object }>}
 */
async function readPhoto(path) {
  const photo = new Image();
  photo.src = path;
  await photo.decode();
  const { naturalWidth: width, naturalHeight: height } = photo;

  /** @type {ReturnType<typeof extent>[]} */
  const seen = [];
  for (const window of searchWindows(width, height)) {
    for (const face of await facesIn(photo, window, searchPixels)) {
      const here = extent(face);
      const known = seen.some(
        (there) =>
          Math.hypot(there.x - here.x, there.y - here.y) < Math.max(there.size, here.size) / 2,
      );
      if (!known) seen.push(here);
    }
  }
  seen.sort((one, other) => one.x - other.x);

  /** @type {FoundFace[]} */
  const faces = [];
  for (const coarse of seen) {
    // The search gives a rough place; what is read at last should not depend on it.
    const first = await faceNear(photo, coarse);
    const face = first && (await faceNear(photo, extent(first.landmarks)));
    if (face) {
      faces.push({
        window: face.window,
        landmarks: face.landmarks.map(([x, y, z]) => [x / width, y / height, z / width]),
      });
    }
  }
  return { width, height, faces, options };
}

/**
 * A square of the photo as a JPEG data address.
 * @param {string} path @param {PhotoWindow} window @param {number} pixels
 */
async function cutOut(path, window, pixels) {
  const photo = new Image();
  photo.src = path;
  await photo.decode();
  const canvas = document.createElement("canvas");
  canvas.width = canvas.height = pixels;
  const scale = pixels / window.size;
  const context = /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d"));
  context.fillStyle = "#ffffff";
  context.fillRect(0, 0, pixels, pixels);
  context.imageSmoothingQuality = "high";
  context.drawImage(
    photo,
    -window.x * scale,
    -window.y * scale,
    photo.naturalWidth * scale,
    photo.naturalHeight * scale,
  );
  return canvas.toDataURL("image/jpeg", 0.9);
}

Object.assign(window, { readPhoto, cutOut });
