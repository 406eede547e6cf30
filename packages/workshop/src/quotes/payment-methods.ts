/** How money comes in and goes back. */
export const paymentMethods = ["transfer", "card", "cash"] as const;
