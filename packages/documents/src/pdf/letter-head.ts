/** The workshop as it stands at the head of every document it sends. */
export interface LetterHead {
  readonly name: string;
  readonly abn: string;
  /** One line each, as on an envelope. */
  readonly address: readonly string[];
  readonly phone: string;
  readonly email: string;
}
