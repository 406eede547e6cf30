import type { Chassis, MassSheet } from "@buildproof/workshop";
import type { ReactNode } from "react";
import { Figure } from "@/design/figure";
import { RuledTable } from "@/design/ruled-table";
import { FindingLines } from "./finding-lines";
import { More } from "./more";
import { PartSection } from "./part-section";

const columns = [
  { id: "what", title: <span className="visually-hidden">What</span> },
  { id: "mass", title: "Mass", align: "figure" },
  { id: "front", title: "Front axle", align: "figure" },
  { id: "rear", title: "Rear axle", align: "figure" },
] as const;

/** Masses and axle loads against plates and tyres, as the vehicle travels. */
export function MassSection({
  masses,
  alreadyFitted,
  isPrinted,
}: Pick<Chassis, "masses" | "alreadyFitted"> & { readonly isPrinted: boolean }) {
  return (
    <PartSection title="Masses and axle loads" aside="every seat taken, as it travels" part={masses}>
      {(sheet) => (
        <>
          <RuledTable
            caption="Masses and axle loads"
            isCaptionHidden
            columns={columns}
            rows={massRows(sheet)}
            total={{
              what: "Left",
              mass: <Kilograms value={sheet.gvmLeftKg} />,
              front: <Kilograms value={sheet.travelling.front.leftKg} />,
              rear: <Kilograms value={sheet.travelling.rear.leftKg} />,
            }}
          />
          <FindingLines label="Limits of mass" findings={sheet.findings} />
          <p>
            Payload, for people, luggage and the load on the ball: <Kilograms value={sheet.payloadKg} /> of{" "}
            <Kilograms value={sheet.standardPayloadKg} /> as standard.
          </p>
          <AddedParts sheet={sheet} isPrinted={isPrinted} />
          {sheet.placedMidway.length > 0 && (
            <p className="fine">
              Counted midway between the axles, because the catalogue does not say where it sits:{" "}
              {sheet.placedMidway.join(", ")}.
            </p>
          )}
          {alreadyFitted !== "" && (
            <p className="fine">
              Not counted, because only a weighbridge knows: already fitted {alreadyFitted}.
            </p>
          )}
        </>
      )}
    </PartSection>
  );
}

function massRows({ lines, travelling, gvmKg }: MassSheet) {
  const { massKg, front, rear } = travelling;
  return [
    ...lines.map(({ id, label, ...line }) =>
      rowOf(id, label, line.massKg, line.frontKg, line.rearKg, id !== "kerb"),
    ),
    rowOf("travelling", <strong>As it travels</strong>, massKg, front.loadKg, rear.loadKg),
    rowOf("plate", "Plate and axle ratings", gvmKg, front.ratingKg, rear.ratingKg),
    {
      id: "tyres",
      cells: {
        what: "Two tyres carry",
        mass: "",
        front: capacity(front.tyreCapacityKg),
        rear: capacity(rear.tyreCapacityKg),
      },
    },
  ];
}

function rowOf(id: string, what: ReactNode, mass: number, front: number, rear: number, signed = false) {
  return {
    id,
    cells: {
      what,
      mass: <Kilograms value={mass} signed={signed} />,
      front: <Kilograms value={front} signed={signed} />,
      rear: <Kilograms value={rear} signed={signed} />,
    },
  };
}

function Kilograms({ value, signed = false }: { readonly value: number; readonly signed?: boolean }) {
  return <Figure value={value} unit="kg" signed={signed} />;
}

function capacity(kg: number | null): ReactNode {
  return kg === null ? "not said" : <Kilograms value={kg} />;
}

function AddedParts({ sheet, isPrinted }: { readonly sheet: MassSheet; readonly isPrinted: boolean }) {
  if (sheet.added.length === 0) return null;
  return (
    <More title="What the build adds, part by part" isPrinted={isPrinted}>
      <RuledTable
        caption="What the build adds, part by part"
        isCaptionHidden
        columns={columns}
        rows={sheet.added.map(({ id, label, massKg, frontKg, rearKg }) =>
          rowOf(id, label, massKg, frontKg, rearKg, true),
        )}
      />
    </More>
  );
}
