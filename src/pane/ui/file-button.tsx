/** A button that asks for a file of the person's computer. */
import { Button, type ButtonProps } from "@fluentui/react-components";
import { useRef } from "react";
import { useStyles } from "./styles";

export interface FileButtonProps {
  readonly label: string;
  /** The kinds of file in the notation of the browser: ".xlsx,.xltx". */
  readonly accept: string;
  readonly isBusy: boolean;
  /** The id of the text that describes the file. */
  readonly describedBy: string;
  readonly appearance?: ButtonProps["appearance"];
  /** One file at a time, or with `onFiles` several together. */
  readonly onFile?: (file: File) => void;
  readonly onFiles?: (files: readonly File[]) => void;
}

export function FileButton({ label, accept, isBusy, describedBy, appearance, onFile, onFiles }: FileButtonProps) {
  const styles = useStyles();
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <div>
      <Button
        appearance={appearance}
        disabledFocusable={isBusy}
        aria-describedby={describedBy}
        onClick={() => chooser.current?.click()}
      >
        {label}
      </Button>
      <input
        ref={chooser}
        type="file"
        accept={accept}
        multiple={onFiles !== undefined}
        className={styles.hidden}
        tabIndex={-1}
        aria-hidden="true"
        onChange={({ target }) => {
          const files = [...(target.files ?? [])];
          const [file] = files;
          if (file) onFile?.(file);
          if (file) onFiles?.(files);
          // Allows the person to choose the same file again.
          target.value = "";
        }}
      />
    </div>
  );
}
