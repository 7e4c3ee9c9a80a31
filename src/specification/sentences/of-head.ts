/**
 * The sentences at the head of a data sheet, with places for what they name: the formulas of the sheet put expressions
 * into these places (`live`), and a record the values of the cells (`record/head-of-sheet`).
 */
import { say, type Message, type Value } from "../../reduction/message";
import { WETTEST } from "../../reduction/specimen";
import type { Limits } from "../measures";

/** "a number greater than 0 and not more than 60" */
export function numberWithin({ least, above, most }: Limits): Message {
  if (least === undefined) return most === undefined ? say`a number` : say`a number not more than ${most}`;
  if (most === undefined) return above ? say`a number greater than ${least}` : say`a number not less than ${least}`;
  return above
    ? say`a number greater than ${least} and not more than ${most}`
    : say`a number not less than ${least} and not more than ${most}`;
}

export const LOAD_NUMBER: Message = say`the number of a load`;

/** What a sentence calls these inputs, within it and at its start. */
export const WITHIN = {
  the_ring: say`the ring`,
  ring_and_wet_before: say`ring + wet soil before`,
  ring_and_wet_after: say`ring + wet soil after`,
  ring_and_dry: say`ring + dry soil`,
} as const;
export const AT_START = {
  ring_and_wet_before: say`Ring + wet soil before`,
  ring_and_wet_after: say`Ring + wet soil after`,
  ring_and_dry: say`Ring + dry soil`,
} as const;

/** A cell that lacks a number within its limits. */
export const enterNumber = (label: Value, cell: Value, what: Message): Message =>
  say`${label}, ${cell}: enter ${what}.`;

export const chooseWord = (label: Value, cell: Value): Message => say`${label}, ${cell}: choose a word of its list.`;

/** Cells from which no result follows, one after the other: "C12 H13". */
export const enterDates = (cells: Value): Message => say`Enter a date: ${cells}.`;
export const enterNumbers = (cells: Value): Message => say`Enter a number that can be: ${cells}.`;
export const chooseWords = (cells: Value): Message => say`Choose a word of the list: ${cells}.`;

/** Sizes and stresses that no oedometer test has in the unit of their cell, and that few have: "C12 H13". */
export const noTest = (cells: Value): Message =>
  say`Correct the number or its unit, too large for an oedometer test: ${cells}.`;
export const fewTests = (cells: Value): Message =>
  say`Check the number and its unit, unusual for an oedometer test: ${cells}.`;

/** A specimen that is not wider than high. */
export const maybeSwapped = (height: Value, diameter: Value): Message =>
  say`The height, ${height}, is not less than the diameter, ${diameter}: check whether they were exchanged.`;

/** A bulk density in Mg/m3 that soils do not have. */
export const lightOrHeavy = (density: Value, wet: Value, ring: Value, diameter: Value, height: Value): Message =>
  say`The bulk density is ${density} Mg/m3: check the masses, ${wet} with its ring and ${ring}, the diameter, ${diameter}, and the height, ${height}.`;

/** A zero reading that the first reading of load 1 contradicts. */
export const farFromZero = (zero: Value, first: Value): Message =>
  say`The zero reading, ${zero}, lies more than a tenth of the height from the first reading of load 1, ${first}: check both, and whether the dial was reset.`;

/** A compression index that few soils have. */
export const steepCurve = (cell: Value, ratio: Value): Message =>
  say`Cc, ${cell}, over 1 + e0 is ${ratio}, which is rare outside peat: check the stresses and the last readings of the loads.`;

/** A row of the table of picks with a word that is not on the list of its pick. */
export const pickWord = (pick: Value, cell: Value, one: Value, other: Value, automatic: Value): Message =>
  say`Pick by hand of ${pick}, ${cell}: enter ${one} or ${other}, or ${automatic}.`;

/** A mass that must be the heavier one of two. */
export const mustBeHeavier = (mass: Value, cell: Value, than: Value, other: Value): Message =>
  say`${mass}, ${cell}, must be heavier than ${than}, ${other}: correct one of them.`;
export const mustBeAsHeavy = (mass: Value, cell: Value, than: Value, other: Value): Message =>
  say`${mass}, ${cell}, must be heavier than ${than}, ${other}, or as heavy: correct one of them.`;

export const solidsFill = (height: Value, diameter: Value, ring: Value, dry: Value, gravity: Value): Message =>
  say`The solids alone would fill the ring: correct the height, ${height}, the diameter, ${diameter}, the masses, ${ring} and ${dry}, or the specific gravity, ${gravity}.`;

/** A wet mass that gives a water content which no soil has. */
export const tooWet = (mass: Value, cell: Value): Message =>
  say`The water content by ${mass}, ${cell}, is above ${100 * WETTEST} %: correct it.`;

/** A load that was read and has no point of the curve, with one of the two reasons that follow. */
export const noPoint = (load: Value, reason: Value): Message =>
  say`Load ${load} gives no point of the curve: ${reason}.`;
export const notAboveSolids = (height: Value, zero: Value, factor: Value, sense: Value): Message =>
  say`its height at the end is not above the height of solids, or greater than any specimen has: correct its last readings, the initial height, ${height}, the zero reading, ${zero}, the dial factor, ${factor}, or the sense of the readings, ${sense}`;
export const beyondTable = (table: Value, stress: Value, seating: Value): Message =>
  say`the table of deflection, from ${table} on, does not reach its stress, ${stress}, or the seating stress, ${seating}: correct the stress, or extend the table`;

/**
 * A load whose readings jump, or of which a row has a number that cannot be, in the words of its remark. The remark of a jump begins with JUMP_BEGINS (`reduction/increment/dial-jump`); the
 * German text of these words is the beginning of the German remark.
 */
export const ofLoad = (load: Value, remark: Value): Message => say`Load ${load}: ${remark}.`;
export const JUMP_BEGINS = "the readings jump by ";
/** How a remark on a row with a number that cannot be begins. */
export const OUTSIDE_BEGINS = "enter a number that can be in row ";

/** How a remark on what looks like a slip of a load begins. */
export const SLIP_BEGINS = "check whether ";

/** A curve that cannot be used, because the specimen is highest under the greatest stress. */
export const highestUnderGreatest = (load: Value, sense: Value): Message =>
  say`The specimen swelled under load ${load} and is highest under the greatest stress: correct readings taken backwards or after the dial passed its zero, the sense of the readings, ${sense}, or the stresses.`;

/** A value of the curve that cannot be used, in the words of the remark on the curve. */
export const wrongCurve = (stresses: Value, remark: Value): Message => say`Loads, from ${stresses} on: ${remark}.`;

/** The list of what is missing, and its items. */
export const missing = (list: Value): Message => say`Missing: ${list}.`;
export const inputMissing = (words: Message, cell: Value): Message => say`${words}, ${cell}`;
export const stressesMissing = (from: Value): Message => say`stresses of the loads, from ${from}`;
export const stressMissing = (load: Value, cell: Value): Message => say`stress of load ${load}, ${cell}`;
export const readingsMissing = (load: Value, row: Value): Message =>
  say`readings of load ${load}, in row ${row} and below`;

export const NOT_FAR_ENOUGH: Message = say`The loads so far give no preconsolidation stress yet: read further loads.`;
