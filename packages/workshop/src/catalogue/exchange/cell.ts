import type { CsvCell } from "@buildproof/documents";
import { type CurrencyCode, currencyDecimals, decimalAmount, minorUnits } from "@buildproof/units";
import { typedAmount } from "../../quotes/typed-amount";

/** How figures are written in the file at hand. */
export type Writing = { readonly currency: CurrencyCode; readonly decimalComma: boolean };

export type ReadCell<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly because: string };

/** How one kind of content stands in a cell, and how it is read back. */
export type Cell<Value> = {
  write(value: Value, currency: CurrencyCode): CsvCell;
  read(cell: string, writing: Writing): ReadCell<Value>;
};

const value = <Value>(read: Value): ReadCell<Value> => ({ ok: true, value: read });
const wrong = (because: string): ReadCell<never> => ({ ok: false, because });
const shown = (cell: string) => (cell.length <= 30 ? `“${cell}”` : `“${cell.slice(0, 30)}…”`);

/** What a spreadsheet would run as a formula, behind any apostrophes that keep it from doing so. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these control characters are what is guarded against.
const guarded = /^'+[=+\-@\t\r\n\u0000＝＋－＠]/;

/** Text that begins as a guarded cell does gets one apostrophe more, so that reading takes off what writing put on. */
export function guard(text: string): string {
  return guarded.test(text) ? `'${text}` : text;
}

export function unguard(cell: string): string {
  return guarded.test(cell) ? cell.slice(1) : cell;
}

export const text: Cell<string> = { write: guard, read: (cell) => value(unguard(cell)) };

export const yesNo: Cell<boolean> = {
  write: (is) => (is ? "yes" : "no"),
  read(cell) {
    const word = cell.trim().toLowerCase();
    if (["yes", "true", "1"].includes(word)) return value(true);
    if (["no", "false", "0"].includes(word)) return value(false);
    return wrong(`${shown(cell)} is neither yes nor no: write one of them.`);
  },
};

export function oneOf<Word extends string>(words: readonly Word[]): Cell<Word> {
  return {
    write: (word) => word,
    read(cell) {
      const found = words.find((word) => word === cell.trim());
      return found === undefined ? wrong(`${shown(cell)} is none of ${words.join(", ")}.`) : value(found);
    },
  };
}

export const number: Cell<number> = {
  write: (figure) => figure,
  read(cell, { decimalComma }) {
    const plain = decimalComma ? cell.trim().replace(",", ".") : cell.trim();
    if (!/^-?\d+(\.\d+)?(e[+-]?\d+)?$/i.test(plain) || !Number.isFinite(Number(plain)))
      return wrong(`${shown(cell)} is not a number: write digits only, such as 12.5, without a unit.`);
    return value(Number(plain));
  },
};

export const wholeNumber: Cell<number> = {
  write: (figure) => figure,
  read: (cell) =>
    /^\d{1,9}$/.test(cell.trim())
      ? value(Number(cell))
      : wrong(`${shown(cell)} is not a whole number: write digits only, such as 14.`),
};

/** Hours as an exact decimal in text. */
export const hours: Cell<string> = {
  write: (decimal) => decimal,
  read(cell, { decimalComma }) {
    const plain = decimalComma ? cell.trim().replace(",", ".") : cell.trim();
    return /^\d{1,4}(\.\d{1,2})?$/.test(plain)
      ? value(plain.includes(".") ? plain.replace(/\.?0+$/, "") : plain)
      : wrong(`${shown(cell)} is not a number of hours: write it as 2.5, with at most two decimals.`);
  },
};

export const amount: Cell<number> = {
  write: (minor, currency) => decimalAmount(minorUnits(minor), currency),
  read(cell, { currency, decimalComma }) {
    const plain = decimalComma ? cell.trim().replace(",", ".") : cell.trim();
    const minor = /^\d+(\.\d+)?$/.test(plain) ? typedAmount(plain, currency) : null;
    if (minor !== null) return value(Number(minor));
    const example = currencyDecimals(currency) === 0 ? "1234" : "1234.50";
    return wrong(
      `${shown(cell)} is not an amount in ${currency}: write it as ${example}, without other marks.`,
    );
  },
};

export function json<Value>(example: string): Cell<Value | undefined> {
  return {
    write: (content) => (content === undefined || content === null ? "" : JSON.stringify(content)),
    read(cell) {
      if (cell.trim() === "") return value(undefined);
      try {
        return value(JSON.parse(cell) as Value); // Held against the schema of its part afterwards.
      } catch {
        return wrong(`${shown(cell)} is not JSON: write it as ${example}.`);
      }
    },
  };
}

/** Empty where there is nothing to say. */
export function perhaps<Value>(cell: Cell<Value>): Cell<Value | undefined> {
  return {
    write: (content, currency) => (content === undefined ? "" : cell.write(content, currency)),
    read: (written, writing) => (written.trim() === "" ? value(undefined) : cell.read(written, writing)),
  };
}
