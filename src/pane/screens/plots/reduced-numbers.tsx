/** Shows the numbers reduced from the cells of a plot in a table. */
import type { NumberRow } from "./range-drawing";
import { useStyles } from "./plot-styles";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import type { Message } from "../../../reduction/message";

interface NumbersProps {
  readonly rows: readonly NumberRow[];
  readonly remarks?: readonly Message[];
}

export function Numbers({ rows, remarks }: NumbersProps) {
  const styles = useStyles();
  return (
    <table className={styles.table}>
      <caption>{text.plot.numbers}</caption>
      <thead>
        <tr>
          <th scope="col">{text.plot.quantity}</th>
          <th scope="col" className="number">
            {text.plot.amount}
          </th>
          <th scope="col">{text.plot.unit}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, value, unit }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className="number">{inWords({ digits: value })}</td>
            <td>{unit}</td>
          </tr>
        ))}
        {remarks && (
          <tr>
            <th scope="row">{text.plot.remark}</th>
            <td colSpan={2}>{remarks.length > 0 ? remarks.map(inWords).join("; ") : text.plot.noRemark}</td>
          </tr>
        )}
      </tbody>
    </table>
  );
}
