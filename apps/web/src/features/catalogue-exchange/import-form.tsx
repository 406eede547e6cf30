"use client";

import type { ImportReport, PartKind, Refusal } from "@buildproof/workshop";
import { useRouter } from "next/navigation";
import { type FormEvent, useEffect, useRef, useState } from "react";
import { Form } from "react-aria-components";
import { Button } from "@/design/button";
import { FileField } from "@/design/file-field";
import { FormContext } from "@/design/forms/form-context";
import { FormErrors } from "@/design/forms/form-errors";
import { type FormState, idleForm, refusedForm } from "@/design/forms/form-state";
import { requestKey } from "@/design/forms/request-key";
import { SubmitButton } from "@/design/forms/submit-button";
import { RadioGroup } from "@/design/radio-group";
import { Select } from "@/design/select";
import { Section } from "@/design/sheet";
import { TextField } from "@/design/text-field";
import { announce } from "@/design/toast";
import { checkImportAction, importAction } from "./actions";
import { ImportReportView } from "./import-report-view";
import { partWords } from "./part-words";

const lost: Refusal = {
  code: "not-reached",
  sentence: "The workshop was not reached, so nothing was read. Check the network and send the files again.",
};

/** Checks files against the catalogue, shows everything that they would do, and drafts it on a second press. */
export function ImportForm({ limitBytes }: { readonly limitBytes: number }) {
  const router = useRouter();
  const form = useRef<HTMLFormElement>(null);
  const outcome = useRef<HTMLDivElement>(null);
  const [state, setState] = useState<FormState>(idleForm);
  const [isPending, setPending] = useState(false);
  const [report, setReport] = useState<ImportReport | null>(null);
  const [key, setKey] = useState("");
  useEffect(() => setKey(requestKey()), []);
  useEffect(() => {
    if (report) outcome.current?.focus();
  }, [report]);

  const sizeRefusal = (entries: FormData) => {
    const bytes = entries
      .getAll("files")
      .reduce((sum, file) => sum + (file instanceof File ? file.size : 0), 0);
    if (bytes === 0) return "Choose the file to import.";
    if (bytes <= limitBytes) return null;
    return `The files are larger than ${limitBytes / 1e6} MB together: split them and import the pieces.`;
  };

  async function send(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (isPending) return;
    const entries = new FormData(event.currentTarget);
    const tooMuch = sizeRefusal(entries);
    if (tooMuch) return setState(refusedForm({ sentence: tooMuch, field: "files" }));
    setPending(true);
    if (report && report.problems.count === 0 && report.parts.length > 0) await draft(entries);
    else await check(entries);
    setPending(false);
  }

  async function check(entries: FormData) {
    const answer = await checkImportAction(entries).catch(() => ({ ok: false as const, refusal: lost }));
    setState(answer.ok ? idleForm : refusedForm(answer.refusal));
    setReport(answer.ok ? answer.value : null);
  }

  async function draft(entries: FormData) {
    entries.set("seen", report?.fingerprint ?? "");
    const answer = await importAction(entries).catch(() => ({ ok: false as const, refusal: lost }));
    if (answer.ok) {
      announce("Drafted. Nothing changes until the draft is published.");
      return router.push(`/catalogue/versions/${answer.value.versionId}`);
    }
    setState(refusedForm(answer.refusal));
    if (answer.refusal.code === "import-differs") setReport(null);
  }

  const again = () => {
    setReport(null);
    setState(idleForm);
    setKey(requestKey());
  };
  const canDraft = report !== null && report.problems.count === 0 && report.parts.length > 0;
  return (
    <FormContext value={{ state, isPending }}>
      <Form ref={form} className="form" aria-label="Import" validationBehavior="aria" onSubmit={send}>
        <input type="hidden" name="requestKey" value={key} readOnly />
        <FormErrors />
        <ImportFields onChange={again} />
        {!canDraft && (
          <div className="form-actions">
            <SubmitButton pendingLabel="Checking">Check the files</SubmitButton>
          </div>
        )}
        <div ref={outcome} tabIndex={-1}>
          {report && <ImportReportView report={report} />}
        </div>
        {canDraft && (
          <Section title="Make it a draft">
            <TextField
              name="title"
              label="What this draft is for"
              placeholder="Price list of the maker, July"
              isRequired
            />
            <div className="form-actions">
              <SubmitButton pendingLabel="Drafting">Make the draft</SubmitButton>
              <Button onPress={again}>Check again</Button>
            </div>
          </Section>
        )}
      </Form>
    </FormContext>
  );
}

function ImportFields({ onChange }: { readonly onChange: () => void }) {
  const kinds = Object.entries(partWords).map(([id, label]) => ({ id: id as PartKind, label })); // Keys of the table.
  return (
    <>
      <FileField
        name="files"
        label="Files"
        accept=".json,.csv,.txt,application/json,text/csv,text/plain"
        help="The JSON document, or tables as CSV: with commas, semicolons or tabs, in UTF-8 or as a spreadsheet saves them; up to 50,000 rows. A table may hold fewer columns than the export: what it leaves out stays as it is."
        multiple
        isRequired
        onChange={onChange}
      />
      <div className="form-row">
        <Select
          name="part"
          label="What a table holds"
          defaultValue="auto"
          onChange={onChange}
          options={[{ id: "auto", label: "As its columns say" }, ...kinds]}
        />
        <RadioGroup
          name="absent"
          label="What the files do not name"
          defaultValue="stay"
          onChange={onChange}
          options={[
            { id: "stay", label: "stays as it is" },
            { id: "go", label: "is taken out", note: "Only when the file is the whole of its part." },
          ]}
        />
      </div>
    </>
  );
}
