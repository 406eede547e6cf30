"use client";

import { type FormEvent, useState } from "react";
import { Form } from "react-aria-components";
import { Button } from "@/design/button";
import { NumberField } from "@/design/number-field";
import { limitSentence } from "@/design/read-number";
import { TextField } from "@/design/text-field";
import { announce } from "@/design/toast";
import type { StepView } from "./card-view";
import { PhotoField } from "./photo-field";
import type { Sent } from "./send-entry";
import { typedFigure } from "./typed-figure";
import type { Press } from "./use-floor-sender";

interface StepFormProps {
  readonly step: StepView;
  readonly press: (press: Omit<Press, "jobId">) => Promise<Sent>;
  readonly onDone: () => void;
}

type Refused = Extract<Sent, { kind: "refused" }>;

/** Where a step is entered. What was typed stays until the workshop, or this device, has it. */
export function StepForm({ step, press, onDone }: StepFormProps) {
  const isFigure = step.kind === "measurement" || step.kind === "torque";
  const [figure, setFigure] = useState("");
  const [photo, setPhoto] = useState<File | null>(null);
  const [refused, setRefused] = useState<Refused | null>(null);
  const [isPending, setPending] = useState(false);
  const limits = limitsOf(step);
  const isOutside = isFigure && isOutsideOf(figure, limits, step.unit);

  async function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (isPending) return;
    const form = new FormData(event.currentTarget);
    const value = isFigure ? typedFigure(figure) : undefined;
    if (value !== undefined && Number.isNaN(value)) {
      setRefused(slip(`“${figure.trim()}” is not a number: use digits, with a point before decimals.`));
      return;
    }
    setPending(true);
    const sent = await press({
      use: "record-step",
      label: step.text,
      input: {
        stepId: step.id,
        ...(value === undefined ? {} : { value }),
        ...typedText(form, "serial"),
        ...typedText(form, "note"),
      },
      ...(photo ? { photo } : {}),
    });
    setPending(false);
    if (sent.kind === "refused") {
      setRefused(sent);
      return;
    }
    setRefused(null);
    if (sent.kind === "saved" && isOutside) announce("Kept as a fault. The desk sees it now.");
    onDone();
  }

  return (
    <Form className="form card-form" onSubmit={submit} validationBehavior="aria" aria-label="Enter this step">
      {refused && (
        <div className="notice" data-kind="blocks" role="alert">
          <p className="notice-title">{refused.sentence}</p>
        </div>
      )}
      {isFigure && (
        <NumberField
          label={step.kind === "torque" ? "Torque reached" : "Figure read"}
          name="value"
          unit={step.unit}
          value={figure}
          onChange={setFigure}
          limits={limits}
          help=" "
        />
      )}
      {step.kind === "serial" && <TextField label="Serial number" name="serial" isCode maxLength={60} />}
      {step.kind === "photo" && <PhotoField label="Photo" onPhoto={setPhoto} />}
      {isOutside && (
        <TextField
          label="What you found"
          name="note"
          lines={2}
          help="Do it again if you can. If it stays outside, this goes to the desk as a fault."
        />
      )}
      <Button
        type="submit"
        variant={isOutside ? "danger" : "primary"}
        wide
        isPending={isPending}
        pendingLabel="Sending"
      >
        {isOutside ? "Keep it as a fault" : step.kind === "photo" ? "Save the photo" : "Done"}
      </Button>
    </Form>
  );
}

function limitsOf({ low, high }: StepView) {
  return { ...(low === null ? {} : { low }), ...(high === null ? {} : { high }) };
}

function isOutsideOf(figure: string, limits: ReturnType<typeof limitsOf>, unit: string): boolean {
  const judged = limitSentence(figure, limits, unit);
  return judged !== null && judged !== "Within limits.";
}

function slip(sentence: string): Refused {
  return { kind: "refused", code: "not-a-number", sentence, field: "value" };
}

function typedText(form: FormData, name: string): Record<string, string> {
  const typed = form.get(name);
  return typeof typed === "string" && typed.trim() !== "" ? { [name]: typed } : {};
}
