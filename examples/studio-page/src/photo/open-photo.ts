import type { Picture } from "../appointment/basis.js";

/** Longer sides are made smaller: a brow then still has more pixels than a detector or an eye can use. */
const LONGEST = 2000;
const QUALITY = 0.88;

/** A photo of this device, turned the right way up as its camera noted. */
export async function openPicture(file: Blob): Promise<Picture> {
  const bitmap = await createImageBitmap(file, { imageOrientation: "from-image" });
  const shrink = Math.min(1, LONGEST / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(bitmap.width * shrink);
  canvas.height = Math.round(bitmap.height * shrink);
  const context = canvas.getContext("2d");
  if (context === null) throw new Error("This browser cannot draw.");
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const href = canvas.toDataURL("image/jpeg", QUALITY);
  return { width: canvas.width, height: canvas.height, href };
}

/** A picture ready to be looked into. */
export async function imageOf({ href }: Picture): Promise<HTMLImageElement> {
  const image = new Image();
  image.src = href;
  await image.decode();
  return image;
}
