/** The namespace Excel of the Office.js typings, as plain data. */

export type Kind =
  | { readonly is: "string" | "number" | "boolean" | "any" | "void" }
  | { readonly is: "words"; readonly words: readonly string[] }
  | { readonly is: "named"; readonly name: string }
  | { readonly is: "list"; readonly of: Kind }
  | { readonly is: "either"; readonly of: readonly Kind[] }
  | { readonly is: "record"; readonly members: Readonly<Record<string, Member>> }
  | { readonly is: "answer"; readonly of: Kind };

/** A requirement set with its version: "ExcelApi", 1.8. */
export interface Requirement {
  readonly set: string;
  readonly version: string;
}

export interface Parameter {
  readonly name: string;
  readonly kind: Kind;
  readonly isOptional: boolean;
  readonly isRest: boolean;
}

export interface Call {
  readonly parameters: readonly Parameter[];
  readonly gives: Kind;
}

export interface Member {
  /** The kind of a property. */
  readonly kind?: Kind;
  /** The signatures of a method. */
  readonly calls?: readonly Call[];
  readonly isReadonly: boolean;
  readonly isOptional: boolean;
  readonly needs?: Requirement;
  /** True if the comment says that Excel on the web does not have it. */
  readonly isNotOnTheWeb: boolean;
}

/** A class or an interface. */
export interface Shape {
  readonly isClass: boolean;
  readonly bases: readonly string[];
  readonly members: Readonly<Record<string, Member>>;
}

export interface Typings {
  readonly shapes: Readonly<Record<string, Shape>>;
  /** Enumerations by their words, and aliases of kinds. */
  readonly kinds: Readonly<Record<string, Kind>>;
}
