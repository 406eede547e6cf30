import type { Rule } from "../model/model";
import { assume } from "./assume";
import type { BuildCount, PackageToProve } from "./catalogue-proof";
import { type CountLimits, countSelections, type SelectionCount } from "./count-selections";
import { openConstraints } from "./open-constraints";
import { openItems } from "./prove-packages";
import type { Prover } from "./prover";

/** How many builds the rules of a catalogue allow, with a package in them or with nothing asked for. */
export async function countBuilds(
  prover: Prover,
  rules: readonly Rule[],
  sold: PackageToProve | null,
  isPossible: boolean,
  limits: CountLimits,
): Promise<BuildCount> {
  const real = prover.spread.model.items.length - prover.spread.steps.length;
  const all = await counted(prover, rules, sold, (variable) => variable <= real, limits);
  const open = sold ? openItems(sold) : [];
  const shown = new Set(prover.literalsOf(open));
  const ways =
    open.length > 0 ? await counted(prover, rules, sold, (variable) => shown.has(variable), limits) : null;
  const known = isPossible ? 1n : 0n;
  return {
    package: sold?.id ?? null,
    isExact: all.isExact,
    builds: larger(all.count, known),
    ways: ways && { isExact: ways.isExact, count: larger(ways.count, known) },
  };
}

async function counted(
  prover: Prover,
  rules: readonly Rule[],
  sold: PackageToProve | null,
  isShown: (variable: number) => boolean,
  limits: CountLimits,
): Promise<SelectionCount> {
  const { variables, clauses, sums } = prover.encodingOf({ rules, groups: sold?.choices });
  const open = openConstraints({
    variables: Array.from({ length: variables }, (_, at) => at + 1),
    clauses: clauses.map(({ literals }) => literals),
    sums,
  });
  if (!open) return { isExact: false, count: 0n };
  const barred = prover.literalsOf(prover.barred).map((literal) => -literal);
  const given = assume(open, [...prover.literalsOf(sold?.items ?? []), ...barred]);
  return given ? countSelections(given.open, isShown, limits) : { isExact: true, count: 0n };
}

function larger(a: bigint, b: bigint): bigint {
  return a > b ? a : b;
}
