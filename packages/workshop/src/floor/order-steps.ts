/** Access work as the order of the card needs it: codes of what must be off first, and its steps out and back. */
export type OrderedAccess<Step> = {
  readonly code: string;
  readonly name: string;
  readonly needs: readonly string[];
  readonly out: readonly Step[];
  readonly back: readonly Step[];
};

export type OrderedOperation<Step> = {
  readonly code: string;
  readonly name: string;
  readonly access: readonly string[];
  readonly steps: readonly Step[];
};

export type OrderedStep<Step> = { readonly code: string; readonly name: string; readonly step: Step };

/**
 * The steps of a job card in order of work: access work comes off once, before the first operation that needs
 * it (and after what it needs itself), and goes back once, after the last. Operations are given in order.
 * Throws a RangeError where access work needs itself or something that is not there.
 */
export function orderSteps<Step>(
  operations: readonly OrderedOperation<Step>[],
  access: readonly OrderedAccess<Step>[],
): readonly OrderedStep<Step>[] {
  const pieces = new Map(access.map((piece) => [piece.code, piece]));
  const wanted = operations.map((operation) => new Set(withNeeds(operation.access, pieces)));
  const off: OrderedAccess<Step>[] = [];
  const card: OrderedStep<Step>[] = [];
  const add = ({ code, name }: { code: string; name: string }, steps: readonly Step[]) =>
    card.push(...steps.map((step) => ({ code, name, step })));

  operations.forEach((operation, index) => {
    for (const code of wanted[index] ?? []) {
      const piece = pieces.get(code);
      if (!piece || off.includes(piece)) continue;
      off.push(piece);
      add(piece, piece.out);
    }
    add(operation, operation.steps);
    const later = wanted.slice(index + 1);
    // What came off last goes back first.
    for (const piece of [...off].reverse()) {
      if (later.some((codes) => codes.has(piece.code))) continue;
      off.splice(off.indexOf(piece), 1);
      add(piece, piece.back);
    }
  });
  return card;
}

/** The codes with everything they need, each after what it needs. */
function withNeeds(
  codes: readonly string[],
  pieces: ReadonlyMap<string, Pick<OrderedAccess<unknown>, "needs">>,
  above: readonly string[] = [],
): readonly string[] {
  const all = codes.flatMap((code) => {
    if (above.includes(code)) throw new RangeError(`access work ${code} needs itself`);
    const piece = pieces.get(code);
    if (!piece) throw new RangeError(`there is no access work ${code}`);
    return [...withNeeds(piece.needs, pieces, [...above, code]), code];
  });
  return [...new Set(all)];
}
