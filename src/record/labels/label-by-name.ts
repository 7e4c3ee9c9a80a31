/**
 * The label that most cells have: their name in plain letters.
 * @example labelByName("dial_factor") // "Dial factor"
 */
export const labelByName = (name: string): string => {
  const words = name.replaceAll("_", " ");
  return words.slice(0, 1).toUpperCase() + words.slice(1);
};
