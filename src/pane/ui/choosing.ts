/** What a select or a group of radio buttons tells: the value of the option that was chosen. */
export const choosing =
  <T extends string>(choose: (value: T) => void) =>
  (_: unknown, { value }: { readonly value: string }): void =>
    // Fluent types every value as a string; the values of the options are of the caller's type, and there are no others.
    choose(value as T);
