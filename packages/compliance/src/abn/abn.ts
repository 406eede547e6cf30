const WEIGHTS = [10, 1, 3, 5, 7, 9, 11, 13, 15, 17, 19];

export type Abn = {
  readonly valid: boolean;
  /** Eleven digits; null when not valid. */
  readonly abn: string | null;
  /** As people write it: 2, 3, 3 and 3 digits; null when not valid. */
  readonly display: string | null;
};

/**
 * Whether an Australian Business Number is well formed and passes its check: take 1 from the first
 * digit, weigh, and the sum divides by 89. Passing is not registration: that must be looked up.
 *
 * @source  The rule published by the Australian Business Register.
 * @vectors shared/reference/abn.json
 */
export function abn(written: string): Abn {
  const digits = written.replace(/\s/g, "");
  if (!/^[0-9]{11}$/.test(digits) || !passes(digits)) return { valid: false, abn: null, display: null };
  const display = digits.replace(/^(\d{2})(\d{3})(\d{3})(\d{3})$/, "$1 $2 $3 $4");
  return { valid: true, abn: digits, display };
}

function passes(digits: string): boolean {
  const sum = WEIGHTS.reduce((total, weight, index) => {
    const digit = Number(digits.charAt(index)) - (index === 0 ? 1 : 0);
    return total + weight * digit;
  }, 0);
  return sum % 89 === 0;
}
