/** The time of an action, as it is written into cells. */

/** "2026-03-09 14:05", local time. */
export function timeStamp(now: Date): string {
  const two = (value: number) => String(value).padStart(2, "0");
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return `${day} ${two(now.getHours())}:${two(now.getMinutes())}`;
}
