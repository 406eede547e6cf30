import Link from "next/link";
import type { MouseEvent } from "react";
import { Button } from "@/design/button";
import { momentText } from "@/design/moment-text";
import { dayText, spanText } from "./local-text";
import { extentOf, instantAt, positionOf, type TimeAxis } from "./time-axis";
import "./plan.css";

export interface PlanBlock {
  readonly id: string;
  readonly jobId: string;
  readonly jobNumber: number;
  readonly plate: string;
  readonly work: string;
  readonly startsAt: Date;
  readonly endsAt: Date;
}

export interface PlanRow {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly bookings: readonly PlanBlock[];
}

interface PlanGridProps {
  readonly axis: TimeAxis;
  readonly rows: readonly PlanRow[];
  readonly now: Date;
  readonly timeZone: string;
  /** Null for those who look and do not book. */
  readonly onPlace: OnPlace | null;
}

const percent = (share: number) => `${(share * 100).toFixed(3)}%`;

/** Resources down, time across. A block says plate and work; nothing is said by colour. */
export function PlanGrid({ axis, rows, now, timeZone, onPlace }: PlanGridProps) {
  const present = positionOf(axis, now.getTime());
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard (WCAG 2.1.1).
    <section className="plan-frame" tabIndex={0} aria-label="Plan by resource">
      <div className="plan" data-days={axis.segments.length}>
        <div className="plan-head" aria-hidden="true">
          <span />
          <div className="plan-scale">
            {axis.segments.length > 1 &&
              axis.segments.map(({ date, left, width }) => (
                <span key={date} className="plan-day" style={{ left: percent(left), width: percent(width) }}>
                  {dayText(date)}
                </span>
              ))}
            {axis.hours.map(({ at, left }) => (
              <span key={at.toISOString()} className="plan-hour" style={{ left: percent(left) }}>
                {momentText(at, timeZone, "time")}
              </span>
            ))}
          </div>
        </div>
        {rows.map((row) => (
          <div key={row.id} className="plan-row">
            <div className="plan-resource">
              <h3>{row.name}</h3>
              {onPlace && (
                <Button
                  variant="plain"
                  aria-label={`Book ${row.name}`}
                  onPress={() => pointAt(axis, row.id, 0, onPlace)}
                >
                  Book
                </Button>
              )}
              {row.note && <span className="plan-note">{row.note}</span>}
            </div>
            {/* biome-ignore lint/a11y/useKeyWithClickEvents lint/a11y/noStaticElementInteractions: a short cut for the pointer; the button beside it does the same by keyboard. */}
            <div
              className="plan-lane"
              data-bookable={onPlace !== null || undefined}
              onClick={(event) => onPlace && pointAt(axis, row.id, shareOf(event), onPlace)}
            >
              <Ground axis={axis} />
              <ol className="plan-blocks">
                {row.bookings.map((block) => (
                  <Block key={block.id} axis={axis} block={block} timeZone={timeZone} />
                ))}
              </ol>
              {row.bookings.length === 0 && <p className="plan-free">Free</p>}
              {present !== null && <span className="plan-now" style={{ left: percent(present) }} />}
            </div>
          </div>
        ))}
      </div>
    </section>
  );
}

/** Days, hours and closed days behind the blocks. */
function Ground({ axis }: { readonly axis: TimeAxis }) {
  return (
    <div className="plan-ground" aria-hidden="true">
      {axis.segments.map(({ date, left, width, isClosed }) => (
        <span
          key={date}
          className="plan-stretch"
          data-closed={isClosed || undefined}
          style={{ left: percent(left), width: percent(width) }}
        />
      ))}
      {axis.hours.map(({ at, left }) => (
        <span key={at.toISOString()} className="plan-tick" style={{ left: percent(left) }} />
      ))}
    </div>
  );
}

type OnPlace = (resourceId: string, at: Date) => void;

function pointAt(axis: TimeAxis, resourceId: string, share: number, onPlace: OnPlace): void {
  const at = instantAt(axis, share);
  if (at) onPlace(resourceId, at);
}

function shareOf(event: MouseEvent<HTMLElement>): number {
  const box = event.currentTarget.getBoundingClientRect();
  return (event.clientX - box.left) / box.width;
}

function Block({
  axis,
  block,
  timeZone,
}: {
  readonly axis: TimeAxis;
  readonly block: PlanBlock;
  readonly timeZone: string;
}) {
  const extent = extentOf(axis, block);
  const span = spanText(block.startsAt, block.endsAt, timeZone);
  return (
    <li
      className="plan-block"
      data-hidden={extent === null || undefined}
      style={extent ? { left: percent(extent.left), width: percent(extent.width) } : undefined}
    >
      <Link
        href={`/jobs/${block.jobId}`}
        onClick={(event) => event.stopPropagation()}
        title={`${block.plate}, ${block.work}, ${span}`}
      >
        <strong>{block.plate}</strong> <span>{block.work}</span>
        <span className="plan-span">{` ${span}, job ${block.jobNumber}`}</span>
      </Link>
    </li>
  );
}
