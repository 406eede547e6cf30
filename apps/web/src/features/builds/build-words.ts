import type { FixOffer } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";
import { moneyText } from "@/design/money-text";

/** Hours to the tenth, with their unit. */
export function hoursText(hours: number): string {
  return `${figureText(hours, 1)} h`;
}

/** "$1,320.00 · 2.7 h · dyno 1.5 h · 8 days": what a fix adds. */
export function offerText(offer: FixOffer, currency: string): string {
  return [
    moneyText(offer.grossMinor, currency, offer.grossMinor < 0),
    offer.labourHours === 0 ? "" : hoursText(offer.labourHours),
    offer.dynoHours === 0 ? "" : `dyno ${hoursText(offer.dynoHours)}`,
    offer.leadDays === 0 ? "" : daysText(offer.leadDays),
  ]
    .filter((part) => part !== "")
    .join(" · ");
}

export function daysText(days: number): string {
  return days === 1 ? "1 day" : `${days} days`;
}

/** Names in a row: "A, B and C". */
export function listedNames(items: readonly { readonly name: string }[]): string {
  const names = items.map(({ name }) => name);
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/** 2026-12-18 as "Fri 18 Dec 2026". */
export function dateText(isoDate: string): string {
  return new Intl.DateTimeFormat("en-AU", {
    weekday: "short",
    day: "numeric",
    month: "short",
    year: "numeric",
    timeZone: "UTC",
  }).format(new Date(`${isoDate}T00:00:00Z`));
}
