import type { PartKind } from "@buildproof/workshop";
import Link from "next/link";
import { Button } from "@/design/button";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { partTitles } from "./catalogue-words";

export interface Asked {
  readonly part: PartKind;
  readonly search: string;
  readonly system: string;
  readonly component: string;
  readonly kind: string;
  readonly model: string;
}

interface Named {
  readonly code: string;
  readonly name: string;
}

interface CatalogueFilterProps {
  readonly asked: Asked;
  readonly counts: Readonly<Record<string, number>>;
  readonly systems: readonly Named[];
  readonly components: readonly Named[];
  readonly kinds: readonly string[];
  readonly models: readonly Named[];
}

const all = { id: "", label: "all" };

/** Which part of the catalogue, and what of it. Everything is in the address, so that a list can be kept and sent. */
export function CatalogueFilter(props: CatalogueFilterProps) {
  const { asked, counts, systems, components, kinds, models } = props;
  const options = (named: readonly Named[]) => [
    all,
    ...named.map(({ code, name }) => ({ id: code, label: name })),
  ];
  return (
    <div className="grid gap-3">
      <nav aria-label="Parts of the catalogue" className="flex flex-wrap gap-x-4 gap-y-1">
        {(Object.keys(partTitles) as PartKind[]) // The keys of that very table.
          .map((part) => (
            <Link
              key={part}
              href={part === "package" ? "/catalogue/packages" : `/catalogue?part=${part}`}
              aria-current={part === asked.part ? "page" : undefined}
              className="aria-[current]:font-bold aria-[current]:text-ink aria-[current]:no-underline"
            >
              {partTitles[part]} {counts[part] ?? 0}
            </Link>
          ))}
      </nav>
      <search>
        <form action="/catalogue" className="form-row" key={JSON.stringify(asked)}>
          <input type="hidden" name="part" value={asked.part} />
          <TextField name="q" label="Words" type="search" defaultValue={asked.search} />
          {(asked.part === "item" || asked.part === "rule") && (
            <>
              <Select name="system" label="System" options={options(systems)} defaultValue={asked.system} />
              <Select name="model" label="Vehicle" options={options(models)} defaultValue={asked.model} />
            </>
          )}
          {components.length > 0 && (
            <Select
              name="component"
              label="What it is"
              options={options(components)}
              defaultValue={asked.component}
            />
          )}
          {kinds.length > 1 && (
            <Select
              name="kind"
              label="Kind"
              options={options(kinds.map((kind) => ({ code: kind, name: kind })))}
              defaultValue={asked.kind}
            />
          )}
          <div className="self-start pt-6">
            <Button type="submit">Find</Button>
          </div>
        </form>
      </search>
    </div>
  );
}
