/**
 * What the workshop says to its customers on quotes and papers, in English. Another language is another file of
 * the same shape.
 */
export const en = {
  headings: {
    item: "Parts and kits",
    labour: "Workshop labour",
    dyno: "Dyno",
    fee: "Consumables and fees",
    extra: "Also",
  },
  receiptFor: (d: { kind: "deposit" | "balance" | "refund"; quote: number; version: number | null }) =>
    `As ${d.kind === "deposit" ? "the deposit" : "the balance"} for quote ${d.quote}${d.version ? `, version ${d.version}` : ""}.`,
  receiptBy: (d: { method: string; reference: string }) => {
    const how = d.method === "transfer" ? "bank transfer" : d.method;
    return `Paid by ${how}${d.reference ? `, reference ${d.reference}` : ""}.`;
  },
  receiptHeldAs: (d: { as: string; tax: string }) =>
    d.as === "part"
      ? `It is a part payment: ${d.tax} falls due on it now, and the tax invoice says how much.`
      : `It is held as a security deposit: ${d.tax} falls due when it is used for the work or forfeited, not now.`,
  invoiceBasis: (d: { quote: number; version: number }) =>
    `For the work of quote ${d.quote}, version ${d.version}, as you accepted it.`,
  invoicePayment: (number: number) =>
    `By transfer, at the counter by card, or in cash; name invoice ${number} with your payment.`,
  taxFree: { Z: "free", E: "exempt", O: "none" },
  inclusions: (package_: string | null) => [
    ...(package_ ? [`Everything that the ${package_} package calls for on your vehicle.`] : []),
    "Parts, workshop and dyno hours, consumables and fees as listed, tax included.",
    "Work that several jobs share, such as taking the front off, charged once.",
    "Three repeatable runs before and after where the dyno is part of the work, with the record for you to keep.",
  ],
  exclusions: [
    "Faults that we find on the way: we stop, tell you, and go on only when you have agreed to the price.",
    "Insurance, registration and inspection charges of the authorities.",
  ],
  assumptions: [
    "The vehicle is as described here, and nothing fitted by others lies in the path of this work.",
    "Parts prices hold for the validity of this quote.",
  ],
  cautions: [
    "A change to engine, tyres, ride height or towing can need approval before road use: the authority or a licensed signatory has the last word.",
  ],
  proposed: (d: { package_: string | null; outcome: string | null; vehicle: string }) =>
    d.package_
      ? `${d.package_} for your ${d.vehicle}. ${d.outcome ?? ""}`.trim()
      : `The work listed below for your ${d.vehicle}.`,
  depositCovers: (d: { byParts: boolean; sharePct: number }) =>
    d.byParts
      ? "It covers the parts made or ordered for you that cannot go back."
      : `${d.sharePct} % of the total; parts are ordered when it has arrived.`,
  partsBy: (days: number | null) => {
    const then = "we agree the dates with you once you have accepted and the deposit is here.";
    if (days === null) return `W${then.slice(1)}`;
    return days === 0
      ? `The parts are on our shelf; ${then}`
      : `Parts take about ${days} days to arrive once the deposit is here; then we agree the dates with you.`;
  },
  lessDiscount: (pct: string) => `${pct} % off, as agreed.`,
  accept: "Open the link that we sent you, read the quote there, and accept it with your name.",
  notice: {
    draft: "Draft: not an offer yet.",
    accepted: (d: { name: string; on: string }) => `Accepted by ${d.name} on ${d.on}.`,
    declined: "This version was declined.",
    lapsed: "This version has lapsed: ask us for a new one.",
    superseded: (by: number | null) =>
      by === null
        ? "This version was replaced by a newer one."
        : `This version was replaced by version ${by}.`,
  },
} as const;
