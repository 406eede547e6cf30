/** How money moves, in the words of the forms. */
export const paymentMethods = [
  { id: "transfer", label: "bank transfer" },
  { id: "card", label: "card" },
  { id: "cash", label: "cash" },
];
