import type { CSSProperties, ReactNode } from "react";
import { figureText } from "../figure-text";
import { alongBar, chainLayout, FULL_SHARE, type PlacedPath } from "./chain-layout";
import type { ChainLink, ChainPath, WeakestLink } from "./chain-types";

export interface ChainProps {
  /** The first path is the spine: air, engine, torque. Others run into it. */
  readonly paths: readonly ChainPath[];
  readonly weakest?: WeakestLink;
  /** What mends the weakest link: a button with its price and hours. */
  readonly action?: ReactNode;
  readonly caption: string;
  /** Shares and the weakest link alone, where the chain is not what the page is about. */
  readonly isSmall?: boolean;
}

/**
 * The path that air, fuel and torque take through the vehicle, a link for each stage, each link a bar of
 * what is asked against what it can give. Where there is no room across, it is a list down.
 */
export function Chain({ paths, weakest, action, caption, isSmall = false }: ChainProps) {
  const layout = chainLayout(paths);
  // Custom properties are not in React's CSSProperties.
  const columns = { "--chain-columns": layout.columns } as CSSProperties;
  return (
    <figure className="chain" data-small={isSmall || undefined}>
      <figcaption className="visually-hidden">{caption}</figcaption>
      <div className="chain-paths" style={columns}>
        {layout.paths.map((placed, index) => (
          <PathLinks key={placed.path.id} placed={placed} row={index * 3 + 1} weakestId={weakest?.linkId} />
        ))}
      </div>
      {weakest && (
        <div className="chain-weakest" data-grade={gradeOf(paths, weakest.linkId)}>
          <p>{weakest.sentence}</p>
          {action && <div className="sentence-action">{action}</div>}
        </div>
      )}
    </figure>
  );
}

interface PathLinksProps {
  readonly placed: PlacedPath;
  readonly row: number;
  readonly weakestId: string | undefined;
}

function PathLinks({ placed, row, weakestId }: PathLinksProps) {
  return (
    <>
      {placed.joinColumn !== null && (
        <span
          className="chain-join"
          aria-hidden="true"
          style={{ gridColumn: placed.joinColumn, gridRow: `2 / ${row + 2}` }}
        />
      )}
      <p className="chain-path-title" aria-hidden="true">
        {placed.path.title}
      </p>
      <ol
        className="chain-path"
        data-joins={placed.joinColumn !== null || undefined}
        aria-label={placed.path.title}
        style={{ gridRow: `${row} / span 3` }}
      >
        {placed.links.map(({ link, column }) => (
          <li
            key={link.id}
            className="chain-link"
            style={{ gridColumn: column }}
            data-weakest={link.id === weakestId || undefined}
            data-grade={link.grade}
          >
            <span className="chain-name">{link.name}</span>
            <span className="chain-bar">
              <Bar link={link} />
            </span>
            <LinkWords link={link} isWeakest={link.id === weakestId} />
          </li>
        ))}
      </ol>
    </>
  );
}

const BAR_HEIGHT = 26;
const LINK_TOP = 6;
const LINK_HEIGHT = 14;

function Bar({ link }: { readonly link: ChainLink }) {
  if (link.asked === undefined && link.measured === undefined) {
    return (
      <svg className="chain-svg" width="100%" height={BAR_HEIGHT} aria-hidden="true" focusable="false">
        <circle className="chain-node" cx="7" cy={BAR_HEIGHT / 2} r={6} />
      </svg>
    );
  }
  const asked = link.asked ?? 0;
  const full = percent(FULL_SHARE);
  return (
    <svg className="chain-svg" width="100%" height={BAR_HEIGHT} aria-hidden="true" focusable="false">
      <rect className="chain-supply" x="0" y={LINK_TOP} width={full} height={LINK_HEIGHT} />
      <rect
        className="chain-asked"
        x="0"
        y={LINK_TOP}
        width={percent(alongBar(Math.min(asked, 1)))}
        height={LINK_HEIGHT}
      />
      {asked > 1 && (
        <rect
          className="chain-beyond"
          x={full}
          y={LINK_TOP}
          width={percent(alongBar(asked) - FULL_SHARE)}
          height={LINK_HEIGHT}
        />
      )}
      <rect className="chain-outline" x="0" y={LINK_TOP} width={full} height={LINK_HEIGHT} />
      <line className="chain-full" x1={full} x2={full} y1={1} y2={BAR_HEIGHT - 1} />
      {link.measured !== undefined && (
        <line
          className="chain-measured"
          x1={percent(alongBar(link.measured))}
          x2={percent(alongBar(link.measured))}
          y1={0}
          y2={BAR_HEIGHT}
        />
      )}
    </svg>
  );
}

function LinkWords({ link, isWeakest }: { readonly link: ChainLink; readonly isWeakest: boolean }) {
  return (
    <span className="chain-words">
      {link.asked !== undefined && (
        <span className="chain-share">
          {wholePercent(link.asked)}
          <span className="figure-unit">asked</span>
        </span>
      )}
      {link.measured !== undefined && (
        <span className="chain-note">{wholePercent(link.measured)} measured</span>
      )}
      {link.figures && <span className="chain-note">{link.figures}</span>}
      {link.note && <span className="chain-note">{link.note}</span>}
      {isWeakest && <span className="chain-tag">weakest link</span>}
    </span>
  );
}

function gradeOf(paths: readonly ChainPath[], linkId: string): ChainLink["grade"] {
  return paths.flatMap((path) => path.links).find((link) => link.id === linkId)?.grade;
}

function wholePercent(share: number): string {
  return `${figureText(share * 100)} %`;
}

function percent(fraction: number): string {
  return `${(fraction * 100).toFixed(2)}%`;
}
