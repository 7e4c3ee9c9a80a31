/** The cost of a piece of work: round trips to Excel, bytes sent and bytes received. */

export interface Trip {
  /** Whether the library only releases ranges: it does so after its answer, when it finds time. */
  readonly isRelease: boolean;
  readonly sent: number;
  readonly received: number;
}

export interface Cost {
  readonly trips: number;
  /** Trips that only release ranges. */
  readonly releases: number;
  readonly sent: number;
  readonly received: number;
  /** Bytes of the largest request and of the largest answer. */
  readonly largest: number;
}

export const costOf = (trips: readonly Trip[]): Cost => ({
  trips: trips.length,
  releases: trips.filter(({ isRelease }) => isRelease).length,
  sent: trips.reduce((sum, { sent }) => sum + sent, 0),
  received: trips.reduce((sum, { received }) => sum + received, 0),
  largest: Math.max(0, ...trips.flatMap(({ sent, received }) => [sent, received])),
});
