/** Work that goes on: a sentence, and once the work tells its share, a progress bar with a stop button. */
import { Notice } from "./notice";
import { Progress } from "./parts";
import type { LongWork } from "./use-course";

export const Going = ({ what, work: { share, stop } }: { readonly what: string; readonly work: LongWork }) =>
  share === undefined ? <Notice intent="info">{what}</Notice> : <Progress what={what} share={share} onStop={stop} />;
