/** The cost of a piece of work: round trips to Excel, bytes sent and bytes received. */

export interface Trip {
  readonly sent: number;
  readonly received: number;
  readonly actions: number;
}

export interface Cost {
  readonly trips: number;
  readonly sent: number;
  readonly received: number;
  /** Bytes of the largest request and of the largest answer. */
  readonly largest: number;
}

export const costOf = (trips: readonly Trip[]): Cost => ({
  trips: trips.length,
  sent: trips.reduce((sum, { sent }) => sum + sent, 0),
  received: trips.reduce((sum, { received }) => sum + received, 0),
  largest: Math.max(0, ...trips.flatMap(({ sent, received }) => [sent, received])),
});
