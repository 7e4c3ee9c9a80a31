/** Work that goes on: a sentence, and once the work tells its share, a progress bar with a stop button. */
import { Notice } from "./notice";
import { Progress } from "./parts";

export interface GoingProps {
  readonly what: string;
  /** The share that is done; undefined until the work tells it. */
  readonly share: number | undefined;
  readonly stop: () => void;
}

export const Going = ({ what, share, stop }: GoingProps) =>
  share === undefined ? <Notice intent="info">{what}</Notice> : <Progress what={what} share={share} onStop={stop} />;
