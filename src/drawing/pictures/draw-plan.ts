import { planHeadings } from "../layers/verdict-layer.js";
import type { BrowPlan } from "../../mapping/index.js";
import { requirePlan } from "../../mapping/internal.js";
import type { ImageSize } from "../../landmarks/index.js";
import { refuse, requirePositive, requireWord, refusingAs } from "../../units/internal.js";
import { ENGLISH } from "../../words/index.js";
import { label } from "../../words/internal.js";
import type { Box } from "../canvas/box.js";
import { brushOf } from "../canvas/brush.js";
import { compose } from "../canvas/compose.js";
import { describePlan } from "./describe-plan.js";
import { legend, planLegend } from "./legend.js";
import { leastOn, requireLook, type ScreenDrawing } from "../canvas/look.js";
import { type AlsoShown, faceBox, planLayers } from "../layers/plan-layers.js";
import { planView } from "../canvas/view.js";
import { element, pictureSource, type SvgElement } from "../canvas/svg.js";

/** The photo that a plan was made on. */
export interface PhotoBeneath {
  /** In pixels. A photo that was made larger or smaller since its landmarks were read keeps its shape. */
  readonly width: number;
  readonly height: number;
  /** Where the photo is found; left out, the picture is an overlay without it. */
  readonly href?: string;
}

/** How {@link drawPlan} draws. */
export interface PlanDrawing extends ScreenDrawing, AlsoShown {
  /** Default: none, the face is drawn by itself. Only a plan made on a photo can lie over one. */
  readonly photo?: PhotoBeneath;
  /** The whole photo, to lie exactly over it, or the brows' surroundings. Default: the photo where one is given. */
  readonly view?: "photo" | "face";
  /**
   * Whose brows' surroundings are shown: of the plan before a dot was dragged, so that the picture holds still
   * while it is. Default: the plan's own.
   */
  readonly around?: BrowPlan;
  /** Whether strokes are explained beneath. Default: yes in the view of the face, no in that of the photo. */
  readonly legend?: boolean;
}

/**
 * A plan as an SVG picture: landmarks, midline, guides, the brows as they grow and as they are
 * planned, with their dots, and front and tail by ruler. Pinned dots carry a ring and a number, what the plan
 * found in its own shape a frame and a number. A finding that asks for another photo is written across the picture,
 * and how far a head was off the front on top.
 * Where asked for, hair outside the plan and skin inside it are hatched, and what was drawn is held
 * against it.
 *
 * Coordinates are those of the photo as its landmarks were read; a plan without one is drawn in millimetres, its y
 * turned down. The picture has no size of its own and fills the room it is given. Its groups have classes
 * (`natural`, `planned`, `guide`, `dot`, …) and dots carry `data-side` and `data-dot`, so that a
 * page can restyle or move them.
 *
 * @throws GeometryError `out-of-range` where the photo's size is not positive, its address is not that of a picture,
 * the screen's width or type size is out of range, or an option, the theme or the view is unknown; `inconsistent`
 * where a photo is given for a plan that was not made on one
 *
 * @example
 * ```ts
 * import { drawPlan, mm, planBrows } from "brow-geometry";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20]), mm([sign * 38, 27]), mm([sign * 57, 18])] },
 * });
 * const plan = planBrows({ right: side(-1), left: side(1), midline: {} });
 * const svg = drawPlan(plan, { title: "Right & left" });
 * svg.includes("<title>Right &amp; left</title>"); // → true
 * drawPlan(plan, { screen: { width: 375 } }); // legible on a phone
 * drawPlan(plan, { photo: { width: 0, height: 900 } }); // throws GeometryError: photo.width is 0
 * ```
 */
export function drawPlan(plan: BrowPlan, options: PlanDrawing = {}): string {
  return refusingAs("drawPlan", () => {
    requirePlan(plan);
    requireLook(options, ["screen", "photo", "view", "around", "legend", "overlap", "check"]);
    requireWord("view", options.view, ["photo", "face"]);
    const photo = options.photo && photoOf(plan, options.photo);
    const { words = ENGLISH } = options;
    const shows = options.view ?? (photo === undefined ? "face" : "photo");
    const over = shows === "photo" ? photo : undefined;
    const view = planView(plan);
    const { width } = over ?? faceBox(options.around ?? plan, view);
    const least = leastOn(width, options);
    const brush = brushOf({ ...view, least }, options, photo !== undefined);
    const box = over === undefined ? faceBox(options.around ?? plan, brush.view) : whole(over);
    const layers = planLayers(plan, box, brush, options);
    const hasKeys = options.legend ?? shows === "face";
    const { elements, unplaced, keyed } = compose(
      layers,
      planHeadings(plan, box, brush),
      box,
      brush,
      { isOnScreen: options.screen !== undefined, keysFrom: hasKeys ? 1 : 0 },
    );
    const explained = hasKeys
      ? legend([...planLegend(plan, words, options), ...keyed], { width: box.width, brush })
      : undefined;
    const height = box.height + (explained?.height ?? 0);
    return pictureSource(
      { viewBox: [box.x, box.y, box.width, height].map((value) => value.toFixed(3)).join(" ") },
      options.title ?? label(words, "title-plan"),
      describePlan(plan, unplaced, words, options),
      words,
      [
        photo === undefined
          ? element("rect", { ...box, height, fill: brush.palette.backdrop })
          : photoElement(photo),
        ...elements,
        ...(explained?.drawnAt(box.x, box.y + box.height) ?? []),
      ],
    );
  });
}

function whole({ width, height }: PhotoBeneath): Box {
  return { x: 0, y: 0, width, height };
}

function photoElement({ width, height, href }: PhotoBeneath): SvgElement | undefined {
  return href === undefined
    ? undefined
    : element("image", { x: 0, y: 0, width, height, href, preserveAspectRatio: "none" });
}

/** Addresses of pictures: relative ones, and those whose scheme can only show, never run. */
const PICTURE_ADDRESS = /^(?:https?:|blob:|file:|data:image\/|(?![a-z][a-z\d+.-]*:))/i;

/** The photo as large as its landmarks were read on, where that is known. */
function photoOf(plan: BrowPlan, photo: PhotoBeneath): PhotoBeneath {
  requirePositive("photo.width", photo.width);
  requirePositive("photo.height", photo.height);
  if (photo.href !== undefined && !PICTURE_ADDRESS.test(photo.href.trimStart())) {
    const need = "the address of a picture: http, https, blob, file, data:image or relative";
    refuse("out-of-range", "photo.href", photo.href, need);
  }
  if (plan.frame === undefined) {
    refuse("inconsistent", "photo", photo, "a plan that was made on a photo");
  }
  const { picture = photo } = plan.face.source ?? {};
  if (!isShapedAs(picture, photo)) {
    const { width, height } = picture;
    const need = `the shape of the picture whose landmarks were read, ${width} × ${height}; not turned, not cropped`;
    refuse("inconsistent", "photo", `${photo.width} × ${photo.height}`, need);
  }
  return { ...photo, ...picture };
}

/** Whether a size is another made larger or smaller, and then whole pixels. */
function isShapedAs({ width, height }: ImageSize, other: ImageSize): boolean {
  return Math.abs(other.width * height - other.height * width) <= width + height;
}
