"use client";

import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useState } from "react";
import { figureText } from "../figure-text";
import { nearestSample, type ReadoutQuantity, type ReadoutSample } from "./readout-samples";

interface CurveReadoutProps {
  readonly samples: readonly ReadoutSample[];
  readonly xDomain: readonly [number, number];
  readonly startRpm: number;
  readonly runs: readonly { readonly id: string; readonly label: string }[];
  readonly quantities: readonly ReadoutQuantity[];
  /** The panels the line crosses. */
  readonly children: ReactNode;
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
  PageDown: -10,
  PageUp: 10,
};

/** A line across every panel, moved by pointer or keys, and what each run makes there, in figures. */
export function CurveReadout(props: CurveReadoutProps) {
  const { samples, xDomain, startRpm, children } = props;
  const [at, setAt] = useState(() => nearestSample(samples, startRpm));
  const sample = samples[at] ?? samples[0];
  if (!sample) return <div className="plot-stack">{children}</div>;
  const [low, high] = xDomain;
  const across = (sample.rpm - low) / (high - low);

  function onKeyDown(event: KeyboardEvent) {
    const next = nextPosition(event.key, at, samples.length);
    if (next === null) return;
    event.preventDefault();
    setAt(next);
  }

  function onPointer(event: PointerEvent<HTMLDivElement>) {
    const box = event.currentTarget.getBoundingClientRect();
    const fraction = (event.clientX - box.left) / box.width;
    setAt(nearestSample(samples, low + fraction * (high - low)));
  }

  return (
    <>
      <div className="plot-stack">
        {children}
        <div
          className="plot-cursor"
          role="slider"
          tabIndex={0}
          aria-label="Engine speed of the read-out"
          aria-valuemin={samples[0]?.rpm}
          aria-valuemax={samples.at(-1)?.rpm}
          aria-valuenow={sample.rpm}
          aria-valuetext={`${figureText(sample.rpm)} rpm`}
          onKeyDown={onKeyDown}
          onPointerDown={onPointer}
          onPointerMove={onPointer}
        >
          <span className="plot-cursor-line" style={{ left: `${across * 100}%` }} />
        </div>
      </div>
      <ReadoutTable runs={props.runs} quantities={props.quantities} sample={sample} />
    </>
  );
}

function nextPosition(key: string, at: number, count: number): number | null {
  if (key === "Home") return 0;
  if (key === "End") return count - 1;
  const step = STEPS[key];
  return step === undefined ? null : Math.min(Math.max(at + step, 0), count - 1);
}

interface ReadoutTableProps extends Pick<CurveReadoutProps, "runs" | "quantities"> {
  readonly sample: ReadoutSample;
}

function ReadoutTable({ runs, quantities, sample }: ReadoutTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone it scrolls, which must work by keyboard (WCAG 2.1.1).
    <section className="plot-readout" tabIndex={0} aria-label="Read-out">
      <table className="ruled-table">
        <caption className="fine">
          At {figureText(sample.rpm)} rpm (move with the arrow keys or the pointer)
        </caption>
        <thead>
          <tr>
            <th scope="col">Run</th>
            {quantities.map((quantity) => (
              <th key={quantity.id} scope="col" data-align="figure">
                {quantity.title} <span className="figure-unit">{quantity.unit}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {runs.map((run, runIndex) => (
            <tr key={run.id}>
              <th scope="row">{run.label}</th>
              {quantities.map((quantity, index) => (
                <td key={quantity.id} data-align="figure">
                  {valueText(sample.values[runIndex]?.[index], quantity.decimals)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <SpokenReadout runs={runs} quantities={quantities} sample={sample} />
    </section>
  );
}

const PAUSE_BEFORE_SPEAKING_MS = 350;

/** Spoken once the line rests, not at every step on the way. */
function SpokenReadout({ runs, quantities, sample }: ReadoutTableProps) {
  const sentence = runs
    .map((run, runIndex) => {
      const values = quantities.map(
        (quantity, index) =>
          `${quantity.title.toLowerCase()} ${valueText(sample.values[runIndex]?.[index], quantity.decimals)} ${quantity.unit}`,
      );
      return `${run.label}: ${values.join(", ")}`;
    })
    .join(". ");
  const [spoken, setSpoken] = useState("");
  useEffect(() => {
    const timer = setTimeout(() => setSpoken(sentence), PAUSE_BEFORE_SPEAKING_MS);
    return () => clearTimeout(timer);
  }, [sentence]);
  return (
    <p className="visually-hidden" aria-live="polite">
      {spoken}
    </p>
  );
}

function valueText(value: number | null | undefined, decimals: number): string {
  return value === null || value === undefined ? "–" : figureText(value, decimals);
}
