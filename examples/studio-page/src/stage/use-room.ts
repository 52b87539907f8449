import { useEffect, useState } from "preact/hooks";

/** The room that a picture has, in pixels of the screen. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

/** Narrower than this, the library draws no letters that can be read. */
export const NARROWEST = 165;

/** What the styles leave a picture, as the page's window is now: turning a phone changes it. */
export function useRoom(): Room {
  const [room, setRoom] = useState(roomNow);
  useEffect(() => {
    const listen = () => {
      setRoom(roomNow());
    };
    addEventListener("resize", listen);
    return () => {
      removeEventListener("resize", listen);
    };
  }, []);
  return room;
}

/** On a phone all of its width and some half of its height; on a desk what panel, header and tabs leave. */
function roomNow(): Room {
  const isPhone = innerWidth < 900;
  return {
    width: Math.max(NARROWEST, isPhone ? innerWidth : innerWidth - 440),
    height: isPhone ? 0.46 * innerHeight : innerHeight - 130,
  };
}
