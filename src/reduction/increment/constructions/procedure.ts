/**
 * The two procedures for the same construction.
 *
 * aided: the fit to theory chooses the readings, draws the smooth curve through them, and straightens a short tail.
 * drawn: what a person can repeat with a ruler: one stated 4:1 pair of readings, least-squares lines through raw
 * readings, and the curve through the readings; nothing is subtracted or straightened. The fit only judges whether the
 * method applies, and where on the curve each mark lies.
 */
export const PROCEDURES = ["aided", "drawn"] as const;
export type Procedure = (typeof PROCEDURES)[number];
