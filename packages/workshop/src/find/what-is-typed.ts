/** What was typed into the search, seen from every side that it is compared with. */
export type Typed = {
  readonly text: string;
  /** Lower case, as names are compared. */
  readonly lower: string;
  /** The pattern "holds this text", its wildcards taken literally. */
  readonly pattern: string;
  /** Upper case without spaces and hyphens, as plates and VINs are compared. */
  readonly compact: string;
  readonly digits: string;
  /** A human number, with or without a word before it ("quote 1042", "#1042"). */
  readonly number: string | null;
  readonly looksLikeVin: boolean;
  readonly looksLikePlate: boolean;
  readonly looksLikeName: boolean;
};

export function whatIsTyped(text: string): Typed {
  const lower = text.toLowerCase();
  const compact = text.replace(/[\s·-]/g, "").toUpperCase();
  const number = /^(?:(?:quote|job|build|no\.?)\s*)?#?\s*(\d{1,9})$/.exec(lower)?.[1] ?? null;
  const looksLikeVin = /^[A-HJ-NPR-Z0-9]{11,17}$/.test(compact) && /\d/.test(compact);
  return {
    text,
    lower,
    pattern: `%${likeLiteral(lower)}%`,
    compact,
    digits: text.replace(/\D/g, ""),
    number,
    looksLikeVin,
    looksLikePlate:
      !looksLikeVin && /^[A-Z0-9]{3,8}$/.test(compact) && /\d/.test(compact) && /[A-Z]/.test(compact),
    looksLikeName: /^\p{L}[\p{L}'. -]{2,}$/u.test(text),
  };
}

/** Text that stands for itself in a LIKE pattern. */
export function likeLiteral(text: string): string {
  return text.replace(/[\\%_]/g, (wildcard) => `\\${wildcard}`);
}
