import type { FindOffer, FoundKind } from "@buildproof/workshop";
import type { SearchResults } from "@/shell/search-results";

const label: Readonly<Record<FoundKind, string>> = {
  vehicle: "Vehicles",
  customer: "Customers",
  build: "Builds",
  quote: "Quotes",
  job: "Jobs",
  item: "Parts and work",
};

/** Where a thing that was found is looked at. A part has no page of its own: it leads to the builds that have it. */
function hrefOf(kind: FoundKind, hit: { readonly id: string; readonly title: string }): string {
  if (kind === "item") return `/builds?q=${encodeURIComponent(hit.title)}`;
  return `/${kind}s/${hit.id}`;
}

/** What was found, in the shape that the search field draws. */
export function searchResultsOf(found: {
  readonly groups: readonly {
    readonly kind: FoundKind;
    readonly hits: readonly { readonly id: string; readonly title: string; readonly detail: string }[];
  }[];
  readonly offers: readonly FindOffer[];
}): SearchResults {
  return {
    groups: found.groups.map(({ kind, hits }) => ({
      kind,
      label: label[kind],
      hits: hits.map((hit) => ({ ...hit, href: hrefOf(kind, hit) })),
    })),
    offers: found.offers.map(offerOf),
  };
}

function offerOf(offer: FindOffer): SearchResults["offers"][number] {
  if (offer.kind === "new-customer") {
    return {
      title: `New customer ${offer.name}`,
      href: `/customers/new?name=${encodeURIComponent(offer.name)}`,
    };
  }
  return "vin" in offer
    ? {
        title: `New vehicle with VIN ${offer.vin}`,
        href: `/vehicles/new?vin=${encodeURIComponent(offer.vin)}`,
      }
    : {
        title: `New vehicle with plate ${offer.plate}`,
        href: `/vehicles/new?plate=${encodeURIComponent(offer.plate)}`,
      };
}
