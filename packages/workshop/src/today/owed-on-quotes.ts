import type { Transaction } from "@buildproof/database";
import { formatMoney, isCurrencyCode, minorUnits } from "@buildproof/units";
import { addDays, dateInZone, daysBetween, isoDateOf, storedDate } from "../core/site-date";
import { heldOf } from "../quotes/quote-money";
import { clockWords, dayWords, inDays, type Moment, type Owed, vehicleOf } from "./owed";

const LAPSES_SOON_DAYS = 5;
/** A quote that lapsed longer ago is no news. */
const LAPSED_NEWS_DAYS = 7;

/** Questions without an answer, quotes that run out, and accepted ones whose deposit has not come. */
export async function owedOnQuotes(tx: Transaction, moment: Moment): Promise<readonly Owed[]> {
  return [
    ...(await questions(tx, moment)),
    ...(await lapsing(tx, moment)),
    ...(await withoutDeposit(tx, moment)),
  ];
}

const withNames = {
  quote: { include: { customer: true, vehicle: { include: { vehicleModel: true } } } },
} as const;

/** Quotes on which the customer spoke last. */
async function questions(tx: Transaction, { today, site }: Moment): Promise<readonly Owed[]> {
  const last = await tx.quoteMessage.findMany({
    distinct: ["quoteId"],
    orderBy: [{ quoteId: "asc" }, { at: "desc" }],
    include: withNames,
  });
  return last
    .filter(({ fromCustomer }) => fromCustomer)
    .map(({ quote, text, at }) => {
      const since = clockWords(at, site.timeZone, dateInZone(at, site.timeZone) === today);
      const begins = text.length > 80 ? `${text.slice(0, 80)}…` : text;
      return {
        kind: "question",
        sentence: `Quote ${quote.number} for ${vehicleOf(quote)}: “${begins}” waits for an answer since ${since}.`,
        since: at.toISOString(),
        action: { label: "Answer the question", place: "quote", id: quote.id },
      };
    });
}

async function lapsing(tx: Transaction, { today }: Moment): Promise<readonly Owed[]> {
  const versions = await tx.quoteVersion.findMany({
    where: {
      status: "issued",
      validUntil: {
        gte: storedDate(addDays(today, -LAPSED_NEWS_DAYS)),
        lte: storedDate(addDays(today, LAPSES_SOON_DAYS)),
      },
    },
    include: withNames,
    orderBy: { validUntil: "asc" },
  });
  return versions.map(({ quote, validUntil }) => {
    const last = isoDateOf(validUntil);
    const days = daysBetween(today, last);
    const what = `Quote ${quote.number} for ${vehicleOf(quote)}`;
    if (days < 0)
      return {
        kind: "lapsed",
        sentence: `${what} lapsed ${inDays(days)}, on ${dayWords(last)}, without an answer.`,
        since: last,
        action: { label: "Make a new version", place: "quote", id: quote.id },
      };
    return {
      kind: days <= 1 ? "lapses-now" : "lapses-soon",
      sentence: `${what} lapses ${inDays(days)}${days > 1 ? `, on ${dayWords(last)}` : ""}.`,
      since: last,
      action: { label: "Ask for an answer", place: "quote", id: quote.id },
    };
  });
}

async function withoutDeposit(tx: Transaction, { today }: Moment): Promise<readonly Owed[]> {
  const versions = await tx.quoteVersion.findMany({
    where: {
      status: "accepted",
      depositMinor: { gt: 0 },
      jobs: { some: { status: { in: ["waiting", "booked"] } } },
    },
    include: {
      quote: {
        include: {
          ...withNames.quote.include,
          payments: true,
        },
      },
      acceptance: true,
      jobs: true,
    },
  });
  return versions.flatMap(({ quote, currency, depositMinor, acceptance, jobs }) => {
    const received = heldOf(quote.payments);
    if (received >= depositMinor || !isCurrencyCode(currency)) return [];
    const due = formatMoney(minorUnits(depositMinor - received), currency);
    const since = acceptance ? acceptance.at.toISOString() : today;
    const job = jobs[0] ? ` for job ${jobs[0].number}` : "";
    return [
      {
        kind: "deposit" as const,
        sentence: `Deposit${job} not received: ${due} is due from ${vehicleOf(quote).replace("’s ", " for the ")}.`,
        since,
        action: { label: "Record the deposit", place: "quote" as const, id: quote.id },
      },
    ];
  });
}
