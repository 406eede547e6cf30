/** What we use of the solver's package, and no more; its own types also name what we must not touch. */
declare module "clingo-wasm" {
  /** A solution has Costs (without Value when none of the shown is true); a proof of a lower bound has Lower. */
  type Witness = {
    readonly Value?: readonly string[];
    readonly Costs?: readonly number[];
    readonly Lower?: readonly number[];
  };
  type Outcome = {
    readonly Result: "SATISFIABLE" | "UNSATISFIABLE" | "UNKNOWN" | "OPTIMUM FOUND" | "ERROR";
    readonly Call?: readonly { readonly Witnesses?: readonly Witness[] }[];
  };
  export function run(
    program: string,
    models: number,
    options: readonly string[],
    onWitness?: (witness: Witness) => void,
  ): Promise<Outcome>;
  /** Ends the worker; a running program ends with the result ERROR. */
  export function restart(): Promise<void>;
}
