/** What making a token answers. */
export type TokenState =
  | { readonly status: "none" }
  | { readonly status: "made"; readonly name: string; readonly token: string }
  | { readonly status: "refused"; readonly sentence: string };
