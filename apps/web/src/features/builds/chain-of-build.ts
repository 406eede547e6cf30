import type { SheetCapacity, SheetFinding } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";
import type { ChainLink, ChainPath, WeakestLink } from "@/design/plots/chain-types";

/** Below this headroom a link that holds is watched. Common practice, no source. */
const WATCHED_HEADROOM = 0.1;

/** Asked against given along the path of air and torque, with the fuel that meets it and what the vehicle carries. */
export function chainPaths(capacities: readonly SheetCapacity[]): readonly ChainPath[] {
  const links = (...ids: readonly string[]) =>
    ids.flatMap((id) => capacities.filter(({ link, demand }) => link === id && demand > 0).map(linkOf));
  const air = links("belt-drive", "cooler", "radiator");
  const fuel = links("tank-pump", "high-pressure-pump", "injection-window");
  const loads = links("alternator", "payload", "front-axle", "rear-axle", "brakes", "towing", "combination");
  const paths: readonly ChainPath[] = [
    {
      id: "air",
      title: "Air and torque",
      links: [
        { id: "air-in", name: "Air in" },
        ...air,
        { id: "engine", name: "Engine" },
        ...links("clutch", "gearbox"),
        { id: "tyres", name: "Tyres" },
      ],
    },
    { id: "fuel", title: "Fuel", joinsBefore: "engine", links: fuel },
    { id: "loads", title: "Electrics and loads", links: loads },
  ];
  return paths.filter((path) => path.links.length > 0);
}

function linkOf(capacity: SheetCapacity): ChainLink {
  const { link, name, asked, demand, supply, unit, headroom, shortBy, met } = capacity;
  return {
    id: link,
    name,
    ...(asked === null ? {} : { asked }),
    figures: `${figureText(demand, decimals(demand))} of ${figureText(supply, decimals(supply))} ${unit}`,
    note: shortBy === null ? `${wholePercent(headroom ?? 0)} headroom` : `short by ${wholePercent(shortBy)}`,
    grade: met ? ((headroom ?? 1) < WATCHED_HEADROOM ? "watch" : "fit") : "stop",
  };
}

/** The link that gives way first: one that can do harm before one that only holds back, then the most asked. */
export function weakestLink(
  capacities: readonly SheetCapacity[],
  findings: readonly SheetFinding[],
): (WeakestLink & { readonly finding: SheetFinding | null }) | null {
  const asked = capacities.filter(({ demand }) => demand > 0);
  const [weakest, ...others] = asked.toSorted((a, b) => rank(b) - rank(a) || (b.asked ?? 9) - (a.asked ?? 9));
  if (!weakest) return null;
  const finding = findings.find(({ rule }) => rule === weakest.rule) ?? null;
  const alsoShort = others.filter(({ met }) => !met);
  return { linkId: weakest.link, sentence: sentenceOf(weakest, finding, alsoShort), finding };
}

function rank({ met, safety }: SheetCapacity): number {
  if (met) return 0;
  return safety ? 2 : 1;
}

function sentenceOf(
  weakest: SheetCapacity,
  finding: SheetFinding | null,
  alsoShort: readonly SheetCapacity[],
): string {
  if (weakest.met) return `Weakest link: ${weakest.sentence}. Everything holds.`;
  const [fix] = finding?.fixes ?? [];
  const after =
    fix?.headroomAfter !== undefined && fix.headroomAfter !== null && fix.add[0]
      ? ` “${fix.add[0].name}” leaves ${wholePercent(fix.headroomAfter)} headroom.`
      : "";
  const also =
    alsoShort.length === 0
      ? ""
      : ` Also short: ${alsoShort.map(({ name, shortBy }) => (shortBy === null ? name : `${name} by ${wholePercent(shortBy)}`)).join(", ")}.`;
  return `Weakest link: ${weakest.sentence}.${after}${also}`;
}

function wholePercent(share: number): string {
  return `${figureText(share * 100)} %`;
}

function decimals(value: number): number {
  return Number.isInteger(value) ? 0 : 1;
}
