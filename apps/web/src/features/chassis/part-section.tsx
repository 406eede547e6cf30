import type { ChassisPart } from "@buildproof/workshop";
import type { ReactNode } from "react";
import { Section } from "@/design/sheet";

interface PartSectionProps<Value> {
  readonly title: string;
  readonly aside?: string;
  readonly part: ChassisPart<Value>;
  readonly children: (value: Value) => ReactNode;
}

/** A headed part of the vehicle's figures, or the sentence that says which figure is lacking. */
export function PartSection<Value>({ title, aside, part, children }: PartSectionProps<Value>) {
  return (
    <Section title={title} aside={aside && <span className="fine">{aside}</span>}>
      {part.missing === null ? children(part.value) : <p className="notice">{part.missing}</p>}
    </Section>
  );
}
