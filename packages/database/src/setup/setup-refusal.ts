/**
 * The set-up cannot go on, for a reason the person at the keyboard can do something about.
 * The message is one sentence that says what to do next; it is printed without a stack.
 */
export class SetupRefusal extends Error {
  override readonly name = "SetupRefusal";
}
