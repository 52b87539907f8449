import type { FaceMesh as FaceMeshClass, Results } from "@mediapipe/face_mesh";

type FaceMesh = InstanceType<typeof FaceMeshClass>;

declare global {
  interface Window {
    /** The package is a plain script that leaves its class here. */
    readonly FaceMesh?: typeof FaceMeshClass;
  }
}

/** The landmarks of each face in a picture, in shares of its width and height. */
export type Look = (picture: HTMLCanvasElement) => Promise<Results["multiFaceLandmarks"]>;

/** Its types do not know `useCpuInference`, without which a device with no graphics chip takes five times as long. */
const OPTIONS = { refineLandmarks: true, maxNumFaces: 4, useCpuInference: true };

let loading: Promise<Look> | undefined;

/** Loads the face finder from the page's own folder, once, when the first photo asks for it. */
export function faceMesh(): Promise<Look> {
  loading ??= load();
  return loading;
}

async function load(): Promise<Look> {
  const address = (file: string) => new URL(`mesh/${file}`, document.baseURI).href;
  await loadScript(address("face_mesh.js"));
  if (window.FaceMesh === undefined) throw new Error("The face finder did not load.");
  const mesh: FaceMesh = new window.FaceMesh({ locateFile: address });
  mesh.setOptions(OPTIONS);
  let latest: Results["multiFaceLandmarks"] = [];
  mesh.onResults((results) => {
    latest = results.multiFaceLandmarks;
  });
  return async (picture) => {
    // It takes pictures for a film, and starts from where the last one had its faces.
    await mesh.send({ image: blankLike(picture) });
    await mesh.send({ image: picture });
    return latest;
  };
}

function blankLike({ width, height }: HTMLCanvasElement): HTMLCanvasElement {
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext("2d");
  if (context !== null) {
    context.fillStyle = "#808080";
    context.fillRect(0, 0, width, height);
  }
  return canvas;
}

function loadScript(src: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = src;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error("The face finder did not load."));
    document.head.append(script);
  });
}
