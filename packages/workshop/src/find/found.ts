export type FoundKind = "customer" | "vehicle" | "build" | "quote" | "job" | "item";

export type Found = { readonly id: string; readonly title: string; readonly detail: string };

export type FoundGroup = { readonly kind: FoundKind; readonly hits: readonly Found[] };
