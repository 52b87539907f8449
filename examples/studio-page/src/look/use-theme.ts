import type { Theme } from "brow-geometry";
import { useEffect, useState } from "preact/hooks";

/** Light or dark, as the device asks for. */
export function useTheme(): Theme {
  const [query] = useState(() => matchMedia("(prefers-color-scheme: dark)"));
  const [isDark, setDark] = useState(query.matches);
  useEffect(() => {
    const listen = () => {
      setDark(query.matches);
    };
    query.addEventListener("change", listen);
    return () => {
      query.removeEventListener("change", listen);
    };
  }, [query]);
  return isDark ? "dark" : "light";
}
