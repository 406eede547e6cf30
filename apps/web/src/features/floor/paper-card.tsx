import { Fragment } from "react";
import type { StepView } from "./card-view";

/** Every step of a card as rows on paper; what is entered already stands in its box. */
export function PaperCard({ steps }: { readonly steps: readonly StepView[] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard (WCAG 2.1.1).
    <section className="ruled-table-frame paper-card" tabIndex={0} aria-label="Steps">
      <table className="ruled-table">
        <caption className="visually-hidden">Steps in order of work</caption>
        <thead>
          <tr>
            <th scope="col" data-align="figure">
              No.
            </th>
            <th scope="col">Step</th>
            <th scope="col">Limits</th>
            <th scope="col">Value</th>
            <th scope="col">By, when</th>
          </tr>
        </thead>
        <tbody>
          {steps.map((step, index) => (
            <Fragment key={step.id}>
              {steps[index - 1]?.operation !== step.operation && (
                <tr className="paper-operation">
                  <th scope="colgroup" colSpan={5}>
                    {step.operation}
                  </th>
                </tr>
              )}
              <StepRow step={step} number={index + 1} />
            </Fragment>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function StepRow({ step, number }: { readonly step: StepView; readonly number: number }) {
  const isHold = step.kind === "holdPoint";
  return (
    <tr className={isHold ? "paper-hold" : undefined}>
      <th scope="row" data-align="figure">
        {number}
      </th>
      <td>
        {isHold && "HOLD POINT, nothing goes on before it is signed. "}
        {step.text}
        {step.oneUsePart && (
          <span className="paper-caution">
            <strong>New part: {step.oneUsePart}.</strong>
          </span>
        )}
        {step.cautions.map((caution) => (
          <span key={caution} className="paper-caution">
            First: {caution}
          </span>
        ))}
      </td>
      <td>{step.limits || kindWords[step.kind]}</td>
      <td className="paper-box">{step.state === "open" ? "" : step.words}</td>
      <td className="paper-box">
        {step.state === "open" ? "" : [step.by, step.at].filter(Boolean).join(", ")}
      </td>
    </tr>
  );
}

const kindWords = {
  tick: "tick",
  measurement: "measure",
  torque: "torque",
  photo: "photo",
  serial: "serial number",
  holdPoint: "signature of a second person",
} as const;
