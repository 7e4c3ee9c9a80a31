/** Enters the formulas again, and protects the sheet. */
import { Button, Text } from "@fluentui/react-components";
import { text } from "../../text";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";

const words = text.check;

export interface FormulasStepProps {
  readonly isBusy: boolean;
  /** Undefined until a sheet was checked. */
  readonly isProtected: boolean | undefined;
  readonly onReenter: () => void;
  readonly onProtect: (on: boolean) => void;
}

export function FormulasStep({ isBusy, isProtected, onReenter, onProtect }: FormulasStepProps) {
  const styles = useStyles();
  return (
    <Step title={words.formulas}>
      <div>
        <Button disabledFocusable={isBusy} aria-describedby="reenter-hint" onClick={onReenter}>
          {words.reenter}
        </Button>
      </div>
      <Text block id="reenter-hint" className={styles.quiet}>
        {words.reenterHint}
      </Text>
      {isProtected !== undefined && (
        <div>
          <Button disabledFocusable={isBusy} aria-describedby="protect-hint" onClick={() => onProtect(!isProtected)}>
            {isProtected ? words.lift : words.protect}
          </Button>
        </div>
      )}
      <Text block id="protect-hint" className={styles.quiet}>
        {words.protectHint}
      </Text>
    </Step>
  );
}
