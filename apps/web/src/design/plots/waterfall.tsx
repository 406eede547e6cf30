import Link from "next/link";
import type { ReactNode } from "react";
import { moneyText } from "../money-text";
import { type WaterfallBar, type WaterfallStep, waterfallBars } from "./waterfall-bars";

export interface WaterfallProps {
  readonly caption: string;
  readonly startLabel: string;
  readonly startMinor: number;
  readonly steps: readonly WaterfallStep[];
  /** The end is what the steps leave; only its name is given. */
  readonly endLabel: string;
  readonly currency: string;
}

/** From quoted to actual, step by step, in money. A table whose middle column is drawn. */
export function Waterfall(props: WaterfallProps) {
  const { caption, startLabel, startMinor, steps, endLabel, currency } = props;
  const bars = waterfallBars(startMinor, steps);
  return (
    <table className="ruled-table waterfall">
      <caption>{caption}</caption>
      <thead className="visually-hidden">
        <tr>
          <th scope="col">Step</th>
          <th scope="col">Drawn</th>
          <th scope="col">Amount</th>
        </tr>
      </thead>
      <tbody>
        <Row label={startLabel} bar={bars.start} zero={bars.zero} currency={currency} />
        {steps.map((step, index) => (
          <Row
            key={step.id}
            label={<StepName step={step} />}
            note={step.note}
            bar={bars.steps[index] ?? bars.end}
            zero={bars.zero}
            currency={currency}
          />
        ))}
        <Row label={endLabel} bar={bars.end} zero={bars.zero} currency={currency} />
      </tbody>
    </table>
  );
}

function StepName({ step }: { readonly step: WaterfallStep }) {
  return step.href ? <Link href={step.href}>{step.label}</Link> : step.label;
}

interface RowProps {
  readonly label: ReactNode;
  readonly note?: string;
  readonly bar: WaterfallBar;
  readonly zero: number;
  readonly currency: string;
}

function Row({ label, note, bar, zero, currency }: RowProps) {
  return (
    <tr data-kind={bar.kind}>
      <th scope="row">
        {label}
        {note && <span className="sentence-note">{note}</span>}
      </th>
      <td className="waterfall-cell">
        <svg className="waterfall-svg" width="100%" height={22} aria-hidden="true" focusable="false">
          <line className="waterfall-zero" x1={percent(zero)} x2={percent(zero)} y1={0} y2={22} />
          <rect
            className="waterfall-bar"
            x={percent(bar.left)}
            y={4}
            width={percent(bar.width)}
            height={14}
          />
        </svg>
      </td>
      <td data-align="figure">{moneyText(bar.minor, currency, bar.kind !== "total")}</td>
    </tr>
  );
}

function percent(fraction: number): string {
  return `${(fraction * 100).toFixed(2)}%`;
}
