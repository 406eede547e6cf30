import { type Clash, clashIn } from "../complete/clash";
import { encode } from "../complete/encode";
import type { Encoding, Literal } from "../complete/encoding";
import { measuresOf } from "../complete/measures";
import type { Problem } from "../complete/problem";
import type { Search } from "../complete/search-program";
import { someSelection } from "../complete/some-selection";
import type { Facts, Group, Rule } from "../model/model";
import { prepare } from "../model/prepare";
import { situation } from "../model/situation";
import { factsOfSteps, type SpreadModel } from "./spread-facts";

export type Question = {
  /** In place of the catalogue's. */
  readonly rules?: readonly Rule[] | undefined;
  /** Beside the catalogue's. */
  readonly groups?: readonly Group[] | undefined;
  readonly chosen?: readonly string[] | undefined;
  readonly left?: readonly string[] | undefined;
};

/** A selection that keeps the rules asked about, steps of facts among it. */
export type Witness = { readonly selected: ReadonlySet<string>; readonly facts: Facts };

export type Answer =
  | { readonly status: "possible"; readonly witness: Witness }
  | { readonly status: "impossible" }
  | { readonly status: "unsettled" };

/** Asks whether builds are possible, of one catalogue on one range of vehicles. */
export class Prover {
  /** Every build found so far that keeps all rules of the catalogue. */
  readonly builds: Witness[] = [];
  readonly encoding: Encoding;
  readonly #places: ReadonlyMap<string, Literal>;

  constructor(
    readonly spread: SpreadModel,
    readonly barred: readonly string[],
    private readonly search: Search,
    private readonly time: {
      readonly isOver: () => boolean;
      readonly pause?: (() => Promise<void>) | undefined;
    },
  ) {
    const { model, facts } = spread;
    this.encoding = encode(model, facts);
    this.#places = new Map(model.items.map(({ id }, index) => [id, index + 1]));
  }

  get rules(): readonly Rule[] {
    return this.spread.model.rules ?? [];
  }

  async ask(question: Question): Promise<Answer> {
    const isPlain = !question.rules && !question.groups;
    if (isPlain) {
      const known = this.builds.find((build) => answers(build, question));
      if (known) return { status: "possible", witness: known };
    }
    await this.time.pause?.();
    if (this.time.isOver()) return { status: "unsettled" };
    const { encoding, chosen, ...rest } = this.#problem(question);
    const origins = this.#modelOf(question);
    const members = [
      ...chosen.map((literal) => ({ chosen: literal })),
      ...Array.from({ length: origins.groups.length + origins.rules.length }, (_, origin) => ({ origin })),
    ];
    const found = await someSelection({ encoding, ...rest }, members, this.search);
    if (found.status === "time-limit") return { status: "unsettled" };
    if (found.status === "impossible") return { status: "impossible" };
    const { items } = this.spread.model;
    const selected = new Set(found.items.flatMap((index) => items[index]?.id ?? []));
    const witness = { selected, facts: factsOfSteps(this.spread, selected) };
    if (isPlain) this.builds.push(witness);
    return { status: "possible", witness };
  }

  /** Why what was found impossible is: a clash from which nothing can be left out; null when the time is up. */
  async clash(question: Question): Promise<Clash | null> {
    if (this.time.isOver()) return null;
    const model = this.#modelOf(question);
    const bare = situation([], this.spread.facts);
    return clashIn({ ...this.#problem(question), ready: prepare(model), bare }, this.search);
  }

  literalsOf(ids: readonly string[]): readonly Literal[] {
    return ids.flatMap((id) => this.#places.get(id) ?? []);
  }

  encodingOf(question: Question): Encoding {
    const isPlain = !question.rules && !question.groups;
    return isPlain ? this.encoding : encode(this.#modelOf(question), this.spread.facts);
  }

  #modelOf({ rules = this.rules, groups = [] }: Question) {
    const { model } = this.spread;
    return { items: model.items, groups: [...(model.groups ?? []), ...groups], rules };
  }

  #problem(question: Question): Pick<Problem, "encoding" | "measures" | "chosen" | "barred"> {
    const { chosen = [], left = [] } = question;
    return {
      encoding: this.encodingOf(question),
      measures: NO_MEASURES,
      chosen: this.literalsOf(chosen),
      barred: this.literalsOf([...this.barred, ...left]).map((literal) => -literal),
    };
  }
}

/** Whether there is a build is asked, not what it costs. */
const NO_MEASURES = measuresOf([]);

function answers({ selected }: Witness, { chosen = [], left = [] }: Question): boolean {
  return chosen.every((id) => selected.has(id)) && !left.some((id) => selected.has(id));
}
