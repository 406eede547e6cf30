import type { ImportProblem, ImportReport, ReportedChange } from "@buildproof/workshop";
import { Disclosure } from "@/design/disclosure";
import { Notice } from "@/design/notice";
import { RuledTable } from "@/design/ruled-table";
import { Section } from "@/design/sheet";
import { partWords } from "./part-words";

type Shown<Each> = { readonly count: number; readonly shown: readonly Each[] };

/** Everything that an import would do, and everything that is wrong with it. */
export function ImportReportView({ report }: { readonly report: ImportReport }) {
  const { problems, parts, same, sources } = report;
  return (
    <Section title="What the files say">
      {sources.map(({ file, form, encoding, delimiter, rows, parts: held }) => (
        <p key={file} className="fine">
          {file}: {form}, {encoding}
          {delimiter && `, split at the ${delimiter}`}, {rows.toLocaleString("en-AU")}{" "}
          {rows === 1 ? "row" : "rows"} of{" "}
          {held.map((part) => partWords[part].toLowerCase()).join(", ") || "nothing"}
        </p>
      ))}
      {problems.count > 0 ? (
        <Problems problems={problems} />
      ) : (
        <>
          {parts.length === 0 && (
            <Notice title="Nothing would change">
              <p>
                The files say what the catalogue says already ({same} of {same}).
              </p>
            </Notice>
          )}
          {parts.map(({ part, added, changed, removed }) => (
            <div key={part}>
              <h3>{partWords[part]}</h3>
              <Changes title="added" changes={added} />
              <Changes title="changed" changes={changed} />
              <Changes title="taken out" changes={removed} />
            </div>
          ))}
          {parts.length > 0 && <p className="fine">{same.toLocaleString("en-AU")} stay as they are.</p>}
        </>
      )}
    </Section>
  );
}

function Problems({ problems }: { readonly problems: Shown<ImportProblem> }) {
  return (
    <>
      <Notice
        kind="blocks"
        title={problems.count === 1 ? "One point is open" : `${problems.count} points are open`}
      >
        <p>Nothing is imported while one is. Mend them in the file and check it again.</p>
      </Notice>
      <RuledTable
        caption="Open points"
        isCaptionHidden
        columns={[
          { id: "where", title: "File" },
          { id: "row", title: "Row", align: "figure" },
          { id: "column", title: "Column" },
          { id: "sentence", title: "What is wrong, and what to do" },
        ]}
        rows={problems.shown.map(({ file, row, column, sentence }, index) => ({
          id: `${index}`,
          cells: { where: file || "–", row: row ?? "–", column: column ?? "–", sentence },
        }))}
      />
      <Rest of={problems} />
    </>
  );
}

function Changes({ title, changes }: { readonly title: string; readonly changes: Shown<ReportedChange> }) {
  if (changes.count === 0) return null;
  return (
    <Disclosure
      title={`${changes.count.toLocaleString("en-AU")} ${title}`}
      level={4}
      defaultExpanded={changes.count <= 12}
    >
      <ul>
        {changes.shown.map(({ code, name, columns }) => (
          <li key={code}>
            {name} <span className="fine">{code}</span>
            {columns.map((column) => (
              <div key={column.title} className="fine">
                {column.title}: {shortened(column.before)} → {shortened(column.after)}
              </div>
            ))}
          </li>
        ))}
      </ul>
      <Rest of={changes} />
    </Disclosure>
  );
}

function Rest({ of: { count, shown } }: { readonly of: Shown<unknown> }) {
  if (count <= shown.length) return null;
  return <p className="fine">and {(count - shown.length).toLocaleString("en-AU")} more.</p>;
}

function shortened(text: string): string {
  if (text === "") return "empty";
  return text.length <= 120 ? text : `${text.slice(0, 120)}…`;
}
