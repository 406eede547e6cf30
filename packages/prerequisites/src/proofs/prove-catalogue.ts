import type { Search } from "../complete/search-program";
import { checkChoice } from "../model/check-ids";
import { prepare } from "../model/prepare";
import type {
  BuildCount,
  CatalogueProof,
  CatalogueToProve,
  ProofFinding,
  VehiclesToProve,
} from "./catalogue-proof";
import { countBuilds } from "./count-builds";
import { proveChoices } from "./prove-choices";
import { proveItems } from "./prove-items";
import { proveLimits } from "./prove-limits";
import { provePackages } from "./prove-packages";
import { proveRules } from "./prove-rules";
import { Prover } from "./prover";
import { rulesToCount } from "./rules-to-count";
import { shortLookFirst } from "./short-look";
import { spreadFacts } from "./spread-facts";

export type ProofLimits = {
  /** Asked often: whether the time is up. What is not settled by then is said to be open, never proven. */
  readonly isOver?: (() => boolean) | undefined;
  /** Decisions that each count may take. */
  readonly countSteps?: number | undefined;
  /** Awaited every few milliseconds, so that others get their turn. */
  readonly pause?: (() => Promise<void>) | undefined;
};

const COUNT_STEPS = 200_000;

/**
 * What can be said of all builds that a catalogue allows on all vehicles of a range: what can never be
 * built or chosen, which rules say nothing or contradict each other, what a choice brings along, whether
 * the limits hold, and how many builds there are.
 *
 * The search is to keep to the same time; the same answers come whenever there is enough of it.
 *
 * @throws ImpossibleInputError for an unknown or doubled id, or a fact with no value left.
 */
export async function proveCatalogue(
  catalogue: CatalogueToProve,
  vehicles: VehiclesToProve,
  search: Search,
  { isOver = () => false, countSteps = COUNT_STEPS, pause }: ProofLimits = {},
): Promise<CatalogueProof> {
  const { model, packages = [], limits = [] } = catalogue;
  const { facts = {}, barred = [], overridable = [] } = vehicles;
  checkNames(catalogue, barred);
  const prover = new Prover(spreadFacts(model, facts), barred, shortLookFirst(search), { isOver, pause });
  const any = await prover.ask({});
  if (any.status !== "possible") return unprovable(prover, any.status);

  const limitProofs = await proveLimits(prover, limits, new Set(overridable));
  const ids = model.items.map(({ id }) => id);
  const items = await proveItems(prover, ids);
  const sold = await provePackages(prover, packages);
  const rules = await proveRules(prover, items);
  const choosable = ids.filter((id) => !barred.includes(id) && !isNever(items, id));
  const buildable = packages.filter(({ id }) => !isNever(sold, id));
  const choices = await proveChoices(prover, buildable, choosable);

  const count = { steps: countSteps, isOver, pause };
  const counting = await rulesToCount(prover);
  const counts: BuildCount[] = [await countBuilds(prover, counting, null, true, count)];
  for (const each of packages) {
    const isPossible = !isNever(sold, each.id) && !isOpen(sold, each.id);
    counts.push(await countBuilds(prover, counting, each, isPossible, count));
  }
  return { findings: [...sold, ...items, ...rules, ...choices], limits: limitProofs, counts };
}

function isNever(findings: readonly ProofFinding[], id: string): boolean {
  return findings.some(
    (each) =>
      (each.kind === "item-never" && each.item === id) ||
      (each.kind === "package-never" && each.package === id),
  );
}

function isOpen(findings: readonly ProofFinding[], pack: string): boolean {
  return findings.some(
    (each) => each.kind === "unsettled" && each.question.about === "package" && each.question.id === pack,
  );
}

/** Where nothing at all can be built there is nothing more to say than why, and where that is open nothing. */
async function unprovable(prover: Prover, status: "impossible" | "unsettled"): Promise<CatalogueProof> {
  const finding: ProofFinding =
    status === "impossible"
      ? { kind: "nothing-buildable", clash: await prover.clash({}) }
      : { kind: "unsettled", question: { about: "buildable" } };
  const count: BuildCount = { package: null, isExact: status === "impossible", builds: 0n, ways: null };
  return { findings: [finding], limits: [], counts: [count] };
}

/** Every package, choice and further limit names items of the catalogue, each once. */
function checkNames(
  { model, packages = [], limits = [] }: CatalogueToProve,
  barred: readonly string[],
): void {
  prepare({ ...model, rules: [...(model.rules ?? []), ...limits] });
  const known = new Set(model.items.map(({ id }) => id));
  checkChoice(known, [], barred);
  for (const { items, choices = [], options = [] } of packages) {
    checkChoice(known, items, []);
    checkChoice(known, options, []);
    prepare({ items: model.items, groups: [...(model.groups ?? []), ...choices] });
  }
}
