/** The type of a language: it must contain every text of the English catalogue, with the same parameters. */
import type { en } from "./en";

export type Said<T> = T extends string
  ? string
  : T extends (...put: infer Put) => string
    ? (...put: Put) => string
    : { readonly [Key in keyof T]: Said<T[Key]> };

export type Catalogue = Said<typeof en>;
