import type { ComponentChildren } from "preact";
import { useRef, useState } from "preact/hooks";
import type { Picture } from "../appointment/basis.js";
import { letGo } from "../appointment/history.js";
import { type Box, type Spot, viewBox } from "./box.js";
import { afterKey, type Handle, nearestHandle } from "./handle.js";
import { Handles } from "./Handles.js";
import { Loupe } from "./Loupe.js";
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
  /** How far an arrow key moves a handle. */
  readonly step: number;
  /** Which handle a touch means; left out: the nearest. */
  readonly pick?: (at: Spot, reach: number) => string | undefined;
  readonly onMove: (id: string, at: Spot) => void;
  readonly onDrop: () => void;
  readonly onTap?: (at: Spot) => void;
  /** What is drawn, given how long a pixel of the screen is. */
  readonly children: (unit: number) => ComponentChildren;
}

/** A handle that a pointer drags. */
interface Held {
  readonly id: string;
  readonly off: Spot;
  /** From the screen to the stage: asked for once, since every question makes the browser lay out the page. */
  readonly toStage: DOMMatrix;
}

/** Half of what a gloved finger covers, in pixels of the screen. */
const REACH = 30;

/** The picture with what lies over it, and handles that pointers and arrow keys move. */
export function Stage(props: StageProps) {
  const { label, box, picture, drawing, handles, step, onMove, onDrop, children } = props;
  const frame = useRef<HTMLDivElement>(null);
  const live = useRef<SVGSVGElement>(null);
  const unit = useUnit(frame, box);
  const held = useRef<Held | undefined>(undefined);
  const [loupe, setLoupe] = useState<Spot>();

  const press = (event: PointerEvent) => {
    const toStage = live.current?.getScreenCTM()?.inverse() ?? new DOMMatrix();
    const at = spotOf(event, toStage);
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
    setLoupe(handle.at);
  };

  const drag = (event: PointerEvent) => {
    if (held.current === undefined) return;
    const { id, off, toStage } = held.current;
    const [x, y] = spotOf(event, toStage);
    const at: Spot = [x + off[0], y + off[1]];
    setLoupe(at);
    onMove(id, at);
  };

  const letGoOf = (ending: () => void) => {
    if (held.current === undefined) return;
    held.current = undefined;
    setLoupe(undefined);
    ending();
  };

  const pressKey = (handle: Handle, event: KeyboardEvent) => {
    const at = afterKey(handle, event, step);
    if (at === undefined) return;
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
        onPointerUp={() => letGoOf(onDrop)}
        // The browser took the finger for its own: nobody has chosen where it was.
        onPointerCancel={() => letGoOf(letGo)}
      >
        {drawn}
        <Handles handles={handles} unit={unit} onKey={pressKey} />
      </svg>
      {loupe && (
        <Loupe at={loupe} unit={unit} isLeft={loupe[0] > box.x + box.width / 2} picture={picture}>
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
