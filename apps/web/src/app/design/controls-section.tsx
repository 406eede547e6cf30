"use client";

import { Button, ButtonLink } from "@/design/button";
import { Checkbox } from "@/design/checkbox";
import { ComboBox } from "@/design/combo-box";
import { DateField } from "@/design/date-field";
import { Dialog } from "@/design/dialog";
import { Disclosure } from "@/design/disclosure";
import { FileField } from "@/design/file-field";
import { ActionForm } from "@/design/forms/action-form";
import { refusedForm, savedForm } from "@/design/forms/form-state";
import { SubmitButton } from "@/design/forms/submit-button";
import { Menu } from "@/design/menu";
import { NumberField } from "@/design/number-field";
import { RadioGroup } from "@/design/radio-group";
import { Select } from "@/design/select";
import { Section } from "@/design/sheet";
import { Tabs } from "@/design/tabs";
import { TextField } from "@/design/text-field";
import { announce } from "@/design/toast";

const fuels = [
  { id: "p91", label: "Petrol 91" },
  { id: "p95", label: "Petrol 95" },
  { id: "p98", label: "Petrol 98", note: "needed by the calibration" },
  { id: "diesel", label: "Diesel", refusedBecause: "this engine runs on petrol" },
];

export function ControlsSection() {
  return (
    <Section title="Things to press">
      <div className="form-actions">
        <Button variant="primary">Issue the quote</Button>
        <Button>Compare</Button>
        <Button variant="danger">Stop the job</Button>
        <Button variant="plain">Why?</Button>
        <Button isDisabled>Book</Button>
        <Button variant="primary" isPending pendingLabel="Issuing">
          Issue
        </Button>
        <ButtonLink href="/design">A link</ButtonLink>
        <Menu
          label="More"
          entries={[
            { id: "copy", label: "Copy to a new version" },
            { id: "print", label: "Print", note: "A4, as the customer sees it" },
            { id: "delete", label: "Delete", refusedBecause: "an issued quote stays" },
          ]}
          onAction={(id) => announce(`Chosen: ${id}.`)}
        />
        <Dialog title="Record the deposit" trigger={<Button>Open a dialog</Button>}>
          {(close) => (
            <div className="form">
              <p>The deposit covers what cannot be returned: the blower kit and the pump upgrade.</p>
              <NumberField label="Amount received" prefix="$" defaultValue="9,400.00" />
              <div className="form-actions">
                <Button variant="primary" onPress={close}>
                  Record
                </Button>
                <Button onPress={close}>Leave it</Button>
              </div>
            </div>
          )}
        </Dialog>
        <Button
          onPress={() =>
            announce("Pump upgrade taken off the build.", { undo: () => announce("It is back.") })
          }
        >
          Announce with undo
        </Button>
      </div>
      <Tabs
        label="Quote"
        tabs={[
          { id: "lines", title: "Lines", content: "What is included, line by line." },
          { id: "versions", title: "Versions", content: "Two versions; the first was superseded." },
          { id: "letters", title: "Letters", content: "Nothing sent yet." },
        ]}
      />
      <Disclosure title="Why the high-pressure pump falls short">
        <p>At 6,000 rpm the engine asks for 3.1 g/s more than the pump delivers at 20 MPa.</p>
      </Disclosure>
    </Section>
  );
}

export function FormSection() {
  return (
    <Section title="A form that is refused, then taken">
      <ActionForm
        label="Vehicle"
        action={async (previous, form) => {
          await new Promise((answer) => setTimeout(answer, 600));
          return previous.status === "refused"
            ? savedForm("Vehicle saved.")
            : refusedForm(
                { sentence: "Enter the odometer in whole kilometres, like 24310.", field: "odometer" },
                form,
              );
        }}
      >
        <div className="form-row">
          <TextField name="plate" label="Plate" defaultValue="1AB 2CD" isCode isRequired />
          <TextField
            name="vin"
            label="VIN"
            isCode
            maxLength={17}
            help="17 letters and digits; never I, O or Q"
          />
        </div>
        <div className="form-row">
          <NumberField name="odometer" label="Odometer" unit="km" defaultValue="24,31o" isWhole isRequired />
          <NumberField
            name="torque"
            label="Bolt torque"
            unit="N·m"
            defaultValue="97"
            limits={{ low: 85, high: 95 }}
          />
          <DateField name="wanted" label="Wanted by" defaultValue="2026-12-18" />
        </div>
        <div className="form-row">
          <Select name="fuel" label="Fuel" options={fuels} defaultValue="p98" />
          <ComboBox name="customer" label="Customer" options={people} placeholder="Type a name" />
        </div>
        <div className="form-row">
          <RadioGroup
            name="use"
            label="Mostly used for"
            defaultValue="towing"
            options={[
              { id: "towing", label: "Towing", note: "boats and caravans up to 3.5 t" },
              { id: "street", label: "Street" },
              { id: "track", label: "Track" },
            ]}
          />
          <div>
            <Checkbox name="keys" label="All keys handed in" defaultSelected />
            <Checkbox name="sample" label="Fuel sample taken" note="kept for as long as the job is open" />
            <FileField name="photo" label="Photo of the front" accept="image/*" fromCamera />
          </div>
        </div>
        <TextField name="notes" label="What the customer wants" lines={3} />
        <div className="form-actions">
          <SubmitButton pendingLabel="Saving">Save the vehicle</SubmitButton>
        </div>
      </ActionForm>
    </Section>
  );
}

const people = [
  { id: "1", label: "Adaeze Okafor", note: "Ridgewold 5.7" },
  { id: "2", label: "Bao Lindqvist" },
  { id: "3", label: "Carmel Ruiz" },
];
