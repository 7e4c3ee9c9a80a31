/** Rows of one height that stand one below the other: a host sets each band at once. */
export interface RowBand {
  readonly first: number;
  readonly rows: number;
  readonly points: number;
}

export function rowBands(heights: Readonly<Record<number, number>>): RowBand[] {
  const bands: { first: number; rows: number; points: number }[] = [];
  const sorted = Object.entries(heights).map(([row, points]) => [Number(row), points] as const);
  for (const [row, points] of sorted.sort(([a], [b]) => a - b)) {
    const last = bands.at(-1);
    if (last && last.points === points && row === last.first + last.rows) last.rows++;
    else bands.push({ first: row, rows: 1, points });
  }
  return bands;
}
