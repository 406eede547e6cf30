import type { ReactNode } from "react";

/** The page's measure. `narrow` for one matter at a time. */
export function Page({
  children,
  narrow = false,
}: {
  readonly children: ReactNode;
  readonly narrow?: boolean;
}) {
  return <div className={narrow ? "page page-narrow" : "page"}>{children}</div>;
}

/** Main matter to the left, what goes with it to the right; one under the other where there is no room. */
export function Columns({ children }: { readonly children: ReactNode }) {
  return <div className="page-columns">{children}</div>;
}

/** Sections under one another. */
export function Stack({ children }: { readonly children: ReactNode }) {
  return <div className="stack">{children}</div>;
}

interface SheetHeadProps {
  readonly title: ReactNode;
  readonly lead?: ReactNode;
  readonly actions?: ReactNode;
  /** The title block: what a printed sheet says in its ruled cells. */
  readonly facts?: readonly { readonly label: string; readonly value: ReactNode }[];
}

/** The head of a page, as on a printed sheet. */
export function SheetHead({ title, lead, actions, facts }: SheetHeadProps) {
  return (
    <header className="sheet-head">
      <div className="sheet-head-title">
        <div>
          <h1>{title}</h1>
          {lead && <p className="sheet-head-lead">{lead}</p>}
        </div>
        {actions && <div className="sheet-head-actions">{actions}</div>}
      </div>
      {facts && facts.length > 0 && (
        <dl className="facts">
          {facts.map((fact) => (
            <div key={fact.label} className="fact">
              <dt>{fact.label}</dt>
              <dd>{fact.value}</dd>
            </div>
          ))}
        </dl>
      )}
    </header>
  );
}

interface SectionProps {
  readonly title: ReactNode;
  readonly children: ReactNode;
  readonly aside?: ReactNode;
  readonly id?: string;
}

/** A headed part of a page. */
export function Section({ title, children, aside, id }: SectionProps) {
  return (
    <section className="section" id={id}>
      <div className="section-head">
        <h2>{title}</h2>
        {aside}
      </div>
      {children}
    </section>
  );
}

/** A ruled row with its label in the margin: a system of the build, a line of the job card. */
export function SheetRow({ label, children }: { readonly label: ReactNode; readonly children: ReactNode }) {
  return (
    <div className="sheet-row">
      <div className="sheet-row-label">{label}</div>
      <div>{children}</div>
    </div>
  );
}
