import { type ReadonlySignal, useComputed, useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import type { Picture } from "../appointment/basis.js";
import { letGo } from "../appointment/history.js";
import { type Box, type Spot, viewBox } from "./box.js";
import { afterKey, type Handle, nearestHandle } from "./handle.js";
import { HandleMark } from "./HandleMark.js";
import { Loupe } from "./Loupe.js";
import { pathOf } from "./place.js";
import { PictureImage } from "./PictureImage.js";
import { useUnit } from "./use-unit.js";

interface StageProps {
  /** What is seen, for those who hear the page. */
  readonly label: string;
  readonly box: Box;
  readonly picture: Picture | undefined;
  /** A drawing of the library that shows the same box, beneath what moves. */
  readonly drawing?: string;
  readonly handles: readonly Handle[];
  /** Where they are while one is dragged, where that is known without drawing the stage anew. */
  readonly moving?: ReadonlySignal<readonly Spot[]>;
  /** How far an arrow key moves a handle. */
  readonly step: number;
  /** Which handle a touch means; left out: the nearest. */
  readonly pick?: (at: Spot, reach: number) => string | undefined;
  readonly onMove: (id: string, at: Spot) => void;
  readonly onDrop: () => void;
  readonly onTap?: (at: Spot) => void;
  /** Where given, a touch draws a line instead of moving a handle. */
  readonly onLine?: ((spots: readonly Spot[]) => void) | undefined;
  /** What is drawn, given how long a pixel of the screen is. */
  readonly children: (unit: number) => ComponentChildren;
}

/** A handle that a pointer drags. */
interface Held {
  readonly id: string;
  readonly off: Spot;
  /** From the screen to the stage: asked for once, since every question makes the browser lay out the page. */
  readonly toStage: DOMMatrix;
  /** The frame for which the handle has moved last. */
  frame?: CSSNumberish | null;
  /** Where the pointer has gone since, and what will follow it in the next frame. */
  next?: { readonly at: Spot; readonly request: number };
}

/** Half of what a gloved finger covers, in pixels of the screen. */
const REACH = 30;

/** A finger's line has a corner each time it has gone so far, in pixels of the screen. */
const LEAST_LEG = 3;

/** The picture with what lies over it, and handles that pointers and arrow keys move. */
export function Stage(props: StageProps) {
  const { label, box, picture, drawing, handles, step, onMove, onDrop, children } = props;
  const frame = useRef<HTMLDivElement>(null);
  const live = useRef<SVGSVGElement>(null);
  const unit = useUnit(frame, box);
  const held = useRef<Held | undefined>(undefined);
  const loupe = useSignal<Spot | undefined>(undefined);
  const pen = useRef<DOMMatrix | undefined>(undefined);
  const line = useSignal<readonly Spot[]>([]);
  const drawnLine = useComputed(() => (line.value.length < 2 ? "" : pathOf(line.value, true)));
  const hasLoupe = useComputed(() => loupe.value !== undefined);

  const press = (event: PointerEvent) => {
    const toStage = live.current?.getScreenCTM()?.inverse() ?? new DOMMatrix();
    const at = spotOf(event, toStage);
    if (props.onLine !== undefined) {
      live.current?.setPointerCapture(event.pointerId);
      pen.current = toStage;
      line.value = [at];
      return;
    }
    const reach = REACH * unit;
    const id =
      props.pick === undefined ? nearestHandle(handles, at, reach)?.id : props.pick(at, reach);
    const handle = handles.find((one) => one.id === id);
    if (handle === undefined) {
      props.onTap?.(at);
      return;
    }
    live.current?.setPointerCapture(event.pointerId);
    // The dot keeps its distance from the finger, which would hide it.
    const off = [handle.at[0] - at[0], handle.at[1] - at[1]] as const;
    held.current = { id: handle.id, off, toStage };
    loupe.value = handle.at;
  };

  // Some pointers report more often than screens are drawn: what comes after the first is for the next frame. Asking
  // for frames from the start would cost one more each time.
  const drag = (event: PointerEvent) => {
    if (pen.current !== undefined) {
      const at = spotOf(event, pen.current);
      const [x, y] = line.value.at(-1) ?? at;
      if (Math.hypot(at[0] - x, at[1] - y) > LEAST_LEG * unit) line.value = [...line.value, at];
      return;
    }
    const { current } = held;
    if (current === undefined) return;
    const [x, y] = spotOf(event, current.toStage);
    const at: Spot = [x + current.off[0], y + current.off[1]];
    if (current.frame === document.timeline.currentTime) {
      current.next = { at, request: current.next?.request ?? requestAnimationFrame(follow) };
    } else {
      moveTo(current, at);
    }
  };

  const follow = () => {
    const { current } = held;
    if (current?.next !== undefined) moveTo(current, current.next.at);
  };

  const moveTo = (handle: Held, at: Spot) => {
    if (handle.next !== undefined) cancelAnimationFrame(handle.next.request);
    delete handle.next;
    handle.frame = document.timeline.currentTime;
    loupe.value = at;
    onMove(handle.id, at);
  };

  const letGoOf = (ending: () => void) => {
    const { current } = held;
    if (current === undefined) return;
    if (current.next !== undefined) cancelAnimationFrame(current.next.request);
    held.current = undefined;
    loupe.value = undefined;
    ending();
  };

  const drop = () => {
    if (pen.current !== undefined) {
      const spots = line.value;
      liftPen();
      props.onLine?.(spots);
      return;
    }
    follow();
    letGoOf(onDrop);
  };

  const liftPen = () => {
    pen.current = undefined;
    line.value = [];
  };

  const pressKey = (event: KeyboardEvent) => {
    const pressed = event.target instanceof Element && event.target.closest("[data-handle]");
    const id = pressed ? pressed.getAttribute("data-handle") : null;
    const handle = handles.find((one) => one.id === id);
    const at = handle && afterKey(handle, event, step);
    if (handle === undefined || at === undefined) return;
    event.preventDefault();
    onMove(handle.id, at);
    onDrop();
  };

  const drawn = children(unit);
  return (
    <div class="stage" ref={frame} style={{ "--ratio": box.width / box.height, "--unit": unit }}>
      {picture && <PictureImage picture={picture} box={box} />}
      {drawing && <div class="drawing" dangerouslySetInnerHTML={{ __html: drawing }} />}
      <svg
        ref={live}
        class="live"
        viewBox={viewBox(box)}
        role="group"
        aria-label={label}
        onPointerDown={press}
        onPointerMove={drag}
        onPointerUp={drop}
        // The browser took the finger for its own: nobody has chosen where it was.
        onPointerCancel={() => {
          liftPen();
          letGoOf(letGo);
        }}
        onKeyDown={pressKey}
      >
        {drawn}
        <path class="line" d={drawnLine} />
        {handles.map((handle, index) => (
          <HandleMark
            key={handle.id}
            handle={handle}
            unit={unit}
            index={index}
            moving={props.moving}
          />
        ))}
      </svg>
      {hasLoupe.value && (
        <Loupe at={loupe} unit={unit} middle={box.x + box.width / 2} picture={picture}>
          {drawn}
        </Loupe>
      )}
    </div>
  );
}

function spotOf({ clientX, clientY }: PointerEvent, toStage: DOMMatrix): Spot {
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(toStage);
  return [x, y];
}
