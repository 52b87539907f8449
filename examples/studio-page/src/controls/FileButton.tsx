interface FileButtonProps {
  readonly name: string;
  readonly accept: string;
  /** On a phone: straight to the camera. */
  readonly isCamera?: boolean;
  readonly isMain?: boolean;
  readonly onFile: (file: File) => void;
}

/** Opens a file of this device; it is read here and goes nowhere else. */
export function FileButton({ name, accept, isCamera, isMain, onFile }: FileButtonProps) {
  return (
    <label class={isMain === true ? "button main" : "button"}>
      {name}
      <input
        type="file"
        accept={accept}
        {...(isCamera === true && { capture: "environment" as const })}
        onChange={(event) => {
          const input = event.currentTarget;
          const file = input.files?.[0];
          // The same file can be opened again.
          if (file !== undefined) onFile(file);
          input.value = "";
        }}
      />
    </label>
  );
}
