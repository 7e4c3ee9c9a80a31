/**
 * The two ways to make the same construction.
 *
 * aided: the fit to theory chooses the readings, draws the smooth curve through them, and straightens a short tail.
 * drawn: what a hand can repeat with a ruler: one stated 4:1 pair of readings, least-squares lines through raw readings, the
 * curve through the readings; nothing is subtracted or straightened. The fit only judges whether there is anything to draw,
 * and where on the curve each mark belongs.
 */
export const PROCEDURES = ["aided", "drawn"] as const;
export type Procedure = (typeof PROCEDURES)[number];
