/** Handles the choice in a select or in a group of radio buttons: passes on the value of the chosen option. */
export const choosing =
  <T extends string>(choose: (value: T) => void) =>
  (_: unknown, { value }: { readonly value: string }): void =>
    // Fluent types every value as a string; all values of the options have the caller's type.
    choose(value as T);
