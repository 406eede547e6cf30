/** An item as a list to choose from shows it. */
export type PickableItem = { readonly code: string; readonly name: string };
