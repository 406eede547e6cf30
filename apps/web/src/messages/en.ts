/**
 * What customers read on the pages that are sent to them, in English. Plain words, short sentences. Another
 * language is another file of the same shape.
 */
export const en = {
  letter: {
    title: (d: { number: number; version: number }) => `Quote ${d.number}, version ${d.version}`,
    reader: "For",
    dated: "Date",
    vehicle: "Vehicle",
    openUntil: "Open until",
    plate: (plate: string) => `plate ${plate}`,
    asked: "What you asked for",
    proposed: "What we propose",
    outcome: "What it will be like",
    band: (d: { low: string; high: string }) =>
      `Between ${d.low} and ${d.high} kW, measured at the wheel hubs.`,
    bandMeaning:
      "It is a band and not one figure, because no two engines and no two days are alike. We prove it with three runs on our dyno before you pay the balance.",
    conditions: (condition: string) => `Measured under these conditions: ${condition}.`,
    cost: "What it costs",
    everyLine: "every line",
    shared: (hours: string) =>
      `${hours} hours of shared work, such as taking the front off, are charged once.`,
    discount: (tax: string) => `Discount without ${tax}, included above`,
    net: "Total without tax",
    total: (tax: string) => `Total with ${tax}`,
    when: "When",
    need: "What we need from you",
    deposit: (amount: string) => `A deposit of ${amount}.`,
    included: "What is included",
    rests: "What this rests on",
    excluded: "What is not included",
    careful: "What to be careful about",
    note: "A word from us",
    paper: "Save as PDF",
    print: "Print",
  },
  accept: {
    title: "Accept this quote",
    lead: (d: { until: string }) =>
      `You can accept until the end of ${d.until}. Type your name as your signature. We keep it with the time and the network address it came from.`,
    name: "Your full name",
    statement: (d: { number: number; version: number; total: string; tax: string; workshop: string }) =>
      `I have read quote ${d.number}, version ${d.version}, with what it rests on and what to be careful about, and ask ${d.workshop} to do this work for ${d.total} including ${d.tax}.`,
    button: "Accept this quote",
    pending: "Sending your acceptance",
    done: "Thank you. Your acceptance has reached the workshop.",
  },
  questions: {
    title: "Questions",
    lead: "Ask anything about this quote. We answer here, behind this same link.",
    you: "You",
    field: "Your question",
    button: "Send the question",
    pending: "Sending your question",
    done: "Your question has reached the workshop.",
  },
  decline: {
    title: "I do not want to go ahead",
    reason: "Would you tell us why? You need not.",
    button: "Decline this quote",
    done: "We have noted that you do not want to go ahead.",
  },
  state: {
    accepted: (d: { name: string; when: string }) => `${d.name} accepted this quote on ${d.when}.`,
    nextTitle: "What happens next",
    next: (d: { deposit: string }) => [
      `Please pay the deposit of ${d.deposit}. The workshop tells you how.`,
      "When it is here we order the parts, and agree with you on the day to bring the vehicle.",
      "Before any part is fitted we inspect the vehicle. If we find something, we stop and ask you first.",
      "Tell your insurer before you drive the changed vehicle.",
    ],
    job: (number: number) => `It is job ${number} with us.`,
    declined: "This quote was declined.",
    declinedNext: "If you changed your mind, ask the workshop for a new version.",
    lapsed: (on: string) => `This quote could be accepted until ${on}.`,
    lapsedNext: "Prices and dates move. Ask the workshop for a new one: it takes them a moment.",
    superseded: (by: number | null) =>
      by === null
        ? "This version was replaced by a newer one."
        : `This version was replaced by version ${by}.`,
    supersededNext:
      "You can still read it here, but not accept it. Ask the workshop for the link to the newer version.",
  },
  closed: {
    title: "This link does not open a quote",
    sentence:
      "It may have been cut short, it may have run out, or the workshop may have closed it. After many tries from one place it also rests for a quarter of an hour.",
    next: "Please ask the workshop that sent it to you for a new link. Nothing is lost: your quote is there.",
  },
  ask: (d: { phone: string; email: string }) => `Questions? Ring ${d.phone} or write to ${d.email}.`,
} as const;
