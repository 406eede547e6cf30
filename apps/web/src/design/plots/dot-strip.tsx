"use client";

import { useRouter } from "next/navigation";
import { type KeyboardEvent, useId, useState } from "react";
import { figureText } from "../figure-text";
import { dotStack } from "./dot-stack";

export interface DotStripProps {
  readonly caption: string;
  readonly unit: string;
  readonly decimals?: number;
  readonly dots: readonly {
    readonly id: string;
    /** Said when the dot is reached: "Job 318, Long Grade 2.4". */
    readonly label: string;
    readonly value: number;
    readonly href?: string;
  }[];
  /** A value to compare with, drawn across: the quoted margin. */
  readonly reference?: { readonly label: string; readonly value: number };
}

const DOT_RADIUS = 5;
// Against the narrowest strip that is drawn: on a wider one the dots only stand further apart.
const NARROWEST_PX = 300;

/** Jobs as dots along a line, so that the spread is seen. Arrow keys walk them in order; Enter opens one. */
export function DotStrip({ caption, unit, decimals = 0, dots, reference }: DotStripProps) {
  const router = useRouter();
  const id = useId();
  const [at, setAt] = useState(0);
  const sorted = dots.toSorted((a, b) => a.value - b.value);
  const stack = dotStack(
    reference ? [...dots, { id: "reference", value: reference.value }] : dots,
    (DOT_RADIUS * 2 + 1) / NARROWEST_PX,
  );
  const placed = new Map(stack.dots.map((dot) => [dot.id, dot]));
  const height = Math.max(stack.rows, 3) * (DOT_RADIUS * 2 + 1) + 26;
  const current = sorted[at];

  function onKeyDown(event: KeyboardEvent) {
    const next = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: sorted.length - 1 }[event.key];
    if (next !== undefined) {
      event.preventDefault();
      setAt(Math.min(Math.max(next, 0), sorted.length - 1));
    } else if (event.key === "Enter" && current?.href) {
      router.push(current.href);
    }
  }

  if (sorted.length === 0) return <p className="fine">{caption}: no jobs yet.</p>;
  const said = current ? `${current.label}: ${figureText(current.value, decimals)} ${unit}` : "";
  return (
    <figure className="dot-strip">
      <figcaption id={`${id}-caption`} className="fine">
        {caption}
      </figcaption>
      <div
        className="dot-strip-frame"
        role="slider"
        tabIndex={0}
        aria-labelledby={`${id}-caption`}
        aria-valuemin={1}
        aria-valuemax={sorted.length}
        aria-valuenow={at + 1}
        aria-valuetext={said}
        onKeyDown={onKeyDown}
      >
        <svg className="plot-svg" width="100%" height={height + 24} aria-hidden="true" focusable="false">
          <line className="plot-frame" x1="0" x2="100%" y1={height} y2={height} />
          {stack.ticks.map((tick) => (
            <g key={tick.value}>
              <line
                className="plot-frame"
                x1={percent(tick.across)}
                x2={percent(tick.across)}
                y1={height}
                y2={height + 5}
              />
              <text className="plot-tick" x={percent(tick.across)} y={height + 19} textAnchor="middle">
                {figureText(tick.value)}
              </text>
            </g>
          ))}
          <Reference reference={reference} across={placed.get("reference")?.across} height={height} />
          {sorted.map((dot, index) => (
            <Dot
              key={dot.id}
              across={placed.get(dot.id)?.across ?? 0}
              y={height - 8 - (placed.get(dot.id)?.row ?? 0) * (DOT_RADIUS * 2 + 1)}
              isCurrent={index === at}
              onReach={() => setAt(index)}
              onOpen={() => dot.href && router.push(dot.href)}
            />
          ))}
        </svg>
      </div>
      <p className="dot-strip-word" aria-hidden="true">
        {said}
      </p>
    </figure>
  );
}

interface DotProps {
  readonly across: number;
  readonly y: number;
  readonly isCurrent: boolean;
  readonly onReach: () => void;
  readonly onOpen: () => void;
}

function Dot({ across, y, isCurrent, onReach, onOpen }: DotProps) {
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the strip itself is the control; pointer use only adds to its keys.
    <circle
      className="dot"
      data-current={isCurrent || undefined}
      cx={percent(across)}
      cy={y}
      r={isCurrent ? DOT_RADIUS + 1.5 : DOT_RADIUS}
      onPointerEnter={onReach}
      onClick={onOpen}
    />
  );
}

interface ReferenceProps {
  readonly reference: DotStripProps["reference"];
  readonly across: number | undefined;
  readonly height: number;
}

function Reference({ reference, across, height }: ReferenceProps) {
  if (!reference || across === undefined) return null;
  return (
    <g>
      <line className="dot-reference" x1={percent(across)} x2={percent(across)} y1={0} y2={height} />
      <text
        className="plot-tick"
        x={percent(across)}
        y={10}
        dx={across > 0.7 ? -6 : 6}
        textAnchor={across > 0.7 ? "end" : "start"}
      >
        {reference.label}
      </text>
    </g>
  );
}

function percent(fraction: number): string {
  return `${(fraction * 100).toFixed(2)}%`;
}
