/** What a language must say: what English says, in the same places and with the same counts and names put in. */
import type { en } from "./en";

type Said<T> = T extends string
  ? string
  : T extends (...put: infer Put) => string
    ? (...put: Put) => string
    : { readonly [Key in keyof T]: Said<T[Key]> };

export type Catalogue = Said<typeof en>;
