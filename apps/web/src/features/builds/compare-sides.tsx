import type { ComparedBuild, compareBuilds, ValueOf } from "@buildproof/workshop";
import Link from "next/link";
import type { ReactNode } from "react";
import { Figure } from "@/design/figure";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { Page, Section, SheetHead } from "@/design/sheet";
import { dateText, daysText, hoursText } from "./build-words";

type Compared = ValueOf<typeof compareBuilds>;

/** Two builds beside each other: first what differs in what is chosen, then what follows from each. */
export function CompareSides({ compared }: { readonly compared: Compared }) {
  const { left, right, currency, inBoth, links, others } = compared;
  const columns = [
    { id: "what", title: "" },
    { id: "left", title: <BuildLink build={left} /> },
    { id: "right", title: <BuildLink build={right} /> },
  ];
  const rows = rowsOf(currency).filter(({ of }) => of(left) !== null || of(right) !== null);
  return (
    <Page>
      <SheetHead
        title={`Build ${left.number} beside build ${right.number}`}
        lead={<VehicleWords left={left} right={right} />}
      />
      <Section title="What follows from each">
        <RuledTable
          caption="What follows from each build"
          isCaptionHidden
          columns={columns}
          rows={rows.map(({ id, what, of }) => ({
            id,
            cells: { what, left: of(left) ?? "–", right: of(right) ?? "–" },
          }))}
        />
      </Section>
      {links.length > 0 && (
        <Section title="The chain" aside={<span className="fine">asked of each link, full load</span>}>
          <RuledTable
            caption="What is asked of each link"
            isCaptionHidden
            columns={columns}
            rows={links.map(({ rule, name, left: a, right: b }) => ({
              id: rule,
              cells: {
                what: name,
                left: a?.sentence.replace(`${name}: `, "") ?? "–",
                right: b?.sentence.replace(`${name}: `, "") ?? "–",
              },
            }))}
          />
        </Section>
      )}
      {inBoth.length > 0 && <p className="fine">In both: {inBoth.join(", ")}.</p>}
      {others.length > 1 && (
        <p>
          Compare build {left.number} with{" "}
          {others
            .filter(({ id }) => id !== right.id)
            .map(({ id, number }, index) => (
              <span key={id}>
                {index > 0 && ", "}
                <Link href={`/builds/compare?left=${left.id}&right=${id}`}>build {number}</Link>
              </span>
            ))}
        </p>
      )}
    </Page>
  );
}

function VehicleWords({ left, right }: Pick<Compared, "left" | "right">) {
  const words = ({ vehicle }: ComparedBuild) =>
    [vehicle.modelName, vehicle.plate].filter((part) => part !== "").join(" · ");
  if (left.vehicle.id === right.vehicle.id)
    return <Link href={`/vehicles/${left.vehicle.id}`}>{words(left)}</Link>;
  return (
    <>
      Two vehicles: {words(left)} and {words(right)}. What is asked and forecast is each vehicle’s own.
    </>
  );
}

function BuildLink({ build }: { readonly build: ComparedBuild }) {
  return <Link href={`/builds/${build.id}`}>Build {build.number}</Link>;
}

type Row = { readonly id: string; readonly what: string; of(build: ComparedBuild): ReactNode | null };

function rowsOf(currency: string): readonly Row[] {
  return [
    { id: "goal", what: "Goal", of: ({ goal }) => goal },
    { id: "package", what: "Package", of: ({ packageName }) => packageName },
    { id: "only", what: "Only here", of: (build) => <OnlyHere build={build} /> },
    { id: "open", what: "Missing or short", of: (build) => <Findings build={build} /> },
    { id: "power", what: "Forecast at the hubs", of: (build) => <ForecastWords build={build} /> },
    {
      id: "price",
      what: "Price, including tax",
      of: ({ grossMinor }) => <Money minor={grossMinor} currency={currency} />,
    },
    {
      id: "hours",
      what: "Hours",
      of: ({ labourHours, dynoHours }) =>
        `${hoursText(labourHours)}${dynoHours > 0 ? ` and ${hoursText(dynoHours)} on the dyno` : ""}`,
    },
    {
      id: "date",
      what: "Parts here by",
      of: ({ leadDays, partsBy }) =>
        leadDays === 0 ? "in stock, today" : `${dateText(partsBy)}, ${daysText(leadDays)}`,
    },
    {
      id: "margin",
      what: "Margin, as chosen",
      of: ({ margin }) =>
        margin && (
          <>
            {margin.marginBasisPoints === null ? (
              "–"
            ) : (
              <Figure value={margin.marginBasisPoints / 100} unit="%" decimals={1} />
            )}
            <span className="sentence-note">
              costs <Money minor={margin.costMinor} currency={currency} /> before tax
            </span>
          </>
        ),
    },
  ];
}

function OnlyHere({ build }: { readonly build: ComparedBuild }) {
  if (build.only.length === 0) return <>nothing that the other has not</>;
  return (
    <ul>
      {build.only.map(({ code, name, quantity }) => (
        <li key={code}>
          {quantity > 1 && `${quantity} × `}
          {name}
        </li>
      ))}
    </ul>
  );
}

function Findings({ build }: { readonly build: ComparedBuild }) {
  if (build.findings.length === 0) return <>nothing</>;
  return (
    <ul>
      {build.findings.map(({ rule, headline, safety }) => (
        <li key={rule}>
          {headline}
          {safety && <i className="fine"> a safety point</i>}
        </li>
      ))}
    </ul>
  );
}

function ForecastWords({ build: { forecast } }: { readonly build: ComparedBuild }) {
  if ("sentence" in forecast) return <>{forecast.sentence}</>;
  const { power, torque, reference } = forecast;
  const band = ({ low, high }: { low: number; high: number }) => `${Math.round(low)}–${Math.round(high)}`;
  return (
    <>
      {band(power)} kW · {band(torque)} N·m
      <span className="sentence-note">{reference}</span>
    </>
  );
}
