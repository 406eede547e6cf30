/**
 * A question that has no answer: an id that is not there, a cycle, two units of different dimension.
 * `code` is for programs, `message` is one sentence for people, `path` says where in the input.
 */
export class ImpossibleInputError extends RangeError {
  override readonly name = "ImpossibleInputError";

  constructor(
    readonly code: string,
    message: string,
    readonly path = "",
  ) {
    super(message);
  }
}
