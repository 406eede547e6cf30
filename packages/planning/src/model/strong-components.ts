type Step = { readonly node: number; readonly next: readonly number[]; at: number };

/**
 * Nodes that lead to one another, in an order in which no component comes before one that leads to it (Tarjan 1972,
 * without recursion, because chains are long).
 */
export function strongComponents(size: number, nextOf: (node: number) => readonly number[]): number[][] {
  const walk = new Walk(size, nextOf);
  for (let root = 0; root < size; root += 1) walk.from(root);
  return walk.components.reverse();
}

class Walk {
  readonly components: number[][] = [];
  readonly #seen: Int32Array;
  readonly #low: Int32Array;
  readonly #isOpen: Uint8Array;
  readonly #open: number[] = [];
  readonly #path: Step[] = [];
  #count = 0;

  constructor(
    size: number,
    readonly nextOf: (node: number) => readonly number[],
  ) {
    this.#seen = new Int32Array(size).fill(-1);
    this.#low = new Int32Array(size);
    this.#isOpen = new Uint8Array(size);
  }

  from(root: number): void {
    if (this.#seen[root] !== -1) return;
    this.#enter(root);
    for (let top = this.#path.at(-1); top; top = this.#path.at(-1)) {
      const next = top.next[top.at];
      top.at += 1;
      if (next === undefined) this.#leave(top.node);
      else if (this.#seen[next] === -1) this.#enter(next);
      else if (this.#isOpen[next]) this.#lower(top.node, this.#seen[next] ?? 0);
    }
  }

  #enter(node: number): void {
    this.#seen[node] = this.#count;
    this.#low[node] = this.#count;
    this.#count += 1;
    this.#open.push(node);
    this.#isOpen[node] = 1;
    this.#path.push({ node, next: this.nextOf(node), at: 0 });
  }

  #leave(node: number): void {
    this.#path.pop();
    const above = this.#path.at(-1);
    if (above) this.#lower(above.node, this.#low[node] ?? 0);
    if (this.#low[node] !== this.#seen[node]) return;
    const component = this.#open.splice(this.#open.lastIndexOf(node));
    for (const member of component) this.#isOpen[member] = 0;
    this.components.push(component);
  }

  #lower(node: number, to: number): void {
    this.#low[node] = Math.min(this.#low[node] ?? 0, to);
  }
}
