"use client";

import type { DynoKind, ImportedSession, SetUpProposal } from "@buildproof/workshop";
import { useRouter } from "next/navigation";
import { type FormEvent, useEffect, useRef, useState } from "react";
import { Form } from "react-aria-components";
import { FileField } from "@/design/file-field";
import { FormContext } from "@/design/forms/form-context";
import { FormErrors } from "@/design/forms/form-errors";
import { type FormState, idleForm, refusedForm } from "@/design/forms/form-state";
import { requestKey } from "@/design/forms/request-key";
import { SubmitButton } from "@/design/forms/submit-button";
import { Notice } from "@/design/notice";
import { announce } from "@/design/toast";
import { ImportFields } from "./import-fields";
import { importedSentence } from "./imported-sentence";
import { sendLog } from "./send-log";

interface ImportFormProps {
  readonly vehicleId: string;
  readonly jobId?: string;
  readonly proposal: SetUpProposal;
  /** What may be measured now. */
  readonly kinds: readonly DynoKind[];
  readonly limitBytes: number;
}

/** Sends a log with the set-up it was made under. What was typed stays until the log is in. */
export function ImportForm({ vehicleId, jobId, proposal, kinds, limitBytes }: ImportFormProps) {
  const router = useRouter();
  const form = useRef<HTMLFormElement>(null);
  const [state, setState] = useState<FormState>(idleForm);
  const [share, setShare] = useState<number | null>(null);
  const [key, setKey] = useState("");
  const [imported, setImported] = useState<ImportedSession | null>(null);

  useEffect(() => setKey(requestKey()), []);
  useEffect(() => {
    if (state.status === "refused") focusRefusal(form.current);
  }, [state]);

  async function send(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (share !== null) return;
    const entries = new FormData(event.currentTarget);
    const file = entries.get("log");
    entries.delete("log");
    setImported(null);
    const early = file instanceof File ? earlyRefusal(file, limitBytes) : null;
    if (early || !(file instanceof File)) {
      setState(refusedForm({ sentence: early ?? "Choose the log to import.", field: "log" }));
      return;
    }
    setState(idleForm);
    setShare(0);
    const answer = await sendLog(addressOf(entries), file, setShare);
    setShare(null);
    if (!answer.ok) {
      setState(refusedForm(answer.refusal));
      return;
    }
    setKey(requestKey());
    setImported(answer.session);
    announce(importedSentence(answer.session));
    router.refresh();
  }

  return (
    <FormContext value={{ state, isPending: share !== null }}>
      <Form ref={form} className="form" aria-label="Import runs" validationBehavior="aria" onSubmit={send}>
        <input type="hidden" name="requestKey" value={key} readOnly />
        <input type="hidden" name="vehicleId" value={vehicleId} readOnly />
        {jobId && <input type="hidden" name="jobId" value={jobId} readOnly />}
        <FormErrors />
        <ImportFields proposal={proposal} kinds={kinds} />
        <FileField
          name="log"
          label="Log"
          accept=".csv,.txt,text/csv,text/plain"
          help={`CSV with a header: time_s, engine_rpm, hub_power_kw or hub_torque_nm, and what else was logged; up to ${limitBytes / 1e6} MB.`}
          isRequired
        />
        <div className="form-actions">
          <SubmitButton pendingLabel={progressWords(share)}>Import the log</SubmitButton>
        </div>
        {imported && <Imported session={imported} />}
      </Form>
    </FormContext>
  );
}

function Imported({ session }: { readonly session: ImportedSession }) {
  return (
    <Notice title={importedSentence(session)} kind={session.warnings.length > 0 ? "caution" : "saved"}>
      {session.warnings.length > 0 && (
        <ul>
          {session.warnings.map((warning) => (
            <li key={warning}>{warning}</li>
          ))}
        </ul>
      )}
    </Notice>
  );
}

/** What the browser can tell without sending anything. */
function earlyRefusal(file: File, limitBytes: number): string | null {
  if (file.name === "" && file.size === 0) return "Choose the log to import.";
  if (file.size === 0)
    return "The file is empty: export the log again with its header line and choose that file.";
  if (file.size <= limitBytes) return null;
  return `The file is larger than ${limitBytes / 1e6} MB: export fewer runs at a time and import each file.`;
}

function addressOf(entries: FormData): URLSearchParams {
  const fields = new URLSearchParams();
  for (const [name, value] of entries)
    if (typeof value === "string" && value.trim() !== "") fields.set(name, value.trim());
  return fields;
}

function progressWords(share: number | null): string {
  return share === null || share >= 1 ? "Reading the log" : `Sending, ${Math.floor(share * 100)} %`;
}

function focusRefusal(form: HTMLFormElement | null): void {
  const field = form?.querySelector<HTMLElement>("[aria-invalid='true']");
  (field ?? form?.querySelector<HTMLElement>("[data-form-errors]"))?.focus();
}
