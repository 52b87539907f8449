import { useId } from "preact/hooks";

interface OptionsProps<Name extends string> {
  readonly title: string;
  /** What each is called, in the order in which they stand. */
  readonly options: { readonly [One in Name]?: string };
  readonly chosen: Name;
  readonly onChoose: (name: Name) => void;
  /** One below the other, where their words are long. */
  readonly isList?: boolean;
}

/** One of a few: a row of large buttons, of which one is down. */
export function Options<Name extends string>(props: OptionsProps<Name>) {
  const { title, options, chosen, onChoose, isList = false } = props;
  const name = useId();
  return (
    <fieldset class={isList ? "options list" : "options"}>
      <legend>{title}</legend>
      {(Object.keys(options) as Name[]).map((one) => (
        <label key={one}>
          <input type="radio" name={name} checked={one === chosen} onChange={() => onChoose(one)} />
          <span>{options[one]}</span>
        </label>
      ))}
    </fieldset>
  );
}
