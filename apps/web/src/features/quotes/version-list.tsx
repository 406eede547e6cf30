import Link from "next/link";
import { Moment } from "@/design/moment";
import { Money } from "@/design/money";
import { Section } from "@/design/sheet";
import type { ShownQuote } from "./shown-quote";
import { statusInWords } from "./status-words";

/** Every version and what became of it. The one that is shown is not a link. */
export function VersionList({ quote }: { readonly quote: ShownQuote }) {
  const { versions, shown } = quote;
  return (
    <Section title="Versions">
      <ul className="sentences">
        {[...versions].reverse().map((version) => (
          <li key={version.id} className="sentence">
            <div>
              {version.id === shown.id ? (
                <strong aria-current="true">Version {version.versionNo}</strong>
              ) : (
                <Link href={`/quotes/${quote.id}?version=${version.versionNo}`}>
                  Version {version.versionNo}
                </Link>
              )}
              , {statusInWords(version)}
              <span className="sentence-note">
                {version.issuedAt && (
                  <>
                    issued <Moment at={version.issuedAt} timeZone={shown.site.timeZone} />
                  </>
                )}
                {version.acceptance && (
                  <>
                    , accepted by {version.acceptance.name}{" "}
                    <Moment at={version.acceptance.at} timeZone={shown.site.timeZone} />
                  </>
                )}
                {version.decline && (
                  <>
                    , declined <Moment at={version.decline.at} timeZone={shown.site.timeZone} />
                    {version.decline.reason && `: “${version.decline.reason}”`}
                  </>
                )}
              </span>
            </div>
            <div>
              <Money minor={version.grossMinor} currency={shown.currency} />
            </div>
          </li>
        ))}
      </ul>
    </Section>
  );
}
