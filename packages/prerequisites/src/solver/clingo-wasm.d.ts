/** What we use of the solver's package, and no more; its own types also name what we must not touch. */
declare module "clingo-wasm" {
  type Model = { readonly Value?: readonly string[] };
  type Outcome = {
    readonly Result: "SATISFIABLE" | "UNSATISFIABLE" | "UNKNOWN" | "OPTIMUM FOUND" | "ERROR";
  };
  export function run(
    program: string,
    models: number,
    options: readonly string[],
    onModel: (model: Model) => void,
  ): Promise<Outcome>;
  /** Ends the worker; a running program ends with the result ERROR. */
  export function restart(): Promise<void>;
}
