import { type MeasuredLink, showMeasuredChain } from "@buildproof/workshop";
import { Chain } from "@/design/plots/chain";
import type { ChainLink, ChainPath } from "@/design/plots/chain-types";
import { Section } from "@/design/sheet";
import { chainPaths, weakestLink } from "@/features/builds/chain-of-build";
import { load } from "@/server/load";

/** The chain as it was quoted; once there is a proof, what it showed stands beside what was forecast and promised. */
export async function MeasuredChain({ jobId }: { readonly jobId: string }) {
  const loaded = await load(showMeasuredChain, { jobId });
  if (!loaded.ok) return null;
  const { capacities, measured, weakest } = loaded.value;
  const quoted = weakestLink(capacities, []);
  if (measured.length === 0 || !weakest)
    return (
      quoted && (
        <Section title="The chain" aside={<span className="fine">asked against given, as quoted</span>}>
          <Chain
            isSmall
            caption="Asked against given along the path of air, fuel and torque, as quoted"
            paths={chainPaths(capacities)}
            weakest={quoted}
          />
        </Section>
      )
    );
  return (
    <Section
      title="The chain"
      aside={<span className="fine">asked against given; the upright line is what the proof showed</span>}
    >
      <Chain
        caption="Asked against given along the path of air, fuel and torque, as quoted and as measured"
        paths={withMeasured(
          chainPaths(capacities).filter(({ id }) => id !== "loads"),
          measured,
        )}
        weakest={{ linkId: weakest.link, sentence: `Weakest link as measured: ${weakest.sentence}` }}
      />
    </Section>
  );
}

/** What was measured goes to its link; a link that the quote does not know is put where it belongs. */
function withMeasured(paths: readonly ChainPath[], measured: readonly MeasuredLink[]): readonly ChainPath[] {
  const known = paths.map((path) => ({ ...path, links: path.links.map((link) => beside(link, measured)) }));
  const has = new Set(known.flatMap(({ links }) => links.map(({ id }) => id)));
  const absent = measured.filter(({ link }) => !has.has(link));
  const fuel = absent.filter(({ link }) => fuelLinks.has(link)).map(linkOf);
  const cooler = absent.filter(({ link }) => link === "cooler").map(linkOf);
  const rest = absent.filter(({ link }) => link !== "cooler" && !fuelLinks.has(link)).map(linkOf);
  const whole = known.map((path) => {
    if (path.id === "air")
      return {
        ...path,
        links: [...before(path.links, "engine"), ...cooler, ...from(path.links, "engine"), ...rest],
      };
    return path.id === "fuel" ? { ...path, links: [...path.links, ...fuel] } : path;
  });
  if (fuel.length === 0 || known.some(({ id }) => id === "fuel")) return whole;
  return [...whole, { id: "fuel", title: "Fuel", joinsBefore: "engine", links: fuel }];
}

const fuelLinks: ReadonlySet<string> = new Set(["high-pressure-pump", "mixture"]);

function before(links: readonly ChainLink[], id: string): readonly ChainLink[] {
  return links.slice(0, place(links, id));
}

function from(links: readonly ChainLink[], id: string): readonly ChainLink[] {
  return links.slice(place(links, id));
}

function place(links: readonly ChainLink[], id: string): number {
  const found = links.findIndex((link) => link.id === id);
  return found === -1 ? links.length : found;
}

function beside(link: ChainLink, measured: readonly MeasuredLink[]): ChainLink {
  const found = measured.find((each) => each.link === link.id);
  if (!found) return link;
  const { id: _, name: __, ...shown } = linkOf(found);
  // Where the forecast gives the share, the figures of the quote would only say it twice.
  const { figures, ...quoted } = link;
  return {
    ...quoted,
    ...(found.forecast === null && figures ? { figures: `${figures} as quoted` } : {}),
    ...shown,
  };
}

function linkOf({ link, name, forecast, measured, figures, grade }: MeasuredLink): ChainLink {
  return {
    id: link,
    name,
    ...(forecast === null ? {} : { asked: forecast }),
    ...(measured === null ? {} : { measured }),
    // In place of what the quote said of the link: the figures are now those of the proof.
    note: figures,
    grade,
  };
}
