import { Moment } from "@/design/moment";
import { momentText } from "@/design/moment-text";
import { Section } from "@/design/sheet";
import { CloseLink, MakeLink } from "./link-panel";
import type { ShownQuote } from "./shown-quote";

/** The customer's links to the version that is shown. */
export function LinksSection({ quote }: { readonly quote: ShownQuote }) {
  const { shown, links, may } = quote;
  const { timeZone } = shown.site;
  const canMake = may.issue && (shown.status === "issued" || shown.status === "accepted");
  if (links.length === 0 && !canMake) return null;
  return (
    <Section title="The customer's link">
      {links.length > 0 && (
        <ul className="sentences" aria-label="Links that were made">
          {links.map(({ id, createdAt, expiresAt, state }) => (
            <li key={id} className="sentence">
              <div>
                Made <Moment at={createdAt} timeZone={timeZone} />
                {state === "open" ? (
                  <>
                    , opens until <Moment at={expiresAt} timeZone={timeZone} form="day" />
                  </>
                ) : state === "expired" ? (
                  ", has run out"
                ) : (
                  ", closed"
                )}
              </div>
              {state === "open" && may.issue && (
                <div className="sentence-action">
                  <CloseLink linkId={id} made={momentText(createdAt, timeZone)} />
                </div>
              )}
            </li>
          ))}
        </ul>
      )}
      {canMake && (
        <MakeLink
          versionId={shown.id}
          isFirst={shown.status === "issued" && links.every(({ state }) => state !== "open")}
        />
      )}
    </Section>
  );
}
