/** A refusal by Excel, with its code. */
export class Refusal extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

export const invalidArgument = (message: string): Refusal => new Refusal("InvalidArgument", message);
export const notFound = (what: string): Refusal =>
  new Refusal("ItemNotFound", `The requested resource doesn't exist: ${what}.`);
export const accessDenied = (message: string): Refusal => new Refusal("AccessDenied", message);

/** The stand-in does not model something yet: a fault of the stand-in or of the test, not an answer of Excel. */
export class NotModelled extends Error {
  override readonly name = "NotModelled";
}
