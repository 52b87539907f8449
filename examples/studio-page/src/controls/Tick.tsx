import type { ComponentChildren } from "preact";

interface TickProps {
  readonly isOn: boolean;
  readonly onTick: (isOn: boolean) => void;
  readonly children: ComponentChildren;
}

/** Something that is so or is not so: the whole row can be tapped. */
export function Tick({ isOn, onTick, children }: TickProps) {
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={isOn}
        onChange={(event) => onTick(event.currentTarget.checked)}
      />
      <span>{children}</span>
    </label>
  );
}
