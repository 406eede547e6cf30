/** What making a link for a customer answers. */
export type LinkState =
  | { readonly status: "none" }
  | { readonly status: "made"; readonly url: string }
  | { readonly status: "refused"; readonly sentence: string };
